// SPDX-License-Identifier: MIT
#include "app/pricemodel.h"

#include "app/figures.h"
#include "app/money.h"
#include "app/prints.h"
#include "app/reply.h"
#include "app/shopwords.h"
#include "app/wording.h"
#include "length/read.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>

#include <algorithm>

namespace matside {

namespace {

constexpr SettingKey<QString> priceKey{"price"};
constexpr std::int64_t mostMoney = 100'000'000; // a million
constexpr std::int64_t mostShare = 3'000'000;   // 300 %
constexpr qsizetype mostPieces = 300;           // kept with a price of their own

const QString rateName = QStringLiteral("rate");
const QString overheadName = QStringLiteral("overhead");
const QString marginName = QStringLiteral("margin");
const QString sundriesName = QStringLiteral("sundries");
const QString askedName = QStringLiteral("asked");
const QString piecesName = QStringLiteral("pieces");

std::int64_t within(const QJsonObject &object, const QString &name, std::int64_t most, std::int64_t usual)
{
    const QJsonValue value = object.value(name);
    return value.isDouble() ? std::clamp<std::int64_t>(value.toInteger(usual), 0, most) : usual;
}

QJsonObject keptIn(Store &store)
{
    const auto kept = store.setting(priceKey);
    return kept && kept.value() ? QJsonDocument::fromJson(kept.value()->toUtf8()).object() : QJsonObject();
}

FigureView moneyFigure(std::int64_t hundredths)
{
    FigureView view;
    view.whole = view.text = moneyText(hundredths);
    view.valid = true;
    return view;
}

QVariantMap line(const QString &says, const QString &value)
{
    return {{QStringLiteral("says"), says}, {QStringLiteral("value"), value}};
}

double shareOfAll(std::int64_t part, std::int64_t whole)
{
    return whole > 0 ? static_cast<double>(part) / static_cast<double>(whole) : 0;
}

/// Where the amount that makes this part of the price stands among the amounts.
int placeOf(const QString &part)
{
    const QStringList parts{QStringLiteral("work"), overheadName, marginName, sundriesName};
    return static_cast<int>(parts.indexOf(part));
}

/// Round amounts 1, 2 or 5 apart, so many that a tape along the whole holds six at most.
std::int64_t stepOfTape(std::int64_t whole)
{
    std::int64_t ten = 10;
    while (whole / (5 * ten) >= 6)
        ten *= 10;
    for (const std::int64_t step : {ten, 2 * ten})
        if (whole / step < 6)
            return step;
    return 5 * ten;
}

} // namespace

PriceModel::PriceModel(Workspace &workspace, Session &session, const ShopModel &shop)
    : m_workspace(workspace), m_session(session), m_shop(shop)
{
    connect(&m_workspace, &Workspace::opened, this, &PriceModel::read);
    connect(&m_shop, &ShopModel::changed, this, &PriceModel::changed);
    read();
}

void PriceModel::read()
{
    const QJsonObject kept = keptIn(m_workspace.store());
    const PriceTerms usual;
    m_terms.rate = within(kept, rateName, mostMoney, usual.rate);
    m_terms.overhead.millionths = within(kept, overheadName, mostShare, usual.overhead.millionths);
    m_terms.margin.millionths = within(kept, marginName, mostShare, usual.margin.millionths);
    const QJsonObject piece = kept.value(piecesName).toObject().value(m_workspace.id()).toObject();
    m_sundries = within(piece, sundriesName, mostMoney, 0);
    m_asked = within(piece, askedName, mostMoney, 0);
    emit changed();
}

void PriceModel::keep()
{
    QJsonObject pieces = keptIn(m_workspace.store()).value(piecesName).toObject();
    if (pieces.size() >= mostPieces && !pieces.contains(m_workspace.id()))
        pieces.erase(pieces.begin());
    if (!m_workspace.id().isEmpty())
        pieces.insert(m_workspace.id(), QJsonObject{{sundriesName, static_cast<qint64>(m_sundries)},
                                                    {askedName, static_cast<qint64>(m_asked)}});
    const QJsonObject all{{rateName, static_cast<qint64>(m_terms.rate)},
                          {overheadName, static_cast<qint64>(m_terms.overhead.millionths)},
                          {marginName, static_cast<qint64>(m_terms.margin.millionths)},
                          {piecesName, pieces}};
    const QString text = QString::fromUtf8(QJsonDocument(all).toJson(QJsonDocument::Compact));
    if (!m_workspace.store().setSetting(priceKey, text))
        m_session.tell(tr("What you reckon with could not be saved."));
    emit changed();
}

std::int64_t *PriceModel::moneyOf(const QString &key)
{
    return key == rateName       ? &m_terms.rate
           : key == sundriesName ? &m_sundries
           : key == askedName    ? &m_asked
                                 : nullptr;
}

Share *PriceModel::shareOf(const QString &key)
{
    return key == overheadName ? &m_terms.overhead : key == marginName ? &m_terms.margin : nullptr;
}

void PriceModel::nudge(const QString &key, int steps)
{
    if (m_session.readOnly())
        return;
    if (std::int64_t *money = moneyOf(key)) {
        // From "no lower price" the first step goes down from the price itself.
        const std::int64_t from = key == askedName && *money == 0 ? price().value_or(Price()).price : *money;
        const std::int64_t step = key == rateName ? 50 : 100;
        *money = std::clamp<std::int64_t>(from + step * steps, 0, mostMoney);
    } else if (Share *share = shareOf(key)) {
        share->millionths =
            std::clamp<std::int64_t>(share->millionths + std::int64_t{10'000} * steps, 0, mostShare);
    } else {
        return;
    }
    keep();
}

QVariantMap PriceModel::enter(const QString &key, const QString &text)
{
    if (m_session.readOnly())
        return answer(false, tr("Nothing can be changed now."));
    if (std::int64_t *money = moneyOf(key)) {
        const auto read = hundredthsIn(text.trimmed().toStdString());
        if (!read || *read > mostMoney)
            return answer(false, tr("An amount up to a million, with two decimals at most."));
        *money = *read;
    } else if (Share *share = shareOf(key)) {
        const auto read = readShare(text.toStdString());
        if (!read)
            return answer(false, sentence(read.error(), m_workspace.project().system));
        if (read.value() < Share() || read.value().millionths > mostShare)
            return answer(false, tr("Between 0 and 300 %."));
        *share = read.value();
    } else {
        return answer(false, tr("This cannot be changed here."));
    }
    keep();
    return answer(true, QString());
}

std::int64_t PriceModel::costOfCut(const Buy &buy) const
{
    const Project &project = m_workspace.project();
    const Cloth *cloth = clothNamed(project, buy.cloth);
    std::int64_t all = 0;
    if (cloth && cloth->price)
        all += costOf(*cloth->price, buy.cut + buy.straighten, project.system).value_or(0);
    for (const BuyPackages &packages : buy.packages)
        all += packages.cents.value_or(0);
    return all;
}

std::int64_t PriceModel::clothsCost() const
{
    std::int64_t all = 0;
    for (const Buy &buy : m_shop.list())
        all += costOfCut(buy);
    return all;
}

QVariantList PriceModel::clothShares(std::int64_t whole) const
{
    QVariantList cloths;
    std::int64_t from = 0;
    for (const Buy &buy : m_shop.list()) {
        const std::int64_t cost = costOfCut(buy);
        if (cost > 0)
            cloths << QVariantMap{{QStringLiteral("print"), printOf(m_workspace.project(), buy.cloth)},
                                  {QStringLiteral("from"), shareOfAll(from, whole)},
                                  {QStringLiteral("share"), shareOfAll(cost, whole)}};
        from += cost;
    }
    return cloths;
}

Hours PriceModel::hours() const
{
    return hoursFor(m_workspace.project(), m_workspace.plan());
}

std::int64_t PriceModel::paidTenths() const
{
    return (hours().all() + 5) / 10 * 10;
}

std::optional<Price> PriceModel::price() const
{
    if (!known())
        return std::nullopt;
    const Project &project = m_workspace.project();
    return priceOf(clothsCost() + m_sundries, paidTenths(), m_terms, m_workspace.plan().size.finished,
                   project.kits, project.system);
}

QString PriceModel::priceText() const
{
    const std::optional<Price> reckoned = price();
    return reckoned ? moneyText(reckoned->price) : QString();
}

QVariantList PriceModel::parts() const
{
    const std::optional<Price> reckoned = price();
    if (!reckoned)
        return {};
    const Marks marks = m_workspace.project().marks();
    std::int64_t from = 0;
    const auto part = [&](const char *key, const QString &says, std::int64_t amount) {
        QVariantMap told = line(says, moneyText(amount));
        told.insert(QStringLiteral("key"), QLatin1String(key));
        told.insert(QStringLiteral("from"), shareOfAll(from, reckoned->price));
        told.insert(QStringLiteral("share"), shareOfAll(amount, reckoned->price));
        told.insert(QStringLiteral("amount"), placeOf(QLatin1String(key)));
        from += amount;
        return told;
    };
    QVariantMap cloth = part("cloth", tr("cloth"), clothsCost());
    cloth.insert(QStringLiteral("cloths"), clothShares(reckoned->price));
    // Symbols of units are the same in every language.
    const QString time = QStringLiteral("%1 h %2 min").arg(paidTenths() / 600).arg(paidTenths() / 10 % 60);
    //: so much money an hour, after "10 h 51 min"
    const QString rate = tr("at %1").arg(moneyText(m_terms.rate));
    return {cloth, part("work", onOneLine(time) + u' ' + onOneLine(rate), reckoned->work),
            part("sundries", tr("thread, web, needles"), m_sundries),
            //: overhead: machine, room, light, tools; %1 a percentage
            part("overhead", tr("overhead, %1").arg(onOneLine(valueText(m_terms.overhead, marks))),
                 reckoned->withOverhead - reckoned->direct),
            //: margin: what is left for the business; %1 a percentage
            part("margin", tr("margin, %1").arg(onOneLine(valueText(m_terms.margin, marks))),
                 reckoned->price - reckoned->withOverhead)};
}

QVariantMap PriceModel::tag() const
{
    const std::int64_t whole = price().value_or(Price()).price;
    return {{QStringLiteral("value"), moneyText(m_asked > 0 ? m_asked : whole)},
            {QStringLiteral("asked"), m_asked > 0},
            {QStringLiteral("share"), m_asked > 0 ? std::min(1.0, shareOfAll(m_asked, whole)) : 1.0}};
}

QVariantList PriceModel::tape() const
{
    const std::int64_t whole = price().value_or(Price()).price;
    if (whole <= 0)
        return {};
    constexpr int between = 5; // marks to a round amount
    const std::int64_t step = stepOfTape(whole);
    QVariantList marks;
    for (std::int64_t i = 0; step * i <= whole * between; ++i) {
        const std::int64_t at = step * i / between;
        const bool round = i % between == 0;
        marks << QVariantMap{{QStringLiteral("share"), shareOfAll(at, whole)},
                             {QStringLiteral("says"), !round            ? QString()
                                                      : step % 100 == 0 ? QLocale().toString(at / 100)
                                                                        : moneyText(at)}};
    }
    return marks;
}

QVariantList PriceModel::besides() const
{
    const std::optional<Price> reckoned = price();
    if (!reckoned)
        return {};
    const Project &project = m_workspace.project();
    QVariantList lines;
    if (m_asked > 0)
        lines << line(tr("the price"), moneyText(reckoned->price));
    if (project.kits > 1)
        lines << line(tr("each of %1").arg(project.kits),
                      moneyText((reckoned->price * 2 + project.kits) / (2 * project.kits)));
    lines << line(project.system == System::Inch ? tr("a square inch") : tr("a square decimetre"),
                  moneyText(reckoned->perSquare));
    return lines;
}

QString PriceModel::notesSay() const
{
    const Project &project = m_workspace.project();
    QStringList notes;
    if (m_terms.rate == 0)
        notes.append(tr("Say what an hour of your work is worth, and it is counted."));
    std::int64_t bought = 0;
    QStringList bare;
    for (const Buy &buy : m_shop.list()) {
        bought += buy.cents.value_or(0);
        const Cloth *cloth = clothNamed(project, buy.cloth);
        if (!cloth || !cloth->price)
            bare.append(clothAmongAll(project, buy.cloth));
    }
    if (bought > clothsCost())
        //: %1 is an amount of money: more cloth is bought than the piece uses
        notes.append(tr("The cloth to buy costs %1; what is left over stays yours.").arg(moneyText(bought)));
    if (!bare.isEmpty())
        notes.append(tr("Without a price, so not counted: %1. Enter prices at Fit, with the cloths.")
                         .arg(bare.join(QStringLiteral(", "))));
    notes.append(hours().ownMinutes ? tr("The minutes at the machine are your own.")
                                    : tr("The hours are usual ones; log three blocks for your own."));
    return notes.join(QLatin1Char(' '));
}

QString PriceModel::unpaidSays() const
{
    const std::optional<Price> reckoned = price();
    if (!reckoned || m_asked == 0 || m_terms.rate == 0)
        return {};
    const std::int64_t unpaid = unpaidTenths(m_asked, reckoned->materials, paidTenths(), m_terms);
    if (unpaid == 0)
        return tr("Asking %1 pays for all your time.").arg(moneyText(m_asked));
    return tr("Asking %1 leaves %2 hours you will not be paid for.")
        .arg(moneyText(m_asked), hoursText(unpaid));
}

QVariantList PriceModel::amounts() const
{
    const auto amount = [](const QString &key, const QString &says, const char *kind,
                           const FigureView &figure) {
        return QVariantMap{{QStringLiteral("key"), key},
                           {QStringLiteral("says"), says},
                           {QStringLiteral("kind"), QLatin1String(kind)},
                           {QStringLiteral("figure"), QVariant::fromValue(figure)}};
    };
    const Marks marks = m_workspace.project().marks();
    return {amount(rateName, tr("an hour of your work"), "price", moneyFigure(m_terms.rate)),
            //: overhead: machine, room, light, tools
            amount(overheadName, tr("overhead"), "share", figureOf(m_terms.overhead, marks)),
            //: margin: what is left for the business
            amount(marginName, tr("margin"), "share", figureOf(m_terms.margin, marks)),
            amount(sundriesName, tr("thread, web, needles"), "price", moneyFigure(m_sundries)),
            amount(askedName, tr("if you ask"), "price",
                   moneyFigure(m_asked > 0 ? m_asked : price().value_or(Price()).price))};
}

} // namespace matside
