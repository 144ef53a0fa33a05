// SPDX-License-Identifier: MIT
#pragma once

#include "project/json.h"
#include "project/project.h"

#include <array>
#include <set>
#include <span>

namespace matside {

/// The spelling of an enumeration in the file, first is the default.
template <class E> struct Spelling {
    std::string_view word;
    E value;
};

/// A file says no more of anything than this, nor a draw-up over 15 % (design 5.3).
inline constexpr std::int64_t mostCount = 1'000'000;
inline constexpr Share mostDrawUp{150'000};

/// How small a length may be.
enum class Least { Negative, Zero, Positive };

/// Reads the keys of one object. What is wrong becomes a problem at its pointer and the default stays;
/// what is not understood is kept as text. Codes: wrong-type (kind), wrong-count (wanted), not-a-choice
/// (told), needed, not-a-length (told, byte), length-too-long (told, byte), length-too-small (told),
/// not-a-share (told, byte), draw-up-out-of-range (share, most), count-out-of-range (least, most),
/// text-too-long (most), too-many (most).
class Fields {
public:
    Fields(const Json &object, std::string pointer, System system, std::vector<Problem> &problems);

    void length(const char *key, Length &value, Least least = Least::Positive);
    void length(const char *key, std::optional<Length> &value, Least least = Least::Positive);
    void pair(const char *key, std::optional<Pair> &value);
    template <std::size_t N> void lengths(const char *key, std::optional<std::array<Length, N>> &value)
    {
        std::vector<Length> read;
        if (!list(key, read, Least::Positive) || read.empty())
            return;
        if (read.size() != N)
            return wrong(key, "wrong-count", {static_cast<std::int64_t>(N)}, {});
        value.emplace();
        std::copy(read.begin(), read.end(), value->begin());
    }
    /// A list of lengths; false when the key is absent.
    bool list(const char *key, std::vector<Length> &value, Least least);
    /// Reads each object of a list; a null in it is nothing there.
    template <class Read> void each(const char *key, std::size_t most, Read read)
    {
        const Json *held = array(key, most);
        for (std::size_t i = 0; held && i < held->size(); ++i) {
            if ((*held)[i].is_null())
                continue;
            Fields inner((*held)[i], step(at(key), i), m_system, m_problems);
            if ((*held)[i].is_object())
                read(inner);
        }
    }
    void share(const char *key, Share &value, Share least, Share most);
    void count(const char *key, std::int64_t &value, std::int64_t least, std::int64_t most);
    void flag(const char *key, bool &value);
    void word(const char *key, std::string &value);
    void words(const char *key, std::vector<std::string> &value);
    void number(const char *key, std::optional<std::string> &value);
    template <class E> void choice(const char *key, E &value, std::span<const Spelling<E>> spellings)
    {
        const Json *held = find(key);
        if (!held)
            return;
        if (held->is_string())
            for (const Spelling<E> &spelling : spellings)
                if (held->get_ref<const std::string &>() == spelling.word) {
                    value = spelling.value;
                    return;
                }
        std::vector<Offer> offers;
        for (const Spelling<E> &spelling : spellings)
            offers.push_back(
                {"set-choice", at(key), std::string(spelling.word), {std::string(spelling.word)}, {}});
        wrong(key, "not-a-choice", {told(*held)}, std::move(offers));
    }
    /// The object under a key, or nullptr (a problem when it is something else).
    const Json *object(const char *key);
    /// The list under a key, bounded; nullptr when absent.
    const Json *array(const char *key, std::size_t most);
    [[nodiscard]] static Offer takeAway(const std::string &pointer);
    [[nodiscard]] bool isText(const char *key) const;
    /// True when the key is there and not null.
    [[nodiscard]] bool has(const char *key) const;
    void needed(const char *key, std::vector<Offer> offers);
    /// Where no remedy is given, taking the key away is one: what is absent has its default.
    void wrong(const std::string &key, std::string code, std::vector<Argument> args,
               std::vector<Offer> offers);
    [[nodiscard]] const std::string &at() const { return m_pointer; }
    [[nodiscard]] std::string at(std::string_view key) const { return step(m_pointer, key); }
    /// Everything not asked for, as the text of an object; empty when there is nothing.
    [[nodiscard]] std::string rest() const;
    [[nodiscard]] System system() const { return m_system; }
    [[nodiscard]] std::vector<Problem> &problems() { return m_problems; }

private:
    const Json *find(const char *key);
    /// What stands in the file, cut to what a message can hold.
    [[nodiscard]] static std::string told(const Json &held);
    std::optional<Length> readOne(const Json &held, const std::string &pointer, Least least, Length usual);

    const Json &m_object;
    std::string m_pointer;
    System m_system;
    std::vector<Problem> &m_problems;
    std::set<std::string, std::less<>> m_asked;
};

} // namespace matside
