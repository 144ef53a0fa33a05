// SPDX-License-Identifier: MIT
#include "app/wording.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <array>

namespace matside {

namespace {

/// What `clothId` adds to a use whose name another cloth already has.
constexpr std::string_view unnamedMark = "-cloth";

// %1 is the cloth's name.
constexpr std::array does{
    Worded{"straighten", QT_TRANSLATE_NOOP("Words", "Square the end of %1 to its fold.")},
    //: hoop strip: the strip of cloth that goes through the hoop, several blocks to a strip
    Worded{"cut-strip", QT_TRANSLATE_NOOP("Words", "Cut a hoop strip of %1.")},
    Worded{"cut-test-strip", QT_TRANSLATE_NOOP("Words", "Cut a hoop strip of %1 for the test block.")},
    //: band: a strip as long as the cloth is wide, cut across later into sashings
    Worded{"cut-band", QT_TRANSLATE_NOOP("Words", "Cut a sashing band of %1.")},
    Worded{"cut-test-band", QT_TRANSLATE_NOOP("Words", "Cut a sashing band of %1 for the test join.")},
    Worded{"cut-mixed-band", QT_TRANSLATE_NOOP("Words", "Cut a band of %1 right across.")},
    //: the band runs along the cloth's selvage instead of across the cloth
    Worded{"cut-along", QT_TRANSLATE_NOOP("Words", "Cut a band of %1 along the selvage.")},
    Worded{"cut-short", QT_TRANSLATE_NOOP("Words", "Cut a short sashing from a band of %1.")},
    Worded{"cut-long", QT_TRANSLATE_NOOP("Words", "Cut a long sashing from a band of %1.")},
    Worded{"cut-long-piece", QT_TRANSLATE_NOOP("Words", "Cut a piece of a long sashing from a band of %1.")},
    Worded{"join-long", QT_TRANSLATE_NOOP("Words", "Sew the pieces to one long sashing of %1.")},
    Worded{"harvest-short", QT_TRANSLATE_NOOP("Words", "Cut a short sashing of %1 from a gap piece.")},
    Worded{"cut-patch", QT_TRANSLATE_NOOP("Words", "Cut a patch of %1.")},
    Worded{"cut-binding", QT_TRANSLATE_NOOP("Words", "Cut a binding strip of %1.")},
    Worded{"cut-backing", QT_TRANSLATE_NOOP("Words", "Cut the backing of %1.")},
    //: bias: cut slantwise, for a binding that goes round curves
    Worded{"cut-bias", QT_TRANSLATE_NOOP("Words", "Cut a square of %1 for bias binding.")},
    Worded{"layer", QT_TRANSLATE_NOOP("Words", "Layer back, batting and front: one hoop strip.")},
    Worded{"mark-strip", QT_TRANSLATE_NOOP("Words", "Mark the strip's centre line and its places.")},
    Worded{"stitch-test", QT_TRANSLATE_NOOP("Words", "Stitch the test block.")},
    Worded{"measure-test", QT_TRANSLATE_NOOP("Words", "Measure the test block's outline, both ways.")},
    Worded{"test-join", QT_TRANSLATE_NOOP("Words", "Make the test join and measure it.")},
    //: between the allowances: under the wide sashing, from one block's allowance to the other's
    Worded{
        "test-join-filled",
        QT_TRANSLATE_NOOP(
            "Words", "Make the test join, lay its batting between the allowances, press it and measure it.")},
    Worded{"stitch-block", QT_TRANSLATE_NOOP("Words", "Stitch a block.")},
    Worded{"trim-patches", QT_TRANSLATE_NOOP("Words", "Trim the patches with scissors, the topmost first.")},
    Worded{"press-block", QT_TRANSLATE_NOOP("Words", "Press the block.")},
    Worded{"press-patched-block",
           QT_TRANSLATE_NOOP("Words", "Press the block, now that its patches are trimmed.")},
    Worded{"press-test-block", QT_TRANSLATE_NOOP("Words", "Press the test block and let it rest.")},
    Worded{"rough-apart",
           QT_TRANSLATE_NOOP("Words", "Cut the strip apart along a ruler, down the middle of each gap.")},
    Worded{"trim-block",
           QT_TRANSLATE_NOOP("Words", "Trim the block's four sides, measuring from the stitched outline.")},
    //: ditch: the line where the sashing meets the block
    Worded{"join-short",
           QT_TRANSLATE_NOOP(
               "Words", "Join two blocks with a short sashing: sew, press, sew, fold, stitch in the ditch.")},
    Worded{"join-row", QT_TRANSLATE_NOOP("Words", "Measure the row's length.")},
    Worded{"join-long-row", QT_TRANSLATE_NOOP("Words", "Join two rows with a long sashing, mark to mark.")},
    Worded{"lay-backing", QT_TRANSLATE_NOOP("Words", "Lay the backing and hold it.")},
    Worded{"bag-out",
           QT_TRANSLATE_NOOP("Words", "Sew front to back, right sides together; turn it out and close it.")},
    Worded{"square-piece", QT_TRANSLATE_NOOP("Words", "Square the piece, measuring from its sashings.")},
    Worded{"sew-binding", QT_TRANSLATE_NOOP("Words", "Sew the binding on.")},
    //: frame: a strip of sashing all round the piece, under the binding
    Worded{"cut-frame", QT_TRANSLATE_NOOP("Words", "Cut a frame strip of %1.")},
    Worded{"cut-filler", QT_TRANSLATE_NOOP("Words", "Cut a strip of %1 to fill the frame.")},
    Worded{"cut-sashing-filler", QT_TRANSLATE_NOOP("Words", "Cut a strip of %1 to fill the sashings.")},
    //: batting laid into the sashing of the test join; %1 is the batting
    Worded{"cut-test-filler",
           QT_TRANSLATE_NOOP("Words", "Cut a piece of %1 to fill the test join, as long as its strips.")},
    Worded{"sew-frame-sides",
           QT_TRANSLATE_NOOP("Words", "Sew the frame to the left and the right, and lay batting in.")},
    Worded{"sew-frame-ends",
           QT_TRANSLATE_NOOP("Words", "Sew the frame to the top and the bottom, and lay batting in.")},
    Worded{"square-frame", QT_TRANSLATE_NOOP("Words", "Square the piece with its frame.")},
    Worded{"last-look",
           QT_TRANSLATE_NOOP("Words", "Take a last look: pins counted, threads gone, measured.")},
};

// %1 is the repetition, %2 how many there are.
constexpr std::array titles{
    Worded{"straighten", QT_TRANSLATE_NOOP("Words", "Square the end")},
    Worded{"cut-strip", QT_TRANSLATE_NOOP("Words", "Strip %1 of %2")},
    //: title of the strip cut for the test block
    Worded{"cut-test-strip", QT_TRANSLATE_NOOP("Words", "Trial strip")},
    Worded{"cut-band", QT_TRANSLATE_NOOP("Words", "Band %1 of %2")},
    //: title of the band cut for the test join
    Worded{"cut-test-band", QT_TRANSLATE_NOOP("Words", "Trial band")},
    Worded{"cut-mixed-band", QT_TRANSLATE_NOOP("Words", "Band %1 of %2")},
    //: a band that runs along the selvage, %1 its number, of %2
    Worded{"cut-along", QT_TRANSLATE_NOOP("Words", "Along the selvage %1 of %2")},
    Worded{"cut-short", QT_TRANSLATE_NOOP("Words", "Short sashing %1 of %2")},
    Worded{"cut-long", QT_TRANSLATE_NOOP("Words", "Long sashing %1 of %2")},
    Worded{"cut-long-piece", QT_TRANSLATE_NOOP("Words", "Piece %1 of %2")},
    Worded{"join-long", QT_TRANSLATE_NOOP("Words", "Long sashing %1 of %2")},
    Worded{"harvest-short", QT_TRANSLATE_NOOP("Words", "Short sashing %1 of %2")},
    Worded{"cut-patch", QT_TRANSLATE_NOOP("Words", "Patch %1 of %2")},
    Worded{"cut-binding", QT_TRANSLATE_NOOP("Words", "Binding strip %1 of %2")},
    Worded{"cut-backing", QT_TRANSLATE_NOOP("Words", "Backing %1 of %2")},
    Worded{"cut-bias", QT_TRANSLATE_NOOP("Words", "Square for bias %1 of %2")},
    Worded{"layer", QT_TRANSLATE_NOOP("Words", "Strip %1 of %2")},
    Worded{"mark-strip", QT_TRANSLATE_NOOP("Words", "Strip %1 of %2")},
    Worded{"stitch-test", QT_TRANSLATE_NOOP("Words", "Test block %1 of %2")},
    Worded{"measure-test", QT_TRANSLATE_NOOP("Words", "Test block, measuring")},
    Worded{"test-join", QT_TRANSLATE_NOOP("Words", "Test join")},
    Worded{"stitch-block", QT_TRANSLATE_NOOP("Words", "Block %1 of %2")},
    Worded{"trim-patches", QT_TRANSLATE_NOOP("Words", "Block %1 of %2, patches")},
    Worded{"press-block", QT_TRANSLATE_NOOP("Words", "Block %1 of %2, pressing")},
    Worded{"press-test-block", QT_TRANSLATE_NOOP("Words", "Test block, pressing")},
    //: a block still in its strip is cut off it, roughly
    Worded{"rough-apart", QT_TRANSLATE_NOOP("Words", "Block %1 of %2, apart")},
    Worded{"trim-block", QT_TRANSLATE_NOOP("Words", "Block %1 of %2")},
    Worded{"join-short", QT_TRANSLATE_NOOP("Words", "Short join %1 of %2")},
    Worded{"join-row", QT_TRANSLATE_NOOP("Words", "Row %1 of %2")},
    Worded{"join-long-row", QT_TRANSLATE_NOOP("Words", "Long join %1 of %2")},
    Worded{"lay-backing", QT_TRANSLATE_NOOP("Words", "Backing %1 of %2")},
    Worded{"bag-out", QT_TRANSLATE_NOOP("Words", "Piece %1 of %2, turning out")},
    Worded{"square-piece", QT_TRANSLATE_NOOP("Words", "Piece %1 of %2, squaring")},
    Worded{"sew-binding", QT_TRANSLATE_NOOP("Words", "Piece %1 of %2, binding")},
    Worded{"cut-frame", QT_TRANSLATE_NOOP("Words", "Frame strip %1 of %2")},
    Worded{"cut-filler", QT_TRANSLATE_NOOP("Words", "Batting strip %1 of %2")},
    Worded{"cut-sashing-filler", QT_TRANSLATE_NOOP("Words", "Batting strip %1 of %2")},
    Worded{"cut-test-filler", QT_TRANSLATE_NOOP("Words", "Batting for the test join")},
    Worded{"sew-frame-sides", QT_TRANSLATE_NOOP("Words", "Piece %1 of %2, frame left and right")},
    Worded{"sew-frame-ends", QT_TRANSLATE_NOOP("Words", "Piece %1 of %2, frame top and bottom")},
    Worded{"square-frame", QT_TRANSLATE_NOOP("Words", "Piece %1 of %2, squaring with its frame")},
    Worded{"last-look", QT_TRANSLATE_NOOP("Words", "Piece %1 of %2, last look")},
};

// %1 is the name of the block in hand, "B2": of many that lie on the board she is told which one.
constexpr std::array titlesNamed{
    Worded{"trim-patches", QT_TRANSLATE_NOOP("Words", "Block %1, patches")},
    Worded{"press-block", QT_TRANSLATE_NOOP("Words", "Block %1, pressing")},
    //: a block still in its strip is cut off it, roughly
    Worded{"rough-apart", QT_TRANSLATE_NOOP("Words", "Block %1, apart")},
};

constexpr std::array actions{
    Worded{"cut", QT_TRANSLATE_NOOP("Words", "Cut, blade closed")},
    Worded{"straighten", QT_TRANSLATE_NOOP("Words", "Straight, blade closed")},
    Worded{"join-long", QT_TRANSLATE_NOOP("Words", "Sewn and pressed")},
    Worded{"layer", QT_TRANSLATE_NOOP("Words", "Strip layered")},
    //: on a button: all centres of the strip in hand are marked, not only one
    Worded{"mark-strip", QT_TRANSLATE_NOOP("Words", "Whole strip marked")},
    Worded{"stitch", QT_TRANSLATE_NOOP("Words", "Stitched")},
    Worded{"measure-test", QT_TRANSLATE_NOOP("Words", "Measured")},
    Worded{"test-join", QT_TRANSLATE_NOOP("Words", "Tried and measured")},
    Worded{"trim-patches", QT_TRANSLATE_NOOP("Words", "All trimmed")},
    Worded{"press-block", QT_TRANSLATE_NOOP("Words", "Pressed")},
    Worded{"rough-apart", QT_TRANSLATE_NOOP("Words", "Apart, blade closed")},
    Worded{"trim-block", QT_TRANSLATE_NOOP("Words", "Trimmed, blade closed")},
    Worded{"join", QT_TRANSLATE_NOOP("Words", "Joined")},
    Worded{"join-row", QT_TRANSLATE_NOOP("Words", "Measured")},
    Worded{"lay-backing", QT_TRANSLATE_NOOP("Words", "Laid")},
    Worded{"bag-out", QT_TRANSLATE_NOOP("Words", "Turned and closed")},
    Worded{"square-piece", QT_TRANSLATE_NOOP("Words", "Squared, blade closed")},
    Worded{"sew-frame", QT_TRANSLATE_NOOP("Words", "Sewn and pressed")},
    Worded{"sew-binding", QT_TRANSLATE_NOOP("Words", "Bound")},
    Worded{"last-look", QT_TRANSLATE_NOOP("Words", "All is well")},
};

/// A cloth the project does not name, by its use; see `clothId`.
constexpr std::array unnamed{
    Worded{"front", QT_TRANSLATE_NOOP("Words", "front cloth")},
    //: the cloth of the back
    Worded{"back", QT_TRANSLATE_NOOP("Words", "back cloth")},
    //: the layer between the cloths
    Worded{"batting", QT_TRANSLATE_NOOP("Words", "batting")},
    //: the cloth of the appliquéd patches
    Worded{"patch", QT_TRANSLATE_NOOP("Words", "patch cloth")},
    //: fusible web
    Worded{"web", QT_TRANSLATE_NOOP("Words", "web")},
    //: the strips between the blocks
    Worded{"sashing-front", QT_TRANSLATE_NOOP("Words", "sashing cloth, front")},
    Worded{"sashing-back", QT_TRANSLATE_NOOP("Words", "sashing cloth, back")},
    Worded{"binding", QT_TRANSLATE_NOOP("Words", "binding cloth")},
};

/// The name its words stand under: the test block is pressed before any patch is trimmed.
std::string wordedName(const Step &step)
{
    if (step.does == Does::CutBand && step.figure.empty() && !step.trial)
        return "cut-mixed-band"; // of another width than the sashings'
    if (step.does == Does::SewFrame)
        return step.figure == "frame.sides" ? "sew-frame-sides" : "sew-frame-ends";
    if (step.does == Does::SquarePiece && step.figure != "size.raw.along")
        return "square-frame";
    if (step.trial && step.does == Does::CutSashingFiller)
        return "cut-test-filler";
    if (step.trial && step.does == Does::CutStrip)
        return "cut-test-strip";
    if (step.trial && step.does == Does::CutBand)
        return "cut-test-band";
    return step.trial && step.does == Does::PressBlock ? "press-test-block" : std::string(nameOf(step.does));
}

} // namespace

std::span<const Worded> doesWords()
{
    return does;
}

std::span<const Worded> titleWords()
{
    return titles;
}

std::span<const Worded> actionWords()
{
    return actions;
}

QString clothText(const Project &project, std::string_view id)
{
    for (const Cloth &cloth : project.cloths)
        if (cloth.id == id)
            return toQt(cloth.name.empty() ? cloth.id : cloth.name);
    // What the project names no cloth for goes by its use, perhaps with something after it.
    while (id.ends_with(unnamedMark))
        id.remove_suffix(unnamedMark.size());
    return id.empty() ? inWords(QT_TRANSLATE_NOOP("Words", "the cloth")) : wordsOrCode(unnamed, id);
}

QString doesText(const Step &step, const Project &project)
{
    const auto filler = [](const Piece &piece) { return piece.name == "trial-sashing-filler"; };
    const bool filled = step.does == Does::TestJoin && std::ranges::any_of(step.takes, filler);
    const bool patched =
        step.does == Does::PressBlock &&
        std::ranges::any_of(step.takes, [](const Piece &piece) { return piece.name == "patched-block"; });
    const QString words = wordsOrCode(does, filled    ? "test-join-filled"
                                            : patched ? "press-patched-block"
                                                      : wordedName(step));
    return words.contains(QStringLiteral("%1")) ? words.arg(clothText(project, step.cloth)) : words;
}

QString titleText(const Step &step, std::int64_t repetition, const QString &block)
{
    if (const auto named = wordsFor(titlesNamed, wordedName(step)); named && !block.isEmpty())
        return named->arg(block);
    QString words = wordsOrCode(titles, wordedName(step));
    if (step.count == 1) { // "1 of 1" says nothing
        static const QRegularExpression counted(QStringLiteral(" ?%1[^%]*%2"));
        words.remove(counted);
    }
    words.replace(QStringLiteral("%1"), QString::number(repetition));
    words.replace(QStringLiteral("%2"), QString::number(step.count));
    return words;
}

QString actionText(const Step &step)
{
    const std::string name = nameOf(step.does);
    if (const auto words = wordsFor(actions, name))
        return *words;
    const std::string_view kind = name.starts_with("cut") || step.does == Does::HarvestShort ? "cut"
                                  : name.starts_with("stitch")                               ? "stitch"
                                                                                             : "join";
    return wordsOrCode(actions, kind);
}

QString stationText(Station station)
{
    static constexpr std::array names{//: station: deciding table, blocks, hoop and edge
                                      QT_TRANSLATE_NOOP("Words", "Fit"),
                                      //: station: what to buy
                                      QT_TRANSLATE_NOOP("Words", "Shop"), QT_TRANSLATE_NOOP("Words", "Cut"),
                                      //: station: stitching in the hoop
                                      QT_TRANSLATE_NOOP("Words", "Hoop"), QT_TRANSLATE_NOOP("Words", "Trim"),
                                      QT_TRANSLATE_NOOP("Words", "Join"), QT_TRANSLATE_NOOP("Words", "Edge")};
    return QCoreApplication::translate("Words", names[static_cast<std::size_t>(station)]);
}

} // namespace matside
