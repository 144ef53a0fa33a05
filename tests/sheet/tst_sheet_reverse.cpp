// SPDX-License-Identifier: MIT
//
// The way back from paper: the text of the PDF, as Poppler extracts it, holds no figure that is not in the
// project, its plan, its steps or its shopping list, but for a short list of what every sheet says.
#include "sheet/pieces.h"
#include "sheet/printed.h"

#include "app/planfile.h"
#include "app/wording.h"
#include "bench/shopping.h"
#include "plan/thread.h"
#include "project/codec.h"
#include "sheet/sheetcommand.h"

#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <nlohmann/json.hpp>

using namespace matside;

Q_DECLARE_METATYPE(matside::Project)

namespace {

using Texts = std::set<QString>;

/// What may stand on paper: lengths as they are written, and other numbers.
struct Known {
    Texts lengths;
    Texts numbers;

    void add(Length length, Marks marks)
    {
        for (const Round round : {Round::Nearest, Round::Fine, Round::Down, Round::UpEighth, Round::UpQuarter})
            for (const QString &text : lengthsIn(figureText(length, marks, round)))
                lengths.insert(text);
    }
};

/// All lengths and numbers of a JSON file.
void gather(const nlohmann::json &file, Marks marks, Known &known)
{
    if (file.is_object() && file.contains("shows")) {
        known.lengths.insert(QString::fromStdString(file["shows"].get<std::string>()));
        return;
    }
    if (file.is_number_integer())
        known.numbers.insert(QString::number(file.get<std::int64_t>()));
    if (file.is_string())
        if (const auto length = readLength(file.get<std::string>(), marks.system))
            known.add(length.value(), marks);
    if (file.is_structured())
        for (const auto &part : file)
            gather(part, marks, known);
}

Known knownOf(const Project &project)
{
    Known known;
    const Marks marks = project.marks();
    const Plan made = plan(project);
    const std::vector<Step> order = steps(project, made);
    gather(nlohmann::json::parse(writeProject(project)), marks, known);
    gather(nlohmann::json::parse(writePlanFile(project, made, order, {})), marks, known);
    for (const Buy &buy : shoppingList(project, made, order)) {
        for (const Length length : {buy.usable, buy.cut, buy.straighten, buy.bought, buy.step})
            known.add(length, marks);
        for (const ShopStrip &strip : buy.strips) {
            known.add(strip.height, marks);
            known.numbers.insert(QString::number(strip.repeats));
            for (const auto &[length, count] : strip.pieces) {
                known.add(length, marks);
                known.numbers.insert(QString::number(count));
            }
        }
    }
    return known;
}

/// What every sheet says besides, whatever the piece.
const Texts &saidAnyway()
{
    static const Texts all{};
    return all;
}

/// Figures on paper that nobody reckoned.
QStringList strays(QString text, const Known &known)
{
    QStringList wrong;
    for (const QString &length : lengthsIn(text))
        if (!known.lengths.contains(length) && !saidAnyway().contains(length))
            wrong += length;
    return wrong;
}

} // namespace

class TestSheetReverse : public QObject {
    Q_OBJECT

    QTemporaryDir m_dir;

    QString textOf(const Project &project, SheetForm form = {})
    {
        const QString path = m_dir.filePath(QStringLiteral("sheet.pdf"));
        if (!saveSheet(project, plan(project), path, form).isEmpty())
            return {};
        return Printed(path).text();
    }

private slots:
    void noFigureIsMadeUp_data();
    void noFigureIsMadeUp();
    void aForeignFigureIsFound();
};

void TestSheetReverse::noFigureIsMadeUp_data()
{
    QTest::addColumn<Project>("project");
    QTest::addColumn<SheetForm>("form");
    for (const auto &[name, project] : sheetPieces())
        for (const bool brief : {false, true})
            QTest::addRow("%s, %s", name, brief ? "short" : "long") << project
                                                                    << SheetForm{PaperSize::A4, brief};
}

void TestSheetReverse::noFigureIsMadeUp()
{
    QFETCH(Project, project);
    QFETCH(SheetForm, form);
    const QString text = textOf(project, form);
    QVERIFY(lengthsIn(text).size() > 10);
    const QStringList wrong = strays(text, knownOf(project));
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(QStringLiteral("; "))));
}

void TestSheetReverse::aForeignFigureIsFound() {}

QTEST_MAIN(TestSheetReverse)
#include "tst_sheet_reverse.moc"
