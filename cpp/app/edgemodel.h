// SPDX-License-Identifier: MIT
#pragma once

#include "app/departure.h"
#include "app/stepmodel.h"
#include "made/finding.h"
#include "made/piece.h"
#include "plan/bindinglay.h"

#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// The piece's outline with its blocks, in millimetres, for its drawing.
struct EdgeView {
    Q_GADGET
    QML_VALUE_TYPE(edgeView)
    Q_PROPERTY(double alongMm MEMBER alongMm)
    Q_PROPERTY(double acrossMm MEMBER acrossMm)
    Q_PROPERTY(int columns MEMBER columns)
    Q_PROPERTY(int rows MEMBER rows)
    Q_PROPERTY(double blockAlongMm MEMBER blockAlongMm)
    Q_PROPERTY(double blockAcrossMm MEMBER blockAcrossMm)
    Q_PROPERTY(double sashingMm MEMBER sashingMm)
    Q_PROPERTY(double outsideMm MEMBER outsideMm)
    Q_PROPERTY(double seamMm MEMBER seamMm)
    Q_PROPERTY(double radiusMm MEMBER radiusMm)
    Q_PROPERTY(double bitesMm MEMBER bitesMm)
    Q_PROPERTY(bool framed MEMBER framed)
    Q_PROPERTY(double depthMm MEMBER depthMm)
    Q_PROPERTY(int scallopsAlong MEMBER scallopsAlong)
    Q_PROPERTY(int scallopsAcross MEMBER scallopsAcross)
public:
    double alongMm = 0;
    double acrossMm = 0;
    int columns = 1;
    int rows = 1;
    double blockAlongMm = 0;
    double blockAcrossMm = 0;
    double sashingMm = 0;
    double outsideMm = 0; ///< from the raw edge to the stitched outline
    double seamMm = 0;    ///< the binding's; 0 for an edge that is not bound
    double radiusMm = 0;
    double bitesMm = 0;  ///< how far a curved edge cuts into the stippling
    bool framed = false; ///< what lies outside the outline is a frame of sashing
    double depthMm = 0;  ///< of the scallops; 0 for an edge without
    int scallopsAlong = 0;
    int scallopsAcross = 0;
};

/// The binding in section, in millimetres: its seam, how far it reaches on the back, the batting's loft.
struct BindingView {
    Q_GADGET
    QML_VALUE_TYPE(bindingView)
    Q_PROPERTY(bool folded MEMBER folded)
    Q_PROPERTY(bool byHand MEMBER byHand)
    Q_PROPERTY(double seamMm MEMBER seamMm)
    Q_PROPERTY(double reachMm MEMBER reachMm)
    Q_PROPERTY(double loftMm MEMBER loftMm)
public:
    bool folded = true; ///< double fold: two layers
    bool byHand = true;
    double seamMm = 0;
    double reachMm = 0; ///< past the seam line, on the back
    double loftMm = 0;
};

/// The Edge station: the piece squared from what was measured, the binding laid round it, the corners, and
/// the last look with the pins counted.
class EdgeModel : public QObject, public Single<EdgeModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(matside::EdgeView view READ view NOTIFY changed FINAL)
    Q_PROPERTY(QString phase READ phase NOTIFY changed FINAL)
    Q_PROPERTY(QString heading READ heading NOTIFY changed FINAL)
    Q_PROPERTY(QString tells READ tells NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList readings READ readings NOTIFY changed FINAL)
    Q_PROPERTY(bool measured READ measured NOTIFY changed FINAL)
    Q_PROPERTY(QString unreadSays READ unreadSays NOTIFY changed FINAL)
    Q_PROPERTY(bool squareEnough READ squareEnough NOTIFY changed FINAL)
    Q_PROPERTY(bool joinsClear READ joinsClear NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList frameActs READ frameActs NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList careActs READ careActs NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList sewActs READ sewActs NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList layActs READ layActs NOTIFY changed FINAL)
    Q_PROPERTY(QStringList frameLines READ frameLines NOTIFY changed FINAL)
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed FINAL)
    Q_PROPERTY(QString remedy READ remedy NOTIFY changed FINAL)
    Q_PROPERTY(bool again READ again NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList corners READ corners NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList planned READ planned NOTIFY changed FINAL)
    Q_PROPERTY(double times READ times NOTIFY changed FINAL)
    Q_PROPERTY(QString roundSays READ roundSays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList lay READ lay NOTIFY changed FINAL)
    Q_PROPERTY(QString laySays READ laySays NOTIFY changed FINAL)
    Q_PROPERTY(matside::BindingView binding READ binding NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView bindingCut READ bindingCut NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView bindingFolded READ bindingFolded NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView bindingSeam READ bindingSeam NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView bindingReach READ bindingReach NOTIFY changed FINAL)
    Q_PROPERTY(QString corner READ corner NOTIFY changed FINAL)
    Q_PROPERTY(QString cornerName READ cornerName NOTIFY changed FINAL)
    Q_PROPERTY(bool squarePiece READ squarePiece NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView radius READ radius NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView curve READ curve NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView depth READ depth NOTIFY changed FINAL)
    Q_PROPERTY(int scallopsAlong READ scallopsAlong NOTIFY changed FINAL)
    Q_PROPERTY(int scallopsAcross READ scallopsAcross NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap topScallop READ topScallop NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap sideScallop READ sideScallop NOTIFY changed FINAL)
    Q_PROPERTY(QStringList bendLines READ bendLines NOTIFY changed FINAL)
    Q_PROPERTY(QString cornerSays READ cornerSays NOTIFY changed FINAL)
    Q_PROPERTY(QString biteSays READ biteSays NOTIFY changed FINAL)
    Q_PROPERTY(QString biteShort READ biteShort NOTIFY changed FINAL)
    Q_PROPERTY(QString cornersFixed READ cornersFixed NOTIFY changed FINAL)
    Q_PROPERTY(int pinsIn READ pinsIn NOTIFY changed FINAL)
    Q_PROPERTY(int pinsOut READ pinsOut NOTIFY changed FINAL)
    Q_PROPERTY(bool pinsMatch READ pinsMatch NOTIFY changed FINAL)
    Q_PROPERTY(QString pinsSay READ pinsSay NOTIFY changed FINAL)
    Q_PROPERTY(QStringList careLines READ careLines NOTIFY changed FINAL)
public:
    EdgeModel(Workspace &workspace, Session &session, StepModel &steps);
    using Single<EdgeModel>::create;

    [[nodiscard]] EdgeView view() const;
    /// "square", "back", "bind", "last"; empty when nothing is left to do here.
    [[nodiscard]] QString phase() const;
    [[nodiscard]] QStringList frameLines() const;
    /// Act by act, {draws, says, minds}: how the frame goes on; care of the finished piece and what may be
    /// sewn to it; how the binding is sewn; how it is laid round.
    [[nodiscard]] QVariantList frameActs() const;
    [[nodiscard]] QVariantList careActs() const;
    [[nodiscard]] QVariantList sewActs() const;
    [[nodiscard]] QVariantList layActs() const;
    [[nodiscard]] QString heading() const;
    [[nodiscard]] QString tells() const;
    /// {says, figure, taken}: top, right, bottom, left, diagonals from top left and top right; as planned
    /// until she entered her own.
    [[nodiscard]] QVariantList readings() const;
    [[nodiscard]] bool measured() const;
    /// How many of the six still stand as planned and were not read; empty when all were.
    [[nodiscard]] QString unreadSays() const;
    [[nodiscard]] bool squareEnough() const;
    /// No join on a corner or a sashing end.
    [[nodiscard]] bool joinsClear() const;
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] QString remedy() const;
    /// Its readings disagree.
    [[nodiscard]] bool again() const;
    /// The measured piece, its departure drawn so many times over, and the size it is squared to, as of a
    /// block; no corners where the readings make no shape.
    [[nodiscard]] QVariantList corners() const;
    [[nodiscard]] QVariantList planned() const;
    [[nodiscard]] double times() const;
    /// Whether the binding still reaches round the piece as it was measured; empty while that is as planned.
    [[nodiscard]] QString roundSays() const;
    /// Where the binding closes (first) and is joined: {side (0 top, clockwise), fromMm, figure, says,
    /// cutSays}.
    [[nodiscard]] QVariantList lay() const;
    [[nodiscard]] QString laySays() const;
    [[nodiscard]] BindingView binding() const;
    [[nodiscard]] FigureView bindingCut() const;
    /// Half the cut width; invalid for a single fold.
    [[nodiscard]] FigureView bindingFolded() const;
    [[nodiscard]] FigureView bindingSeam() const;
    /// How far its fold lies past the seam on the back.
    [[nodiscard]] FigureView bindingReach() const;
    [[nodiscard]] QString sewSays() const;
    /// How the edge runs: "square", "rounded", "circle", "scalloped"; empty for an edge that is not bound.
    [[nodiscard]] QString corner() const;
    /// The same in words, with its measure: "Rounded corners, {3 in}".
    [[nodiscard]] QString cornerName() const;
    /// As long as it is wide: its roundest edge is a circle.
    [[nodiscard]] bool squarePiece() const;
    /// Of rounded corners, of a scallop; invalid without.
    [[nodiscard]] FigureView radius() const;
    /// What the drawing says of a curved edge: its radius, or how deep its scallops are; else invalid.
    [[nodiscard]] FigureView curve() const;
    [[nodiscard]] FigureView depth() const;
    [[nodiscard]] int scallopsAlong() const;
    [[nodiscard]] int scallopsAcross() const;
    /// One scallop of each way, as it is drawn: {count, chord, radius, chordMm, radiusMm}; empty for an edge
    /// without.
    [[nodiscard]] QVariantMap topScallop() const;
    [[nodiscard]] QVariantMap sideScallop() const;
    /// What a curved edge comes to, in lines: all round, and the bias it takes.
    [[nodiscard]] QStringList bendLines() const;
    [[nodiscard]] QString cornerSays() const;
    [[nodiscard]] QString biteSays() const;
    /// What is to be minded of it once nothing can be changed.
    [[nodiscard]] QString biteShort() const;
    /// Why the corners cannot be changed any more; empty while they can.
    [[nodiscard]] QString cornersFixed() const;
    [[nodiscard]] int pinsIn() const;
    [[nodiscard]] int pinsOut() const;
    [[nodiscard]] bool pinsMatch() const;
    [[nodiscard]] QString pinsSay() const;
    [[nodiscard]] QStringList careLines() const;
    /// Sleeve, pillow and label: what may be sewn to it.
    [[nodiscard]] QStringList useLines() const;

    /// A reading so many marks further (0: read just as shown), or as typed (what is wrong with it, or
    /// nothing); saved at once.
    Q_INVOKABLE void nudge(int reading, int marks);
    Q_INVOKABLE QString enter(int reading, const QString &text);
    Q_INVOKABLE void nudgePins(bool in, int by);
    /// What is wrong with the typed count, or nothing.
    Q_INVOKABLE QString enterPins(bool in, const QString &text);
    /// They differ and she knows why, or none were used.
    Q_INVOKABLE void explainPins();
    Q_INVOKABLE void setCorner(const QString &kind);
    Q_INVOKABLE void nudgeRadius(int marks);
    Q_INVOKABLE QString enterRadius(const QString &text);
    Q_INVOKABLE void nudgeDepth(int marks);
    Q_INVOKABLE QString enterDepth(const QString &text);
    /// One scallop more or fewer on the top and bottom, or on the left and right.
    Q_INVOKABLE void nudgeScallops(bool along, int by);

signals:
    void changed();

private:
    [[nodiscard]] Readings read() const;
    /// The rows of a framed piece are squared, before their frame is sewn on.
    [[nodiscard]] bool beforeFrame() const;
    /// Size the piece is squared to now: as its rows are, or with its frame.
    [[nodiscard]] Pair squaredTo() const;
    /// What is reckoned at most once for every change, however many lines tell of it.
    struct Reckoned {
        std::optional<PieceFinding> finding; ///< nothing until the piece was measured
        std::optional<BindingLay> lay;       ///< nothing where the edge is not bound
    };
    [[nodiscard]] const Reckoned &reckoned() const;
    /// The piece as it was read, lying on the side it is squared off.
    [[nodiscard]] Departing departing() const;
    void keep(const Readings &readings, int taken);
    /// Which readings were stepped, typed or confirmed.
    [[nodiscard]] Taken taken() const;
    [[nodiscard]] bool allRead() const;
    void keepPins(bool in, std::int64_t count);
    /// Saves the corner, unless the binding is cut already.
    void keepCorner(const Corner &corner);
    /// What is wrong with a typed measure of the corner, up to `most`; or it is put there and saved.
    QString typeCorner(const QString &text, Length most, CornerKind kind);

    Workspace &m_workspace;
    Session &m_session;
    StepModel &m_steps;
    mutable std::optional<Reckoned> m_reckoned;
    std::optional<Taken> m_taken; ///< of the piece in hand, since the project was opened
};

} // namespace matside
