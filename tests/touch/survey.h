// SPDX-License-Identifier: MIT
#pragma once

#include "eyes.h"

#include <QColor>
#include <QStringList>

class QImage;

namespace touching {

/// Relative luminance and contrast ratio: W3C, WCAG 2.2, definitions of those two terms. Colours are sRGB.
[[nodiscard]] double luminance(const QColor &colour);
[[nodiscard]] double contrast(const QColor &one, const QColor &other);

/// Minutes of arc a height of so many millimetres takes at a distance of so many.
[[nodiscard]] double arcMinutes(double heightMm, double distanceMm);

/// A surveyor of screens: measures everything that is shown in millimetres and keeps what is wrong with it
/// and the least there was of each.
class Survey {
public:
    /// One screen as it stands: what it is called, and how many pixels a millimetre takes.
    void look(QQuickWindow &window, const QString &where, double pxPerMm, bool readColours);

    [[nodiscard]] const QStringList &faults() const { return m_faults; }
    [[nodiscard]] int screens() const { return m_screens; }
    [[nodiscard]] int controls() const { return m_controls; }
    [[nodiscard]] int texts() const { return m_texts; }
    [[nodiscard]] int drawings() const { return m_drawings; }
    [[nodiscard]] double smallestTargetMm() const { return m_target.least; }
    [[nodiscard]] double smallestArcMinutes() const { return m_text.least; }
    [[nodiscard]] double lowestContrast() const { return m_contrast.least; }
    /// The table: what was measured, the least of it, and where that was.
    [[nodiscard]] QString table() const;

private:
    struct Least {
        double least = 1e9;
        QString where;
        void take(double value, const QString &at);
    };
    void size(const QQuickItem &control);
    void gaps(const QList<Sight> &controls);
    void names(const QQuickItem &control);
    void drawing(const QQuickItem &item);
    void text(const Sight &sight, const QImage &picture);
    void fault(const QString &says);
    [[nodiscard]] double mm(double px) const { return px / m_pxPerMm; }

    QString m_where;
    double m_pxPerMm = 1;
    int m_screens = 0;
    int m_controls = 0;
    int m_texts = 0;
    int m_drawings = 0;
    Least m_target;
    Least m_action;
    Least m_gap;
    Least m_text;
    Least m_contrast;
    QStringList m_faults;
};

} // namespace touching
