// SPDX-License-Identifier: MIT
//
// Something's wrong at the edge of the piece (F14, F24, F25).
#include "bench/mishapcase.h"

#include "plan/formulas.h"

namespace matside {

Answered cutIntoEdge(const Case &at)
{
    const Length left = *at.measure;
    const Length outside = at.plan.basis.outside;
    const Length seam = at.plan.binding ? at.plan.basis.edgeSeam : outside;
    const Length notch = outside - left;
    const Told shown{left, Round::Fine};
    // The binding lies over its seam's width; while half of that is cloth, the seam holds.
    if (notch <= seam.scaled(1, 2))
        return unchanged(at, {{"edge-covered", {Told{max(notch, Length()), Round::Fine}}}});
    if (left >= measures(at.project.system).leastFold)
        return unchanged(at, {{"edge-narrower", {shown, Told{notch, Round::Fine}}}, {"measure-round", {}}});
    return unchanged(at, {{"patch-edge", {shown}}});
}

Answered pieceOff(const Case &at, Length off)
{
    const Told by{off.magnitude(), Round::Fine};
    if (off > Length())
        return unchanged(at, {{"trim-again", {by}}, {"measure-round", {}}});
    return unchanged(at, {{"piece-smaller", {by}}, {"measure-round", {}}});
}

} // namespace matside
