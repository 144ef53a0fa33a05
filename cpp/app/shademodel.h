// SPDX-License-Identifier: MIT
#pragma once

#include "app/session.h"
#include "shade/laying.h"

#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// Light and dark of the piece: its cloths on the ten-step scale, the patches of a design judged against what
/// they lie on, an order proposed for them, and both faces in grey. Reckons only while it is looked at.
class ShadeModel : public QObject, public Single<ShadeModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool active READ active WRITE setActive NOTIFY changed FINAL)
    Q_PROPERTY(bool grey READ grey WRITE setGrey NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList scale READ scale CONSTANT FINAL)
    Q_PROPERTY(QVariantList cloths READ cloths NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList designs READ designs NOTIFY changed FINAL)
    Q_PROPERTY(int design READ design WRITE setDesign NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList pairs READ pairs NOTIFY changed FINAL)
    Q_PROPERTY(QString says READ says NOTIFY changed FINAL)
    Q_PROPERTY(bool clear READ clear NOTIFY changed FINAL)
    Q_PROPERTY(QString orderSays READ orderSays NOTIFY changed FINAL)
    Q_PROPERTY(bool canReorder READ canReorder NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap front READ front NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap back READ back NOTIFY changed FINAL)
public:
    ShadeModel(Workspace &workspace, Session &session);
    using Single<ShadeModel>::create;

    [[nodiscard]] bool active() const { return m_active; }
    void setActive(bool active);
    /// Colours are given as greys of the same lightness.
    [[nodiscard]] bool grey() const { return m_grey; }
    void setGrey(bool grey);
    /// The ten steps, darkest first: {step, grey "#rrggbb"}.
    [[nodiscard]] QVariantList scale() const;
    /// The cloths that are seen, lightest first, those without a colour last: {id, letter, name, part, print,
    /// known, step, colour, grey, value (0…10), says}.
    [[nodiscard]] QVariantList cloths() const { return m_cloths; }
    /// {value, says}; empty when all blocks are alike.
    [[nodiscard]] QVariantList designs() const;
    [[nodiscard]] int design() const { return m_design; }
    void setDesign(int design);
    /// In stitching order: {says, over, under (colours, or greys while grey), apart, clear, least}.
    [[nodiscard]] QVariantList pairs() const;
    /// The pair least apart and what it means, or what is missing to judge one.
    [[nodiscard]] QString says() const;
    /// No pair is less than two steps apart.
    [[nodiscard]] bool clear() const { return !m_least || m_least->apart >= stepsClear; }
    /// The order proposed, or why there is none to be taken; empty when the present one is as good as any.
    [[nodiscard]] QString orderSays() const;
    [[nodiscard]] bool canReorder() const;
    /// What its drawing needs of a face: {block, sashing, binding (colours; "" not known), patches (a list a
    /// design of {colour, dye (never grey), widthMm, heightMm}), at (a design's number a block, row by row;
    /// empty: all the first)}.
    [[nodiscard]] QVariantMap front() const;
    [[nodiscard]] QVariantMap back() const;

    /// Lays the patches in the order proposed; one command that can be undone.
    Q_INVOKABLE bool takeOrder();

signals:
    void changed();

private:
    void refresh();
    void sortCloths();
    [[nodiscard]] QVariantMap face(ClothRole cloth, ClothRole sashing) const;
    [[nodiscard]] QString shown(const std::optional<Colour> &colour) const;
    [[nodiscard]] QString nameOf(std::size_t layer) const;
    [[nodiscard]] std::size_t patchCount() const;
    [[nodiscard]] QString inOrder() const;
    /// Why the patches cannot be laid otherwise any more; empty when they can.
    [[nodiscard]] QString fixedSays() const;

    Workspace &m_workspace;
    Session &m_session;
    bool m_active = false;
    bool m_grey = true;
    int m_design = 0;
    QVariantList m_cloths;
    std::vector<Layer> m_layers; ///< the ground, then the design's patches from the lowest up
    QStringList m_names;         ///< theirs, as they are told
    std::vector<Meeting> m_pairs;
    std::optional<Meeting> m_least;
    std::optional<Order> m_order;
};

/// The colour of a cloth as it stands in the file; nothing when there is none, or it is no colour.
[[nodiscard]] std::optional<Colour> colourOf(const Cloth *cloth);
/// The patches of a design from the lowest up, each once; all of the project's where it names none.
[[nodiscard]] std::vector<const Patch *> patchesOf(const Project &project, const Design *design);
/// The number of each block's design by the layout; empty where all are the first.
[[nodiscard]] QVariantList designsOfBlocks(const Project &project);
/// The project with the patches of a design laid in another order: `order` has a place in patchesOf() for
/// each. A project without designs gets one. Nothing when patches cannot be told apart by their names.
[[nodiscard]] std::optional<Project> withOrder(const Project &project, std::size_t design,
                                               const std::vector<std::size_t> &order);

} // namespace matside
