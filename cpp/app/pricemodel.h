// SPDX-License-Identifier: MIT
#pragma once

#include "app/shopmodel.h"
#include "plan/hours.h"
#include "plan/price.h"

#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// Cost, hours and price of the piece, with the working (F27). Her rate, overhead and margin are kept with
/// the tablet; what else went into a piece and what she asks for it, with the tablet under the piece.
class PriceModel : public QObject, public Single<PriceModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool known READ known NOTIFY changed FINAL)
    Q_PROPERTY(QString priceText READ priceText NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList parts READ parts NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList tape READ tape NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap tag READ tag NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList besides READ besides NOTIFY changed FINAL)
    Q_PROPERTY(QString notesSay READ notesSay NOTIFY changed FINAL)
    Q_PROPERTY(QString unpaidSays READ unpaidSays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList amounts READ amounts NOTIFY changed FINAL)
public:
    PriceModel(Workspace &workspace, Session &session, const ShopModel &shop);
    using Single<PriceModel>::create;

    /// Whether there is anything to reckon: a shopping list stands.
    [[nodiscard]] bool known() const { return !m_shop.list().empty(); }
    [[nodiscard]] QString priceText() const;
    /// What the price is made of, in order: {key, says, value, from, share, amount}, `from` and `share`
    /// shares of the whole price; the cloth's own `cloths` {print, from, share} likewise. Each is named even
    /// where it is nothing, so that it can be taken in hand: `amount` is its place among the amounts, -1 for
    /// the cloth.
    [[nodiscard]] QVariantList parts() const;
    /// Marks of a tape along the price: {share, says}; `says` is empty on those between round amounts.
    [[nodiscard]] QVariantList tape() const;
    /// What hangs at the strip's end: {value, asked, share}, the price, or what she asks instead and how much
    /// of the strip that is.
    [[nodiscard]] QVariantMap tag() const;
    /// The price another way: each of several pieces, and by area. {says, value}
    [[nodiscard]] QVariantList besides() const;
    /// Which cloths have no price yet, and whose hours these are.
    [[nodiscard]] QString notesSay() const;
    /// What she gives away at the lower price she asks; empty when she asks none.
    [[nodiscard]] QString unpaidSays() const;
    /// {key, says, kind, figure}: rate, overhead, margin, what else went in, what she asks.
    [[nodiscard]] QVariantList amounts() const;

    Q_INVOKABLE void nudge(const QString &key, int steps);
    /// {ok, says}
    Q_INVOKABLE QVariantMap enter(const QString &key, const QString &text);

signals:
    void changed();

private:
    void read();
    void keep();
    [[nodiscard]] std::int64_t *moneyOf(const QString &key);
    [[nodiscard]] Share *shareOf(const QString &key);
    /// What is cut off this cloth at its price, with packages of it.
    [[nodiscard]] std::int64_t costOfCut(const Buy &buy) const;
    [[nodiscard]] std::int64_t clothsCost() const;
    /// The cloths that cost something, each as a share of the whole price.
    [[nodiscard]] QVariantList clothShares(std::int64_t whole) const;
    [[nodiscard]] Hours hours() const;
    /// The work that is paid, by the minute as it is told.
    [[nodiscard]] std::int64_t paidTenths() const;
    [[nodiscard]] std::optional<Price> price() const;

    Workspace &m_workspace;
    Session &m_session;
    const ShopModel &m_shop;
    PriceTerms m_terms;
    std::int64_t m_sundries = 0; ///< thread, web, needles
    std::int64_t m_asked = 0;    ///< 0: the price itself
};

} // namespace matside
