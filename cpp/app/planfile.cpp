// SPDX-License-Identifier: MIT
#include "app/planfile.h"

#include "app/findings.h"
#include "app/wording.h"
#include "length/read.h"
#include "plan/onstrip.h"
#include "plan/thread.h"
#include "project/json.h"

#include <cmath>

namespace matside {

namespace {

using Json = nlohmann::ordered_json;

double sixPlaces(double value)
{
    const double rounded = std::round(value * 1e6) / 1e6;
    return rounded == 0.0 ? 0.0 : rounded; // never −0
}

/// Writes lengths on one project's marks.
class Writer {
public:
    Writer(const Project &project, const Plan &plan) : m_project(project), m_plan(plan) {}

    Json block() const
    {
        const BlockPlan &b = m_plan.block;
        return {{"outline", pair(b.outline)}, {"sent", pair(b.sent)}, {"trimmed", pair(b.trimmed)}};
    }

    Json strip() const
    {
        const StripPlan &s = m_plan.strip;
        Json told = {{"width", one(s.width)},
                     {"reach", one(s.reach)},
                     {"gap", one(s.gap, Round::UpEighth)},
                     {"end", one(s.end, Round::UpEighth)},
                     {"advance", one(s.advance)},
                     {"perStrip", s.perStrip},
                     {"starts", list(s.starts)},
                     {"centres", list(s.centres)},
                     {"drawn", list(s.drawn)},
                     {"used", one(s.used)},
                     {"remainder", one(s.remainder)},
                     {"strips", s.strips},
                     {"usable", one(s.usable)},
                     {"harvestedPairs", s.harvestedPairs},
                     {"inWork", inWork()}};
        if (s.wideGaps > 0) {
            told["wideGap"] = one(s.wideGap, Round::UpEighth);
            told["wideGaps"] = s.wideGaps;
        }
        return told;
    }

    Json thread() const
    {
        const Forecast f = forecastOf(m_project, m_plan);
        return {{"stitches", f.use.stitches},  {"all", one(f.use.all)},
                {"bobbin", one(f.use.bobbin)}, {"blocksPerBobbin", f.blocksPerBobbin},
                {"bobbinLeft", f.bobbinLeft},  {"minutes", static_cast<double>(f.minuteTenths) / 10},
                {"ownMinutes", f.ownMinutes},  {"ownBobbin", f.ownBobbin}};
    }

    Json sashing() const
    {
        const SashingPlan &s = m_plan.sashing;
        Json longs{{"count", s.longs}, {"length", one(s.longLength)}, {"spare", one(s.longSpare)}};
        if (!s.front.pieces.empty()) {
            longs["pieces"] = list(s.front.pieces, Round::UpQuarter);
            longs["joins"] = list(s.front.joins);
        }
        if (!s.back.pieces.empty())
            longs["back"] = {{"pieces", list(s.back.pieces, Round::UpQuarter)},
                             {"joins", list(s.back.joins)}};
        Json file{
            {"finished", one(s.finished)},
            {"cutFront", one(s.cutFront)},
            {"cutBack", s.cutBack ? one(*s.cutBack) : Json()},
            {"allowanceGap", one(s.allowanceGap)},
            {"expected", one(s.expected)},
            {"shorts", {{"count", s.shorts}, {"length", one(s.shortLength)}, {"spare", one(s.shortSpare)}}},
            {"longs", std::move(longs)},
            {"marks", list(s.marks)}};
        if (s.filler)
            file["filler"] = one(*s.filler);
        return file;
    }

    Json fold() const
    {
        if (!m_plan.fold)
            return {};
        Json file{{"under", one(m_plan.fold->under, Round::Down)},
                  {"catch", one(m_plan.fold->fold_catch, Round::Fine)},
                  {"catchShown", one(m_plan.fold->catchShown, Round::Fine)},
                  {"leastFold", one(m_plan.fold->leastFold)}};
        if (m_plan.fold->doubled)
            file["doubled"] = true;
        return file;
    }

    Json size() const
    {
        const SizePlan &s = m_plan.size;
        Json size{{"outline", pair(s.outline)}, {"raw", pair(s.raw)}, {"finished", pair(s.finished)}};
        if (s.backing)
            size["backing"] = pair(*s.backing);
        return size;
    }

    Json frame() const
    {
        if (!m_plan.frame)
            return {};
        const FramePlan &f = *m_plan.frame;
        return {{"width", one(f.width)},
                {"cut", one(f.cut)},
                {"filler", one(f.filler)},
                {"sides", one(f.sides)},
                {"ends", one(f.ends)},
                {"spare", one(f.spare)},
                {"frontStrips", f.frontStrips},
                {"backStrips", f.backStrips},
                {"fillerStrips", f.fillerStrips},
                {"joined", f.joined}};
    }

    Json binding() const
    {
        if (!m_plan.binding)
            return {};
        const BindingPlan &b = *m_plan.binding;
        Json binding{{"width", one(b.width)},
                     {"cut", one(b.cut)},
                     {"length", one(b.length, Round::UpQuarter)},
                     {"strips", b.strips}};
        if (b.bias)
            binding["bias"] = {{"square", one(b.bias->square)},
                               {"radius", one(m_plan.basis.cornerRadius)},
                               {"bites", one(b.bias->bites)},
                               {"leastRadius", one(b.bias->least)}};
        if (b.bias && b.bias->scallops) {
            const ScallopPlan &edge = *b.bias->scallops;
            binding["bias"]["scallops"] = {{"depth", one(edge.depth)},    {"along", edge.along},
                                           {"across", edge.across},       {"chord", pair(edge.chord)},
                                           {"radius", pair(edge.radius)}, {"arc", pair(edge.arc)},
                                           {"border", one(edge.border)}};
        }
        return binding;
    }

    Json table() const
    {
        if (!m_plan.table)
            return {};
        Json table{{"reveal", pair(m_plan.table->reveal)}};
        if (m_plan.table->round)
            table["corner"] = one(m_plan.table->corner);
        if (const auto &other = m_plan.table->other) {
            table["leafIn"] = m_plan.table->leafIn;
            table["other"] = {{"leafIn", other->leafIn}, {"reveal", pair(other->reveal)}};
            if (m_plan.table->round)
                table["other"]["corner"] = one(other->corner);
        }
        return table;
    }

    Json batting() const
    {
        const BattingPlan &b = m_plan.batting;
        Json batting{{"width", one(b.width)}, {"least", one(b.least)}, {"inside", pair(b.inside)}};
        if (b.insideFits)
            batting["insideFits"] = *b.insideFits;
        return batting;
    }

    Json patches() const
    {
        Json patches = Json::array();
        for (const PatchPlan &patch : m_plan.patches)
            patches.push_back({{"name", patch.name},
                               {"cloth", patch.cloth},
                               {"count", patch.count},
                               {"rectangle", pair(patch.rectangle)},
                               {"web", pair(patch.web)}});
        return patches;
    }

private:
    Json next(const NextPlace &next) const
    {
        Json file{{"place", next.place},
                  {"block", next.block},
                  {"gap", one(next.gap, Round::UpEighth)},
                  {"start", one(next.start)},
                  {"centre", one(next.centre)},
                  {"expected", one(next.expected)},
                  {"fits", next.fits},
                  {"missing", one(next.missing)}};
        if (next.fits)
            return file;
        file["fitsWithTail"] = next.fitsWithTail;
        if (next.fitsWithGap)
            file["fitsWithGap"] = one(*next.fitsWithGap);
        return file;
    }
    /// The strips something was stitched on or measured of.
    Json inWork() const
    {
        Json all = Json::array();
        if (m_project.made.strips.empty() && m_project.made.blocks.empty())
            return all;
        for (const StripWork &work : stripsInWork(m_project, m_plan)) {
            const bool begun = work.ended || (!work.places.empty() && work.places.front().stitched);
            if (!begun)
                continue;
            Json strip{{"strip", work.strip},
                       {"usable", one(work.usable)},
                       {"end", one(work.end)},
                       {"capacity", work.capacity}};
            if (work.ended)
                strip["ended"] = one(*work.ended);
            if (work.next)
                strip["next"] = next(*work.next);
            if (work.over)
                strip["over"] = next(*work.over);
            all.push_back(std::move(strip));
        }
        return all;
    }
    Json one(Length length, Round round = Round::Nearest) const
    {
        return lengthFile(length, m_project.marks(), round);
    }
    Json pair(const Pair &both) const { return {{"along", one(both.along)}, {"across", one(both.across)}}; }
    Json list(const std::vector<Length> &lengths, Round round = Round::Nearest) const
    {
        Json all = Json::array();
        for (const Length length : lengths)
            all.push_back(one(length, round));
        return all;
    }

    const Project &m_project;
    const Plan &m_plan;
};

Json offerFile(const Offer &offer, Marks marks)
{
    Json file{{"at", offer.at},
              {"value", asJson(offer.value, marks.system)},
              {"says", sentence(offer, marks).toStdString()},
              {"code", offer.code}};
    for (const Edit &edit : offer.also)
        file["also"].push_back({{"at", edit.at}, {"value", asJson(edit.value, marks.system)}});
    return file;
}

std::string lines(const Json &file)
{
    return file.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

} // namespace

nlohmann::ordered_json lengthFile(Length length, Marks marks, Round round)
{
    if (!length.valid())
        return nullptr;
    return {{"in", sixPlaces(length.asInches())},
            {"mm", sixPlaces(length.asMm())},
            {"shows", text(show(length, marks, round))}};
}

nlohmann::ordered_json problemsFile(const std::vector<Problem> &problems, Marks marks)
{
    Json all = Json::array();
    for (const Problem &problem : problems) {
        Json offers = Json::array();
        for (const Offer &offer : problem.offers)
            offers.push_back(offerFile(offer, marks));
        all.push_back({{"at", problem.at},
                       {"code", problem.code},
                       {"says", sentence(problem, marks).toStdString()},
                       {"offers", std::move(offers)}});
    }
    return all;
}

std::string writePlanFile(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                          const std::vector<Problem> &reading)
{
    std::vector<Problem> problems = reading;
    problems.insert(problems.end(), plan.problems.begin(), plan.problems.end());
    const Writer writer(project, plan);
    const Marks marks = project.marks();
    return lines({{"format", "matside-plan"},
                  {"version", 1},
                  {"project", project.name},
                  {"problems", problemsFile(problems, marks)},
                  {"cautions", problemsFile(plan.cautions, marks)},
                  {"block", writer.block()},
                  {"strip", writer.strip()},
                  {"sashing", writer.sashing()},
                  {"fold", writer.fold()},
                  {"size", writer.size()},
                  {"frame", writer.frame()},
                  {"binding", writer.binding()},
                  {"table", writer.table()},
                  {"batting", writer.batting()},
                  {"patches", writer.patches()},
                  {"thread", writer.thread()},
                  {"findings", findingsFile(project, plan)},
                  {"steps", stepsFile(steps, marks)}});
}

std::string writeUnreadable(const Problem &problem)
{
    return lines(
        {{"format", "matside-plan"}, {"version", 1}, {"problems", problemsFile({problem}, Marks())}});
}

} // namespace matside
