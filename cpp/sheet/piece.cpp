// SPDX-License-Identifier: MIT
//
// The first page: the piece, how large it is, the figures that are asked for most.
#include "sheet/pages.h"

#include "app/figures.h"
#include "app/wording.h"
#include "sheet/prints.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace matside {

namespace {

/// A zigzag, as pinking shears cut it.
void pinked(Paper &paper, double top)
{
    constexpr double tooth = 1.5;
    QPolygonF edge;
    const int teeth = static_cast<int>(paper.width() / tooth);
    for (int i = 0; i <= teeth; ++i)
        edge << QPointF(paper.left() + tooth * i, top + (i % 2 == 0 ? 0 : tooth));
    paper.painter().setPen(QPen(Qt::black, 0.35));
    paper.painter().drawPolyline(edge);
    paper.painter().setPen(QPen(Qt::black, 0.3));
}

void drawTable(QPainter &painter, const TableView &view, const QRectF &table)
{
    painter.setPen(QPen(Qt::black, 0.3));
    painter.setBrush(QColor(232, 232, 232));
    const double leaf = view.tableAlongMm > 0 ? view.leafMm / view.tableAlongMm * table.width() : 0;
    if (view.shape == QStringLiteral("round")) // with its leaf in: two half rounds and the leaf between
        painter.drawRoundedRect(table, table.height() / 2, table.height() / 2);
    else
        painter.drawRect(table);
    painter.setBrush(Qt::NoBrush);
    for (const double side : {-leaf / 2, leaf / 2})
        if (leaf > 0)
            painter.drawLine(QPointF(table.center().x() + side, table.top()),
                             QPointF(table.center().x() + side, table.bottom()));
}

/// A sashing; too narrow for its two edges it is a line.
void drawSashing(QPainter &painter, const QRectF &place)
{
    const double wide = std::min(place.width(), place.height());
    if (wide > 0.7)
        return printCloth(painter, ClothRole::SashingFront, place);
    painter.save();
    painter.setPen(QPen(Qt::black, std::clamp(wide, 0.12, 0.3), Qt::SolidLine, Qt::FlatCap));
    if (place.width() < place.height())
        painter.drawLine(QPointF(place.center().x(), place.top()),
                         QPointF(place.center().x(), place.bottom()));
    else
        painter.drawLine(QPointF(place.left(), place.center().y()),
                         QPointF(place.right(), place.center().y()));
    painter.restore();
}

} // namespace

int scaleFor(double mm, double room)
{
    constexpr std::array steps{1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80};
    for (int ten = 1; ten < 1'000'000; ten *= 100)
        for (const int step : steps)
            if (mm <= room * step * ten)
                return step * ten;
    return 1'000'000;
}

std::optional<Named> named(const Job &job, const char *key)
{
    const FigureView figure = planFigure(job.project, job.plan, key);
    if (!figure.valid)
        return std::nullopt;
    return Named{wordsOrCode(figureWords(), key), figure.text, figure.untried};
}

std::vector<Named> named(const Job &job, std::initializer_list<const char *> keys)
{
    std::vector<Named> all;
    for (const char *key : keys)
        if (auto figure = named(job, key))
            all.push_back(std::move(*figure));
    return all;
}

void drawPiece(QPainter &painter, const Job &job, const QRectF &piece)
{
    const TableView view = tableView(job.project, job.plan);
    const double k = piece.width() / view.finishedAlongMm;
    const double edge = job.plan.binding ? std::max(job.plan.basis.edgeSeam.asMm() * k, 0.5) : 0;
    if (edge > 0)
        printCloth(painter, ClothRole::Binding, piece);
    const QRectF inside = piece.adjusted(edge, edge, -edge, -edge);
    printCloth(painter, ClothRole::Front, inside);
    if (job.plan.frame) { // all round, under the binding; the blocks' own cloth is left within it
        const double frame = job.plan.basis.outside.asMm() * k;
        printCloth(painter, ClothRole::SashingFront, inside, frame > 1);
        printCloth(painter, ClothRole::Front, piece.adjusted(frame, frame, -frame, -frame));
    }
    const double sash = std::max(view.sashingMm * k, 0.12);
    const double from = view.edgeMm * k;
    for (int c = 1; c < view.columns; ++c) {
        const double x = piece.left() + from + (c * view.outlineAlongMm + (c - 1) * view.sashingMm) * k;
        drawSashing(painter, QRectF(x, inside.top(), sash, inside.height()));
    }
    for (int r = 1; r < view.rows; ++r) {
        const double y = piece.top() + from + (r * view.outlineAcrossMm + (r - 1) * view.sashingMm) * k;
        drawSashing(painter, QRectF(inside.left(), y, inside.width(), sash));
    }
}

double pieceDrawing(Paper &paper, const Job &job, double x, double top, double across, double down)
{
    const TableView view = tableView(job.project, job.plan);
    const double along = std::max(view.tableAlongMm, view.finishedAlongMm);
    const double deep = std::max(view.tableAcrossMm, view.finishedAcrossMm);
    const int scale = std::max(scaleFor(along, across), scaleFor(deep, down - 6));
    const double k = 1.0 / scale;
    const double height = deep * k;
    const QPointF middle(x + across / 2, top + height / 2);
    const auto centred = [&](double w, double h) {
        return QRectF(middle.x() - w * k / 2, middle.y() - h * k / 2, w * k, h * k);
    };
    QPainter &painter = paper.painter();
    if (view.shape != QStringLiteral("none"))
        drawTable(painter, view, centred(view.tableAlongMm, view.tableAcrossMm));
    drawPiece(painter, job, centred(view.finishedAlongMm, view.finishedAcrossMm));
    //: drawn so many times smaller: 1 : 10
    const QString says = tell(QT_TRANSLATE_NOOP("Sheet", "drawn 1 : %1")).arg(scale);
    return height + 1 + paper.write(x, top + height + 1, across, says, types::soft, Qt::AlignHCenter);
}

void pieceAlone(Paper &paper, const Job &job)
{
    paper.y += pieceDrawing(paper, job, paper.left(), paper.y, paper.width(), 120);
}

void piecePart(Paper &paper, const Job &job)
{
    const QString name = paper.cut(toQt(job.project.name), paper.width(), types::title, 3);
    paper.y += paper.write(paper.left(), paper.y, paper.width(), name, types::title);
    paper.y += 1.5;
    pinked(paper, paper.y);
    paper.y += 5;
    const Marks marks = job.project.marks();
    //: along × across, of the finished piece
    const QString size = tell(QT_TRANSLATE_NOOP("Sheet", "{%1} × {%2} finished"))
                             .arg(figureText(job.plan.size.finished.along, marks),
                                  figureText(job.plan.size.finished.across, marks));
    paper.say(size, {8, false}, 1);
    //: columns × rows of blocks
    paper.say(tell(QT_TRANSLATE_NOOP("Sheet", "%1 × %2 blocks"))
                  .arg(job.project.blocks.columns)
                  .arg(job.project.blocks.rows),
              types::body, 5);
    constexpr double below = 100; // the figures and the bar
    const double down = std::clamp(paper.room() - below, 40.0, 120.0);
    paper.y += pieceDrawing(paper, job, paper.left(), paper.y, paper.width(), down) + 6;
    const std::vector<Named> figures =
        named(job, {"strip.width", "strip.perStrip", "strip.strips", "strip.advance", "block.trimmed.along",
                    "block.trimmed.across", "sashing.cutFront", "sashing.cutBack", "fold.under",
                    "fold.catchShown", "frame.cut", "binding.cut", "binding.strips"});
    figureGrid(paper, figures, 3, {8, true});
    if (std::any_of(figures.begin(), figures.end(), [](const Named &figure) { return figure.untried; }))
        paper.say(tell(QT_TRANSLATE_NOOP("Sheet",
                                         "A ring: not tried yet. Make the trial before you cut the rest.")),
                  types::small, 3);
    paper.y = std::max(paper.y, paper.bottom() - checkBarTall(paper, job));
    checkBar(paper, job);
}

} // namespace matside
