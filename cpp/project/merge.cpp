// SPDX-License-Identifier: MIT
#include "project/merge.h"

#include "project/codec.h"
#include "project/mergelog.h"
#include "project/mergerules.h"

#include <algorithm>
#include <set>

namespace matside {

namespace {

bool same(const Json *one, const Json *other)
{
    return one && other ? *one == *other : !one && !other;
}

std::string told(const Json *value)
{
    return value ? writeJson(*value, Layout::OneLine) : std::string();
}

const Json *childOf(const Json *object, const std::string &key)
{
    if (!object || !object->is_object())
        return nullptr;
    const auto held = object->find(key);
    return held == object->end() ? nullptr : &*held;
}

/// A list with its things by name.
struct Named {
    std::vector<std::string> keys;
    std::map<std::string, const Json *, std::less<>> items;
};

Named namedOf(const Json *list, std::string_view pattern)
{
    Named named;
    if (!list || !list->is_array())
        return named;
    for (const Json &item : *list)
        named.keys.push_back(mergeKeyOf(pattern, item));
    named.keys = numbered(named.keys);
    for (std::size_t i = 0; i < named.keys.size(); ++i)
        named.items.emplace(named.keys[i], &(*list)[i]);
    return named;
}

const Json *itemOf(const Named &named, const std::string &key)
{
    const auto held = named.items.find(key);
    return held == named.items.end() ? nullptr : held->second;
}

/// A place in the project file, and what stands there. nullptr: nothing.
struct Place {
    std::string at;
    std::string pattern;
    const Json *base = nullptr;
    const Json *mine = nullptr;
    const Json *theirs = nullptr;

    [[nodiscard]] Place field(const std::string &key) const
    {
        return {step(at, key), step(pattern, key), childOf(base, key), childOf(mine, key),
                childOf(theirs, key)};
    }
    [[nodiscard]] bool ofMade() const { return pattern.rfind("/made", 0) == 0; }
};

class Merger {
public:
    Merger(const Json *base, const Json &mine, const Json &theirs, const Answers &answers)
        : m_base(base), m_mine(mine), m_theirs(theirs), m_answers(answers), m_madeHere(hasMadeSince(mine)),
          m_madeThere(hasMadeSince(theirs))
    {
        findCloths(mine);
        findCloths(theirs);
    }

    Json merge() { return *value({"", "", m_base, &m_mine, &m_theirs}); }

    Merged merged;

private:
    using Value = std::optional<Json>;

    [[nodiscard]] bool hasMadeSince(const Json &file) const
    {
        return !same(childOf(m_base, "made"), childOf(&file, "made"));
    }

    static Value valueOf(const Json *held) { return held ? Value(*held) : Value(); }

    Value value(const Place &place)
    {
        if (same(place.mine, place.theirs))
            return valueOf(place.mine);
        switch (mergeWayAt(place.pattern)) {
        case MergeWay::Fields:
            return fields(place);
        case MergeWay::Items:
            return items(place);
        case MergeWay::Log:
            return log(place);
        case MergeWay::Names:
            return names(place);
        default:
            return one(place);
        }
    }

    Value fields(const Place &place)
    {
        const auto keysOf = [](const Json *object) {
            std::vector<std::string> keys;
            if (object && object->is_object())
                for (const auto &held : object->items())
                    keys.push_back(held.key());
            return keys;
        };
        Json object = Json::object();
        for (const std::string &key : mergedOrder(keysOf(place.mine), keysOf(place.theirs)))
            if (Value held = value(place.field(key)))
                append(object, key, std::move(*held));
        return object.empty() && !place.at.empty() ? Value() : Value(std::move(object));
    }

    Value items(const Place &place)
    {
        const Named base = namedOf(place.base, place.pattern);
        const Named mine = namedOf(place.mine, place.pattern);
        const Named theirs = namedOf(place.theirs, place.pattern);
        Json list = Json::array();
        for (const std::string &key : mergedOrder(mine.keys, theirs.keys)) {
            const Place item{step(place.at, key), place.pattern + "/*", itemOf(base, key), itemOf(mine, key),
                             itemOf(theirs, key)};
            if (Value held = this->item(item, key))
                list.push_back(std::move(*held));
        }
        return list;
    }

    Value item(const Place &place, const std::string &key)
    {
        // Two records of one block, both made since they parted: of two blocks, or of one noted twice.
        if (place.mine && place.theirs)
            return m_base && !place.base && place.pattern == "/made/blocks/*" ? one(place) : value(place);
        const Json *held = place.mine ? place.mine : place.theirs;
        if (!held)
            return {}; // taken away on both
        if (!place.base) {
            if (place.theirs)
                take(place);
            if (place.theirs && place.pattern == "/made/blocks/*")
                ++merged.blocksCame;
            return *held;
        }
        // A cloth that something is cut from stays, whoever took it away.
        if (place.pattern == "/cloths/*" && m_cloths.find(key) != m_cloths.end())
            return *held;
        return one(place);
    }

    Value log(const Place &place)
    {
        const Named base = namedOf(place.base, place.pattern);
        const Named mine = namedOf(place.mine, place.pattern);
        const Named theirs = namedOf(place.theirs, place.pattern);
        Json list = Json::array();
        for (const std::string &key : mergedOrder(withoutTakenBack(mine.keys, theirs.keys, base.keys),
                                                  withoutTakenBack(theirs.keys, mine.keys, base.keys))) {
            const Json *here = itemOf(mine, key);
            const Json *there = itemOf(theirs, key);
            if (!here && !there)
                continue;
            merged.eventsCame += here ? 0 : 1;
            // One id, two contents: neither can be told to be the right one, so it does not hang on the side.
            const bool other = !here || (there && told(there) < told(here));
            list.push_back(other ? *there : *here);
        }
        return list;
    }

    Value names(const Place &place)
    {
        const auto listOf = [](const Json *held) {
            std::vector<std::string> all;
            if (held && held->is_array())
                for (const Json &name : *held)
                    all.push_back(name.is_string() ? name.get<std::string>() : told(&name));
            return numbered(all);
        };
        return Json(mergedOrder(listOf(place.mine), listOf(place.theirs)));
    }

    /// One value, which the two tell differently.
    Value one(const Place &place)
    {
        const bool byMine = m_base && same(place.base, place.theirs);
        const bool byTheirs = m_base && same(place.base, place.mine);
        if (byMine || byTheirs) {
            const bool unaware = byMine ? m_madeThere : m_madeHere;
            if (unaware && !place.ofMade() && piecesHangOn(place.pattern))
                return asked(place, {}, true);
            if (byTheirs)
                take(place);
            return valueOf(byTheirs ? place.theirs : place.mine);
        }
        if (place.mine && place.theirs && mergeWayAt(place.pattern) == MergeWay::Progress) {
            const int here = furtherOf(*place.mine);
            const int there = furtherOf(*place.theirs);
            if (here >= 0 && there >= 0)
                return here > there ? *place.mine : *place.theirs;
        }
        // What was noted by one alone is no contradiction.
        if (!m_base && place.ofMade() && (!place.mine || !place.theirs)) {
            if (place.theirs)
                take(place);
            return valueOf(place.mine ? place.mine : place.theirs);
        }
        return asked(place, togetherAt(place), false);
    }

    /// So many before they parted, and those of each since.
    std::optional<std::int64_t> togetherAt(const Place &place) const
    {
        const auto counted = [](const Json *held) {
            return held && held->is_number_integer() ? held->get<std::int64_t>() : 0;
        };
        if (!m_base || mergeWayAt(place.pattern) != MergeWay::Count)
            return {};
        const std::int64_t before = counted(place.base);
        const std::int64_t here = counted(place.mine) - before;
        const std::int64_t there = counted(place.theirs) - before;
        return here > 0 && there > 0 ? std::optional(before + here + there) : std::nullopt;
    }

    Value asked(const Place &place, std::optional<std::int64_t> together, bool bears)
    {
        const std::string sum = together ? std::to_string(*together) : std::string();
        merged.questions.push_back({{place.at, told(place.mine), told(place.theirs)}, sum, bears});
        const auto answer = m_answers.find(place.at);
        if (answer != m_answers.end() && answer->second == Says::Together && together)
            return Json(*together);
        const bool theirs = answer != m_answers.end() && answer->second == Says::Theirs;
        return valueOf(theirs ? place.theirs : place.mine);
    }

    void take(const Place &place) { merged.came.push_back({place.at, told(place.mine), told(place.theirs)}); }

    /// Cloths that patches or records speak of.
    void findCloths(const Json &file)
    {
        const auto look = [&](const Json *list) {
            if (list && list->is_array())
                for (const Json &item : *list)
                    if (const Json *cloth = childOf(&item, "cloth"); cloth && cloth->is_string())
                        m_cloths.insert(cloth->get<std::string>());
        };
        look(childOf(&file, "patches"));
        const Json *made = childOf(&file, "made");
        for (const char *list : {"cloths", "cut", "events"})
            look(childOf(made, list));
    }

    const Json *m_base;
    const Json &m_mine;
    const Json &m_theirs;
    const Answers &m_answers;
    bool m_madeHere; ///< something since they parted, not knowing what the other decided
    bool m_madeThere;
    std::set<std::string, std::less<>> m_cloths;
};

Problem refused(const char *code)
{
    return {"", code, {}, {}};
}

/// A document as writeProject() writes it, so that equal projects are equal texts; nothing when something in
/// it has to be mended first.
std::optional<Json> sound(std::string_view document)
{
    const auto read = readProject(document);
    if (!read || !read.value().problems.empty())
        return std::nullopt;
    auto json = readJson(writeProject(read.value().project));
    return json ? std::optional(std::move(json).value()) : std::nullopt;
}

} // namespace

Result<Merged, Problem> mergeProjects(const std::optional<std::string> &base, std::string_view mine,
                                      std::string_view theirs, const Answers &answers)
{
    const std::optional<Json> here = sound(mine);
    const std::optional<Json> there = sound(theirs);
    if (!here || !there)
        return refused("merge-unreadable");
    if (here->at("system") != there->at("system"))
        return refused("merge-system");
    // A base that cannot be read, or counts otherwise, tells nothing: she is asked more.
    std::optional<Json> before = base ? sound(*base) : std::nullopt;
    if (before && before->at("system") != here->at("system"))
        before.reset();
    Merger merger(before ? &*before : nullptr, *here, *there, answers);
    const std::string text = writeFile(merger.merge());
    const auto read = readProject(text);
    if (!read || !read.value().problems.empty())
        return refused("merge-unsound");
    merger.merged.document = writeProject(read.value().project);
    return std::move(merger.merged);
}

} // namespace matside
