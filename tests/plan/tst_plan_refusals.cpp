// SPDX-License-Identifier: MIT
//
// Every refusal names its field, gives a reason and offers values that really work: each offer is written
// into the project file, the file is read again, and that problem must be gone.
#include "plan/problems.h"
#include "planhelp.h"

using namespace matside;
using planhelp::in;

namespace {

using Spoil = void (*)(Project &);

struct Refusal {
    const char *name;
    const char *code;
    const char *at;
    bool caution;
    bool offers;
    Spoil spoil;
};

const Refusal refusals[] = {
    {"block over the field along", "sent-over-field", "/blocks/width", false, true,
     [](Project &p) { p.blocks.width = p.blocks.height = in(8); }},
    {"block over the field across", "sent-over-field", "/blocks/height", false, true,
     [](Project &p) { p.blocks.height = in(8); }},
    {"block over the field by draw-up alone", "sent-over-field", "/blocks/width", false, true,
     [](Project &p) {
         p.blocks.width = in(7, 7, 8);
         p.drawUp.along = Share{1'000};
     }},
    {"sashing of 3/4 at a 1/2 seam", "sashing-under-allowances", "/sashing/finished", false, true,
     [](Project &p) { p.sashing.finished = in(0, 3, 4); }},
    {"allowance pared to 1/4 at a 1/2 seam", "allowance-pared-too-far", "/sashing/allowance", false, true,
     [](Project &p) { p.sashing.allowance = in(0, 1, 4); }},
    {"edge wider than the allowance", "outside-over-allowance", "/edge/outside", false, true,
     [](Project &p) { p.edge.outside = in(0, 3, 4); }},
    {"gap under two seams", "gap-under-seams", "/strip/gap", false, true,
     [](Project &p) { p.strip.gap = in(0, 3, 4); }},
    {"frame over the last block, two rings", "frame-may-overlap-ring", "/strip/frameMayOverlap", false, true,
     [](Project &p) { p.strip.frameMayOverlap = true; }},
    {"gap under the reach, two rings", "gap-under-reach", "/strip/gap", false, true,
     [](Project &p) { p.strip.gap = in(1, 1, 2); }},
    {"no block on a short strip", "no-block-on-strip", "/strip", false, true,
     [](Project &p) { p.strip.usable = in(9); }},
    {"no block on a very short strip", "no-block-on-strip", "/strip", false, true,
     [](Project &p) { p.strip.usable = in(3); }},
    {"back strip too narrow to fold", "fold-too-small", "/sashing/cutBack", false, true,
     [](Project &p) { p.sashing.cutBack = in(1, 3, 4); }},
    {"doubled back strip too narrow", "doubled-too-narrow", "/sashing/cutBack", false, true,
     [](Project &p) {
         p.fold.doubled = true;
         p.sashing.cutBack = in(3, 1, 8);
     }},
    {"catch that will be missed", "catch-out-of-range", "/fold/catch", false, true,
     [](Project &p) { p.fold.fold_catch = in(0, 1, 32); }},
    {"catch that curls", "catch-out-of-range", "/fold/catch", false, true,
     [](Project &p) { p.fold.fold_catch = in(0, 1, 4); }},
    {"frame that would not be seen", "frame-too-narrow", "/edge/outside", false, true,
     [](Project &p) {
         p.edge.kind = EdgeKind::Framed;
         p.edge.outside = in(0, 1, 2);
     }},
    {"binding as wide as its cloth", "binding-wider-than-cloth", "/edge/seam", false, true,
     [](Project &p) {
         p.edge.outside = in(8);
         p.edge.seam = in(7);
         p.edge.kind = EdgeKind::Framed;
     }},
    {"draw-up beyond belief", "draw-up-out-of-range", "/drawUp/along", false, true,
     [](Project &p) { p.drawUp.along = Share{400'000}; }},
    {"test block misread", "draw-up-out-of-range", "/made/testBlock", false, true,
     [](Project &p) {
         p.made.testBlock = TestBlock{{in(6), in(6)}, {in(4), in(6)}, {}};
     }},
    {"hoop not measured", "hoop-unknown", "/hoop/outside", false, false,
     [](Project &p) { p.hoop.outside.reset(); }},
    {"hoop larger inside than outside", "field-over-hoop", "/hoop/field/1", false, true,
     [](Project &p) {
         p.hoop.field = Pair{p.hoop.outside->along, p.hoop.outside->across + in(1)};
     }},
    {"sashing cloth shorter than a short", "short-longer-than-cloth", "/cloths/0/usable", false, true,
     [](Project &p) {
         Cloth cloth;
         cloth.id = "bands";
         cloth.role = ClothRole::SashingFront;
         cloth.usable = in(5);
         p.cloths.push_back(cloth);
     }},
    {"sashing cloth too narrow to join at mid-block", "long-cannot-be-joined", "/cloths/0/usable", false,
     true,
     [](Project &p) {
         Cloth cloth;
         cloth.id = "bands";
         cloth.role = ClothRole::SashingFront;
         cloth.usable = in(7, 3, 4);
         p.cloths.push_back(cloth);
     }},
    {"little room in the field", "hoop-is-close", "/blocks/width", true, true,
     [](Project &p) { p.blocks.width = p.blocks.height = in(7, 3, 4); }},
    {"binding seam over the outside", "edge-seam-over-outside", "/edge/seam", true, true,
     [](Project &p) {
         p.edge.outside = in(0, 1, 4);
         p.edge.seam = in(0, 1, 2);
     }},
    {"margin of 1/4 with two rings", "margin-is-small", "/strip/margin", true, true,
     [](Project &p) { p.strip.margin = in(0, 1, 4); }},
    {"little left on the strip", "strip-is-tight", "/strip", true, true,
     [](Project &p) { p.strip.usable = in(34, 1, 2); }},
    {"scallops deeper than half their chord", "scallop-too-deep", "/edge/corner/depth", false, true,
     [](Project &p) {
         p.edge.corner.kind = CornerKind::Scalloped;
         p.edge.corner.depth = in(3);
     }},
    {"scallops that cut into the quilting", "scallop-bites", "/edge/corner/depth", true, true,
     [](Project &p) { p.edge.corner.kind = CornerKind::Scalloped; }},
    {"scallops whose binding lies on the outline", "scallop-near", "/edge/corner/depth", true, true,
     [](Project &p) {
         p.edge.corner.kind = CornerKind::Scalloped;
         p.edge.corner.depth = in(0, 1, 4);
     }},
    {"scallops too tight to ease round", "scallop-too-tight", "/edge/corner/depth", true, true,
     [](Project &p) {
         p.edge.corner.kind = CornerKind::Scalloped;
         p.edge.corner.along = p.edge.corner.across = 12;
         p.edge.corner.depth = in(0, 3, 4);
     }},
    {"a circle cut into its corner blocks", "corner-bites", "/edge/corner/kind", true, true,
     [](Project &p) { p.edge.corner.kind = CornerKind::Round; }},
    {"lip too wide", "lip-is-wide", "/fold", true, true,
     [](Project &p) { p.fold.fold_catch = in(0, 3, 16); }},
    {"harvested pieces without spare", "harvest-is-short", "/strip/harvest", true, true,
     [](Project &p) {
         p.strip.harvest = true;
         p.blocks.height = in(7, 3, 4);
         p.hoop.outside->across = in(9);
         p.strip.margin = in(0, 1, 4);
     }},
    {"gap that leaves no allowance", "gap-under-allowances", "/strip/gap", true, true,
     [](Project &p) {
         p.hoop = planhelp::hoopQ();
         p.blocks.width = p.blocks.height = in(9);
         p.strip.gap = in(1, 1, 4);
         p.sashing.allowance = in(0, 3, 4);
         p.sashing.finished = in(1, 1, 2);
     }},
    {"magnetic frame on the last block", "frame-on-last-block", "/strip/gap", true, true,
     [](Project &p) {
         p.hoop = planhelp::hoopQ();
         p.strip.gap = in(1, 1, 2);
     }},
    {"a lip over the table's edge", "stiff-lip", "/table", true, false,
     [](Project &p) {
         p.table = Table{in(18), in(40), std::nullopt, {}};
     }},
    {"corners over a round table", "corner-hangs", "/table", true, false,
     [](Project &p) {
         p.table = Table{std::nullopt, std::nullopt, in(27), {}};
     }},
    {"a lip once the leaf is taken out", "leaf-out-lip", "/table/leaf", true, false,
     [](Project &p) { p.table = Table{in(18), in(40), std::nullopt, {}, in(12), true}; }},
    {"a lip once the leaf is laid in", "leaf-in-lip", "/table/leaf", true, false,
     [](Project &p) { p.table = Table{in(10), in(40), std::nullopt, {}, in(8), false}; }},
};

const Problem *find(const std::vector<Problem> &found, const Refusal &refusal)
{
    for (const Problem &problem : found)
        if (problem.code == refusal.code && problem.at == refusal.at)
            return &problem;
    return nullptr;
}

} // namespace

class PlanRefusals : public QObject {
    Q_OBJECT
private slots:
    void eachIsNamedAndEachOfferMendsIt_data();
    void eachIsNamedAndEachOfferMendsIt();
    void largestBlockIsTheFieldLessNothing();
    void aSoundProjectHasNone();
    void offersForWhatIsNotThereChangeNothing();
    void everyOfferOfRandomProjectsMendsItsProblem();
};

void PlanRefusals::eachIsNamedAndEachOfferMendsIt_data()
{
    QTest::addColumn<int>("index");
    int index = 0;
    for (const Refusal &refusal : refusals)
        QTest::newRow(refusal.name) << index++;
}

void PlanRefusals::eachIsNamedAndEachOfferMendsIt()
{
    QFETCH(int, index);
    const Refusal &refusal = refusals[index];
    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    refusal.spoil(project);
    const Plan before = plan(project);
    const std::vector<Problem> &found = refusal.caution ? before.cautions : before.problems;
    const Problem *problem = find(found, refusal);
    QVERIFY2(problem, planhelp::codes(before.problems) + " | " + planhelp::codes(before.cautions));
    QCOMPARE(!problem->offers.empty(), refusal.offers);

    const std::string file = writeProject(project);
    for (const Offer &offer : problem->offers) {
        const std::string mended = applyOffer(file, offer);
        QVERIFY2(mended != file, offer.code.c_str());
        const auto read = readProject(mended);
        QVERIFY2(read.ok(), offer.code.c_str());
        const Plan after = plan(read.value().project);
        const Problem *still = find(refusal.caution ? after.cautions : after.problems, refusal);
        QVERIFY2(!still, (offer.code + " at " + offer.at).c_str());
    }
}

void PlanRefusals::largestBlockIsTheFieldLessNothing()
{
    // Case 10 (a) of the worked cases: 8 in in a field of 7 7/8; largest 7 7/8, comfortable 7 5/8.
    const Plan p = plan(planhelp::piece(3, 3, in(8), planhelp::hoopP(), in(40, 1, 2)));
    QVERIFY(!p.problems.empty());
    QCOMPARE(p.problems.front().offers.size(), std::size_t(2));
    QCOMPARE(std::get<Length>(p.problems.front().offers[0].value), in(7, 7, 8));
    QCOMPARE(std::get<Length>(p.problems.front().offers[1].value), in(7, 5, 8));
}

void PlanRefusals::offersForWhatIsNotThereChangeNothing()
{
    // One column has no shorts, so none can be longer than its cloth.
    Project column = planhelp::piece(1, 2, in(6), planhelp::hoopP(), in(40, 1, 2));
    column.cloths = {};
    column.blocks.height = in(41);
    QVERIFY(!planhelp::has(plan(column).problems, "short-longer-than-cloth"));
    column.blocks.columns = 2;
    QVERIFY(planhelp::has(plan(column).problems, "short-longer-than-cloth"));
    // Cut with its spare it is as long as the cloth is wide, and fits; a hair more does not.
    column.blocks.rows = 1;
    column.blocks.height = in(6);
    QCOMPARE(plan(column).sashing.shorts, std::int64_t(1));
    Cloth scrap;
    scrap.id = "n";
    scrap.role = ClothRole::SashingFront;
    scrap.usable = plan(column).sashing.shortLength + plan(column).sashing.shortSpare;
    column.cloths = {scrap};
    QVERIFY(!planhelp::has(plan(column).problems, "short-longer-than-cloth"));
    column.cloths[0].usable = *scrap.usable - Length::ticks(1);
    QVERIFY(planhelp::has(plan(column).problems, "short-longer-than-cloth"));
    // A sashing finished at 3/4 in is offered seams of half of it.
    Project close = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    close.sashing.finished = in(0, 3, 4);
    const Plan crowded = plan(close);
    int halves = 0;
    for (const Problem &problem : crowded.problems)
        for (const Offer &offer : problem.offers)
            if (offer.code == "set-seam") {
                QCOMPARE(std::get<Length>(offer.value), in(0, 3, 8));
                ++halves;
            }
    QCOMPARE(halves, 1);
    // A back cut too narrow is offered the width that is just enough: 1 7/8 in for a fold of 1/4 in and a
    // catch of 1/8 in comes to 1 15/16 in on sixteenths.
    Project narrow = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    narrow.sashing.cutBack = in(1, 3, 4);
    const Plan folded = plan(narrow);
    const auto small = std::find_if(folded.problems.begin(), folded.problems.end(),
                                    [](const Problem &problem) { return problem.code == "fold-too-small"; });
    QVERIFY(small != folded.problems.end());
    const auto wider = std::find_if(small->offers.begin(), small->offers.end(),
                                    [](const Offer &offer) { return offer.code == "set-cut-back"; });
    QVERIFY(wider != small->offers.end());
    QCOMPARE(std::get<Length>(wider->value), in(1, 15, 16));

    Project project = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    project.cloths.resize(1);
    Offer offer;
    offer.value = in(38);
    for (const char *at :
         {"/cloths/1/usable", "/cloths/x/usable", "/cloths//usable", "/cloths/0", "/nowhere"}) {
        offer.at = at;
        Project tried = project;
        QVERIFY2(!applyTo(tried, offer), at);
        QCOMPARE(tried, project);
    }
    offer.at = "/cloths/0/usable";
    QVERIFY(applyTo(project, offer));
    QCOMPARE(project.cloths[0].usable.value_or(Length()), in(38));
}

void PlanRefusals::aSoundProjectHasNone()
{
    const Plan p = plan(planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2)));
    QVERIFY2(p.problems.empty(), planhelp::codes(p.problems));
    QVERIFY2(p.cautions.empty(), planhelp::codes(p.cautions));
}

void PlanRefusals::everyOfferOfRandomProjectsMendsItsProblem()
{
    planhelp::Chance chance(planhelp::seed(41));
    int offers = 0;
    for (int i = 0; i < planhelp::count(400); ++i) {
        Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        project.hoop.field = Pair{project.blocks.width - project.finest * chance.between(-8, 8),
                                  project.blocks.height - project.finest * chance.between(-8, 8)};
        const Length some = project.finest * chance.between(2, 40);
        switch (chance.between(0, 4)) {
        case 0:
            project.strip.gap = some;
            break;
        case 1:
            project.sashing.finished = some;
            break;
        case 2:
            project.sashing.cutBack = some;
            break;
        case 3:
            project.edge.outside = some;
            break;
        default:
            project.strip.usable = some * 10;
            break;
        }
        const std::string file = writeProject(project);
        for (const Problem &problem : plan(project).problems) {
            for (const Offer &offer : problem.offers) {
                ++offers;
                const auto read = readProject(applyOffer(file, offer));
                QVERIFY(read.ok());
                for (const Problem &left : plan(read.value().project).problems)
                    QVERIFY2(left.code != problem.code || left.at != problem.at,
                             (problem.code + ": " + offer.code).c_str());
            }
        }
    }
    QVERIFY(offers > 100);
}

QTEST_GUILESS_MAIN(PlanRefusals)
#include "tst_plan_refusals.moc"
