// SPDX-License-Identifier: MIT
//
// Kits for a class: laid out together, never more than one by one, and listed for each kit and for the day.
#include "bench/clothlay.h"
#include "bench/kits.h"
#include "benchhelp.h"
#include "plan/onstrip.h"

#include <set>

using namespace matside;
using planhelp::in;

namespace {

KitPlan kitsOf(const Project &project)
{
    const Plan p = plan(project);
    const std::vector<Step> all = steps(project, p);
    return kitPlan(project, p, all, shoppingList(project, p, all, 2000));
}

/// Runners of three 6 in blocks, one block more for practice, for twelve students; put off the trial, which
/// the teacher has made at home.
Project twelveStudents()
{
    Project project = benchhelp::nineBlocksOfCloth();
    project.blocks.columns = 3;
    project.blocks.rows = 1;
    project.blocks.spare = 1;
    Cloth bands = project.cloths.front();
    bands.id = bands.name = "bands";
    bands.role = ClothRole::SashingFront;
    project.cloths.push_back(std::move(bands));
    project.lesson = Lesson{12, {}, 4, true, {}};
    project.kits = project.lesson->kits();
    return project;
}

const KitCloth &clothIn(const KitPlan &kits, const char *id)
{
    const auto found = std::find_if(kits.cloths.begin(), kits.cloths.end(),
                                    [&](const KitCloth &cloth) { return cloth.cloth == id; });
    if (found == kits.cloths.end())
        qFatal("no such cloth");
    return *found;
}

} // namespace

class Kits : public QObject {
    Q_OBJECT
private slots:
    void twelveStudentsByHand();
    void spareKitsGoByTens();
    void theMatsOfASetShareTheirSpares();
    void togetherIsNeverMore();
    void perKitTimesKitsIsTheDay();
    void thousandsOfKitsAreAnswered();
};

// F28 | hand-worked case only | the class of the trade notes, each figure added up again beside its check
void Kits::twelveStudentsByHand()
{
    const Project project = twelveStudents();
    QCOMPARE(project.kits, 15); // 12, the teacher's, and 2 for every ten begun
    const KitPlan kits = kitsOf(project);
    // A hoop strip each: 15 × 11 3/4 = 176 1/4; 2 to straighten and 2 for the full 3 yd = 180 1/4 in, sold
    // by 4 1/2 in: 41 steps = 184 1/2 in, which is 5 1/8 yd.
    QCOMPARE(clothIn(kits, "ground").together, in(184, 1, 2));
    // One kit alone buys 13 3/4 in as 4 steps = 18 in; fifteen of them 270 in, 7 1/2 yd.
    QCOMPARE(clothIn(kits, "ground").oneByOne, in(270));
    // Two short sashings of 7 1/2 in a kit and one for practice, 45 in all, five to a band of 40 1/2: 9 bands
    // of 2 in and 2 to straighten = 20 in → 5 steps = 22 1/2 in, which is 5/8 yd.
    QCOMPARE(clothIn(kits, "bands").together, in(22, 1, 2));
    QCOMPARE(clothIn(kits, "bands").oneByOne, in(4, 1, 2) * 15);
    // Each kit: one hoop strip of front, back and batting, two sashings of either face and one to practise.
    for (const KitCut &cut : kits.cuts) {
        if (cut.step.does == Does::CutStrip)
            QCOMPARE(std::pair(cut.each, cut.all), std::pair(std::int64_t(1), std::int64_t(15)));
        if (cut.step.does == Does::CutShort)
            QCOMPARE(std::pair(cut.each, cut.all), std::pair(std::int64_t(3), std::int64_t(45)));
        if (cut.step.does == Does::CutBand && cut.step.cloth == "bands")
            QCOMPARE(std::pair(cut.each, cut.all), std::pair(std::int64_t(0), std::int64_t(9)));
    }
    // 60 blocks shared by four machines: 15 each, a quarter of the hours.
    QCOMPARE(kits.machineTenths % 60, 0);
    QCOMPARE(kits.longestTenths * 4, kits.machineTenths);
}

// Six mats of 3 × 2 blocks, 36 in all, and one spare for every twelve: 39, four to a strip, on ten strips. A
// spare with each mat would be 42 on eleven.
void Kits::theMatsOfASetShareTheirSpares()
{
    Project project = benchhelp::nineBlocksOfCloth();
    project.blocks.columns = 3;
    project.blocks.rows = 2;
    project.kits = 6;
    project.kitsShareStrips = true;
    project.patches.push_back({});
    project.patches.back().name = "leaf";
    project.patches.back().cloth = "ground";
    project.patches.back().width = project.patches.back().height = in(2);
    project.patches.back().perBlock = 2;
    QCOMPARE(usualSpares(36), 3);
    QCOMPARE(usualSpares(37), 4);
    project.blocks.spareInAll = usualSpares(36);
    const Plan planned = plan(project);
    QCOMPARE(planned.strip.perStrip, 4);
    QCOMPARE(planned.strip.strips, 10);
    const std::vector<Step> all = benchhelp::stepsOf(project);
    QCOMPARE(benchhelp::total(all, Does::StitchBlock), 39);
    QCOMPARE(benchhelp::total(all, Does::CutPatch), 78);
    const std::vector<std::string> names = blockNames(project);
    QCOMPARE(std::set<std::string>(names.begin(), names.end()).size(), std::size_t(39));
    QCOMPARE(names.back(), std::string("+3"));
    // They are the set's: one mat alone, or a class, has none of them.
    project.kits = 1;
    QCOMPARE(benchhelp::total(benchhelp::stepsOf(project), Does::StitchBlock), 6);
}

void Kits::spareKitsGoByTens()
{
    QCOMPARE((Lesson{1, {}, 1, false, {}}.kits()), 3);
    QCOMPARE((Lesson{10, {}, 1, false, {}}.kits()), 12);
    QCOMPARE((Lesson{11, {}, 1, false, {}}.kits()), 14);
    QCOMPARE((Lesson{30, {}, 1, false, {}}.kits()), 34);
    QCOMPARE((Lesson{30, 0, 1, false, {}}.kits()), 31);
}

void Kits::togetherIsNeverMore()
{
    planhelp::Chance chance(planhelp::seed(21));
    int tried = 0;
    int less = 0;
    for (int i = 0; i < planhelp::count(40); ++i) {
        Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        project.kits = chance.between(2, 30);
        if (!plan(project).problems.empty() || !plan(oneKit(project)).problems.empty())
            continue;
        ++tried;
        for (const KitCloth &cloth : kitsOf(project).cloths) {
            QVERIFY2(cloth.together <= cloth.oneByOne, cloth.cloth.c_str());
            less += cloth.together < cloth.oneByOne ? 1 : 0;
        }
    }
    QVERIFY(tried > 5);
    QVERIFY(less > tried);
}

void Kits::perKitTimesKitsIsTheDay()
{
    planhelp::Chance chance(planhelp::seed(22));
    int lines = 0;
    for (int i = 0; i < planhelp::count(40); ++i) {
        Project project = chance.project(System::Inch);
        project.kits = chance.between(2, 30);
        project.kitsShareStrips = false;
        project.strip.harvest = false;
        if (!plan(project).problems.empty())
            continue;
        for (const KitCut &cut : kitsOf(project).cuts) {
            if (cut.step.does == Does::CutBand)
                continue;
            QCOMPARE(cut.each * project.kits, cut.all);
            ++lines;
        }
    }
    QVERIFY(lines > 20);
}

void Kits::thousandsOfKitsAreAnswered()
{
    // The most a project may have. A hoop strip each, by hand: 10 000 × 11 3/4 in = 117 500 in, and 2 in to
    // straighten for the first and for every full 108 in beyond; no piece is wider than the cloth, so there
    // is a proof.
    Project project = twelveStudents();
    project.lesson.reset();
    project.kits = 10'000;
    const Plan p = plan(project);
    const std::vector<Buy> list = shoppingList(project, p, steps(project, p), 2000);
    const auto ground =
        std::find_if(list.begin(), list.end(), [](const Buy &buy) { return buy.cloth == "ground"; });
    QVERIFY(ground != list.end());
    QCOMPARE(ground->cut, in(117'500));
    QCOMPARE(ground->straighten, in(2) + in(2) * (117'500 / 108));
    QVERIFY(ground->proved());
}

QTEST_APPLESS_MAIN(Kits)
#include "tst_kits.moc"
