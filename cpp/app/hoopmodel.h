// SPDX-License-Identifier: MIT
#pragma once

#include "app/stepmodel.h"
#include "plan/onstrip.h"
#include "plan/thread.h"

#include <QVariantList>
#include <QVariantMap>

#include <map>

namespace matside {

/// One hoop strip for its drawing, in millimetres from the zero end, on one scale: flat cloth while it is
/// marked, cloth as drawn in while it is stitched.
struct StripView {
    Q_GADGET
    QML_VALUE_TYPE(stripView)
    Q_PROPERTY(bool drawnIn MEMBER drawnIn)
    Q_PROPERTY(double lengthMm MEMBER lengthMm)
    Q_PROPERTY(double widthMm MEMBER widthMm)
    Q_PROPERTY(double blockAlongMm MEMBER blockAlongMm)
    Q_PROPERTY(double blockAcrossMm MEMBER blockAcrossMm)
    Q_PROPERTY(double frameAlongMm MEMBER frameAlongMm)
    Q_PROPERTY(double frameAcrossMm MEMBER frameAcrossMm)
    Q_PROPERTY(double barMm MEMBER barMm)
    Q_PROPERTY(double stepMm MEMBER stepMm)
    Q_PROPERTY(bool tails MEMBER tails)
    Q_PROPERTY(QVariantList places MEMBER places)
    Q_PROPERTY(QVariantList patches MEMBER patches)
public:
    bool drawnIn = false;
    double lengthMm = 0;
    double widthMm = 0;
    double blockAlongMm = 0;
    double blockAcrossMm = 0;
    double frameAlongMm = 0;
    double frameAcrossMm = 0;
    double barMm = 0;     ///< the frame's own width
    double stepMm = 25.4; ///< one graduation of the tape
    bool tails = false;
    QVariantList places;  ///< {block, startMm, centreMm, alongMm, stitched, next}
    QVariantList patches; ///< {role, widthMm, heightMm} from the lowest up
};

/// The Hoop station: the strip at hand, the position under the finger, and what is known of the block that
/// comes next. Every figure is the plan's own.
class HoopModel : public QObject, public Single<HoopModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(matside::StripView view READ view NOTIFY changed FINAL)
    Q_PROPERTY(QString head READ head NOTIFY changed FINAL)
    Q_PROPERTY(QString stripSays READ stripSays NOTIFY changed FINAL)
    Q_PROPERTY(int strip READ strip WRITE setStrip NOTIFY changed FINAL)
    Q_PROPERTY(int stripCount READ stripCount NOTIFY changed FINAL)
    Q_PROPERTY(bool marking READ marking NOTIFY changed FINAL)
    Q_PROPERTY(int position READ position WRITE setPosition NOTIFY positionChanged FINAL)
    Q_PROPERTY(QString block READ block NOTIFY positionChanged FINAL)
    Q_PROPERTY(QString elsewhereSays READ elsewhereSays NOTIFY positionChanged FINAL)
    Q_PROPERTY(matside::FigureView figure READ figure NOTIFY positionChanged FINAL)
    Q_PROPERTY(QString title READ title NOTIFY positionChanged FINAL)
    Q_PROPERTY(QString figureSays READ figureSays NOTIFY positionChanged FINAL)
    Q_PROPERTY(matside::FigureView second READ second NOTIFY positionChanged FINAL)
    Q_PROPERTY(QString centreSays READ centreSays NOTIFY positionChanged FINAL)
    Q_PROPERTY(QString expectSays READ expectSays NOTIFY positionChanged FINAL)
    Q_PROPERTY(QString overSays READ overSays NOTIFY changed FINAL)
    Q_PROPERTY(bool canReZero READ canReZero NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView lastEnd READ lastEnd NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList stops READ stops NOTIFY changed FINAL)
    Q_PROPERTY(QString bobbinSays READ bobbinSays NOTIFY changed FINAL)
    Q_PROPERTY(QString bobbinDue READ bobbinDue NOTIFY changed FINAL)
    Q_PROPERTY(QString timeSays READ timeSays NOTIFY changed FINAL)
    Q_PROPERTY(bool layering READ layering NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView stripLength READ stripLength NOTIFY changed FINAL)
    Q_PROPERTY(QString sentSays READ sentSays NOTIFY changed FINAL)
    /// The same in a few words, for the head of the strip.
    Q_PROPERTY(QString sentShort READ sentShort NOTIFY changed FINAL)
    Q_PROPERTY(QString sentSize READ sentSize NOTIFY changed FINAL)
    Q_PROPERTY(QString sentPercent READ sentPercent NOTIFY changed FINAL)
    Q_PROPERTY(QString harvestSays READ harvestSays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList gapWays READ gapWays NOTIFY changed FINAL)
    Q_PROPERTY(bool canHarvest READ canHarvest NOTIFY changed FINAL)
    Q_PROPERTY(QString drawUpSays READ drawUpSays NOTIFY changed FINAL)
    Q_PROPERTY(QString drawUpShort READ drawUpShort NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap drawnUp READ drawnUp NOTIFY changed FINAL)
public:
    HoopModel(Workspace &workspace, Session &session, StepModel &steps);
    using Single<HoopModel>::create;

    [[nodiscard]] StripView view() const;
    [[nodiscard]] QString head() const;
    /// The strip worked on, told by its number wherever it is told.
    [[nodiscard]] QString stripSays() const;
    [[nodiscard]] int strip() const { return static_cast<int>(m_work.strip); }
    void setStrip(int strip);
    [[nodiscard]] int stripCount() const { return static_cast<int>(m_all.size()); }
    /// True until the strip's ticks are drawn: flat cloth, centres from zero.
    [[nodiscard]] bool marking() const;
    /// Nothing is hooped or marked yet: what matters is how large a strip is.
    [[nodiscard]] bool layering() const;
    [[nodiscard]] FigureView stripLength() const;
    /// Strip `number`, 1 first, for its drawing among the others: {number, says, names, countSays, drawn,
    /// chosen, lengthMm, widthMm, blockAcrossMm, tails, places: [{startMm, alongMm, state}]}, state
    /// "stitched", "next" or "open".
    Q_INVOKABLE QVariantMap stripAt(int number) const;
    /// The place under the finger, 0 first; it stays where the hand left it, on each strip its own.
    [[nodiscard]] int position() const;
    void setPosition(int position);
    /// The block under the frame; empty on the trial.
    [[nodiscard]] QString block() const;
    /// She looks at another block than the one to be stitched: what leads back to that one, else empty.
    [[nodiscard]] QString elsewhereSays() const;
    [[nodiscard]] FigureView figure() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString figureSays() const;
    [[nodiscard]] FigureView second() const;
    [[nodiscard]] QString centreSays() const;
    [[nodiscard]] QString expectSays() const;
    [[nodiscard]] QString overSays() const;
    [[nodiscard]] bool canReZero() const;
    [[nodiscard]] FigureView lastEnd() const;
    [[nodiscard]] QVariantList stops() const;
    [[nodiscard]] QString bobbinSays() const;
    /// The same where the thread will not last for the block to be stitched; else empty.
    [[nodiscard]] QString bobbinDue() const;
    [[nodiscard]] QString timeSays() const;
    [[nodiscard]] QString sentSays() const;
    [[nodiscard]] QString sentShort() const;
    /// What is typed into the machine, and how much of the outline that is.
    [[nodiscard]] QString sentSize() const;
    [[nodiscard]] QString sentPercent() const;
    [[nodiscard]] QString harvestSays() const;
    /// What the gaps can be, as long as nothing is stitched; empty where they yield nothing: {value, says,
    /// details, chosen, gap, lengthMm, widthMm, alongMm, acrossMm, tails, sashMm, starts, gaps: [{fromMm,
    /// toMm, yields}], lost: [startMm]}.
    [[nodiscard]] QVariantList gapWays() const;
    [[nodiscard]] bool canHarvest() const;
    [[nodiscard]] QString drawUpSays() const;
    [[nodiscard]] QString drawUpShort() const;
    /// The same drawn: {along, across} as shares, {alongSays, acrossSays}, {alongMm, acrossMm} as sent; empty
    /// with it.
    [[nodiscard]] QVariantMap drawnUp() const;

    /// "The last outline really ended at …": {ok, says}; says at once when a block no longer fits.
    Q_INVOKABLE QVariantMap reZero(const QString &text);
    /// Moves the measured end by so many marks of the finest ruler.
    Q_INVOKABLE void nudgeEnd(int marks);
    Q_INVOKABLE void takeHarvest();
    /// "plain", "all", or "some": as many as cost no block.
    Q_INVOKABLE void takeGaps(const QString &way);
    /// Takes the draw-up measured on the first blocks into what is not yet stitched.
    Q_INVOKABLE void takeDrawUp();
    /// Puts the frame on the block to be stitched, on whichever strip that lies.
    Q_INVOKABLE void showInHand();
    /// One stop further or back; at the ends it stays.
    Q_INVOKABLE void scan(int by) { setPosition(position() + by); }

signals:
    void changed();
    void positionChanged();

private:
    void refresh();
    /// The piece with its gaps as plain as they go, and what they could yield.
    struct Gaps {
        Project plain;
        HarvestOffer offer;
    };
    [[nodiscard]] std::optional<Gaps> gapsToYield() const;
    [[nodiscard]] Project withGaps(const QString &way) const;
    [[nodiscard]] const StripPlace *at() const;
    [[nodiscard]] bool atNext() const;
    /// The centres marked before on this strip of blocks still to be stitched, where the last outline ended
    /// off the plan: they do not hold any more.
    [[nodiscard]] QStringList marksOff() const;
    [[nodiscard]] const StripWork *stitchedNext() const;
    [[nodiscard]] const MadeBlock *madeInHand() const;
    [[nodiscard]] Length endNow() const;
    QVariantMap commitEnd(Length end);

    Workspace &m_workspace;
    Session &m_session;
    StepModel &m_steps;
    // Reckoned once for every change of the project, not for every line that tells of it.
    Forecast m_forecast;
    std::optional<Gaps> m_gaps; ///< nothing once a block is stitched
    std::vector<StripWork> m_all;
    StripWork m_work;
    std::map<std::int64_t, int> m_positions;
    int m_stitched = 0; ///< blocks stitched when the place was last chosen by hand
};

} // namespace matside
