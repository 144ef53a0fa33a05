// SPDX-License-Identifier: MIT
#include "app/figures.h"

#include "app/rulerwords.h"
#include "app/wording.h"
#include "plan/working.h"

#include <QLocale>
#include <QRegularExpression>

#include <algorithm>

namespace matside {

namespace {

FigureView countOf(std::int64_t count)
{
    FigureView view;
    view.minus = count < 0;
    view.whole = QString::number(count < 0 ? -count : count);
    view.text = (view.minus ? QStringLiteral("\u2212") : QString()) + view.whole;
    view.valid = true;
    return view;
}

FigureView shareOf(Share share)
{
    FigureView view;
    view.text = valueText(share, Marks());
    view.unit = QStringLiteral("%");
    view.whole = view.text;
    view.whole.chop(2); // " %"
    view.minus = share < Share();
    view.valid = true;
    return view;
}

/// The one figure of a pair, or the whole of what is not a pair.
std::optional<Length> ofPair(std::string_view key, std::string_view head, const Pair &pair)
{
    if (!key.starts_with(head))
        return std::nullopt;
    if (key.substr(head.size()) == ".along")
        return pair.along;
    if (key.substr(head.size()) == ".across")
        return pair.across;
    return std::nullopt;
}

/// Figures without a sum of their own: they are entered, or fixed by what is.
std::optional<std::pair<Length, Round>> plainFigure(const Project &project, const Plan &plan,
                                                    std::string_view key)
{
    if (const auto outline = ofPair(key, "block.outline", plan.block.outline))
        return {{*outline, Round::Nearest}};
    if (key == "fold.catch" && plan.fold)
        return {{plan.fold->fold_catch, Round::Fine}};
    if (key == "strip.usable")
        return {{plan.strip.usable, Round::Nearest}};
    if (key == "seam")
        return {{project.seam, Round::Fine}};
    if (plan.size.backing)
        if (const auto backing = ofPair(key, "size.backing", *plan.size.backing))
            return {{*backing, Round::Nearest}};
    return std::nullopt;
}

} // namespace

FigureView figureOf(Length length, Marks marks, Round round)
{
    const Shown shown = show(length, marks, round);
    FigureView view;
    view.valid = shown.valid;
    view.text = figureText(shown);
    if (!shown.valid)
        return view;
    view.minus = shown.minus;
    view.lean = leanText(shown.lean);
    view.mm = length.asMm();
    const bool inch = shown.system == System::Inch;
    view.unit = inch ? QStringLiteral("in") : QStringLiteral("mm");
    view.whole = shown.whole != 0 || shown.num == 0 || !inch ? QString::number(shown.whole) : QString();
    if (shown.num != 0 && inch) {
        view.num = QString::number(shown.num);
        view.den = QString::number(shown.den);
    } else if (shown.num != 0) {
        view.whole += QLocale().decimalPoint() + QString::number(shown.num);
    }
    return view;
}

FigureView figureOf(const OfferValue &value, Marks marks)
{
    if (const Length *length = std::get_if<Length>(&value))
        return figureOf(*length, marks);
    if (const std::int64_t *count = std::get_if<std::int64_t>(&value))
        return countOf(*count);
    if (const Share *share = std::get_if<Share>(&value))
        return shareOf(*share);
    return {};
}

FigureView planFigure(const Project &project, const Plan &plan, std::string_view key)
{
    FigureView view;
    if (const std::optional<Working> working = workingOf(project, plan, key)) {
        const Length *length = std::get_if<Length>(&working->value);
        view = length ? figureOf(*length, project.marks(), working->round)
                      : countOf(std::get<std::int64_t>(working->value));
        view.hasWorking = true;
    } else if (const auto plain = plainFigure(project, plan, key)) {
        view = figureOf(plain->first, project.marks(), plain->second);
    }
    view.key = toQt(key);
    view.untried = view.valid && notTriedYet(plan, key);
    return view;
}

TableView tableView(const Project &project, const Plan &plan)
{
    TableView view;
    view.columns = static_cast<int>(project.blocks.columns);
    view.rows = static_cast<int>(project.blocks.rows);
    view.finishedAlongMm = plan.size.finished.along.asMm();
    view.finishedAcrossMm = plan.size.finished.across.asMm();
    view.trimmedAlongMm = plan.block.trimmed.along.asMm();
    view.trimmedAcrossMm = plan.block.trimmed.across.asMm();
    view.outlineAlongMm = plan.block.outline.along.asMm();
    view.outlineAcrossMm = plan.block.outline.across.asMm();
    view.sashingMm = plan.sashing.finished.asMm();
    view.edgeMm = (plan.size.finished.along - plan.size.outline.along).scaled(1, 2).asMm();
    view.reversible = project.build == Build::Reversible;
    if (!project.table)
        return view;
    const Table &table = *project.table;
    view.shape = table.diameter ? QStringLiteral("round") : QStringLiteral("rect");
    view.tableAlongMm = table.along(table.leafIn).value_or(Length()).asMm();
    view.tableAcrossMm = table.across().value_or(Length()).asMm();
    view.leafMm = table.leafLying(table.leafIn).asMm();
    view.revealAlong = planFigure(project, plan, "table.reveal.along");
    view.revealAcross = planFigure(project, plan, "table.reveal.across");
    view.corner = planFigure(project, plan, "table.corner");
    return view;
}

QString onOneLine(QString words)
{
    return words.replace(QLatin1Char(' '), QChar::Nbsp);
}

QString figuresWhole(QString sentence)
{
    static const QRegularExpression parts(
        QStringLiteral("(?<=[0-9]) (?=[0-9]+/[0-9]|(?:in|mm|cm|m|yd|%)(?![A-Za-z]))"));
    return sentence.replace(parts, QString(QChar::Nbsp));
}

RulerView rulerView(const Step &step, const Project &project, const Plan &plan)
{
    RulerView view;
    if (!step.ruler)
        return view;
    const RulerPlace &ruler = *step.ruler;
    const Marks marks = project.marks();
    view.show = true;
    view.layers = static_cast<int>(ruler.layers);
    view.firstName = ruler.first.empty() ? QString() : rulerText(ruler.first);
    view.firstLengthIn = ruler.firstLength.asInches();
    view.firstWidthIn = ruler.firstWidth.asInches();
    view.lineIn = ruler.line.asInches();
    view.lineFigure = figureOf(ruler.line, marks);
    view.on = ruler.on == LineOn::Outline ? QStringLiteral("outline")
              : ruler.on == LineOn::Fold  ? QStringLiteral("fold")
                                          : QStringLiteral("cut-edge");
    if (ruler.second) {
        view.secondName = rulerText(*ruler.second);
        view.secondLengthIn = ruler.secondLength.asInches();
        view.secondWidthIn = ruler.secondWidth.asInches();
        view.secondFigure = figureOf(ruler.secondWidth, marks);
    }
    const Length usable = plan.strip.usable;
    const Length kept = ruler.off();
    // A piece is cut off its band by its length: the blade goes across the band, no farther.
    const bool offBand = step.size && kept == step.size->along && kept != step.size->across;
    view.keepIn = step.size && !offBand ? step.size->across.asInches() : kept.asInches();
    // Folded cloth is cut through all its layers at once: the blade goes only as far as the fold lets it lie.
    const Length whole = !step.size ? usable : offBand ? step.size->across : step.size->along;
    view.cutLengthIn = whole.asInches() / static_cast<double>(std::max<std::int64_t>(ruler.layers, 1));
    view.along = step.does == Does::CutAlong;
    view.clothLengthIn =
        (view.along ? usable : max(step.size ? step.size->along : usable, usable)).asInches();
    view.fence = ruler.fence == Fence::Mat          ? QStringLiteral("mat")
                 : ruler.fence == Fence::SlideAlong ? QStringLiteral("slide")
                                                    : QStringLiteral("long-enough");
    return view;
}

} // namespace matside
