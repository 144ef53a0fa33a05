// SPDX-License-Identifier: MIT
//
// Blocks laid on the table: off-size ones to the ends, the best to the middle, and labels that stay with
// their blocks. The rules are common practice, no published source.
#include "made/placing.h"
#include "madehelp.h"

#include "testing.h"

#include <algorithm>

using namespace matside;
using namespace madehelp;

class PlacingTest : public QObject {
    Q_OBJECT
private slots:
    void oneOffSizeGoesToAnEndOfItsRow();
    void severalGoToOneColumn();
    void theBestComesToTheMiddle();
    void whatIsSewnStays();
    void proposalsComeToAnEnd();
    void labelsStayWithTheirBlocks();
    void contradictionsArePassedOver();
};

namespace {

const Tolerances usual = usualTolerances(System::Inch);

Laid off(std::int64_t sixteenths)
{
    return {true, Length::inches(0, sixteenths, 16), false};
}

std::vector<std::string> places(int columns, int rows)
{
    std::vector<std::string> names;
    for (int row = 0; row < rows; ++row)
        for (int column = 1; column <= columns; ++column)
            names.push_back(std::string(1, static_cast<char>('A' + row)) + std::to_string(column));
    return names;
}

Project stitched(int columns, int rows)
{
    Project project = freshProject(System::Inch);
    project.blocks.columns = columns;
    project.blocks.rows = rows;
    for (const std::string &name : places(columns, rows)) {
        MadeBlock block;
        block.block = name;
        project.made.blocks.push_back(block);
    }
    return project;
}

} // namespace

void PlacingTest::oneOffSizeGoesToAnEndOfItsRow()
{
    std::vector<Laid> laid(12, off(0)); // 4 × 3
    laid[5] = off(2);                   // B2
    const auto swap = nextSwap(4, 3, laid, usual);
    QVERIFY(swap && swap->why == SwapFor::End);
    QCOMPARE(swap->first, std::size_t(5));
    QCOMPARE(swap->second, std::size_t(4)); // B1, the nearer end
    // A sixteenth off is at size.
    laid[5] = off(1);
    const auto none = nextSwap(4, 3, laid, usual);
    QVERIFY(!none || none->why == SwapFor::Centre);
}

void PlacingTest::severalGoToOneColumn()
{
    std::vector<Laid> laid(12, off(0));
    laid[3] = off(3); // A4: an end already
    laid[5] = off(2); // B2
    laid[9] = off(4); // C2
    const auto swap = nextSwap(4, 3, laid, usual);
    QVERIFY(swap && swap->why == SwapFor::EndColumn);
    QCOMPARE(swap->first, std::size_t(9)); // the worst first
    QCOMPARE(swap->second, std::size_t(11));
    // The column that holds more of them already takes the rest: of 4 × 5 with A4, B4 and C1 the right one,
    // and mirrored the left.
    for (const bool right : {true, false})
        for (const std::size_t inside : {1U, 2U}) {
            const auto at = [&](std::size_t row, std::size_t column) {
                return row * 4 + (right ? column : 3 - column);
            };
            std::vector<Laid> five(20, off(0));
            for (const std::size_t place : {at(0, 3), at(1, 3), at(2, 0)})
                five[place] = off(2);
            five[at(4, inside)] = off(3);
            const auto next = nextSwap(4, 5, five, usual);
            QVERIFY(next && next->why == SwapFor::EndColumn);
            QCOMPARE(next->first, at(4, inside));
            QCOMPARE(next->second, at(4, 3));
        }
}

void PlacingTest::theBestComesToTheMiddle()
{
    std::vector<Laid> laid(9, off(1));
    laid[2] = off(0);
    const auto swap = nextSwap(3, 3, laid, usual);
    QVERIFY(swap && swap->why == SwapFor::Centre);
    QCOMPARE(swap->first, std::size_t(2));
    QCOMPARE(swap->second, std::size_t(4));
    QVERIFY(!nextSwap(3, 3, std::vector<Laid>(9, off(0)), usual));
    QVERIFY(!nextSwap(3, 3, std::vector<Laid>(9), usual)); // nothing measured, nothing said
}

void PlacingTest::whatIsSewnStays()
{
    std::vector<Laid> laid(9, off(0));
    laid[4] = off(4);
    for (Laid &block : laid)
        block.fixed = true;
    QVERIFY(!nextSwap(3, 3, laid, usual));
    laid[4].fixed = false;
    QVERIFY(!nextSwap(3, 3, laid, usual)); // no end is free
    QVERIFY(!nextSwap(0, 3, {}, usual) && !nextSwap(3, 3, {}, usual));
}

void PlacingTest::proposalsComeToAnEnd()
{
    Chance chance(seed(41));
    const auto upTo = [&](int most) {
        return static_cast<int>(chance.below(static_cast<std::size_t>(most) + 1));
    };
    for (int i = 0; i < 3000; ++i) {
        const int columns = 1 + upTo(5);
        const int rows = 1 + upTo(5);
        std::vector<Laid> laid;
        for (int place = 0; place < columns * rows; ++place) {
            laid.push_back(upTo(4) == 0 ? off(2 + upTo(3)) : off(upTo(1)));
            laid.back().fixed = upTo(9) == 0;
            laid.back().measured = upTo(9) != 0;
        }
        const std::vector<Laid> before = laid;
        const auto isOff = [](const Laid &block) {
            return block.measured && block.off > Length::inches(0, 1, 16);
        };
        int swaps = 0;
        while (const auto swap = nextSwap(columns, rows, laid, usual)) {
            QVERIFY(swap->first != swap->second);
            QVERIFY(!laid[swap->first].fixed && !laid[swap->second].fixed);
            std::swap(laid[swap->first], laid[swap->second]);
            QVERIFY2(++swaps <= columns * rows + 1, "the proposals go round in circles");
        }
        // No off-size block is left inside while an end of any kind that is wanted stands free.
        const auto count = std::count_if(laid.begin(), laid.end(), isOff);
        for (std::size_t place = 0; place < laid.size(); ++place) {
            QCOMPARE(laid[place].fixed, before[place].fixed); // what is sewn was not moved
            const auto column = static_cast<int>(place) % columns;
            const bool inside = column > 0 && column + 1 < columns;
            if (!inside || !isOff(laid[place]) || laid[place].fixed || count > 1)
                continue;
            for (int row = 0; row < rows; ++row)
                for (const int end : {0, columns - 1})
                    QVERIFY(laid[static_cast<std::size_t>(row * columns + end)].fixed);
        }
    }
}

void PlacingTest::labelsStayWithTheirBlocks()
{
    Chance chance(seed(17));
    Project project = stitched(4, 3);
    const auto names = places(4, 3);
    QCOMPARE(laidOut(project, names), names);
    std::vector<std::string> mirror = names; // swapped beside it, with nothing but the list
    for (int i = 0; i < 500; ++i) {
        const std::size_t a = chance.below(names.size());
        const std::size_t b = chance.below(names.size());
        const auto next = withSwapped(project, names, a, b);
        QCOMPARE(next.has_value(), a != b);
        if (!next)
            continue;
        std::swap(mirror[a], mirror[b]);
        project = *next;
        QCOMPARE(laidOut(project, names), mirror);
        for (std::size_t place = 0; place < names.size(); ++place)
            QCOMPARE(project.made.blocks[place].block, names[place]);
    }
    // One that is made again has no record for a while; its place is kept, and it cannot be moved.
    project.made.blocks.erase(project.made.blocks.begin());
    const auto at = std::find(mirror.begin(), mirror.end(), "A1") - mirror.begin();
    QCOMPARE(laidOut(project, names), mirror);
    QVERIFY(
        !withSwapped(project, names, static_cast<std::size_t>(at), (static_cast<std::size_t>(at) + 1) % 12));
}

void PlacingTest::contradictionsArePassedOver()
{
    Project project = stitched(2, 2);
    project.made.blocks[0].lies = "B2";
    // B2 was told nothing and its place is taken: it lies where A1 was.
    QCOMPARE(laidOut(project, places(2, 2)), (std::vector<std::string>{"B2", "A2", "B1", "A1"}));
    project.made.blocks[1].lies = "B2"; // the second at one place
    QCOMPARE(laidOut(project, places(2, 2)), (std::vector<std::string>{"B2", "A2", "B1", "A1"}));
    project.made.blocks[1].lies.clear();
    project.made.blocks[0].lies = "Z9";
    QCOMPARE(laidOut(project, places(2, 2)), places(2, 2));
}

QTEST_APPLESS_MAIN(PlacingTest)
#include "tst_placing.moc"
