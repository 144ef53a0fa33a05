// SPDX-License-Identifier: MIT
#include "plan/working.h"

#include "plan/sums.h"

#include <algorithm>
#include <charconv>

namespace matside {

namespace {

/// "strip.starts.2" → "strip.starts" and 2; -1 when the key ends in no number.
std::pair<std::string_view, std::int64_t> splitIndex(std::string_view figure)
{
    const std::size_t dot = figure.rfind('.');
    if (dot == std::string_view::npos)
        return {figure, -1};
    const std::string_view tail = figure.substr(dot + 1);
    std::int64_t index = -1;
    const auto read = std::from_chars(tail.data(), tail.data() + tail.size(), index);
    if (read.ec != std::errc() || read.ptr != tail.data() + tail.size() || index < 0)
        return {figure, -1};
    return {figure.substr(0, dot), index};
}

bool begins(std::string_view figure, std::initializer_list<std::string_view> heads)
{
    return std::any_of(heads.begin(), heads.end(),
                       [&](std::string_view head) { return figure.starts_with(head); });
}

} // namespace

std::optional<Working> workingOf(const Project &project, const Plan &plan, std::string_view figure)
{
    const auto [name, index] = splitIndex(figure);
    const Sums about{project, plan, measures(project.system), index};
    for (const Sum &sum : allSums()) {
        if (sum.figure != name)
            continue;
        std::optional<Working> working = sum.reckon(about);
        if (working)
            working->figure = figure;
        return working;
    }
    return std::nullopt;
}

std::vector<std::string> figuresWithWorking(const Plan &plan)
{
    std::vector<std::string> figures;
    for (const Sum &sum : allSums()) {
        const std::size_t many = sum.many ? sum.many(plan) : 0;
        if (sum.many)
            for (std::size_t i = 0; i < many; ++i)
                figures.push_back(std::string(sum.figure) + '.' + std::to_string(i));
        else if (!sum.there || sum.there(plan))
            figures.emplace_back(sum.figure);
    }
    return figures;
}

bool notTriedYet(const Plan &plan, std::string_view figure)
{
    if (!plan.basis.blockTried &&
        begins(figure, {"block.sent", "strip.advance", "strip.perStrip", "strip.starts", "strip.centres",
                        "strip.used", "strip.remainder", "strip.strips"}))
        return true;
    const bool joins = plan.sashing.shorts > 0 || plan.sashing.longs > 0;
    return joins && !plan.basis.joinTried &&
           begins(figure, {"sashing.cutFront", "sashing.cutBack", "sashing.expected", "fold."});
}

} // namespace matside
