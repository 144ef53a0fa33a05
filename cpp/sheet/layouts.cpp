// SPDX-License-Identifier: MIT
//
// How each cloth is cut: its strips, and what is cut out of each, drawn to scale.
#include "sheet/pages.h"

#include "app/shopwords.h"
#include "app/wording.h"
#include "sheet/prints.h"

#include <algorithm>

namespace matside {

namespace {

/// A cloth or an owned piece of it, and the strips cut from it.
struct Ground {
    Length length; ///< along the selvage
    Length width;  ///< between the selvages
    std::vector<const ShopStrip *> strips;
    QString name; ///< of an owned piece
};

/// What is laid out on: what is bought, then the owned pieces in the order they are listed.
std::vector<Ground> groundsOf(const Job &job, const Buy &buy)
{
    std::vector<Ground> grounds;
    const auto add = [&](std::int64_t owned, Length length, Length width, const QString &name) {
        Ground ground{length, width, {}, name};
        for (const ShopStrip &strip : buy.strips)
            if (strip.owned == owned)
                ground.strips.push_back(&strip);
        if (!ground.strips.empty() && length > Length() && width > Length())
            grounds.push_back(std::move(ground));
    };
    add(0, buy.bought + buy.more, buy.usable, {});
    if (const Cloth *cloth = clothNamed(job.project, buy.cloth))
        for (std::size_t i = 0; i < cloth->owned.size(); ++i)
            add(static_cast<std::int64_t>(i) + 1, cloth->owned[i].length, cloth->owned[i].width,
                //: a piece of cloth she has already, numbered
                tell(QT_TRANSLATE_NOOP("Sheet", "Piece %1 of what you have")).arg(i + 1));
    return grounds;
}

/// More of one kind than anybody would count on paper are not drawn one by one.
constexpr std::int64_t mostPieces = 400;

/// A ground on the page: its longer side lies across, as far as the room lets it.
struct Place {
    static constexpr double across = 86;
    static constexpr double most = 44;
    explicit Place(const Ground &ground)
        : upright(ground.width >= ground.length),
          scale(std::max(scaleFor(max(ground.width, ground.length).asMm(), across),
                         scaleFor(min(ground.width, ground.length).asMm(), most))),
          k(1.0 / scale), wide((upright ? ground.width : ground.length).asMm() * k),
          high((upright ? ground.length : ground.width).asMm() * k)
    {
    }
    /// A rectangle of the cloth: from where along the selvage and from it, how far along and across.
    [[nodiscard]] QRectF at(QPointF corner, double from, double beside, double along, double deep) const
    {
        return upright ? QRectF(corner.x() + beside * k, corner.y() + from * k, deep * k, along * k)
                       : QRectF(corner.x() + from * k, corner.y() + beside * k, along * k, deep * k);
    }
    bool upright; ///< the selvages stand left and right, else they lie above and below
    int scale;
    double k;
    double wide; ///< on the page, mm
    double high;
};

void drawStrip(QPainter &painter, ClothRole role, const ShopStrip &strip, const Place &place, QPointF corner,
               double from)
{
    const bool runs = strip.run > Length();
    double at = 0;
    for (const ShopPiece &piece : strip.pieces)
        for (std::int64_t i = 0; i < std::min(piece.count, mostPieces); ++i) {
            const double tall = min(piece.along, strip.height).asMm(), over = piece.across.asMm();
            if (!piece.gap)
                printCloth(painter, role,
                           runs ? place.at(corner, at, from, over, tall)
                                : place.at(corner, from, at, tall, over));
            at += over;
        }
}

/// What no piece is cut from stays white. Strips along the selvage lie side by side, those across follow.
void drawGround(Paper &paper, const Ground &ground, ClothRole role, const Place &place, QPointF corner)
{
    double from = 0;
    double beside = 0;
    for (const ShopStrip *strip : ground.strips)
        from = std::max(from, strip->run.asMm());
    for (const ShopStrip *strip : ground.strips)
        for (std::int64_t i = 0; i < std::min(strip->repeats, mostPieces); ++i) {
            const bool runs = strip->run > Length();
            double &at = runs ? beside : from;
            drawStrip(paper.painter(), role, *strip, place, corner, at);
            at += strip->height.asMm();
            const QRectF cut = runs ? place.at(corner, 0, at, strip->run.asMm(), 0)
                                    : place.at(corner, at, 0, 0, ground.width.asMm());
            paper.line(cut.left(), cut.top(), cut.right(), cut.bottom(), 0.2);
        }
    paper.box(QRectF(corner, QSizeF(place.wide, place.high)), 0.4);
}

/// "6 × 13 1/4 in: 4 × 8 1/2 in, 6 in left over".
QString stripSays(const ShopStrip &strip, Marks marks)
{
    QStringList pieces;
    for (const ShopPiece &piece : strip.pieces) {
        QString size = figureText(piece.across, marks);
        if (piece.gap) {
            //: %1 a length: nothing is cut from that much of the strip
            pieces += tell(QT_TRANSLATE_NOOP("Sheet", "%1 left over")).arg(size);
            continue;
        }
        if (piece.along < strip.height)
            size += QStringLiteral(" × ") + figureText(piece.along, marks);
        pieces += QStringLiteral("%1 × %2").arg(piece.count).arg(size);
    }
    const QString says = QStringLiteral("{%1 × %2}: %3")
                             .arg(strip.repeats)
                             .arg(figureText(strip.height, marks), pieces.join(QStringLiteral(", ")));
    //: %1 "3 × 2 in: 5 × 7 1/2 in", strips that run along the selvage instead of across the cloth
    return strip.run > Length() ? tell(QT_TRANSLATE_NOOP("Sheet", "along the selvage: %1")).arg(says) : says;
}

/// The words beside a drawing.
QStringList groundSays(const Job &job, const Ground &ground, const Place &place)
{
    QStringList lines;
    if (!ground.name.isEmpty())
        lines += ground.name;
    for (const ShopStrip *strip : ground.strips)
        lines += stripSays(*strip, job.project.marks());
    lines += tell(QT_TRANSLATE_NOOP("Sheet", "drawn 1 : %1")).arg(place.scale);
    return lines;
}

constexpr double air = 5;         ///< between drawing and words
constexpr double mostBeside = 90; ///< more words than this are read on from page to page instead
constexpr double below = 4;

double besideTall(const Paper &paper, const QStringList &lines)
{
    return paper.tall(paper.width() - Place::across - air, lines.join(u'\u2028'), types::small);
}

void groundDrawing(Paper &paper, const Job &job, const Buy &buy, const Ground &ground)
{
    const Place place(ground);
    const QStringList lines = groundSays(job, ground, place);
    const double words = besideTall(paper, lines);
    const double high = words > mostBeside ? place.high : std::max(place.high, words);
    paper.keep(high + below);
    drawGround(paper, ground, roleOf(job.project, buy.cloth), place, {paper.left(), paper.y});
    if (words <= mostBeside)
        paper.write(paper.left() + Place::across + air, paper.y, paper.width() - Place::across - air,
                    lines.join(u'\u2028'), types::small);
    paper.y += high + below;
    if (words > mostBeside)
        for (const QString &line : lines)
            paper.say(line, types::small, 0.8);
}

/// The grounds of a cloth; none when it is not on the list.
std::vector<Ground> groundsOf(const Job &job, const std::string &cloth)
{
    for (const Buy &buy : job.shop)
        if (buy.cloth == cloth)
            return groundsOf(job, buy);
    return {};
}

} // namespace

double clothLayoutTall(const Paper &paper, const Job &job, const std::string &cloth)
{
    const std::vector<Ground> grounds = groundsOf(job, cloth);
    if (grounds.empty())
        return 0;
    const Place place(grounds.front());
    const double words = besideTall(paper, groundSays(job, grounds.front(), place));
    return (words > mostBeside ? place.high : std::max(place.high, words)) + below;
}

void clothLayout(Paper &paper, const Job &job, const std::string &cloth)
{
    for (const Buy &buy : job.shop)
        if (buy.cloth == cloth)
            for (const Ground &ground : groundsOf(job, buy))
                groundDrawing(paper, job, buy, ground);
}

void clothLayouts(Paper &paper, const Job &job)
{
    for (const Buy &buy : job.shop) {
        paper.say(clothAmongAll(job.project, buy.cloth), types::strong, 1.5);
        clothLayout(paper, job, buy.cloth);
    }
}

} // namespace matside
