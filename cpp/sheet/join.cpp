// SPDX-License-Identifier: MIT
//
// Trimming and joining: the block's four sides, the gauge, the map of both faces, the match marks.
#include "sheet/pages.h"

#include "app/figures.h"
#include "app/joinwords.h"
#include "app/wording.h"
#include "made/placing.h"
#include "plan/onstrip.h"
#include "plan/thread.h"
#include "sheet/prints.h"

#include <algorithm>

namespace matside {

namespace {

/// The block: its outline dashed, the four sides numbered in the order they are cut.
void trimDrawing(Paper &paper, const Job &job, double x, double top, double side)
{
    const Pair &trimmed = job.plan.block.trimmed;
    const double k = side / max(trimmed.along, trimmed.across).asMm();
    const QRectF block(x, top, trimmed.along.asMm() * k, trimmed.across.asMm() * k);
    printCloth(paper.painter(), ClothRole::Front, block);
    const double in = std::max(job.plan.basis.allowance.asMm() * k, 0.8);
    paper.painter().fillRect(block.adjusted(in, in, -in, -in), Qt::white);
    paper.painter().setPen(QPen(Qt::black, 0.4, Qt::DashLine));
    paper.painter().drawRect(block.adjusted(in, in, -in, -in));
    paper.painter().setPen(QPen(Qt::black, 0.3));
    // Right, then a quarter turn each: side 2 lies at the foot, 3 opposite the first, 4 opposite the second.
    const double w = 8;
    paper.write(block.right() - w - in - 2, block.center().y() - 2.5, w, QStringLiteral("1"), types::strong,
                Qt::AlignRight);
    paper.write(block.center().x() - w / 2, block.bottom() - in - 6.5, w, QStringLiteral("2"), types::strong,
                Qt::AlignHCenter);
    paper.write(block.left() + in + 2, block.center().y() - 2.5, w, QStringLiteral("3"), types::strong);
    paper.write(block.center().x() - w / 2, block.top() + in + 1.6, w, QStringLiteral("4"), types::strong,
                Qt::AlignHCenter);
}

/// What the ruler's lines lie on, side by side as at the Trim station.
QString sideSays(const Job &job, int side)
{
    const Marks marks = job.project.marks();
    const QString allowance = figureText(job.plan.basis.allowance, marks);
    if (side < 3)
        return QStringLiteral("{%1. %2} %3. %4")
            .arg(side)
            .arg(allowance, trimLineLies(side), trimCheck(side));
    const Length across = side == 3 ? job.plan.block.trimmed.along : job.plan.block.trimmed.across;
    return QStringLiteral("{%1. %2} %3, {%4} %5. %6")
        .arg(side)
        .arg(figureText(across, marks), trimLineLies(side), allowance, trimSecondLies(side), trimCheck(side));
}

/// The blocks of one face, and their way up where a design has one.
struct Face {
    std::vector<std::string> labels;
    const Project &project;
    bool back;
};

void cell(Paper &paper, const Face &face, std::size_t place, const QRectF &at)
{
    if (face.back)
        paper.painter().fillRect(at, QColor(228, 228, 228));
    paper.box(at, 0.25);
    if (place >= face.labels.size())
        return;
    const QString name = toQt(face.labels[place]);
    const double size = std::min({at.height() * 0.42, at.width() * 0.34, 5.0});
    if (size < 1.7)
        return;
    paper.write(at.left(), at.center().y() - size * 0.62, at.width(), name, {size, true}, Qt::AlignHCenter);
    if (at.height() < 9)
        return;
    // The arrow's head stands where the block's own up is; on the back the turn runs the other way.
    const int turned = designOf(face.project, face.labels[place]).turned;
    QPainter &painter = paper.painter();
    painter.save();
    painter.translate(at.center());
    painter.rotate(face.back ? -turned : turned);
    const double head = std::min(at.width(), at.height()) / 2 - 0.8;
    painter.setPen(QPen(Qt::black, 0.4));
    painter.drawPolyline(QPolygonF({{-1.2, -head + 1.4}, {0, -head}, {1.2, -head + 1.4}}));
    painter.restore();
}

void faceMap(Paper &paper, const Job &job, const Face &face, double side)
{
    const auto columns = static_cast<std::size_t>(job.project.blocks.columns);
    const auto rows = static_cast<std::size_t>(job.project.blocks.rows);
    paper.keep(side * static_cast<double>(rows) + 8);
    paper.say(face.back ? tell(QT_TRANSLATE_NOOP("Sheet", "Back, as it lies turned over"))
                        : tell(QT_TRANSLATE_NOOP("Sheet", "Front")),
              types::strong, 1.5);
    const double x = paper.left();
    for (std::size_t r = 0; r < rows; ++r)
        for (std::size_t c = 0; c < columns; ++c) {
            const std::size_t drawn = face.back ? columns - 1 - c : c;
            cell(paper, face, r * columns + c,
                 QRectF(x + side * static_cast<double>(drawn), paper.y + side * static_cast<double>(r), side,
                        side));
        }
    paper.y += side * static_cast<double>(rows) + 5;
}

constexpr std::int64_t mostDrawn = 900; // as on the screen: more are not laid out one by one

bool canBeDrawn(const Job &job)
{
    return job.project.blocks.columns * job.project.blocks.rows <= mostDrawn;
}

void map(Paper &paper, const Job &job, bool back)
{
    if (!canBeDrawn(job))
        return;
    const std::int64_t columns = job.project.blocks.columns;
    const std::int64_t rows = job.project.blocks.rows;
    const double side =
        std::min({paper.width() / static_cast<double>(columns), 200 / static_cast<double>(rows), 18.0});
    std::vector<std::string> places = blockNames(job.project);
    places.resize(std::min(places.size(), static_cast<std::size_t>(columns * rows)));
    faceMap(paper, job, {laidOut(job.project, places), job.project, back}, side);
}

void maps(Paper &paper, const Job &job)
{
    if (canBeDrawn(job)) {
        frontMap(paper, job);
        backMap(paper, job);
        return;
    }
    paper.say(
        tell(QT_TRANSLATE_NOOP("Sheet", "%1 blocks are too many to draw one by one: lay them out from the "
                                        "labels, rows by letter from the top, columns by number from "
                                        "the left."))
            .arg(job.project.blocks.columns * job.project.blocks.rows),
        types::body, 3);
}

void longPieces(Paper &paper, const Job &job, const LongPieces &face, const QString &which)
{
    if (face.pieces.empty())
        return;
    const Marks marks = job.project.marks();
    QStringList pieces;
    for (const Length piece : face.pieces)
        pieces += braced(piece, marks, Round::UpQuarter);
    QStringList joins;
    for (const Length join : face.joins)
        joins += braced(join, marks);
    paper.say(tell(QT_TRANSLATE_NOOP(
                       "Sheet", "Long sashing, %1, in pieces: %2; joins at %3 from the row's raw left end."))
                  .arg(which, pieces.join(QStringLiteral(", ")), joins.join(QStringLiteral(", "))),
              types::small, 2);
}

constexpr double trimSide = 44;

} // namespace

void trimAlone(Paper &paper, const Job &job)
{
    trimDrawing(paper, job, paper.left(), paper.y, trimSide);
    paper.y += trimSide + 4;
}

void frontMap(Paper &paper, const Job &job)
{
    map(paper, job, false);
}

void backMap(Paper &paper, const Job &job)
{
    map(paper, job, true);
}

void matchMarks(Paper &paper, const Job &job)
{
    const SashingPlan &plan = job.plan.sashing;
    if (plan.marks.empty() || plan.longs == 0)
        return;
    const Marks marks = job.project.marks();
    const double row = job.plan.size.raw.along.asMm();
    const double k = paper.width() / row;
    paper.keep(34);
    paper.say(tell(QT_TRANSLATE_NOOP(
                       "Sheet", "{Match marks} on every long sashing, from the row's raw left end, which "
                                "is zero; a row is %1 raw."))
                  .arg(figureText(job.plan.size.raw.along, marks)),
              types::body, 2);
    printCloth(paper.painter(), ClothRole::SashingFront, QRectF(paper.left(), paper.y, row * k, 8));
    paper.line(paper.left(), paper.y - 1, paper.left(), paper.y + 9, 0.9);
    for (const Length mark : plan.marks)
        paper.line(paper.left() + mark.asMm() * k, paper.y, paper.left() + mark.asMm() * k, paper.y + 8, 0.5);
    paper.y += 11;
    std::vector<Named> figures;
    for (std::size_t i = 0; i < plan.marks.size(); ++i)
        figures.push_back({QString::number(i + 1), figureText(plan.marks[i], marks)});
    figureGrid(paper, figures, 6, types::strong);
    paper.y += 1;
}

void trimPart(Paper &paper, const Job &job)
{
    paper.part(100);
    paper.head(tell(QT_TRANSLATE_NOOP("Sheet", "Trim and fold")));
    constexpr double side = trimSide;
    paper.keep(side + 6);
    const double top = paper.y;
    trimDrawing(paper, job, paper.left(), top, side);
    double y = top;
    for (int i = 1; i <= 4; ++i)
        y +=
            paper.write(paper.left() + side + 8, y, paper.width() - side - 8, sideSays(job, i), types::body) +
            2;
    paper.y = std::max(y, top + side) + 4;
    figureGrid(paper,
               named(job, {"block.trimmed.along", "block.trimmed.across", "fold.under", "fold.catchShown",
                           "sashing.finished", "sashing.allowanceGap", "sashing.expected"}),
               4, {4.6, true});
    gauge(paper, job);
    checkBar(paper, job);
    stepRows(paper, job, Station::Trim);
}

void joinPart(Paper &paper, const Job &job)
{
    paper.part(100);
    paper.head(tell(QT_TRANSLATE_NOOP("Sheet", "Join: both faces")));
    maps(paper, job);
    paper.say(stripsPressed(job.plan), types::body);
    if (const QString filled = sashingsFilled(job.plan, job.project.marks()); !filled.isEmpty())
        paper.say(filled, types::body);
    paper.say(crossingsThinned(job.project, job.plan), types::body, 4);
    matchMarks(paper, job);
    longPieces(paper, job, job.plan.sashing.front, tell(QT_TRANSLATE_NOOP("Sheet", "front")));
    longPieces(paper, job, job.plan.sashing.back, tell(QT_TRANSLATE_NOOP("Sheet", "back")));
    stepRows(paper, job, Station::Join);
}

} // namespace matside
