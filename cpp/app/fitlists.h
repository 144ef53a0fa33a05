// SPDX-License-Identifier: MIT
#pragma once

#include "app/field.h"
#include "app/views.h"
#include "app/workspace.h"

#include <QAbstractListModel>

namespace matside {

/// What she decides, row by row, with the value in force and what stands in its way.
class FieldsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to FitModel")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)
public:
    enum Role {
        Pointer = Qt::UserRole + 1,
        Group,
        Label,
        Kind,
        Figure,
        Value,
        Choices,
        ChoiceText,
        ProblemText,
        CanLess,
        CanMore,
        Reckoned,
        FirstOfGroup,
        InUse
    };
    explicit FieldsModel(Workspace &workspace);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_fields.size()); }
    void refresh();
    [[nodiscard]] const Field *find(const QString &pointer) const;

signals:
    void countChanged();

private:
    Workspace &m_workspace;
    std::vector<Field> m_fields;
};

/// What follows, live.
class FiguresModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to FitModel")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)
public:
    enum Role { Figure = Qt::UserRole + 1, Label };
    explicit FiguresModel(Workspace &workspace);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_figures.size()); }
    void refresh();

signals:
    void countChanged();

private:
    Workspace &m_workspace;
    std::vector<FigureView> m_figures;
};

/// Problems first, then cautions, each with its remedies.
class ProblemsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to FitModel")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)
public:
    enum Role { At = Qt::UserRole + 1, Says, Caution, Offers };
    explicit ProblemsModel(Workspace &workspace);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_problems.size()); }
    void refresh();
    [[nodiscard]] const Offer *offer(int row, int index) const;

signals:
    void countChanged();

private:
    Workspace &m_workspace;
    std::vector<Problem> m_problems;
    std::size_t m_stopping = 0;
};

} // namespace matside
