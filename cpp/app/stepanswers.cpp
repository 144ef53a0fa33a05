// SPDX-License-Identifier: MIT
//
// What a step answers: the trial's measures.
#include "app/figures.h"
#include "app/reply.h"
#include "app/stepmodel.h"
#include "app/wording.h"
#include "bench/sides.h"
#include "length/read.h"
#include "plan/plan.h"

#include <algorithm>
#include <string_view>

namespace matside {

namespace {

/// A value of the trial: read, or as it was planned.
struct Asked {
    const char *name;
    QString says;
    Length planned;
    Round round;
    bool wanted;     ///< the trial is made to learn it: it is not taken as planned unread
    QString overlap; ///< what it is called where it is less than nothing; empty where it never is
};

std::vector<Asked> askedOf(const QString &kind, const Plan &plan)
{
    if (kind == QStringLiteral("measure-test"))
        return {
            {"sentAlong", StepModel::tr("sent, along"), plan.block.sent.along, Round::Nearest, false, {}},
            {"sentAcross", StepModel::tr("sent, across"), plan.block.sent.across, Round::Nearest, false, {}},
            {"outlineAlong",
             StepModel::tr("measured outline, along"),
             plan.block.outline.along,
             Round::Nearest,
             true,
             {}},
            {"outlineAcross",
             StepModel::tr("measured outline, across"),
             plan.block.outline.across,
             Round::Nearest,
             true,
             {}}};
    const bool filled = plan.sashing.filler.has_value();
    // A filled sashing has its batting in the gap: what is left beside it is the seam's doing.
    if (kind == QStringLiteral("test-join"))
        return {{"seam", StepModel::tr("seam, as sewn"), plan.basis.seam, Round::Fine, true, {}},
                {"gap",
                 //: beside the batting laid into the sashing of the test join, both sides added up
                 filled ? StepModel::tr("gap beside the batting, both sides together")
                        : StepModel::tr("gap between the allowances"),
                 filled ? Length() : plan.sashing.allowanceGap, Round::Fine, true,
                 //: by how much edges lie over each other inside the sashing of the test join
                 filled ? StepModel::tr("overlap on the batting, both sides together")
                        : StepModel::tr("overlap of the allowances")},
                {"between",
                 StepModel::tr("distance between the seams, on the back"),
                 plan.sashing.finished,
                 Round::Fine,
                 true,
                 {}},
                {"loft", StepModel::tr("thickness of the batting"), plan.basis.loft, Round::Fine, false, {}}};
    return {};
}

/// One of them; nothing where there is none.
std::optional<Asked> askedAt(const QString &kind, const Plan &plan, int at)
{
    const std::vector<Asked> all = askedOf(kind, plan);
    return at >= 0 && static_cast<std::size_t>(at) < all.size()
               ? std::optional(all[static_cast<std::size_t>(at)])
               : std::nullopt;
}

/// What the trial's measures change for what is cut and bought; empty when they change nothing of it.
QString changesOf(const Plan &before, const Plan &after)
{
    if (before.strip.strips == after.strip.strips && before.strip.perStrip == after.strip.perStrip)
        return {};
    return StepModel::tr(
               "By these measures: %1 hoop strips of %2 blocks, before %3 of %4. Look at Shop again.")
        .arg(after.strip.strips)
        .arg(after.strip.perStrip)
        .arg(before.strip.strips)
        .arg(before.strip.perStrip);
}

} // namespace

QString StepModel::trialInHand() const
{
    return trialKind() + QLatin1Char(' ') + m_workspace.id();
}

std::optional<Length> StepModel::readingAt(int at) const
{
    const auto found = m_trialRead.find(at);
    return m_trialOf == trialInHand() && found != m_trialRead.end() ? std::optional(found->second)
                                                                    : std::nullopt;
}

void StepModel::setReading(int at, Length reading)
{
    if (m_trialOf != trialInHand())
        m_trialRead.clear();
    m_trialOf = trialInHand();
    m_trialRead[at] = reading;
    emit changed();
}

std::optional<Length> StepModel::trialReading(const char *name) const
{
    const std::vector<Asked> all = askedOf(trialKind(), m_workspace.plan());
    for (std::size_t at = 0; at < all.size(); ++at)
        if (std::string_view(all[at].name) == name)
            return readingAt(static_cast<int>(at));
    return std::nullopt;
}

QVariantList StepModel::trialFields() const
{
    QVariantList list;
    const Marks marks = m_workspace.project().marks();
    const std::vector<Asked> all = askedOf(trialKind(), m_workspace.plan());
    for (std::size_t at = 0; at < all.size(); ++at) {
        const Asked &asked = all[at];
        const auto read = readingAt(static_cast<int>(at));
        const Length value = read.value_or(asked.planned);
        const bool overlap = value < Length() && !asked.overlap.isEmpty();
        const FigureView figure = figureOf(value.magnitude(), marks, asked.round);
        list.append(QVariantMap{{QStringLiteral("name"), QString::fromLatin1(asked.name)},
                                {QStringLiteral("says"), overlap ? asked.overlap : asked.says},
                                {QStringLiteral("figure"), QVariant::fromValue(figure)},
                                {QStringLiteral("text"), figure.text},
                                {QStringLiteral("taken"), read.has_value() || !asked.wanted},
                                {QStringLiteral("turns"), !asked.overlap.isEmpty()},
                                {QStringLiteral("overlap"), overlap}});
    }
    return list;
}

int StepModel::trialUnread() const
{
    const std::vector<Asked> all = askedOf(trialKind(), m_workspace.plan());
    int unread = 0;
    for (std::size_t at = 0; at < all.size(); ++at)
        if (all[at].wanted && !readingAt(static_cast<int>(at)))
            ++unread;
    return unread;
}

void StepModel::nudgeTrial(int at, int by)
{
    const auto asked = askedAt(trialKind(), m_workspace.plan(), at);
    if (!asked)
        return;
    const Length mark = stepOf(asked->round, m_workspace.project().marks());
    const Length now = readingAt(at).value_or(asked->planned);
    // Read just as it is shown, it stays what it is: what is shown of it may be rounded.
    const Length next = by == 0 ? now : now.nearestTo(mark) + mark * by;
    if (next > Length() || !asked->overlap.isEmpty())
        setReading(at, next);
}

QString StepModel::typeTrial(int at, const QString &text)
{
    const auto asked = askedAt(trialKind(), m_workspace.plan(), at);
    if (!asked)
        return tr("There is nothing to measure here.");
    const System system = m_workspace.project().system;
    const auto typed = readLength(text.toStdString(), system);
    if (!typed)
        return sentence(typed.error(), system);
    if (asked->overlap.isEmpty() && typed.value() <= Length())
        return tr("%1 must be more than nothing.").arg(asked->says);
    // No sign is typed: an overlap stays one.
    const bool overlap = readingAt(at).value_or(asked->planned) < Length();
    setReading(at, overlap ? -typed.value().magnitude() : typed.value());
    return {};
}

void StepModel::turnTrial(int at)
{
    const auto asked = askedAt(trialKind(), m_workspace.plan(), at);
    if (!asked || asked->overlap.isEmpty())
        return;
    const Length now = readingAt(at).value_or(asked->planned);
    setReading(at, now == Length() ? -stepOf(asked->round, m_workspace.project().marks()) : -now);
}

QVariantMap StepModel::takeTrial()
{
    if (trialUnread() > 0)
        return answer(false, tr("Not all of it is read yet."));
    const QString kind = trialKind();
    const std::vector<Asked> all = askedOf(kind, m_workspace.plan());
    std::vector<Length> read;
    for (std::size_t at = 0; at < all.size(); ++at)
        read.push_back(readingAt(static_cast<int>(at)).value_or(all[at].planned));
    QVariantMap said = keepTrial(kind, read);
    if (said.value(QStringLiteral("ok")).toBool()) {
        m_trialRead.clear();
        m_trialOf.clear();
    }
    return said;
}

QVariantMap StepModel::keepTrial(const QString &kind, const std::vector<Length> &read)
{
    Project next = m_workspace.project();
    if (kind == QStringLiteral("measure-test") && read.size() == 4)
        next.made.testBlock = TestBlock{{read[0], read[1]}, {read[2], read[3]}, {}};
    else if (kind == QStringLiteral("test-join") && read.size() == 4)
        next.made.testJoin = TestJoin{read[0], read[1], read[2], read[3], {}};
    else
        return answer(false, tr("There is nothing to measure here."));
    const Plan after = matside::plan(next);
    for (const Problem &problem : after.problems)
        if (problem.at.starts_with("/made"))
            return answer(false, sentence(problem, next.marks()));
    const QString changes = changesOf(m_workspace.plan(), after);
    const bool saved = m_workspace.commit("trial", next);
    if (saved && !changes.isEmpty())
        m_session.tell(changes);
    return answer(saved, saved ? QString() : tr("That could not be saved."));
}

} // namespace matside
