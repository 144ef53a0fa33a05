// SPDX-License-Identifier: MIT
#include "app/wording.h"

#include <QCoreApplication>

#include <array>

namespace matside {

namespace {

constexpr std::array checks{
    Worded{"cut-edge-square-to-fold",
           QT_TRANSLATE_NOOP("Words", "Is the cut edge still square to the fold?")},
};

/// One line at the moment of danger.
constexpr std::array guards{
    Worded{"blade", QT_TRANSLATE_NOOP("Words", "Close the blade between cuts. Roll away from you. Fingers "
                                               "behind the edge.")},
    Worded{"magnets", QT_TRANSLATE_NOOP("Words", "Strong magnets pinch. Keep them 6 in (15 cm) and more from "
                                                 "pacemakers and other implants, away from children, cards "
                                                 "and this tablet.")},
    Worded{"needle", QT_TRANSLATE_NOOP("Words", "Pins out of the hoop? Cord, hair and sleeves clear?")},
    Worded{"iron", QT_TRANSLATE_NOOP("Words", "Iron on its stand, off afterwards; steam burns.")},
    Worded{"pins", QT_TRANSLATE_NOOP("Words", "Count the pins in and count them out.")},
};

QString tell(const char *text)
{
    return QCoreApplication::translate("Words", text);
}

QString onWords(LineOn on)
{
    switch (on) {
    case LineOn::Outline:
        //: the block's outer stitched line
        return tell(QT_TRANSLATE_NOOP("Words", "the stitched outline"));
    case LineOn::Fold:
        return tell(QT_TRANSLATE_NOOP("Words", "the fold"));
    case LineOn::CutEdge:
        break;
    }
    return tell(QT_TRANSLATE_NOOP("Words", "the cut edge"));
}

QString rulerWords(std::string_view name)
{
    return name.empty() ? tell(QT_TRANSLATE_NOOP("Words", "ruler")) : toQt(name);
}

} // namespace

std::span<const Worded> checkWords()
{
    return checks;
}

std::span<const Worded> guardWords()
{
    return guards;
}

QStringList rulerLines(const RulerPlace &ruler, Marks marks)
{
    const QString line = figureText(ruler.line, marks);
    const QString on = onWords(ruler.on);
    QStringList lines;
    if (ruler.fence == Fence::Mat || ruler.first.empty()) {
        lines << tell(QT_TRANSLATE_NOOP("Words", "By the mat's lines: %1 from %2, at both ends."))
                     .arg(line, on);
    } else if (ruler.second) {
        //: two rulers laid side by side; "%1" and "%4" are their names
        lines << tell(QT_TRANSLATE_NOOP("Words", "\"%1\" with its %2 line on %3, \"%4\" against it."))
                     .arg(rulerWords(ruler.first), line, on, rulerWords(*ruler.second));
    } else {
        lines << tell(QT_TRANSLATE_NOOP("Words", "\"%1\" with its %2 line on %3."))
                     .arg(rulerWords(ruler.first), line, on);
    }
    QString second;
    if (ruler.fence == Fence::SlideAlong)
        //: fence: the ruler the blade follows, shorter than the cut
        second = tell(QT_TRANSLATE_NOOP("Words", "Stop the blade, slide the ruler along, go on."));
    else if (ruler.second)
        second = tell(QT_TRANSLATE_NOOP("Words", "Cut along the second; no daylight between them."));
    if (ruler.layers > 1)
        second += (second.isEmpty() ? QString() : QStringLiteral(" ")) +
                  tell(QT_TRANSLATE_NOOP("Words", "%1 layers.")).arg(ruler.layers);
    if (!second.isEmpty())
        lines << second;
    return lines;
}

QString cutSentence(const Step &step, const Project &project)
{
    QString line = QStringLiteral("%1 × %2").arg(step.count).arg(doesText(step, project));
    if (step.size) {
        line.chop(line.endsWith(u'.') ? 1 : 0);
        //: width by length of a piece
        line += tell(QT_TRANSLATE_NOOP("Words", ": %1 by %2."))
                    .arg(figureText(step.size->across, project.marks()),
                         figureText(step.size->along, project.marks()));
    }
    if (step.ruler)
        line += u' ' + rulerLines(*step.ruler, project.marks()).join(u' ');
    if (step.trial)
        line += u' ' + tell(QT_TRANSLATE_NOOP("Words", "(For the trial.)"));
    return line;
}

} // namespace matside
