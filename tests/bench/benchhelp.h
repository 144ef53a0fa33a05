// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"
#include "plan/planhelp.h"

/// Short ways of looking at steps.
namespace benchhelp {

using namespace matside;
using planhelp::in;

/// How many of one thing are made in all.
inline std::int64_t total(const std::vector<Step> &all, Does does, bool trial = false)
{
    std::int64_t sum = 0;
    for (const Step &step : all)
        if (step.does == does && step.trial == trial)
            sum += step.count;
    return sum;
}

/// The first step of an id; its place in the order is what most tests ask for.
inline std::ptrdiff_t placeOf(const std::vector<Step> &all, std::string_view id)
{
    const auto found = std::find_if(all.begin(), all.end(), [&](const Step &step) { return step.id == id; });
    return found == all.end() ? -1 : found - all.begin();
}

inline std::vector<Step> stepsOf(const Project &project)
{
    return steps(project, plan(project));
}

inline bool cutsSashing(const Step &step)
{
    return step.does == Does::CutBand || step.does == Does::CutShort || step.does == Does::CutLong ||
           step.does == Does::CutLongPiece || step.does == Does::HarvestShort;
}

inline Project nineBlocks()
{
    return planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
}

/// Cloths of their own for front, back, batting and binding, 40 1/2 in wide, sold by 1/8 yd; nothing tried.
inline Project nineBlocksOfCloth()
{
    Project project = nineBlocks();
    for (const auto &[id, role] :
         {std::pair("ground", ClothRole::Front), std::pair("back", ClothRole::Back),
          std::pair("batting", ClothRole::Batting), std::pair("edge", ClothRole::Binding)}) {
        Cloth cloth;
        cloth.id = cloth.name = id;
        cloth.role = role;
        cloth.usable = in(40, 1, 2);
        cloth.soldBy = "1/8 yd";
        cloth.soldStep = in(4, 1, 2);
        project.cloths.push_back(std::move(cloth));
    }
    project.made.trialPutOff = true;
    return project;
}

inline Project exampleProject()
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    if (!file.open(QIODevice::ReadOnly))
        qFatal("the example project is missing");
    const QByteArray text = file.readAll();
    const auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())});
    if (!read.ok())
        qFatal("the example project does not read");
    return read.value().project;
}

} // namespace benchhelp
