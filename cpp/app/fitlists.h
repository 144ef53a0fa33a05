// SPDX-License-Identifier: MIT
#pragma once

#include "app/views.h"
#include "app/workspace.h"

#include <QAbstractListModel>
#include <QVariantList>

namespace matside {

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

/// Problems first, then what is made and fits no longer, then cautions, each with its remedies.
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
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    void refresh();
    [[nodiscard]] const Offer *offer(int row, int index) const;

signals:
    void countChanged();

private:
    /// A problem as it is worded now.
    struct Row {
        Problem problem;
        bool caution = false;
        QString says;
        QVariantList offers;
    };
    [[nodiscard]] Row rowOf(const Problem &problem, bool caution) const;
    void updateRow(std::size_t row, Row &&now);

    Workspace &m_workspace;
    std::vector<Row> m_rows;
};

} // namespace matside
