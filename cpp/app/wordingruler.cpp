// SPDX-License-Identifier: MIT
#include "app/rulerwords.h"
#include "app/wording.h"

#include <QCoreApplication>

#include <array>

namespace matside {

namespace {

constexpr std::array checks{
    Worded{"cut-edge-square-to-fold",
           QT_TRANSLATE_NOOP("Words", "Is the cut edge still square to the fold?")},
    Worded{
        "cross-line-on-fold",
        QT_TRANSLATE_NOOP("Words", "A cross line lies on the fold, the edge just inside both ragged ends.")},
    Worded{"strips-side-by-side",
           QT_TRANSLATE_NOOP("Words", "Strips lie side by side: cut across first, then each to its length.")},
    //: strips along the selvage; the cloth is folded across, so that its two cut ends meet
    Worded{"along-folded",
           QT_TRANSLATE_NOOP("Words", "Fold it once, cut end on cut end. First cut the selvage off "
                                      "straight: the bands are measured from there.")},
    Worded{"along-single",
           QT_TRANSLATE_NOOP("Words", "In one layer. First cut the selvage off straight: the bands are "
                                      "measured from there.")},
    Worded{"line-at-both-ends", QT_TRANSLATE_NOOP("Words", "The line touches at both ends.")},
    Worded{"back-wrong-side-up",
           QT_TRANSLATE_NOOP("Words",
                             "Back wrong side up, batting, front right side up, smoothed from the middle.")},
    Worded{
        "every-tick-from-zero",
        QT_TRANSLATE_NOOP("Words", "Every tick measured from the one zero end, never from the tick before.")},
    Worded{"pins-out-of-hoop",
           QT_TRANSLATE_NOOP("Words", "Pins out of the hoop, cord clear, bobbin full enough.")},
    Worded{"off-hoop-pressed-rested",
           QT_TRANSLATE_NOOP("Words", "Off the hoop, pressed and ten minutes rested before measuring.")},
    Worded{"ends-square", QT_TRANSLATE_NOOP("Words", "Both ends square to the band’s long edge.")},
    Worded{"band-is-wider",
           QT_TRANSLATE_NOOP("Words", "The band may be wider than the piece: then trim its long side too.")},
    Worded{"measure-gap-and-distance",
           QT_TRANSLATE_NOOP(
               "Words",
               "Measure the gap between the allowances and the distance between the two seams on the back.")},
    //: batting: laid into the wide sashing of the test join
    Worded{"measure-gap-beside-batting",
           QT_TRANSLATE_NOOP(
               "Words",
               "Measure the gap beside the batting and the distance between the two seams on the back.")},
    Worded{"web-on-wrong-side", QT_TRANSLATE_NOOP("Words", "The web is on the wrong side of the patch.")},
    Worded{"trim-close-to-stitches",
           QT_TRANSLATE_NOOP("Words", "Close to the stitches, the topmost patch first.")},
    Worded{"lift-and-set-down",
           QT_TRANSLATE_NOOP("Words", "Lift and set down, front first, then the back. Let it cool flat; "
                                      "after steam let it dry.")},
    Worded{"nothing-underneath", QT_TRANSLATE_NOOP("Words", "Nothing may lie underneath.")},
    Worded{"outer-line-at-both-corners",
           QT_TRANSLATE_NOOP("Words",
                             "The line lies on the outer stitches at both corners, not on the echo line.")},
    Worded{"joins-at-mid-block",
           QT_TRANSLATE_NOOP("Words", "Each join stands in the middle of a block, never at a crossing.")},
    Worded{"batting-peeled-off",
           QT_TRANSLATE_NOOP("Words", "Batting and back peeled off, no stitching in the piece.")},
    Worded{"both-strips-caught", QT_TRANSLATE_NOOP("Words", "Both strips are caught along the whole seam.")},
    Worded{"rows-alike", QT_TRANSLATE_NOOP("Words", "All rows are alike in length, or nearly.")},
    Worded{"mark-on-every-short", QT_TRANSLATE_NOOP("Words", "A mark meets each short sashing.")},
    Worded{"held-flat", QT_TRANSLATE_NOOP("Words", "The backing lies flat and is held.")},
    Worded{"opening-closed", QT_TRANSLATE_NOOP("Words", "Turned, corners out, the opening closed.")},
    Worded{"no-join-on-a-corner",
           QT_TRANSLATE_NOOP("Words", "No join lands on a corner or a sashing’s end.")},
    Worded{"frame-lies-flat", QT_TRANSLATE_NOOP("Words", "Both strips are caught; the batting meets the "
                                                         "block’s own and does not lie over it.")},
    Worded{"frame-joins-off-corners",
           QT_TRANSLATE_NOOP("Words", "No join of a frame strip lands on a corner or a sashing’s end.")},
    Worded{"diagonals-alike", QT_TRANSLATE_NOOP("Words", "Both diagonals are alike.")},
    Worded{"pins-in-equal-pins-out", QT_TRANSLATE_NOOP("Words", "As many pins out as went in.")},
};

/// One line at the moment of danger.
constexpr std::array guards{
    Worded{"blade", QT_TRANSLATE_NOOP("Words", "Close the blade between cuts. Roll away from you. Fingers "
                                               "well back from the ruler's edge.")},
    Worded{"magnets",
           QT_TRANSLATE_NOOP("Words", "Keep strong magnets away from implants. With a pacemaker or any "
                                      "implant ask your doctor first; as far off as the frame’s "
                                      "maker says and never under 6 in (15 cm), off lap and chest. "
                                      "They pinch: fingers outside the edge. Keep children and "
                                      "cards away, and this tablet 6 in (15 cm) off: it may go "
                                      "dark.")},
    Worded{"needle", QT_TRANSLATE_NOOP("Words", "Pins out before the needle. Cord, hair and sleeves clear.")},
    Worded{"iron", QT_TRANSLATE_NOOP("Words", "Iron on its stand, off afterwards; steam burns.")},
    Worded{"adhesive", QT_TRANSLATE_NOOP("Words", "Spray by an open window, away from flame.")},
    Worded{"scissors",
           QT_TRANSLATE_NOOP("Words", "Hoop flat on the table, machine stopped, scissor points up.")},
    Worded{"finished-use", QT_TRANSLATE_NOOP("Words", "Not a hot mat. Keep it 12 in (30 cm) from candles.")},
    Worded{"pins", QT_TRANSLATE_NOOP("Words", "Count the pins in and count them out.")},
};

/// The same in a word, beside its sign where there is no room for more.
constexpr std::array hazards{
    Worded{"blade", QT_TRANSLATE_NOOP("Words", "Blade")},
    Worded{"magnets", QT_TRANSLATE_NOOP("Words", "Magnets")},
    Worded{"needle", QT_TRANSLATE_NOOP("Words", "Needle")},
    Worded{"iron", QT_TRANSLATE_NOOP("Words", "Hot iron")},
    Worded{"adhesive", QT_TRANSLATE_NOOP("Words", "Spray")},
    Worded{"scissors", QT_TRANSLATE_NOOP("Words", "Scissors")},
    Worded{"finished-use", QT_TRANSLATE_NOOP("Words", "Flames")},
    Worded{"pins", QT_TRANSLATE_NOOP("Words", "Pins")},
};

QString onWords(LineOn on)
{
    switch (on) {
    case LineOn::Outline:
        //: the block's outer stitched line
        return inWords(QT_TRANSLATE_NOOP("Words", "the stitched outline"));
    case LineOn::Fold:
        return inWords(QT_TRANSLATE_NOOP("Words", "the fold"));
    case LineOn::CutEdge:
        break;
    }
    return inWords(QT_TRANSLATE_NOOP("Words", "the cut edge"));
}

} // namespace

QString rulerText(std::string_view name)
{
    if (name.empty())
        return inWords(QT_TRANSLATE_NOOP("Words", "ruler"));
    for (const char *preset : {"long", "square"}) // the two of every new project
        if (name == preset)
            return QCoreApplication::translate("Demo", preset);
    return toQt(name);
}

std::span<const Worded> checkWords()
{
    return checks;
}

std::span<const Worded> hazardWords()
{
    return hazards;
}

std::span<const Worded> guardWords()
{
    return guards;
}

namespace {

/// `line` is the measure that lies on something, as it is to be written.
QStringList linesOf(const RulerPlace &ruler, const QString &line)
{
    const QString on = onWords(ruler.on);
    QStringList lines;
    if (ruler.on == LineOn::Fold) {
        // Squaring measures nothing: what lies on the fold is a cross line, and the edge makes the cut.
        lines << (ruler.first.empty()
                      ? inWords(QT_TRANSLATE_NOOP("Words",
                                                  "The fold on a line of the mat, the cut along another."))
                      //: "%1" is the ruler's name; its lines that run across it square the cut to the fold
                      : inWords(QT_TRANSLATE_NOOP("Words", "\"%1\" with a cross line on the fold."))
                            .arg(rulerText(ruler.first)));
    } else if (ruler.fence == Fence::Mat || ruler.first.empty()) {
        lines << inWords(QT_TRANSLATE_NOOP("Words", "By the mat's lines: %1 from %2, at both ends."))
                     .arg(line, on);
    } else if (ruler.second) {
        //: two rulers laid side by side; "%1" and "%4" are their names
        lines << inWords(QT_TRANSLATE_NOOP("Words", "\"%1\" with its %2 line on %3, \"%4\" against it."))
                     .arg(rulerText(ruler.first), line, on, rulerText(*ruler.second));
    } else {
        lines << inWords(QT_TRANSLATE_NOOP("Words", "\"%1\" with its %2 line on %3."))
                     .arg(rulerText(ruler.first), line, on);
    }
    QString second;
    if (ruler.fence == Fence::SlideAlong)
        //: fence: the ruler the blade follows, shorter than the cut
        second = inWords(QT_TRANSLATE_NOOP("Words", "Stop the blade, slide the ruler along, go on."));
    else if (ruler.second)
        second = inWords(QT_TRANSLATE_NOOP("Words", "Cut along the second; no daylight between them."));
    if (ruler.layers > 1)
        second += (second.isEmpty() ? QString() : QStringLiteral(" ")) +
                  inWords(QT_TRANSLATE_NOOP("Words", "%1 layers.")).arg(ruler.layers);
    if (!second.isEmpty())
        lines << second;
    return lines;
}

} // namespace

QStringList rulerLines(const RulerPlace &ruler, Marks marks)
{
    return linesOf(ruler, figureText(ruler.line, marks));
}

QStringList bracedRulerLines(const RulerPlace &ruler, Marks marks)
{
    return linesOf(ruler, braced(ruler.line, marks));
}

QString checkText(const Step &step, Marks marks)
{
    QString check = wordsOrCode(checks, step.check);
    if (step.lies.empty())
        return check;
    const BandLie &lie = step.lies[step.lie];
    const bool wider = lie.width < lie.band;
    if (!wider && step.lies.size() == 1)
        return check;
    //: band: a strip right across the cloth that the next piece is cut from; %1 its width
    return (wider ? inWords(QT_TRANSLATE_NOOP("Words", "From a band of %1: trim its long side too."))
                  : inWords(QT_TRANSLATE_NOOP("Words", "From a band of %1.")))
               .arg(figureText(lie.band, marks)) +
           u' ' + check;
}

QStringList bandLines(const Step &step, Marks marks)
{
    QStringList lines;
    for (const BandLie &lie : step.lies)
        //: so many pieces from a band of this width, each so long along it
        lines +=
            inWords(QT_TRANSLATE_NOOP("Words", "%1 from a band of %2: %3 measured off."))
                .arg(QString::number(lie.count), figureText(lie.band, marks), figureText(lie.off, marks));
    return lines;
}

QString cutSentence(const Step &step, const Project &project)
{
    QString line = QStringLiteral("%1 × %2").arg(step.count).arg(doesText(step, project));
    if (step.size) {
        line.chop(line.endsWith(u'.') ? 1 : 0);
        //: width by length of a piece
        line += inWords(QT_TRANSLATE_NOOP("Words", ": %1 by %2."))
                    .arg(figureText(step.size->across, project.marks()),
                         figureText(step.size->along, project.marks()));
    }
    if (step.lies.size() > 1)
        line += u' ' + bandLines(step, project.marks()).join(u' ');
    else if (step.ruler)
        line += u' ' + rulerLines(*step.ruler, project.marks()).join(u' ');
    if (step.does == Does::CutAlong)
        line += u' ' + wordsOrCode(checks, step.check);
    if (step.trial)
        line += u' ' + inWords(QT_TRANSLATE_NOOP("Words", "(For the trial.)"));
    return line;
}

} // namespace matside
