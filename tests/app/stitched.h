// SPDX-License-Identifier: MIT
#pragma once

#include "app/blockmeasure.h"
#include "app/desk.h"
#include "app/joinmodel.h"
#include "app/trimmodel.h"

namespace matside::stitched {

/// Case 1 of the trade notes with 7 in blocks in a large field, stitched, pressed and cut apart.
inline Project topper(int trimmed = 0)
{
    Project project = freshProject(System::Inch);
    project.name = "Topper";
    project.blocks.width = project.blocks.height = Length::inches(7);
    project.strip.usable = Length::inches(40, 1, 2);
    project.hoop.field = Pair{Length::inches(9, 1, 4), Length::inches(9, 1, 4)};
    project.hoop.opening = Pair{Length::inches(9, 3, 4), Length::inches(9, 3, 4)};
    project.hoop.outside = Pair{Length::inches(11, 1, 4), Length::inches(11, 1, 4)};
    project.made.trialPutOff = true;
    for (int i = 0; i < 9; ++i) {
        MadeBlock block;
        block.block = std::string(1, static_cast<char>('A' + i / 3)) + std::to_string(i % 3 + 1);
        block.strip = i / 4 + 1;
        block.place = i % 4 + 1;
        block.state = i < trimmed ? BlockState::Trimmed : BlockState::Stitched;
        project.made.blocks.push_back(block);
    }
    for (const char *does : {"press-block", "rough-apart"})
        project.made.cut.push_back({"", does, 9, 0, {}});
    return project;
}

struct Desk : desk::Open {
    using Open::Open;
    TrimModel trim{workspace, steps};
    BlockMeasure measure{workspace, session, steps};
    JoinModel join{workspace, session, steps};
};

} // namespace matside::stitched
