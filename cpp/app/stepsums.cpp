// SPDX-License-Identifier: MIT
//
// The sum behind a figure: its words, its terms, and its lengths as they are laid.
#include "app/figures.h"
#include "app/stepmodel.h"
#include "app/sumwords.h"
#include "app/wording.h"
#include "bench/sides.h"
#include "plan/laidsum.h"
#include "plan/working.h"
#include "project/preset.h"

namespace matside {

namespace {

/// A figure's name; one of a row of figures is told with its number.
QString nameOfFigure(const std::string &key)
{
    const auto end = key.find_last_of('.');
    const bool numbered = end != std::string::npos && end + 1 < key.size() &&
                          key.find_first_not_of("0123456789", end + 1) == std::string::npos;
    if (!numbered)
        return wordsOrCode(figureWords(), key);
    //: one of a row of figures: its name and its number, "centre on the strip, number 2"
    return StepModel::tr("%1, number %2")
        .arg(wordsOrCode(figureWords(), key.substr(0, end)))
        .arg(std::stoi(key.substr(end + 1)) + 1);
}

QString plainTerm(const Term &term, Marks marks)
{
    if (const Length *length = std::get_if<Length>(&term.value))
        return figureText(*length, marks);
    if (const std::int64_t *count = std::get_if<std::int64_t>(&term.value))
        return QString::number(*count);
    return toQt(writeShare(std::get<Share>(term.value)));
}

/// How far along all that is laid a place stands, 0 to 1; for drawing only.
double shareOf(Length place, const LaidSum &laid)
{
    const Length all = laid.most - laid.least;
    return all > Length() ? place.asMm() / all.asMm() : 0;
}

QVariantMap pieceView(const SumPiece &piece, const LaidSum &laid)
{
    return {{QStringLiteral("at"), shareOf(piece.from - laid.least, laid)},
            {QStringLiteral("share"), shareOf(piece.length, laid)},
            {QStringLiteral("term"), piece.term ? static_cast<int>(*piece.term) : -1},
            {QStringLiteral("less"), piece.less},
            {QStringLiteral("rest"), piece.rest}};
}

QString kindOf(SumKind kind)
{
    switch (kind) {
    case SumKind::Sum:
        return QStringLiteral("sum");
    case SumKind::Larger:
        return QStringLiteral("larger");
    case SumKind::Part:
        return QStringLiteral("part");
    case SumKind::Often:
        return QStringLiteral("often");
    default:
        return QStringLiteral("words");
    }
}

/// Where the pieces of a term lie: in the way that counts, or in the others where it is only there.
QVariantList piecesOf(std::size_t term, const LaidSum &laid)
{
    QVariantList list;
    for (const bool counts : {true, false})
        for (const SumWay &way : laid.ways)
            for (const SumPiece &piece : way.pieces)
                if (way.counts == counts && piece.term == term && (counts || list.isEmpty()))
                    list.append(pieceView(piece, laid));
    return list;
}

} // namespace

QVariantList StepModel::workingFor(const QString &key) const
{
    QVariantList list;
    const Project &project = m_workspace.project();
    const auto working = workingOf(project, m_workspace.plan(), key.toStdString());
    if (!working)
        return list;
    const LaidSum laid = laidOf(*working);
    for (std::size_t at = 0; at < working->terms.size(); ++at) {
        const Term &term = working->terms[at];
        const bool deeper = !term.figure.empty() && workingOf(project, m_workspace.plan(), term.figure);
        // A size that off-size blocks have in common was never entered, though it stands where hers stood.
        const bool common =
            (term.entered == "/blocks/width" && takenAsCommon(project, project.blocks.width)) ||
            (term.entered == "/blocks/height" && takenAsCommon(project, project.blocks.height));
        const Whose whose = term.entered.empty() ? Whose::Reckoned : whoseIs(project, term.entered);
        list.append(QVariantMap{{QStringLiteral("name"), wordsOrCode(termWords(), term.name)},
                                {QStringLiteral("text"), plainTerm(term, project.marks())},
                                {QStringLiteral("figureKey"), deeper ? toQt(term.figure) : QString()},
                                {QStringLiteral("entered"), whose == Whose::Hers && !common},
                                {QStringLiteral("common"), whose == Whose::Hers && common},
                                {QStringLiteral("preset"), whose == Whose::Preset},
                                {QStringLiteral("pieces"), piecesOf(at, laid)}});
    }
    return list;
}

QString StepModel::workingSentence(const QString &key) const
{
    const auto working = workingOf(m_workspace.project(), m_workspace.plan(), key.toStdString());
    if (!working)
        return {};
    const FigureView figure = planFigure(m_workspace.project(), m_workspace.plan(), key.toStdString());
    return QStringLiteral("%1: %2 = {%3}")
        .arg(nameOfFigure(working->figure), sumInWords(working->formula), figure.text);
}

QVariantMap StepModel::workingLaid(const QString &key) const
{
    const auto working = workingOf(m_workspace.project(), m_workspace.plan(), key.toStdString());
    if (!working)
        return {};
    const LaidSum laid = laidOf(*working);
    QVariantList ways;
    for (const SumWay &way : laid.ways) {
        QVariantList pieces;
        for (const SumPiece &piece : way.pieces)
            pieces.append(pieceView(piece, laid));
        ways.append(QVariantMap{{QStringLiteral("pieces"), pieces},
                                {QStringLiteral("counts"), way.counts},
                                {QStringLiteral("share"), shareOf(way.end, laid)},
                                {QStringLiteral("times"), static_cast<int>(way.times)}});
    }
    const Length *total = std::get_if<Length>(&working->value);
    return {{QStringLiteral("kind"), kindOf(laid.kind)},
            {QStringLiteral("ways"), ways},
            {QStringLiteral("zero"), shareOf(-laid.least, laid)},
            {QStringLiteral("total"), total ? shareOf(*total, laid) : 0},
            {QStringLiteral("parts"), static_cast<int>(laid.parts)},
            {QStringLiteral("mm"), (laid.most - laid.least).asMm()},
            {QStringLiteral("says"), nameOfFigure(working->figure)},
            {QStringLiteral("figure"),
             QVariant::fromValue(planFigure(m_workspace.project(), m_workspace.plan(), key.toStdString()))}};
}

} // namespace matside
