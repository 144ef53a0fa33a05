// SPDX-License-Identifier: MIT
#pragma once

#include <QFont>
#include <QPainter>
#include <QPdfWriter>
#include <QRectF>
#include <QString>

class QTextLayout;

namespace matside {

enum class PaperSize { A4, Letter };

/// How a text is set: height of the type (its em) in millimetres.
struct Type {
    double mm = 3.9;
    bool bold = false;
    double grey = 0; ///< 0 black … 1 white
};

/// The sizes in use: one scale for the whole sheet.
namespace types {
inline constexpr Type title{10.5, true};
inline constexpr Type head{6.2, true};
inline constexpr Type figure{6.6, true};
inline constexpr Type strong{3.9, true};
inline constexpr Type body{3.9};
inline constexpr Type small{3.2};
inline constexpr Type soft{3.2, false, 0.35};
} // namespace types

/// Pages of a printed sheet, filled from the top. Everything is told in millimetres from the page's top left
/// corner; what is written stays inside the margins. Text is kept as text, in the lettering of the program.
class Paper {
public:
    /// `name` stands in the footers; `pagesInAll` beside each page's number.
    Paper(QPdfWriter &writer, PaperSize size, QString name, int pagesInAll);
    /// A single drawing as wide as A4 and this high, on a device with so many units to a millimetre: it has
    /// no footer and never turns.
    Paper(QPaintDevice &drawing, double height, double perMm);
    /// Units to a millimetre that the lettering is set on without loss.
    [[nodiscard]] static double unitsPerMm();
    Paper(const Paper &) = delete;
    Paper &operator=(const Paper &) = delete;
    Paper(Paper &&) = delete;
    Paper &operator=(Paper &&) = delete;
    ~Paper();

    static constexpr double margin = 15; ///< on all four sides
    [[nodiscard]] double left() const { return margin; }
    [[nodiscard]] double right() const;
    [[nodiscard]] double width() const { return right() - left(); }
    /// Below the last line that may be used: the footer stands under it.
    [[nodiscard]] double bottom() const;
    [[nodiscard]] double room() const { return bottom() - y; }
    [[nodiscard]] int pages() const { return m_pages; }

    /// Where the next thing goes.
    double y = margin;

    /// A new page, unless this one is still empty.
    void newPage();
    /// A new page when little of this one is left, or less than that: where another part begins.
    void part(double least);
    /// What is this high goes whole on one page: turns the page when the rest of this one is too short.
    void keep(double height);
    /// A heading with its rule; what follows it, this high, stays with it. It is said again on every page
    /// that goes on with the same matter, until another heading or part.
    void head(const QString &text, double follows = 30);
    /// Another text for the top of a page that goes on with the same matter; none when empty.
    void goesOn(const QString &head) { m_goesOn = head; }

    /// Writes in a column and gives the height it took; braces set a length bold. `y` is left as it is.
    double write(double x, double top, double across, const QString &text, Type type,
                 Qt::Alignment align = Qt::AlignLeft);
    /// The height it would take.
    [[nodiscard]] double tall(double across, const QString &text, Type type) const;
    /// How wide a text is on one line.
    [[nodiscard]] double wide(const QString &text, Type type) const;
    /// As much of a text as goes into so many lines, with an ellipsis where it is cut short.
    [[nodiscard]] QString cut(const QString &text, double across, Type type, int lines = 1) const;
    /// Writes across the page at `y` and goes below it; the text is not split between pages.
    void say(const QString &text, Type type = types::body, double below = 1.6);

    /// For drawings, in millimetres. Lines are black and 0.3 mm unless set otherwise.
    [[nodiscard]] QPainter &painter() { return m_painter; }
    void line(double x1, double y1, double x2, double y2, double thick = 0.3);
    void box(const QRectF &box, double thick = 0.3);
    /// A square to tick.
    void tickBox(double x, double top, double side);

private:
    double lay(QTextLayout &layout, double across, Qt::Alignment align) const;
    void foot();

    QPdfWriter *m_writer = nullptr; ///< of a sheet
    QString m_name;
    QString m_goesOn;
    QSizeF m_page; ///< mm
    int m_pages = 1;
    int m_inAll = 1;
    QPainter m_painter;
};

/// A text whose figures are not broken between lines: "7 1/8 in" stays together.
[[nodiscard]] QString unbroken(QString text);

} // namespace matside
