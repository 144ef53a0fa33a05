// SPDX-License-Identifier: MIT
#pragma once

#include "app/shopmodel.h"

#include <QStringList>

namespace matside {

/// The list to take to the shop: what to put into the basket, each to tick. Ticks are kept with
/// the piece and can be undone; that of a cloth is the one on the Shop page.
class TakeModel : public QAbstractListModel, public Single<TakeModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(QString leftSays READ leftSays NOTIFY changed FINAL)
public:
    enum Role {
        Says = Qt::UserRole + 1,
        Detail,
        Colour,
        DrawnAs, ///< the print of a cloth, "thread" or "needles"
        Ticked
    };
    TakeModel(Workspace &workspace, Session &session, ShopModel &shop);
    using Single<TakeModel>::create;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_lines.size()); }
    /// How many are still to be found.
    [[nodiscard]] QString leftSays() const;

    Q_INVOKABLE void tick(int row);

signals:
    void changed();

private:
    struct Line {
        int cloth = -1;     ///< row of the shopping list, −1 none
        std::string sundry; ///< "thread", "needles"
        QString says, detail, colour, drawnAs;
        bool ticked = false;
        friend bool operator==(const Line &, const Line &) = default;
    };
    void refresh();
    [[nodiscard]] std::vector<Line> linesNow() const;

    Workspace &m_workspace;
    Session &m_session;
    ShopModel &m_shop;
    std::vector<Line> m_lines;
};

} // namespace matside
