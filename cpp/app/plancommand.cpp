// SPDX-License-Identifier: MIT
#include "app/plancommand.h"

#include "app/planfile.h"
#include "app/wording.h"
#include "project/codec.h"

#include <QFile>

#include <cstdio>

namespace matside {

namespace {

constexpr int planned = 0;
constexpr int unreadable = 2;
constexpr int cannotBeMade = 3;
constexpr qint64 mostBytes = qint64(8) << 20; ///< past the codec's own bound, so that it can say so

void tell(QString &to, const std::vector<Problem> &problems, Marks marks)
{
    for (const Problem &problem : problems) {
        to += sentence(problem, marks);
        if (!problem.at.empty())
            to += QStringLiteral(" (%1)").arg(toQt(problem.at));
        to += u'\n';
        for (const Offer &offer : problem.offers)
            to += QStringLiteral("  - %1\n").arg(sentence(offer, marks));
    }
}

void tellCuts(QString &to, const Project &project, const std::vector<Step> &steps)
{
    for (const Step &step : steps)
        if (step.ruler || step.size)
            to += cutSentence(step, project) + u'\n';
}

PlanAnswer refuse(const Problem &problem)
{
    PlanAnswer answer{QByteArray::fromStdString(writeUnreadable(problem)), {}, unreadable};
    tell(answer.sentences, {problem}, Marks());
    return answer;
}

bool openInput(QFile &file, const QString &path)
{
    if (path != QStringLiteral("-"))
        return file.open(QIODevice::ReadOnly);
    return file.open(stdin, QIODevice::ReadOnly);
}

} // namespace

PlanAnswer planText(const QByteArray &json)
{
    const Result<ReadProject, Unreadable> read =
        readProject({json.constData(), static_cast<std::size_t>(json.size())});
    if (!read)
        return refuse(read.error().problem);
    const Project &project = read.value().project;
    const std::vector<Problem> &reading = read.value().problems;
    const Plan made = plan(project);
    const std::vector<Step> order = steps(project, made);
    PlanAnswer answer{QByteArray::fromStdString(writePlanFile(project, made, order, reading)), {}, planned};
    tell(answer.sentences, reading, project.marks());
    tell(answer.sentences, made.problems, project.marks());
    tell(answer.sentences, made.cautions, project.marks());
    if (!reading.empty() || !made.problems.empty())
        answer.exit = cannotBeMade;
    else
        tellCuts(answer.sentences, project, order);
    return answer;
}

int runPlanCommand(const QString &path)
{
    QFile file(path);
    PlanAnswer answer;
    if (openInput(file, path))
        answer = planText(file.read(mostBytes));
    else
        answer = refuse({"", "file-not-opened", {path.toStdString(), file.errorString().toStdString()}, {}});
    std::fwrite(answer.file.constData(), 1, static_cast<std::size_t>(answer.file.size()), stdout);
    const QByteArray sentences = answer.sentences.toUtf8();
    std::fwrite(sentences.constData(), 1, static_cast<std::size_t>(sentences.size()), stderr);
    const bool written = std::fflush(stdout) == 0 && std::ferror(stdout) == 0;
    return written ? answer.exit : unreadable;
}

} // namespace matside
