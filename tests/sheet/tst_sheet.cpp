// SPDX-License-Identifier: MIT
//
// The printed sheet, read back with Poppler's programs: what stands on it, where, and how long it is.
#include "sheet/pieces.h"
#include "sheet/printed.h"

#include "app/planfile.h"
#include "project/codec.h"
#include "sheet/sheetcommand.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include <nlohmann/json.hpp>

#include <cmath>
#include <set>

using namespace matside;

namespace {

void asRows()
{
    QTest::addColumn<Project>("project");
    for (const auto &[name, project] : sheetPieces())
        QTest::newRow(name) << project;
}

/// The texts on the ruler anywhere in a plan file.
void gather(const nlohmann::json &file, std::set<QString> &shows)
{
    if (file.is_object() && file.contains("shows"))
        shows.insert(QString::fromStdString(file["shows"].get<std::string>()));
    else if (file.is_structured())
        for (const auto &part : file)
            gather(part, shows);
}

} // namespace

Q_DECLARE_METATYPE(matside::Project)

class TestSheet : public QObject {
    Q_OBJECT

    QTemporaryDir m_dir;

    /// Writes a sheet and gives its path.
    QString written(const Project &project, SheetForm form = {})
    {
        static int number = 0;
        const QString path = m_dir.filePath(QStringLiteral("%1.pdf").arg(++number));
        const QString wrong = saveSheet(project, plan(project), path, form);
        return wrong.isEmpty() ? path : QString();
    }

private slots:
    void pagesAreOfTheirPaper_data();
    void pagesAreOfTheirPaper();
    void everyFigureOfThePlanIsPrinted_data() { asRows(); }
    void everyFigureOfThePlanIsPrinted();
    void lettersAreEmbedded_data() { asRows(); }
    void lettersAreEmbedded();
    void wordsStayInsideTheMargins_data();
    void wordsStayInsideTheMargins();
    void theShortFormIsOnePage_data() { asRows(); }
    void theShortFormIsOnePage();
    void theCheckBarIsTrue_data();
    void theCheckBarIsTrue();
    void theGaugeIsTrue_data();
    void theGaugeIsTrue();
    void aRowIsNotSplit();
    void millimetresStayMillimetres();
    void pagesAreNumbered();
    void whatCannotBeMadeIsRefused();
    void theTargetIsWholeOrUntouched();
};

void TestSheet::pagesAreOfTheirPaper_data()
{
    QTest::addColumn<PaperSize>("paper");
    QTest::addColumn<QSizeF>("mm");
    QTest::newRow("A4") << PaperSize::A4 << QSizeF(210, 297); // ISO 216
    QTest::newRow("Letter") << PaperSize::Letter
                            << QSizeF(215.9, 279.4); // ANSI/ASME Y14.1, size A: 8.5 × 11 in
}

void TestSheet::pagesAreOfTheirPaper()
{
    QFETCH(PaperSize, paper);
    QFETCH(QSizeF, mm);
    const Printed sheet(written(example(), {paper, false}));
    // A point, 0.35 mm, is what page sizes are commonly rounded to.
    QVERIFY(std::abs(sheet.pageMm().width() - mm.width()) < 0.36);
    QVERIFY(std::abs(sheet.pageMm().height() - mm.height()) < 0.36);
    QVERIFY(sheet.pages() >= 6);
    QVERIFY(sheet.pages() <= 14);
}

void TestSheet::everyFigureOfThePlanIsPrinted()
{
    QFETCH(Project, project);
    const Plan made = plan(project);
    QVERIFY(made.problems.empty());
    std::set<QString> shows;
    gather(nlohmann::json::parse(writePlanFile(project, made, steps(project, made), {})), shows);
    QVERIFY(shows.size() > 20);
    const std::set<QString> printed = lengthsIn(Printed(written(project)).text());
    QStringList missing;
    for (const QString &figure : shows)
        if (!printed.contains(figure))
            missing += figure;
    QVERIFY2(missing.isEmpty(), qPrintable(missing.join(QStringLiteral("; "))));
}

void TestSheet::lettersAreEmbedded()
{
    QFETCH(Project, project);
    for (const bool brief : {false, true}) {
        const auto fonts = Printed(written(project, {PaperSize::A4, brief})).fonts();
        QVERIFY(!fonts.empty());
        for (const QStringList &font : fonts)
            QVERIFY2(font.value(1) == QStringLiteral("yes"), qPrintable(font.join(u' ')));
    }
}

void TestSheet::wordsStayInsideTheMargins_data()
{
    QTest::addColumn<Project>("project");
    QTest::addColumn<SheetForm>("form");
    for (const auto &[name, project] : sheetPieces())
        for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter})
            for (const bool brief : {false, true})
                QTest::addRow("%s %s %s", name, paper == PaperSize::A4 ? "A4" : "Letter",
                              brief ? "short" : "long")
                    << project << SheetForm{paper, brief};
    Project wordy = example();
    wordy.name =
        std::string(60, 'W') + " " + std::string(40, 'w') + " of a very long name that goes on and on";
    for (Cloth &cloth : wordy.cloths)
        cloth.name = "the cloth with the longest name anybody ever gave a cloth, from the second shelf";
    QTest::newRow("long names") << wordy << SheetForm{};
    QTest::newRow("long names, short") << wordy << SheetForm{PaperSize::Letter, true};
}

void TestSheet::wordsStayInsideTheMargins()
{
    QFETCH(Project, project);
    QFETCH(SheetForm, form);
    const Printed sheet(written(project, form));
    const QSizeF page = sheet.pageMm();
    // Boxes of Poppler reach from the font's ascent to its descent and may stand out by a hair.
    const QRectF room(QPointF(14.5, 14), QPointF(page.width() - 14.5, page.height() - 14));
    const auto words = sheet.words();
    QVERIFY(words.size() > 50);
    for (const Printed::Word &word : words)
        QVERIFY2(room.contains(word.place), qPrintable(QStringLiteral("page %1: %2 at %3, %4 to %5, %6")
                                                           .arg(word.page)
                                                           .arg(word.text)
                                                           .arg(word.place.left())
                                                           .arg(word.place.top())
                                                           .arg(word.place.right())
                                                           .arg(word.place.bottom())));
}

void TestSheet::theShortFormIsOnePage()
{
    QFETCH(Project, project);
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        const Printed sheet(written(project, {paper, true}));
        QCOMPARE(sheet.pages(), 1);
        QVERIFY(sheet.text().contains(QStringLiteral("page 1 of 1")));
    }
}

namespace {

/// The longest run of black in each line of a page: from and length in dots, by line.
struct Run {
    int from = 0;
    int length = 0;
};

std::vector<Run> longestRuns(const QImage &page)
{
    std::vector<Run> runs;
    for (int y = 0; y < page.height(); ++y) {
        const uchar *line = page.constScanLine(y);
        Run best;
        Run now;
        for (int x = 0; x < page.width(); ++x) {
            if (line[x] < 64) {
                now = {now.length == 0 ? x : now.from, now.length + 1};
                if (now.length > best.length)
                    best = now;
            } else {
                now = {};
            }
        }
        runs.push_back(best);
    }
    return runs;
}

constexpr int dpi = 600;
constexpr double mmOfDot = 25.4 / dpi;

} // namespace

void TestSheet::theCheckBarIsTrue_data()
{
    QTest::addColumn<Project>("project");
    QTest::addColumn<SheetForm>("form");
    QTest::addColumn<double>("mm");
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter})
        for (const bool brief : {false, true}) {
            const char *size = paper == PaperSize::A4 ? "A4" : "Letter";
            const char *which = brief ? "short" : "long";
            QTest::addRow("inch, %s, %s", size, which)
                << example() << SheetForm{paper, brief} << 101.6; // 1 in = 25.4 mm, NBS Circular 572
            QTest::addRow("metric, %s, %s", size, which)
                << inWholeMillimetres(example()) << SheetForm{paper, brief} << 100.0;
        }
}

void TestSheet::theCheckBarIsTrue()
{
    QFETCH(Project, project);
    QFETCH(SheetForm, form);
    QFETCH(double, mm);
    const QImage page = Printed(written(project, form)).page(1, dpi);
    QVERIFY(!page.isNull());
    // The bar is the only thing that black and that long which is 4 mm high; rules are longer and thin.
    int lines = 0;
    for (const Run &run : longestRuns(page))
        if (std::abs(run.length * mmOfDot - mm) < 0.1)
            ++lines;
    QVERIFY2(std::abs(lines * mmOfDot - 4) < 0.3, qPrintable(QString::number(lines * mmOfDot)));
}

void TestSheet::theGaugeIsTrue_data()
{
    QTest::addColumn<PaperSize>("paper");
    QTest::newRow("A4") << PaperSize::A4;
    QTest::newRow("Letter") << PaperSize::Letter;
}

void TestSheet::theGaugeIsTrue()
{
    QFETCH(PaperSize, paper);
    const Project project = example();
    const Printed sheet(written(project, {paper, false}));
    // The page and the line of every bar are found by the words beside them.
    const auto words = sheet.words();
    const auto beside = [&](const QString &first, const QString &second) -> std::optional<Printed::Word> {
        for (const Printed::Word &word : words)
            for (const Printed::Word &next : words)
                if (word.text == first && next.text.startsWith(second) && next.page == word.page &&
                    next.place.left() > word.place.right() &&
                    std::abs(next.place.top() - word.place.top()) < 2 && word.place.left() > 30 &&
                    word.place.right() < 70)
                    return word;
        return std::nullopt;
    };
    struct Bar {
        QString first;
        QString second;
        double mm;
    };
    // As the plan example beside the project states them: fold 5/16 in, catch 5/32 in; seam and sashing as
    // entered.
    for (const Bar &bar : {Bar{QStringLiteral("seam"), QStringLiteral("1/2"), 12.7},
                           Bar{QStringLiteral("fold"), QStringLiteral("under"), 7.9375},
                           Bar{QStringLiteral("catch"), QStringLiteral("5/32"), 3.96875},
                           Bar{QStringLiteral("as"), QStringLiteral("seen"), 25.4}}) {
        const auto word = beside(bar.first, bar.second);
        QVERIFY2(word, qPrintable(bar.first));
        const QImage page = sheet.page(word->page, dpi);
        const auto y = static_cast<std::size_t>(word->place.center().y() / mmOfDot);
        const std::vector<Run> runs =
            longestRuns(page.copy(page.width() / 5, 0, page.width() / 2, page.height()));
        const double length = runs[y].length * mmOfDot;
        QVERIFY2(std::abs(length - bar.mm) < 0.1,
                 qPrintable(QStringLiteral("%1: %2").arg(bar.first).arg(length)));
    }
}

void TestSheet::aRowIsNotSplit()
{
    // Each row of the shopping list and of the cut list stands whole on one page: its count, and the last
    // word it says. Steps are told apart by their number of repetitions.
    Project project = longOne();
    project.cloths.clear();
    for (int i = 0; i < 40; ++i) {
        Cloth cloth;
        cloth.id = "c" + std::to_string(i);
        cloth.name = "cloth" + std::to_string(i) + "x";
        cloth.role = ClothRole::Patch;
        cloth.soldStep = usualSoldStep(project.system);
        project.cloths.push_back(cloth);
    }
    project.patches.clear();
    for (int i = 0; i < 40; ++i)
        project.patches.push_back({"p" + std::to_string(i),
                                   Length::inches(2),
                                   Length::inches(3),
                                   Length::inches(0, 1, 2),
                                   "c" + std::to_string(i),
                                   i % 20 + 1,
                                   {}});
    QVERIFY(plan(project).problems.empty());
    const Printed sheet(written(project));
    const auto words = sheet.words();
    QVERIFY(sheet.pages() > 10);
    const std::int64_t blocks = project.blocks.columns * project.blocks.rows + project.blocks.spare;
    for (int i = 0; i < 40; ++i) {
        const QString count = QString::number(blocks * (i % 20 + 1));
        const QString name = QStringLiteral("cloth%1x.").arg(i);
        const auto says = std::find_if(words.begin(), words.end(),
                                       [&](const Printed::Word &word) { return word.text == name; });
        QVERIFY2(says != words.end(), qPrintable(name));
        bool beside = false;
        for (std::size_t w = 0; w + 1 < words.size(); ++w)
            beside = beside || (words[w].text == count && words[w + 1].text == QStringLiteral("×") &&
                                words[w].place.left() < 20 && words[w].page == says->page &&
                                std::abs(words[w].place.top() - says->place.top()) < 12);
        QVERIFY2(beside, qPrintable(name));
    }
}

void TestSheet::millimetresStayMillimetres()
{
    const QString text = Printed(written(inWholeMillimetres(example()))).text();
    // Cautions name both units in one breath: "6 in (15 cm)", "12 in (30 cm)". They are no figures of the
    // plan.
    for (const QString &length : lengthsIn(text))
        if (length.endsWith(QStringLiteral("in")))
            QVERIFY2(length == QStringLiteral("6 in") || length == QStringLiteral("12 in"),
                     qPrintable(length));
    QVERIFY(lengthsIn(text).size() > 30);
}

void TestSheet::pagesAreNumbered()
{
    const Printed sheet(written(example()));
    const QString text = sheet.text();
    const int pages = sheet.pages();
    for (int page = 1; page <= pages; ++page)
        QVERIFY(text.contains(QStringLiteral("Reading-room runner · page %1 of %2").arg(page).arg(pages)));
}

void TestSheet::whatCannotBeMadeIsRefused()
{
    Project project = example();
    project.blocks.width = Length::inches(30);
    const QString from = m_dir.filePath(QStringLiteral("wide.json"));
    QFile file(from);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(writeProject(project)));
    file.close();
    const QString to = m_dir.filePath(QStringLiteral("wide.pdf"));
    const SheetAnswer answer = sheetOf(from, to, {});
    QCOMPARE(answer.exit, 3);
    QVERIFY(answer.sentences.contains(QStringLiteral("  - ")));
    QVERIFY(!QFile::exists(to));
    QCOMPARE(sheetOf(m_dir.filePath(QStringLiteral("none.json")), to, {}).exit, 2);
    QVERIFY(!QFile::exists(to));
}

void TestSheet::theTargetIsWholeOrUntouched()
{
    const Project project = example();
    const QString wrong =
        saveSheet(project, plan(project), m_dir.filePath(QStringLiteral("no/such/folder.pdf")), {});
    QVERIFY(wrong.contains(QStringLiteral("folder.pdf")));
    QVERIFY(!paperNamed(QStringLiteral("foolscap")));
    QCOMPARE(paperNamed(QStringLiteral("Letter")), std::optional(PaperSize::Letter));
}

QTEST_MAIN(TestSheet)
#include "tst_sheet.moc"
