// SPDX-License-Identifier: MIT
//
// Two tablets' work on one project, put together: one case for each rule. What is expected follows from what
// lies on the table: who changed what since they parted, and what hangs on it. Common practice of three-way
// merging, no published source.
#include "mergehelp.h"

using namespace mergehelp;

class MergeTest : public QObject {
    Q_OBJECT
private slots:
    void whatOneChangedIsTaken();
    void whatBothChangedIsAsked();
    void piecesThatHangOnItAsk();
    void withoutABaseDifferencesAreAsked();
    void blocksOfBothStand();
    void theFurtherStateIsTaken();
    void spoiledAgainstTrimmedIsAsked();
    void oneBlockNotedOnBothIsAsked();
    void countsMayBeTakenTogether();
    void theLogKeepsAll();
    void whatWasTakenBackStaysAway();
    void aClothInUseStays();
    void clothsOfBothStand();
    void whatANewerProgramWroteStays();
    void refusals();
};

void MergeTest::whatOneChangedIsTaken()
{
    const Project base = example();
    Project mine = base;
    Project theirs = base;
    mine.seam = Length::inches(0, 3, 8);
    theirs.name = "Runner for the hall";
    theirs.cloths[0].price = "11.50";
    const Merged both = merged(base, mine, theirs);
    QVERIFY(both.questions.empty());
    QCOMPARE(both.came.size(), std::size_t(2));
    QCOMPARE(both.came[0].at, std::string("/name"));
    const Project now = projectOf(both);
    QCOMPARE(now.seam, mine.seam);
    QCOMPARE(now.name, theirs.name);
    QCOMPARE(now.cloths, theirs.cloths);
}

void MergeTest::whatBothChangedIsAsked()
{
    const Project base = example();
    Project mine = base;
    Project theirs = base;
    mine.seam = Length::inches(0, 3, 8);
    theirs.seam = Length::inches(0, 5, 8);
    const Merged asked = merged(base, mine, theirs);
    QCOMPARE(asked.questions.size(), std::size_t(1));
    QCOMPARE(asked.questions[0].differs.at, std::string("/seam"));
    QCOMPARE(asked.questions[0].differs.mine, std::string("\"3/8 in\""));
    QCOMPARE(asked.questions[0].differs.theirs, std::string("\"5/8 in\""));
    QVERIFY(!asked.questions[0].bears && asked.questions[0].together.empty());
    QCOMPARE(projectOf(asked).seam, mine.seam); // until she says so, nothing of hers is written over
    QCOMPARE(projectOf(merged(base, mine, theirs, {{"/seam", Says::Theirs}})).seam, theirs.seam);
    theirs.seam = mine.seam; // both to the same
    QVERIFY(merged(base, mine, theirs).questions.empty());
}

void MergeTest::piecesThatHangOnItAsk()
{
    Project base = example();
    base.made.blocks.push_back(stitched("A1"));
    Project theirs = base;
    theirs.seam = Length::inches(0, 3, 8);
    theirs.name = "Another name";
    // She changed it knowing of A1: nothing was made since that she did not know of.
    QVERIFY(merged(base, base, theirs).questions.empty());
    Project working = base;
    working.made.blocks.push_back(stitched("A2")); // meanwhile, with the seam as it was
    for (const auto &[mine, other] : {std::pair(working, theirs), std::pair(theirs, working)}) {
        const Merged asked = merged(base, mine, other);
        QCOMPARE(asked.questions.size(), std::size_t(1));
        QCOMPARE(asked.questions[0].differs.at, std::string("/seam"));
        QVERIFY(asked.questions[0].bears);
        QCOMPARE(projectOf(asked).name, theirs.name); // no piece is another size for it
    }
}

void MergeTest::withoutABaseDifferencesAreAsked()
{
    const Project mine = example();
    Project theirs = mine;
    theirs.name = "Another name";
    theirs.edge.outside = Length::inches(0, 7, 8);
    const Merged asked = merged({}, mine, theirs);
    QCOMPARE(asked.questions.size(), std::size_t(2));
    QCOMPARE(projectOf(asked), mine);
    QVERIFY(merged({}, mine, mine).questions.empty());
}

void MergeTest::blocksOfBothStand()
{
    Project base = example();
    base.made.blocks = {stitched("A1")};
    Project mine = base;
    Project theirs = base;
    mine.made.blocks.push_back(stitched("A2"));
    theirs.made.blocks.push_back(stitched("B1"));
    theirs.made.blocks[0].notes = {"n1"};
    mine.made.blocks[0].notes = {"n2"};
    for (const std::optional<Project> &known : {std::optional(base), std::optional<Project>()}) {
        const Merged both = merged(known, mine, theirs);
        QVERIFY(both.questions.empty());
        QCOMPARE(both.blocksCame, 1);
        const Project now = projectOf(both);
        QCOMPARE(now.made.blocks.size(), std::size_t(3));
        QCOMPARE(now.made.blocks[0].notes, (std::vector<std::string>{"n1", "n2"}));
        QVERIFY(now.made.goodBlock("A2") && now.made.goodBlock("B1"));
    }
}

void MergeTest::theFurtherStateIsTaken()
{
    Project base = example();
    base.made.blocks = {stitched("A1")};
    Project mine = base;
    Project theirs = base;
    mine.made.blocks[0].state = BlockState::Trimmed;
    theirs.made.blocks[0].state = BlockState::Joined;
    for (const auto &[one, other] : {std::pair(mine, theirs), std::pair(theirs, mine)}) {
        QVERIFY(merged(base, one, other).questions.empty());
        QCOMPARE(projectOf(merged(base, one, other)).made.blocks[0].state, BlockState::Joined);
        QCOMPARE(projectOf(merged({}, one, other)).made.blocks[0].state, BlockState::Joined);
    }
}

void MergeTest::spoiledAgainstTrimmedIsAsked()
{
    Project base = example();
    base.made.blocks = {stitched("A1")};
    Project mine = base;
    Project theirs = base;
    mine.made.blocks[0].state = BlockState::Trimmed;
    theirs.made.blocks[0].state = BlockState::Spoiled;
    theirs.made.blocks.push_back(stitched("A1")); // made anew there
    const Merged asked = merged(base, mine, theirs);
    QCOMPARE(asked.questions.size(), std::size_t(1));
    QCOMPARE(asked.questions[0].differs.at, std::string("/made/blocks/A1/state"));
    QCOMPARE(projectOf(asked).made.blocks.size(), std::size_t(2));
}

void MergeTest::oneBlockNotedOnBothIsAsked()
{
    const Project base = example();
    Project mine = base;
    Project theirs = base;
    mine.made.blocks = {stitched("A1")};
    theirs.made.blocks = {stitched("A1")};
    QVERIFY(merged(base, mine, theirs).questions.empty()); // told alike: one block
    theirs.made.blocks[0].place = 2;
    theirs.made.blocks[0].outline = {Length::inches(6), Length::inches(6)};
    const Merged asked = merged(base, mine, theirs);
    QCOMPARE(asked.questions.size(), std::size_t(1)); // the record whole, never half of each
    QCOMPARE(asked.questions[0].differs.at, std::string("/made/blocks/A1"));
    QCOMPARE(projectOf(merged(base, mine, theirs, {{"/made/blocks/A1", Says::Theirs}})).made, theirs.made);
}

void MergeTest::countsMayBeTakenTogether()
{
    Project base = example();
    base.made.cut = {{"front", "cut-strip", 2, 0, {}}};
    Project mine = base;
    Project theirs = base;
    mine.made.cut[0].count = 5;
    theirs.made.cut[0].count = 4;
    const Merged asked = merged(base, mine, theirs);
    QCOMPARE(asked.questions.size(), std::size_t(1));
    const std::string at = asked.questions[0].differs.at;
    QCOMPARE(at, std::string("/made/cut/cut-strip front/count"));
    QCOMPARE(asked.questions[0].together, std::string("7")); // 2 before, 3 and 2 since
    QCOMPARE(projectOf(asked).made.cut[0].count, 5);
    QCOMPARE(projectOf(merged(base, mine, theirs, {{at, Says::Together}})).made.cut[0].count, 7);
    QVERIFY(merged(base, mine, base).questions.empty());
    QVERIFY(merged({}, mine, theirs).questions[0].together.empty()); // how many before is not known
}

void MergeTest::theLogKeepsAll()
{
    Project base = example();
    base.made.events = {noted("new-bobbin"), noted("new-bobbin")}; // of an older file: no ids
    Project mine = base;
    Project theirs = base;
    mine.made.events.push_back(noted("spoiled", "m1"));
    mine.made.events.push_back(noted("new-bobbin", "m2"));
    theirs.made.events.push_back(noted("spoiled", "t1"));
    for (const std::optional<Project> &known : {std::optional(base), std::optional<Project>()}) {
        const Merged both = merged(known, mine, theirs);
        QVERIFY(both.questions.empty());
        QCOMPARE(both.eventsCame, 1);
        const std::vector<MadeEvent> expected{noted("new-bobbin"), noted("new-bobbin"),
                                              noted("spoiled", "m1"), noted("new-bobbin", "m2"),
                                              noted("spoiled", "t1")};
        QCOMPARE(projectOf(both).made.events, expected);
        QCOMPARE(projectOf(merged(known, theirs, mine)).made.events, expected);
    }
}

void MergeTest::whatWasTakenBackStaysAway()
{
    Project base = example();
    base.made.events = {noted("spoiled", "e1"), noted("new-bobbin", "e2")};
    base.made.blocks = {stitched("A1"), stitched("A2")};
    Project mine = base;
    mine.made.events.pop_back();
    mine.made.blocks.pop_back();
    Project theirs = base;
    theirs.made.blocks.push_back(stitched("A3"));
    const Project now = projectOf(merged(base, mine, theirs));
    QCOMPARE(now.made.events, (std::vector<MadeEvent>{noted("spoiled", "e1")}));
    QCOMPARE(now.made.blocks, (std::vector<MadeBlock>{stitched("A1"), stitched("A3")}));
    theirs.made.blocks[1].state = BlockState::Trimmed; // taken back here, gone on with there
    QCOMPARE(merged(base, mine, theirs).questions.size(), std::size_t(1));
}

void MergeTest::aClothInUseStays()
{
    Project base = example();
    base.cloths.push_back(base.cloths[0]);
    base.cloths.back().id = "dots";
    Project mine = base;
    mine.cloths.pop_back();
    Project theirs = base;
    QCOMPARE(projectOf(merged(base, mine, theirs)).cloths, mine.cloths);
    theirs.patches.push_back({"leaf", Length::inches(2), Length::inches(2), {}, "dots", 1, {}});
    QCOMPARE(projectOf(merged(base, mine, theirs)).cloths, base.cloths);
    QCOMPARE(projectOf(merged(base, theirs, mine)).cloths, base.cloths);
}

void MergeTest::clothsOfBothStand()
{
    const Project base = example();
    Project mine = base;
    Project theirs = base;
    for (const auto &[project, id] : {std::pair(&mine, "cloth-0a"), std::pair(&theirs, "cloth-0b")}) {
        project->cloths.push_back(base.cloths[0]);
        project->cloths.back().id = id;
    }
    const Project now = projectOf(merged(base, mine, theirs));
    QCOMPARE(now.cloths.size(), base.cloths.size() + 2);
    QCOMPARE(now, projectOf(merged(base, theirs, mine)));
}

void MergeTest::whatANewerProgramWroteStays()
{
    const Project base = example();
    Project mine = base;
    Project theirs = base;
    mine.rest = R"({"later":1.50})";
    theirs.hoop.rest = R"({"weight":2})";
    const Project now = projectOf(merged(base, mine, theirs));
    QCOMPARE(now.rest, mine.rest);
    QCOMPARE(now.hoop.rest, theirs.hoop.rest);
}

void MergeTest::refusals()
{
    const Project mine = example();
    const std::string text = writeProject(mine);
    const std::string metric = writeProject(inWholeMillimetres(mine));
    QCOMPARE(mergeProjects({}, text, metric).error().code, std::string("merge-system"));
    QCOMPARE(mergeProjects({}, text, "{").error().code, std::string("merge-unreadable"));
    std::string faulty = text;
    faulty.replace(faulty.find("\"right\""), 7, "\"both\"");
    QCOMPARE(mergeProjects({}, faulty, text).error().code, std::string("merge-unreadable"));
    // A base that cannot be read is as none.
    QVERIFY(mergeProjects(std::string("{"), text, text).ok());
}

QTEST_APPLESS_MAIN(MergeTest)
#include "tst_merge.moc"
