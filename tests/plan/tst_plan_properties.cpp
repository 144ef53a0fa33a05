// SPDX-License-Identifier: MIT
//
// What must hold for every plan, tried on thousands of random projects by ways of reckoning that are not
// the plan's own: placing blocks one by one, adding piece to piece, measuring by coordinates.
#include "planhelp.h"

using namespace matside;

class PlanProperties : public QObject {
    Q_OBJECT
private slots:
    void blocksStayInTheFieldAndOnTheStrip();
    void totalsAreTheSumsOfTheirParts();
    void longPiecesSewTogetherToTheLong();
    void exactMetricCopyAgreesWhereNothingIsRounded();
    void samePlanForTheSameProject();
};

// F5 | independent derivation | blocks are laid one after another until the next would run over the end
//    | margin
void PlanProperties::blocksStayInTheFieldAndOnTheStrip()
{
    planhelp::Chance chance(planhelp::seed(1));
    for (int i = 0; i < planhelp::count(3000); ++i) {
        const Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        const Plan p = plan(project);
        if (!planhelp::has(p.problems, "sent-over-field")) {
            QVERIFY(p.block.sent.along <= project.hoop.field->along);
            QVERIFY(p.block.sent.across <= project.hoop.field->across);
        }
        // Placing one after another until the next would run over the end margin.
        std::int64_t placed = 0;
        for (Length at = p.strip.end; at + p.block.sent.along + p.strip.end <= p.strip.usable;
             at += p.block.sent.along + p.strip.gap)
            ++placed;
        QCOMPARE(p.strip.perStrip, placed);
        // Where only some gaps yield sashing the first are wider, and the blocks still end before the margin.
        Length at = p.strip.end;
        for (std::int64_t k = 0; k < placed; ++k) {
            QCOMPARE(p.strip.starts.at(static_cast<std::size_t>(k)), at);
            at += p.block.sent.along + (k < p.strip.wideGaps ? p.strip.wideGap : p.strip.gap);
        }
        if (placed > 0)
            QVERIFY(p.strip.starts.back() + p.block.sent.along + p.strip.end <= p.strip.usable);
        for (std::size_t k = 1; k < p.strip.starts.size(); ++k) {
            const Length between = p.strip.starts[k] - p.strip.starts[k - 1] - p.block.sent.along;
            QVERIFY(between >= project.seam * 2);
        }
        if (placed > 0 && !project.strip.tails) {
            const Length half = project.hoop.outside->along.scaled(1, 2);
            QVERIFY(p.strip.centres.front() - half >= Length());
            // Draw-up lets the frame stand a little nearer the far end than the margin was made for.
            QVERIFY(p.strip.centres.back() + half <= p.strip.usable);
        }
        QVERIFY(p.strip.width >= project.hoop.outside->across);
        const std::int64_t blocks =
            (project.blocks.columns * project.blocks.rows + project.blocks.spare) * project.kits;
        if (placed > 0)
            QVERIFY(p.strip.strips * p.strip.perStrip >= blocks);
    }
}

// F12 | independent derivation | the row is walked seam by seam; each mark stands in the middle of its
//    | sashing
// F13 | independent derivation | the same walk, block by block and sashing by sashing
// F8 | independent derivation | the row's length by the same walk
void PlanProperties::totalsAreTheSumsOfTheirParts()
{
    planhelp::Chance chance(planhelp::seed(2));
    for (int i = 0; i < planhelp::count(3000); ++i) {
        const Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        const Plan p = plan(project);
        // Walking along the row seam by seam: block, then sashing, then block.
        Length outline;
        Length raw;
        for (std::int64_t c = 0; c < project.blocks.columns; ++c) {
            if (c > 0) {
                outline += p.sashing.finished;
                raw += p.sashing.finished - p.basis.allowance * 2;
                QCOMPARE(p.sashing.marks.at(static_cast<std::size_t>(c - 1)),
                         p.basis.allowance + outline - p.sashing.finished.scaled(1, 2));
            }
            outline += project.blocks.width;
            raw += p.block.trimmed.along;
        }
        QCOMPARE(p.size.outline.along, outline);
        QCOMPARE(p.size.raw.along, raw);
        QCOMPARE(p.size.raw.along, outline + p.basis.allowance * 2);
        if (p.strip.perStrip > 0)
            QCOMPARE(p.strip.used + p.strip.remainder, p.strip.usable);
        if (p.fold && p.fold->doubled)
            QCOMPARE(p.fold->catchShown + p.basis.turn + p.basis.between + p.basis.sewnSeam,
                     p.sashing.cutBack->scaled(1, 2));
        else if (p.fold)
            QCOMPARE(p.fold->under + p.fold->fold_catch + p.basis.turn + p.basis.between + p.basis.sewnSeam,
                     *p.sashing.cutBack);
        if (p.binding && p.binding->bias) {
            // What the square holds is no less than the strip that is cut from it, by area.
            const double side = p.binding->bias->square.asInches();
            QVERIFY(side * side >= p.binding->length.asInches() * p.binding->cut.asInches());
        } else if (p.binding && p.binding->strips > 0) {
            const Length tape =
                p.basis.usableBinding * p.binding->strips - p.binding->cut * (p.binding->strips - 1);
            QVERIFY(tape >= p.binding->length);
        }
    }
}

// F8 | independent derivation | the pieces of a long are sewn together again and measured
void PlanProperties::longPiecesSewTogetherToTheLong()
{
    planhelp::Chance chance(planhelp::seed(3));
    int joined = 0, apart = 0, pairs = 0;
    for (int i = 0; i < planhelp::count(3000); ++i) {
        const Project project = chance.project(System::Inch);
        const Plan p = plan(project);
        const Length seam = Length::inches(0, 1, 2);
        for (const LongPieces *face : {&p.sashing.front, &p.sashing.back}) {
            if (face->pieces.empty())
                continue;
            ++joined;
            Length sewn;
            for (std::size_t k = 0; k < face->pieces.size(); ++k) {
                QVERIFY(face->pieces[k] <= p.strip.usable);
                sewn += face->pieces[k] - (k > 0 ? seam * 2 : Length());
                if (k + 1 < face->pieces.size())
                    QCOMPARE(sewn - seam - p.sashing.longSpare.scaled(1, 2), face->joins.at(k));
            }
            QCOMPARE(sewn, p.sashing.longLength + p.sashing.longSpare);
            for (const Length join : face->joins) {
                // A join stands within a block, never on a sashing.
                const Length pitch = project.blocks.width + p.sashing.finished;
                const Length within =
                    join - p.basis.allowance - pitch * (join - p.basis.allowance).floorDiv(pitch);
                QVERIFY(within > Length() && within < project.blocks.width);
            }
        }
        // Cut alike, the back's joins stand a block on from the front's where there is one more.
        const auto &front = p.sashing.front.joins, &back = p.sashing.back.joins;
        if (front.size() == 1 && back.size() == 1 && project.blocks.columns > 3)
            apart += front[0] != back[0] ? 1 : 0, ++pairs;
    }
    QVERIFY(joined > 100 || planhelp::count(3000) < 3000);
    QVERIFY2(apart * 2 > pairs, qPrintable(QStringLiteral("%1 of %2").arg(apart).arg(pairs)));
}

void PlanProperties::exactMetricCopyAgreesWhereNothingIsRounded()
{
    planhelp::Chance chance(planhelp::seed(4));
    for (int i = 0; i < planhelp::count(2000); ++i) {
        const Project inches = chance.project(System::Inch);
        Project metric = inches; // the very same lengths, read on a metric ruler
        metric.system = System::Metric;
        metric.finest = Length::mm(1);
        const Plan a = plan(inches);
        const Plan b = plan(metric);
        QCOMPARE(a.block.sent, b.block.sent);
        QCOMPARE(a.block.trimmed, b.block.trimmed);
        QCOMPARE(a.strip.reach, b.strip.reach);
        QCOMPARE(a.sashing.cutFront, b.sashing.cutFront);
        QCOMPARE(a.sashing.allowanceGap, b.sashing.allowanceGap);
        QCOMPARE(a.sashing.expected, b.sashing.expected);
        QCOMPARE(a.sashing.longLength, b.sashing.longLength);
        QCOMPARE(a.size.outline, b.size.outline);
        QCOMPARE(a.size.raw, b.size.raw);
        QCOMPARE(a.size.finished, b.size.finished);
        // Rounded figures differ by less than the larger of the two steps, plus what the fixed measures
        // differ.
        QVERIFY((a.strip.gap - b.strip.gap).magnitude() < Length::inches(0, 1, 8) + Length::mm(1));
        QVERIFY((a.strip.end - b.strip.end).magnitude() < Length::inches(0, 1, 8) + Length::mm(1));
        if (a.sashing.cutBack)
            QVERIFY((*a.sashing.cutBack - *b.sashing.cutBack).magnitude() <
                    Length::inches(0, 1, 16) + Length::mm(1));
    }
}

void PlanProperties::samePlanForTheSameProject()
{
    planhelp::Chance chance(planhelp::seed(5));
    for (int i = 0; i < planhelp::count(500); ++i) {
        const Project project = chance.project(System::Inch);
        const auto read = readProject(writeProject(project));
        QVERIFY(read.ok());
        QCOMPARE(read.value().project, project);
        QCOMPARE(plan(read.value().project).strip.starts, plan(project).strip.starts);
        QCOMPARE(plan(project).size.finished, plan(project).size.finished);
    }
}

QTEST_GUILESS_MAIN(PlanProperties)
#include "tst_plan_properties.moc"
