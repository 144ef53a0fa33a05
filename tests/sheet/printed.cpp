// SPDX-License-Identifier: MIT
#include "sheet/printed.h"

#include <QImageReader>
#include <QProcess>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace matside {

namespace {

constexpr double mmOfPoint = 25.4 / 72;

QString fieldOf(const QString &info, const QString &name)
{
    const QRegularExpression line(QStringLiteral("^%1:\\s*(.+)$").arg(name),
                                  QRegularExpression::MultilineOption);
    return line.match(info).captured(1);
}

} // namespace

QByteArray printedBy(const QString &program, const QStringList &arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60'000) || process.exitCode() != 0)
        return {};
    return process.readAllStandardOutput();
}

std::set<QString> lengthsIn(const QString &text)
{
    std::set<QString> all;
    static const QRegularExpression length(
        QStringLiteral("(a scant |a generous )?(\u2212?)((\\d+ )?\\d+/\\d+|\\d+(\\.\\d+)?) (in|mm)\\b"));
    for (auto at = length.globalMatch(text); at.hasNext();)
        all.insert(at.next().captured());
    return all;
}

int Printed::pages() const
{
    const QString info = QString::fromUtf8(printedBy(QStringLiteral("pdfinfo"), {m_path}));
    return fieldOf(info, QStringLiteral("Pages")).toInt();
}

QSizeF Printed::pageMm() const
{
    const QString info = QString::fromUtf8(printedBy(QStringLiteral("pdfinfo"), {m_path}));
    const QRegularExpression size(QStringLiteral("([\\d.]+) x ([\\d.]+) pts"));
    const auto match = size.match(fieldOf(info, QStringLiteral("Page size")));
    return {match.captured(1).toDouble() * mmOfPoint, match.captured(2).toDouble() * mmOfPoint};
}

QString Printed::text() const
{
    QString text = QString::fromUtf8(
        printedBy(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), m_path, QStringLiteral("-")}));
    return text.replace(u'\u00a0', u' ').simplified();
}

std::vector<Printed::Word> Printed::words() const
{
    std::vector<Word> words;
    QXmlStreamReader reader(
        printedBy(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), m_path, QStringLiteral("-")}));
    int page = 0;
    while (!reader.atEnd()) {
        if (reader.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (reader.name() == QStringLiteral("page"))
            ++page;
        if (reader.name() != QStringLiteral("word"))
            continue;
        const auto at = [&](const char *name) {
            return reader.attributes().value(QLatin1String(name)).toDouble() * mmOfPoint;
        };
        const QRectF place(QPointF(at("xMin"), at("yMin")), QPointF(at("xMax"), at("yMax")));
        words.push_back({page, place, reader.readElementText()});
    }
    return words;
}

std::vector<QStringList> Printed::fonts() const
{
    std::vector<QStringList> fonts;
    const QString table = QString::fromUtf8(printedBy(QStringLiteral("pdffonts"), {m_path}));
    const QStringList lines = table.split(u'\n', Qt::SkipEmptyParts);
    for (qsizetype i = 2; i < lines.size(); ++i) {
        // Counted from the end: name and type may hold spaces. … emb sub uni object id
        const QStringList cells = lines[i].simplified().split(u' ');
        fonts.push_back({cells.constFirst(), cells.value(cells.size() - 5)});
    }
    return fonts;
}

QImage Printed::page(int number, int dpi) const
{
    const QString n = QString::number(number);
    const QByteArray picture = printedBy(QStringLiteral("pdftoppm"),
                                         {QStringLiteral("-gray"), QStringLiteral("-r"), QString::number(dpi),
                                          QStringLiteral("-f"), n, QStringLiteral("-l"), n, m_path});
    QImageReader::setAllocationLimit(0); // a page at 600 dots is larger than Qt takes unasked
    return QImage::fromData(picture, "PGM").convertToFormat(QImage::Format_Grayscale8);
}

} // namespace matside
