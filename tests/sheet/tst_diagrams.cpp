// SPDX-License-Identifier: MIT
//
// The drawings as SVG, read back as XML and reckoned in millimetres from the file's own width, view box and
// transforms (W3C, Scalable Vector Graphics 1.1, chapter 7).
#include "sheet/diagrams.h"
#include "sheet/pieces.h"
#include "sheet/sheetcommand.h"

#include "app/wording.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <QTransform>
#include <QXmlStreamReader>

#include <cmath>

using namespace matside;

Q_DECLARE_METATYPE(matside::Project)

namespace {

/// What stands in an SVG file, in millimetres.
struct Drawn {
    QString fault;
    QSizeF page;
    std::vector<QRectF> boxes;
    std::vector<QPointF> points; ///< of lines, outlines and boxes
    QString words;
};

QTransform transformIn(const QString &text)
{
    static const QRegularExpression matrix(QStringLiteral("matrix\\(([^)]*)\\)"));
    const QStringList parts = matrix.match(text).captured(1).split(u',');
    if (parts.size() != 6)
        return {};
    const auto at = [&](qsizetype i) { return parts[i].toDouble(); };
    return {at(0), at(1), at(2), at(3), at(4), at(5)};
}

double lengthOf(const QString &text)
{
    return text.endsWith(QStringLiteral("mm")) ? text.chopped(2).toDouble() : std::nan("");
}

void add(Drawn &drawn, const QXmlStreamReader &reader, const QTransform &toMm)
{
    const auto at = [&](const char *name) { return reader.attributes().value(QLatin1String(name)); };
    if (reader.name() == QStringLiteral("rect")) {
        const QRectF box = toMm.mapRect(
            QRectF(at("x").toDouble(), at("y").toDouble(), at("width").toDouble(), at("height").toDouble()));
        drawn.boxes.push_back(box);
        drawn.points.push_back(box.topLeft());
        drawn.points.push_back(box.bottomRight());
        return;
    }
    static const QRegularExpression pair(QStringLiteral("(-?[\\d.]+(?:e-?\\d+)?),(-?[\\d.]+(?:e-?\\d+)?)"));
    for (const char *name : {"points", "d"})
        for (auto found = pair.globalMatch(at(name).toString()); found.hasNext();) {
            const auto point = found.next();
            drawn.points.push_back(
                toMm.map(QPointF(point.captured(1).toDouble(), point.captured(2).toDouble())));
        }
}

Drawn read(const QByteArray &svg)
{
    Drawn drawn;
    QXmlStreamReader reader(svg);
    QList<QTransform> transforms{QTransform()};
    while (!reader.atEnd()) {
        const auto token = reader.readNext();
        if (token == QXmlStreamReader::Characters)
            drawn.words += reader.text().toString() + u' ';
        if (token == QXmlStreamReader::EndElement)
            transforms.removeLast();
        if (token != QXmlStreamReader::StartElement)
            continue;
        transforms.append(transformIn(reader.attributes().value(QStringLiteral("transform")).toString()) *
                          transforms.last());
        if (reader.name() == QStringLiteral("svg")) {
            drawn.page = {lengthOf(reader.attributes().value(QStringLiteral("width")).toString()),
                          lengthOf(reader.attributes().value(QStringLiteral("height")).toString())};
            const QStringList box =
                reader.attributes().value(QStringLiteral("viewBox")).toString().split(u' ');
            const double k = drawn.page.width() / box.value(2).toDouble();
            transforms.last() = QTransform::fromScale(k, k);
        }
        add(drawn, reader, transforms.last());
    }
    if (reader.hasError())
        drawn.fault = reader.errorString();
    drawn.words = drawn.words.replace(u'\u00a0', u' ').simplified();
    return drawn;
}

QByteArray svgOf(const QString &name, const Project &project)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    return writeDiagram(buffer, name, project, plan(project)) ? buffer.data() : QByteArray();
}

bool near(double one, double other)
{
    return std::abs(one - other) < 0.02;
}

} // namespace

class TestDiagrams : public QObject {
    Q_OBJECT
private slots:
    void areWellFormedAndInsideTheirPage_data();
    void areWellFormedAndInsideTheirPage();
    void theGaugeIsAtTrueSize();
    void thePieceIsToItsScale();
    void theMarksStandWhereThePlanSays();
    void wordsAndFiguresAreThoseOfTheSheet();
    void aFolderIsFilled();
    void whatIsNotNeededIsLeftOut();
};

void TestDiagrams::areWellFormedAndInsideTheirPage_data()
{
    QTest::addColumn<Project>("project");
    for (const auto &[name, project] : sheetPieces())
        QTest::newRow(name) << project;
}

void TestDiagrams::areWellFormedAndInsideTheirPage()
{
    QFETCH(Project, project);
    const QStringList names = diagramsFor(project, plan(project));
    QVERIFY(names.size() >= 5);
    for (const QString &name : names) {
        const Drawn drawn = read(svgOf(name, project));
        QVERIFY2(drawn.fault.isEmpty(), qPrintable(name + drawn.fault));
        QVERIFY(near(drawn.page.width(), 210)); // as wide as ISO 216 A4
        QVERIFY(drawn.page.height() > 35 && drawn.page.height() < 600);
        QVERIFY2(drawn.points.size() > 3, qPrintable(name));
        const QRectF page(QPointF(), drawn.page);
        for (const QPointF &point : drawn.points)
            QVERIFY2(page.contains(point),
                     qPrintable(QStringLiteral("%1: %2, %3").arg(name).arg(point.x()).arg(point.y())));
    }
}

void TestDiagrams::theGaugeIsAtTrueSize()
{
    const Drawn drawn = read(svgOf(QStringLiteral("gauge"), example()));
    // As the plan example beside the project states them (in inches, 1 in = 25.4 mm).
    for (const double mm : {12.7, 7.9375, 3.96875, 25.4})
        QVERIFY2(
            std::any_of(drawn.boxes.begin(), drawn.boxes.end(),
                        [&](const QRectF &box) { return near(box.width(), mm) && near(box.height(), 5); }),
            qPrintable(QString::number(mm)));
}

void TestDiagrams::thePieceIsToItsScale()
{
    for (const Project &project : {example(), inWholeMillimetres(example())}) {
        const Drawn drawn = read(svgOf(QStringLiteral("piece"), project));
        static const QRegularExpression scale(QStringLiteral("1 : (\\d+)"));
        const double times = scale.match(drawn.words).captured(1).toDouble();
        QVERIFY2(times >= 1, qPrintable(drawn.words));
        const Pair &size = plan(project).size.finished;
        QVERIFY(std::any_of(drawn.boxes.begin(), drawn.boxes.end(), [&](const QRectF &box) {
            return std::abs(box.width() * times - size.along.asMm()) < 0.3 &&
                   std::abs(box.height() * times - size.across.asMm()) < 0.3;
        }));
    }
}

void TestDiagrams::theMarksStandWhereThePlanSays()
{
    const Project project = example();
    const Plan made = plan(project);
    const Drawn drawn = read(svgOf(QStringLiteral("match-marks"), project));
    QVERIFY(!made.sashing.marks.empty());
    const double raw = made.size.raw.along.asMm();
    for (const Length mark : made.sashing.marks) {
        const double x = 15 + 180 * mark.asMm() / raw; // the row from margin to margin
        QVERIFY(std::any_of(drawn.points.begin(), drawn.points.end(),
                            [&](const QPointF &point) { return near(point.x(), x); }));
        QVERIFY(drawn.words.contains(figureText(mark, project.marks())));
    }
}

void TestDiagrams::wordsAndFiguresAreThoseOfTheSheet()
{
    const Project project = example();
    const QString map = read(svgOf(QStringLiteral("map-back"), project)).words;
    for (const char *block : {"A1", "A6", "C1", "C6"})
        QVERIFY2(map.contains(QLatin1String(block)), block);
    QVERIFY(map.indexOf(QStringLiteral("A1")) >= 0 && map.contains(QStringLiteral("turned over")));
    QVERIFY(read(svgOf(QStringLiteral("gauge"), project)).words.contains(QStringLiteral("5/16 in")));
}

void TestDiagrams::aFolderIsFilled()
{
    const QTemporaryDir dir;
    const QString folder = dir.filePath(QStringLiteral("a/b"));
    const Project project = example();
    const Plan made = plan(project);
    for (int twice = 0; twice < 2; ++twice) // replaced whole
        QCOMPARE(saveDiagrams(project, made, folder), QString());
    QStringList expected = diagramsFor(project, made);
    expected.replaceInStrings(QRegularExpression(QStringLiteral("$")), QStringLiteral(".svg"));
    expected.sort();
    QCOMPARE(QDir(folder).entryList(QDir::Files | QDir::Hidden, QDir::Name), expected);
    QVERIFY(expected.contains(QStringLiteral("map-front.svg")));
    QFile taken(dir.filePath(QStringLiteral("taken")));
    QVERIFY(taken.open(QIODevice::WriteOnly));
    QVERIFY(saveDiagrams(project, made, taken.fileName()).contains(QStringLiteral("taken")));
    QCOMPARE(diagramsOf(dir.filePath(QStringLiteral("none.json")), folder).exit, 2);
}

void TestDiagrams::whatIsNotNeededIsLeftOut()
{
    const Project many = longOne();
    QVERIFY(svgOf(QStringLiteral("no-such"), many).isEmpty());
    Project one = example();
    one.blocks.columns = 1;
    one.blocks.rows = 1;
    const QStringList names = diagramsFor(one, plan(one));
    QVERIFY(!names.contains(QStringLiteral("match-marks")) && names.contains(QStringLiteral("trim")));
}

QTEST_MAIN(TestDiagrams)
#include "tst_diagrams.moc"
