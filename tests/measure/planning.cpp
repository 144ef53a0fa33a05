// SPDX-License-Identifier: MIT
#include "planning.h"

#include "plan/plan.h"

#include <cstdio>
#include <string>

namespace measure {

using namespace matside;

namespace {

/// Keeps the compiler from leaving out work whose result nobody reads.
std::int64_t used = 0;

Plan timed(const Project &project, Times &times)
{
    const auto start = std::chrono::steady_clock::now();
    Plan planned = plan(project);
    times.add(std::chrono::steady_clock::now() - start);
    used += planned.size.finished.along.count();
    return planned;
}

} // namespace

Project largePiece()
{
    Project project = freshProject(System::Inch);
    project.blocks.columns = 30;
    project.blocks.rows = 30;
    project.blocks.width = project.blocks.height = Length::inches(6);
    project.hoop.field = Pair{Length::inches(7, 7, 8), Length::inches(7, 7, 8)};
    project.hoop.opening = Pair{Length::inches(8, 1, 2), Length::inches(8, 1, 2)};
    project.hoop.outside = Pair{Length::inches(9, 3, 4), Length::inches(9, 3, 4)};
    const ClothRole roles[] = {ClothRole::Front,        ClothRole::Back,        ClothRole::Batting,
                               ClothRole::SashingFront, ClothRole::SashingBack, ClothRole::Binding,
                               ClothRole::Web};
    for (int i = 0; i < 12; ++i) {
        Cloth cloth;
        cloth.id = "cloth-" + std::to_string(i + 1);
        cloth.name = cloth.id;
        cloth.role = i < 7 ? roles[i] : ClothRole::Patch;
        cloth.usable = Length::inches(40, 1, 2);
        cloth.soldStep = Length::inches(4, 1, 2);
        project.cloths.push_back(cloth);
        if (cloth.role == ClothRole::Patch)
            project.patches.push_back({"patch " + std::to_string(i),
                                       Length::inches(2),
                                       Length::inches(3),
                                       Length::inches(0, 1, 2),
                                       cloth.id,
                                       1,
                                       {}});
    }
    return project;
}

Planned planWhileDragging(int moves)
{
    Project project = largePiece();
    Planned planned;
    const Length step = Length::inches(0, 1, 16);
    const Length least = Length::inches(3);
    for (int move = 0; move < moves; ++move) {
        // A finger going up and down through 80 marks: 3 in to 8 in, the last of them too big for the field.
        const int at = move % 160;
        project.blocks.width = project.blocks.height = least + step * (at < 80 ? at : 160 - at);
        planned.refused += timed(project, planned.all).problems.empty() ? 0 : 1;
    }
    return planned;
}

Times planOf(int columns, int rows)
{
    Project project = largePiece();
    project.blocks.columns = columns;
    project.blocks.rows = rows;
    Times times;
    for (int i = 0; i < 200; ++i)
        timed(project, times);
    return times;
}

void planByColumns()
{
    for (const int columns : {1, 3, 10, 30, 100, 300, 1000})
        planOf(columns, 30).print("plan(), " + std::to_string(columns) + " columns x 30 rows");
    std::printf("(sum over all plans, so that none is left out: %lld)\n", static_cast<long long>(used));
}

} // namespace measure
