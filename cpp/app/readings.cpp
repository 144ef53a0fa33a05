// SPDX-License-Identifier: MIT
#include "app/readings.h"

#include "app/figures.h"
#include "app/findings.h"
#include "app/wording.h"
#include "length/read.h"
#include "plan/formulas.h"

#include <QCoreApplication>

namespace matside {

namespace {

bool isReading(int at)
{
    return at >= 0 && at < readingCount;
}

/// A diagonal that tells no more than the sides do: within a mark of what a true rectangle of their size has.
bool toldBySides(const Readings &readings, int at, Length mark)
{
    const auto &[top, right, bottom, left] = readings.sides;
    const Readings of =
        onMarks(readingsOfRectangle({(top + bottom).scaled(1, 2), (right + left).scaled(1, 2)}), mark);
    return (readings.diagonals[static_cast<std::size_t>(at - 4)] - of.diagonals[0]).magnitude() <= mark;
}

} // namespace

Length &readingAt(Readings &readings, int at)
{
    return at < 4 ? readings.sides[static_cast<std::size_t>(at)]
                  : readings.diagonals[static_cast<std::size_t>(at - 4)];
}

Readings readingsOfRectangle(const Pair &size)
{
    const Length diagonal = diagonalOf(size.along, size.across);
    return {{size.along, size.across, size.along, size.across}, {diagonal, diagonal}};
}

Readings onMarks(Readings readings, Length mark)
{
    for (int at = 0; at < readingCount; ++at)
        readingAt(readings, at) = readingAt(readings, at).nearestTo(mark);
    return readings;
}

QVariantMap readingView(Readings readings, int at, Marks marks)
{
    const Length reading = readingAt(readings, at);
    return {{QStringLiteral("says"), readingText(static_cast<std::size_t>(at))},
            {QStringLiteral("figure"), QVariant::fromValue(figureOf(reading, marks))},
            {QStringLiteral("mm"), reading.asMm()},
            {QStringLiteral("told"), at > 3 && toldBySides(readings, at, marks.finest)}};
}

bool nudgeReading(Readings &readings, int at, int marks, Length mark)
{
    if (!isReading(at))
        return false;
    const Length next = readingAt(readings, at).nearestTo(mark) + mark * marks;
    if (next <= Length())
        return false;
    readingAt(readings, at) = next;
    return true;
}

QString typeReading(Readings &readings, int at, const QString &text, System system)
{
    const auto typed = readLength(text.toStdString(), system);
    if (!typed)
        return sentence(typed.error(), system);
    if (!isReading(at) || typed.value() <= Length())
        return QCoreApplication::translate("Readings", "A reading is more than nothing.");
    readingAt(readings, at) = typed.value();
    return {};
}

} // namespace matside
