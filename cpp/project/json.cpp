// SPDX-License-Identifier: MIT
#include "project/json.h"

#include <charconv>
#include <optional>
#include <unordered_set>
#include <vector>

namespace matside {

namespace {

/// JSON has no bytes, so a byte value is free to carry a number's own digits.
Json asWritten(const std::string &digits)
{
    return Json::binary({digits.begin(), digits.end()});
}

/// Builds a value while the text is read, so that a hostile file is refused at the byte that breaks a bound.
class Builder : public nlohmann::json_sax<Json> {
public:
    Builder(std::string_view text, const JsonBounds &bounds) : m_text(text), m_bounds(bounds) {}

    bool null() override { return put(nullptr); }
    bool boolean(bool value) override { return put(value); }
    bool number_integer(number_integer_t value) override { return put(value); }
    bool number_unsigned(number_unsigned_t value) override { return put(value); }
    bool number_float(number_float_t value, const string_t &digits) override
    {
        Json number(value);
        return put(number.dump() == digits ? std::move(number) : asWritten(digits));
    }
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
        m_open.back().key = name;
        m_open.back().named = true;
        return m_open.back().keys.insert(name).second || refuse("doubled-key", {name});
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
        bool named = false; ///< a key was read, its value not yet
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
        for (const Open &open : m_open) {
            if (open.value.is_array())
                at = step(at, open.value.size());
            else if (open.named)
                at = step(at, open.key);
        }
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
        m_open.push_back({std::move(empty), {}, false, {}});
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
        if (m_open.empty()) {
            root = std::move(value);
            return;
        }
        Open &open = m_open.back();
        if (open.value.is_array()) {
            open.value.push_back(std::move(value));
            return;
        }
        // Doubled keys were refused, so appending keeps each key once and the file's order.
        append(open.value, std::move(open.key), std::move(value));
        open.named = false;
    }

    std::string_view m_text;
    JsonBounds m_bounds;
    std::vector<Open> m_open;
    std::size_t m_values = 0;
};

/// Writes a value; as deep as the value is nested, which reading has bounded.
class Printer {
public:
    Printer(std::string &text, Layout layout) : m_text(text), m_indented(layout == Layout::Indented) {}

    void value(const Json &json, std::size_t depth)
    {
        if (json.is_object() && !json.empty())
            object(json, depth);
        else if (json.is_array() && !json.empty())
            array(json, depth);
        else if (json.is_binary())
            m_text += numberText(json);
        else
            m_text += json.dump(-1, ' ', false, Json::error_handler_t::replace);
    }

private:
    void object(const Json &json, std::size_t depth)
    {
        char before = '{';
        for (const auto &[key, held] : json.get_ref<const Json::object_t &>()) {
            next(before, depth + 1);
            value(Json(key), depth);
            m_text += m_indented ? ": " : ":";
            value(held, depth + 1);
        }
        end('}', depth);
    }
    void array(const Json &json, std::size_t depth)
    {
        char before = '[';
        for (const Json &held : json) {
            next(before, depth + 1);
            value(held, depth + 1);
        }
        end(']', depth);
    }
    void next(char &before, std::size_t depth)
    {
        m_text += before;
        before = ',';
        line(depth);
    }
    void end(char bracket, std::size_t depth)
    {
        line(depth);
        m_text += bracket;
    }
    void line(std::size_t depth)
    {
        if (m_indented)
            m_text.append(1, '\n').append(2 * depth, ' ');
    }

    std::string &m_text;
    bool m_indented;
};

} // namespace

bool isNumber(const Json &held)
{
    return held.is_number() || held.is_binary();
}

std::string numberText(const Json &held)
{
    if (!held.is_binary())
        return held.dump();
    return {held.get_binary().begin(), held.get_binary().end()};
}

double numberValue(const Json &held)
{
    if (!held.is_binary())
        return held.get<double>();
    // The digits are a JSON number that was found finite when it was read.
    const std::string digits = numberText(held);
    double value = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return value;
}

std::string writeJson(const Json &json, Layout layout)
{
    std::string text;
    Printer(text, layout).value(json, 0);
    return text;
}

std::string writeFile(const Json &json)
{
    std::string text = writeJson(json, Layout::Indented) + '\n';
    return text.size() <= JsonBounds().bytes ? text : writeJson(json, Layout::OneLine) + '\n';
}

void append(Json &object, std::string key, Json value)
{
    object.get_ref<Json::object_t &>().emplace_back(std::move(key), std::move(value));
}

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
