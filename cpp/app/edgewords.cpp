// SPDX-License-Identifier: MIT
//
// What the Edge station says.
#include "app/edgewords.h"

#include "app/edgemodel.h"
#include "app/figures.h"
#include "app/money.h"
#include "app/wording.h"
#include "plan/curves.h"
#include "plan/formulas.h"
#include "plan/parts.h"

namespace matside {

namespace {

/// A figure in a plain line is not parted: "cut 3" alone would be cut so.
QString unbroken(QString figure)
{
    return figure.replace(u' ', QChar::Nbsp);
}

QString sideText(Side side)
{
    switch (side) {
    case Side::Top:
        return EdgeModel::tr("top");
    case Side::Right:
        return EdgeModel::tr("right");
    case Side::Bottom:
        return EdgeModel::tr("bottom");
    case Side::Left:
        break;
    }
    return EdgeModel::tr("left");
}

/// "bottom, {7 3/8 in} from the left"; lengths in braces.
QString placeText(const EdgePlace &place, Marks marks)
{
    const QString from = braced(place.from, marks);
    switch (place.side) {
    case EdgeSide::Top:
        return EdgeModel::tr("top, %1 from the left").arg(from);
    case EdgeSide::Right:
        return EdgeModel::tr("right, %1 from the top").arg(from);
    case EdgeSide::Bottom:
        return EdgeModel::tr("bottom, %1 from the left").arg(from);
    case EdgeSide::Left:
        break;
    }
    return EdgeModel::tr("left, %1 from the top").arg(from);
}

} // namespace

std::vector<LaidPlace> bindingPlaces(const Project &project, const BindingLay &lay)
{
    const Marks marks = project.marks();
    std::vector<LaidPlace> places{
        {lay.begin, EdgeModel::tr("Begin and close: %1.").arg(placeText(lay.begin, marks)), {}}};
    for (std::size_t i = 0; i < lay.joins.size(); ++i) {
        const Length off = lay.shorten[i].downTo(project.finest);
        QString says = EdgeModel::tr("Join %1: %2.").arg(i + 1).arg(placeText(lay.joins[i], marks));
        QString cut;
        if (off > Length()) {
            says += u' ' + EdgeModel::tr("First cut %1 off strip %2.").arg(braced(off, marks)).arg(i + 1);
            //: of the binding's strips; %2 is a length, in one line
            cut = EdgeModel::tr("Strip %1: first cut off %2.").arg(i + 1).arg(braced(off, marks));
        }
        places.push_back({lay.joins[i], says, cut});
    }
    return places;
}

QString cornersSay(const Project &project, const Plan &plan)
{
    if (!plan.binding)
        return {};
    const Marks marks = project.marks();
    if (!onBias(plan))
        return EdgeModel::tr("Square corners, mitred.");
    const Length perimeter = plan.binding->length - plan.binding->cut - project.slack;
    QStringList says;
    if (plan.binding->bias->scallops) {
        const ScallopPlan &edge = *plan.binding->bias->scallops;
        //: chord: the straight distance across one scallop
        says +=
            EdgeModel::tr("%1 scallops along and %2 across, {%3} deep: chords of {%4} and {%5}, drawn with a "
                          "radius of {%6} and {%7}.")
                .arg(edge.along)
                .arg(edge.across)
                .arg(figureText(edge.depth, marks), figureText(edge.chord.along, marks),
                     figureText(edge.chord.across, marks), figureText(edge.radius.along, marks),
                     figureText(edge.radius.across, marks));
    } else if (project.edge.corner.kind == CornerKind::Round) {
        says += plan.size.finished.along == plan.size.finished.across
                    ? EdgeModel::tr("A circle of %1 across.").arg(braced(plan.size.finished.along, marks))
                    : EdgeModel::tr("Ends rounded with a radius of %1.")
                          .arg(braced(plan.basis.cornerRadius, marks));
    } else {
        says += EdgeModel::tr("Corners of %1.").arg(braced(plan.basis.cornerRadius, marks));
    }
    says += EdgeModel::tr("The edge is %1 round: cut %2 of bias from a square of %3.")
                .arg(braced(perimeter, marks), braced(plan.binding->length, marks, Round::UpQuarter),
                     braced(plan.binding->bias->square, marks));
    if (const QString strips = biasStripsSay(project, plan); !strips.isEmpty())
        says += strips;
    return says.join(u' ');
}

QString biasStripsSay(const Project &project, const Plan &plan)
{
    const auto strips =
        leastBiasStrips(plan.binding->length, plan.basis.usableBinding, plan.binding->cut, project.system);
    if (!strips)
        return {};
    return EdgeModel::tr("Or as %1 on the bias, from %2 across the cloth.")
        .arg(counted(strips->strips.number, EdgeModel::tr("1 strip"), EdgeModel::tr("%1 strips")),
             braced(strips->height, project.marks()));
}

QString cornersBite(const Project &project, const Plan &plan)
{
    if (!onBias(plan))
        return {};
    const Marks marks = project.marks();
    const BiasPlan &bias = *plan.binding->bias;
    QStringList says;
    Length tightest = plan.basis.cornerRadius;
    if (bias.scallops) {
        tightest = min(bias.scallops->radius.along, bias.scallops->radius.across);
        if (bias.bites > Length())
            says += EdgeModel::tr(
                        "Between two scallops the edge cuts %1 into the stippling: stay-stitch beside the "
                        "line before cutting. With %2 of cloth outside the outline it would clear it.")
                        .arg(braced(bias.bites, marks), braced(bias.scallops->border, marks));
        says += EdgeModel::tr("At each inside point stay-stitch, clip to the stitches, and pivot.");
    } else if (bias.bites > Length()) {
        says +=
            EdgeModel::tr(
                "The arc cuts %1 into the stippling: stay-stitch beside the line before cutting. Up to %2 it "
                "would clear it.")
                .arg(braced(bias.bites, marks),
                     braced(radiusThatClears(plan.basis.outside), marks, Round::Down));
    }
    if (tightest < bias.least)
        says += EdgeModel::tr("It is tight for folded binding, which eases round from %1.")
                    .arg(braced(bias.least, marks));
    return says.join(u' ');
}

QString EdgeModel::heading() const
{
    const QString phase = this->phase();
    if (phase == QStringLiteral("square"))
        return tr("Squaring");
    if (phase == QStringLiteral("frame"))
        return m_steps.figure().key == QStringLiteral("frame.sides") ? tr("Frame, left and right")
                                                                     : tr("Frame, top and bottom");
    if (phase == QStringLiteral("bind"))
        return tr("Binding");
    return phase == QStringLiteral("last") ? tr("Last look") : m_steps.title();
}

QString EdgeModel::tells() const
{
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    const Marks marks = project.marks();
    const QString phase = this->phase();
    if (phase == QStringLiteral("square")) {
        const Pair size = squaredTo();
        const QString across = unbroken(figureText(size.across, marks));
        if (plan.frame && !beforeFrame())
            return tr("along, and %1 across, with its frame").arg(across);
        return size.along == plan.size.raw.along
                   ? tr("along, and %1 across, raw").arg(across)
                   //: after a large length: the piece's side is as long as its measured rows
                   : tr("along, as the rows measure, and %1 across, raw").arg(across);
    }
    if (phase == QStringLiteral("frame") && plan.frame)
        return tr("long, cut %1 wide").arg(unbroken(figureText(plan.frame->cut, marks)));
    if (phase == QStringLiteral("last"))
        return tr("along, and %1 across, finished")
            .arg(unbroken(figureText(plan.size.finished.across, marks)));
    if (phase == QStringLiteral("bind") && plan.binding)
        return onBias(plan) ? tr("of bias, cut %1 wide").arg(unbroken(bindingCut().text))
                            : tr("in %1, cut %2 wide")
                                  .arg(counted(plan.binding->strips, tr("1 strip"), tr("%1 strips")),
                                       unbroken(bindingCut().text));
    return {};
}

QString EdgeModel::verdict() const
{
    const auto &found = reckoned().finding;
    if (!found)
        return {};
    const Marks marks = m_workspace.project().marks();
    if (found->measureAgain && found->otherDiagonal > Length())
        //: of a piece's six measures; %1 and %2 are lengths: the sides as they were read allow no other
        return tr("Beside a diagonal of %1 the other would be %2.")
            .arg(braced(read().diagonals[0], marks), braced(found->otherDiagonal, marks));
    if (found->measureAgain)
        return tr("The readings disagree by %1.").arg(braced(found->K.magnitude(), marks));
    if (found->good) { // the mark above: a limit is not told with "a generous"
        const QString within = braced(max(found->within, marks.finest).upTo(marks.finest), marks);
        return allRead() ? tr("Square within %1.").arg(within)
                         //: of a piece of whose six readings some are only the planned ones
                         : tr("Square within %1, if the rest is as planned.").arg(within);
    }
    const auto differ = [&](const QString &read, const QString &unread, Length by) {
        return (allRead() ? read : unread).arg(braced(by.magnitude(), marks));
    };
    if (found->ends.magnitude() > found->oppositeLimit)
        return differ(tr("Top and bottom differ by %1."),
                      tr("Top and bottom differ by %1, if the rest is as planned."), found->ends);
    if (found->flanks.magnitude() > found->oppositeLimit)
        return differ(tr("Left and right differ by %1."),
                      tr("Left and right differ by %1, if the rest is as planned."), found->flanks);
    return differ(tr("The diagonals differ by %1."),
                  tr("The diagonals differ by %1, if the rest is as planned."), found->diagonals);
}

QString EdgeModel::remedy() const
{
    const auto &found = reckoned().finding;
    if (!found)
        return {};
    const Marks marks = m_workspace.project().marks();
    if (found->measureAgain)
        return tr("Lay it flat and measure again. Do not cut.");
    const QString order = tr("%1, %2, %3, %4")
                              .arg(sideText(found->order[0]), sideText(found->order[1]),
                                   sideText(found->order[2]), sideText(found->order[3]));
    if (!allRead())
        return tr("Measure the rest before you cut.");
    if (found->good)
        return tr("Trim it plainly, in this order: %1.").arg(order);
    //: %1 × %2 is the largest true piece that can be cut, %3 the order of its sides: "bottom, left, top,
    //: right"
    return tr("Ease it with steam and measure again, or square it smaller, to %1 × %2, in this order: %3.")
        .arg(braced(found->trueSize.along, marks, Round::Down),
             braced(found->trueSize.across, marks, Round::Down), order);
}

QString EdgeModel::roundSays() const
{
    const Project &project = m_workspace.project();
    const Plan &plan = m_workspace.plan();
    if (!measured() || !plan.binding || beforeFrame())
        return {};
    Length round;
    for (const Length side : read().sides)
        round += side;
    const Length more = round - (squaredTo().along + squaredTo().across) * 2;
    // A tape is read to a mark on each side: less than that is as planned.
    if (more.magnitude() <= project.finest * 4)
        return {};
    const QString by = braced(more.magnitude(), project.marks());
    if (more < Length())
        return tr("Round the edge it is %1 less than planned.").arg(by);
    const Length needs = plan.binding->length + more;
    const Length gives =
        plan.basis.usableBinding * plan.binding->strips - plan.binding->cut * (plan.binding->strips - 1);
    if (!onBias(plan) && needs <= gives)
        return tr("Round the edge it is %1 more than planned; the binding strips reach.").arg(by);
    return onBias(plan)
               ? tr("Round the edge it is %1 more than planned: cut the bias that much longer.").arg(by)
               : tr("Round the edge it is %1 more than planned: cut one binding strip more.").arg(by);
}

QString EdgeModel::cornersFixed() const
{
    for (const MadeCut &cut : m_workspace.project().made.cut)
        if (cut.count > 0 && (cut.does == "cut-binding" || cut.does == "cut-bias"))
            return tr("The binding is cut: these corners can no longer be changed.");
    return {};
}

QString EdgeModel::pinsSay() const
{
    const auto &pins = m_workspace.project().made.pins;
    if (!pins || (!pins->explained && pins->in == 0 && pins->out == 0))
        return tr("Count the pins and needles that went in, and those that came out.");
    if (pins->explained)
        return pins->in == pins->out ? tr("No pins were used.") : tr("They differ, and you know why.");
    if (pins->in == pins->out)
        return tr("As many out as in.");
    if (pins->out < pins->in)
        return tr("%n still in it: feel along every seam, both faces.", nullptr,
                  static_cast<int>(pins->in - pins->out));
    return tr("More came out than went in: count again.");
}

QVariantList EdgeModel::lay() const
{
    QVariantList list;
    const Marks marks = m_workspace.project().marks();
    if (const auto &lay = reckoned().lay)
        for (const LaidPlace &laid : bindingPlaces(m_workspace.project(), *lay))
            list.append(
                QVariantMap{{QStringLiteral("side"), static_cast<int>(laid.place.side)},
                            {QStringLiteral("fromMm"), laid.place.from.asMm()},
                            {QStringLiteral("figure"), QVariant::fromValue(figureOf(laid.place.from, marks))},
                            {QStringLiteral("says"), laid.says},
                            {QStringLiteral("cutSays"), laid.cut}});
    return list;
}

QString EdgeModel::laySays() const
{
    const auto &lay = reckoned().lay;
    return lay ? bindingLaySays(m_workspace.project(), m_workspace.plan(), *lay) : QString();
}

QString EdgeModel::sewSays() const
{
    return bindingSewSays(m_workspace.project(), m_workspace.plan());
}

QString EdgeModel::cornerSays() const
{
    return cornersSay(m_workspace.project(), m_workspace.plan());
}

QString EdgeModel::biteSays() const
{
    return figuresWhole(cornersBite(m_workspace.project(), m_workspace.plan()));
}

QStringList EdgeModel::careLines() const
{
    return matside::careLines();
}

QStringList EdgeModel::useLines() const
{
    return matside::useLines(m_workspace.project(), m_workspace.plan());
}

} // namespace matside
