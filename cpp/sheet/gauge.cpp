// SPDX-License-Identifier: MIT
//
// What is printed at true size, and the bar that proves it.
#include "sheet/pages.h"

#include "app/wording.h"

namespace matside {

namespace {

void bar(QPainter &painter, const QRectF &place)
{
    painter.fillRect(place, Qt::black);
}

/// A length at true size, drawn to the ruler's mark that is said beside it.
struct TrueSize {
    QString name;
    Length length;
    Round round = Round::Nearest;
};

std::vector<TrueSize> trueSizes(const Job &job)
{
    const Plan &plan = job.plan;
    std::vector<TrueSize> sizes{{tell(QT_TRANSLATE_NOOP("Sheet", "seam")), plan.basis.nextSeam, Round::Fine}};
    if (plan.basis.allowance != plan.basis.nextSeam)
        //: cloth kept outside the block's outline
        sizes.push_back({tell(QT_TRANSLATE_NOOP("Sheet", "allowance")), plan.basis.allowance, Round::Fine});
    if (plan.fold) {
        //: how much of the back strip is turned under
        if (!plan.fold->doubled)
            sizes.push_back({tell(QT_TRANSLATE_NOOP("Sheet", "fold under")), plan.fold->under, Round::Down});
        //: how far the fold passes the seam line
        sizes.push_back({tell(QT_TRANSLATE_NOOP("Sheet", "catch")), plan.fold->catchShown, Round::Fine});
    }
    sizes.push_back(
        {tell(QT_TRANSLATE_NOOP("Sheet", "sashing, as seen")), plan.sashing.finished, Round::Nearest});
    return sizes;
}

/// The bar and what stands beside it.
struct CheckBar {
    static constexpr double below = 2;
    CheckBar(const Paper &paper, const Job &job)
        : length(job.project.system == System::Inch ? Length::inches(4) : Length::mm(100)),
          says(tell(QT_TRANSLATE_NOOP("Sheet", "This bar is exactly %1 long. If it is not, print "
                                               "again at 100 %, without fitting to the page."))
                   .arg(braced(length, job.project.marks()))),
          beside(paper.width() - length.asMm() - 4),
          height(std::max(7.0, paper.tall(beside, says, types::small)))
    {
    }
    Length length;
    QString says;
    double beside; ///< width of the words
    double height;
};

} // namespace

double checkBarTall(const Paper &paper, const Job &job)
{
    const CheckBar bar(paper, job);
    return bar.height + CheckBar::below;
}

void checkBar(Paper &paper, const Job &job)
{
    const auto [length, says, beside, height] = CheckBar(paper, job);
    paper.keep(height);
    bar(paper.painter(), QRectF(paper.left(), paper.y, length.asMm(), 4));
    for (int i = 0; i <= 4; ++i) {
        const double x = paper.left() + length.asMm() * i / 4;
        paper.line(x, paper.y + 4, x, paper.y + 6, i == 0 || i == 4 ? 0.2 : 0.15);
    }
    paper.write(paper.left() + length.asMm() + 4, paper.y, beside, says, types::small);
    paper.y += height + CheckBar::below;
}

void gauge(Paper &paper, const Job &job)
{
    const std::vector<TrueSize> sizes = trueSizes(job);
    const QString says = tell(QT_TRANSLATE_NOOP(
        "Sheet", "At true size: lay the cloth's edge on the long line, the measure is where the bar ends."));
    const double row = 7;
    const double words = paper.tall(paper.width(), says, types::small) + 2;
    paper.keep(words + row * static_cast<double>(sizes.size()) + 4);
    paper.y += paper.write(paper.left(), paper.y, paper.width(), says, types::small) + 2;
    const double edge = paper.left() + 52;
    const double top = paper.y;
    for (const TrueSize &size : sizes) {
        const Shown shown = show(size.length, job.project.marks(), size.round);
        bar(paper.painter(), QRectF(edge, paper.y + 1, shown.mark.asMm(), row - 2));
        paper.write(paper.left(), paper.y + 1.1, 50, size.name, types::small, Qt::AlignRight);
        paper.write(edge + shown.mark.asMm() + 3, paper.y + 0.6, 60, figureText(shown), types::strong);
        paper.y += row;
    }
    // Its left side is where the bars begin.
    paper.line(edge + 0.1, top - 1, edge + 0.1, paper.y + 1, 0.2);
    paper.y += 4;
}

} // namespace matside
