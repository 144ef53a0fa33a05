// SPDX-License-Identifier: MIT
#pragma once

#include <utility>
#include <variant>

namespace matside {

/// A value, or the reason why there is none. Errors are values here: nothing throws.
template <class T, class E> class Result {
public:
    Result(T value) : m_held(std::in_place_index<0>, std::move(value)) {}
    Result(E error) : m_held(std::in_place_index<1>, std::move(error)) {}

    [[nodiscard]] bool ok() const { return m_held.index() == 0; }
    explicit operator bool() const { return ok(); }

    [[nodiscard]] const T &value() const & { return std::get<0>(m_held); }
    [[nodiscard]] T &value() & { return std::get<0>(m_held); }
    [[nodiscard]] T &&value() && { return std::get<0>(std::move(m_held)); }
    [[nodiscard]] const E &error() const { return std::get<1>(m_held); }

private:
    std::variant<T, E> m_held;
};

} // namespace matside
