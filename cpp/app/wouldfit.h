// SPDX-License-Identifier: MIT
#pragma once

#include "app/hoopshelf.h"
#include "plan/candidates.h"
#include "plan/mats.h"

#include <QAbstractListModel>
#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// What would fit the table: layouts nearest to what she wants, each to be seen on the table before one is
/// taken. A layout looked at is only previewed; taking it is one undoable change, leaving puts all back.
class WouldFit : public QAbstractListModel, public Single<WouldFit> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(int chosen READ chosen NOTIFY changed FINAL)
    Q_PROPERTY(bool canTake READ canTake NOTIFY changed FINAL)
    Q_PROPERTY(QString wishSays READ wishSays NOTIFY changed FINAL)
    Q_PROPERTY(QString noneSays READ noneSays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList wishes READ wishes NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap shown READ shown NOTIFY changed FINAL)
    Q_PROPERTY(matside::TableView wantedView READ wantedView NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList wantedMats READ wantedMats NOTIFY changed FINAL)
public:
    enum Role {
        Says = Qt::UserRole + 1, ///< "6 × 3 blocks of 7 in"
        SizeSays,                ///< finished size, and what shows of the table or hangs over it
        TakesSays,               ///< blocks, strips, hours; of all mats
        BriefSays,               ///< "6 × 3 of 7 in"
        SidesSays,               ///< finished size alone
        HoursSays,               ///< the hours of it alone
        MoreSays,                ///< what it needs beyond the project as it is; while it is shown, its cloth
        CautionSays,             ///< a stiff lip, corners that hang
        Drawing,                 ///< the piece on its table
        MatPlaces                ///< a set of them there, each as {x, y, turn}; empty for one piece
    };
    WouldFit(Workspace &workspace, Session &session, const HoopShelf &hoops);
    using Single<WouldFit>::create;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_found.list.size()); }
    /// The row shown on the table, or −1.
    [[nodiscard]] int chosen() const { return m_chosen; }
    [[nodiscard]] bool canTake() const { return m_chosen >= 0 && !m_session.readOnly(); }
    /// What is looked for, in one sentence.
    [[nodiscard]] QString wishSays() const;
    /// Why nothing would fit; empty while something does.
    [[nodiscard]] QString noneSays() const;
    /// What she wants and will have: {key, says, kind, figure} to be stepped or typed ("length", "share",
    /// "count"), or {key, says, kind: "choice", choices: [{value, says}], value}.
    [[nodiscard]] QVariantList wishes() const;
    /// Of the layout on the table {sizeSays, takesSays, moreSays, cautionSays}; empty while none is.
    [[nodiscard]] QVariantMap shown() const;
    /// The table, and on it the size that is wanted: the piece, or one of the mats.
    [[nodiscard]] TableView wantedView() const;
    /// Where the wanted mats lie, as matsView() has them; empty while one piece is wanted.
    [[nodiscard]] QVariantList wantedMats() const;

    /// Looks for layouts; the project's present fit is wanted until she says otherwise.
    Q_INVOKABLE void begin();
    /// Shows a layout on the table.
    Q_INVOKABLE void choose(int row);
    /// Saves the layout shown as one change; false when there is none or it could not be saved.
    Q_INVOKABLE bool take();
    /// Puts the table back as it was.
    Q_INVOKABLE void leave();
    Q_INVOKABLE void nudge(const QString &key, int steps);
    /// {ok, says}
    Q_INVOKABLE QVariantMap enter(const QString &key, const QString &text);
    Q_INVOKABLE void pick(const QString &key, bool value);

signals:
    void changed();

private:
    /// As she says it: what shows or hangs over where there is a table, else the size.
    struct Wanted {
        Pair reveal; ///< negative: hangs over
        Pair size;
        Share washing;
    };
    /// A set of mats instead of one piece.
    struct Mats {
        bool wanted = false;
        std::size_t size = 0;  ///< of the two in use
        bool ends = false;     ///< at the ends too
        std::int64_t most = 0; ///< so many and no more; 0: as many as lie on the table
    };
    void search();
    void searchMats();
    void beginMats();
    [[nodiscard]] Pair matSize() const { return matUse(m_base.system).sizes[m_mats.size]; }
    /// As many mats of that size as lie on the table.
    [[nodiscard]] std::int64_t matsThatLie() const;
    [[nodiscard]] std::int64_t matsWanted() const;
    [[nodiscard]] QVariantList revealWishes() const;
    [[nodiscard]] QVariantList matWishes() const;
    [[nodiscard]] QString tableSays() const;
    void takeBase();
    void forget();
    void heed();
    [[nodiscard]] Pair wantedSize() const;
    [[nodiscard]] bool hasTable() const
    {
        return sizeLeaving(m_base.table.value_or(Table()), {}).has_value();
    }
    [[nodiscard]] bool mats() const { return m_mats.wanted && hasTable(); }
    [[nodiscard]] Length *lengthOf(const QString &key);
    [[nodiscard]] QVariantMap amount(const char *key, const QString &says, const char *kind,
                                     const OfferValue &value) const;
    [[nodiscard]] static QVariantMap either(const char *key, const QString &says, const QString &no,
                                            const QString &yes, bool value);
    [[nodiscard]] static QString blockText(const Candidate &candidate);
    [[nodiscard]] QString sizeSays(const Candidate &candidate) const;
    [[nodiscard]] static QString briefSays(const Candidate &candidate);
    [[nodiscard]] static QString sidesSays(const Candidate &candidate);
    [[nodiscard]] QString takesSays(const Candidate &candidate) const;
    [[nodiscard]] static QString hoursSays(const Candidate &candidate);
    [[nodiscard]] static QString moreSays(const Candidate &candidate, bool shown);
    [[nodiscard]] static QString cautionSays(const Candidate &candidate);

    Workspace &m_workspace;
    Session &m_session;
    const HoopShelf &m_hoops;
    Project m_base; ///< as it lies in the store
    Wanted m_wanted;
    Mats m_mats;
    FitLimits m_limits;
    bool m_hangs[2] = {false, false}; ///< along, across: kept apart from a reveal of nothing
    std::optional<bool> m_leafIn;     ///< the leaf as she says here it lies; absent: as in the project
    bool m_told = false;              ///< she said what she wants
    bool m_open = false;
    int m_chosen = -1;
    Candidates m_found;
};

} // namespace matside
