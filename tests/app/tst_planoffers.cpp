// SPDX-License-Identifier: MIT
//
// What is refused and what mends it, as another program would do it: the edits below are taken one for one
// from the list of what cannot be made, and each offer is written at its pointer and planned again.
#include "app/plancommand.h"

#include <nlohmann/json.hpp>

#include "testing.h"
#include <QFile>

#include <cmath>
#include <set>

using namespace matside;
using Json = nlohmann::ordered_json;

namespace {

QByteArray contents(const char *name)
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/") + QLatin1String(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

Json read(const QByteArray &text)
{
    return Json::parse(text.constData(), text.constData() + text.size(), nullptr, false);
}

Json planOf(const Json &project, int &exit)
{
    const PlanAnswer answer = planText(QByteArray::fromStdString(project.dump()));
    exit = answer.exit;
    return read(answer.file);
}

/// Writes a value at a pointer of the file as any other program would: null takes the key away.
void put(Json &project, const Json &edit)
{
    const Json::json_pointer at(edit.at("at").get<std::string>());
    if (!edit.at("value").is_null()) {
        project[at] = edit.at("value");
        return;
    }
    if (Json &parent = project[at.parent_pointer()]; parent.is_object())
        parent.erase(at.back());
}

Json taken(Json project, const Json &offer)
{
    put(project, offer);
    for (const Json &edit : offer.value("also", Json::array()))
        put(project, edit);
    return project;
}

bool stands(const Json &problems, const Json &problem)
{
    return std::any_of(problems.begin(), problems.end(), [&](const Json &other) {
        return other.at("code") == problem.at("code") && other.at("at") == problem.at("at");
    });
}

/// Where lengths stand, each must be whole: {in, mm, shows}, the two of one size.
void checkLengths(const Json &file, QStringList &faults)
{
    if (file.is_object() && file.contains("shows")) {
        const double in = file.at("in").get<double>();
        if (std::abs(in * 25.4 - file.at("mm").get<double>()) > 0.00002 || file.size() != 3)
            faults << QString::fromStdString(file.dump());
        return;
    }
    for (const Json &inner : file)
        if (inner.is_structured())
            checkLengths(inner, faults);
}

} // namespace

class TestPlanOffers : public QObject {
    Q_OBJECT
private slots:
    void writesWholeLengths()
    {
        QStringList faults;
        checkLengths(read(planText(contents("project-example.json")).file), faults);
        QVERIFY2(faults.isEmpty(), qPrintable(faults.join(u'\n')));
    }

    void holdsTheStepsOfTheExample()
    {
        // Counts as the contract lists them.
        const Json got = read(planText(contents("project-example.json")).file);
        std::map<std::string, std::int64_t> counts;
        std::set<std::string> ids;
        bool trialOver = false;
        for (const Json &step : got.at("steps")) {
            QVERIFY2(ids.insert(step.at("id").get<std::string>()).second, "an id stands twice");
            if (step.at("trial").get<bool>()) {
                QVERIFY2(!trialOver, "the trial comes first");
                continue;
            }
            trialOver = true;
            counts[step.at("does").get<std::string>()] += step.at("count").get<std::int64_t>();
            if (step.contains("ruler"))
                for (const char *key : {"layers", "first", "line", "on", "second", "blade", "keep"})
                    QVERIFY2(step.at("ruler").contains(key), key);
        }
        QCOMPARE(counts["cut-strip"], 15);
        QCOMPARE(counts["stitch-block"], 20);
        QCOMPARE(counts["trim-block"], 20);
        QCOMPARE(counts["cut-short"], 30);
        QCOMPARE(counts["join-long"], 4);
        QCOMPARE(counts["join-short"], 15);
        QCOMPARE(counts["join-long-row"], 2);
        QCOMPARE(counts["square-piece"], 1);
        QCOMPARE(counts["cut-binding"], 5);
        QCOMPARE(counts["last-look"], 1);
    }

    void refusesAndOffers_data()
    {
        QTest::addColumn<QByteArray>("edits");
        QTest::addColumn<QString>("code");
        const auto row = [](const char *code, const char *edits) {
            QTest::newRow(code) << QByteArray(edits) << QString::fromLatin1(code);
        };
        row("sent-over-field", R"([["/blocks/width","9 1/4 in"]])");
        row("field-over-hoop", R"([["/hoop/field",["12 in","9 in"]]])");
        row("sashing-under-allowances", R"([["/sashing/finished","7/8 in"]])");
        row("allowance-pared-too-far", R"([["/sashing/allowance","1/8 in"],["/edge/outside","1/8 in"]])");
        row("outside-over-allowance", R"([["/edge/outside","3/4 in"]])");
        row("frame-too-narrow", R"([["/edge/kind","framed"],["/edge/outside","1/4 in"]])");
        row("gap-under-seams", R"([["/strip/gap","7/8 in"]])");
        row("frame-may-overlap-ring", R"([["/hoop/kind","ring"],["/strip/frameMayOverlap",true]])");
        row("gap-under-reach", R"([["/hoop/kind","ring"],["/strip/gap","1 1/2 in"]])");
        row("no-block-on-strip", R"([["/strip/usable","10 in"]])");
        row("fold-too-small", R"([["/sashing/cutBack","1 3/4 in"]])");
        row("catch-out-of-range", R"([["/fold/catch","1/4 in"],["/sashing/cutBack","3 in"]])");
        row("binding-wider-than-cloth", R"([["/cloths/5/usable","3 in"]])");
        row("corner-too-round", R"([["/edge/corner",{"kind":"rounded","radius":"40 in"}]])");
        row("bias-wider-than-cloth", R"([["/edge/corner",{"kind":"rounded"}],["/cloths/5/usable","12 in"]])");
        row("draw-up-out-of-range", R"([["/drawUp/along","20 %"]])");
        row("hoop-unknown", R"([["/hoop/outside",null]])");
        row("not-a-choice", R"([["/edge/kind","frilled"]])");
        row("not-a-length", R"([["/seam","wide"]])");
        row("length-too-small", R"([["/blocks/width","-2 in"]])");
        row("count-out-of-range", R"([["/blocks/columns",0]])");
        row("needed", R"([["/blocks/rows",null]])");
        row("cloth-not-listed", R"([["/patches/0/cloth","velvet"]])");
    }

    void refusesAndOffers()
    {
        QFETCH(QByteArray, edits);
        QFETCH(QString, code);
        Json project = read(contents("project-example.json"));
        for (const Json &edit : read(edits))
            put(project, {{"at", edit[0]}, {"value", edit[1]}});
        int exit = 0;
        const Json got = planOf(project, exit);
        QCOMPARE(exit, 3);
        const Json &problems = got.at("problems");
        const auto is = [&](const Json &problem) { return problem.at("code") == code.toStdString(); };
        const auto problem = std::find_if(problems.begin(), problems.end(), is);
        QVERIFY2(problem != problems.end(), problems.dump().c_str());
        QVERIFY(QString::fromStdString(problem->at("says")).contains(u' '));
        // A hoop's size cannot be guessed; everything else has at least one remedy.
        QCOMPARE(problem->at("offers").empty(), code == QStringLiteral("hoop-unknown"));
        for (const Json &each : problems)
            for (const Json &offer : each.at("offers")) {
                const Json after = planOf(taken(project, offer), exit);
                QVERIFY2(!stands(after.at("problems"), each), offer.dump().c_str());
            }
    }

    void cautionsDoNotStop()
    {
        Json project = read(contents("project-example.json"));
        int exit = 0;
        const Json got = planOf(project, exit);
        QCOMPARE(exit, 0);
        QVERIFY(!got.at("cautions").empty());
        for (const Json &caution : got.at("cautions"))
            for (const Json &offer : caution.at("offers"))
                QVERIFY(!stands(planOf(taken(project, offer), exit).at("cautions"), caution));
    }

    void saysWhatCannotBeRead_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("nothing") << QByteArray();
        QTest::newRow("no JSON") << QByteArray("seven inches");
        QTest::newRow("not UTF-8") << QByteArray("{\"format\":\"\xff\xfe\"}");
        QTest::newRow("another format") << QByteArray(R"({"format":"shopping-list","version":1})");
        QTest::newRow("a list") << QByteArray("[]");
        QTest::newRow("newer") << QByteArray(R"({"format":"matside-project","version":2})");
        QTest::newRow("too deep") << QByteArray(5000, '[');
        QTest::newRow("too large") << QByteArray(R"({"format":"matside-project","version":1,"name":")") +
                                          QByteArray(5 << 20, 'a') + "\"}";
        QTest::newRow("doubled key") << QByteArray(R"({"format":"matside-project","format":"x"})");
    }

    void saysWhatCannotBeRead()
    {
        QFETCH(QByteArray, text);
        const PlanAnswer answer = planText(text);
        QCOMPARE(answer.exit, 2);
        const Json got = read(answer.file);
        QVERIFY(got.is_object());
        QCOMPARE(got.size(), std::size_t(3));
        QCOMPARE(got.at("format").get<std::string>(), std::string("matside-plan"));
        QCOMPARE(got.at("version").get<int>(), 1);
        QCOMPARE(got.at("problems").size(), std::size_t(1));
        QVERIFY(!answer.sentences.isEmpty());
    }

    void listsTheCutsInPlainWords()
    {
        const QString told = planText(contents("project-example.json")).sentences;
        QVERIFY(told.startsWith(QStringLiteral("A scant 5/16 in is left over on each strip;")));
        QVERIFY2(told.contains(QStringLiteral("5 × Cut a hoop strip of oat linen: 13 1/4 in by 40 1/2 in.")),
                 qPrintable(told));
        QVERIFY(!told.contains(QStringLiteral("%1")));
    }

    void isTheSameEveryTime()
    {
        const QByteArray text = contents("project-example.json");
        QCOMPARE(planText(text).file, planText(text).file);
    }
};

QTEST_GUILESS_MAIN(TestPlanOffers)
#include "tst_planoffers.moc"
