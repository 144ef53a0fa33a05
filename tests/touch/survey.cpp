// SPDX-License-Identifier: MIT
#include "survey.h"

#include <QFont>
#include <QFontMetricsF>
#include <QHash>
#include <QImage>
#include <QJSValue>
#include <QQuickItem>
#include <QQuickWindow>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace touching {

namespace {

// The least sizes in millimetres. Actions: Colle & Hiszem 2004 and MIL-STD-1472E 5.4.3.1.3.3; elsewhere: WCAG
// 2.2 SC 2.5.5 (44 CSS px). Text: 22 minutes of arc, NUREG-0700 Rev. 2, 1.3.1-4 and ISO 9241-303. Contrast:
// WCAG 2.2 SC 1.4.6. A third of a pixel is forgiven: nothing stands finer on a screen.
constexpr double actionMm = 20;
constexpr double keyMm = 13;
constexpr double elsewhereMm = 11.6;
constexpr double gapMm = 3;
constexpr double readingMm = 600;
constexpr double textMinutes = 22;
constexpr double textContrast = 7;
constexpr double hairPx = 0.34;

QString told(const QQuickItem &item)
{
    const QString name = spokenName(&item);
    return name.isEmpty() ? QString::fromLatin1(item.metaObject()->className())
                          : QLatin1Char('"') + name.simplified() + QLatin1Char('"');
}

bool isAction(const QQuickItem &item)
{
    return QStringList{QStringLiteral("action"), QStringLiteral("back"), QStringLiteral("wrong")}.contains(
        item.objectName());
}

QSizeF leastOf(const QQuickItem &item)
{
    if (isAction(item))
        return {actionMm, actionMm};
    if (is(&item, "KeypadKey") || is(&item, "StepButton"))
        return {keyMm, keyMm};
    if (is(&item, "BandCell") || is(&item, "WorkedFigure"))
        return {actionMm, elsewhereMm};
    return {elsewhereMm, elsewhereMm};
}

/// What must stand apart: a finger that slips from one must not land on the next.
bool standsApart(const QQuickItem &item)
{
    return is(&item, "CutButton") || is(&item, "KeypadKey") || is(&item, "StepButton") ||
           is(&item, "HoldButton");
}

double apart(const QRectF &one, const QRectF &other)
{
    const double across = std::max(one.left() - other.right(), other.left() - one.right());
    const double down = std::max(one.top() - other.bottom(), other.top() - one.bottom());
    return std::max(across, down);
}

/// The capitals of a text as they are set, in pixels of the window.
double capPx(const QQuickItem &text)
{
    QFont font = text.property("font").value<QFont>();
    // Where the words are fitted into their place, the size they came to.
    if (const auto info = text.property("fontInfo").value<QJSValue>();
        info.property(QStringLiteral("pixelSize")).isNumber())
        font.setPixelSize(std::max(1, info.property(QStringLiteral("pixelSize")).toInt()));
    const QPointF foot = text.mapToScene(QPointF(0, 1)) - text.mapToScene(QPointF());
    return QFontMetricsF(font).capHeight() * std::hypot(foot.x(), foot.y());
}

/// The colour most of a place is painted with: what the words stand on.
QColor groundOf(const QImage &picture, const QRectF &place)
{
    const QRect within = place.toAlignedRect().adjusted(-2, -2, 2, 2) & picture.rect();
    QHash<QRgb, int> seen;
    for (int y = within.top(); y <= within.bottom(); y += 2)
        for (int x = within.left(); x <= within.right(); x += 2)
            ++seen[picture.pixel(x, y)];
    QRgb most = 0;
    int count = 0;
    for (auto it = seen.cbegin(); it != seen.cend(); ++it)
        if (it.value() > count) {
            count = it.value();
            most = it.key();
        }
    return QColor(most);
}

/// Words of what cannot be pressed now need no contrast (WCAG 2.2 SC 1.4.6, inactive components).
bool isAsleep(const QQuickItem &item)
{
    return !item.isEnabled();
}

} // namespace

double luminance(const QColor &colour)
{
    const auto part = [](double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return 0.2126 * part(colour.redF()) + 0.7152 * part(colour.greenF()) + 0.0722 * part(colour.blueF());
}

double contrast(const QColor &one, const QColor &other)
{
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

double arcMinutes(double heightMm, double distanceMm)
{
    return 2 * std::atan(heightMm / 2 / distanceMm) * 180 * 60 / std::numbers::pi;
}

void Survey::Least::take(double value, const QString &at)
{
    if (value >= least)
        return;
    least = value;
    where = at;
}

void Survey::fault(const QString &says)
{
    m_faults.append(m_where + QStringLiteral(": ") + says);
}

void Survey::look(QQuickWindow &window, const QString &where, double pxPerMm, bool readColours)
{
    m_where = where;
    m_pxPerMm = pxPerMm;
    ++m_screens;
    const QImage picture = readColours ? window.grabWindow() : QImage();
    QList<Sight> apartOnes;
    for (const Sight &sight : inSight(window)) {
        const QQuickItem *item = sight.item;
        if (isText(item)) {
            text(sight, picture);
        } else if (isDrawing(item)) {
            drawing(*item);
        } else if (takesTouch(item)) {
            names(*item);
            if (!item->isEnabled() && !isAction(*item))
                continue;
            ++m_controls;
            size(*item);
            apartOnes.append(sight);
        }
    }
    gaps(apartOnes);
}

void Survey::size(const QQuickItem &control)
{
    const QSizeF least = leastOf(control);
    const QQuickItem &field = *touchField(&control);
    const double width = mm(field.width() + hairPx);
    const double height = mm(field.height() + hairPx);
    const QString at = m_where + QStringLiteral(", ") + told(control);
    const double shorter = mm(std::min(field.width(), field.height()));
    (isAction(control) ? m_action : m_target).take(shorter, at);
    if (width < least.width() || height < least.height())
        fault(QStringLiteral("%1 is %2 × %3 mm, not %4 × %5")
                  .arg(told(control))
                  .arg(mm(field.width()), 0, 'f', 1)
                  .arg(mm(field.height()), 0, 'f', 1)
                  .arg(least.width())
                  .arg(least.height()));
}

void Survey::gaps(const QList<Sight> &controls)
{
    for (qsizetype i = 0; i < controls.size(); ++i)
        for (qsizetype k = i + 1; k < controls.size(); ++k) {
            const QQuickItem &one = *controls[i].item;
            const QQuickItem &other = *controls[k].item;
            const bool both = standsApart(one) && standsApart(other);
            if ((!both && !isAction(one) && !isAction(other)) || one.isAncestorOf(&other))
                continue;
            const double gap = mm(apart(controls[i].place, controls[k].place));
            m_gap.take(gap,
                       m_where + QStringLiteral(", ") + told(one) + QStringLiteral(" and ") + told(other));
            if (gap + mm(hairPx) < gapMm)
                fault(QStringLiteral("%1 is %2 mm from %3")
                          .arg(told(one))
                          .arg(gap, 0, 'f', 1)
                          .arg(told(other)));
        }
}

void Survey::names(const QQuickItem &control)
{
    if (spokenName(&control).simplified().isEmpty())
        fault(QStringLiteral("%1 has no name for a reader").arg(told(control)));
    if (!hasRole(&control))
        fault(QStringLiteral("%1 does not say what it is").arg(told(control)));
}

void Survey::drawing(const QQuickItem &item)
{
    ++m_drawings;
    if (spokenName(&item).simplified().isEmpty())
        fault(QStringLiteral("the drawing %1 says nothing to a reader").arg(told(item)));
    if (!hasRole(&item))
        fault(QStringLiteral("the drawing %1 does not say that it is one").arg(told(item)));
}

void Survey::text(const Sight &sight, const QImage &picture)
{
    const QQuickItem &item = *sight.item;
    ++m_texts;
    const QString words = item.property("text").toString().simplified();
    const QString at = m_where + QStringLiteral(", \"") + words + QLatin1Char('"');
    const double minutes = arcMinutes(mm(capPx(item) + hairPx), readingMm);
    m_text.take(minutes, at);
    if (minutes < textMinutes)
        fault(QStringLiteral("\"%1\" takes %2 minutes of arc").arg(words).arg(minutes, 0, 'f', 1));
    if (picture.isNull() || isAsleep(item))
        return;
    const QRectF whole = item.mapRectToScene(item.boundingRect());
    const QRectF place = sight.place & whole;
    // What is rolled half out of sight is read once it is rolled in.
    if (place.width() < 3 || place.height() < 3 || place.height() < 0.8 * whole.height())
        return;
    const double difference = contrast(item.property("color").value<QColor>(), groundOf(picture, place));
    m_contrast.take(difference, at);
    if (difference < textContrast)
        fault(QStringLiteral("\"%1\" stands %2:1 from its ground").arg(words).arg(difference, 0, 'f', 2));
}

QString Survey::table() const
{
    const auto row = [](const char *what, const Least &least, const char *unit) {
        return QStringLiteral("%1 | %2 %3 | %4\n")
            .arg(QLatin1String(what), -24)
            .arg(least.least, 8, 'f', 2)
            .arg(QLatin1String(unit), -10)
            .arg(least.where);
    };
    return QStringLiteral("\n%1 screens, %2 controls, %3 texts, %4 drawings\n")
               .arg(m_screens)
               .arg(m_controls)
               .arg(m_texts)
               .arg(m_drawings) +
           row("smallest action", m_action, "mm") + row("smallest other target", m_target, "mm") +
           row("narrowest gap", m_gap, "mm") + row("smallest text at 0.6 m", m_text, "arc min") +
           row("lowest contrast", m_contrast, ":1");
}

} // namespace touching
