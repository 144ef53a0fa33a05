// SPDX-License-Identifier: MIT
//
// The framed edge (F14): the strips its four pieces are cut from.
#include "planhelp.h"

#include <algorithm>
#include <array>
#include <set>

using namespace matside;
using planhelp::in;

class FrameTest : public QObject {
    Q_OBJECT

private slots:
    void noFewerStripsHoldItsPieces();
    void onePieceLongerThanTheClothIsJoined();
};

namespace {

/// The fewest strips that hold the pieces, found by laying each of them into each strip in turn.
std::int64_t fewest(const std::array<Length, 4> &pieces, Length strip)
{
    std::int64_t least = 4;
    for (int way = 0; way < 256; ++way) { // a strip of four for each of four pieces
        std::array<Length, 4> filled{};
        for (std::size_t i = 0; i < pieces.size(); ++i)
            filled[static_cast<std::size_t>(way >> (2 * i)) & 3U] += pieces[i];
        if (std::any_of(filled.begin(), filled.end(), [&](Length length) { return length > strip; }))
            continue;
        least = std::min<std::int64_t>(least, std::count_if(filled.begin(), filled.end(),
                                                            [](Length length) { return length > Length(); }));
    }
    return least;
}

} // namespace

// F14 | independent derivation | each of the 256 ways of laying the frame's four pieces into four strips is
// tried
void FrameTest::noFewerStripsHoldItsPieces()
{
    std::set<std::int64_t> seen;
    for (std::int64_t columns = 1; columns <= 8; ++columns)
        for (std::int64_t rows = 1; rows <= columns; ++rows)
            for (std::int64_t usable = 30; usable <= 80; usable += 2) {
                Project project = planhelp::piece(columns, rows, in(4), planhelp::hoopP(), in(usable));
                project.edge.kind = EdgeKind::Framed;
                project.edge.outside = in(2);
                const auto frame = plan(project).frame;
                QVERIFY(frame);
                if (frame->joined)
                    continue;
                const Length side = frame->sides + frame->spare, end = frame->ends + frame->spare;
                QCOMPARE(frame->frontStrips, fewest({side, side, end, end}, in(usable)));
                seen.insert(frame->frontStrips);
            }
    QCOMPARE(seen, (std::set<std::int64_t>{1, 2, 3, 4}));
}

// F14 | independent derivation | the pieces are laid end to end along one strip after another
void FrameTest::onePieceLongerThanTheClothIsJoined()
{
    int narrow = 0;
    for (std::int64_t columns = 2; columns <= 9; ++columns) {
        // One row: its ends are short, and only the long pieces can be longer than the cloth.
        Project project = planhelp::piece(columns, 1, in(4), planhelp::hoopP(), in(30));
        project.edge.kind = EdgeKind::Framed;
        project.edge.outside = in(2);
        const auto frame = plan(project).frame;
        QVERIFY(frame);
        const Length side = frame->sides + frame->spare, end = frame->ends + frame->spare;
        QCOMPARE(frame->joined, max(side, end) > in(30));
        if (!frame->joined)
            continue;
        narrow += min(side, end) <= in(30) ? 1 : 0;
        // Each join takes a seam of both strips; the first strip has none before it.
        const Length seam = in(0, 1, 2);
        std::int64_t strips = 1;
        for (Length sewn = in(30); sewn < (side + end) * 2; sewn += in(30) - seam * 2)
            ++strips;
        QCOMPARE(frame->frontStrips, strips);
    }
    QVERIFY(narrow > 0);
}

QTEST_APPLESS_MAIN(FrameTest)
#include "tst_frame.moc"
