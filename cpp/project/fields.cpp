// SPDX-License-Identifier: MIT
#include "project/fields.h"

#include "length/read.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace matside {

namespace {

constexpr std::size_t longestWord = 2000;
constexpr std::size_t longestTold = 80;

const Json &emptyObject()
{
    static const Json empty = Json::object();
    return empty;
}

bool allowed(Length length, Least least)
{
    switch (least) {
    case Least::Negative:
        return true;
    case Least::Zero:
        return length >= Length();
    case Least::Positive:
        break;
    }
    return length > Length();
}

/// A bare number in the digits people type: JSON's exponents are no part of a length.
std::string plainDigits(const Json &held)
{
    if (held.is_number_integer())
        return held.dump();
    // Eight places are past a tick; a number with more than twelve digits before them is too long anyway.
    const double value = std::clamp(numberValue(held), -1e12, 1e12);
    std::array<char, 32> digits{};
    char *const end = std::to_chars(digits.begin(), digits.end(), value, std::chars_format::fixed, 8).ptr;
    std::string text(digits.begin(), end);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

} // namespace

Fields::Fields(const Json &object, std::string pointer, System system, std::vector<Problem> &problems)
    : m_object(object.is_object() ? object : emptyObject()), m_pointer(std::move(pointer)), m_system(system),
      m_problems(problems)
{
    if (!object.is_object())
        m_problems.push_back({m_pointer, "wrong-type", {std::string("object")}, {takeAway(m_pointer)}});
}

Offer Fields::takeAway(const std::string &pointer)
{
    return {"take-away", pointer, Remove{}, {}, {}};
}

std::string Fields::told(const Json &held)
{
    std::string text = held.is_string() ? held.get<std::string>() : writeJson(held, Layout::OneLine);
    if (text.size() <= longestTold)
        return text;
    std::size_t end = longestTold;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U)
        --end; // never inside a character
    text.resize(end);
    return text + "\u2026";
}

const Json *Fields::find(const char *key)
{
    m_asked.insert(key);
    const auto held = m_object.find(key);
    return held == m_object.end() || held->is_null() ? nullptr : &*held;
}

bool Fields::has(const char *key) const
{
    const auto held = m_object.find(key);
    return held != m_object.end() && !held->is_null();
}

bool Fields::isText(const char *key) const
{
    const auto held = m_object.find(key);
    return held != m_object.end() && held->is_string();
}

void Fields::wrong(const std::string &key, std::string code, std::vector<Argument> args,
                   std::vector<Offer> offers)
{
    if (offers.empty())
        offers.push_back(takeAway(at(key)));
    m_problems.push_back({at(key), std::move(code), std::move(args), std::move(offers)});
}

void Fields::needed(const char *key, std::vector<Offer> offers)
{
    wrong(key, "needed", {}, std::move(offers));
}

std::optional<Length> Fields::readOne(const Json &held, const std::string &pointer, Least least, Length usual)
{
    std::vector<Offer> offers;
    if (usual > Length())
        offers.push_back({"set-length", pointer, usual, {Told{usual, Round::Nearest}}, {}});
    if (!held.is_string() && !isNumber(held)) {
        m_problems.push_back({pointer, "wrong-type", {std::string("length")}, offers});
        return std::nullopt;
    }
    const Result<Length, ReadError> read =
        readLength(held.is_string() ? held.get<std::string>() : plainDigits(held), m_system);
    if (!read) {
        const bool tooLong = read.error().fault == ReadFault::TooLong;
        m_problems.push_back({pointer,
                              tooLong ? "length-too-long" : "not-a-length",
                              {told(held), static_cast<std::int64_t>(read.error().at)},
                              offers});
        return std::nullopt;
    }
    if (!allowed(read.value(), least)) {
        m_problems.push_back({pointer, "length-too-small", {told(held)}, offers});
        return std::nullopt;
    }
    return read.value();
}

void Fields::length(const char *key, Length &value, Least least)
{
    if (const Json *held = find(key))
        value = readOne(*held, at(key), least, value).value_or(value);
}

void Fields::length(const char *key, std::optional<Length> &value, Least least)
{
    const Json *held = find(key);
    if (!held)
        return;
    const std::size_t before = m_problems.size();
    value = readOne(*held, at(key), least, value.value_or(Length()));
    // Where the value is reckoned when absent, taking it away is the remedy.
    if (m_problems.size() > before)
        m_problems.back().offers.push_back(takeAway(at(key)));
}

bool Fields::list(const char *key, std::vector<Length> &value, Least least)
{
    const Json *held = array(key, 1000);
    if (!held)
        return false;
    for (std::size_t i = 0; i < held->size(); ++i)
        if (const auto read = readOne((*held)[i], step(at(key), i), least, Length()))
            value.push_back(*read);
        else
            m_problems.back().offers.push_back(takeAway(at(key)));
    if (value.size() != held->size())
        value.clear();
    return true;
}

void Fields::pair(const char *key, std::optional<Pair> &value)
{
    const Json *held = find(key);
    if (!held)
        return;
    if (!held->is_array() || held->size() != 2)
        return wrong(key, "wrong-type", {std::string("pair")}, {});
    std::vector<Length> both;
    if (list(key, both, Least::Positive) && both.size() == 2)
        value = Pair{both[0], both[1]};
}

void Fields::share(const char *key, Share &value, Share least, Share most)
{
    const Json *held = find(key);
    if (!held)
        return;
    if (!held->is_string() && !isNumber(*held))
        return wrong(key, "wrong-type", {std::string("share")}, {{"set-share", at(key), value, {value}, {}}});
    const std::string text = held->is_string() ? held->get<std::string>() : plainDigits(*held);
    const Result<Share, ReadError> read = readShare(text);
    if (!read)
        return wrong(key, "not-a-share", {told(*held), static_cast<std::int64_t>(read.error().at)},
                     {{"set-share", at(key), value, {value}, {}}});
    if (read.value() < least || read.value() > most) {
        const Share nearest = std::clamp(read.value(), least, most);
        return wrong(key, "draw-up-out-of-range", {read.value(), most},
                     {{"set-draw-up", at(key), nearest, {nearest}, {}}});
    }
    value = read.value();
}

void Fields::count(const char *key, std::int64_t &value, std::int64_t least, std::int64_t most)
{
    const Json *held = find(key);
    if (!held)
        return;
    const bool fits =
        held->is_number_integer() &&
        (!held->is_number_unsigned() || held->get<std::uint64_t>() <= static_cast<std::uint64_t>(most));
    const std::int64_t given = fits ? held->get<std::int64_t>() : 0;
    if (fits && given >= least && given <= most) {
        value = given;
        return;
    }
    const bool small = isNumber(*held) && numberValue(*held) < static_cast<double>(least);
    const bool large = isNumber(*held) && numberValue(*held) > static_cast<double>(most);
    const std::int64_t nearest = small ? least : large ? most : value;
    wrong(key, isNumber(*held) ? "count-out-of-range" : "wrong-type",
          isNumber(*held) ? std::vector<Argument>{least, most} : std::vector<Argument>{std::string("count")},
          {{"set-count", at(key), nearest, {nearest}, {}}});
}

void Fields::flag(const char *key, bool &value)
{
    const Json *held = find(key);
    if (!held)
        return;
    if (!held->is_boolean())
        return wrong(key, "wrong-type", {std::string("flag")}, {{"set-flag", at(key), value, {}, {}}});
    value = held->get<bool>();
}

void Fields::word(const char *key, std::string &value)
{
    const Json *held = find(key);
    if (!held)
        return;
    if (!held->is_string() || held->get_ref<const std::string &>().size() > longestWord)
        return wrong(key, held->is_string() ? "text-too-long" : "wrong-type",
                     held->is_string() ? std::vector<Argument>{static_cast<std::int64_t>(longestWord)}
                                       : std::vector<Argument>{std::string("text")},
                     {});
    value = held->get<std::string>();
}

void Fields::words(const char *key, std::vector<std::string> &value)
{
    const Json *held = array(key, 1000);
    if (!held)
        return;
    for (std::size_t i = 0; i < held->size(); ++i) {
        if ((*held)[i].is_string())
            value.push_back((*held)[i].get<std::string>());
        else
            m_problems.push_back(
                {step(at(key), i), "wrong-type", {std::string("text")}, {takeAway(at(key))}});
    }
}

void Fields::number(const char *key, std::optional<std::string> &value)
{
    const Json *held = find(key);
    if (!held)
        return;
    if (!isNumber(*held) || numberValue(*held) < 0)
        return wrong(key, "wrong-type", {std::string("price")}, {});
    value = numberText(*held);
}

const Json *Fields::object(const char *key)
{
    const Json *held = find(key);
    if (held && !held->is_object()) {
        wrong(key, "wrong-type", {std::string("object")}, {});
        return nullptr;
    }
    return held;
}

const Json *Fields::array(const char *key, std::size_t most)
{
    const Json *held = find(key);
    if (held && !held->is_array()) {
        wrong(key, "wrong-type", {std::string("list")}, {});
        return nullptr;
    }
    if (held && held->size() > most) {
        // No remedy in one tap: it would throw the whole list away.
        m_problems.push_back({at(key), "too-many", {static_cast<std::int64_t>(most)}, {}});
        return nullptr;
    }
    return held;
}

std::string Fields::rest() const
{
    Json left = Json::object();
    for (const auto &[key, value] : m_object.items())
        if (m_asked.find(key) == m_asked.end())
            append(left, key, value);
    return left.empty() ? std::string() : writeJson(left, Layout::OneLine);
}

} // namespace matside
