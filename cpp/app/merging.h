// SPDX-License-Identifier: MIT
#pragma once

#include "app/photokeeper.h"
#include "app/workspace.h"
#include "project/merge.h"
#include "share/unpacking.h"

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace matside {

/// A share file of a project that is on this tablet as well: what of it is not here yet, and what the two
/// tell differently, a row each, for her to choose. Nothing is written until she has chosen and says so; then
/// all of it is one edit of the project, which Undo takes back.
class Merging : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to Sharing")
    Q_PROPERTY(bool possible READ possible NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)
    Q_PROPERTY(QStringList lines READ lines NOTIFY changed FINAL)
    Q_PROPERTY(bool nothingNew READ nothingNew NOTIFY changed FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(int unanswered READ unanswered NOTIFY changed FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)
public:
    enum Role { Label = Qt::UserRole + 1, Here, There, Together, Why, Said };
    /// `Said` of a row: nothing yet, this tablet, the other one, both counts together.
    enum Saying { Open, ThisTablet, OtherTablet, BothTogether };
    Q_ENUM(Saying)

    Merging(Workspace &workspace, PhotoKeeper &keeper);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// The project of the file is on this tablet.
    [[nodiscard]] bool possible() const { return m_possible; }
    /// Its name here.
    [[nodiscard]] QString name() const;
    /// Why the two cannot be put together, or "".
    [[nodiscard]] QString refusal() const { return m_refusal; }
    /// What comes without asking.
    [[nodiscard]] QStringList lines() const;
    /// All that is in the file is here already.
    [[nodiscard]] bool nothingNew() const;
    [[nodiscard]] int count() const { return static_cast<int>(m_merged.questions.size()); }
    [[nodiscard]] int unanswered() const;
    [[nodiscard]] bool ready() const;

    Q_INVOKABLE void say(int row, int saying);

    /// Looks what a file that was looked into would bring.
    void look(const Inside &inside);
    void leave();
    /// Of the file what is to be kept: the notes that are not here yet.
    [[nodiscard]] Inside missing() const;
    /// Puts it all together, once the photographs of `notes` are kept. The project's id.
    [[nodiscard]] StoreResult<QString> takeIn(const std::vector<Note> &notes);

signals:
    void changed();

private:
    [[nodiscard]] bool merge();

    Workspace &m_workspace;
    PhotoKeeper &m_keeper;
    Inside m_inside;
    QString m_mine;                ///< the document here
    std::optional<QString> m_base; ///< what both tablets had
    std::vector<Note> m_notes;     ///< not here yet
    Project m_project;
    Answers m_answers;
    Merged m_merged;
    QString m_refusal;
    bool m_possible = false;
};

} // namespace matside
