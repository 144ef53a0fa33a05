// SPDX-License-Identifier: MIT
//
// The edge and the card that goes with the finished piece; the shopping list.
#include "sheet/pages.h"

#include "app/edgewords.h"
#include "app/figures.h"
#include "app/money.h"
#include "app/shopwords.h"
#include "app/wording.h"
#include "sheet/prints.h"

#include <algorithm>

namespace matside {

namespace {

/// Where a place of the raw edge stands in the drawing.
QPointF pointOf(const EdgePlace &place, const QRectF &piece, double k)
{
    const double from = place.from.asMm() * k;
    switch (place.side) {
    case EdgeSide::Top:
        return {piece.left() + from, piece.top()};
    case EdgeSide::Right:
        return {piece.right(), piece.top() + from};
    case EdgeSide::Bottom:
        return {piece.left() + from, piece.bottom()};
    case EdgeSide::Left:
        break;
    }
    return {piece.left(), piece.top() + from};
}

/// What is bought of a cloth: "2 3/8 yd", "1.2 m", packages of batting; a dash where what she has yields all.
QString boughtText(const Job &job, const Buy &buy)
{
    if (!buy.packages.empty())
        return clothToBuy(job.project, buy);
    return buy.bought > Length() ? inSign(toQt(textSold(buy.bought, buy.step, job.project.system)))
                                 : QStringLiteral("–");
}

/// A card to cut out and give away with the piece.
void careCard(Paper &paper, const Job &job)
{
    QStringList lines = careLines();
    const double inner = paper.width() - 12;
    const Type line{3.6};
    double height = 8 + paper.tall(inner, toQt(job.project.name), types::strong) + 2;
    for (const QString &says : lines)
        height += paper.tall(inner, says, line) + 1.6;
    paper.keep(height + 4);
    QPainter &painter = paper.painter();
    painter.setPen(QPen(Qt::black, 0.35, Qt::DashLine));
    painter.drawRect(QRectF(paper.left(), paper.y, paper.width(), height));
    painter.setPen(QPen(Qt::black, 0.3));
    double y = paper.y + 5;
    const double x = paper.left() + 6;
    y += paper.write(x, y, inner, toQt(job.project.name), types::strong) + 2;
    for (const QString &says : lines)
        y += paper.write(x, y, inner, says, line) + 1.6;
    paper.y += height + 4;
}

} // namespace

void bindingLaid(Paper &paper, const Job &job)
{
    const auto lay = layBinding(job.project, job.plan);
    if (!lay)
        return;
    const std::vector<LaidPlace> places = bindingPlaces(job.project, *lay);
    const Pair &size = job.plan.size.finished;
    constexpr double across = 80;
    constexpr double most = 62;
    const double k = std::min(across / size.along.asMm(), most / size.across.asMm());
    const double high = size.across.asMm() * k;
    paper.keep(high + 8);
    const QRectF piece(paper.left() + 2, paper.y + 2, size.along.asMm() * k, high);
    drawPiece(paper.painter(), job, piece);
    QPainter &painter = paper.painter();
    for (std::size_t i = 0; i < places.size(); ++i) {
        painter.setBrush(i == 0 ? Qt::black : Qt::white);
        painter.drawEllipse(pointOf(places[i].place, piece, k), 1.3, 1.3);
    }
    painter.setBrush(Qt::NoBrush);
    const double beside = paper.left() + across + 8;
    double y = paper.y;
    std::size_t said = 0;
    for (; said < places.size() && y < paper.y + high; ++said)
        y += paper.write(beside, y, paper.right() - beside, places[said].says, types::small) + 1.2;
    paper.y = std::max(y, piece.bottom()) + 4;
    for (; said < places.size(); ++said)
        paper.say(places[said].says, types::small, 1.2);
    paper.say(bindingLaySays(job.project, job.plan, *lay), types::small, 2);
}

void edgePart(Paper &paper, const Job &job)
{
    paper.part(100);
    paper.head(tell(QT_TRANSLATE_NOOP("Sheet", "Edge")));
    figureGrid(paper,
               named(job, {"size.raw.along", "size.raw.across", "size.finished.along", "size.finished.across",
                           "frame.width", "frame.cut", "frame.filler", "frame.sides", "frame.ends",
                           "binding.cut", "binding.length", "binding.strips", "binding.square"}),
               4, {4.6, true});
    for (const QString &says : frameLines(job.project, job.plan))
        paper.say(says, types::small, 1.6);
    bindingLaid(paper, job);
    for (const QString &says : {cornersSay(job.project, job.plan), cornersBite(job.project, job.plan),
                                bindingSewSays(job.project, job.plan)})
        paper.say(says, types::small, 1.6);
    paper.y += 2;
    stepRows(paper, job, Station::Edge);
    paper.head(tell(QT_TRANSLATE_NOOP("Sheet", "When it is done")));
    for (const QString &says : useLines(job.project, job.plan))
        paper.say(says, types::small, 1.6);
    paper.y += 3;
    careCard(paper, job);
}

void shopPart(Paper &paper, const Job &job)
{
    paper.part(90);
    const QString head = tell(QT_TRANSLATE_NOOP("Sheet", "To buy, cloth by cloth"));
    paper.head(head);
    // As wide as the longest length of cloth, so that its unit stays beside it.
    double lengths = 34;
    for (const Buy &buy : job.shop)
        lengths = std::max(lengths, paper.wide(boughtText(job, buy), types::figure) + 3);
    Columns table(paper, {10, 18, lengths, paper.width() - 28 - lengths}, {});
    for (const Buy &buy : job.shop) {
        QString says = QStringLiteral("{%1} ").arg(clothAmongAll(job.project, buy.cloth));
        says += clothCutSays(job.project, buy) + QStringLiteral(". ") + clothProofSays(job.project, buy);
        if (buy.cents && *buy.cents > 0)
            says += u' ' + tell(QT_TRANSLATE_NOOP("Sheet", "Costs %1.")).arg(moneyText(*buy.cents));
        const double top =
            table.row({{}, {}, {boughtText(job, buy), types::figure}, {says, types::small}}, 9);
        paper.tickBox(table.at(0), top + 1, 6);
        printCloth(paper.painter(), roleOf(job.project, buy.cloth), QRectF(table.at(1), top + 1, 13, 7));
    }
    paper.goesOn({});
    paper.y += 3;
    paper.say(shopTotalSays(job.shop), types::strong, 2);
    paper.say(sundriesSays(job.project, job.plan), types::body, 2);
}

} // namespace matside
