// SPDX-License-Identifier: MIT
#include "app/field.h"

#include "project/spelling.h"

namespace matside {

namespace {

/// A choice among an enumeration's spellings.
template <class E, std::size_t N, class Reach>
Field choiceOf(const char *pointer, const char *group, const std::array<Spelling<E>, N> &spellings,
               Reach reach)
{
    Field field{pointer, group, FieldKind::Choice};
    for (const Spelling<E> &spelling : spellings)
        field.choices.emplace_back(spelling.word);
    field.get = [&spellings, reach](const Project &project, const Plan &) -> OfferValue {
        return spelling::wordFor(spellings, reach(project));
    };
    field.put = [&spellings, reach](Project &project, const OfferValue &value) {
        const std::string *word = std::get_if<std::string>(&value);
        for (const Spelling<E> &spelling : spellings)
            if (word && spelling.word == *word)
                reach(project) = spelling.value;
    };
    return field;
}

/// One side of a hoop's size; entering one side of an unknown size makes it square.
Field hoopSide(const char *pointer, std::optional<Pair> Hoop::*size, Length Pair::*side)
{
    Field field{pointer, "hoop"};
    field.get = [size, side](const Project &project, const Plan &plan) -> OfferValue {
        if (const std::optional<Pair> &known = project.hoop.*size)
            return (*known).*side;
        return size == &Hoop::field ? plan.basis.field.*side : Length();
    };
    field.put = [size, side](Project &project, const OfferValue &value) {
        const auto length = lengthIn(value);
        if (!length) {
            (project.hoop.*size).reset();
            return;
        }
        if (!(project.hoop.*size))
            project.hoop.*size = Pair{*length, *length};
        (*(project.hoop.*size)).*side = *length;
    };
    field.given = [size](const Project &project) {
        return size != &Hoop::field || project.hoop.field || !project.hoop.opening;
    };
    return field;
}

Field stripLength(const char *pointer, Length Strip::*side)
{
    Field field{pointer, "strip"};
    field.get = [side](const Project &project, const Plan &) -> OfferValue { return project.strip.*side; };
    field.put = [side](Project &project, const OfferValue &value) {
        if (const auto length = lengthIn(value))
            project.strip.*side = *length;
    };
    field.leastLength = Length();
    return field;
}

Field stripReckoned(const char *pointer, std::optional<Length> Strip::*side, Length StripPlan::*inForce)
{
    Field field{pointer, "strip"};
    field.get = [inForce](const Project &, const Plan &plan) -> OfferValue { return plan.strip.*inForce; };
    field.put = [side](Project &project, const OfferValue &value) { project.strip.*side = lengthIn(value); };
    field.given = [side](const Project &project) { return (project.strip.*side).has_value(); };
    return field;
}

Field stripFlag(const char *pointer, bool Strip::*flag)
{
    Field field{pointer, "strip", FieldKind::Flag};
    field.get = [flag](const Project &project, const Plan &) -> OfferValue { return project.strip.*flag; };
    field.put = [flag](Project &project, const OfferValue &value) {
        if (const bool *given = std::get_if<bool>(&value))
            project.strip.*flag = *given;
    };
    return field;
}

bool isBound(const Project &project)
{
    return project.edge.kind != EdgeKind::Bagged;
}

Field edgeLength(const char *pointer, std::optional<Length> Edge::*side, Length Basis::*inForce)
{
    Field field{pointer, "edge"};
    field.get = [inForce](const Project &, const Plan &plan) -> OfferValue { return plan.basis.*inForce; };
    field.put = [side](Project &project, const OfferValue &value) { project.edge.*side = lengthIn(value); };
    field.given = [side](const Project &project) { return (project.edge.*side).has_value(); };
    field.inUse = isBound;
    field.fine = true;
    return field;
}

Field cornerRadius()
{
    Field field{"/edge/corner/radius", "edge"};
    field.get = [](const Project &, const Plan &plan) -> OfferValue { return plan.basis.cornerRadius; };
    field.put = [](Project &to, const OfferValue &value) { to.edge.corner.radius = lengthIn(value); };
    field.given = [](const Project &from) { return from.edge.corner.radius.has_value(); };
    field.inUse = [](const Project &from) {
        return isBound(from) && from.edge.corner.kind == CornerKind::Rounded;
    };
    return field;
}

bool isScalloped(const Project &from)
{
    return isBound(from) && from.edge.corner.kind == CornerKind::Scalloped;
}

Field scallopDepth()
{
    Field field{"/edge/corner/depth", "edge"};
    field.get = [](const Project &, const Plan &plan) -> OfferValue { return plan.basis.scallopDepth; };
    field.put = [](Project &to, const OfferValue &value) { to.edge.corner.depth = lengthIn(value); };
    field.given = [](const Project &from) { return from.edge.corner.depth.has_value(); };
    field.inUse = isScalloped;
    return field;
}

/// One to a block, until she says how many.
Field scallopCount(const char *pointer, std::int64_t Corner::*given, std::int64_t ScallopPlan::*inForce)
{
    Field field{pointer, "edge", FieldKind::Count};
    field.get = [given, inForce](const Project &from, const Plan &plan) -> OfferValue {
        const auto &binding = plan.binding;
        const bool reckoned = binding && binding->bias && binding->bias->scallops;
        return reckoned ? (*binding->bias->scallops).*inForce : from.edge.corner.*given;
    };
    field.put = [given](Project &to, const OfferValue &value) {
        const std::int64_t *count = std::get_if<std::int64_t>(&value);
        to.edge.corner.*given = count ? *count : 0;
    };
    field.given = [given](const Project &from) { return from.edge.corner.*given > 0; };
    field.inUse = isScalloped;
    return field;
}

Field sashingLine()
{
    Field field{"/thread/sashingLine", "strip", FieldKind::Flag};
    field.get = [](const Project &from, const Plan &) -> OfferValue { return from.thread.sashingLine; };
    field.put = [](Project &to, const OfferValue &value) {
        if (const bool *on = std::get_if<bool>(&value))
            to.thread.sashingLine = *on;
    };
    return field;
}

} // namespace

std::vector<Field> hoopFields()
{
    Field hoopKind = choiceOf(
        "/hoop/kind", "hoop", spelling::hoopKind, [](auto &project) -> auto & { return project.hoop.kind; });
    return {std::move(hoopKind),
            hoopSide("/hoop/outside/0", &Hoop::outside, &Pair::along),
            hoopSide("/hoop/outside/1", &Hoop::outside, &Pair::across),
            hoopSide("/hoop/field/0", &Hoop::field, &Pair::along),
            hoopSide("/hoop/field/1", &Hoop::field, &Pair::across),
            hoopSide("/hoop/opening/0", &Hoop::opening, &Pair::along),
            hoopSide("/hoop/opening/1", &Hoop::opening, &Pair::across),
            stripReckoned("/strip/usable", &Strip::usable, &StripPlan::usable),
            stripReckoned("/strip/gap", &Strip::gap, &StripPlan::gap),
            stripLength("/strip/margin", &Strip::margin),
            stripLength("/strip/placing", &Strip::placing),
            stripLength("/strip/sliver", &Strip::sliver),
            stripLength("/strip/tail", &Strip::tail),
            stripFlag("/strip/tails", &Strip::tails),
            stripFlag("/strip/frameMayOverlap", &Strip::frameMayOverlap),
            stripFlag("/strip/harvest", &Strip::harvest),
            sashingLine()};
}

std::vector<Field> edgeFields()
{
    std::vector<Field> fields{
        choiceOf(
            "/edge/kind", "edge", spelling::edgeKind, [](auto &to) -> auto & { return to.edge.kind; }),
        edgeLength("/edge/outside", &Edge::outside, &Basis::outside),
        edgeLength("/edge/seam", &Edge::seam, &Basis::edgeSeam),
        choiceOf(
            "/edge/binding", "edge", spelling::binding, [](auto &to) -> auto & { return to.edge.binding; }),
        choiceOf(
            "/edge/sewn", "edge", spelling::sewn, [](auto &to) -> auto & { return to.edge.sewn; }),
    };
    fields[3].inUse = fields[4].inUse = isBound;
    Field corners = choiceOf(
        "/edge/corner/kind", "edge", spelling::cornerKind,
        [](auto &to) -> auto & { return to.edge.corner.kind; });
    corners.inUse = isBound;
    fields.push_back(std::move(corners));
    fields.push_back(cornerRadius());
    fields.push_back(scallopDepth());
    fields.push_back(scallopCount("/edge/corner/along", &Corner::along, &ScallopPlan::along));
    fields.push_back(scallopCount("/edge/corner/across", &Corner::across, &ScallopPlan::across));
    Field slack{"/slack", "edge"};
    slack.get = [](const Project &from, const Plan &) -> OfferValue { return from.slack; };
    slack.put = [](Project &to, const OfferValue &value) { to.slack = lengthIn(value).value_or(to.slack); };
    slack.inUse = isBound;
    slack.leastLength = Length();
    fields.push_back(std::move(slack));
    return fields;
}

} // namespace matside
