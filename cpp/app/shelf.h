// SPDX-License-Identifier: MIT
#pragma once

#include "app/session.h"
#include "app/shelfpiece.h"

#include <QAbstractListModel>

namespace matside {

/// Every project on the shelf, with its picture, its name and what comes next.
class Shelf : public QAbstractListModel, public Single<Shelf> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool showPutAway READ showPutAway WRITE setShowPutAway NOTIFY showPutAwayChanged FINAL)
    Q_PROPERTY(int putAwayCount READ putAwayCount NOTIFY countChanged FINAL)
    /// The largest length and width on the shelf, in millimetres, to draw all in proportion to it.
    Q_PROPERTY(double longestAlongMm READ longestAlongMm NOTIFY countChanged FINAL)
    Q_PROPERTY(double longestAcrossMm READ longestAcrossMm NOTIFY countChanged FINAL)
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)
public:
    enum Role {
        Id = Qt::UserRole + 1,
        Name,
        NextText,
        GoesOn,
        PutAway,
        IsDemo,
        View,
        Face,
        Made,
        Metric,
        SizeText,
        StitchedText,
        Share
    };

    Shelf(Workspace &workspace, Session &session);
    using Single<Shelf>::create;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] bool showPutAway() const { return m_showPutAway; }
    void setShowPutAway(bool show);
    [[nodiscard]] int count() const { return static_cast<int>(m_items.size()); }
    /// How many were put away, shown or not.
    [[nodiscard]] int putAwayCount() const { return m_putAwayCount; }
    [[nodiscard]] double longestAlongMm() const { return longest(&TableView::finishedAlongMm); }
    [[nodiscard]] double longestAcrossMm() const { return longest(&TableView::finishedAcrossMm); }
    void reload();

    Q_INVOKABLE void createProject(const QString &name, const QString &system);
    /// Opens the demo at its next step; lays a fresh one on the shelf when there is none.
    Q_INVOKABLE void openDemo();
    Q_INVOKABLE void makeAgain(const QString &id);
    Q_INVOKABLE void rename(const QString &id, const QString &name);
    Q_INVOKABLE void putAway(const QString &id);
    Q_INVOKABLE void bringBack(const QString &id);
    Q_INVOKABLE void throwAway(const QString &id);
    Q_INVOKABLE void metricCopy(const QString &id);

signals:
    void showPutAwayChanged();
    void countChanged();

private:
    struct Item {
        ProjectRow row;
        mutable std::optional<ShelfPiece> looked; ///< only once it is shown: a shelf may be long
    };
    [[nodiscard]] const ShelfPiece &lookedAt(const Item &item) const;
    [[nodiscard]] static QVariant shown(const ShelfPiece &piece, int role);
    [[nodiscard]] double longest(double TableView::*way) const;
    [[nodiscard]] bool readable(const ProjectRow &row) const;
    [[nodiscard]] QString nameOf(const QString &id) const;
    /// The name, with a number after it where another on the shelf has it already.
    [[nodiscard]] QString freeName(const QString &name) const;
    /// Tells what was refused, or shows the shelf anew.
    template <class T> bool after(const StoreResult<T> &done);

    Workspace &m_workspace;
    Session &m_session;
    std::vector<Item> m_items;
    bool m_showPutAway = false;
    int m_putAwayCount = 0;
};

} // namespace matside
