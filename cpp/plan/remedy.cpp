// SPDX-License-Identifier: MIT
#include "plan/parts.h"
#include "plan/problems.h"
#include "plan/remarks.h"

#include <algorithm>
#include <charconv>

namespace matside {

namespace {

template <class T> bool put(std::optional<T> &field, const OfferValue &value)
{
    if (std::holds_alternative<Remove>(value))
        field.reset();
    else if (const T *given = std::get_if<T>(&value))
        field = *given;
    else
        return false;
    return true;
}

template <class T> bool put(T &field, const OfferValue &value)
{
    const T *given = std::get_if<T>(&value);
    if (given)
        field = *given;
    return given != nullptr;
}

bool putClothUsable(Project &project, std::string_view at, const OfferValue &value)
{
    constexpr std::string_view head = "/cloths/";
    constexpr std::string_view tail = "/usable";
    if (!at.starts_with(head) || !at.ends_with(tail))
        return false;
    const std::string_view index = at.substr(head.size(), at.size() - head.size() - tail.size());
    std::size_t cloth = 0;
    const auto read = std::from_chars(index.data(), index.data() + index.size(), cloth);
    if (read.ec != std::errc() || cloth >= project.cloths.size())
        return false;
    return put(project.cloths[cloth].usable, value);
}

bool putHoopSide(Project &project, std::string_view at, const OfferValue &value)
{
    const Length *side = std::get_if<Length>(&value);
    for (const auto &[name, size] :
         {std::pair{"/hoop/field/", &Hoop::field}, {"/hoop/opening/", &Hoop::opening}}) {
        std::optional<Pair> &known = project.hoop.*size;
        if (!side || !known || !at.starts_with(name))
            continue;
        (at.ends_with('0') ? known->along : known->across) = *side;
        return true;
    }
    return false;
}

bool applyEdit(Project &p, std::string_view at, const OfferValue &value)
{
    if (at == "/blocks/width")
        return put(p.blocks.width, value);
    if (at == "/blocks/height")
        return put(p.blocks.height, value);
    if (at == "/seam")
        return put(p.seam, value);
    if (at == "/sashing/finished")
        return put(p.sashing.finished, value);
    if (at == "/sashing/allowance")
        return put(p.sashing.allowance, value);
    if (at == "/sashing/cutBack")
        return put(p.sashing.cutBack, value);
    if (at == "/fold/catch")
        return put(p.fold.fold_catch, value);
    if (at == "/fold/doubled")
        return put(p.fold.doubled, value);
    if (at == "/edge/outside")
        return put(p.edge.outside, value);
    if (at == "/edge/seam")
        return put(p.edge.seam, value);
    if (at == "/edge/corner/radius")
        return put(p.edge.corner.radius, value);
    if (at == "/edge/corner/depth")
        return put(p.edge.corner.depth, value);
    if (at == "/edge/corner") {
        p.edge.corner = Corner();
        return std::holds_alternative<Remove>(value);
    }
    if (at == "/edge/kind") {
        p.edge.kind = EdgeKind::Framed;
        return std::holds_alternative<std::string>(value);
    }
    if (at == "/strip/gap")
        return put(p.strip.gap, value);
    if (at == "/strip/usable")
        return put(p.strip.usable, value);
    if (at == "/strip/margin")
        return put(p.strip.margin, value);
    if (at == "/strip/tails")
        return put(p.strip.tails, value);
    if (at == "/strip/frameMayOverlap")
        return put(p.strip.frameMayOverlap, value);
    if (at == "/drawUp/along")
        return put(p.drawUp.along, value);
    if (at == "/drawUp/across")
        return put(p.drawUp.across, value);
    if (at == "/made/testBlock") {
        p.made.testBlock.reset();
        return std::holds_alternative<Remove>(value);
    }
    return putHoopSide(p, at, value) || putClothUsable(p, at, value);
}

} // namespace

bool applyTo(Project &project, const Offer &offer)
{
    if (!applyEdit(project, offer.at, offer.value))
        return false;
    return std::all_of(offer.also.begin(), offer.also.end(),
                       [&](const Edit &edit) { return applyEdit(project, edit.at, edit.value); });
}

void keepWorkingOffers(const Project &project, std::vector<Problem> &found, bool cautions)
{
    for (Problem &problem : found) {
        std::erase_if(problem.offers, [&](const Offer &offer) {
            Project tried = project;
            if (!applyTo(tried, offer))
                return true;
            const Plan after = planFigures(tried);
            const std::vector<Problem> left =
                cautions ? remarkCautions(tried, after) : remarkProblems(tried, after);
            return std::any_of(left.begin(), left.end(), [&](const Problem &other) {
                return other.code == problem.code && other.at == problem.at;
            });
        });
    }
}

} // namespace matside
