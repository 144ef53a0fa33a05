// SPDX-License-Identifier: MIT
#include "app/shelfpiece.h"

#include "app/figures.h"
#include "app/prints.h"
#include "app/shademodel.h"
#include "app/shelf.h"
#include "app/wording.h"
#include "bench/step.h"
#include "made/placing.h"
#include "plan/onstrip.h"
#include "project/spelling.h"

#include <QColor>

#include <algorithm>
#include <set>

namespace matside {

namespace {

/// "#rrggbb", whatever the file calls it.
QString drawn(const Project &project, std::string_view cloth)
{
    return QColor(colourDrawn(project, cloth)).name();
}

QString colourOfRole(const Project &project, ClothRole role)
{
    const Cloth *cloth = clothServing(project, role);
    return drawn(project, cloth ? cloth->id : spelling::wordFor(spelling::role, role));
}

QVariantMap faceOf(const Project &project)
{
    QVariantList designs;
    for (std::size_t i = 0; i < std::max<std::size_t>(project.designs.size(), 1); ++i) {
        QVariantList patches;
        const Design *design = i < project.designs.size() ? &project.designs[i] : nullptr;
        for (const Patch *patch : patchesOf(project, design))
            patches.append(QVariantMap{{QStringLiteral("colour"), drawn(project, patch->cloth)},
                                       {QStringLiteral("widthMm"), patch->width.asMm()},
                                       {QStringLiteral("heightMm"), patch->height.asMm()}});
        designs.append(QVariant(patches));
    }
    return {{QStringLiteral("block"), colourOfRole(project, ClothRole::Front)},
            {QStringLiteral("sashing"), colourOfRole(project, ClothRole::SashingFront)},
            {QStringLiteral("binding"), colourOfRole(project, ClothRole::Binding)},
            {QStringLiteral("back"), colourOfRole(project, ClothRole::Back)},
            {QStringLiteral("bound"), project.edge.kind == EdgeKind::Bound},
            {QStringLiteral("patches"), designs},
            {QStringLiteral("at"), designsOfBlocks(project)}};
}

TableView viewOf(const Project &project, const Plan &plan)
{
    TableView view = tableView(project, plan);
    if (view.finishedAlongMm > 0 && view.finishedAcrossMm > 0)
        return view;
    view.outlineAlongMm = project.blocks.width.asMm();
    view.outlineAcrossMm = project.blocks.height.asMm();
    view.finishedAlongMm = view.outlineAlongMm * view.columns;
    view.finishedAcrossMm = view.outlineAcrossMm * view.rows;
    view.sashingMm = view.edgeMm = 0;
    return view;
}

/// Of a class it is the first piece that is drawn; the blocks of all of them are counted.
void tellBlocks(const Project &project, ShelfPiece &piece)
{
    std::set<std::string> good;
    for (const MadeBlock &block : project.made.blocks)
        if (block.good())
            good.insert({block.block, block.replaces});
    const std::vector<std::string> names = blockNames(project);
    const auto laid = static_cast<std::size_t>(project.blocks.columns * project.blocks.rows);
    const std::size_t each = laid + static_cast<std::size_t>(project.blocks.spare);
    std::size_t made = 0, all = 0;
    for (std::size_t i = 0; i < names.size(); ++i)
        // Behind a piece's blocks stand its spares, behind all pieces those that they share.
        if (i % each < laid && i < each * static_cast<std::size_t>(project.kits)) {
            ++all;
            made += good.contains(names[i]) ? std::size_t{1} : 0;
        }
    const std::vector<std::string> places(
        names.begin(), names.begin() + static_cast<std::ptrdiff_t>(std::min(laid, names.size())));
    for (const std::string &label : laidOut(project, places))
        piece.made.append(good.contains(label));
    //: how many of a piece's blocks are stitched
    piece.stitched = Shelf::tr("%1 of %2 blocks stitched").arg(made).arg(all);
}

void tellSteps(const Project &project, const std::vector<Step> &all, ShelfPiece &piece)
{
    std::int64_t done = 0, count = 0;
    for (const Step &step : all)
        if (!step.trial) {
            done += std::min(step.done, step.count);
            count += step.count;
        }
    piece.share = count > 0 ? static_cast<double>(done) / static_cast<double>(count) : 0;
    const auto next = nextStep(all);
    piece.goesOn = next.has_value();
    //: on the shelf, what pressing a piece goes on with: the next step
    piece.next = next ? Shelf::tr("Go on: %1").arg(doesText(all[*next], project)) : Shelf::tr("Finished");
}

} // namespace

ShelfPiece shelfPiece(const Project &project)
{
    const Plan plan = matside::plan(project);
    ShelfPiece piece;
    piece.metric = project.system == System::Metric;
    piece.view = viewOf(project, plan);
    piece.face = faceOf(project);
    tellBlocks(project, piece);
    if (!plan.problems.empty()) {
        piece.next = sentence(plan.problems.front(), project.marks());
        return piece;
    }
    const Marks marks = project.marks();
    //: the finished size of a piece: its length and its width
    piece.size = Shelf::tr("%1 by %2")
                     .arg(braced(plan.size.finished.along, marks), braced(plan.size.finished.across, marks));
    tellSteps(project, steps(project, plan), piece);
    return piece;
}

} // namespace matside
