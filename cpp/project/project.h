// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"
#include "length/show.h"
#include "project/made.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace matside {

enum class Hand { Right, Left };
enum class Build { Reversible, CleanBack };
enum class CleanBack { Layered, Bagged };
enum class EdgeKind { Bound, Framed, Bagged };
enum class Binding { Double, Single };
enum class Sewn { Hand, Machine };
/// How the outer edge runs: square corners, rounded ones, ends as round as they can be (a square piece
/// becomes a circle), or scallops all round.
enum class CornerKind { Square, Rounded, Round, Scalloped };
enum class HoopKind { Ring, Magnetic };
enum class ClothRole { Front, Back, Batting, Patch, Web, SashingFront, SashingBack, Binding };

/// Every struct keeps what it did not understand of the file as JSON text in `rest` (an object,
/// or empty), so that a newer program's keys survive an older one.

/// A pair of sizes: along the strip (and the table's length), and across it.
struct Pair {
    Length along;
    Length across;
    friend bool operator==(const Pair &, const Pair &) = default;
};

struct Table {
    std::optional<Length> length;   ///< along
    std::optional<Length> width;    ///< across
    std::optional<Length> diameter; ///< round; then length and width are absent
    std::string rest;
    std::optional<Length> leaf = {}; ///< how much longer a leaf makes the table; absent = it has none
    bool leafIn = false;             ///< the leaf lies in the table as it is fitted

    /// Along, as the table stands with its leaf in or out; a round one grows into two halves with the leaf
    /// between them. Nothing where it was not measured.
    [[nodiscard]] std::optional<Length> along(bool withLeaf) const
    {
        const std::optional<Length> bare = diameter ? diameter : length;
        return bare && withLeaf && leaf ? *bare + *leaf : bare;
    }
    [[nodiscard]] std::optional<Length> across() const { return diameter ? diameter : width; }
    /// The leaf as it lies; nothing of it while it is out.
    [[nodiscard]] Length leafLying(bool in) const { return in ? leaf.value_or(Length()) : Length(); }
    friend bool operator==(const Table &, const Table &) = default;
};

struct Blocks {
    std::int64_t columns = 3;    ///< counted along, 1…1000
    std::int64_t rows = 3;       ///< 1…1000
    Length width;                ///< outline along
    Length height;               ///< outline across
    std::int64_t spare = 0;      ///< with every kit
    std::int64_t spareInAll = 0; ///< of kits made as one set, for all of them together
    std::string rest;
    friend bool operator==(const Blocks &, const Blocks &) = default;
};

struct Sashing {
    std::optional<Length> finished;  ///< visible width; absent = 2·seam
    std::optional<Length> cutBack;   ///< absent = reckoned
    std::optional<Length> allowance; ///< the block's, when it is not the seam
    std::string rest;
    friend bool operator==(const Sashing &, const Sashing &) = default;
};

struct Fold {
    Length fold_catch; ///< how far the fold passes the seam line
    Length turn;       ///< cloth used going over the bulk (e)
    bool doubled =
        false; ///< the back strip is folded lengthwise first: a fold ready made, nothing turned under
    std::string rest;
    friend bool operator==(const Fold &, const Fold &) = default;
};

/// The piece's corners, and the scallops between them.
struct Corner {
    CornerKind kind = CornerKind::Square;
    std::optional<Length> radius; ///< of the raw edge, rounded corners only; absent = 3 in | 75 mm
    std::string rest;
    std::optional<Length> depth = {}; ///< of a scallop; absent = 1 in | 25 mm
    std::int64_t along = 0;           ///< scallops on the top, and on the bottom; 0 = one to a block
    std::int64_t across = 0;          ///< on the left, and on the right; 0 = one to a block
    friend bool operator==(const Corner &, const Corner &) = default;
};

struct Edge {
    EdgeKind kind = EdgeKind::Bound;
    std::optional<Length> outside; ///< kept outside the outline; absent = the seam, or a pared allowance
    std::optional<Length> seam;    ///< binding's allowance; absent = outside
    Binding binding = Binding::Double;
    Sewn sewn = Sewn::Hand;
    Corner corner;
    std::string rest;
    friend bool operator==(const Edge &, const Edge &) = default;
};

struct Hoop {
    std::string name;
    HoopKind kind = HoopKind::Ring;
    std::optional<Pair> field; ///< absent = opening less 1/2 in foot clearance on each side (F2)
    std::optional<Pair> opening;
    std::optional<Pair> outside;    ///< needed
    std::optional<Length> sandwich; ///< thickest sandwich it holds
    std::string bracket;            ///< side the arm bracket is on: "left", "right", "" = not said
    std::string rest;
    friend bool operator==(const Hoop &, const Hoop &) = default;
};

struct Strip {
    std::optional<Length> usable; ///< absent = least usable of front, back, batting, else 40 in | 1000 mm
    Length margin;
    Length placing;
    Length sliver;
    Length tail;
    std::optional<Length> gap;
    bool frameMayOverlap = false;
    bool tails = false;
    bool harvest = false;
    /// With `harvest`: only so many gaps of each strip are widened, the first from the zero end, and never at
    /// the cost of a block; 0 = all of them.
    std::int64_t harvestGaps = 0;
    std::string rest;
    friend bool operator==(const Strip &, const Strip &) = default;
};

/// A piece of a cloth that is there already, usable width and length as measured.
struct OwnedPiece {
    Length length;
    Length width;
    std::string rest;
    bool package = false; ///< not there yet: it is one of the packages on the shopping list
    friend bool operator==(const OwnedPiece &, const OwnedPiece &) = default;
};

/// A size a cloth is sold ready cut in, as batting is in packages (F17).
struct Package {
    Length length;
    Length width;
    std::optional<std::string> price; ///< of one package, the decimal as written
    std::string rest;
    friend bool operator==(const Package &, const Package &) = default;
};
constexpr std::size_t mostPackages = 8;

/// As many owned pieces of a cloth as are laid out together.
constexpr std::size_t mostOwned = 8;

struct Cloth {
    std::string id;
    std::string name;
    ClothRole role = ClothRole::Front;
    std::optional<Length> usable;
    std::string soldBy;               ///< as written: "1/8 yd", "10 cm"
    Length soldStep;                  ///< the same as a length (1/8 yd | 10 cm by default)
    std::optional<std::string> price; ///< per yard | metre, the decimal as written
    std::string colour;
    bool directional = false;
    std::vector<OwnedPiece> owned; ///< used before any is bought
    std::vector<Package> packages; ///< sizes it is sold in ready cut, beside the roll
    std::string rest;
    friend bool operator==(const Cloth &, const Cloth &) = default;
};

struct Patch {
    std::string name;
    Length width;
    Length height;
    Length over;
    std::string cloth;
    std::int64_t perBlock = 1;
    std::string rest;
    friend bool operator==(const Patch &, const Patch &) = default;
};

struct Ruler {
    std::string name;
    Length length;
    Length width;
    std::optional<Length> finest;
    std::string rest;
    friend bool operator==(const Ruler &, const Ruler &) = default;
};

/// Bounds of a class: with all of them it asks for no more than the 10 000 kits a project may have.
constexpr std::int64_t mostStudents = 8'000;
constexpr std::int64_t mostSpareKits = 1'000;
constexpr std::int64_t mostMachines = 100;

/// Kits for a class: one for every student, the teacher's own, and spare ones (F28).
struct Lesson {
    std::int64_t students = 1;
    std::optional<std::int64_t> spare; ///< absent = one for every ten students begun
    std::int64_t machines = 1;         ///< hooping at the same time
    bool young = false;                ///< some are under eighteen
    std::string rest;
    [[nodiscard]] std::int64_t spareKits() const { return spare.value_or((students + 9) / 10); }
    [[nodiscard]] std::int64_t kits() const { return students + 1 + spareKits(); }
    friend bool operator==(const Lesson &, const Lesson &) = default;
};

/// One block design (stops and stitches); kept with the project, used by the Hoop station.
struct Design {
    std::string id;
    std::vector<std::string> patches;
    std::int64_t stitches = 0;
    std::string up;
    std::string rest;
    friend bool operator==(const Design &, const Design &) = default;
};

/// How the blocks are stitched, for the thread and time forecast (F19, F20). Defaults are one maker's usual
/// figures (common practice, no published source) and yield to her own after three blocks.
struct Thread {
    std::optional<Length> spacing; ///< between stippling lines; absent = 1/4 in | 6 mm
    std::optional<Length> stitch;  ///< absent = 2.5 mm
    std::optional<Length> bobbin;  ///< thread on a full bobbin; absent = 60 m
    std::int64_t speed = 600;      ///< stitches a minute
    bool trimAtStops = false;      ///< patches are trimmed at each stop, else off the machine
    bool sashingLine = false;      ///< one decorative line down every sashing
    std::string rest;
    friend bool operator==(const Thread &, const Thread &) = default;
};

/// What the maker decides. Values as in the project file; absent optionals are reckoned by `basis.h`.
struct Project {
    std::string name;
    System system = System::Inch;
    Length finest;
    Hand hand = Hand::Right;
    std::optional<Table> table;
    Blocks blocks;
    std::vector<Design> designs;
    std::vector<std::vector<std::string>> layout;
    Build build = Build::Reversible;
    CleanBack cleanBack = CleanBack::Layered;
    Length seam;
    Sashing sashing;
    Fold fold;
    Length loft;
    DrawUp drawUp;
    Edge edge;
    Hoop hoop;
    Strip strip;
    Thread thread;
    std::vector<Cloth> cloths;
    std::vector<Patch> patches;
    std::vector<Ruler> rulers;
    std::int64_t kits = 1;        ///< those of `lesson` where there is one
    std::optional<Lesson> lesson; ///< key "class"
    bool kitsShareStrips = false;
    Length slack;
    Made made;
    std::string rest;

    [[nodiscard]] Marks marks() const { return {system, finest}; }
    friend bool operator==(const Project &, const Project &) = default;
};

/// A project with every default of its system (design page 5.1); 3 × 3 blocks of 6 in | 150 mm,
/// no hoop sizes, no cloths, the two rulers most makers own (24 × 6 and 12 1/2 in square | 600 × 150 and 300
/// mm).
[[nodiscard]] Project freshProject(System system);

/// Kits that are made as one set, of shared strips and for no class: they share some spare blocks too.
[[nodiscard]] bool isOneSet(const Project &project);
/// Blocks that all kits share as spares; none where they are not one set.
[[nodiscard]] std::int64_t sparesOfSet(const Project &project);
/// Blocks to stitch for one kit, its spares with them.
[[nodiscard]] std::int64_t blocksOfKit(const Project &project);
/// All blocks are stitched one strip after another, whichever kit they are for.
[[nodiscard]] bool onSharedStrips(const Project &project);
/// Blocks to stitch for all kits, every spare with them.
[[nodiscard]] std::int64_t blocksInAll(const Project &project);
/// One spare block for every twelve, or part of twelve (trade notes, remaking a block; common practice).
[[nodiscard]] std::int64_t usualSpares(std::int64_t blocks);

/// The cloth that plays a part, or nullptr. Sashings and binding fall back on nothing: ask `Basis`.
[[nodiscard]] const Cloth *clothFor(const Project &project, ClothRole role);
/// The listed cloth of an id, or nullptr.
[[nodiscard]] const Cloth *clothNamed(const Project &project, std::string_view id);
/// How cloth is sold where nothing is said: by 1/8 yd | 10 cm.
[[nodiscard]] Length usualSoldStep(System system);

/// The same piece in whole millimetres (a copy: nothing of `made` goes with it). Each length goes to the
/// nearest millimetre, what stood at its inch default to the metric one, widths of so many seams stay so
/// many; prices per yard become prices per metre. A metric project keeps its numbers.
[[nodiscard]] Project inWholeMillimetres(const Project &inches);

} // namespace matside
