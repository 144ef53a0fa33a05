// SPDX-License-Identifier: MIT
#pragma once

#include "app/fitlists.h"
#include "app/single.h"

#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// The Fit station: what she decides, what follows, and the piece on its table. Every step of a drag plans
/// anew; only its end is saved, as one change.
class FitModel : public QObject, public Single<FitModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(matside::FigureView finishedAlong READ finishedAlong NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView finishedAcross READ finishedAcross NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView block READ block NOTIFY changed FINAL)
    Q_PROPERTY(matside::TableView drawing READ drawing NOTIFY changed FINAL)
    Q_PROPERTY(matside::FieldsModel *fields READ fields CONSTANT FINAL)
    Q_PROPERTY(matside::FiguresModel *figures READ figures CONSTANT FINAL)
    Q_PROPERTY(matside::ProblemsModel *problems READ problems CONSTANT FINAL)
public:
    explicit FitModel(Workspace &workspace);
    using Single<FitModel>::create;

    [[nodiscard]] FigureView finishedAlong() const;
    [[nodiscard]] FigureView finishedAcross() const;
    [[nodiscard]] FigureView block() const;
    [[nodiscard]] TableView drawing() const;
    [[nodiscard]] FieldsModel *fields() { return &m_fields; }
    [[nodiscard]] FiguresModel *figures() { return &m_figures; }
    [[nodiscard]] ProblemsModel *problems() { return &m_problems; }

    Q_INVOKABLE void takeOffer(int row, int index);
    Q_INVOKABLE void nudge(const QString &pointer, int steps);
    /// {ok, says}: what was typed, taken or refused with the nearest value that works.
    Q_INVOKABLE QVariantMap enter(const QString &pointer, const QString &text);
    Q_INVOKABLE void choose(const QString &pointer, const QVariant &value);
    /// The fractions of her finest ruler: {num, den, text}.
    Q_INVOKABLE QVariantList marks(const QString &pointer) const;
    Q_INVOKABLE void beginDrag(const QString &pointer);
    Q_INVOKABLE void dragTo(const QString &pointer, double mm);
    Q_INVOKABLE void dragCorner(double alongMm, double acrossMm);
    Q_INVOKABLE void endDrag();

signals:
    void changed();

private:
    void refresh();
    /// The project with one field changed; nothing when the value cannot be taken.
    [[nodiscard]] std::optional<Project> with(const QString &pointer, const OfferValue &value) const;

    Workspace &m_workspace;
    FieldsModel m_fields;
    FiguresModel m_figures;
    ProblemsModel m_problems;
};

} // namespace matside
