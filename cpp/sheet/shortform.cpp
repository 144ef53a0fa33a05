// SPDX-License-Identifier: MIT
//
// The short form: what one looks up at the mat, on one page.
#include "sheet/pages.h"

#include "app/figures.h"
#include "app/wording.h"

#include <algorithm>

namespace matside {

namespace {

/// One line for every cut: how often, the size, what it is.
QStringList cutLines(const Job &job)
{
    QStringList lines;
    const Marks marks = job.project.marks();
    for (const Step &step : job.steps) {
        if (!step.size || step.trial)
            continue;
        lines += QStringLiteral("%1 × {%2 × %3} %4")
                     .arg(step.count)
                     .arg(figureText(step.size->across, marks), figureText(step.size->along, marks),
                          doesText(step, job.project));
    }
    return lines;
}

QString listed(const QString &name, const std::vector<Length> &lengths, Marks marks)
{
    constexpr std::size_t most = 12;
    QStringList figures;
    for (std::size_t i = 0; i < std::min(lengths.size(), most); ++i)
        figures += braced(lengths[i], marks);
    if (lengths.size() > most)
        //: the list is cut short
        figures += tell(QT_TRANSLATE_NOOP("Sheet", "and so on"));
    return QStringLiteral("%1: %2").arg(name, figures.join(QStringLiteral(", ")));
}

/// As large as it will go in what is left of the page; what finds no room even in the smallest is counted.
void fitted(Paper &paper, const QStringList &lines, double down)
{
    constexpr double between = 1.1;
    const auto tall = [&](double mm) {
        double height = 0;
        for (const QString &line : lines)
            height += paper.tall(paper.width(), line, {mm}) + between;
        return height;
    };
    double mm = 4.2;
    while (mm > 2.5 && tall(mm) > down)
        mm -= 0.1;
    const double end = paper.y + down - 5;
    for (qsizetype i = 0; i < lines.size(); ++i) {
        const double height = paper.tall(paper.width(), lines[i], {mm});
        if (paper.y + height > end && tall(mm) > down) {
            paper.write(paper.left(), paper.y, paper.width(),
                        tell(QT_TRANSLATE_NOOP("Sheet", "… and %1 more lines: see the long form."))
                            .arg(lines.size() - i),
                        {mm});
            return;
        }
        paper.y += paper.write(paper.left(), paper.y, paper.width(), lines[i], {mm}) + between;
    }
}

} // namespace

void shortForm(Paper &paper, const Job &job)
{
    const Marks marks = job.project.marks();
    constexpr double picture = 62;
    const double words = paper.width() - picture - 6;
    const double top = paper.y;
    const double drawn = pieceDrawing(paper, job, paper.right() - picture, top, picture, 48);
    const QString name = paper.cut(toQt(job.project.name), words, {8, true}, 2);
    double y = top + paper.write(paper.left(), top, words, name, {8, true}) + 1.5;
    y += paper.write(paper.left(), y, words,
                     tell(QT_TRANSLATE_NOOP("Sheet", "{%1} × {%2} finished"))
                         .arg(figureText(job.plan.size.finished.along, marks),
                              figureText(job.plan.size.finished.across, marks)),
                     {5});
    paper.y = std::max(top + drawn, y) + 4;
    paper.line(paper.left(), paper.y, paper.right(), paper.y, 0.7);
    paper.y += 3;
    figureGrid(
        paper,
        named(job, {"strip.width", "strip.perStrip", "strip.gap", "strip.advance", "block.trimmed.along",
                    "block.trimmed.across", "fold.under", "fold.catchShown", "sashing.cutFront",
                    "sashing.cutBack", "frame.cut", "binding.cut", "binding.length"}),
        4, {5, true});
    QStringList lines = cutLines(job);
    lines += listed(wordsOrCode(figureWords(), "strip.starts"), job.plan.strip.starts, marks);
    if (!job.plan.sashing.marks.empty())
        lines += listed(wordsOrCode(figureWords(), "sashing.marks"), job.plan.sashing.marks, marks);
    lines += wordsOrCode(guardWords(), "blade");
    const double bar = checkBarTall(paper, job) + 3;
    fitted(paper, lines, paper.room() - bar);
    paper.y = paper.bottom() - bar + 3;
    checkBar(paper, job);
}

} // namespace matside
