// SPDX-License-Identifier: MIT
//
// The common size of off-size blocks (F23: common practice, no published source).
#include "made/commonsize.h"
#include "madehelp.h"

using namespace matside;
using namespace madehelp;

namespace {

OwnSize own(const char *name, Length along, Length across, bool cut = false)
{
    return {name, {along, across}, cut};
}
OwnSize own(const char *name, Length side)
{
    return own(name, side, side);
}
CommonSize common(const std::vector<OwnSize> &blocks, Pair planned = {in(6), in(6)},
                  Pair cutFor = {in(6), in(6)})
{
    return commonSize(blocks, planned, cutFor, usualTolerances(System::Inch), sixteenths());
}

const Concerned *effect(const CommonSize &size, const std::string &block)
{
    for (const Concerned &concerned : size.concerned)
        if (concerned.block == block)
            return &concerned;
    return nullptr;
}

} // namespace

class CommonSizeTest : public QObject {
    Q_OBJECT
private slots:
    void withinASixteenthThePlanStands();
    void workedExample();
    void outlierIsNamedAndLeftOut();
    void severalOutliers();
    void squareBlocksStaySquare();
    void oblongsChooseEachWay();
    void cutBlocksAreNamedNotAltered();
    void millimetresGoDownToTheMark();
    void nothingToChooseFrom();
    void everyBlockKeptStaysWithinTheRule();
    void aCommonSizeTakenIsKnownAgain();
    void sizesComeFromWhatWasMeasured();
};

void CommonSizeTest::withinASixteenthThePlanStands()
{
    const CommonSize size = common({own("A1", in(6)), own("A2", in(5, 15, 16)), own("A3", in(6, 1, 16))});
    QVERIFY(size.asPlanned);
    QCOMPARE(size.outline, (Pair{in(6), in(6)}));
    QCOMPARE(size.concerned.size(), std::size_t(2));
    QCOMPARE(effect(size, "A2")->shows, in(0, 1, 32));
    QCOMPARE(effect(size, "A3")->loses, in(0, 1, 32));
}

void CommonSizeTest::workedExample()
{
    // Worked in the trade notes: 5 7/8 … 6 1/16 give 5 15/16; the smallest shows 1/32, the largest loses
    // 1/16.
    const CommonSize size = common({own("A1", in(6)), own("A2", in(5, 7, 8)), own("A3", in(6, 1, 16))});
    QVERIFY(!size.asPlanned);
    QCOMPARE(size.outline, (Pair{in(5, 15, 16), in(5, 15, 16)}));
    QVERIFY(size.outliers.empty());
    QCOMPARE(effect(size, "A2")->shows, in(0, 1, 32));
    QCOMPARE(effect(size, "A2")->loses, Length());
    QCOMPARE(effect(size, "A3")->loses, in(0, 1, 16));
    QCOMPARE(effect(size, "A1")->loses, in(0, 1, 32));
    // One that is larger one way only loses there.
    const CommonSize oblong =
        common({own("A1", in(6)), own("A2", in(5, 7, 8)), own("A3", in(6, 1, 16), in(5, 7, 8))});
    QCOMPARE(oblong.outline, (Pair{in(5, 15, 16), in(5, 15, 16)}));
    QCOMPARE(effect(oblong, "A3")->loses, in(0, 1, 16));
    QCOMPARE(effect(oblong, "A3")->shows, in(0, 1, 32));
}

void CommonSizeTest::outlierIsNamedAndLeftOut()
{
    // 5 5/8 + 1/16 would cost the largest 3/8: the small one is named, and the others are as planned.
    const CommonSize size = common({own("A1", in(6)), own("B2", in(5, 5, 8)), own("A3", in(6, 1, 16))});
    QCOMPARE(size.outliers, std::vector<std::string>{"B2"});
    QCOMPARE(size.outline, (Pair{in(6), in(6)}));
    QVERIFY(size.asPlanned);
    QVERIFY(!effect(size, "B2"));
    // Just not: 5 3/4 + 1/16 costs 6 1/16 exactly 1/4.
    const CommonSize kept = common({own("A1", in(6)), own("B2", in(5, 3, 4)), own("A3", in(6, 1, 16))});
    QVERIFY(kept.outliers.empty());
    QCOMPARE(kept.outline.along, in(5, 13, 16));
}

void CommonSizeTest::severalOutliers()
{
    const CommonSize size =
        common({own("A1", in(5)), own("A2", in(5, 1, 4)), own("A3", in(6, 1, 8)), own("A4", in(6))});
    QCOMPARE(size.outliers, (std::vector<std::string>{"A1", "A2"}));
    QCOMPARE(size.outline.along, in(6, 1, 16));
}

void CommonSizeTest::squareBlocksStaySquare()
{
    // One way small, the other right: turned by a quarter it must still fit its neighbours.
    const CommonSize size = common({own("A1", in(5, 7, 8), in(6)), own("A2", in(6), in(6))});
    QCOMPARE(size.outline, (Pair{in(5, 15, 16), in(5, 15, 16)}));
    // A block too small one way is left out with both its sizes.
    const CommonSize without = common({own("A1", in(5, 1, 2), in(6)), own("A2", in(6), in(6))});
    QCOMPARE(without.outliers, std::vector<std::string>{"A1"});
    QCOMPARE(without.outline, (Pair{in(6), in(6)}));
}

void CommonSizeTest::oblongsChooseEachWay()
{
    const Pair planned{in(5), in(7)};
    const CommonSize size =
        common({own("A1", in(5), in(6, 7, 8)), own("A2", in(5), in(7))}, planned, planned);
    QCOMPARE(size.outline, (Pair{in(5), in(6, 15, 16)}));
    QVERIFY(!size.asPlanned);
}

void CommonSizeTest::cutBlocksAreNamedNotAltered()
{
    std::vector<OwnSize> blocks{own("A1", in(6), in(6), true), own("A2", in(5, 7, 8)),
                                own("A3", in(6, 1, 16))};
    const CommonSize size = common(blocks);
    QCOMPARE(size.outline.along, in(5, 15, 16));
    QCOMPARE(size.becomeWrong, std::vector<std::string>{"A1"});
    QVERIFY(effect(size, "A1")->cut);
    // Once they were cut for it, nothing is wrong any more.
    const CommonSize again = common(blocks, {in(6), in(6)}, {in(5, 15, 16), in(5, 15, 16)});
    QVERIFY(again.becomeWrong.empty());
    QCOMPARE(blocks[0].outline, (Pair{in(6), in(6)}));
}

void CommonSizeTest::millimetresGoDownToTheMark()
{
    const auto choose = [](const std::vector<OwnSize> &blocks) {
        return commonSize(blocks, {Length::mm(150), Length::mm(150)}, {Length::mm(150), Length::mm(150)},
                          usualTolerances(System::Metric), millimetres());
    };
    QVERIFY(choose({own("A1", Length::mm(151)), own("A2", Length::mm(149))}).asPlanned);
    // 147 + 1.5 = 148.5, down to the ruler's millimetre.
    QCOMPARE(choose({own("A1", Length::mm(151)), own("A2", Length::mm(147))}).outline.along, Length::mm(148));
    QCOMPARE(choose({own("A1", Length::mm(152)), own("A2", Length::mm(143))}).outliers,
             std::vector<std::string>{"A2"});
}

void CommonSizeTest::nothingToChooseFrom()
{
    QVERIFY(common({}).asPlanned);
    QCOMPARE(common({}).outline, (Pair{in(6), in(6)}));
    QCOMPARE(common({own("A1", in(5))}).outline.along, in(5));
}

void CommonSizeTest::everyBlockKeptStaysWithinTheRule()
{
    const Tolerances t = usualTolerances(System::Inch);
    Chance chance(seed(12));
    for (int i = 0; i < count(3'000); ++i) {
        std::vector<OwnSize> blocks;
        for (std::size_t k = 0; k < 1 + chance.below(12); ++k)
            blocks.push_back(own(std::to_string(k).c_str(),
                                 in(0, 1, 32) * std::int64_t(176 + chance.below(30)),
                                 in(0, 1, 32) * std::int64_t(176 + chance.below(30))));
        const CommonSize size = common(blocks);
        QCOMPARE(size.outline.along, size.outline.across);
        Length largest, smallest = in(100);
        for (const OwnSize &block : blocks) {
            if (std::find(size.outliers.begin(), size.outliers.end(), block.block) != size.outliers.end())
                continue;
            largest = max(largest, max(block.outline.along, block.outline.across));
            smallest = min(smallest, min(block.outline.along, block.outline.across));
        }
        QVERIFY(size.outliers.size() < blocks.size() || largest == Length());
        if (largest == Length())
            continue;
        QVERIFY(size.outline.along <= smallest + t.size);
        QVERIFY(largest - size.outline.along <= max(t.over, t.size));
        // Each outlier in its turn was the smallest of those still there, and cost the largest too much.
        std::vector<OwnSize> left = blocks;
        for (const std::string &outlier : size.outliers) {
            Length least = in(100), most, own;
            for (const OwnSize &block : left) {
                const Length small = min(block.outline.along, block.outline.across);
                least = min(least, small);
                most = max(most, max(block.outline.along, block.outline.across));
                if (block.block == outlier)
                    own = small;
            }
            QCOMPARE(own, least);
            QVERIFY(most - min(most, least + t.size).downTo(in(0, 1, 16)) > t.over);
            std::erase_if(left, [&](const OwnSize &block) { return block.block == outlier; });
        }
    }
}

void CommonSizeTest::aCommonSizeTakenIsKnownAgain()
{
    const auto taken = [](const std::vector<OwnSize> &blocks, Length side) {
        return isCommonSize(blocks, {side, side}, usualTolerances(System::Inch), sixteenths());
    };
    // The blocks of the worked example, whose common size is 5 15/16.
    const std::vector<OwnSize> blocks{own("A1", in(6)), own("A2", in(5, 7, 8)), own("A3", in(6, 1, 16))};
    QVERIFY(taken(blocks, in(5, 15, 16)));
    QVERIFY(!taken(blocks, in(6)));
    // The plan's own size, with every block near it, was never chosen.
    QVERIFY(!taken({own("A1", in(6)), own("A2", in(5, 15, 16))}, in(6)));
}

void CommonSizeTest::sizesComeFromWhatWasMeasured()
{
    Project project = freshProject(System::Inch);
    project.blocks.width = project.blocks.height = in(6);
    const auto add = [&](const char *name, BlockState state) -> MadeBlock & {
        MadeBlock block;
        block.block = name;
        block.state = state;
        project.made.blocks.push_back(block);
        return project.made.blocks.back();
    };
    add("A1", BlockState::Stitched).outline = {in(5, 15, 16), in(6)};
    MadeBlock &read = add("A2", BlockState::Stitched);
    read.outline = {in(5), in(5)}; // the sides stand over the quick look off the hoop
    read.sides = {in(6, 1, 16), in(6), in(6, 1, 16), in(6)};
    read.diagonals = {in(8, 9, 16), in(8, 1, 2)};
    MadeBlock &trimmed = add("A3", BlockState::Trimmed);
    trimmed.sides = {in(7), in(7), in(7), in(7)};
    trimmed.diagonals = {in(9, 29, 32), in(9, 29, 32)};
    MadeBlock &wrong = add("B1", BlockState::Stitched);
    wrong.sides = {in(6), in(6), in(7), in(6)};
    wrong.diagonals = {in(8, 1, 2), in(8, 1, 2)};
    add("B2", BlockState::Spoiled).outline = {in(4), in(4)};
    add("B3", BlockState::Lost).outline = {in(4), in(4)};
    add("C1", BlockState::Stitched);
    const std::vector<OwnSize> sizes = ownSizes(project, usualTolerances(System::Inch));
    QCOMPARE(sizes.size(), std::size_t(3));
    QCOMPARE(sizes[0].outline, (Pair{in(5, 15, 16), in(6)}));
    QCOMPARE(sizes[1].outline, (Pair{in(6, 1, 16), in(6)}));
    QCOMPARE(sizes[2].outline, (Pair{in(6), in(6)}));
    QVERIFY(sizes[2].cut && !sizes[0].cut);
}

QTEST_APPLESS_MAIN(CommonSizeTest)
#include "tst_common_size.moc"
