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
    Q_PROPERTY(QVariantList working READ working NOTIFY changed FINAL)
    Q_PROPERTY(QString notesSay READ notesSay NOTIFY changed FINAL)
    Q_PROPERTY(QString unpaidSays READ unpaidSays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList amounts READ amounts NOTIFY changed FINAL)
public:
    PriceModel(Workspace &workspace, Session &session, const ShopModel &shop);
    using Single<PriceModel>::create;

    /// Whether there is anything to reckon: a shopping list stands.
    [[nodiscard]] bool known() const { return !m_shop.list().empty(); }
    [[nodiscard]] QString priceText() const;
    /// The sum, line by line: {says, value}; `total` on the line under the double rule.
    [[nodiscard]] QVariantList working() const;
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
    /// What is cut off each cloth at its price, and what else went in.
    [[nodiscard]] std::int64_t clothsCost() const;
    [[nodiscard]] Hours hours() const;
    [[nodiscard]] std::optional<Price> price() const;

    Workspace &m_workspace;
    Session &m_session;
    const ShopModel &m_shop;
    PriceTerms m_terms;
    std::int64_t m_sundries = 0; ///< thread, web, needles
    std::int64_t m_asked = 0;    ///< 0: the price itself
};

} // namespace matside
