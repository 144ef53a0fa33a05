// SPDX-License-Identifier: MIT
//
// The strip: where the blocks lie on it before and after they draw the cloth in.
#include "sheet/pages.h"

#include "app/figures.h"
#include "app/wording.h"
#include "plan/onstrip.h"
#include "plan/thread.h"
#include "sheet/prints.h"

#include <algorithm>

namespace matside {

namespace {

/// One strip drawn to scale with the outlines of its blocks; places are numbered where there is room.
double strip(Paper &paper, const Job &job, const std::vector<Length> &starts, Length size, double k,
             double deep)
{
    const StripPlan &plan = job.plan.strip;
    const double x = paper.left();
    const double top = paper.y;
    const double high = std::min(plan.width.asMm() * k, deep);
    printCloth(paper.painter(), ClothRole::Front, QRectF(x, top, plan.usable.asMm() * k, high));
    paper.line(x, top - 2, x, top + high + 2, 0.8);
    const double block = std::min(job.plan.block.outline.across.asMm() * k, high * 0.7);
    int place = 0;
    for (const Length start : starts) {
        ++place;
        const QRectF outline(x + start.asMm() * k, top + (high - block) / 2, size.asMm() * k, block);
        paper.painter().fillRect(outline, Qt::white);
        paper.painter().setPen(QPen(Qt::black, 0.35, Qt::DashLine));
        paper.painter().drawRect(outline);
        paper.painter().setPen(QPen(Qt::black, 0.3));
        if (outline.width() > 5)
            paper.write(outline.left(), outline.center().y() - 2.4, outline.width(), QString::number(place),
                        types::strong, Qt::AlignHCenter);
        paper.line(outline.left(), top + high, outline.left(), top + high + 2.5, 0.4);
    }
    return high + 3;
}

double scaleOf(const Paper &paper, const Job &job)
{
    return 1.0 / scaleFor(job.plan.strip.usable.asMm(), paper.width());
}

void scales(Paper &paper, const Job &job)
{
    flatStrip(paper, job);
    drawnInStrip(paper, job);
}

void places(Paper &paper, const Job &job)
{
    const StripPlan &plan = job.plan.strip;
    const Marks marks = job.project.marks();
    constexpr double row = 7.8;
    if (plan.starts.size() <= 12) // as many as lie on a usual strip
        paper.keep(row * static_cast<double>(plan.starts.size() + 1));
    Columns table(paper, {20, 54, 54, paper.width() - 128},
                  {tell(QT_TRANSLATE_NOOP("Sheet", "place")), wordsOrCode(figureWords(), "strip.starts"),
                   wordsOrCode(figureWords(), "strip.centres"), wordsOrCode(figureWords(), "strip.drawn")});
    for (std::size_t i = 0; i < plan.starts.size(); ++i)
        table.row({{QString::number(i + 1), types::strong},
                   {figureText(plan.starts[i], marks), types::strong},
                   {i < plan.centres.size() ? figureText(plan.centres[i], marks) : QString(), types::body},
                   {i < plan.drawn.size() ? figureText(plan.drawn[i], marks) : QString(), types::body}});
    paper.y += 3;
}

QString nextSays(const Job &job, const NextPlace &next)
{
    const Marks marks = job.project.marks();
    QString says =
        tell(QT_TRANSLATE_NOOP("Sheet", "Place %1, block %2: start {%3}, centre {%4} (planned {%5}), gap "
                                        "{%6}."))
            .arg(next.place)
            .arg(toQt(next.block), figureText(next.start, marks), figureText(next.centre, marks),
                 figureText(next.expected, marks), figureText(next.gap, marks, Round::UpEighth));
    if (!next.fits) {
        says += u' ' + tell(QT_TRANSLATE_NOOP("Sheet", "It does not fit: {%1} is missing."))
                           .arg(figureText(next.missing, marks));
        if (next.fitsWithGap)
            says += u' ' + tell(QT_TRANSLATE_NOOP("Sheet", "With a gap of {%1} it would."))
                               .arg(figureText(*next.fitsWithGap, marks, Round::UpEighth));
    }
    return says;
}

/// The strips something was stitched on: where they go on.
void inWork(Paper &paper, const Job &job)
{
    if (job.project.made.strips.empty() && job.project.made.blocks.empty())
        return;
    const Marks marks = job.project.marks();
    for (const StripWork &work : stripsInWork(job.project, job.plan)) {
        if (!work.ended && (work.places.empty() || !work.places.front().stitched))
            continue;
        QString says =
            tell(QT_TRANSLATE_NOOP("Sheet", "{Strip %1}, begun: %2 long when flat, its end now at %3."))
                .arg(work.strip)
                .arg(figureText(work.usable, marks), figureText(work.end, marks));
        if (work.ended)
            says += u' ' + tell(QT_TRANSLATE_NOOP("Sheet", "The last outline ended at {%1}."))
                               .arg(figureText(*work.ended, marks));
        if (work.next)
            says += u' ' + nextSays(job, *work.next);
        if (work.over)
            says += u' ' + nextSays(job, *work.over);
        paper.say(says, types::small, 2);
    }
}

} // namespace

void flatStrip(Paper &paper, const Job &job)
{
    const int scale = scaleFor(job.plan.strip.usable.asMm(), paper.width());
    paper.say(
        tell(QT_TRANSLATE_NOOP("Sheet", "{Flat cloth:} for marking before anything is stitched, every tick "
                                        "from the one zero end. Drawn 1 : %1."))
            .arg(scale),
        types::small, 3);
    paper.keep(45);
    paper.y +=
        strip(paper, job, job.plan.strip.starts, job.plan.block.sent.along, scaleOf(paper, job), 40) + 2;
}

void drawnInStrip(Paper &paper, const Job &job)
{
    const StripPlan &plan = job.plan.strip;
    if (plan.drawn == plan.starts)
        return;
    paper.keep(34);
    paper.say(tell(QT_TRANSLATE_NOOP("Sheet", "{Drawn-in cloth:} where each start is found once the blocks "
                                              "before it are stitched. Never mix the two scales.")),
              types::small, 3);
    paper.y += strip(paper, job, plan.drawn, job.plan.block.outline.along, scaleOf(paper, job), 18) + 2;
}

void hoopPart(Paper &paper, const Job &job)
{
    paper.part(110);
    paper.head(tell(QT_TRANSLATE_NOOP("Sheet", "Hoop: the strip end to end")));
    scales(paper, job);
    places(paper, job);
    std::vector<Named> figures =
        named(job, {"block.sent.along", "block.sent.across", "strip.advance", "strip.gap", "strip.end",
                    "strip.reach", "strip.used", "strip.remainder"});
    if (job.plan.strip.wideGaps > 0)
        if (auto wide = named(job, "strip.wideGap"))
            figures.push_back(std::move(*wide));
    figureGrid(paper, figures, 4, {4.6, true});
    inWork(paper, job);
    stepRows(paper, job, Station::Hoop);
}

} // namespace matside
