// SPDX-License-Identifier: MIT
#include "app/pricemodel.h"

#include "app/figures.h"
#include "app/money.h"
#include "app/reply.h"
#include "app/shopwords.h"
#include "app/wording.h"
#include "length/read.h"

#include <QJsonDocument>
#include <QJsonObject>

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

QVariantMap line(const QString &says, const QString &value, bool total = false)
{
    return {
        {QStringLiteral("says"), says}, {QStringLiteral("value"), value}, {QStringLiteral("total"), total}};
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

std::int64_t PriceModel::clothsCost() const
{
    const Project &project = m_workspace.project();
    std::int64_t all = 0;
    for (const Buy &buy : m_shop.list()) {
        const Cloth *cloth = clothNamed(project, buy.cloth);
        if (cloth && cloth->price)
            all += costOf(*cloth->price, buy.cut + buy.straighten, project.system).value_or(0);
        for (const BuyPackages &packages : buy.packages)
            all += packages.cents.value_or(0);
    }
    return all;
}

Hours PriceModel::hours() const
{
    return hoursFor(m_workspace.project(), m_workspace.plan());
}

std::optional<Price> PriceModel::price() const
{
    if (!known())
        return std::nullopt;
    const Project &project = m_workspace.project();
    return priceOf(clothsCost() + m_sundries, hours().all(), m_terms, m_workspace.plan().size.finished,
                   project.kits, project.system);
}

QString PriceModel::priceText() const
{
    const std::optional<Price> reckoned = price();
    return reckoned ? moneyText(reckoned->price) : QString();
}

QVariantList PriceModel::working() const
{
    const std::optional<Price> reckoned = price();
    if (!reckoned)
        return {};
    const Project &project = m_workspace.project();
    const Marks marks = project.marks();
    const auto percent = [&](Share share) { return valueText(share, marks); };
    QVariantList lines;
    lines << line(tr("cloth the piece uses, at its price"), moneyText(clothsCost()));
    if (m_sundries > 0)
        lines << line(tr("thread, web, needles"), moneyText(m_sundries));
    lines << line(tr("%1 hours at %2").arg(hoursText(hours().all()), moneyText(m_terms.rate)),
                  moneyText(reckoned->work))
          << line(tr("together"), moneyText(reckoned->direct))
          //: overhead: machine, room, light, tools; %1 a percentage
          << line(tr("and %1 overhead").arg(percent(m_terms.overhead)), moneyText(reckoned->withOverhead))
          //: margin: what is left for the business; %1 a percentage
          << line(tr("and %1 margin: the price").arg(percent(m_terms.margin)), moneyText(reckoned->price),
                  true);
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
    std::int64_t bought = 0;
    for (const Buy &buy : m_shop.list())
        bought += buy.cents.value_or(0);
    if (bought > clothsCost())
        //: %1 and %2 are amounts of money
        notes.append(
            tr("This counts the cloth that is used, %1. The shopping list costs %2, because cloth is sold "
               "by the step; what is left over stays yours.")
                .arg(moneyText(clothsCost()), moneyText(bought)));
    if (m_terms.rate == 0)
        notes.append(tr("Say what an hour of your work is worth, and it is counted."));
    QStringList bare;
    for (const Buy &buy : m_shop.list()) {
        const Cloth *cloth = clothNamed(project, buy.cloth);
        if (!cloth || !cloth->price)
            bare.append(clothAmongAll(project, buy.cloth));
    }
    if (!bare.isEmpty())
        notes.append(tr("Without a price, so not counted: %1. Enter prices at Fit, with the cloths.")
                         .arg(bare.join(QStringLiteral(", "))));
    notes.append(
        hours().ownMinutes
            ? tr("The minutes at the machine are your own; trimming, joining and edging are usual ones.")
            : tr("The hours are usual ones; log three blocks with their minutes and yours are taken."));
    return notes.join(QLatin1Char(' '));
}

QString PriceModel::unpaidSays() const
{
    const std::optional<Price> reckoned = price();
    if (!reckoned || m_asked == 0 || m_terms.rate == 0)
        return {};
    const std::int64_t unpaid = unpaidTenths(m_asked, reckoned->materials, hours().all(), m_terms);
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
