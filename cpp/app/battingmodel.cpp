// SPDX-License-Identifier: MIT
#include "app/battingmodel.h"

#include "app/figures.h"
#include "app/money.h"
#include "app/reply.h"
#include "app/wording.h"
#include "length/read.h"
#include "plan/price.h"

#include <QLocale>

#include <algorithm>

namespace matside {

namespace {

const QString rollName = QStringLiteral("roll");
const QString usualName = QStringLiteral("usual");
const QString lengthName = QStringLiteral("length");
const QString widthName = QStringLiteral("width");
const QString priceName = QStringLiteral("price");

/// Sizes batting is often sold in (common practice, no published source; 45 × 60 in from the trade notes).
std::vector<Pair> usualSizes(System system)
{
    if (system == System::Inch)
        return {{Length::inches(60), Length::inches(45)},
                {Length::inches(90), Length::inches(72)},
                {Length::inches(96), Length::inches(81)},
                {Length::inches(108), Length::inches(90)}};
    return {{Length::mm(1500), Length::mm(1000)},
            {Length::mm(2000), Length::mm(1500)},
            {Length::mm(2200), Length::mm(1800)},
            {Length::mm(2700), Length::mm(2300)}};
}

Length stepOf(System system)
{
    return system == System::Inch ? Length::inches(1) : Length::mm(10);
}
/// 6 in | 150 mm to 10 yd | 10 m.
Length leastOf(System system)
{
    return system == System::Inch ? Length::inches(6) : Length::mm(150);
}
Length mostOf(System system)
{
    return system == System::Inch ? Length::inches(360) : Length::mm(10'000);
}

/// How many packages of it she is to buy.
std::ptrdiff_t packagesOn(const Cloth &cloth)
{
    return std::count_if(cloth.owned.begin(), cloth.owned.end(),
                         [](const OwnedPiece &owned) { return owned.package; });
}

/// One size, whichever way it lies.
bool alike(const Pair &one, const Pair &other)
{
    return min(one.along, one.across) == min(other.along, other.across) &&
           max(one.along, one.across) == max(other.along, other.across);
}

QString percent(std::int64_t perMille)
{
    return QLocale().toString((perMille + 5) / 10);
}

} // namespace

BattingModel::BattingModel(Workspace &workspace, Session &session, const ShopModel &shop)
    : m_workspace(workspace), m_session(session), m_shop(shop)
{
    connect(&m_workspace, &Workspace::opened, this, &BattingModel::begin);
    connect(&m_shop, &ShopModel::changed, this, [this] {
        refresh();
        emit listed();
    });
    begin();
}

void BattingModel::begin()
{
    const Pair usual = usualSizes(m_workspace.project().system).front();
    m_length = usual.along;
    m_width = usual.across;
    m_price = 0;
    refresh();
    emit listed();
}

void BattingModel::refresh()
{
    m_choice.reset();
    if (m_open && known())
        m_choice = battingChoice(m_workspace.project(), m_workspace.plan(), m_workspace.steps());
    emit changed();
}

void BattingModel::setOpen(bool open)
{
    m_open = open;
    refresh();
}

const Cloth *BattingModel::batting() const
{
    return clothFor(m_workspace.project(), ClothRole::Batting);
}

bool BattingModel::known() const
{
    return m_workspace.isOpen() && m_shop.count() > 0 && batting();
}

QString BattingModel::headSays() const
{
    const Cloth *cloth = batting();
    if (!cloth)
        return {};
    const auto packages = packagesOn(*cloth);
    //: batting is bought so
    return packages == 0 ? tr("from the roll") : counted(packages, tr("1 package"), tr("%1 packages"));
}

QVariantList BattingModel::amounts() const
{
    const Project &project = m_workspace.project();
    const Cloth *cloth = batting();
    if (!cloth)
        return {};
    const Marks marks = project.marks();
    const auto amount = [](const QString &key, const QString &says, const char *kind,
                           const FigureView &figure) {
        return QVariantMap{{QStringLiteral("key"), key},
                           {QStringLiteral("says"), says},
                           {QStringLiteral("kind"), QLatin1String(kind)},
                           {QStringLiteral("figure"), QVariant::fromValue(figure)}};
    };
    QVariantList choices;
    int chosen = -1;
    for (const Pair &size : usualSizes(project.system)) {
        const int at = static_cast<int>(choices.size());
        if (size == Pair{m_length, m_width})
            chosen = at;
        choices << QVariantMap{
            {QStringLiteral("value"), at},
            {QStringLiteral("says"),
             QStringLiteral("%1 × %2").arg(figureText(size.across, marks), figureText(size.along, marks))}};
    }
    FigureView price;
    price.whole = price.text = moneyText(m_price);
    price.valid = true;
    return {amount(rollName, tr("the roll’s usable width"), "length",
                   figureOf(cloth->usable.value_or(m_workspace.plan().strip.usable), marks)),
            QVariantMap{{QStringLiteral("key"), usualName},
                        {QStringLiteral("says"), tr("a package of")},
                        {QStringLiteral("kind"), QStringLiteral("choice")},
                        {QStringLiteral("value"), chosen},
                        {QStringLiteral("choices"), choices},
                        {QStringLiteral("perRow"), 2}},
            amount(widthName, tr("one side of it"), "length", figureOf(m_width, marks)),
            amount(lengthName, tr("its other side"), "length", figureOf(m_length, marks)),
            amount(priceName, tr("price of a package"), "price", price)};
}

QVariantMap BattingModel::rollWay() const
{
    const Project &project = m_workspace.project();
    const BattingChoice &choice = *m_choice;
    const Length step = batting()->soldStep;
    QStringList more;
    more << (choice.rollProved ? tr("Proven least.") : tr("The least found; no proof.")) // as at the cloth
         << tr("Waste %1 %.").arg(percent(choice.rollWaste));
    if (choice.rollCents)
        more << tr("Costs %1.").arg(moneyText(*choice.rollCents));
    const Cloth *cloth = batting();
    const bool taken = packagesOn(*cloth) == 0;
    //: %1 "2 3/8 yd", %2 the roll's width
    return {{QStringLiteral("says"), tr("From the roll: {%1} of %2")
                                         .arg(inSign(toQt(textSold(choice.roll, step, project.system))),
                                              braced(choice.rollUsable, project.marks()))},
            {QStringLiteral("more"), more.join(QLatin1Char(' '))},
            {QStringLiteral("taken"), taken}};
}

QVariantMap BattingModel::packageWay(const PackageBuy &buy) const
{
    const Marks marks = m_workspace.project().marks();
    const QString size =
        QStringLiteral("%1 × %2").arg(braced(min(buy.package.length, buy.package.width), marks),
                                      braced(max(buy.package.length, buy.package.width), marks));
    if (buy.each == 0)
        return {{QStringLiteral("says"), size},
                {QStringLiteral("more"), tr("Too small for a hoop strip of %1.")
                                             .arg(onOneLine(figureText(m_choice->strip.along, marks)))},
                {QStringLiteral("taken"), false}};
    QStringList more{counted(buy.each, tr("1 strip from each."), tr("%1 strips from each.")),
                     tr("No way of cutting needs fewer."), tr("Waste %1 %.").arg(percent(buy.waste))};
    if (buy.cents)
        more << tr("Costs %1.").arg(moneyText(*buy.cents));
    const Cloth *cloth = batting();
    const bool taken = std::any_of(cloth->owned.begin(), cloth->owned.end(), [&](const OwnedPiece &owned) {
        return owned.package && alike({owned.length, owned.width}, {buy.package.length, buy.package.width});
    });
    //: %1 a number, %2 "45 in × 60 in"
    return {{QStringLiteral("says"), buy.count == 1 ? tr("1 package of %1").arg(size)
                                                    : tr("%1 packages of %2").arg(buy.count).arg(size)},
            {QStringLiteral("more"), more.join(QLatin1Char(' '))},
            {QStringLiteral("taken"), taken}};
}

QVariantList BattingModel::ways() const
{
    QVariantList list;
    if (!m_choice)
        return list;
    const auto way = [&](QVariantMap told, const QVariantMap &drawn) {
        told.insert(drawn);
        list << told;
    };
    way(rollWay(), rollDrawn());
    for (const PackageBuy &buy : m_choice->packages)
        way(packageWay(buy), packageDrawn(buy));
    return list;
}

QString BattingModel::verdictSays() const
{
    if (!known())
        return {};
    if (!m_choice)
        return tr("The batting is bought or begun: it stays as it is.");
    const Marks marks = m_workspace.project().marks();
    const QString wanted =
        //: the last two are a strip's two sides
        (m_choice->strips == 1 ? tr("1 hoop strip of %1 × %2 is to be cut.")
                               : tr("%1 hoop strips of %2 × %3 are to be cut.").arg(m_choice->strips))
            .arg(onOneLine(figureText(m_choice->strip.across, marks)),
                 onOneLine(figureText(m_choice->strip.along, marks)));
    if (m_choice->packages.empty())
        return wanted + u' ' + tr("Add a package size to hold it against the roll.");
    return wanted + u' ' +
           (m_choice->least ? tr("The package wastes less than the roll.") : tr("The roll wastes least."));
}

QString BattingModel::whyNot() const
{
    const Cloth *cloth = batting();
    if (!cloth)
        return tr("List the batting at Fit first.");
    if (m_workspace.project().made.layoutOf(cloth->id))
        return tr("The batting is bought or begun. Take the tick away first.");
    if (cloth->packages.size() >= mostPackages)
        return tr("%1 sizes at most.").arg(mostPackages);
    for (const Package &package : cloth->packages)
        if (alike({package.length, package.width}, {m_length, m_width}))
            return tr("This size is on the list.");
    return {};
}

Length *BattingModel::lengthOf(const QString &key)
{
    return key == lengthName ? &m_length : key == widthName ? &m_width : nullptr;
}

void BattingModel::setRoll(Length width)
{
    const Cloth *cloth = batting();
    if (!cloth || m_session.readOnly())
        return;
    Project next = m_workspace.project();
    for (Cloth &listed : next.cloths)
        if (listed.id == cloth->id)
            listed.usable = width;
    (void)m_workspace.commit("edit", next);
}

void BattingModel::nudge(const QString &key, int steps)
{
    const System system = m_workspace.project().system;
    const auto moved = [&](Length from) {
        return std::clamp(from + stepOf(system) * steps, leastOf(system), mostOf(system));
    };
    if (key == rollName && batting())
        return setRoll(moved(batting()->usable.value_or(m_workspace.plan().strip.usable)));
    Length *const length = lengthOf(key);
    if (length) {
        *length = moved(*length);
    } else if (key == priceName) {
        m_price = std::clamp<std::int64_t>(m_price + std::int64_t{50} * steps, 0, 10'000'000);
    }
    emit changed();
}

QVariantMap BattingModel::enter(const QString &key, const QString &text)
{
    const System system = m_workspace.project().system;
    if (key == priceName) {
        const auto read = hundredthsIn(text.trimmed().toStdString());
        if (!read || *read > 10'000'000)
            return answer(false, tr("An amount with two decimals at most."));
        m_price = *read;
        emit changed();
        return answer(true, QString());
    }
    const auto read = readLength(text.toStdString(), system);
    if (!read)
        return answer(false, sentence(read.error(), system));
    const Marks marks = m_workspace.project().marks();
    if (read.value() < leastOf(system) || read.value() > mostOf(system))
        return answer(false, tr("Between %1 and %2.")
                                 .arg(figureText(leastOf(system), marks), figureText(mostOf(system), marks)));
    Length *const length = lengthOf(key);
    if (key == rollName) {
        setRoll(read.value());
    } else if (length) {
        *length = read.value();
    }
    emit changed();
    return answer(true, QString());
}

void BattingModel::pick(const QVariant &size)
{
    const std::vector<Pair> usual = usualSizes(m_workspace.project().system);
    const int at = size.toInt();
    if (at < 0 || at >= static_cast<int>(usual.size()))
        return;
    m_length = usual[static_cast<std::size_t>(at)].along;
    m_width = usual[static_cast<std::size_t>(at)].across;
    emit changed();
}

void BattingModel::add()
{
    const Cloth *cloth = batting();
    if (!whyNot().isEmpty() || m_session.readOnly())
        return;
    Package package{m_length, m_width, {}, {}};
    if (m_price > 0)
        package.price = QStringLiteral("%1.%2")
                            .arg(m_price / 100)
                            .arg(m_price % 100, 2, 10, QLatin1Char('0'))
                            .toStdString();
    Project next = m_workspace.project();
    for (Cloth &listed : next.cloths)
        if (listed.id == cloth->id)
            listed.packages.push_back(package);
    (void)m_workspace.commit("packages", next);
}

void BattingModel::take(int way)
{
    if (!m_choice || m_session.readOnly() || way < 0 || way > static_cast<int>(m_choice->packages.size()))
        return;
    const Project &project = m_workspace.project();
    if (way == 0) {
        (void)m_workspace.commit("packages", withoutPackages(project, m_choice->cloth));
        return;
    }
    const auto next = withPackages(project, *m_choice, static_cast<std::size_t>(way - 1));
    if (next)
        (void)m_workspace.commit("packages", *next);
    else
        m_session.tell(
            m_choice->packages[static_cast<std::size_t>(way - 1)].each == 0
                ? tr("A strip is larger than this package.")
                : tr("More than %1 pieces are not laid out one by one: take a larger package, or the "
                     "roll.")
                      .arg(mostOwned));
}

void BattingModel::forget()
{
    const Cloth *cloth = batting();
    if (!cloth || m_session.readOnly() || m_workspace.project().made.layoutOf(cloth->id))
        return;
    Project next = withoutPackages(m_workspace.project(), cloth->id);
    for (Cloth &listed : next.cloths)
        if (listed.id == cloth->id)
            listed.packages.clear();
    (void)m_workspace.commit("packages", next);
}

} // namespace matside
