// SPDX-License-Identifier: MIT
//
// The formulas of strip, hoop, edge and cloth found again without them: things are laid down by their
// coordinates on the marks of a ruler and moved until they lie right, and the plan must say the same.
#include "planhelp.h"

#include <cmath>

using namespace matside;
using planhelp::in;

namespace {

const Length mark = in(0, 1, 16);
const Length eighth = in(0, 1, 8);

/// The first of zero, one step, two steps … that will do.
template <class Will> Length firstThat(Length step, Will will)
{
    Length at;
    while (!will(at))
        at += step;
    return at;
}

/// Blocks of random size in a hoop of random outside; the plan's figures for them need no rounding to marks.
Project randomPiece(planhelp::Chance &chance)
{
    const Length block = mark * chance.between(48, 128);
    Hoop hoop = planhelp::hoopP();
    hoop.field = Pair{block + mark * chance.between(0, 12), block + mark * chance.between(0, 12)};
    hoop.outside = Pair{hoop.field->along + mark * chance.between(8, 60) * 2,
                        hoop.field->across + mark * chance.between(0, 60) * 2};
    Project project = planhelp::piece(chance.between(1, 6), chance.between(1, 6), block, hoop, in(40, 1, 2));
    project.seam = mark * chance.between(4, 10);
    project.strip.margin = mark * chance.between(8, 24);
    project.strip.sliver = mark * chance.between(4, 12);
    project.strip.tail = mark * chance.between(4, 12);
    return project;
}

} // namespace

class PlanCoordinates : public QObject {
    Q_OBJECT
private slots:
    void stripHoldsFrameAndAllowance();
    void outlineIsSlidThroughTheField();
    void gapHoldsTwoAllowancesAndNoFrame();
    void firstFrameLiesOnCloth();
    void sectionOfAJoinIsWalked();
    void doubledStripIsFoldedFirst();
    void backingIsTurnedOrCoversThePiece();
    void bindingGoesRoundTheEdge();
    void battingReachesPastEveryOutline();
    void patchesCoverTheirShape();
    void kitsAreCutOneAfterAnother();
    void cornersAreMeasuredToTheRim();
};

// F1 | independent derivation | the strip is widened mark by mark until hoop and allowances lie on it
void PlanCoordinates::stripHoldsFrameAndAllowance()
{
    planhelp::Chance chance(planhelp::seed(61));
    for (int i = 0; i < planhelp::count(500); ++i) {
        const Project project = randomPiece(chance);
        const Plan p = plan(project);
        // Everything is laid about the strip's middle line; `half` is the strip's edge.
        const Length half = firstThat(Length::ticks(mark.count() / 2), [&](Length edge) {
            const Length frame = project.hoop.outside->across.scaled(1, 2);
            const Length outline = project.blocks.height.scaled(1, 2);
            return edge - frame >= project.strip.margin && edge - outline >= project.seam + in(0, 1, 4);
        });
        QCOMPARE(p.strip.width, half * 2);
    }
}

// F2 | independent derivation | the outline is slid through the field over all marks; it fits where all its
//    | corners stay inside, comfortably where it can be nudged by the placing error each way
void PlanCoordinates::outlineIsSlidThroughTheField()
{
    planhelp::Chance chance(planhelp::seed(62));
    int close = 0;
    int refused = 0;
    for (int i = 0; i < planhelp::count(500); ++i) {
        Project project = randomPiece(chance);
        project.hoop.field->along += mark * chance.between(-8, 0);
        const Length nudge = project.strip.placing;
        int places = 0;
        bool nudged = false;
        for (Length at; at <= project.hoop.field->along; at += mark)
            if (at + project.blocks.width <= project.hoop.field->along) {
                ++places;
                nudged =
                    nudged || (at >= nudge && at + project.blocks.width + nudge <= project.hoop.field->along);
            }
        bool nudgedAcross = false;
        for (Length at; at <= project.hoop.field->across; at += mark)
            nudgedAcross = nudgedAcross ||
                           (at >= nudge && at + project.blocks.height + nudge <= project.hoop.field->across);
        const Plan p = plan(project);
        QCOMPARE(planhelp::has(p.problems, "sent-over-field"), places == 0);
        if (places > 0)
            QCOMPARE(planhelp::has(p.cautions, "hoop-is-close"), !(nudged && nudgedAcross));
        refused += places == 0 ? 1 : 0;
        close += places > 0 && !(nudged && nudgedAcross) ? 1 : 0;
        QCOMPARE(p.strip.reach * 2 + project.blocks.width, project.hoop.outside->along);
    }
    QVERIFY(refused > 5 && close > 5);
}

// F3 | independent derivation | a second outline is moved away eighth by eighth until two allowances and the
//    | sliver lie between and the frame about it is off the first block
void PlanCoordinates::gapHoldsTwoAllowancesAndNoFrame()
{
    planhelp::Chance chance(planhelp::seed(63));
    for (int i = 0; i < planhelp::count(500); ++i) {
        Project project = randomPiece(chance);
        project.strip.frameMayOverlap = chance.coin();
        if (project.strip.frameMayOverlap)
            project.hoop.kind = HoopKind::Magnetic;
        const Length edge = project.blocks.width; // of the first block, which begins at zero
        const Length gap = firstThat(eighth, [&](Length apart) {
            const Length second = edge + apart;
            const Length middle = second + project.blocks.width.scaled(1, 2);
            const Length frame = middle - project.hoop.outside->along.scaled(1, 2);
            const Length waste = (second - project.seam) - (edge + project.seam);
            return waste >= project.strip.sliver && (project.strip.frameMayOverlap || frame >= edge);
        });
        QCOMPARE(plan(project).strip.gap, gap);
    }
}

// F4 | independent derivation | the first outline is moved in eighth by eighth until frame and tail lie on
//    | cloth; with a sewn-on tail only the allowance and 1/4 in must
void PlanCoordinates::firstFrameLiesOnCloth()
{
    planhelp::Chance chance(planhelp::seed(64));
    for (int i = 0; i < planhelp::count(500); ++i) {
        Project project = randomPiece(chance);
        const Length framed = firstThat(eighth, [&](Length outline) {
            const Length middle = outline + project.blocks.width.scaled(1, 2);
            return middle - project.hoop.outside->along.scaled(1, 2) >= project.strip.tail;
        });
        const Length trimmed =
            firstThat(mark, [&](Length outline) { return outline - project.seam >= in(0, 1, 4); });
        QCOMPARE(plan(project).strip.end, max(framed, trimmed));
        project.strip.tails = true;
        QCOMPARE(plan(project).strip.end, trimmed);
    }
}

// F7 | independent derivation | the section of a join walked from raw edge to raw edge of both strips
// F10 | independent derivation | the same walk: the fold ends the catch past the far seam, and the least
//    | fold still turns under
void PlanCoordinates::sectionOfAJoinIsWalked()
{
    planhelp::Chance chance(planhelp::seed(65));
    for (int i = 0; i < planhelp::count(500); ++i) {
        Project project = randomPiece(chance);
        project.sashing.finished = project.seam * 2 + mark * chance.between(0, 6);
        project.fold.fold_catch = in(0, 1, 32) * chance.between(3, 6);
        const Plan p = plan(project);
        // Seam A stands at 0, seam B at f; block A's allowance points right and block B's left.
        const Length f = *project.sashing.finished;
        const Length endOfA = project.seam;
        const Length endOfB = f - project.seam;
        QCOMPARE(p.sashing.allowanceGap, endOfB - endOfA);
        const Length frontFrom = -project.seam; // the strip lies on A's allowance before it is pressed over
        const Length frontTo = f + project.seam;
        QCOMPARE(p.sashing.cutFront, frontTo - frontFrom);
        // The back: over seam A, the bulk, and as far past seam B as the catch; then back under itself.
        const Length out = project.seam + project.fold.turn + f + project.fold.fold_catch;
        const Length back = firstThat(mark, [&](Length cut) {
            const Length under = cut - out;
            return cut >= p.sashing.cutFront && under >= in(0, 1, 4) &&
                   under >= project.fold.fold_catch + eighth;
        });
        QCOMPARE(*p.sashing.cutBack, back);
        QCOMPARE(p.fold->under, back - out);
    }
}

// F10 | independent derivation | a doubled strip is folded in half first, its raw edges sewn with seam A: the
//    | half is laid over and must end the catch past seam B
void PlanCoordinates::doubledStripIsFoldedFirst()
{
    planhelp::Chance chance(planhelp::seed(71));
    for (int i = 0; i < planhelp::count(500); ++i) {
        Project project = randomPiece(chance);
        project.fold.doubled = true;
        project.sashing.finished = project.seam * 2 + mark * chance.between(-4, 8);
        if (chance.coin())
            project.sashing.allowance = project.sashing.finished->scaled(1, 2);
        project.fold.fold_catch = in(0, 1, 32) * chance.between(3, 6);
        const Plan p = plan(project);
        // Half the strip, from its raw edges at −s, over the bulk, to the fold.
        const Length seamB = *project.sashing.finished;
        const auto foldAt = [&](Length cut) { return cut.scaled(1, 2) - project.seam - project.fold.turn; };
        const Length cut =
            firstThat(mark, [&](Length width) { return foldAt(width) - seamB >= project.fold.fold_catch; });
        QCOMPARE(*p.sashing.cutBack, cut);
        QCOMPARE(p.fold->catchShown, foldAt(cut) - seamB);
        QVERIFY(p.fold->catchShown - project.fold.fold_catch < mark);
        QVERIFY(p.fold->doubled && p.fold->under == Length());
        // What lies between the allowances is what is filled, from an eighth on not left open.
        const Length between = seamB - p.basis.allowance * 2;
        QCOMPARE(p.sashing.filler.has_value(), between > eighth);
        if (p.sashing.filler)
            QCOMPARE(*p.sashing.filler, between);
    }
}

// F11 | independent derivation | bagged: raw edges sewn on the outline and turned; layered: cloth reaching
//    | an inch past every raw edge
void PlanCoordinates::backingIsTurnedOrCoversThePiece()
{
    planhelp::Chance chance(planhelp::seed(66));
    for (int i = 0; i < planhelp::count(300); ++i) {
        Project project = randomPiece(chance);
        project.build = Build::CleanBack;
        project.cleanBack = CleanBack::Bagged;
        Plan p = plan(project);
        const Length left = project.seam; // the seam lies on the outline, its allowance goes inside
        const Length right = p.size.raw.along - project.seam;
        QCOMPARE(p.size.finished.along, right - left);
        QCOMPARE(p.size.backing->along + eighth, p.size.raw.along);
        QVERIFY(p.size.backing->along - project.seam * 2 < p.size.finished.along); // rolls to the back
        QVERIFY(!p.fold && !p.sashing.cutBack && !p.binding);
        project.cleanBack = CleanBack::Layered;
        p = plan(project);
        const Length past = (p.size.backing->across - p.size.raw.across).scaled(1, 2);
        QCOMPARE(past, in(1));
        QVERIFY(!p.fold && !p.sashing.cutBack && p.binding);
    }
}

// F14 | independent derivation | the strip's path about the edge as a polygon, side by side, both layers
void PlanCoordinates::bindingGoesRoundTheEdge()
{
    planhelp::Chance chance(planhelp::seed(67));
    for (int i = 0; i < planhelp::count(300); ++i) {
        Project project = randomPiece(chance);
        project.edge.seam = mark * chance.between(3, 10);
        project.loft = in(0, 1, 32) * chance.between(1, 8);
        project.edge.sewn = chance.coin() ? Sewn::Hand : Sewn::Machine;
        const double b = project.edge.seam->asInches();
        const double h = project.loft.asInches();
        const double past = project.edge.sewn == Sewn::Hand ? 1.0 / 16 : 1.0 / 8;
        // From its raw edge, level with the quilt's, to the seam; back out to the edge; down the edge; in on
        // the back until it passes the seam; and what the turns take.
        const std::array<std::pair<double, double>, 5> path{
            {{0, 0}, {b, 0}, {0, 0}, {0, -h}, {b + past, -h}}};
        double layer = 1.0 / 32;
        for (std::size_t k = 1; k < path.size(); ++k)
            layer += std::hypot(path[k].first - path[k - 1].first, path[k].second - path[k - 1].second);
        project.edge.binding = Binding::Double;
        QVERIFY(std::abs(plan(project).binding->width.asInches() - 2 * layer) < 0.0005);
        QVERIFY(plan(project).binding->cut >= plan(project).binding->width);
        QVERIFY(plan(project).binding->cut - plan(project).binding->width < eighth);
        // A single layer turns its other raw edge under by one more allowance.
        project.edge.binding = Binding::Single;
        QVERIFY(std::abs(plan(project).binding->width.asInches() - (layer + b)) < 0.0005);
    }
}

// F17 | independent derivation | outlines laid on the batting by coordinates; the allowance and 1/4 in
//    | must lie on it all round, and the loose square inside the opening
void PlanCoordinates::battingReachesPastEveryOutline()
{
    planhelp::Chance chance(planhelp::seed(68));
    for (int i = 0; i < planhelp::count(300); ++i) {
        Project project = randomPiece(chance);
        project.hoop.opening = Pair{project.blocks.width + mark * chance.between(8, 40),
                                    project.blocks.height + mark * chance.between(8, 40)};
        const Plan p = plan(project);
        const Length half = firstThat(Length::ticks(mark.count() / 2), [&](Length edge) {
            return edge - project.blocks.height.scaled(1, 2) - project.seam >= in(0, 1, 4);
        });
        QCOMPARE(p.batting.least, half * 2);
        QVERIFY(p.batting.width >= p.batting.least);
        // Inside the ring: 1/4 in past the allowance at either end.
        const Length inside = project.blocks.width + (project.seam + in(0, 1, 4)) * 2;
        QCOMPARE(p.batting.inside.along, inside);
        const bool fits =
            inside <= project.hoop.opening->along && p.batting.inside.across <= project.hoop.opening->across;
        QCOMPARE(*p.batting.insideFits, fits);
    }
}

// F18 | independent derivation | the shape's four corners pushed out by the overlap, the web's drawn in by
//    | 1/8 in, each coordinate by itself; patches counted block by block
void PlanCoordinates::patchesCoverTheirShape()
{
    planhelp::Chance chance(planhelp::seed(69));
    for (int i = 0; i < planhelp::count(300); ++i) {
        Project project = randomPiece(chance);
        project.blocks.spare = chance.between(0, 3);
        const Length w = mark * chance.between(8, 60);
        const Length h = mark * chance.between(8, 60);
        const Length over = mark * chance.between(6, 12);
        project.patches = {{"leaf", w, h, over, "green", chance.between(1, 4), {}}};
        const PatchPlan cut = plan(project).patches.at(0);
        const Length left = Length() - over;
        const Length right = w + over;
        const Length top = Length() - over;
        const Length bottom = h + over;
        QCOMPARE(cut.rectangle, (Pair{right - left, bottom - top}));
        QCOMPARE(cut.web, (Pair{(right - eighth) - (left + eighth), (bottom - eighth) - (top + eighth)}));
        std::int64_t counted = 0;
        for (std::int64_t row = 0; row < project.blocks.rows; ++row)
            for (std::int64_t column = 0; column < project.blocks.columns; ++column)
                counted += project.patches[0].perBlock;
        for (std::int64_t spare = 0; spare < project.blocks.spare; ++spare)
            counted += project.patches[0].perBlock;
        QCOMPARE(cut.count, counted);
    }
}

// F28 | independent derivation | strips taken from the pile one by one as the kits' blocks are stitched
void PlanCoordinates::kitsAreCutOneAfterAnother()
{
    planhelp::Chance chance(planhelp::seed(70));
    for (int i = 0; i < planhelp::count(300); ++i) {
        Project project = randomPiece(chance);
        project.blocks.spare = chance.between(0, 2);
        project.kits = chance.between(1, 20);
        project.kitsShareStrips = chance.coin();
        const Plan p = plan(project);
        if (p.strip.perStrip == 0)
            continue;
        std::int64_t taken = 0;
        std::int64_t room = 0;
        const std::int64_t blocks = project.blocks.columns * project.blocks.rows + project.blocks.spare;
        for (std::int64_t kit = 0; kit < project.kits; ++kit) {
            room = project.kitsShareStrips ? room : 0;
            for (std::int64_t block = 0; block < blocks; ++block, --room)
                if (room == 0) {
                    ++taken;
                    room = p.strip.perStrip;
                }
        }
        QCOMPARE(p.strip.strips, taken);
    }
}

// F22 | independent derivation | the rim of a round table with its leaf in is walked point by point; the
//    | piece's corner is as far inside or outside as the nearest point of it, the ends as the piece's middle
void PlanCoordinates::cornersAreMeasuredToTheRim()
{
    planhelp::Chance chance(planhelp::seed(68));
    int inside = 0;
    int outside = 0;
    for (int i = 0; i < planhelp::count(60); ++i) {
        Project project = randomPiece(chance);
        const Length across = in(chance.between(20, 60));
        project.table = Table{std::nullopt, std::nullopt, across, {}, in(chance.between(6, 30)), i % 2 == 0};
        const Plan p = plan(project);
        const TableSeen &seen = p.table->leafIn ? *p.table : *p.table->other;
        QVERIFY(seen.leafIn && p.table->other && p.table->leafIn != p.table->other->leafIn);
        const double leaf = project.table->leaf->asMm() / 2;
        const double radius = across.asMm() / 2;
        const double x = p.size.finished.along.asMm() / 2;
        const double y = p.size.finished.across.asMm() / 2;
        double nearest = 1e9;
        constexpr int steps = 40'000;
        for (int step = 0; step <= steps; ++step) { // a quarter of the rim: straight, then round
            const double t = static_cast<double>(step) / steps;
            nearest = std::min(nearest, std::hypot(x - leaf * t, y - radius));
            const double turn = std::acos(-1.0) / 2 * t;
            nearest = std::min(nearest,
                               std::hypot(x - leaf - radius * std::sin(turn), y - radius * std::cos(turn)));
        }
        const bool within = x <= leaf ? y <= radius : std::hypot(x - leaf, y) <= radius;
        ++(within ? inside : outside);
        QVERIFY(std::abs(seen.corner.asMm() - (within ? nearest : -nearest)) < 0.02);
        QVERIFY(std::abs(seen.reveal.along.asMm() - (radius + leaf - x)) < 0.01);
    }
    QVERIFY(inside > 0 && outside > 0);
}

QTEST_APPLESS_MAIN(PlanCoordinates)
#include "tst_plan_coordinates.moc"
