// SPDX-License-Identifier: MIT
#pragma once

#include "app/photokeeper.h"
#include "app/session.h"

#include <QAbstractListModel>
#include <QVariantList>

#include <map>

namespace matside {

/// Every block of the piece in the order of its layout, front view, with the newest picture of its front.
/// Looks at the store only while it is shown.
class Gallery : public QAbstractListModel, public Single<Gallery> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(int count READ count NOTIFY shown FINAL)
    Q_PROPERTY(int columns READ columns NOTIFY shown FINAL)
    Q_PROPERTY(int pictured READ pictured NOTIFY shown FINAL)
    Q_PROPERTY(QVariantList tally READ tally NOTIFY shown FINAL)
    Q_PROPERTY(bool active READ active WRITE setActive NOTIFY shown FINAL)
public:
    enum Role {
        Block = Qt::UserRole + 1,
        State,     ///< "to-do", "stitched", "trimmed", "joined", "spoiled", "lost"
        StateSays, ///< the same in words
        Thumb,     ///< address of the small picture; empty while there is none
        Flagged,   ///< something of it was flagged
        Noted,     ///< words were written of it
        SizeSays   ///< its outline as measured, a length on the ruler's marks
    };
    Gallery(Workspace &workspace, PhotoKeeper &keeper);
    using Single<Gallery>::create;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    [[nodiscard]] int columns() const;
    /// How many blocks have a picture.
    [[nodiscard]] int pictured() const;
    /// How many blocks are how far: {state, says, count}, those to do first, none of which there is none.
    [[nodiscard]] QVariantList tally() const;
    [[nodiscard]] bool active() const { return m_active; }
    void setActive(bool active);

    /// Everything noted of a block and of those it took the place of, newest first: {number, block, sizeSays,
    /// flagsSays, words, front, back}. Front and back are addresses of the photographs as they came.
    Q_INVOKABLE QVariantList history(const QString &block) const;

signals:
    void shown();

private:
    struct Cell {
        QString block;
        std::optional<BlockState> state;
        QString size;
        QString sha;
        QString format;
        bool flagged = false;
        bool noted = false;
        friend bool operator==(const Cell &, const Cell &) = default;
    };
    void refresh();
    [[nodiscard]] std::vector<Cell> cells() const;

    Workspace &m_workspace;
    PhotoKeeper &m_keeper;
    std::vector<Cell> m_rows;
    bool m_active = false;
};

} // namespace matside
