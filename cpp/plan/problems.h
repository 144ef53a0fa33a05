// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

namespace matside {

/// What stops the piece being made as it stands, each with the nearest values that work.
///
/// Codes and their arguments, in order:
/// hoop-unknown () · field-over-hoop (field or opening, outside) · sent-over-field (sent, field) ·
/// sashing-under-allowances (finished, 2·allowance) · allowance-pared-too-far (allowance, least) ·
/// outside-over-allowance (outside, allowance) · gap-under-seams (gap, 2·seam) · gap-under-reach (gap, reach)
/// · frame-may-overlap-ring () · no-block-on-strip (missing, missing with tails) · fold-too-small (fold,
/// least) · catch-out-of-range (catch, least, most) · binding-wider-than-cloth (binding, cloth) ·
/// draw-up-out-of-range (draw-up, most) · short-longer-than-cloth (short, cloth) ·
/// long-cannot-be-joined (cloth, least)
///
/// Offer codes and arguments: set-block, set-finished, set-seam, set-allowance, set-outside, set-gap,
/// set-cut-back, set-catch, set-binding-seam, set-usable, set-draw-up (the value) · choose-framed,
/// reckon-gap, reckon-cut-back, frame-clear, sew-tails, forget-test-block ()
[[nodiscard]] std::vector<Problem> problemsOf(const Project &project, const Plan &plan);

/// What can be made but should be looked at:
/// hoop-is-close (room, wanted) · edge-seam-over-outside (seam, outside) · margin-is-small (margin, least) ·
/// strip-is-tight (remainder, blocks per strip) · lip-is-wide (catch, most) · harvest-is-short (piece, short
/// with spare) · gap-under-allowances (gap, 2·allowance) · frame-on-last-block (overlap) · stiff-lip
/// (overhang, least) · corner-hangs (overhang, least) · leaf-in-lip (overhang, least) · leaf-out-lip
/// (overhang, least)
///
/// Offer codes: as above, and match-edge-seam, set-margin (the value).
[[nodiscard]] std::vector<Problem> cautionsOf(const Project &project, const Plan &plan);

/// Writes an offer's value into the project itself, for looking ahead. False when the pointer is not one
/// that offers use.
bool applyTo(Project &project, const Offer &offer);

/// Keeps only those offers that, taken alone, remove the problem (or caution) they are offered for.
void keepWorkingOffers(const Project &project, std::vector<Problem> &found, bool cautions);

} // namespace matside
