// SPDX-License-Identifier: MIT
#pragma once

#include "bench/ruler.h"
#include "bench/step.h"

#include <set>

namespace matside {

/// What the steps are built from, and the steps so far.
struct Bench {
    const Project &project;
    const Plan &plan;
    std::vector<Step> steps;
    std::set<std::string> straight; ///< cloths whose end is square already
    bool trial = false;             ///< the steps being added belong to the trial
};

/// A cloth's id; where none is listed its role's name, made different from every listed id.
[[nodiscard]] std::string clothId(const Project &project, ClothRole role);
/// Sashings and binding without a cloth of their own come from the front's or the back's.
[[nodiscard]] std::string bandCloth(const Project &project, ClothRole role);
/// The figure of a join: what is turned under, or the catch of a doubled strip, or with a clean back the
/// visible sashing.
[[nodiscard]] std::string joinFigure(const Plan &plan);
[[nodiscard]] bool reversible(const Project &project);
/// Blocks to stitch for all kits, spares included.
[[nodiscard]] std::int64_t blocksWanted(const Project &project);

/// Begins a step: its id from the trial, what it does, a number where one cloth has several, and its cloth.
Step &add(Bench &bench, Station station, Does does, std::int64_t count, const std::string &cloth = {},
          std::int64_t number = 0);
/// Squares a cloth's end, once.
void straighten(Bench &bench, const std::string &cloth);
/// A strip cut across a cloth: width × usable.
Step &cutAcross(Bench &bench, Does does, const std::string &cloth, std::int64_t count, Pair size,
                Length usedLength, std::int64_t number = 0);
/// Cuts a strip along the selvage: run × width, on cloth folded once, cut end to cut end.
Step &cutAlong(Bench &bench, const std::string &cloth, std::int64_t count, Pair size, Length longest);
/// A strip that comes right across elsewhere is cut to its length from bands along the selvage, where there
/// are any.
void crossCutFrom(const Bench &bench, Step &cut, const std::vector<Piece> &bands);
/// Cuts the bands a fixed layout takes a step's pieces from, where that is not done yet, and gives them back;
/// none where the layout is not fixed or the pieces come straight from the cloth.
std::vector<Piece> bandsFrom(Bench &bench, const std::string &cloth, const std::string &does,
                             const char *sashingFigure = "");
/// How a step's pieces lie in the bands of a fixed layout: either way round where the cloth has no direction.
/// The ruler then lies for the next of them; the places are filled in the order of the strips.
void lieInBands(const Project &project, Step &step);
/// Some of these bands are wider than the pieces: each is to be trimmed once more.
bool bandsAreWider(const Bench &bench, const std::string &cloth, const std::string &does);

/// A hoop strip comes out of these bands, where there are any; on a wide roll two or more lie side by side.
void stripsOutOf(const Bench &bench, Step &cut, const std::vector<Piece> &bands);

/// Batting strips for a frame or for wide sashings, so many for each kit, each as long as the batting is
/// reckoned; none: no step.
void cutFiller(Bench &bench, Does does, std::int64_t strips, Length width, const char *figure,
               const char *makes);

/// The centre line and a tick at every place of a layered strip; with harvest also the gaps between them.
Step &markStrip(Bench &bench, std::int64_t count, const char *takes, const char *places);

void addTrial(Bench &bench);
void addBlocks(Bench &bench);
void addSashings(Bench &bench);
void addJoining(Bench &bench);
/// The framed edge: its strips and its batting cut, and sewn to the squared piece, left and right first;
/// gives back the piece it makes.
std::vector<Piece> addFrame(Bench &bench);

} // namespace matside
