// SPDX-License-Identifier: MIT
#pragma once

#include "app/session.h"
#include "app/views.h"
#include "bench/shopping.h"

#include <QAbstractListModel>
#include <QVariantList>

namespace matside {

/// Strips as they are drawn: {mm, run, repeats, pieces: [{mm, along, gap, count}]}; those of owned pieces are
/// left out, they do not lie on the cloth that is drawn.
[[nodiscard]] QVariantList stripsDrawn(const std::vector<ShopStrip> &strips);

/// The Shop station: cloth by cloth what to buy, how it is cut, and how good that is.
class ShopModel : public QAbstractListModel, public Single<ShopModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(int kits READ kits NOTIFY changed FINAL)
    Q_PROPERTY(QString totalSays READ totalSays NOTIFY changed FINAL)
    Q_PROPERTY(QString sundriesSays READ sundriesSays NOTIFY changed FINAL)
public:
    enum Role {
        Name = Qt::UserRole + 1,
        Colour,
        DrawnAs,
        BuyText,
        BuyLine, ///< its lengths in braces
        CutSays,
        ProofSays,
        CostSays,
        Strips,
        UsableMm,
        LengthMm,
        WidthSays, ///< the two sides of the cloth that is drawn, in braces
        LengthSays,
        Bought
    };
    ShopModel(Workspace &workspace, Session &session);
    using Single<ShopModel>::create;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_list.size()); }
    [[nodiscard]] const std::vector<Buy> &list() const { return m_list; }
    /// For how many kits the list is.
    [[nodiscard]] int kits() const { return static_cast<int>(m_of.kits); }
    /// What all cloths with a price cost together.
    [[nodiscard]] QString totalSays() const;
    /// Thread, bobbins and needles.
    [[nodiscard]] QString sundriesSays() const;

    /// Ticks a cloth as bought, or takes the tick away.
    Q_INVOKABLE void tick(int row);

signals:
    void changed();

private:
    void refresh();
    [[nodiscard]] bool isBought(const Buy &buy) const;

    Workspace &m_workspace;
    Session &m_session;
    std::vector<Buy> m_list;
    Project m_of; ///< what the list was made for
};

} // namespace matside
