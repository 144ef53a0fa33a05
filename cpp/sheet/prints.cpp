// SPDX-License-Identifier: MIT
#include "sheet/prints.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace matside {

namespace {

/// The unit of the marks, as on a 5.87 px/mm screen.
constexpr double unit = 0.17;

/// A straight stroke of a mark, in units.
struct Stroke {
    double x1;
    double y1;
    double x2;
    double y2;
};

/// A mark repeated over the cloth every w by h units.
struct Print {
    double tone = 1; ///< 0 black … 1 white
    double w = 0;
    double h = 0;
    double line = 1;
    std::vector<Stroke> strokes;
};

const Print &printOf(ClothRole role)
{
    // Few strokes on a light tone: words stay readable on them, and no toner is wasted.
    static const Print front{0.97,
                             60,
                             44,
                             0.9,
                             {{6, 4, 17, 4},
                              {22, 11, 27, 11},
                              {9, 18, 17, 18},
                              {31, 2, 31, 7},
                              {36, 26, 47, 26},
                              {52, 33, 57, 33},
                              {39, 40, 47, 40},
                              {2, 32, 2, 36}}};
    static const Print back{
        0.86,
        30,
        34,
        1.4,
        {{8, 13, 8, 8}, {8, 9, 4, 5}, {8, 9, 12, 5}, {23, 30, 23, 25}, {23, 26, 19, 22}, {23, 26, 27, 22}}};
    static const Print batting{
        1, 40, 20, 1.1, {{0, 5, 10, 1}, {10, 1, 20, 5}, {20, 5, 30, 9}, {30, 9, 40, 5}}};
    static const Print patch{0.82, 9, 9, 1.3, {{0, 9, 9, 0}}};
    static const Print web{1, 9, 9, 0.7, {{0, 9, 9, 0}, {0, 0, 9, 9}}};
    static const Print sashing{
        0.93, 16, 16, 1, {{2, 4, 6, 4}, {4, 2, 4, 6}, {10, 12, 14, 12}, {12, 10, 12, 14}}};
    static const Print binding{0.45, 0, 0, 1, {}};
    switch (role) {
    case ClothRole::Back:
    case ClothRole::SashingBack:
        return back;
    case ClothRole::Batting:
        return batting;
    case ClothRole::Patch:
        return patch;
    case ClothRole::Web:
        return web;
    case ClothRole::SashingFront:
        return sashing;
    case ClothRole::Binding:
        return binding;
    case ClothRole::Front:
        break;
    }
    return front;
}

/// The part of a stroke that lies on the cloth: what draws the paper need not know of clipping.
std::optional<QLineF> onCloth(const QLineF &stroke, const QRectF &place)
{
    double from = 0;
    double to = 1;
    const auto within = [&](double start, double step, double least, double most) {
        if (step == 0)
            return start >= least && start <= most;
        const double one = (least - start) / step;
        const double other = (most - start) / step;
        from = std::max(from, std::min(one, other));
        to = std::min(to, std::max(one, other));
        return from < to;
    };
    if (!within(stroke.x1(), stroke.dx(), place.left(), place.right()) ||
        !within(stroke.y1(), stroke.dy(), place.top(), place.bottom()))
        return std::nullopt;
    return QLineF(stroke.pointAt(from), stroke.pointAt(to));
}

void strokes(QPainter &painter, const Print &print, const QRectF &place)
{
    if (print.w <= 0)
        return;
    const double w = print.w * unit;
    const double h = print.h * unit;
    std::vector<QLineF> lines;
    // The print is tied to the sheet, not to the piece: neighbours of one cloth match.
    const auto from = [](double at, double repeat) { return static_cast<int>(std::floor(at / repeat)); };
    for (int row = from(place.top(), h); row * h < place.bottom(); ++row)
        for (int column = from(place.left(), w); column * w < place.right(); ++column)
            for (const Stroke &s : print.strokes)
                if (const auto line = onCloth(QLineF(column * w + s.x1 * unit, row * h + s.y1 * unit,
                                                     column * w + s.x2 * unit, row * h + s.y2 * unit),
                                              place))
                    lines.push_back(*line);
    if (lines.empty())
        return;
    painter.setPen(QPen(QColor(110, 110, 110), print.line * unit * 0.8, Qt::SolidLine, Qt::FlatCap));
    painter.drawLines(lines.data(), static_cast<int>(lines.size()));
}

} // namespace

void printCloth(QPainter &painter, ClothRole role, const QRectF &place, bool outlined)
{
    if (place.width() <= 0 || place.height() <= 0)
        return;
    const Print &print = printOf(role);
    painter.save();
    const int tone = static_cast<int>(std::lround(print.tone * 255));
    painter.fillRect(place, QColor(tone, tone, tone));
    strokes(painter, print, place);
    painter.restore();
    if (!outlined)
        return;
    painter.save();
    painter.setPen(QPen(Qt::black, 0.3, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(place);
    painter.restore();
}

ClothRole roleOf(const Project &project, const std::string &cloth)
{
    if (const Cloth *listed = clothNamed(project, cloth))
        return listed->role;
    return cloth.starts_with("back")      ? ClothRole::Back
           : cloth.starts_with("batting") ? ClothRole::Batting
                                          : ClothRole::Front;
}

} // namespace matside
