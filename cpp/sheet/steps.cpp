// SPDX-License-Identifier: MIT
//
// Steps as rows: the cut list by cloth, and what is done at the other stations.
#include "sheet/pages.h"

#include "app/figures.h"
#include "app/shopwords.h"
#include "app/wording.h"
#include "sheet/prints.h"

#include <algorithm>
#include <set>

namespace matside {

namespace {

/// How often a step is done, as a large figure.
QString times(const Step &step)
{
    return QStringLiteral("%1 ×").arg(step.count);
}

/// The size to cut, or the figure the screen shows large.
QString figureOf(const Step &step, const Job &job)
{
    const Marks marks = job.project.marks();
    if (step.size)
        return QStringLiteral("%1 × %2").arg(figureText(step.size->across, marks),
                                             figureText(step.size->along, marks));
    return planFigure(job.project, job.plan, step.figure).text;
}

/// What it is, where the ruler lies, what to look at.
QString wordsOf(const Step &step, const Job &job)
{
    QStringList lines{u'{' + doesText(step, job.project) + u'}'};
    if (step.trial)
        lines += tell(QT_TRANSLATE_NOOP("Sheet", "For the trial."));
    if (step.seam)
        lines += tell(QT_TRANSLATE_NOOP("Sheet", "Seam %1."))
                     .arg(braced(*step.seam, job.project.marks(), Round::Fine));
    const Marks marks = job.project.marks();
    const bool severalWays = step.lies.size() > 1;
    if (severalWays)
        lines += bandLines(step, marks);
    else if (step.ruler)
        lines += rulerLines(*step.ruler, marks);
    if (!step.check.empty())
        lines += severalWays ? wordsOrCode(checkWords(), step.check) : checkText(step, marks);
    return lines.join(u' ');
}

/// A warning triangle and what to mind, across the page; the row it warns of, this high, stays with it.
void caution(Paper &paper, const std::string &code, double row)
{
    const QString says = wordsOrCode(guardWords(), code);
    const double height = std::max(5.0, paper.tall(paper.width() - 8, says, types::small));
    paper.keep(height + row);
    QPainter &painter = paper.painter();
    const double x = paper.left();
    const double y = paper.y;
    painter.setPen(QPen(Qt::black, 0.4, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPolygon(QPolygonF({{x + 2.4, y}, {x + 4.8, y + 4.2}, {x, y + 4.2}}));
    paper.line(x + 2.4, y + 1.4, x + 2.4, y + 2.8, 0.5);
    paper.line(x + 2.4, y + 3.2, x + 2.4, y + 3.7, 0.5);
    painter.setPen(QPen(Qt::black, 0.3));
    paper.write(x + 8, y, paper.width() - 8, says, types::small);
    paper.y += height + 1.2;
}

/// Squares to tick, one for each repetition, as many as find room.
void ticks(Paper &paper, const Step &step, double x, double across, double top)
{
    constexpr double side = 3;
    constexpr double pitch = 4;
    constexpr int most = 20;
    if (step.count > most) {
        paper.tickBox(x, top, side);
        return;
    }
    const int inLine = static_cast<int>(across / pitch);
    for (int i = 0; i < static_cast<int>(step.count); ++i) {
        const int line = i / inLine;
        paper.tickBox(x + pitch * (i % inLine), top + pitch * line, side);
    }
}

/// How high the squares of a step stand.
double ticksTall(const Step &step, double across)
{
    constexpr double pitch = 4;
    const int inLine = static_cast<int>(across / pitch);
    const std::int64_t lines = (step.count + inLine - 1) / inLine;
    return step.count > 20 ? pitch : pitch * static_cast<double>(lines);
}

/// Rows for these steps, with every kind of danger named once before the first step it concerns.
void rows(Paper &paper, const Job &job, const std::vector<const Step *> &steps)
{
    constexpr double boxes = 29;
    constexpr double count = 15;
    constexpr double figure = 54;
    const double words = paper.width() - count - figure - boxes;
    Columns table(paper, {count, figure, words, boxes}, {});
    std::set<std::string> told;
    for (const Step *step : steps) {
        if (!step->caution.empty() && told.insert(step->caution).second)
            caution(paper, step->caution,
                    5 + std::max(paper.tall(words - 2, wordsOf(*step, job), types::small),
                                 ticksTall(*step, boxes)));
        const double top = table.row({{times(*step), types::strong},
                                      {figureOf(*step, job), {4.2, true}},
                                      {wordsOf(*step, job), types::small}},
                                     ticksTall(*step, boxes));
        ticks(paper, *step, table.at(3) + 1, boxes, top + 0.6);
    }
}

/// The cloths in the order they are first cut.
std::vector<std::string> clothsCut(const std::vector<Step> &steps)
{
    std::vector<std::string> cloths;
    for (const Step &step : steps)
        if (!step.cloth.empty() && std::find(cloths.begin(), cloths.end(), step.cloth) == cloths.end())
            cloths.push_back(step.cloth);
    return cloths;
}

} // namespace

void stepRows(Paper &paper, const Job &job, Station station)
{
    std::vector<const Step *> steps;
    for (const Step &step : job.steps)
        if (step.station == station)
            steps.push_back(&step);
    rows(paper, job, steps);
    paper.y += 2;
}

void cutPart(Paper &paper, const Job &job)
{
    paper.part(80);
    const QString head = tell(QT_TRANSLATE_NOOP("Sheet", "Cut, cloth by cloth"));
    paper.head(head);
    for (const std::string &cloth : clothsCut(job.steps)) {
        std::vector<const Step *> steps;
        for (const Step &step : job.steps)
            if (step.station == Station::Cut && step.cloth == cloth)
                steps.push_back(&step);
        if (steps.empty())
            continue;
        paper.goesOn({});
        // The name, the layout, the caution and the first row stay together.
        paper.keep(46 + clothLayoutTall(paper, job, cloth));
        //: a heading and the cloth it goes on with
        paper.goesOn(tell(QT_TRANSLATE_NOOP("Sheet", "%1: %2")).arg(head, clothAmongAll(job.project, cloth)));
        printCloth(paper.painter(), roleOf(job.project, cloth), QRectF(paper.left(), paper.y, 14, 8));
        paper.y += 1;
        paper.y += paper.write(paper.left() + 18, paper.y, paper.width() - 18,
                               clothAmongAll(job.project, cloth), {5, true});
        paper.y += 2.4;
        clothLayout(paper, job, cloth);
        rows(paper, job, steps);
        paper.y += 4;
    }
    paper.goesOn({});
}

} // namespace matside
