// SPDX-License-Identifier: MIT
//
// The class form: what to cut for all kits, then a list for every student of what is in the kit.
#include "sheet/pages.h"

#include "app/wording.h"
#include "bench/kits.h"

#include <algorithm>

namespace matside {

namespace {

/// More students than this copy one page.
constexpr std::int64_t mostPages = 40;

/// The same piece for one student: planned like any, so that its counts are the plan's own.
struct OneKit {
    explicit OneKit(const Project &all)
        : project([&all] {
              Project one = all;
              one.kits = 1;
              return one;
          }()),
          made(plan(project)), order(steps(project, made))
    {
    }
    Project project;
    Plan made;
    std::vector<Step> order;
};

/// Strips that several kits are stitched on are handed out as blocks.
bool sharesStrips(const Project &project)
{
    return project.kitsShareStrips && project.kits > 1;
}

bool onSharedStrip(const Step &step, const Project &project)
{
    return step.does == Does::CutStrip && sharesStrips(project);
}

/// A piece that goes into a kit; bands are cut apart before.
bool handedOut(const Step &step)
{
    return step.station == Station::Cut && step.size && !step.trial && step.does != Does::CutBand &&
           step.does != Does::CutAlong;
}

const Step *sameIn(const std::vector<Step> &order, const Step &step)
{
    const auto held =
        std::find_if(order.begin(), order.end(), [&](const Step &other) { return other.id == step.id; });
    return held == order.end() ? nullptr : &*held;
}

QString sizeIn(const Pair &size, Marks marks)
{
    return QStringLiteral("%1 × %2").arg(figureText(size.across, marks), figureText(size.along, marks));
}

/// In the other unit, to the nearest mark of a usual ruler: a class brings both kinds.
Marks otherMarks(const Project &project)
{
    return project.system == System::Inch ? Marks{System::Metric, Length::mm(1)}
                                          : Marks{System::Inch, Length::inches(0, 1, 8)};
}

void allKits(Paper &paper, const Job &job, const OneKit &kit)
{
    paper.y += paper.write(paper.left(), paper.y, paper.width(),
                           paper.cut(toQt(job.project.name), paper.width(), types::title, 2), types::title) +
               2;
    paper.say(tell(QT_TRANSLATE_NOOP("Sheet", "For a class: %1 kits.")).arg(job.project.kits), {6}, 3);
    if (sharesStrips(job.project))
        paper.say(tell(QT_TRANSLATE_NOOP(
                      "Sheet", "Kits share their hoop strips: stitch them ahead and hand out the blocks.")),
                  types::body, 2);
    const QString head = tell(QT_TRANSLATE_NOOP("Sheet", "To cut for all kits"));
    paper.head(head);
    Columns table(paper, {24, 24, 50, paper.width() - 98},
                  //: heads of a table: pieces for all kits together, pieces in one kit
                  {tell(QT_TRANSLATE_NOOP("Sheet", "in all")), tell(QT_TRANSLATE_NOOP("Sheet", "in a kit")),
                   tell(QT_TRANSLATE_NOOP("Sheet", "size")), tell(QT_TRANSLATE_NOOP("Sheet", "what"))});
    for (const Step &step : job.steps) {
        if (step.station != Station::Cut || !step.size || step.trial)
            continue;
        const Step *one =
            handedOut(step) && !onSharedStrip(step, job.project) ? sameIn(kit.order, step) : nullptr;
        table.row({{QString::number(step.count), types::strong},
                   {one ? QString::number(one->count) : QStringLiteral("–"), types::strong},
                   {sizeIn(*step.size, job.project.marks()), types::strong},
                   {doesText(step, job.project), types::small}});
    }
    paper.goesOn({});
    paper.y += 3;
    paper.say(wordsOrCode(guardWords(), "blade"), types::small, 2);
}

/// Set so that the list of a usual kit, its figures and its cautions are one page.
constexpr Type inList{3.2, true};

/// A row with a square to tick: how many, how large in both units, what.
void kitRow(Paper &paper, Columns &table, const QString &count, const QString &size, const QString &what)
{
    const double top = table.row({{}, {count, inList}, {size, inList}, {what, {inList.mm}}}, 8);
    paper.tickBox(table.at(0), top + 0.6, 6);
}

void pieces(Paper &paper, const Job &job, const OneKit &kit)
{
    const Project &project = job.project;
    Columns table(paper, {10, 16, 84, paper.width() - 110}, {});
    if (sharesStrips(project))
        kitRow(paper, table, QStringLiteral("%1 ×").arg(blocksOfKit(project)),
               sizeIn(kit.made.block.trimmed, project.marks()),
               tell(QT_TRANSLATE_NOOP("Sheet", "Blocks, stitched ahead; the size is when trimmed.")));
    for (const Step &step : kit.order)
        if (handedOut(step) && !onSharedStrip(step, project))
            kitRow(paper, table, QStringLiteral("%1 ×").arg(step.count),
                   QStringLiteral("{%1}\u2028%2")
                       .arg(sizeIn(*step.size, project.marks()), sizeIn(*step.size, otherMarks(project))),
                   practised(project, step)
                       ? doesText(step, project) + u' ' +
                             //: one of the sashing strips in a kit
                             tell(QT_TRANSLATE_NOOP("Sheet", "One is to practise the join with."))
                       : doesText(step, project));
    paper.y += 3;
}

void kitPage(Paper &paper, const Job &job, const OneKit &kit, std::int64_t number)
{
    paper.newPage();
    constexpr double picture = 44;
    const double words = paper.width() - picture - 6;
    const double top = paper.y;
    const double drawn = pieceDrawing(paper, job, paper.right() - picture, top, picture, 38);
    const bool each = job.project.kits <= mostPages;
    const QString head =
        each ? tell(QT_TRANSLATE_NOOP("Sheet", "Kit %1 of %2")).arg(number).arg(job.project.kits)
             : tell(QT_TRANSLATE_NOOP("Sheet", "A kit: copy this page, once for each of %1"))
                   .arg(job.project.kits);
    double y = top + paper.write(paper.left(), top, words, head, {8, true}) + 1;
    y += paper.write(paper.left(), y, words, paper.cut(toQt(job.project.name), words, {5}, 2), {5}) + 6;
    //: whose kit it is: a line to write on follows
    const QString name = tell(QT_TRANSLATE_NOOP("Sheet", "Name:"));
    const double wide = paper.wide(name, types::body) + 3;
    y += paper.write(paper.left(), y, words, name, types::body);
    paper.line(paper.left() + wide, y, paper.left() + words, y, 0.3);
    paper.y = std::max(top + drawn, y) + 4;
    const QString inside = tell(QT_TRANSLATE_NOOP("Sheet", "In the kit"));
    paper.head(inside);
    pieces(paper, job, kit);
    paper.goesOn({});
    figureGrid(paper,
               named({kit.project, kit.made, kit.order, job.shop},
                     {"block.trimmed.along", "block.trimmed.across", "fold.under", "fold.catchShown",
                      "sashing.cutFront", "sashing.cutBack", "frame.cut", "binding.cut", "binding.length"}),
               4, {4.6, true});
    QStringList dangers;
    for (const char *danger : {"blade", "needle", "iron"})
        dangers += wordsOrCode(guardWords(), danger);
    paper.say(dangers.join(u' '), types::small, 0);
}

} // namespace

void classForm(Paper &paper, const Job &job)
{
    const OneKit kit(job.project);
    allKits(paper, job, kit);
    shopPart(paper, job);
    const std::int64_t pages = job.project.kits <= mostPages ? job.project.kits : 1;
    for (std::int64_t number = 1; number <= pages; ++number)
        kitPage(paper, job, kit, number);
}

} // namespace matside
