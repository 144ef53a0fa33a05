// SPDX-License-Identifier: MIT
#pragma once

#include "app/session.h"
#include "app/views.h"

#include <QAbstractListModel>
#include <QVariantMap>

namespace matside {

/// The hoops she owns, kept with the tablet and not with one project, each beside the project at hand: does
/// the block fit, by how much, and what it takes. A hoop's name is not its field: every size is measured.
class HoopShelf : public QAbstractListModel, public Single<HoopShelf> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)
    Q_PROPERTY(int current READ current NOTIFY currentChanged FINAL)
    Q_PROPERTY(QString takesSays READ takesSays NOTIFY currentChanged FINAL)
    Q_PROPERTY(double largestMm READ largestMm NOTIFY currentChanged FINAL)
public:
    enum Role {
        Name = Qt::UserRole + 1,
        Fits,
        FitSays,    ///< fits, and by how much; or how much too large the block is
        TakesSays,  ///< strip width, blocks on a strip, strips and cloth
        TakesShort, ///< how many strips of how many blocks
        IsCurrent,
        Magnetic,
        View, ///< {outside, opening, field, sent: each {alongMm, acrossMm}; across: the room is tightest
              ///< across}
        Room  ///< what the block leaves of the field, or is over it
    };
    HoopShelf(Workspace &workspace, Session &session);
    using Single<HoopShelf>::create;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_hoops.size()); }
    [[nodiscard]] const std::vector<Hoop> &hoops() const { return m_hoops; }
    /// The project's own hoop among them, or −1.
    [[nodiscard]] int current() const;
    /// What the piece takes with it.
    [[nodiscard]] QString takesSays() const;
    /// The longest side of any of them, or of the block: all are drawn to one scale.
    [[nodiscard]] double largestMm() const;

    /// Takes the hoop into the project at hand; one undoable change.
    Q_INVOKABLE void choose(int row);
    Q_INVOKABLE void add();
    Q_INVOKABLE void remove(int row);
    /// The measures of a hoop, to be stepped or typed: {key, says, figure, text}.
    Q_INVOKABLE QVariantList measures(int row) const;
    /// {ok, says}
    Q_INVOKABLE QVariantMap enter(int row, const QString &key, const QString &text);
    Q_INVOKABLE void nudge(int row, const QString &key, int marks);
    Q_INVOKABLE void rename(int row, const QString &name);
    Q_INVOKABLE void setMagnetic(int row, bool magnetic);
    /// "left", "right" or "": the side of the machine's arm the bracket is on.
    Q_INVOKABLE void setBracket(int row, const QString &side);
    Q_INVOKABLE QString bracket(int row) const;

signals:
    void countChanged();
    void currentChanged();

private:
    void read();
    bool keep();
    void refresh();
    [[nodiscard]] bool known(int row) const { return row >= 0 && row < count(); }

    Workspace &m_workspace;
    Session &m_session;
    std::vector<Hoop> m_hoops;
};

} // namespace matside
