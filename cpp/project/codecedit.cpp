// SPDX-License-Identifier: MIT
#include "project/codec.h"

#include "length/read.h"
#include "project/json.h"

namespace matside {

namespace {

struct AsJson {
    System system;
    Json operator()(Length length) const { return writeLength(length, system); }
    Json operator()(std::int64_t count) const { return count; }
    Json operator()(bool flag) const { return flag; }
    Json operator()(Share share) const { return writeShare(share); }
    Json operator()(const std::string &word) const { return word; }
    Json operator()(Remove) const { return nullptr; }
};

/// The steps of a pointer, unescaped (RFC 6901); false when it is not one.
bool stepsOf(std::string_view pointer, std::vector<std::string> &steps)
{
    if (pointer.empty() || pointer.front() != '/')
        return false;
    steps.emplace_back();
    for (std::size_t i = 1; i < pointer.size(); ++i) {
        const char c = pointer[i];
        if (c == '/')
            steps.emplace_back();
        else if (c == '~' && i + 1 < pointer.size())
            steps.back() += pointer[++i] == '1' ? '/' : '~';
        else
            steps.back() += c;
    }
    return true;
}

/// The child a step leads to, made as an empty object where an object lacks it; nullptr where it cannot be.
Json *descend(Json &from, const std::string &to)
{
    if (from.is_null())
        from = Json::object();
    if (from.is_object())
        return &from[to];
    if (!from.is_array() || to.empty() || to.size() > 6 ||
        to.find_first_not_of("0123456789") != std::string::npos)
        return nullptr;
    const std::size_t index = std::stoul(to);
    return index < from.size() ? &from[index] : nullptr;
}

/// Takes a key away. In a list a null is left, which is read as nothing there: the pointers of its
/// neighbours stay true.
bool takeAway(Json &file, const std::vector<std::string> &steps)
{
    Json *parent = &file;
    for (std::size_t i = 0; i + 1 < steps.size() && parent; ++i) {
        if (parent->is_null() || (parent->is_object() && !parent->contains(steps[i])))
            return true;
        parent = descend(*parent, steps[i]);
    }
    if (!parent || !(parent->is_object() || parent->is_array() || parent->is_null()))
        return false;
    if (parent->is_object())
        parent->erase(steps.back());
    else if (parent->is_array())
        if (Json *target = descend(*parent, steps.back()))
            *target = nullptr;
    return true;
}

bool applyEdit(Json &file, const Edit &edit, System system)
{
    std::vector<std::string> steps;
    if (!stepsOf(edit.at, steps))
        return false;
    if (std::holds_alternative<Remove>(edit.value))
        return takeAway(file, steps);
    Json *parent = &file;
    for (std::size_t i = 0; i + 1 < steps.size() && parent; ++i)
        parent = descend(*parent, steps[i]);
    if (!parent)
        return false;
    Json *target = descend(*parent, steps.back());
    if (!target)
        return false;
    *target = asJson(edit.value, system);
    return true;
}

System systemOf(const Json &file)
{
    const auto held = file.find("system");
    return held != file.end() && *held == "metric" ? System::Metric : System::Inch;
}

} // namespace

Json asJson(const OfferValue &value, System system)
{
    return std::visit(AsJson{system}, value);
}

std::string applyEdits(std::string_view json, const std::vector<Edit> &edits, System system)
{
    Result<Json, Problem> read = readJson(json);
    if (!read || !read.value().is_object())
        return std::string(json);
    for (const Edit &edit : edits)
        if (!applyEdit(read.value(), edit, system))
            return std::string(json);
    return writeFile(read.value());
}

std::string applyOffer(std::string_view json, const Offer &offer)
{
    const Result<Json, Problem> read = readJson(json);
    if (!read || !read.value().is_object())
        return std::string(json);
    std::vector<Edit> edits{{offer.at, offer.value}};
    edits.insert(edits.end(), offer.also.begin(), offer.also.end());
    return applyEdits(json, edits, systemOf(read.value()));
}

} // namespace matside
