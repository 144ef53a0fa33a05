// SPDX-License-Identifier: MIT
#include "sheet/sheetcommand.h"

#include "app/wording.h"
#include "project/codec.h"
#include "sheet/diagrams.h"

#include <QCoreApplication>
#include <QFile>
#include <QSaveFile>

namespace matside {

namespace {

constexpr int unreadable = 2;
constexpr int cannotBeMade = 3;
constexpr qint64 mostBytes = qint64(8) << 20; ///< past the codec's own bound, so that it can say so

QString told(const std::vector<Problem> &problems, Marks marks)
{
    QString says;
    for (const Problem &problem : problems) {
        says += sentence(problem, marks) + u'\n';
        for (const Offer &offer : problem.offers)
            says += QStringLiteral("  - %1\n").arg(sentence(offer, marks));
    }
    return says;
}

/// Reads a project file and lets `write` write what is to be printed of it.
template <class Write> SheetAnswer written(const QString &project, Write write)
{
    QFile file(project);
    if (!file.open(QIODevice::ReadOnly))
        return {told({{"", "file-not-opened", {project.toStdString(), file.errorString().toStdString()}, {}}},
                     Marks()),
                unreadable};
    const QByteArray json = file.read(mostBytes);
    const auto read = readProject({json.constData(), static_cast<std::size_t>(json.size())});
    if (!read)
        return {told({read.error().problem}, Marks()), unreadable};
    const Project &held = read.value().project;
    const Plan made = plan(held);
    if (!read.value().problems.empty() || !made.problems.empty())
        return {told(read.value().problems, held.marks()) + told(made.problems, held.marks()), cannotBeMade};
    SheetAnswer answer;
    const QString wrong = write(held, made, answer.pages);
    if (!wrong.isEmpty())
        return {wrong + u'\n', unreadable};
    answer.sentences = told(made.cautions, held.marks());
    return answer;
}

} // namespace

std::optional<PaperSize> paperNamed(const QString &name)
{
    if (name.compare(QStringLiteral("a4"), Qt::CaseInsensitive) == 0)
        return PaperSize::A4;
    if (name.compare(QStringLiteral("letter"), Qt::CaseInsensitive) == 0)
        return PaperSize::Letter;
    return std::nullopt;
}

std::optional<SheetForm> formNamed(const QString &name)
{
    SheetForm form;
    form.brief = name.compare(QStringLiteral("short"), Qt::CaseInsensitive) == 0;
    form.forClass = name.compare(QStringLiteral("class"), Qt::CaseInsensitive) == 0;
    const bool whole = name.compare(QStringLiteral("long"), Qt::CaseInsensitive) == 0;
    return form.brief || form.forClass || whole ? std::optional(form) : std::nullopt;
}

QString saveSheet(const Project &project, const Plan &plan, const QString &target, SheetForm form, int *pages)
{
    QSaveFile file(target);
    const int written = file.open(QIODevice::WriteOnly) ? writeSheet(file, project, plan, form) : 0;
    if (pages)
        *pages = written;
    if (written > 0 && file.commit())
        return {};
    return QCoreApplication::translate("Sheet",
                                       "The sheet could not be written to %1: %2. Choose another place.")
        .arg(target, file.errorString());
}

SheetAnswer diagramsOf(const QString &project, const QString &folder)
{
    return written(project, [&](const Project &held, const Plan &made, int &count) {
        count = static_cast<int>(diagramsFor(held, made).size());
        return saveDiagrams(held, made, folder);
    });
}

SheetAnswer sheetOf(const QString &project, const QString &target, SheetForm form)
{
    return written(project, [&](const Project &held, const Plan &made, int &pages) {
        return saveSheet(held, made, target, form, &pages);
    });
}

} // namespace matside
