// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"

#include <QtGlobal>

#include <random>

/// How often something is tried: MATSIDE_COUNT, or as usual.
inline std::uint64_t rounds(int usual)
{
    const int asked = qEnvironmentVariableIntValue("MATSIDE_COUNT");
    return static_cast<std::uint64_t>(asked > 0 ? asked : usual);
}

/// Makes projects by chance: every key present in some, absent in others, lengths on any tick.
class RandomProject {
public:
    explicit RandomProject(std::uint64_t seed) : m_engine(seed) {}

    [[nodiscard]] matside::Project project();

private:
    [[nodiscard]] std::int64_t upTo(std::int64_t most)
    {
        return static_cast<std::int64_t>(m_engine() % (static_cast<std::uint64_t>(most) + 1));
    }
    [[nodiscard]] bool often() { return upTo(2) > 0; }
    /// A ruler's mark of either system, or any tick at all.
    [[nodiscard]] matside::Length length();
    void maybe(std::optional<matside::Length> &to);
    void maybe(std::optional<matside::Pair> &to);
    template <std::size_t N> [[nodiscard]] std::array<matside::Length, N> lengths()
    {
        std::array<matside::Length, N> all;
        for (matside::Length &one : all)
            one = length();
        return all;
    }
    template <class E> [[nodiscard]] E choice(std::int64_t last) { return static_cast<E>(upTo(last)); }
    /// Letters of one to four bytes, quotes, control characters.
    [[nodiscard]] std::string word();
    /// What a newer program might have written, as the codec keeps it.
    [[nodiscard]] std::string rest();

    void widths(matside::Project &p);
    void hoop(matside::Project &p);
    void cloths(matside::Project &p);
    void designs(matside::Project &p);
    void trial(matside::Made &made);
    void made(matside::Made &made);

    std::mt19937_64 m_engine;
};
