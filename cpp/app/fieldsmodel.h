// SPDX-License-Identifier: MIT
#pragma once

#include "app/field.h"
#include "app/views.h"
#include "app/workspace.h"

#include <QAbstractListModel>

namespace matside {

/// What she decides, row by row, with the value in force and what stands in its way. A change tells the
/// views which rows read otherwise, and in what: while a finger drags, that is a handful of them.
class FieldsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to FitModel")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)
public:
    enum Role {
        Pointer = Qt::UserRole + 1,
        Group,
        GroupSign, ///< the group by its name in the code
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
        InUse,
        Item ///< pointer of the cloth or ruler a row belongs to
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
    /// What the list of fields hangs on.
    struct Shape {
        System system = System::Inch;
        std::size_t cloths = 0;
        std::size_t rulers = 0;
        QString tongue; ///< language and country all is worded in
        friend bool operator==(const Shape &, const Shape &) = default;
    };
    /// How a field stands.
    struct State {
        OfferValue value;
        Marks marks;
        FigureView figure;
        QString label;
        QString said; ///< the choice in words; of a cloth's or ruler's head what is said beside its name
        QString problem;
        bool first = false;
        bool canLess = false;
        bool canMore = false;
        bool reckoned = false;
        bool inUse = true;
    };
    [[nodiscard]] State stateOf(std::size_t row, const State *before) const;
    void updateRow(std::size_t row);
    void startAnew();
    /// Takes rows out and puts rows in where a cloth or ruler came or went.
    void rearrange();

    Workspace &m_workspace;
    std::vector<Field> m_fields;
    std::vector<State> m_states;
    Shape m_shape;
};

} // namespace matside
