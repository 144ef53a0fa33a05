// SPDX-License-Identifier: MIT
#pragma once

#include "length/lengthwords.h"
#include "plan/plan.h"
#include "project/codec.h"

#include "testing.h"
#include <QByteArray>
#include <QString>

#include <random>

/// Short ways of building projects for tests. The three hoops are invented and are nobody's product.
namespace planhelp {

using namespace matside;

inline Length in(std::int64_t whole, std::int64_t num = 0, std::int64_t den = 1)
{
    return Length::inches(whole, num, den);
}

inline Hoop hoopP()
{
    Hoop hoop;
    hoop.name = "P";
    hoop.kind = HoopKind::Ring;
    hoop.field = Pair{in(7, 7, 8), in(7, 7, 8)};
    hoop.opening = Pair{in(8, 1, 2), in(8, 1, 2)};
    hoop.outside = Pair{in(9, 3, 4), in(9, 3, 4)};
    return hoop;
}
inline Hoop hoopQ()
{
    Hoop hoop;
    hoop.name = "Q";
    hoop.kind = HoopKind::Magnetic;
    hoop.field = Pair{in(9, 1, 4), in(9, 1, 4)};
    hoop.opening = Pair{in(9, 3, 4), in(9, 3, 4)};
    hoop.outside = Pair{in(11, 1, 4), in(11, 1, 4)};
    return hoop;
}
inline Hoop hoopR()
{
    Hoop hoop;
    hoop.name = "R";
    hoop.kind = HoopKind::Ring;
    hoop.field = Pair{in(5, 1, 8), in(7, 1, 8)};
    hoop.opening = Pair{in(5, 5, 8), in(7, 5, 8)};
    hoop.outside = Pair{in(6, 3, 4), in(8, 3, 4)};
    return hoop;
}

/// Blocks of one size in a hoop, everything else as a fresh inch project has it.
inline Project piece(std::int64_t columns, std::int64_t rows, Length block, Hoop hoop, Length usable)
{
    Project project = freshProject(System::Inch);
    project.blocks.columns = columns;
    project.blocks.rows = rows;
    project.blocks.width = project.blocks.height = block;
    project.hoop = std::move(hoop);
    project.strip.usable = usable;
    return project;
}

/// Case 5 of the worked cases: whole millimetres throughout.
inline Project metricPiece()
{
    Project project = freshProject(System::Metric);
    project.blocks.columns = 3;
    project.blocks.rows = 4;
    project.blocks.width = project.blocks.height = Length::mm(150);
    project.hoop.kind = HoopKind::Ring;
    project.hoop.field = Pair{Length::mm(200), Length::mm(200)};
    project.hoop.outside = Pair{Length::mm(248), Length::mm(248)};
    project.strip.usable = Length::mm(1060);
    project.edge.outside = Length::mm(12);
    project.edge.seam = Length::mm(6);
    return project;
}

inline bool has(const std::vector<Problem> &found, std::string_view code)
{
    return std::any_of(found.begin(), found.end(), [&](const Problem &p) { return p.code == code; });
}

inline QByteArray codes(const std::vector<Problem> &found)
{
    QByteArray all;
    for (const Problem &problem : found)
        all += QByteArray::fromStdString(problem.code + " at " + problem.at + "; ");
    return all;
}

/// Seed and count of a long run, or the usual ones.
inline std::uint64_t seed(std::uint64_t usual)
{
    return qEnvironmentVariableIsSet("MATSIDE_SEED") ? qEnvironmentVariable("MATSIDE_SEED").toULongLong()
                                                     : usual;
}
inline int count(int usual)
{
    return qEnvironmentVariableIsSet("MATSIDE_COUNT") ? qEnvironmentVariableIntValue("MATSIDE_COUNT") : usual;
}

/// A random project on sensible marks; not every one of them can be made.
class Chance {
public:
    explicit Chance(std::uint64_t seed) : m_engine(seed) {}
    std::int64_t between(std::int64_t least, std::int64_t most)
    {
        return std::uniform_int_distribution<std::int64_t>(least, most)(m_engine);
    }
    bool coin() { return between(0, 1) == 1; }

    Project project(System system)
    {
        const bool inch = system == System::Inch;
        const Length mark = inch ? in(0, 1, 16) : Length::mm(1);
        const auto marks = [&](std::int64_t least, std::int64_t most) { return mark * between(least, most); };
        Project p = freshProject(system);
        p.blocks.columns = between(1, 12);
        p.blocks.rows = between(1, 12);
        p.blocks.spare = between(0, 3);
        const std::int64_t unit = inch ? 16 : 25;
        p.blocks.width = marks(3 * unit, 8 * unit);
        p.blocks.height = coin() ? p.blocks.width : marks(3 * unit, 8 * unit);
        p.seam = marks(inch ? 4 : 6, inch ? 10 : 16);
        if (coin())
            p.sashing.finished = p.seam * 2 + marks(0, 4);
        p.drawUp.along = Share{between(0, 40'000)};
        p.drawUp.across = Share{between(0, 40'000)};
        p.hoop.kind = coin() ? HoopKind::Ring : HoopKind::Magnetic;
        const Length room = marks(0, unit);
        p.hoop.field = Pair{p.blocks.width + room + mark * 8, p.blocks.height + room + mark * 8};
        p.hoop.outside = Pair{p.hoop.field->along + mark * 2 * unit, p.hoop.field->across + mark * 2 * unit};
        p.strip.usable = marks(36 * unit, 46 * unit);
        p.strip.tails = between(0, 3) == 0;
        p.strip.harvest = between(0, 3) == 0;
        p.strip.harvestGaps = between(0, 2);
        p.build = between(0, 3) == 0 ? Build::CleanBack : Build::Reversible;
        p.cleanBack = coin() ? CleanBack::Layered : CleanBack::Bagged;
        p.edge.sewn = coin() ? Sewn::Hand : Sewn::Machine;
        p.edge.binding = coin() ? Binding::Double : Binding::Single;
        p.kits = between(0, 4) == 0 ? between(2, 20) : 1;
        p.kitsShareStrips = coin();
        if (between(0, 3) == 0)
            p.edge.corner = {CornerKind::Rounded, marks(unit, 4 * unit), {}};
        else if (between(0, 3) == 0)
            p.edge.corner.kind = coin() ? CornerKind::Round : CornerKind::Scalloped;
        if (p.edge.corner.kind == CornerKind::Scalloped)
            p.edge.corner.depth = marks(2, unit);
        p.fold.doubled = between(0, 3) == 0;
        return p;
    }

private:
    std::mt19937_64 m_engine;
};

} // namespace planhelp
