// SPDX-License-Identifier: MIT
#include "app/kitsmodel.h"

#include "app/figures.h"
#include "app/money.h"
#include "app/prints.h"
#include "app/reply.h"
#include "app/shopwords.h"
#include "app/wording.h"

#include <algorithm>

namespace matside {

namespace {

const QString studentsName = QStringLiteral("students");
const QString spareName = QStringLiteral("spare");
const QString machinesName = QStringLiteral("machines");
const QString youngName = QStringLiteral("young");

std::int64_t mostOf(const QString &key)
{
    return key == studentsName ? mostStudents : key == spareName ? mostSpareKits : mostMachines;
}

QString kitsText(const Project &project)
{
    return counted(project.kits, KitsModel::tr("1 kit"), KitsModel::tr("%1 kits"));
}

} // namespace

KitsModel::KitsModel(Workspace &workspace, Session &session, const ShopModel &shop)
    : m_workspace(workspace), m_session(session), m_shop(shop)
{
    connect(&m_shop, &ShopModel::changed, this, &KitsModel::refresh);
    connect(&m_workspace, &Workspace::opened, this, &KitsModel::refresh);
}

void KitsModel::setOpen(bool open)
{
    m_open = open;
    refresh();
}

void KitsModel::refresh()
{
    const Project &project = m_workspace.project();
    m_kits = {};
    if (m_open && project.lesson && !m_shop.list().empty())
        m_kits = kitPlan(project, m_workspace.plan(), m_workspace.steps(), m_shop.list());
    emit changed();
}

std::int64_t KitsModel::value(const QString &key) const
{
    const std::optional<Lesson> &lesson = m_workspace.project().lesson;
    if (!lesson)
        return 0;
    return key == studentsName   ? lesson->students
           : key == spareName    ? lesson->spareKits()
           : key == machinesName ? lesson->machines
                                 : 0;
}

bool KitsModel::put(const QString &key, std::int64_t value)
{
    if (m_session.readOnly())
        return false;
    Project next = m_workspace.project();
    if (key == studentsName && value <= 0) {
        next.lesson.reset();
        next.kits = 1;
        return m_workspace.commit("class", next);
    }
    if (!next.lesson && key != studentsName)
        return false;
    Lesson lesson = next.lesson.value_or(Lesson());
    if (key == studentsName)
        lesson.students = value;
    else if (key == spareName)
        lesson.spare = value;
    else if (key == machinesName)
        lesson.machines = std::max<std::int64_t>(value, 1);
    next.kits = lesson.kits();
    next.lesson = std::move(lesson);
    return m_workspace.commit("class", next);
}

void KitsModel::nudge(const QString &key, int steps)
{
    (void)put(key, std::clamp<std::int64_t>(value(key) + steps, 0, mostOf(key)));
}

QVariantMap KitsModel::enter(const QString &key, const QString &text)
{
    if (m_session.readOnly())
        return answer(false, tr("Nothing can be changed now."));
    bool number = false;
    const qlonglong typed = text.trimmed().toLongLong(&number);
    if (!number || typed < 0 || typed > mostOf(key))
        return answer(false, tr("A whole number up to %1.").arg(mostOf(key)));
    return put(key, typed) ? answer(true, QString())
                           : answer(false, tr("Say first how many students there are."));
}

void KitsModel::pick(const QString &key, bool value)
{
    const Project &project = m_workspace.project();
    if (key != youngName || !project.lesson || m_session.readOnly())
        return;
    Project next = project;
    next.lesson->young = value;
    (void)m_workspace.commit("class", next);
}

QString KitsModel::headSays() const
{
    const Project &project = m_workspace.project();
    if (!project.lesson)
        return {};
    const Lesson &lesson = *project.lesson;
    //: %1 = "15 kits", %2 = "12 students", %3 = "2 spare"; the teacher makes one too
    return tr("%1: %2, yours, and %3")
        .arg(kitsText(project), counted(lesson.students, tr("1 student"), tr("%1 students")),
             //: so many spare kits
             tr("%1 spare").arg(lesson.spareKits()));
}

QVariantList KitsModel::bundles() const
{
    const std::optional<Lesson> &lesson = m_workspace.project().lesson;
    if (!lesson)
        return {};
    QVariantList all;
    const auto bundle = [&](const char *kind, std::int64_t count) {
        if (count > 0)
            all << QVariantMap{{QStringLiteral("kind"), QLatin1String(kind)},
                               {QStringLiteral("count"), static_cast<int>(count)}};
    };
    bundle("student", lesson->students);
    bundle("yours", 1);
    bundle("spare", lesson->spareKits());
    return all;
}

QVariantList KitsModel::folded() const
{
    QVariantList colours;
    for (const Buy &buy : m_shop.list())
        colours << colourDrawn(m_workspace.project(), buy.cloth);
    return colours;
}

QStringList KitsModel::names() const
{
    return {tr("students"), tr("spare kits"), tr("machines in the room"), tr("who learns")};
}

QVariantList KitsModel::amounts() const
{
    const Project &project = m_workspace.project();
    const QStringList called = names();
    const auto amount = [&](const QString &key, const QString &says, const QString &one) {
        return QVariantMap{{QStringLiteral("key"), key},
                           {QStringLiteral("says"), says},
                           {QStringLiteral("counted"), value(key) == 1 ? one : says},
                           {QStringLiteral("kind"), QStringLiteral("count")},
                           {QStringLiteral("figure"),
                            QVariant::fromValue(figureOf(OfferValue(value(key)), project.marks()))}};
    };
    QVariantList all{amount(studentsName, called.at(0), tr("student"))};
    if (!project.lesson)
        return all;
    all << amount(spareName, called.at(1), tr("spare kit"))
        << amount(machinesName, called.at(2), tr("machine in the room"));
    const auto choice = [](bool value, const QString &says) {
        return QVariantMap{{QStringLiteral("value"), value}, {QStringLiteral("says"), says}};
    };
    all << QVariantMap{{QStringLiteral("key"), youngName},
                       {QStringLiteral("says"), called.at(3)},
                       {QStringLiteral("kind"), QStringLiteral("choice")},
                       {QStringLiteral("value"), project.lesson->young},
                       {QStringLiteral("choices"), QVariantList{choice(false, tr("All grown up")),
                                                                choice(true, tr("Some under eighteen"))}}};
    return all;
}

QVariantList KitsModel::cloths() const
{
    const Project &project = m_workspace.project();
    const auto sold = [&](Length length, Length step) {
        return QStringLiteral("{%1}").arg(inSign(toQt(textSold(length, step, project.system))));
    };
    Length longest;
    for (const KitCloth &cloth : m_kits.cloths)
        longest = max(longest, cloth.oneByOne);
    const auto share = [&](Length length) { return longest > Length() ? length.asMm() / longest.asMm() : 0; };
    QVariantList lines;
    for (const KitCloth &cloth : m_kits.cloths) {
        const QString says =
            cloth.together < cloth.oneByOne
                ? tr("%1: %2 together; kit by kit it would be %3")
                      .arg(clothAmongAll(project, cloth.cloth), sold(cloth.together, cloth.step),
                           sold(cloth.oneByOne, cloth.step))
                : tr("%1: %2, together or kit by kit")
                      .arg(clothAmongAll(project, cloth.cloth), sold(cloth.together, cloth.step));
        lines << QVariantMap{{QStringLiteral("says"), says},
                             {QStringLiteral("print"), printOf(project, cloth.cloth)},
                             {QStringLiteral("together"), share(cloth.together)},
                             {QStringLiteral("apart"), share(cloth.oneByOne)}};
    }
    return lines;
}

QVariantMap KitsModel::room() const
{
    const std::optional<Lesson> &lesson = m_workspace.project().lesson;
    if (!lesson)
        return {};
    return {{QStringLiteral("machines"), static_cast<int>(lesson->machines)},
            {QStringLiteral("young"), lesson->young}};
}

QVariantList KitsModel::cuts() const
{
    const Project &project = m_workspace.project();
    const Marks marks = project.marks();
    Length longest;
    for (const KitCut &cut : m_kits.cuts)
        longest = max(longest, max(cut.step.size->across, cut.step.size->along));
    const auto share = [&](Length side) { return longest > Length() ? side.asMm() / longest.asMm() : 0; };
    QVariantList lines;
    for (const KitCut &cut : m_kits.cuts) {
        //: %1 what is cut, %2 × %3 its two sides
        const QString what = tr("%1 %2 × %3")
                                 .arg(doesText(cut.step, project), braced(cut.step.size->across, marks),
                                      braced(cut.step.size->along, marks));
        lines << QVariantMap{
            {QStringLiteral("says"), what},
            {QStringLiteral("print"), printOf(project, cut.step.cloth)},
            {QStringLiteral("wide"), share(max(cut.step.size->across, cut.step.size->along))},
            {QStringLiteral("deep"), share(min(cut.step.size->across, cut.step.size->along))},
            {QStringLiteral("each"), cut.each <= 0 ? tr("for all kits")
                                     : practised(project, cut.step)
                                         //: one of these sashing strips is for practising the join
                                         ? tr("%1 in each kit, one of them to practise with").arg(cut.each)
                                         : tr("%1 in each kit").arg(cut.each)},
            {QStringLiteral("all"), tr("%1 on the day").arg(cut.all)}};
    }
    return lines;
}

QString KitsModel::hoursSay() const
{
    const std::optional<Lesson> &lesson = m_workspace.project().lesson;
    if (!lesson || m_kits.machineTenths <= 0)
        return {};
    const QString all = tr("%1 hours at the machine in all.").arg(hoursText(m_kits.machineTenths));
    if (lesson->machines <= 1)
        return all + u' ' + tr("Stitch ahead, or bring more machines.");
    return all + u' ' +
           tr("At %1 machines side by side, %2 hours each.")
               .arg(lesson->machines)
               .arg(hoursText(m_kits.longestTenths));
}

QString KitsModel::cautionSays() const
{
    const std::optional<Lesson> &lesson = m_workspace.project().lesson;
    return lesson && lesson->young
               ? tr("Some are under eighteen: an adult at each cutting place, at each machine and each iron.")
               : QString();
}

} // namespace matside
