// SPDX-License-Identifier: MIT
#include "main/stage.h"

#include "app/readings.h"
#include "bench/record.h"

namespace matside {

namespace {

/// The six readings stepped off the planned size, in marks: top, right, bottom, left, then the diagonals.
Opens measured(const Stage &stage, std::array<int, 6> off)
{
    return [stage, off] {
        BlockMeasure &measure = stage.room->measure();
        measure.begin();
        for (int at = 0; at < static_cast<int>(off.size()); ++at) { // she has read all six
            measure.nudge(at, 1);
            measure.nudge(at, -1);
        }
        for (int at = 0; at < static_cast<int>(off.size()); ++at)
            if (off[static_cast<std::size_t>(at)] != 0)
                measure.nudge(at, off[static_cast<std::size_t>(at)]);
        if (QQuickItem *column = anyItem(*stage.window, QStringLiteral("sheets")))
            column->setProperty("shows", QStringLiteral("measure"));
    };
}

} // namespace

namespace {

/// Something is noted of the first block.
std::function<void()> noted(const Stage &stage)
{
    return [&log = stage.room->log()] {
        log.setBlock(QStringLiteral("A1"));
        log.toggleFlag(QStringLiteral("pleat"));
        log.setWords(QStringLiteral("near the lower edge, 1 in"));
        (void)log.save();
    };
}

} // namespace

void trimStates(States &states)
{
    const Station trim = Station::Trim;
    states.add("trim-apart", trim, until(Does::RoughApart, 1));
    // The last block of a strip is apart already; and all that is to be cut or trimmed is done.
    states.add("trim-alone", trim,
               [](const Project &p) { return upTo(p, Does::RoughApart, plan(p).strip.perStrip - 1); });
    states.add("cut-finished", Station::Cut, until(Does::LastLook));
    states.add("trim-finished", trim, until(Does::LastLook));
    states.add("trim-harvest", trim, [](const Project &p) {
        Project project = p;
        project.strip.harvest = true;
        return upTo(project, Does::HarvestShort);
    });
    const auto finding = [&](const char *name, std::array<int, 6> off) {
        states.add(name, trim, until(Does::TrimBlock), measured(states.stage(), off));
    };
    finding("finding-true", {0, 0, 0, 0, 0, 0});
    finding("finding-small", {-2, -2, -2, -2, -3, -3});
    finding("finding-large", {3, 3, 3, 3, 4, 4});
    finding("finding-lean", {0, 0, 0, 0, 2, -2});
    finding("finding-leaning-far", {0, 0, 0, 0, 5, -5});
    finding("finding-tilt", {2, 0, 0, 0, 0, 2});
    finding("finding-taper", {2, 0, 0, 0, 1, 1});
    finding("finding-again", {6, 0, 0, 0, 0, 0});
    states.add("finding-rest", trim, until(Does::TrimBlock), [stage = states.stage()] {
        measured(stage, {})();
        BlockMeasure &measure = stage.room->measure();
        measure.begin(); // only the first four sides and one diagonal are read
        for (int at = 0; at < 5; ++at)
            measure.nudge(at, -6);
    });
    finding("finding-remake", {-6, -6, -6, -6, -8, -8});
    states.add(
        "finding-common", trim,
        [](const Project &p) {
            Project project = upTo(p, Does::TrimBlock);
            const Plan now = plan(project);
            const Length side = now.block.outline.along - marks(project, 2);
            const Length up = now.block.outline.across - marks(project, 2);
            int measuredSoFar = 0;
            for (MadeBlock &block : project.made.blocks)
                if (++measuredSoFar > 1 && measuredSoFar < 5)
                    block.outline = {side, up};
            return project;
        },
        measured(states.stage(), {-2, -2, -2, -2, -3, -3}));
    // The same kept with the block: what the station then shows for the cut.
    const auto kept = [&](const char *name, std::array<int, 6> off) {
        states.add(name, trim, until(Does::TrimBlock), [stage = states.stage(), off] {
            measured(stage, off)();
            (void)stage.room->measure().save();
            if (QQuickItem *column = anyItem(*stage.window, QStringLiteral("sheets")))
                column->setProperty("shows", QStringLiteral("work"));
        });
    };
    kept("trim-true", {0, 0, 0, 0, 0, 0});
    kept("trim-small", {-2, -2, -2, -2, -3, -3});
    kept("trim-remake", {-6, -6, -6, -6, -8, -8});
    kept("trim-tilt", {0, 2, 0, 0, 1, 1});
    states.add("trim-logged", trim, [](const Project &p) {
        Project project = upTo(p, Does::TrimBlock);
        const Pair planned = plan(project).block.outline;
        if (!project.made.blocks.empty())
            project.made.blocks.front().outline = {planned.along - marks(project, 4), planned.across};
        return project;
    });
    states.add("trim-noted", trim, until(Does::TrimBlock), noted(states.stage()));
    states.add("wrong-trim", trim, until(Does::TrimBlock), [stage = states.stage()] {
        if (QQuickItem *column = anyItem(*stage.window, QStringLiteral("sheets")))
            QMetaObject::invokeMethod(column, "openWrong");
    });
}

namespace {

Make joined(std::int64_t gapMarks)
{
    return [gapMarks](const Project &p) {
        Project project = upTo(p, Does::JoinShort);
        TestJoin join;
        join.seam = project.seam;
        join.gap = marks(project, gapMarks);
        project.made.testJoin = join;
        return project;
    };
}

} // namespace

void joinStates(States &states)
{
    const Station join = Station::Join;
    states.add("join-first", join, until(Does::JoinShort));
    states.add("join-noted", join, until(Does::JoinShort), noted(states.stage()));
    states.add("join-filled", join, [](const Project &p) { // wider than two allowances
        Project project = p;
        project.sashing.finished = project.seam * 3;
        return upTo(project, Does::JoinShort);
    });
    states.add("join-overlap", join, joined(-2), states.side("join-page", "test"));
    states.add("join-gapes", join, joined(3), states.side("join-page", "test"));
    states.add(
        "join-offsize", join,
        [](const Project &p) {
            Project project = upTo(p, Does::JoinShort);
            const Plan now = plan(project);
            std::int64_t number = 0;
            for (MadeBlock &block : project.made.blocks) {
                const Length off = marks(project, ++number % 4 == 2 ? -2 : 0);
                block.outline = {now.block.outline.along + off, now.block.outline.across + off};
            }
            return project;
        },
        states.side("join-page", "map"));
    states.add("join-row", join, until(Does::JoinRow), states.side("join-page", "row"));
    states.add("join-pieces", join, until(Does::JoinLong));
    states.add("join-finished", join, until(Does::SquarePiece));
    states.add("join-long", join, until(Does::JoinLongRow));
    const auto wrong = [stage = states.stage()](const char *kind) { return stage.wrong(kind); };
    states.add("wrong-join", join, until(Does::JoinShort), wrong(""));
    states.add("wrong-fold", join, until(Does::JoinShort, 1), wrong("fold-missed"));
    states.add("wrong-sewn", join, until(Does::JoinShort, 1), wrong("sewn-wrong"));
    states.add("wrong-which", join, until(Does::JoinShort), [stage = states.stage(), wrong] {
        wrong("")();
        if (QQuickItem *sheet = stage.wrongSheet())
            sheet->setProperty("asking", QStringLiteral("block-gone"));
    });
}

namespace {

/// The piece measured, its sides and diagonals so many marks off.
Make squared(std::array<int, 6> off)
{
    return [off](const Project &p) {
        Project project = upTo(p, Does::SquarePiece);
        const Readings planned = onMarks(readingsOfRectangle(plan(project).size.raw), project.finest);
        MadePiece piece{planned.sides, planned.diagonals, {}};
        for (std::size_t at = 0; at < 4; ++at)
            piece.sides[at] += marks(project, off[at]);
        for (std::size_t at = 0; at < 2; ++at)
            piece.diagonals[at] += marks(project, off[4 + at]);
        project.made.piece = piece;
        return project;
    };
}

} // namespace

void fitStates(States &states)
{
    const Station fit = Station::Fit;
    states.add("fit-figures", fit, until(Does::CutStrip), states.side("fit-page", "figures"));
    states.add("fit-made", fit, until(Does::StitchBlock, 4));
    // Two columns fewer than the blocks that are stitched.
    states.add("fit-otherwise", fit, [](const Project &p) {
        Project project = upTo(p, Does::StitchBlock, 6);
        project.blocks.columns -= 2;
        return project;
    });
}

void edgeStates(States &states)
{
    const Station edge = Station::Edge;
    const Opens measures = states.side("edge-page", "measure");
    states.add("edge-square", edge, until(Does::SquarePiece));
    states.add("edge-true", edge, squared({0, 0, 0, 0, 0, 0}), measures);
    states.add("edge-leaning", edge, squared({0, 0, 0, 0, 6, -6}), measures);
    states.add("edge-ends", edge, squared({8, 0, 0, 0, 4, 4}), measures);
    states.add("edge-again", edge, squared({0, 0, 0, 0, 30, 0}), measures);
    const auto framed = [](Does wanted, std::int64_t more) {
        return [=](const Project &p) {
            Project project = p;
            project.edge.kind = EdgeKind::Framed;
            project.edge.outside.reset();
            project.edge.seam.reset();
            return upTo(project, wanted, more);
        };
    };
    const auto backed = [](CleanBack way, Does wanted) {
        return [=](const Project &p) {
            Project project = p;
            project.build = Build::CleanBack;
            project.cleanBack = way;
            project.edge = Edge();
            project.edge.kind = way == CleanBack::Bagged ? EdgeKind::Bagged : EdgeKind::Bound;
            return upTo(project, wanted);
        };
    };
    states.add("edge-backing", edge, backed(CleanBack::Layered, Does::LayBacking));
    states.add("edge-bagged", edge, backed(CleanBack::Bagged, Does::BagOut));
    states.add("edge-frame", edge, framed(Does::SewFrame, 0));
    states.add("edge-frame-how", edge, framed(Does::SewFrame, 0), states.side("edge-page", "frame"));
    states.add("edge-framed", edge, framed(Does::SewBinding, 0));
    states.add("edge-bind", edge, until(Does::SewBinding));
    const auto cornered = [](CornerKind kind) {
        return [kind](const Project &p) {
            Project project = p;
            project.edge.corner.kind = kind;
            return upTo(project, Does::SewBinding);
        };
    };
    states.add("edge-scallops", edge, cornered(CornerKind::Scalloped), states.side("edge-page", "corners"));
    states.add("edge-round", edge, cornered(CornerKind::Round), states.side("edge-page", "corners"));
    states.add("edge-pins", edge, [](const Project &p) {
        Project project = upTo(p, Does::LastLook);
        project.made.pins = Pins{};
        project.made.pins->in = 12;
        project.made.pins->out = 11;
        return project;
    });
    states.add(
        "edge-pillow", edge,
        [](const Project &p) {
            Project project = p;
            project.edge.corner.kind = CornerKind::Round;
            return upTo(project, Does::LastLook);
        },
        states.side("edge-page", "care"));
    states.add("edge-done", edge, [](const Project &p) {
        Project project = upTo(p, Does::LastLook);
        const Plan now = plan(project);
        const std::vector<Step> all = steps(project, now);
        return withDone(project, now, all.back());
    });
}

} // namespace matside
