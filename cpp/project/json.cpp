// SPDX-License-Identifier: MIT
#include "project/json.h"

#include <optional>
#include <unordered_set>
#include <vector>

namespace matside {

namespace {

/// Builds a value while the text is read, so that a hostile file is refused at the byte that breaks a bound.
class Builder : public nlohmann::json_sax<Json> {
public:
    Builder(std::string_view text, const JsonBounds &bounds) : m_text(text), m_bounds(bounds) {}

    bool null() override { return put(nullptr); }
    bool boolean(bool value) override { return put(value); }
    bool number_integer(number_integer_t value) override { return put(value); }
    bool number_unsigned(number_unsigned_t value) override { return put(value); }
    bool number_float(number_float_t value, const string_t &) override { return put(value); }
    bool string(string_t &value) override
    {
        if (value.size() > m_bounds.text)
            return refuse("text-too-long", {static_cast<std::int64_t>(m_bounds.text)});
        return put(std::move(value));
    }
    bool binary(binary_t &) override
    {
        return refuse("not-utf8-or-json", {std::int64_t(1), std::int64_t(1)});
    }
    bool start_object(std::size_t) override { return open(Json::object()); }
    bool start_array(std::size_t) override { return open(Json::array()); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(string_t &name) override
    {
        if (name.size() > m_bounds.text)
            return refuse("text-too-long", {static_cast<std::int64_t>(m_bounds.text)});
        if (!m_open.back().keys.insert(name).second)
            return refuse("doubled-key", {name});
        m_open.back().key = name;
        return true;
    }
    bool parse_error(std::size_t at, const std::string &, const nlohmann::detail::exception &) override
    {
        std::int64_t line = 1;
        std::int64_t column = 1;
        for (std::size_t i = 0; i + 1 < at && i < m_text.size(); ++i) {
            column = m_text[i] == '\n' ? 1 : column + 1;
            line += m_text[i] == '\n' ? 1 : 0;
        }
        return refuse("not-utf8-or-json", {line, column});
    }

    std::optional<Problem> fault;
    Json root;

private:
    struct Open {
        Json value;
        std::string key;
        std::unordered_set<std::string> keys;
    };

    bool refuse(std::string code, std::vector<Argument> args)
    {
        if (!fault)
            fault = Problem{pointer(), std::move(code), std::move(args), {}};
        return false;
    }
    std::string pointer() const
    {
        std::string at;
        for (const Open &open : m_open)
            at = open.value.is_object() ? step(at, open.key) : step(at, open.value.size());
        return at;
    }
    bool counted()
    {
        if (++m_values > m_bounds.values ||
            (!m_open.empty() && m_open.back().value.size() >= m_bounds.children))
            return refuse("too-many-values", {static_cast<std::int64_t>(m_bounds.children)});
        return true;
    }
    bool open(Json empty)
    {
        if (m_open.size() >= m_bounds.depth)
            return refuse("too-deep", {static_cast<std::int64_t>(m_bounds.depth)});
        if (!counted())
            return false;
        m_open.push_back({std::move(empty), {}, {}});
        return true;
    }
    bool close()
    {
        Json done = std::move(m_open.back().value);
        m_open.pop_back();
        place(std::move(done));
        return true;
    }
    bool put(Json value)
    {
        if (!counted())
            return false;
        place(std::move(value));
        return true;
    }
    void place(Json value)
    {
        if (m_open.empty())
            root = std::move(value);
        else if (m_open.back().value.is_array())
            m_open.back().value.push_back(std::move(value));
        else
            // Doubled keys were refused, so appending keeps each key once and the file's order.
            m_open.back().value.push_back({m_open.back().key, std::move(value)});
    }

    std::string_view m_text;
    JsonBounds m_bounds;
    std::vector<Open> m_open;
    std::size_t m_values = 0;
};

} // namespace

std::string step(std::string_view pointer, std::string_view key)
{
    std::string at(pointer);
    at += '/';
    for (const char c : key) {
        if (c == '~')
            at += "~0";
        else if (c == '/')
            at += "~1";
        else
            at += c;
    }
    return at;
}

std::string step(std::string_view pointer, std::size_t index)
{
    return std::string(pointer) + '/' + std::to_string(index);
}

Result<Json, Problem> readJson(std::string_view text, const JsonBounds &bounds)
{
    if (text.size() > bounds.bytes)
        return Problem{{},
                       "file-too-large",
                       {static_cast<std::int64_t>(text.size()), static_cast<std::int64_t>(bounds.bytes)},
                       {}};
    Builder builder(text, bounds);
    const bool whole = Json::sax_parse(text, &builder);
    if (builder.fault)
        return *builder.fault;
    if (!whole)
        return Problem{{}, "not-utf8-or-json", {std::int64_t(1), std::int64_t(1)}, {}};
    return std::move(builder.root);
}

} // namespace matside
