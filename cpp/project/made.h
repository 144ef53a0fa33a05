// SPDX-License-Identifier: MIT
#pragma once

#include "project/laid.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace matside {

enum class BlockState { Stitched, Trimmed, Joined, Spoiled, Lost };

struct MadeCloth {
    std::string cloth;
    std::optional<Length> usable;
    std::optional<Length> length;
    bool prewashed = false;
    std::string rest;
    friend bool operator==(const MadeCloth &, const MadeCloth &) = default;
};

/// Sizes along and across.
struct TestBlock {
    std::array<Length, 2> sent;
    std::array<Length, 2> outline;
    std::string rest;
    friend bool operator==(const TestBlock &, const TestBlock &) = default;
};

/// What mends the gap the test join showed: the seam (F9), or strips cut anew to another width.
enum class MendedBy { Seam, Strip };

struct TestJoin {
    std::optional<Length> seam;    ///< as sewn
    std::optional<Length> gap;     ///< between the allowances; negative: they overlap
    std::optional<Length> between; ///< distance between the two seam lines, on the back
    std::optional<Length> loft;
    std::string rest;
    MendedBy mend = MendedBy::Seam; ///< key "mend", written when it is not the seam
    friend bool operator==(const TestJoin &, const TestJoin &) = default;
};

struct MadeOutline {
    Length from;
    Length to;
    std::string rest;
    friend bool operator==(const MadeOutline &, const MadeOutline &) = default;
};
struct MadeStrip {
    std::int64_t strip = 1;
    std::optional<Length> ended;  ///< where the last outline really ended
    std::optional<Length> usable; ///< the strip's own measured end; absent = as planned
    bool closed = false;          ///< takes no further block
    std::vector<MadeOutline> outlines;
    std::string rest;
    friend bool operator==(const MadeStrip &, const MadeStrip &) = default;
};
struct MadeBlock {
    std::string block; ///< "A1": row letter from the top, column from the left, front view
    std::int64_t strip = 0;
    std::int64_t place = 0;
    std::optional<std::array<Length, 2>> sent;      ///< size given to the machine: along, across
    std::optional<std::array<Length, 2>> outline;   ///< stitched outline off the hoop: along, across
    std::optional<std::array<Length, 4>> sides;     ///< top, right, bottom, left
    std::optional<std::array<Length, 2>> diagonals; ///< from top left, from top right
    BlockState state = BlockState::Stitched;
    std::int64_t minutes = 0; ///< at the machine; 0 = not timed
    std::string replaces;     ///< the block whose place it takes
    std::string lies;         ///< the place it was laid at when that is not its own; its label stays
    std::vector<std::string> notes;
    std::string rest;
    /// Neither spoiled nor lost.
    [[nodiscard]] bool good() const { return state != BlockState::Spoiled && state != BlockState::Lost; }
    friend bool operator==(const MadeBlock &, const MadeBlock &) = default;
};
struct MadeRow {
    std::string row;
    Length length;
    std::vector<Length> joins; ///< centres of its short sashings from the row's raw left end
    std::string rest;
    friend bool operator==(const MadeRow &, const MadeRow &) = default;
};
/// Progress of a step: `does` and `cloth` name it (the step's `id` is "does/cloth" with the phase).
struct MadeCut {
    std::string cloth;
    std::string does;
    std::int64_t count = 0;
    std::int64_t spoiled = 0;
    std::string rest;
    friend bool operator==(const MadeCut &, const MadeCut &) = default;
};
/// Something that happened, in order: the place in the list is the counter.
struct MadeEvent {
    std::string event; ///< "new-bobbin", "spoiled", "strip-torn"…
    std::string does;  ///< progress name of the step it happened at
    std::string cloth;
    std::string block;
    std::int64_t strip = 0;
    std::int64_t count = 0; ///< pieces it concerns; for a new bobbin the blocks stitched before it
    std::optional<Length> length;
    std::string rest;
    std::string id =
        {}; ///< made where it was noted, so that two tablets' lists can be told apart; older: empty
    friend bool operator==(const MadeEvent &, const MadeEvent &) = default;
};
struct Pins {
    std::int64_t in = 0;
    std::int64_t out = 0;
    bool explained = false; ///< they differ, and she knows why
    std::string rest;
    /// Counted, and as many out as in unless it was explained.
    [[nodiscard]] bool settled() const { return explained || (in == out && in > 0); }
    friend bool operator==(const Pins &, const Pins &) = default;
};

/// The whole piece measured before its edge is trimmed, with a tape.
struct MadePiece {
    std::array<Length, 4> sides;     ///< top, right, bottom, left
    std::array<Length, 2> diagonals; ///< from top left, from top right
    std::string rest;
    friend bool operator==(const MadePiece &, const MadePiece &) = default;
};

/// Draw-up along and across.
struct DrawUp {
    Share along;
    Share across;
    std::string rest;
    friend bool operator==(const DrawUp &, const DrawUp &) = default;
};

/// What really happened.
struct Made {
    std::vector<MadeCloth> cloths;
    std::optional<TestBlock> testBlock;
    std::optional<TestJoin> testJoin;
    std::optional<DrawUp>
        drawUp;               ///< of the first blocks, taken for those to come; stands over the test block
    bool trialPutOff = false; ///< key "trial": "put-off"
    std::vector<MadeStrip> strips;
    std::vector<MadeBlock> blocks;
    std::vector<MadeRow> rows;
    std::vector<MadeCut> cut;
    std::optional<MadePiece> piece;
    std::optional<Pins> pins;
    std::vector<MadeEvent> events;
    std::vector<MadeLayout> layouts; ///< at most one a cloth
    std::string rest;
    friend bool operator==(const Made &, const Made &) = default;
    /// True once anything was cut, stitched or measured: such a piece keeps its unit system.
    [[nodiscard]] bool started() const;
    /// The record of a strip, or of a cloth; begun when there is none yet.
    MadeStrip &recordOf(std::int64_t strip);
    MadeCloth &recordOf(const std::string &cloth);
    /// The fixed layout of a cloth, or nullptr.
    [[nodiscard]] const MadeLayout *layoutOf(std::string_view cloth) const;
    /// The good block of a name, or nullptr.
    [[nodiscard]] const MadeBlock *goodBlock(std::string_view name) const;
    [[nodiscard]] MadeBlock *goodBlock(std::string_view name);
};

} // namespace matside
