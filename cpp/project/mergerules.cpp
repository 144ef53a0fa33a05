// SPDX-License-Identifier: MIT
#include "project/mergerules.h"

#include <algorithm>
#include <array>

namespace matside {

namespace {

struct Rule {
    std::string_view pattern;
    MergeWay way;
    std::array<std::string_view, 2> keys = {}; ///< of the things in a list
};

/// What is not listed is one value: lengths, words, the table, the six readings, what a newer program wrote.
constexpr std::array rules{
    Rule{"", MergeWay::Fields},
    Rule{"/blocks", MergeWay::Fields},
    Rule{"/sashing", MergeWay::Fields},
    Rule{"/fold", MergeWay::Fields},
    Rule{"/edge", MergeWay::Fields},
    Rule{"/hoop", MergeWay::Fields},
    Rule{"/strip", MergeWay::Fields},
    Rule{"/thread", MergeWay::Fields},
    Rule{"/cloths", MergeWay::Items, {"id"}},
    Rule{"/cloths/*", MergeWay::Fields},
    Rule{"/patches", MergeWay::Items, {"name"}},
    Rule{"/patches/*", MergeWay::Fields},
    Rule{"/rulers", MergeWay::Items, {"name"}},
    Rule{"/designs", MergeWay::Items, {"id"}},
    Rule{"/made", MergeWay::Fields},
    Rule{"/made/cloths", MergeWay::Items, {"cloth"}},
    Rule{"/made/cloths/*", MergeWay::Fields},
    Rule{"/made/strips", MergeWay::Items, {"strip"}},
    Rule{"/made/strips/*", MergeWay::Fields},
    Rule{"/made/blocks", MergeWay::Items, {"block"}},
    Rule{"/made/blocks/*", MergeWay::Fields},
    Rule{"/made/blocks/*/state", MergeWay::Progress},
    Rule{"/made/blocks/*/notes", MergeWay::Names},
    Rule{"/made/rows", MergeWay::Items, {"row"}},
    Rule{"/made/cut", MergeWay::Items, {"does", "cloth"}},
    Rule{"/made/cut/*", MergeWay::Fields},
    Rule{"/made/cut/*/count", MergeWay::Count},
    Rule{"/made/cut/*/spoiled", MergeWay::Count},
    Rule{"/made/events", MergeWay::Log},
};

/// Names, colours, money, tools and forecasts: nothing made is another size for them.
constexpr std::array<std::string_view, 10> free{
    "/name",          "/hand",           "/table",           "/finest",          "/rulers",
    "/cloths/*/name", "/cloths/*/price", "/cloths/*/colour", "/cloths/*/soldBy", "/slack"};
constexpr std::string_view forecasts = "/thread/";
constexpr std::string_view underMade = "/made";

const Rule *ruleAt(std::string_view pattern)
{
    const auto *const held =
        std::find_if(rules.begin(), rules.end(), [&](const Rule &rule) { return rule.pattern == pattern; });
    return held == rules.end() ? nullptr : &*held;
}

/// The word or number under a key, or nothing.
std::string wordAt(const Json &item, std::string_view key)
{
    const auto held = item.find(key);
    if (held == item.end())
        return {};
    const auto *word = held->get_ptr<const std::string *>();
    return word ? *word : writeJson(*held, Layout::OneLine);
}

/// A log is known by the id made on its tablet; by its content where an older program wrote none.
std::string keyInLog(const Json &item)
{
    const std::string id = wordAt(item, "id");
    return id.empty() ? writeJson(item, Layout::OneLine) : id;
}

} // namespace

MergeWay mergeWayAt(std::string_view pattern)
{
    const Rule *rule = ruleAt(pattern);
    return rule ? rule->way : MergeWay::Whole;
}

std::string mergeKeyOf(std::string_view listPattern, const Json &item)
{
    const Rule *rule = ruleAt(listPattern);
    if (!rule || rule->way == MergeWay::Log)
        return keyInLog(item);
    std::string key;
    for (const std::string_view name : rule->keys) {
        const std::string word = name.empty() ? std::string() : wordAt(item, name);
        key += key.empty() || word.empty() ? word : ' ' + word;
    }
    return key;
}

bool piecesHangOn(std::string_view pattern)
{
    if (pattern.substr(0, underMade.size()) == underMade || pattern.substr(0, forecasts.size()) == forecasts)
        return false;
    return std::none_of(free.begin(), free.end(), [&](std::string_view one) {
        return pattern == one || (pattern.size() > one.size() && pattern.substr(0, one.size()) == one &&
                                  pattern[one.size()] == '/');
    });
}

int furtherOf(const Json &state)
{
    constexpr std::array<std::string_view, 3> order{"stitched", "trimmed", "joined"};
    const auto *word = state.get_ptr<const std::string *>();
    const auto *const held = word ? std::find(order.begin(), order.end(), *word) : order.end();
    return held == order.end() ? -1 : static_cast<int>(held - order.begin());
}

} // namespace matside
