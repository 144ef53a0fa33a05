// SPDX-License-Identifier: MIT
#include "plan/parts.h"

#include <vector>

namespace matside {

namespace {

/// Strips for two sides and two ends: whole pieces from as few as hold them, the longest first; where one is
/// longer than the cloth is wide all are sewn end to end, each join taking both its seams.
std::int64_t stripsFor(Length sides, Length ends, Length usable, Length joinSeam)
{
    if (usable <= joinSeam * 2 || !sides.valid() || !ends.valid())
        return 0;
    if (max(sides, ends) > usable)
        return ((sides + ends - joinSeam) * 2).ceilDiv(usable - joinSeam * 2);
    std::vector<Length> left;
    const Length longer = max(sides, ends);
    const Length shorter = min(sides, ends);
    for (const Length piece : {longer, longer, shorter, shorter}) {
        bool laid = false;
        for (Length &rest : left) {
            laid = piece <= rest;
            if (!laid)
                continue;
            rest -= piece;
            break;
        }
        if (!laid)
            left.push_back(usable - piece);
    }
    return static_cast<std::int64_t>(left.size());
}

} // namespace

std::optional<FramePlan> planFrame(const Project &project, const Basis &basis, const SizePlan &size,
                                   const Measures &m)
{
    if (!isFramed(project))
        return std::nullopt;
    FramePlan frame;
    frame.width = basis.outside - basis.edgeSeam;
    frame.cut = basis.seam + basis.outside;
    frame.filler = basis.outside - basis.allowance;
    frame.sides = size.raw.across;
    frame.ends = size.finished.along;
    frame.spare = m.longSpare;
    const Length sides = frame.sides + frame.spare;
    const Length ends = frame.ends + frame.spare;
    frame.frontStrips = stripsFor(sides, ends, basis.usableSashFront, m.joinSeam);
    frame.joined = max(sides, ends) > basis.usableSashFront;
    if (project.build == Build::Reversible) {
        frame.backStrips = stripsFor(sides, ends, basis.usableSashBack, m.joinSeam);
        frame.joined = frame.joined || max(sides, ends) > basis.usableSashBack;
    }
    frame.fillerStrips = stripsFor(sides, ends, basis.usableBatting, Length()); // butted, not sewn
    return frame;
}

} // namespace matside
