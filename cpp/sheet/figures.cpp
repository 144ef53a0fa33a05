// SPDX-License-Identifier: MIT
//
// Every figure of the plan, for looking up; what deserves a look.
#include "sheet/pages.h"

#include "app/figures.h"
#include "app/wording.h"
#include "plan/thread.h"
#include "plan/working.h"

#include <set>

namespace matside {

namespace {

/// A name and a length in the project's marks.
class List {
public:
    explicit List(const Job &job) : m_job(job) {}
    void add(const char *name, Length length, Round round = Round::Nearest)
    {
        m_all.push_back({tell(name), figureText(length, m_job.project.marks(), round)});
    }
    void add(const QString &name, const Pair &size)
    {
        const Marks marks = m_job.project.marks();
        m_all.push_back({name, QStringLiteral("%1 × %2").arg(figureText(size.along, marks),
                                                             figureText(size.across, marks))});
    }
    [[nodiscard]] const std::vector<Named> &all() const { return m_all; }

private:
    const Job &m_job;
    std::vector<Named> m_all;
};

/// The figures with a sum of their own, in reading order; those of one list stand at their drawing.
std::vector<Named> reckoned(const Job &job)
{
    std::vector<Named> all;
    for (const std::string &key : figuresWithWorking(job.plan)) {
        if (key.find_last_of("0123456789") == key.size() - 1)
            continue; // strip.starts.2, sashing.marks.3
        if (auto figure = named(job, key.c_str()))
            all.push_back(std::move(*figure));
    }
    return all;
}

/// What is entered, or fixed by what is.
std::vector<Named> entered(const Job &job)
{
    const Plan &plan = job.plan;
    List list(job);
    list.add(tell(QT_TRANSLATE_NOOP("Sheet", "outline, along × across")), plan.block.outline);
    list.add(QT_TRANSLATE_NOOP("Sheet", "seam"), job.project.seam, Round::Fine);
    list.add(QT_TRANSLATE_NOOP("Sheet", "usable width of the strip's cloth"), plan.strip.usable);
    if (plan.fold) {
        list.add(QT_TRANSLATE_NOOP("Sheet", "catch, planned"), plan.fold->fold_catch, Round::Fine);
        if (!plan.fold->doubled)
            list.add(QT_TRANSLATE_NOOP("Sheet", "least fold"), plan.fold->leastFold);
    }
    if (plan.sashing.shorts > 0) {
        list.add(QT_TRANSLATE_NOOP("Sheet", "spare on a short sashing"), plan.sashing.shortSpare);
        list.add(QT_TRANSLATE_NOOP("Sheet", "short sashing with its spare"),
                 plan.sashing.shortLength + plan.sashing.shortSpare, Round::UpQuarter);
    }
    if (plan.sashing.longs > 0) {
        list.add(QT_TRANSLATE_NOOP("Sheet", "spare on a long sashing"), plan.sashing.longSpare);
        list.add(QT_TRANSLATE_NOOP("Sheet", "long sashing with its spare"),
                 plan.sashing.longLength + plan.sashing.longSpare, Round::UpQuarter);
    }
    list.add(QT_TRANSLATE_NOOP("Sheet", "batting, width"), plan.batting.width);
    list.add(QT_TRANSLATE_NOOP("Sheet", "batting, least width"), plan.batting.least);
    list.add(tell(QT_TRANSLATE_NOOP("Sheet", "batting inside the ring")), plan.batting.inside);
    if (plan.size.backing)
        list.add(tell(QT_TRANSLATE_NOOP("Sheet", "backing, along × across")), *plan.size.backing);
    if (plan.binding && plan.binding->bias) {
        list.add(QT_TRANSLATE_NOOP("Sheet", "corners' radius"), plan.basis.cornerRadius);
        list.add(QT_TRANSLATE_NOOP("Sheet", "the arc cuts into the stippling"), plan.binding->bias->bites);
        list.add(QT_TRANSLATE_NOOP("Sheet", "least radius for folded binding"), plan.binding->bias->least);
    }
    for (const PatchPlan &patch : plan.patches) {
        list.add(tell(QT_TRANSLATE_NOOP("Sheet", "patch \"%1\", cut")).arg(toQt(patch.name)),
                 patch.rectangle);
        list.add(tell(QT_TRANSLATE_NOOP("Sheet", "web for \"%1\"")).arg(toQt(patch.name)), patch.web);
    }
    const Forecast forecast = forecastOf(job.project, plan);
    list.add(QT_TRANSLATE_NOOP("Sheet", "thread for a block"), forecast.use.all);
    list.add(QT_TRANSLATE_NOOP("Sheet", "of it from the bobbin"), forecast.use.bobbin);
    return list.all();
}

void rulers(Paper &paper, const Job &job)
{
    List list(job);
    for (const Ruler &ruler : job.project.rulers)
        list.add(tell(QT_TRANSLATE_NOOP("Sheet", "ruler \"%1\"")).arg(toQt(ruler.name)),
                 {ruler.length, ruler.width});
    figureGrid(paper, list.all(), 3, types::strong);
}

} // namespace

void cautionsPart(Paper &paper, const Job &job)
{
    if (job.plan.cautions.empty())
        return;
    paper.part(60);
    paper.head(tell(QT_TRANSLATE_NOOP("Sheet", "Look here first")), 12);
    for (const Problem &caution : job.plan.cautions)
        paper.say(sentence(caution, job.project.marks()), types::body, 2);
}

void figuresPart(Paper &paper, const Job &job)
{
    const QString head = tell(QT_TRANSLATE_NOOP("Sheet", "All figures"));
    paper.head(head);
    figureGrid(paper, reckoned(job), 4, types::strong);
    figureGrid(paper, entered(job), 3, types::strong);
    rulers(paper, job);
    paper.goesOn({});
}

} // namespace matside
