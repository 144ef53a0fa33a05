// SPDX-License-Identifier: MIT
//
// The plan file is the contract with everyone else's programs: the example project must give the example
// plan, key for key, and every code must have words.
#include "app/plancommand.h"
#include "app/wording.h"

#include <nlohmann/json.hpp>

#include "testing.h"
#include <QFile>

using Json = nlohmann::ordered_json;

namespace {

QByteArray data(const char *name)
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/") + QLatin1String(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// What differs, path by path; lengths may differ by 0.0005 in.
void compare(const Json &wanted, const Json &got, const std::string &path, QStringList &wrong)
{
    const auto tell = [&](const std::string &what) {
        wrong.append(QString::fromStdString(path + ": " + what));
    };
    if (wanted.is_object()) {
        for (const auto &[key, value] : wanted.items()) {
            if (!got.is_object() || !got.contains(key))
                tell("lacks " + key);
            else if (!(path.empty() && key == "steps"))
                compare(value, got.at(key), path + '/' + key, wrong);
        }
    } else if (wanted.is_array()) {
        if (!got.is_array() || got.size() != wanted.size())
            return tell("another length");
        for (std::size_t i = 0; i < wanted.size(); ++i)
            compare(wanted[i], got[i], path + '/' + std::to_string(i), wrong);
    } else if (wanted.is_number_float()) {
        const double most = path.ends_with("mm") ? 0.0127 : 0.0005;
        if (!got.is_number() || std::abs(wanted.get<double>() - got.get<double>()) > most)
            tell(wanted.dump() + " is not " + got.dump());
    } else if (wanted != got) {
        tell(wanted.dump() + " is not " + got.dump());
    }
}

} // namespace

class PlanFileTest : public QObject {
    Q_OBJECT
private slots:
    void exampleGivesTheExamplesPlan();
    void exitTellsWhatHappened_data();
    void exitTellsWhatHappened();
    void metricPlansShowNoInches();
    void everyCodeHasWords();
};

void PlanFileTest::exampleGivesTheExamplesPlan()
{
    const matside::PlanAnswer answer = matside::planText(data("project-example.json"));
    QCOMPARE(answer.exit, 0);
    const Json wanted = Json::parse(data("plan-example.json").toStdString());
    const Json got = Json::parse(answer.file.toStdString());
    QStringList wrong;
    compare(wanted, got, {}, wrong);
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(QLatin1Char('\n'))));
    bool found = false;
    for (const Json &step : got.at("steps")) {
        if (step.at("does") != "cut-strip" || step.at("cloth") != "ground" || step.at("trial").get<bool>())
            continue;
        found = true;
        compare(wanted.at("steps")[0], step, "/steps", wrong);
    }
    QVERIFY(found);
    QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(QLatin1Char('\n'))));
}

void PlanFileTest::exitTellsWhatHappened_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<int>("exit");
    const QByteArray head =
        R"({"format":"matside-project","version":1,"blocks":{"columns":3,"rows":3,"width":)";
    const QByteArray hoop = R"("hoop":{"field":["7 7/8 in","7 7/8 in"],"outside":["9 3/4 in","9 3/4 in"]})";
    QTest::newRow("planned") << head + R"("6 in"},)" + hoop + "}" << 0;
    QTest::newRow("block over the field") << head + R"("8 in"},)" + hoop + "}" << 3;
    QTest::newRow("sashing under two allowances")
        << head + R"("6 in"},"sashing":{"finished":"3/4 in"},)" + hoop + "}" << 3;
    QTest::newRow("unknown value") << head + R"("6 in"},"build":"inside-out",)" + hoop + "}" << 3;
    QTest::newRow("hoop not measured") << head + R"("6 in"}})" << 3;
    QTest::newRow("not JSON") << QByteArray("plan") << 2;
    QTest::newRow("newer version") << QByteArray(R"({"format":"matside-project","version":9})") << 2;
}
void PlanFileTest::exitTellsWhatHappened()
{
    QFETCH(QByteArray, text);
    QFETCH(int, exit);
    const matside::PlanAnswer answer = matside::planText(text);
    QCOMPARE(answer.exit, exit);
    const Json file = Json::parse(answer.file.toStdString());
    QCOMPARE(file.at("format"), Json("matside-plan"));
    QCOMPARE(file.at("problems").empty(), exit == 0);
    for (const Json &problem : file.at("problems"))
        QVERIFY(!problem.at("says").get<std::string>().empty());
    if (exit == 2)
        QCOMPARE(file.size(), std::size_t(3));
    QVERIFY(!answer.sentences.isEmpty());
}

void PlanFileTest::metricPlansShowNoInches()
{
    const QByteArray text = R"({"format":"matside-project","version":1,"system":"metric",
        "blocks":{"columns":3,"rows":4,"width":"150 mm"},"strip":{"usable":"1060 mm"},
        "hoop":{"field":["200 mm","200 mm"],"outside":["248 mm","248 mm"]}})";
    const matside::PlanAnswer answer = matside::planText(text);
    QCOMPARE(answer.exit, 0);
    const std::function<void(const Json &)> walk = [&](const Json &value) {
        if (value.is_object() && value.contains("shows"))
            QVERIFY2(value.at("shows").get<std::string>().ends_with(" mm"), value.dump().c_str());
        if (value.is_structured())
            for (const Json &inner : value)
                walk(inner);
    };
    walk(Json::parse(answer.file.toStdString()));
    QVERIFY(!answer.sentences.contains(QStringLiteral(" in ")) ||
            !answer.sentences.contains(QStringLiteral("/16")));
}

void PlanFileTest::everyCodeHasWords()
{
    using namespace matside;
    for (const char *name : {"sew-frame-sides", "sew-frame-ends", "square-frame"}) {
        QVERIFY2(wordsFor(doesWords(), name), name);
        QVERIFY2(wordsFor(titleWords(), name), name);
    }
    for (int does = 0; does < static_cast<int>(Does::SewFrame); ++does) {
        const std::string name = nameOf(static_cast<Does>(does));
        QVERIFY2(wordsFor(doesWords(), name), name.c_str());
        QVERIFY2(wordsFor(titleWords(), name), name.c_str());
    }
    for (const char *code :
         {"hoop-unknown", "field-over-hoop", "sent-over-field", "sashing-under-allowances",
          "allowance-pared-too-far", "outside-over-allowance", "frame-too-narrow", "gap-under-seams",
          "gap-under-reach", "frame-may-overlap-ring", "no-block-on-strip", "fold-too-small",
          "catch-out-of-range", "binding-wider-than-cloth", "draw-up-out-of-range", "short-longer-than-cloth",
          "long-cannot-be-joined", "corner-too-round", "bias-wider-than-cloth"})
        QVERIFY2(wordsFor(problemWords(), code), code);
    for (const char *code :
         {"hoop-is-close", "edge-seam-over-outside", "margin-is-small", "strip-is-tight", "lip-is-wide",
          "harvest-is-short", "gap-under-allowances", "frame-on-last-block", "stiff-lip", "corner-hangs",
          "leaf-in-lip", "leaf-out-lip", "corner-bites", "corner-too-tight"})
        QVERIFY2(wordsFor(cautionWords(), code), code);
    for (const char *code :
         {"not-utf8-or-json", "doubled-key",   "file-too-large",     "too-deep",
          "too-many-values",  "text-too-long", "not-a-project",      "version-unknown",
          "version-newer",    "wrong-type",    "not-a-length",       "length-too-long",
          "length-too-small", "not-a-choice",  "count-out-of-range", "not-a-share",
          "needed",           "doubled-id",    "finest-not-a-mark",  "table-not-whole",
          "cloth-not-listed", "wrong-count",   "too-many",           "test-block-not-whole",
          "piece-not-whole"})
        QVERIFY2(wordsFor(fileWords(), code) || wordsFor(problemWords(), code), code);
    for (const char *code :
         {"set-block",   "set-finished",      "set-seam",        "set-allowance",    "set-outside",
          "set-gap",     "set-cut-back",      "set-catch",       "set-binding-seam", "set-usable",
          "set-draw-up", "choose-framed",     "reckon-gap",      "reckon-cut-back",  "frame-clear",
          "sew-tails",   "forget-test-block", "match-edge-seam", "set-margin",       "set-length",
          "set-choice",  "set-count",         "set-share",       "set-flag",         "set-word",
          "take-away",   "set-radius",        "square-corners"})
        QVERIFY2(wordsFor(offerWords(), code), code);
    for (const char *code : {"blade", "adhesive", "magnets", "needle", "iron", "scissors", "finished-use"})
        QVERIFY2(wordsFor(guardWords(), code), code);
}

QTEST_GUILESS_MAIN(PlanFileTest)
#include "tst_planfile.moc"
