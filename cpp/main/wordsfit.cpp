// SPDX-License-Identifier: MIT
#include "main/wordsfit.h"

#include <QColor>
#include <QFont>
#include <QFontMetricsF>
#include <QQuickItem>
#include <QRegularExpression>

#include <algorithm>
#include <vector>

namespace matside {

namespace {

/// How far letters may stand out before they count, in pixels: the air round a line is more than that.
constexpr double slack = 2;
/// How far a word may be measured wider than its line, in pixels, and still stand on it.
constexpr double hair = 0.5;

struct Printed {
    const QQuickItem *item;
    QString text;
    QRectF place; ///< of the lines as they are set, in the window
};

bool isText(const QQuickItem &item)
{
    return item.inherits("QQuickText") && !item.property("text").toString().isEmpty();
}

bool rolls(const QQuickItem &item)
{
    return item.inherits("QQuickFlickable");
}

/// A target: its words stand on it or nowhere.
bool isTarget(const QQuickItem &item)
{
    return item.property("accessibleName").isValid() && item.property("listening").isValid();
}

/// The lines as they are set, from the capitals of the first to the foot of the last.
QRectF setLines(const QQuickItem &text)
{
    const QRectF lines = text.boundingRect();
    const double size = text.property("font").value<QFont>().pixelSize();
    const double foot = text.baselineOffset();
    const double count = std::max(1.0, text.property("lineCount").toDouble());
    // Large figures hang on the margin by the air at a letter's side.
    const double air = std::min(0.08 * size, lines.width() / 4);
    // B612's capitals stand 0.75 of its size, the eye forgives a hair; what hangs below the last line counts
    // with the slack.
    return text.mapRectToScene(lines.adjusted(air, foot - 0.72 * size, -air, foot - lines.height() / count));
}

/// A word that is too wide for its line and so is broken in two; empty when there is none.
QString brokenWord(const QQuickItem &text)
{
    // Where a line may end: a blank that holds two words together is none of them.
    static const QRegularExpression blanks(QStringLiteral("[ \\n-]+"));
    const QFontMetricsF letters(text.property("font").value<QFont>());
    if (text.property("lineCount").toInt() < 2)
        return {};
    const QStringList words = text.property("text").toString().split(blanks, Qt::SkipEmptyParts);
    for (const QString &word : words)
        if (letters.horizontalAdvance(word) > text.width() + hair)
            return word;
    return {};
}

/// A ground that hides what was printed before it.
bool hides(const QQuickItem &item)
{
    return item.inherits("QQuickRectangle") && item.property("color").value<QColor>().alpha() == 255;
}

bool inside(const QRectF &place, const QRectF &room)
{
    return room.adjusted(-slack, -slack, slack, slack).contains(place);
}

QString wordsOf(const Printed &words)
{
    return QStringLiteral("\"%1\"").arg(words.text.simplified());
}

class Reader {
public:
    Reader(const QQuickWindow &window, bool whole)
        : m_sheet(0, 0, window.width(), window.height()), m_whole(whole)
    {
    }

    void over(const QQuickItem &item, bool rolling)
    {
        if (!item.isVisible() || item.opacity() <= 0)
            return;
        const bool here = rolling || rolls(item);
        if (isText(item))
            check(item, rolling);
        else if (hides(item))
            cover(item.mapRectToScene(QRectF(0, 0, item.width(), item.height())));
        for (const QQuickItem *child : item.childItems())
            over(*child, here);
    }
    [[nodiscard]] QStringList found() const { return m_found; }

private:
    void cover(const QRectF &ground)
    {
        std::erase_if(m_printed, [&](const Printed &words) { return ground.intersects(words.place); });
    }
    void check(const QQuickItem &item, bool rolling)
    {
        const Printed words{&item, item.property("text").toString(), setLines(item)};
        if (item.property("truncated").toBool() && !item.property("preview").toBool())
            m_found << QStringLiteral("%1 is cut short").arg(wordsOf(words));
        if (const QString broken = m_whole ? brokenWord(item) : QString(); !broken.isEmpty())
            m_found << QStringLiteral("%1 is broken in %2").arg(broken, wordsOf(words));
        if (rolling) {
            // What rolls may run on down, never sideways.
            if (words.place.left() < -slack || words.place.right() > m_sheet.right() + slack)
                m_found << QStringLiteral("%1 runs off the side").arg(wordsOf(words));
        } else if (!inside(words.place, m_sheet)) {
            m_found << QStringLiteral("%1 runs off the sheet").arg(wordsOf(words));
        }
        for (const QQuickItem *room = item.parentItem(); room; room = room->parentItem()) {
            if (rolls(*room))
                break;
            if (isTarget(*room) || room->clip()) {
                if (!inside(words.place, room->mapRectToScene(QRectF(0, 0, room->width(), room->height()))))
                    m_found << QStringLiteral("%1 runs out of its place").arg(wordsOf(words));
                break;
            }
        }
        if (!rolling)
            m_printed.push_back(words);
        else
            return;
        for (const Printed &other : m_printed) {
            if (other.item == words.item || other.item->parentItem() == item.parentItem()->parentItem() ||
                other.item->parentItem()->parentItem() == item.parentItem()->parentItem())
                continue;
            const QRectF shared = other.place.intersected(words.place);
            if (shared.width() > slack && shared.height() > slack)
                m_found << QStringLiteral("%1 lies on %2").arg(wordsOf(words), wordsOf(other));
        }
    }

    QRectF m_sheet;
    bool m_whole; ///< words broken in two count
    QStringList m_found;
    std::vector<Printed> m_printed;
};

} // namespace

QStringList wordsThatDoNotFit(QQuickWindow &window, bool whole)
{
    Reader reader(window, whole);
    reader.over(*window.contentItem(), false);
    return reader.found();
}

} // namespace matside
