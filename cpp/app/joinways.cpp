// SPDX-License-Identifier: MIT
//
// Wider and narrower sashings, and the two ways to close the back (F7, F10).
#include "app/figures.h"
#include "app/joinmodel.h"
#include "app/reply.h"
#include "app/wording.h"
#include "bench/mishap.h"
#include "bench/step.h"
#include "plan/formulas.h"

#include <algorithm>

namespace matside {

namespace {

struct Way {
    const char *kind;
    Project with;
    bool chosen = false;
};

/// Blocks that are trimmed keep the allowance they have.
bool anyTrimmed(const Project &project)
{
    return std::any_of(project.made.blocks.begin(), project.made.blocks.end(), [](const MadeBlock &block) {
        return block.good() && block.state != BlockState::Stitched;
    });
}

Project withAllowance(const Project &project, std::optional<Length> allowance)
{
    Project next = project;
    next.sashing.allowance = allowance;
    return next;
}

/// Pared all round: the outer edge keeps no more than is left.
Project withPared(const Project &project, Length allowance)
{
    Project next = withAllowance(project, allowance);
    for (std::optional<Length> *kept : {&next.edge.outside, &next.edge.seam})
        if (*kept && **kept > allowance)
            *kept = allowance;
    return next;
}

Project withBack(const Project &project, bool doubled)
{
    Project next = project;
    next.fold.doubled = doubled;
    // A width that was given for the other way is reckoned anew.
    if (project.fold.doubled != doubled)
        next.sashing.cutBack.reset();
    return next;
}

/// The block's allowance against the strip's seam: wider sashings are filled or take more cloth from the
/// blocks, narrower ones have it pared off.
std::vector<Way> fillings(const Project &project, const Plan &plan)
{
    const Length seam = plan.basis.seam;
    const Length half = plan.basis.finished.scaled(1, 2);
    std::vector<Way> ways;
    if (plan.basis.finished - seam * 2 > measures(project.system).gapOpen) {
        ways.push_back({"filler", withAllowance(project, std::nullopt), plan.sashing.filler.has_value()});
        ways.push_back({"allowance", withAllowance(project, half), plan.basis.allowance == half});
    } else if (plan.basis.finished < seam * 2) {
        ways.push_back({"pared", withPared(project, half), plan.basis.allowance == half});
    }
    return ways;
}

std::vector<Way> waysOf(const Project &project, const Plan &plan)
{
    std::vector<Way> ways = fillings(project, plan);
    if (anyTrimmed(project))
        std::erase_if(ways, [](const Way &way) { return !way.chosen; });
    if (plan.fold) {
        ways.push_back({"turned", withBack(project, false), !project.fold.doubled});
        ways.push_back({"doubled", withBack(project, true), project.fold.doubled});
    }
    const std::size_t before = plan.problems.size();
    std::erase_if(ways, [&](const Way &way) {
        return !way.chosen && matside::plan(way.with).problems.size() > before;
    });
    return ways;
}

QString nameOfWay(const Way &way, const Plan &after, Marks marks)
{
    const std::string kind = way.kind;
    if (kind == "filler")
        //: batting strips laid between the two allowances inside a wide sashing
        return JoinModel::tr("Lay in batting strips {%1} wide")
            .arg(figureText(after.sashing.allowanceGap, marks));
    if (kind == "allowance")
        //: the cloth left outside a block's stitched line when it is trimmed
        return JoinModel::tr("Leave {%1} on the blocks").arg(figureText(after.basis.allowance, marks));
    if (kind == "pared")
        return JoinModel::tr("Pare the allowances to {%1}").arg(figureText(after.basis.allowance, marks));
    if (kind == "turned")
        return JoinModel::tr("Turn {%1} under").arg(figureText(after.fold->under, marks, Round::Down));
    return JoinModel::tr("Back strip doubled");
}

/// As long as the sashings they lie in; the batting of gaps that come apart serves too (F3).
QString fillerSays(const Plan &after, Marks marks)
{
    QStringList says{JoinModel::tr("The gap between the allowances is filled; trim to {%1}.")
                         .arg(figureText(after.block.trimmed.along, marks))};
    const SashingPlan &sashing = after.sashing;
    if (sashing.shorts > 0)
        says += JoinModel::tr("Cut %1 of them {%2} long.")
                    .arg(sashing.shorts)
                    .arg(figureText(sashing.shortLength + sashing.shortSpare, marks));
    if (sashing.longs > 0)
        says += JoinModel::tr("Cut %1 of them {%2} long.")
                    .arg(sashing.longs)
                    .arg(figureText(sashing.longLength + sashing.longSpare, marks));
    says += JoinModel::tr("Cut the longest pieces first.");
    if (after.strip.harvestedPairs > 0)
        //: gap: cloth between two outlines on the strip, which comes apart into sashings and batting
        says += JoinModel::tr("The batting of the gaps serves too.");
    return says.join(u' ');
}

QString detailOf(const Way &way, const Plan &after, Marks marks)
{
    const std::string kind = way.kind;
    if (kind == "filler")
        return fillerSays(after, marks);
    if (kind == "allowance")
        //: the raw edge of the sashing strip lies inside the block's raw edge
        return JoinModel::tr(
                   "Nothing is laid in. Trim to {%1}; the strip’s edge lies {%2} inside the block’s.")
            .arg(figureText(after.block.trimmed.along, marks),
                 figureText(after.basis.allowance - after.basis.seam, marks, Round::Fine));
    if (kind == "pared")
        return JoinModel::tr("Then they lie flat under the narrow strip. Trim to {%1}; once sewn, pare the "
                             "strip’s edge level with the block’s.")
            .arg(figureText(after.block.trimmed.along, marks));
    return JoinModel::tr("Back strips are cut {%1} wide; the fold catches {%2}.")
        .arg(figureText(*after.sashing.cutBack, marks),
             figureText(after.fold->catchShown, marks, Round::Fine));
}

} // namespace

QString JoinModel::sashingSays() const
{
    QStringList chosen;
    const Project &project = m_workspace.project();
    for (const Way &way : waysOf(project, m_workspace.plan()))
        if (way.chosen)
            chosen.append(nameOfWay(way, m_workspace.plan(), project.marks()));
    return chosen.join(QStringLiteral("; "));
}

QVariantList JoinModel::ways() const
{
    QVariantList list;
    const Project &project = m_workspace.project();
    const std::vector<Step> all = m_workspace.steps();
    for (const Way &way : waysOf(project, m_workspace.plan())) {
        const Plan after = plan(way.with);
        QStringList detail{detailOf(way, after, project.marks())};
        for (const std::string &id : madeToOldMeasure(all, steps(way.with, after)))
            detail.append(sentence(Said{"becomes-wrong", {id}}, project, all));
        list.append(
            QVariantMap{{QStringLiteral("kind"), QString::fromLatin1(way.kind)},
                        {QStringLiteral("says"), figuresWhole(nameOfWay(way, after, project.marks()))},
                        {QStringLiteral("detail"), detail.join(u' ')},
                        {QStringLiteral("chosen"), way.chosen}});
    }
    return list;
}

QVariantMap JoinModel::takeWay(const QString &kind)
{
    const std::vector<Way> all = waysOf(m_workspace.project(), m_workspace.plan());
    const auto way =
        std::find_if(all.begin(), all.end(), [&](const Way &one) { return kind == QLatin1String(one.kind); });
    if (way == all.end() || m_session.readOnly())
        return answer(false, tr("There is no other way now."));
    if (way->chosen)
        return answer(true, QString());
    const bool saved = m_workspace.commit("edit", way->with);
    return answer(saved, saved ? QString() : tr("That could not be saved."));
}

} // namespace matside
