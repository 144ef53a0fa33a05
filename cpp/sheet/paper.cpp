// SPDX-License-Identifier: MIT
#include "sheet/paper.h"

#include "app/wording.h"

#include <QCoreApplication>
#include <QFontDatabase>
#include <QRegularExpression>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

/// Dots to a millimetre of the PDF: type is set on them, so it comes in hundredths of a millimetre.
constexpr double dots = 100;
constexpr double footHeight = 8;

/// The lettering of the program, under the family name of its own.
QString family()
{
    static const QString name = [] {
        QString found;
        for (const char *face : {":/sheet/fonts/Regular.font", ":/sheet/fonts/Bold.font"}) {
            const int id = QFontDatabase::addApplicationFont(QString::fromLatin1(face));
            if (const QStringList families = QFontDatabase::applicationFontFamilies(id); !families.isEmpty())
                found = families.constFirst();
        }
        return found;
    }();
    return name;
}

QFont fontOf(Type type)
{
    QFont font(family());
    font.setPixelSize(static_cast<int>(std::lround(type.mm * dots)));
    font.setBold(type.bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::ForceOutline);
    return font;
}

/// The text without its braces, and what stood in them set bold.
QString withoutBraces(const QString &text, const QFont &font, QList<QTextLayout::FormatRange> &bold)
{
    QString plain;
    qsizetype from = -1;
    for (const QChar c : text) {
        if (c == u'{') {
            from = plain.size();
        } else if (c == u'}' && from >= 0) {
            QTextLayout::FormatRange range;
            range.start = static_cast<int>(from);
            range.length = static_cast<int>(plain.size() - from);
            QFont strong = font;
            strong.setBold(true);
            range.format.setFont(strong);
            bold.append(range);
            from = -1;
        } else {
            plain += c;
        }
    }
    return plain;
}

/// "a scant", "a generous": said in plain letters beside a bold figure, smaller ones beside a large figure.
void plainLeans(const QString &text, const QFont &font, QList<QTextLayout::FormatRange> &formats)
{
    constexpr int large = 440;
    for (const Lean lean : {Lean::Scant, Lean::Generous}) {
        const QString words = unbroken(leanText(lean)) + u' ';
        for (qsizetype at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
            QTextLayout::FormatRange range;
            range.start = static_cast<int>(at);
            range.length = static_cast<int>(words.size());
            QFont plain = font;
            plain.setBold(false);
            if (font.pixelSize() > large)
                plain.setPixelSize(std::max(large * 3 / 4, font.pixelSize() / 2));
            range.format.setFont(plain);
            formats.append(range);
        }
    }
}

void fill(QTextLayout &layout, const QString &text, const QFont &font, Qt::Alignment align)
{
    QList<QTextLayout::FormatRange> bold;
    layout.setFont(font);
    layout.setText(withoutBraces(unbroken(text), font, bold));
    plainLeans(layout.text(), font, bold);
    layout.setFormats(bold);
    QTextOption option(align);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
}

} // namespace

QString unbroken(QString text)
{
    static const QRegularExpression mixed(QStringLiteral("(?<=\\d) (?=\\d+/\\d)"));
    static const QRegularExpression unit(QStringLiteral("(?<=\\d) (?=(in|mm|cm|m|yd|%)\\b)"));
    for (const QRegularExpression &gap : {mixed, unit})
        text.replace(gap, QStringLiteral("\u00a0"));
    for (const Lean lean : {Lean::Scant, Lean::Generous}) {
        const QString words = leanText(lean);
        QString whole = words;
        text.replace(words, whole.replace(u' ', QChar(QChar::Nbsp)));
    }
    return text;
}

Paper::Paper(QPdfWriter &writer, PaperSize size, QString name, int pagesInAll)
    : m_writer(&writer), m_name(std::move(name)), m_inAll(pagesInAll)
{
    const QPageSize page(size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter);
    m_page = page.size(QPageSize::Millimeter);
    m_writer->setResolution(static_cast<int>(std::lround(dots * 25.4)));
    m_writer->setPageLayout(QPageLayout(page, QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter));
    m_painter.begin(m_writer);
    m_painter.scale(dots, dots);
    m_painter.setPen(QPen(Qt::black, 0.3));
}

Paper::Paper(QPaintDevice &drawing, double height, double perMm)
    : m_page(QPageSize(QPageSize::A4).size(QPageSize::Millimeter).width(), height)
{
    m_painter.begin(&drawing);
    m_painter.scale(perMm, perMm);
    m_painter.setPen(QPen(Qt::black, 0.3));
}

double Paper::unitsPerMm()
{
    return dots;
}

Paper::~Paper()
{
    foot();
    m_painter.end();
}

double Paper::right() const
{
    return m_page.width() - margin;
}

double Paper::bottom() const
{
    return m_page.height() - margin - footHeight;
}

void Paper::foot()
{
    if (!m_writer)
        return;
    const double top = m_page.height() - margin - 4;
    //: a page's footer: the project's name, the page and how many there are
    const QString says = QCoreApplication::translate("Sheet", "%1 · page %2 of %3");
    const QString name = cut(m_name, width() * 0.7, types::soft);
    write(left(), top, width(), says.arg(name).arg(m_pages).arg(m_inAll), types::soft);
}

void Paper::newPage()
{
    if (y <= margin || !m_writer)
        return;
    foot();
    m_writer->newPage();
    ++m_pages;
    y = margin;
    if (!m_goesOn.isEmpty()) {
        //: at the top of a page: the heading it goes on with
        const QString says = QCoreApplication::translate("Sheet", "%1, continued");
        y += write(left(), y, width(), says.arg(m_goesOn), types::soft) + 2;
    }
}

void Paper::part(double least)
{
    m_goesOn.clear();
    if (room() < std::max(least, (bottom() - margin) * 0.45))
        newPage();
}

void Paper::keep(double height)
{
    if (height > room())
        newPage();
}

void Paper::head(const QString &text, double follows)
{
    m_goesOn.clear();
    if (y > margin)
        y += 5;
    keep(12 + follows);
    line(left(), y, right(), y, 0.7);
    y += 2.2;
    y += write(left(), y, width(), text, types::head) + 2.5;
    m_goesOn = text;
}

double Paper::lay(QTextLayout &layout, double across, Qt::Alignment align) const
{
    (void)align;
    double height = 0;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(across * dots);
        line.setPosition(QPointF(0, height));
        height += line.height() * 1.04;
    }
    layout.endLayout();
    return height / dots;
}

double Paper::tall(double across, const QString &text, Type type) const
{
    QTextLayout layout;
    fill(layout, text, fontOf(type), Qt::AlignLeft);
    return lay(layout, across, Qt::AlignLeft);
}

double Paper::wide(const QString &text, Type type) const
{
    QTextLayout layout;
    fill(layout, text, fontOf(type), Qt::AlignLeft);
    layout.beginLayout();
    QTextLine line = layout.createLine();
    line.setLineWidth(1e7);
    layout.endLayout();
    return line.isValid() ? line.naturalTextWidth() / dots : 0;
}

QString Paper::cut(const QString &text, double across, Type type, int lines) const
{
    const double most = tall(across, QStringLiteral("x"), type) * (lines + 0.5);
    QString whole = text;
    QString part = text;
    while (tall(across, whole, type) > most && part.size() > 1) {
        part.chop(1);
        whole = part.trimmed() + u'…';
    }
    return whole;
}

double Paper::write(double x, double top, double across, const QString &text, Type type, Qt::Alignment align)
{
    QTextLayout layout;
    fill(layout, text, fontOf(type), align);
    const double height = lay(layout, across, align);
    const int shade = static_cast<int>(std::lround(type.grey * 255));
    m_painter.save();
    m_painter.translate(x, top);
    m_painter.scale(1 / dots, 1 / dots);
    m_painter.setPen(QColor(shade, shade, shade));
    layout.draw(&m_painter, QPointF());
    m_painter.restore();
    return height;
}

void Paper::say(const QString &text, Type type, double below)
{
    if (text.isEmpty())
        return;
    keep(tall(width(), text, type));
    y += write(left(), y, width(), text, type) + below;
}

void Paper::line(double x1, double y1, double x2, double y2, double thick)
{
    m_painter.save();
    m_painter.setPen(QPen(Qt::black, thick, Qt::SolidLine, Qt::FlatCap));
    m_painter.drawLine(QPointF(x1, y1), QPointF(x2, y2));
    m_painter.restore();
}

void Paper::box(const QRectF &box, double thick)
{
    m_painter.save();
    m_painter.setPen(QPen(Qt::black, thick, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawRect(box);
    m_painter.restore();
}

void Paper::tickBox(double x, double top, double side)
{
    box(QRectF(x, top, side, side), 0.35);
}

} // namespace matside
