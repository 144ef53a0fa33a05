// SPDX-License-Identifier: MIT
#pragma once

#include "app/fieldsmodel.h"
#include "app/fitlists.h"
#include "app/openfiles.h"
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
    Q_PROPERTY(matside::FigureView finishedAlong READ finishedAlong NOTIFY sizeChanged FINAL)
    Q_PROPERTY(matside::FigureView finishedAcross READ finishedAcross NOTIFY sizeChanged FINAL)
    Q_PROPERTY(matside::FigureView block READ block NOTIFY blockChanged FINAL)
    Q_PROPERTY(matside::TableView drawing READ drawing NOTIFY drawingChanged FINAL)
    Q_PROPERTY(QVariantList mats READ mats NOTIFY drawingChanged FINAL)
    Q_PROPERTY(QVariantMap cloths READ cloths NOTIFY clothsChanged FINAL)
    Q_PROPERTY(QString madeSays READ madeSays NOTIFY madeChanged FINAL)
    Q_PROPERTY(bool sentToMend MEMBER m_sentToMend NOTIFY sentToMendChanged FINAL)
    Q_PROPERTY(matside::FieldsModel *fields READ fields CONSTANT FINAL)
    Q_PROPERTY(matside::FiguresModel *figures READ figures CONSTANT FINAL)
    Q_PROPERTY(matside::ProblemsModel *problems READ problems CONSTANT FINAL)
    Q_PROPERTY(matside::OpenFiles *files READ files CONSTANT FINAL)
public:
    explicit FitModel(Workspace &workspace);
    using Single<FitModel>::create;

    [[nodiscard]] FigureView finishedAlong() const { return m_along; }
    [[nodiscard]] FigureView finishedAcross() const { return m_across; }
    [[nodiscard]] FigureView block() const { return m_block; }
    [[nodiscard]] TableView drawing() const { return m_drawing; }
    /// A set of mats, each as {x, y, turn}; empty for one piece.
    [[nodiscard]] QVariantList mats() const { return m_mats; }
    /// The cloths the piece is cut of, as its drawings show them: see clothsDrawn().
    [[nodiscard]] QVariantMap cloths() const { return m_cloths; }
    /// What is made already, named and counted; empty before anything is.
    [[nodiscard]] QString madeSays() const { return m_madeSays; }
    [[nodiscard]] FieldsModel *fields() { return &m_fields; }
    [[nodiscard]] FiguresModel *figures() { return &m_figures; }
    [[nodiscard]] ProblemsModel *problems() { return &m_problems; }
    [[nodiscard]] OpenFiles *files() { return &m_files; }

    Q_INVOKABLE void takeOffer(int row, int index);
    Q_INVOKABLE void nudge(const QString &pointer, int steps);
    /// {ok, says}: what was typed, taken or refused with the nearest value that works.
    Q_INVOKABLE QVariantMap enter(const QString &pointer, const QString &text);
    /// One more cloth or ruler ("/cloths", "/rulers"): {ok, says, item}, `item` the pointer of the new one.
    Q_INVOKABLE QVariantMap addItem(const QString &list);
    /// Takes the cloth or ruler at a pointer away, unless something hangs on it: {ok, says}.
    Q_INVOKABLE QVariantMap takeItemAway(const QString &item);
    Q_INVOKABLE void choose(const QString &pointer, const QVariant &value);
    /// The fractions of her finest ruler: {num, den, text}.
    Q_INVOKABLE QVariantList marks(const QString &pointer) const;
    Q_INVOKABLE void beginDrag(const QString &pointer);
    Q_INVOKABLE void dragTo(const QString &pointer, double mm);
    Q_INVOKABLE void dragCorner(double alongMm, double acrossMm);
    Q_INVOKABLE void endDrag();

signals:
    void sizeChanged();
    void blockChanged();
    void drawingChanged();
    void clothsChanged();
    void madeChanged();
    void sentToMendChanged();
    void itemTakenAway();

private:
    void refresh();
    void tellMade(const QString &made);
    /// The project with one field changed; nothing when the value cannot be taken.
    [[nodiscard]] std::optional<Project> with(const QString &pointer, const OfferValue &value) const;

    Workspace &m_workspace;
    FieldsModel m_fields;
    FiguresModel m_figures;
    ProblemsModel m_problems;
    OpenFiles m_files;
    FigureView m_along;
    FigureView m_across;
    FigureView m_block;
    TableView m_drawing;
    QVariantMap m_cloths;
    QString m_madeSays;
    bool m_sentToMend = false; ///< another station sent her here to what stands in the way
    QVariantList m_mats;
};

} // namespace matside
