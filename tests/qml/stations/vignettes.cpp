// SPDX-License-Identifier: MIT
//
// Every vignette the program can name: of the answers, of the edge in all its kinds, and of the steps.
#include "stage.h"

#include "app/edgewords.h"
#include "app/wording.h"
#include "project/codec.h"

#include <QFile>

#include <set>

using namespace matside;

namespace {

using Codes = std::set<QString>;

void gather(Codes &codes, const Acts &acts)
{
    for (const Act &act : acts)
        codes.insert(act.draws);
}

/// The piece with each kind of edge, one or two faces, and a frame longer than its cloth is wide.
std::vector<Project> pieces(const Project &from)
{
    std::vector<Project> all;
    for (const Build build : {Build::Reversible, Build::CleanBack})
        for (const EdgeKind edge : {EdgeKind::Bound, EdgeKind::Framed})
            for (const CornerKind corner : {CornerKind::Square, CornerKind::Round, CornerKind::Scalloped})
                for (const std::int64_t columns : {std::int64_t{2}, std::int64_t{9}}) {
                    Project project = from;
                    project.build = build;
                    project.edge = Edge();
                    project.edge.kind = edge;
                    project.edge.corner.kind = corner;
                    project.blocks.columns = columns;
                    project.layout.clear();
                    all.push_back(project);
                }
    return all;
}

void gatherEdge(Codes &codes, const Project &project)
{
    const Plan made = plan(project);
    gather(codes, bindingSewActs(project, made));
    gather(codes, frameActs(project, made));
    gather(codes, useActs(project, made));
    if (!made.binding)
        return;
    for (const JoinsClear clears : {JoinsClear::Both, JoinsClear::Corners, JoinsClear::Nothing}) {
        BindingLay lay;
        lay.clears = clears;
        lay.oneMore = true;
        gather(codes, bindingLayActs(project, made, lay));
    }
}

} // namespace

QStringList Stage::vignettes() const
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const auto read = readProject(file.readAll().toStdString());
    if (!read.ok())
        return {};
    const Project &piece = read.value().project;
    Codes codes;
    for (const Worded &worded : saidWords())
        gather(codes, actsOf({std::string(worded.code), {}}, piece, {}));
    for (const Project &project : pieces(piece))
        gatherEdge(codes, project);
    gather(codes, careActs());
    return {codes.begin(), codes.end()};
}

QStringList Stage::stepsDone() const
{
    QStringList names;
    for (int does = 0; does <= static_cast<int>(Does::CutAlong); ++does)
        names += QString::fromStdString(nameOf(static_cast<Does>(does)));
    return names;
}
