// SPDX-License-Identifier: MIT
//
// The class form: what is in a kit is what the plan of one piece cuts, and all kits are so many of them.
#include "sheet/pieces.h"
#include "sheet/printed.h"
#include "sheet/sheetcommand.h"

#include "bench/step.h"

#include <QTemporaryDir>
#include <QTest>

using namespace matside;

Q_DECLARE_METATYPE(matside::Project)

class TestClassForm : public QObject {
    Q_OBJECT

    QTemporaryDir m_dir;

    /// Writes the class form and gives its path.
    QString written(const Project &project, PaperSize paper = PaperSize::A4)
    {
        static int number = 0;
        const QString path = m_dir.filePath(QStringLiteral("%1.pdf").arg(++number));
        const QString wrong = saveSheet(project, plan(project), path, {paper, false, true});
        return wrong.isEmpty() ? path : QString();
    }

private slots:
    void theClassFormListsEveryKit_data();
    void theClassFormListsEveryKit();
    void aLargeClassCopiesOnePage();
};

void TestClassForm::theClassFormListsEveryKit_data()
{
    QTest::addColumn<Project>("project");
    for (const auto &[name, project] : sheetPieces())
        for (const bool shared : {false, true}) {
            Project all = project;
            all.kits = 7;
            all.kitsShareStrips = shared;
            if (plan(all).problems.empty())
                QTest::addRow("%s%s", name, shared ? ", strips shared" : "") << all;
        }
}

void TestClassForm::theClassFormListsEveryKit()
{
    QFETCH(Project, project);
    const Printed sheet(written(project, PaperSize::A4));
    const QString text = sheet.text();
    for (int kit = 1; kit <= 7; ++kit)
        QCOMPARE(text.count(QStringLiteral("Kit %1 of 7").arg(kit)), 1);
    // What is in a kit is what is cut for the piece once: seven times that is what is cut for all.
    Project one = project;
    one.kits = 1;
    const Plan made = plan(one);
    int pieces = 0;
    for (const Step &step : steps(project, plan(project))) {
        if (step.station != Station::Cut || !step.size || step.trial)
            continue;
        for (const Step &own : steps(one, made)) {
            if (own.id != step.id || own.does == Does::CutBand ||
                (own.does == Does::CutStrip && project.kitsShareStrips))
                continue;
            ++pieces;
            QVERIFY(own.does == Does::HarvestShort || own.does == Does::CutShort ||
                    step.count == own.count * 7);
            QVERIFY2(text.count(QStringLiteral("%1 × ").arg(own.count)) >= 7, own.id.c_str());
        }
    }
    QVERIFY(pieces > 2);
    QCOMPARE(text.contains(QStringLiteral("stitch them ahead")), project.kitsShareStrips);
    QCOMPARE(text.contains(QStringLiteral("In the kit")), true);
    for (const QString &word : {QStringLiteral("Name:"), QStringLiteral("To cut for all kits")})
        QVERIFY(text.contains(word));
    // Both units stand on a kit's page.
    bool inches = false;
    bool millimetres = false;
    for (const QString &length : lengthsIn(text)) {
        inches = inches || length.endsWith(QStringLiteral("in"));
        millimetres = millimetres || length.endsWith(QStringLiteral("mm"));
    }
    QVERIFY(inches && millimetres);
    const QSizeF page = sheet.pageMm();
    const QRectF room(QPointF(14.5, 14), QPointF(page.width() - 14.5, page.height() - 14));
    for (const Printed::Word &word : sheet.words())
        QVERIFY2(room.contains(word.place), qPrintable(word.text));
}

void TestClassForm::aLargeClassCopiesOnePage()
{
    Project project = example();
    project.kits = 41;
    const Printed sheet(written(project, PaperSize::Letter));
    QVERIFY(sheet.text().contains(QStringLiteral("copy this page, once for each of 41")));
    QVERIFY(sheet.pages() < 8);
    QCOMPARE(formNamed(QStringLiteral("Class"))->forClass, true);
    QCOMPARE(formNamed(QStringLiteral("short"))->brief, true);
    QVERIFY(formNamed(QStringLiteral("long")) && !formNamed(QStringLiteral("wide")));
}

QTEST_MAIN(TestClassForm)
#include "tst_classform.moc"
