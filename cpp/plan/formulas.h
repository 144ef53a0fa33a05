// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"
#include "project/project.h"

namespace matside {

/// The trade's fixed measures, inch | metric, each with where it comes from. All are common practice
/// without a published standard unless a rule is named.
struct Measures {
    Length fray;           ///< 1/4 in | 6 mm kept past an allowance at a strip's edge (F1, F4)
    Length gapOpen;        ///< 1/8 in | 3 mm: a gap between two allowances that may stay open (F7)
    Length eighth;         ///< 1/8 in | 2 mm: step of gaps and end margins (F0)
    Length truing;         ///< 1/8 in | 3 mm lost in truing a harvested piece (F3)
    Length leastFold;      ///< 1/4 in | 6 mm: the least that can be pressed (F10)
    Length foldOver;       ///< 1/8 in | 3 mm the fold reaches beyond the catch (F10)
    Length leastCatch;     ///< 3/32 in | 2.4 mm (F10)
    Length mostCatch;      ///< 3/16 in | 4.8 mm (F10)
    Length usualCatch;     ///< 1/8 in | 3 mm
    Length cutStep;        ///< 1/16 in | 1 mm: back sashing is cut up to this
    Length bindingStep;    ///< 1/8 in | 1 mm: binding is cut up to this
    Length bindingHand;    ///< 1/16 in | 1.5 mm: binding's catch sewn by hand (F14)
    Length bindingMachine; ///< 1/8 in | 3 mm: caught by machine (F14)
    Length openClose;      ///< 6 in | 150 mm to each side of the closing join stay unsewn (practice)
    Length bindingTurn;    ///< 1/32 in | 0.8 mm for turns (F14)
    Length shortSpare;     ///< 1/2 in | 12 mm (F8)
    Length longSpare;      ///< 1 in | 25 mm in all (F8)
    Length joinSeam;       ///< 1/2 in | 12 mm: straight seam in a pieced sashing (F8)
    Length bagLess;        ///< 1/8 in | 3 mm: a bagged backing is cut smaller (F11)
    Length backingOver;    ///< 2 in | 50 mm: a layered backing is cut larger (F11)
    Length webLess;        ///< 1/8 in | 3 mm all round (F18)
    Length ringMargin;     ///< 1/2 in | 12 mm: least past two rings (F1)
    Length magnetMargin;   ///< 1/4 in | 6 mm: least past a magnetic frame (F1)
    Length tight;          ///< 1/4 in | 6 mm a block: less left over is tight (F5)
    Length stiffLip;       ///< 3 in | 75 mm: a shorter overhang sticks out (practice)
    Length parAtHalf;      ///< 3/8 in | 9 mm: least pared allowance at a 1/2 in | 12 mm seam (F7)
    Length parElse;        ///< 1/4 in | 6 mm otherwise (F7)
    Length halfSeam;       ///< 1/2 in | 12 mm
};
[[nodiscard]] Measures measures(System system);

/// Sent size, F21: outline / (1 − draw-up), rounded to a tick once; draw-up under 100 %.
[[nodiscard]] Length sentFor(Length outline, Share drawUp);
/// Cloth the front strip uses going over the bulk, F9: 3 t + 0.24 H with t = 0.012 in, rounded once.
[[nodiscard]] Length overTheBulk(Length loft);
/// Binding strip width, F14: double 6 b + 2 (H + k + τ), single 4 b + H + k + τ.
[[nodiscard]] Length bindingWidth(Length seam, Length loft, Length reach, Length turn, Binding binding);
/// √(a² + b²) rounded to a tick once.
[[nodiscard]] Length diagonalOf(Length a, Length b);

} // namespace matside
