// SPDX-License-Identifier: MIT
//
// What is said of each layout that would fit, and of what she wants.
#include "app/figures.h"
#include "app/money.h"
#include "app/wording.h"
#include "app/wouldfit.h"

#include <QLocale>

namespace matside {

namespace {

QString blocksText(std::int64_t blocks)
{
    return counted(blocks, WouldFit::tr("1 block"), WouldFit::tr("%1 blocks"));
}

/// Hoop strips that blocks are stitched on.
QString stripsText(std::int64_t strips)
{
    return counted(strips, WouldFit::tr("1 strip"), WouldFit::tr("%1 strips"));
}

/// Tenths of a minute as hours: halves up to ten hours, then whole ones.
QString nearHours(std::int64_t tenths)
{
    const std::int64_t halves = (tenths + 150) / 300;
    if (halves < 20 && halves % 2 != 0)
        return QLocale().toString(static_cast<double>(halves) / 2, 'f', 1);
    return QLocale().toString(static_cast<qlonglong>((halves + 1) / 2));
}

/// The same with its word, of work.
QString hoursSaid(std::int64_t tenths)
{
    const QString hours = nearHours(tenths);
    return hours == QStringLiteral("1") ? WouldFit::tr("1 hour") : WouldFit::tr("%1 hours").arg(hours);
}

QString times(Pair size, Marks marks)
{
    // The unit stands once, behind the second.
    const FigureView along = figureOf(size.along, marks);
    QString first = along.text;
    if (!along.unit.isEmpty() && first.endsWith(along.unit))
        first.chop(along.unit.size());
    //: along × across
    return WouldFit::tr("{%1} × %2").arg(first.trimmed(), braced(size.across, marks));
}

/// What one pair of sides shows of the table, or hangs over it.
QString shows(Length reveal, Marks marks)
{
    if (reveal < Length())
        //: the piece hangs over the table's edge by so much
        return WouldFit::tr("%1 over").arg(braced(-reveal, marks));
    //: so much of the table shows beside the piece
    return WouldFit::tr("%1 bare").arg(braced(reveal, marks));
}

QString corners(Length corner, Marks marks)
{
    //: on a round table: the corners lie so far from its edge
    return corner < Length() ? WouldFit::tr("corners %1 over").arg(braced(-corner, marks))
                             : WouldFit::tr("corners %1 inside").arg(braced(corner, marks));
}

/// The ends with the leaf the other way; the sides stay.
QString otherwise(const TablePlan &table, Marks marks)
{
    const TableSeen &other = *table.other;
    QString says = other.leafIn
                       //: the table's leaf is laid in; %1 = "12 in bare" or "3 in over"
                       ? WouldFit::tr("leaf in: %1 at the ends").arg(shows(other.reveal.along, marks))
                       //: the table's leaf is out; %1 = "12 in bare" or "3 in over"
                       : WouldFit::tr("leaf out: %1 at the ends").arg(shows(other.reveal.along, marks));
    if (table.round)
        says += QStringLiteral(", ") + corners(other.corner, marks);
    return says;
}

QString bothSides(Pair reveal, Marks marks)
{
    if (reveal.along == reveal.across)
        return WouldFit::tr("%1 all round").arg(shows(reveal.along, marks));
    return WouldFit::tr("%1 at the ends, %2 at the sides")
        .arg(shows(reveal.along, marks), shows(reveal.across, marks));
}

} // namespace

QString WouldFit::blockText(const Candidate &candidate)
{
    const Blocks &blocks = candidate.project.blocks;
    const Marks marks = candidate.project.marks();
    const bool square = blocks.width == blocks.height;
    return onOneLine(
        square ? figureText(blocks.width, marks)
               : tr("%1 × %2").arg(figureText(blocks.width, marks), figureText(blocks.height, marks)));
}

QString WouldFit::sizeSays(const Candidate &candidate) const
{
    const Marks marks = candidate.project.marks();
    QString says = times(candidate.plan.size.finished, marks);
    const bool alone = !mats();
    if (alone && candidate.plan.table) {
        const Pair reveal = candidate.plan.table->reveal;
        const bool alike = reveal.along == reveal.across;
        says += QStringLiteral(", ") + (alike ? shows(reveal.along, marks) : bothSides(reveal, marks));
        if (candidate.plan.table->round)
            says += QStringLiteral(", ") + corners(candidate.plan.table->corner, marks);
    }
    if (alone && candidate.plan.table && candidate.plan.table->other)
        says += QStringLiteral("; ") + otherwise(*candidate.plan.table, marks);
    if (m_wanted.washing > Share())
        says += QStringLiteral("; ") + tr("washed %1").arg(times(candidate.washed, marks));
    return says;
}

QString WouldFit::briefSays(const Candidate &candidate)
{
    const Blocks &blocks = candidate.project.blocks;
    const Marks marks = candidate.project.marks();
    const bool square = blocks.width == blocks.height;
    //: a layout in short: columns × rows of blocks of a size
    return tr("%1 × %2 of %3")
        .arg(blocks.columns)
        .arg(blocks.rows)
        .arg(square ? braced(blocks.width, marks) : times({blocks.width, blocks.height}, marks));
}

QString WouldFit::sidesSays(const Candidate &candidate)
{
    return times(candidate.plan.size.finished, candidate.project.marks());
}

QString WouldFit::hoursSays(const Candidate &candidate)
{
    return hoursSaid(candidate.hours.all());
}

QString WouldFit::takesSays(const Candidate &candidate) const
{
    const std::int64_t blocks = candidate.project.blocks.columns * candidate.project.blocks.rows;
    const std::int64_t all = candidate.project.kits;
    if (mats() && all > 1)
        //: %1 place mats; "12 blocks" in all of them; %3 spare blocks that they share; "4 strips", "3 hours"
        return tr("%1 mats: %2 and %3 spare, %4, %5")
            .arg(all)
            .arg(blocksText(blocks * all))
            .arg(sparesOfSet(candidate.project))
            .arg(stripsText(candidate.plan.strip.strips), hoursSaid(candidate.hours.all()));
    return QStringLiteral("%1, %2, %3")
        .arg(blocksText(blocks), stripsText(candidate.plan.strip.strips), hoursSaid(candidate.hours.all()));
}

QString WouldFit::moreSays(const Candidate &candidate, bool shown)
{
    const Marks marks = candidate.project.marks();
    QStringList says;
    if (candidate.widerSashing)
        //: sashing: the strip between two blocks
        says += tr("Sashing %1.").arg(braced(candidate.plan.sashing.finished, marks));
    if (candidate.otherHoop)
        says += tr("In the hoop “%1”.").arg(toQt(candidate.project.hoop.name));
    if (shown)
        //: cloth of each layer for the hoop strips
        says += tr("Strips take %1 a layer.").arg(braced(candidate.cloth, marks));
    return says.join(QLatin1Char(' '));
}

QString WouldFit::cautionSays(const Candidate &candidate)
{
    QStringList says;
    for (const Problem &caution : candidate.plan.cautions)
        if (caution.code == "stiff-lip" || caution.code == "corner-hangs" || caution.code == "leaf-in-lip" ||
            caution.code == "leaf-out-lip")
            says.append(figuresWhole(sentence(caution, candidate.project.marks())));
    return says.join(QLatin1Char(' '));
}

QVariantMap WouldFit::shown() const
{
    if (m_chosen < 0)
        return {};
    const Candidate &candidate = m_found.list[static_cast<std::size_t>(m_chosen)];
    return {{QStringLiteral("sizeSays"), sizeSays(candidate)},
            {QStringLiteral("takesSays"), takesSays(candidate)},
            {QStringLiteral("moreSays"), moreSays(candidate, true)},
            {QStringLiteral("cautionSays"), cautionSays(candidate)}};
}

/// What is wanted of the table: mats, or what shows of it.
QString WouldFit::tableSays() const
{
    const Marks marks = m_base.marks();
    if (!mats())
        return bothSides(m_wanted.reveal, marks);
    const std::int64_t all = std::max<std::int64_t>(matsWanted(), 1);
    const QString size = times(matSize(), marks);
    //: place mats: so many, and the size of each
    return all == 1 ? tr("1 mat of %1").arg(size) : tr("%1 mats of %2").arg(all).arg(size);
}

QString WouldFit::wishSays() const
{
    const Marks marks = m_base.marks();
    QString says = hasTable() ? tableSays() : times(wantedSize(), marks);
    if (hasTable() && m_base.table->leaf)
        says += QStringLiteral(", ") + (m_base.table->leafIn ? tr("leaf in") : tr("leaf out"));
    if (m_wanted.washing > Share())
        says += QStringLiteral("; ") + tr("to make, before washing, %1").arg(times(m_found.asked, marks));
    return says;
}

QString WouldFit::noneSays() const
{
    return m_found.none ? figuresWhole(sentence(*m_found.none, m_base.marks())) : QString();
}

QVariantMap WouldFit::amount(const char *key, const QString &says, const char *kind,
                             const OfferValue &value) const
{
    return {{QStringLiteral("key"), QLatin1String(key)},
            {QStringLiteral("says"), says},
            {QStringLiteral("kind"), QLatin1String(kind)},
            {QStringLiteral("figure"), QVariant::fromValue(figureOf(value, m_base.marks()))}};
}

QVariantMap WouldFit::either(const char *key, const QString &says, const QString &no, const QString &yes,
                             bool value)
{
    const auto choice = [](bool is, const QString &text) {
        return QVariantMap{{QStringLiteral("value"), is}, {QStringLiteral("says"), text}};
    };
    return {{QStringLiteral("key"), QLatin1String(key)},
            {QStringLiteral("says"), says},
            {QStringLiteral("kind"), QStringLiteral("choice")},
            {QStringLiteral("choices"), QVariantList{choice(false, no), choice(true, yes)}},
            {QStringLiteral("value"), value}};
}

/// What shows of the table, or hangs over it.
QVariantList WouldFit::revealWishes() const
{
    const QString bare = tr("table shows");
    const QString over = tr("hangs over");
    return {amount("reveal-along", m_hangs[0] ? tr("over at each end") : tr("bare at each end"), "length",
                   m_wanted.reveal.along.magnitude()),
            either("hangs-along", tr("At each end"), bare, over, m_hangs[0]),
            amount("reveal-across", m_hangs[1] ? tr("over at each side") : tr("bare at each side"), "length",
                   m_wanted.reveal.across.magnitude()),
            either("hangs-across", tr("At each side"), bare, over, m_hangs[1])};
}

QVariantList WouldFit::matWishes() const
{
    const Marks marks = m_base.marks();
    const auto size = [&](const Pair &mat) { return unbraced(times(mat, marks)); };
    const auto &sizes = matUse(m_base.system).sizes;
    QVariantList list{
        either("mat-size", tr("size of the mats"), size(sizes[0]), size(sizes[1]), m_mats.size == 1)};
    if (!m_base.table->diameter)
        list << either("mat-ends", tr("the mats lie"),
                       //: place mats along the two longer sides of a table
                       tr("along the sides"),
                       //: place mats along the sides of a table and at its two ends
                       tr("at the ends too"), m_mats.ends);
    const std::int64_t lie = matsThatLie();
    if (lie > 0)
        //: so many place mats lie on the table
        list << amount("mats", tr("mats, %1 at most").arg(lie), "count", OfferValue(matsWanted()));
    return list;
}

QVariantList WouldFit::wishes() const
{
    const bool inch = m_base.system == System::Inch;
    QVariantList list;
    if (hasTable()) {
        list << either("set", tr("for the table"), tr("one piece"),
                       //: place mats, one for each who sits at the table
                       tr("a set of mats"), mats());
        list << (mats() ? matWishes() : revealWishes());
        if (m_base.table->leaf)
            //: the board laid into a table to lengthen it
            list << either("leaf", tr("the leaf"), tr("out"), tr("in"), m_base.table->leafIn);
    } else {
        list << amount("size-along", tr("finished, along"), "length", m_wanted.size.along)
             << amount("size-across", tr("finished, across"), "length", m_wanted.size.across);
    }
    list << amount("washing", tr("washing takes"), "share", m_wanted.washing)
         << amount("least", tr("smallest block"), "length", m_limits.leastBlock)
         << amount("most", tr("largest block"), "length", m_limits.mostBlock)
         << either("fine", tr("block sizes"), inch ? tr("by quarters") : tr("by 5 mm"), tr("on every mark"),
                   m_limits.step < (inch ? Length::inches(0, 1, 4) : Length::mm(5)))
         << either("widen", tr("wider sashing"), tr("no"),
                   figuresWhole(inch ? tr("up to 1/8 in more") : tr("up to 3 mm more")), m_limits.widen)
         << amount("blocks", mats() ? tr("blocks in one, at most") : tr("blocks at most"), "count",
                   m_limits.mostBlocks);
    return list;
}

} // namespace matside
