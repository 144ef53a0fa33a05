// SPDX-License-Identifier: MIT
#pragma once

#include "app/stepmodel.h"
#include "made/placing.h"
#include "made/testjoin.h"

#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// A finished join in section, in millimetres, for its drawing: seam A, the visible sashing to seam B, the
/// fold on the back.
struct SectionView {
    Q_GADGET
    QML_VALUE_TYPE(sectionView)
    Q_PROPERTY(bool backed MEMBER backed)
    Q_PROPERTY(double seamMm MEMBER seamMm)
    Q_PROPERTY(double finishedMm MEMBER finishedMm)
    Q_PROPERTY(double allowanceMm MEMBER allowanceMm)
    Q_PROPERTY(bool filled MEMBER filled)
    Q_PROPERTY(bool doubled MEMBER doubled)
    Q_PROPERTY(double foldMm MEMBER foldMm)
    Q_PROPERTY(double catchMm MEMBER catchMm)
    Q_PROPERTY(double loftMm MEMBER loftMm)
    Q_PROPERTY(bool tested MEMBER tested)
    Q_PROPERTY(double gapMm MEMBER gapMm)
public:
    bool backed = true; ///< false for the clean back: no back strip
    double seamMm = 0;
    double finishedMm = 0;
    double allowanceMm = 0;
    bool filled = false;  ///< batting is laid in between the allowances
    bool doubled = false; ///< the back strip is two cloths with a fold ready made
    double foldMm = 0;
    double catchMm = 0; ///< what folding the shown amount gives
    double loftMm = 0;
    bool tested = false; ///< the test join as it was sewn
    double gapMm = 0;    ///< measured at it between the allowances; minus: so far they lie over each other
};

/// The Join station: which blocks next, how deep, how much under, where the marks fall, and what a measured
/// row means.
class JoinModel : public QObject, public Single<JoinModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(matside::SectionView section READ section NOTIFY changed FINAL)
    Q_PROPERTY(matside::SectionView testSection READ testSection NOTIFY changed FINAL)
    Q_PROPERTY(matside::SectionView trialSection READ trialSection NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView testSeam READ testSeam NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView testGap READ testGap NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString tells READ tells NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView figure READ figure NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView seam READ seam NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView fold READ fold NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView held READ held NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView missed READ missed NOTIFY changed FINAL)
    Q_PROPERTY(int columns READ columns NOTIFY changed FINAL)
    Q_PROPERTY(int rows READ rows NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList blocks READ blocks NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList marks READ marks NOTIFY changed FINAL)
    Q_PROPERTY(double rowMm READ rowMm NOTIFY changed FINAL)
    Q_PROPERTY(QString pressSays READ pressSays NOTIFY changed FINAL)
    Q_PROPERTY(QString fillSays READ fillSays NOTIFY changed FINAL)
    Q_PROPERTY(QString bulkSays READ bulkSays NOTIFY changed FINAL)
    Q_PROPERTY(QString rowSays READ rowSays NOTIFY changed FINAL)
    Q_PROPERTY(bool tested READ tested NOTIFY changed FINAL)
    Q_PROPERTY(QString testSays READ testSays NOTIFY changed FINAL)
    Q_PROPERTY(QString mendSays READ mendSays NOTIFY changed FINAL)
    Q_PROPERTY(QStringList testLines READ testLines NOTIFY changed FINAL)
    Q_PROPERTY(QString otherSays READ otherSays NOTIFY changed FINAL)
    Q_PROPERTY(QString sashingSays READ sashingSays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList ways READ ways NOTIFY changed FINAL)
    Q_PROPERTY(QString remembered READ remembered NOTIFY changed FINAL)
    Q_PROPERTY(QString swapSays READ swapSays NOTIFY changed FINAL)
    Q_PROPERTY(bool mayLay READ mayLay NOTIFY changed FINAL)
    Q_PROPERTY(bool measuring READ measuring NOTIFY changed FINAL)
    Q_PROPERTY(bool marking READ marking NOTIFY changed FINAL)
public:
    JoinModel(Workspace &workspace, Session &session, StepModel &steps);
    using Single<JoinModel>::create;

    [[nodiscard]] SectionView section() const;
    /// The test join as it was sewn; before that the join as it will be.
    [[nodiscard]] SectionView testSection() const;
    /// The test join as it lies to be measured: with what was read of it so far.
    [[nodiscard]] SectionView trialSection() const;
    [[nodiscard]] FigureView testSeam() const;
    /// The gap or the overlap; invalid where the edges meet.
    [[nodiscard]] FigureView testGap() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString tells() const;
    [[nodiscard]] FigureView figure() const;
    [[nodiscard]] FigureView seam() const;
    [[nodiscard]] FigureView fold() const;
    /// The catch that folding the shown amount gives.
    [[nodiscard]] FigureView held() const;
    /// The fold that would be missed: one that leaves less catch than holds (F10).
    [[nodiscard]] FigureView missed() const;
    [[nodiscard]] int columns() const;
    [[nodiscard]] int rows() const;
    /// Front view, row by row: {block, up (degrees), joined, now}.
    [[nodiscard]] QVariantList blocks() const;
    /// Match marks of the long sashing from the row's raw left end: {figure, mm}.
    [[nodiscard]] QVariantList marks() const;
    [[nodiscard]] double rowMm() const;
    [[nodiscard]] QString pressSays() const;
    /// What was noted of the two blocks in hand when they were stitched, on one line; empty where nothing
    /// was.
    [[nodiscard]] QString remembered() const;
    [[nodiscard]] QString fillSays() const;
    [[nodiscard]] QString bulkSays() const;
    [[nodiscard]] QString rowSays() const;
    /// The test join was made and its gap measured (F9).
    [[nodiscard]] bool tested() const;
    /// "Test join: they overlap by {1/16 in}."
    [[nodiscard]] QString testSays() const;
    /// What follows from it as the plan stands: the new seam, or strips cut anew.
    [[nodiscard]] QString mendSays() const;
    /// What else it means: the outline in view, an overlap to be pared, the sashing as it will be seen.
    [[nodiscard]] QStringList testLines() const;
    /// The other way to mend it, strips cut anew with the seam as it was, as a button's words; empty once
    /// they are cut.
    [[nodiscard]] QString otherSays() const;
    /// What lies inside the sashing and how the back is closed, in one line.
    [[nodiscard]] QString sashingSays() const;
    /// The ways to fill a sashing and to close the back: {kind, says, detail, chosen}; kinds filler,
    /// allowance, pared, turned, doubled (F7, F10). Only those that the plan takes without a new problem.
    [[nodiscard]] QVariantList ways() const;
    /// The swap proposed next, and why; empty when the blocks lie well or are sewn.
    [[nodiscard]] QString swapSays() const;
    /// Blocks lie on the table that are not sewn to a neighbour yet.
    [[nodiscard]] bool mayLay() const;
    /// A row lies on the table to be measured; a long sashing to be marked.
    [[nodiscard]] bool measuring() const;
    [[nodiscard]] bool marking() const;

    /// The row's raw length: {ok, says}; it sets the marks and the long sashings from here on.
    Q_INVOKABLE QVariantMap measureRow(const QString &text);

    /// Does the proposed swap; or swaps two places, counted row by row. One undoable change: {ok, says}.
    Q_INVOKABLE QVariantMap takeSwap();
    Q_INVOKABLE QVariantMap swapPlaces(int first, int second);
    /// Takes one of the ways, one undoable change: {ok, says}.
    Q_INVOKABLE QVariantMap takeWay(const QString &kind);
    /// Takes the other way, one undoable change: {ok, says}.
    Q_INVOKABLE QVariantMap useOther();

signals:
    void changed();

private:
    [[nodiscard]] std::optional<JoinAnswer> answered() const;
    [[nodiscard]] bool byStrip() const;
    /// The strip's width when the gap is mended by it; nothing when that is no way now.
    [[nodiscard]] std::optional<Length> otherStrip() const;
    /// How the blocks lie, reckoned at most once for every change.
    struct Layout {
        std::vector<std::string>
            places; ///< of the first piece, row by row; further pieces are not told apart
        std::vector<std::string> labels; ///< what lies there
        std::vector<Laid> laid;          ///< empty where blocks cannot be laid anew
        std::optional<Swap> swap;        ///< the one to propose
    };
    [[nodiscard]] const Layout &layout() const;
    [[nodiscard]] std::vector<Laid> laidAt(const std::vector<std::string> &labels) const;
    [[nodiscard]] bool doing(const char *name) const;
    /// Index of the join in hand among all short joins, or rows, of the piece in hand.
    [[nodiscard]] int at() const { return m_steps.done(); }
    [[nodiscard]] Length plannedRow() const;

    Workspace &m_workspace;
    Session &m_session;
    StepModel &m_steps;
    mutable std::optional<Layout> m_layout;
};

} // namespace matside
