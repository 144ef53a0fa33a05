// SPDX-License-Identifier: MIT
#include "sheet/sheet.h"

#include "app/wording.h"
#include "sheet/pages.h"

#include <QBuffer>
#include <QCoreApplication>

namespace matside {

namespace {

/// Fills a device and counts the pages; how many there are in all is known only afterwards.
int fill(QIODevice &to, const Job &job, SheetForm form, int inAll)
{
    QPdfWriter writer(&to);
    const QString name = toQt(job.project.name);
    writer.setTitle(name);
    writer.setCreator(QStringLiteral("Matside"));
    Paper paper(writer, form.paper, name, inAll);
    if (form.brief) {
        shortForm(paper, job);
        return paper.pages();
    }
    if (form.forClass) {
        classForm(paper, job);
        return paper.pages();
    }
    piecePart(paper, job);
    cautionsPart(paper, job);
    shopPart(paper, job);
    cutPart(paper, job);
    hoopPart(paper, job);
    trimPart(paper, job);
    joinPart(paper, job);
    edgePart(paper, job);
    figuresPart(paper, job);
    return paper.pages();
}

} // namespace

int writeSheet(QIODevice &to, const Project &project, const Plan &plan, SheetForm form)
{
    const std::vector<Step> order = steps(project, plan);
    const std::vector<Buy> shop = shoppingList(project, plan, order);
    const Job job{project, plan, order, shop};
    QByteArray counted;
    QBuffer trial(&counted);
    if (!trial.open(QIODevice::WriteOnly))
        return 0;
    const int inAll = fill(trial, job, form, 0);
    QByteArray bytes;
    QBuffer sheet(&bytes);
    if (!sheet.open(QIODevice::WriteOnly))
        return 0;
    const int pages = fill(sheet, job, form, inAll);
    return to.write(bytes) == bytes.size() ? pages : 0;
}

QString tell(const char *text)
{
    return QCoreApplication::translate("Sheet", text);
}

} // namespace matside
