// SPDX-License-Identifier: MIT
//
// The steps alone make the piece. They are read from the real program's plan file; each is then left out,
// done twice, or done in the place of a step that waits for it, and every time the piece must fail.
#include "workroom.h"

#include "testing.h"
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>

using workroom::Json;
using workroom::Room;

namespace {

Json projectNamed(const QByteArray &name)
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    Json project = Json::parse(file.readAll().toStdString());
    if (name == "example")
        return project;
    project["blocks"] = {{"columns", 3}, {"rows", 3}, {"width", "6 in"}, {"spare", 0}};
    project["drawUp"] = {{"along", "0 %"}, {"across", "0 %"}};
    project.erase("patches");
    if (name == "clean back, layered")
        project["build"] = "clean-back";
    if (name == "clean back, bagged") {
        project["build"] = "clean-back";
        project["cleanBack"] = "bagged";
    }
    if (name == "one row")
        project["blocks"]["rows"] = 1;
    if (name == "one column")
        project["blocks"]["columns"] = 1;
    if (name == "one block")
        project["blocks"] = {{"columns", 1}, {"rows", 1}, {"width", "6 in"}};
    if (name == "five kits")
        project["kits"] = 5;
    if (name == "shorts from the gaps")
        project["strip"]["harvest"] = true;
    if (name == "shorts from some gaps") {
        project["strip"]["harvest"] = true;
        project["strip"]["harvestGaps"] = 1;
    }
    if (name == "shorts from the gaps, four kits") {
        project["strip"]["harvest"] = true;
        project["kits"] = 4;
    }
    if (name == "bagged, both faces")
        project["edge"] = {{"kind", "bagged"}};
    if (name.startsWith("framed"))
        project["edge"] = {{"kind", "framed"}, {"seam", "1/4 in"}};
    if (name == "framed, five kits")
        project["kits"] = 5;
    if (name == "framed, clean back")
        project["build"] = "clean-back";
    if (name == "framed, longer than its cloth")
        project["blocks"]["columns"] = 7;
    if (name == "framed, pared") {
        project["sashing"] = {{"finished", "3/4 in"}, {"allowance", "3/8 in"}};
        project["fold"] = {{"doubled", true}};
    }
    if (name == "rounded corners")
        project["edge"] = {{"seam", "1/4 in"}, {"binding", "single"}, {"corner", {{"kind", "rounded"}}}};
    if (name == "rounded corners, five kits") {
        project["kits"] = 5;
        project["edge"]["corner"] = {{"kind", "rounded"}, {"radius", "4 in"}};
    }
    if (name == "back strip doubled")
        project["fold"] = {{"doubled", true}};
    if (name.startsWith("wide sashing, filled"))
        project["sashing"] = {{"finished", "1 1/2 in"}};
    if (name == "wide sashing, filled, four kits")
        project["kits"] = 4;
    if (name == "wide sashing, filled, longer than its cloth")
        project["blocks"]["columns"] = 7;
    if (name == "wide sashing, larger allowances")
        project["sashing"] = {{"finished", "1 1/2 in"}, {"allowance", "3/4 in"}};
    if (name == "narrow sashing, pared, doubled") {
        project["sashing"] = {{"finished", "3/4 in"}, {"allowance", "3/8 in"}};
        project["edge"] = {{"outside", "3/8 in"}};
        project["fold"] = {{"doubled", true}};
    }
    if (name == "a circle")
        project["edge"] = {{"seam", "1/4 in"}, {"binding", "single"}, {"corner", {{"kind", "circle"}}}};
    if (name == "scallops")
        project["edge"] = {{"seam", "1/4 in"},
                           {"binding", "single"},
                           {"corner", {{"kind", "scalloped"}, {"depth", "3/4 in"}, {"across", 4}}}};
    if (name == "trial put off")
        project["made"] = {{"trial", "put-off"}};
    if (name == "metric")
        project = {
            {"format", "matside-project"},
            {"version", 1},
            {"name", "metric"},
            {"system", "metric"},
            {"blocks", {{"columns", 3}, {"rows", 4}, {"width", "150 mm"}}},
            {"hoop", {{"kind", "ring"}, {"field", {"200 mm", "200 mm"}}, {"outside", {"248 mm", "248 mm"}}}},
            {"strip", {{"usable", "1060 mm"}}},
            {"edge", {{"outside", "12 mm"}, {"seam", "6 mm"}}}};
    return project;
}

Json planOf(const Json &project)
{
    QTemporaryDir dir;
    const QString path = dir.filePath(QStringLiteral("project.json"));
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return {};
    file.write(QByteArray::fromStdString(project.dump()));
    file.close();
    QProcess matside;
    matside.start(QStringLiteral(MATSIDE_PROGRAM), {QStringLiteral("--plan"), path});
    if (!matside.waitForFinished() || matside.exitCode() != 0)
        return {};
    return Json::parse(matside.readAllStandardOutput().toStdString());
}

Room roomFor(const Json &project)
{
    const bool inch = project.value("system", "inch") == "inch";
    const auto read = [&](const char *inches, std::int64_t mm) {
        return inch ? workroom::Length::ticks(std::llround(std::atof(inches) * 8128))
                    : workroom::Length::mm(mm);
    };
    Room room;
    room.shortSpare = read("0.5", 12);
    room.longSpare = read("1", 25);
    room.slack = read("8", 200);
    room.columns = project["blocks"]["columns"];
    room.rows = project["blocks"]["rows"];
    room.spare = project["blocks"].value("spare", 0);
    room.kits = project.value("kits", 1);
    if (project.contains("sashing") && project["sashing"].contains("allowance"))
        room.allowance = read(project["sashing"]["allowance"] == "3/4 in" ? "0.75" : "0.375", 0);
    const workroom::Length usable = read("40.5", 1060);
    for (const char *cloth : {"front", "back", "batting", "sashing-front", "sashing-back", "binding"})
        room.usable[cloth] = usable;
    if (project.contains("cloths"))
        for (const Json &cloth : project["cloths"])
            room.usable[cloth["id"]] = usable;
    return room;
}

bool passes(const Json &from, const Json &to)
{
    for (const Json &made : from["makes"])
        for (const Json &taken : to["takes"])
            if (made["piece"] == taken["piece"])
                return true;
    return false;
}

/// The first step that takes what this one makes. A measure of the trial is waited for by the first step
/// after the trial; the last look waits for the step before it.
std::size_t waitsFor(const Json &steps, std::size_t index)
{
    for (std::size_t i = index + 1; i < steps.size(); ++i)
        if (passes(steps[index], steps[i]))
            return i;
    for (std::size_t i = index + 1; i < steps.size(); ++i)
        if (steps[index]["trial"].get<bool>() && !steps[i]["trial"].get<bool>())
            return i;
    return index - 1;
}

} // namespace

class Assembly : public QObject {
    Q_OBJECT
private slots:
    void theStepsMakeThePiece_data();
    void theStepsMakeThePiece();
    void aStepLeftOutIsMissed_data();
    void aStepLeftOutIsMissed();
    void aStepDoneTwiceIsNoticed_data();
    void aStepDoneTwiceIsNoticed();
    void aStepBeforeItsTimeFails_data();
    void aStepBeforeItsTimeFails();
    void wrongSizesAndCountsFail();
    void noSashingButTheTrialsComesBeforeTheTrialsEnd();
    void aCleanBackHasNoBackSashing();

private:
    static void names()
    {
        QTest::addColumn<QByteArray>("name");
        for (const char *name : {"example",
                                 "nine blocks",
                                 "metric",
                                 "clean back, layered",
                                 "clean back, bagged",
                                 "bagged, both faces",
                                 "one row",
                                 "one column",
                                 "one block",
                                 "five kits",
                                 "shorts from the gaps",
                                 "shorts from some gaps",
                                 "shorts from the gaps, four kits",
                                 "trial put off",
                                 "framed",
                                 "framed, five kits",
                                 "framed, clean back",
                                 "framed, longer than its cloth",
                                 "framed, pared",
                                 "rounded corners",
                                 "rounded corners, five kits",
                                 "back strip doubled",
                                 "wide sashing, filled",
                                 "wide sashing, filled, four kits",
                                 "wide sashing, filled, longer than its cloth",
                                 "wide sashing, larger allowances",
                                 "narrow sashing, pared, doubled",
                                 "a circle",
                                 "scallops"})
            QTest::newRow(name) << QByteArray(name);
    }
};

void Assembly::theStepsMakeThePiece_data()
{
    names();
}
void Assembly::theStepsMakeThePiece()
{
    QFETCH(QByteArray, name);
    const Json project = projectNamed(name);
    const Json plan = planOf(project);
    QVERIFY(!plan.is_null());
    const std::string wrong = workroom::makeThePiece(plan, roomFor(project));
    QVERIFY2(wrong.empty(), wrong.c_str());
}

void Assembly::aStepLeftOutIsMissed_data()
{
    names();
}
void Assembly::aStepLeftOutIsMissed()
{
    QFETCH(QByteArray, name);
    const Json project = projectNamed(name);
    const Json plan = planOf(project);
    QVERIFY(plan["steps"].size() > 5);
    for (std::size_t i = 0; i < plan["steps"].size(); ++i) {
        Json without = plan;
        without["steps"].erase(i);
        QVERIFY2(!workroom::makeThePiece(without, roomFor(project)).empty(),
                 plan["steps"][i]["id"].dump().c_str());
    }
}

void Assembly::aStepDoneTwiceIsNoticed_data()
{
    names();
}
void Assembly::aStepDoneTwiceIsNoticed()
{
    QFETCH(QByteArray, name);
    const Json project = projectNamed(name);
    const Json plan = planOf(project);
    QVERIFY(plan["steps"].size() > 5);
    for (std::size_t i = 0; i < plan["steps"].size(); ++i) {
        Json twice = plan;
        Json again = plan["steps"][i];
        again["id"] = again["id"].get<std::string>() + "/again";
        twice["steps"].insert(twice["steps"].begin() + static_cast<std::ptrdiff_t>(i), again);
        QVERIFY2(!workroom::makeThePiece(twice, roomFor(project)).empty(),
                 plan["steps"][i]["id"].dump().c_str());
    }
}

void Assembly::aStepBeforeItsTimeFails_data()
{
    names();
}
void Assembly::aStepBeforeItsTimeFails()
{
    QFETCH(QByteArray, name);
    const Json project = projectNamed(name);
    const Json plan = planOf(project);
    QVERIFY(plan["steps"].size() > 5);
    for (std::size_t i = 0; i < plan["steps"].size(); ++i) {
        Json turned = plan;
        std::swap(turned["steps"][i], turned["steps"][waitsFor(plan["steps"], i)]);
        QVERIFY2(!workroom::makeThePiece(turned, roomFor(project)).empty(),
                 plan["steps"][i]["id"].dump().c_str());
    }
}

void Assembly::wrongSizesAndCountsFail()
{
    const Json project = projectNamed("example");
    const Json plan = planOf(project);
    for (std::size_t i = 0; i < plan["steps"].size(); ++i) {
        Json fewer = plan;
        Json &step = fewer["steps"][i];
        if (step["count"].get<int>() < 2 || step["trial"].get<bool>())
            continue;
        step["count"] = step["count"].get<int>() - 1;
        QVERIFY2(!workroom::makeThePiece(fewer, roomFor(project)).empty(), step["id"].dump().c_str());
    }
    for (std::size_t i = 0; i < plan["steps"].size(); ++i) {
        const std::string does = plan["steps"][i]["does"];
        if (plan["steps"][i]["trial"].get<bool>())
            continue;
        for (const char *key : {"seam", "fold"}) {
            Json deeper = plan;
            Json &step = deeper["steps"][i];
            if (!step.contains(key) || (does == "sew-binding" && std::string(key) == "seam"))
                continue;
            step[key]["in"] = step[key]["in"].get<double>() + 0.1875;
            QVERIFY2(!workroom::makeThePiece(deeper, roomFor(project)).empty(), step["id"].dump().c_str());
        }
    }
    for (const char *does : {"trim-block", "cut-strip", "cut-short", "cut-band", "cut-long-piece"}) {
        Json narrow = plan;
        for (Json &step : narrow["steps"])
            if (step["does"] == does && !step["trial"].get<bool>())
                for (const char *side : {"length", "width"})
                    step["size"][side]["in"] = step["size"][side]["in"].get<double>() - 0.75;
        QVERIFY2(!workroom::makeThePiece(narrow, roomFor(project)).empty(), does);
    }
}

void Assembly::noSashingButTheTrialsComesBeforeTheTrialsEnd()
{
    const Json plan = planOf(projectNamed("example"));
    bool tried = false;
    for (const Json &step : plan["steps"]) {
        tried = tried || step["does"] == "test-join";
        const std::string does = step["does"];
        if (does == "cut-band" || does == "cut-short" || does.starts_with("cut-long"))
            QVERIFY2(tried || step["trial"].get<bool>(), step["id"].dump().c_str());
        QVERIFY(!step["trial"].get<bool>() || !tried || step["does"] == "test-join");
    }
    QVERIFY(tried);
}

void Assembly::aCleanBackHasNoBackSashing()
{
    for (const char *name : {"clean back, layered", "clean back, bagged"}) {
        const Json plan = planOf(projectNamed(name));
        QVERIFY(plan["sashing"]["cutBack"].is_null());
        for (const Json &step : plan["steps"]) {
            QVERIFY2(step["cloth"] != "bands-back", step["id"].dump().c_str());
            for (const Json &made : step["makes"])
                QVERIFY(made["piece"].get<std::string>().find("/back") == std::string::npos ||
                        made["piece"].get<std::string>().starts_with("straight/"));
        }
    }
}

QTEST_GUILESS_MAIN(Assembly)
#include "tst_assembly.moc"
