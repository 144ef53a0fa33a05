// SPDX-License-Identifier: MIT
#pragma once

#include "app/departure.h"
#include "app/findings.h"
#include "app/stepmodel.h"

#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// The block in hand measured: four sides and two diagonals, at once a verdict with its remedy, and what a
/// common size would mean for all.
class BlockMeasure : public QObject, public Single<BlockMeasure> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString block READ block NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList readings READ readings NOTIFY changed FINAL)
    Q_PROPERTY(bool measured READ measured NOTIFY changed FINAL)
    Q_PROPERTY(bool mayKeep READ mayKeep NOTIFY changed FINAL)
    Q_PROPERTY(QString asShownSays READ asShownSays NOTIFY changed FINAL)
    Q_PROPERTY(QString kind READ kind NOTIFY changed FINAL)
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed FINAL)
    Q_PROPERTY(QString remedy READ remedy NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList corners READ corners NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList planned READ planned NOTIFY changed FINAL)
    Q_PROPERTY(double times READ times NOTIFY changed FINAL)
    Q_PROPERTY(int toRead READ toRead NOTIFY changed FINAL)
    Q_PROPERTY(QString commonSays READ commonSays NOTIFY changed FINAL)
    Q_PROPERTY(QStringList commonLines READ commonLines NOTIFY changed FINAL)
    Q_PROPERTY(bool mayTakeCommon READ mayTakeCommon NOTIFY changed FINAL)
public:
    BlockMeasure(Workspace &workspace, Session &session, StepModel &steps);
    using Single<BlockMeasure>::create;

    [[nodiscard]] QString block() const { return m_block; }
    /// {says, figure, taken, suspect}: top, right, bottom, left, diagonals from top left and from top right.
    [[nodiscard]] QVariantList readings() const;
    /// A reading was given, now or before: until then the planned size stands there and nothing is judged.
    [[nodiscard]] bool measured() const { return m_measured; }
    /// Not while the readings disagree and some of them stand where the planned size put them.
    [[nodiscard]] bool mayKeep() const;
    /// How many readings were neither stepped, typed nor confirmed as they were first shown.
    [[nodiscard]] QString asShownSays() const;
    [[nodiscard]] QString kind() const;
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] QString remedy() const;
    /// Corners of the block drawn with its departure exaggerated, 0…1 of the drawing; top left first,
    /// clockwise.
    [[nodiscard]] QVariantList corners() const;
    /// The corners of the size it should have.
    [[nodiscard]] QVariantList planned() const;
    /// How many times the departure is exaggerated; 1 for a block as good as planned, and before it is
    /// measured.
    [[nodiscard]] double times() const
    {
        return m_finding && m_measured ? timesDrawn(departingOf(*m_finding)) : 1;
    }
    /// Where the readings disagree, the one to read first: the likeliest misread, or the first not yet read;
    /// else −1.
    [[nodiscard]] int toRead() const;
    /// What a common size would mean, sentence by sentence; without those that are the remedy already.
    [[nodiscard]] QStringList commonLines() const;
    /// What a common size would mean for the piece and for each thing made; empty when there is nothing to
    /// say.
    [[nodiscard]] QString commonSays() const;
    /// There is a common size that is not yet the planned one.
    [[nodiscard]] bool mayTakeCommon() const;

    /// Begins with the block in hand at its planned size, or with what was measured before.
    Q_INVOKABLE void begin();
    /// The same with the next block that has no size yet; with the one in hand where there is none.
    Q_INVOKABLE void beginOther();
    Q_INVOKABLE void nudge(int reading, int marks);
    /// What is wrong with the typed reading, or nothing.
    Q_INVOKABLE QString enter(int reading, const QString &text);
    /// Logs the readings with the block; one undoable change. Refused while `mayKeep` says no.
    Q_INVOKABLE bool save();
    /// Takes the common size for all blocks not yet cut, and keeps the readings it was chosen by.
    Q_INVOKABLE void takeCommonSize();

signals:
    void changed();

private:
    void beginWith(const QString &name);
    void judgeIt();
    /// At size, but some of the readings are only the planned ones.
    [[nodiscard]] bool onlyIfAsShown() const;
    void take(int reading);
    /// What F23 chooses from the blocks measured; nothing under two of them.
    [[nodiscard]] std::optional<CommonSize> common() const;
    /// The project with the readings that are shown, where they were taken now and can be kept.
    [[nodiscard]] Project asRead() const;
    /// Never beside another answer.
    [[nodiscard]] bool offersCommon(const std::optional<CommonSize> &size) const;
    /// The common size is asked for: then what it comes to is the remedy, as much as is read at a glance.
    [[nodiscard]] bool asksCommon(const std::optional<CommonSize> &size) const;
    [[nodiscard]] QStringList commonTold(const std::optional<CommonSize> &size) const;
    [[nodiscard]] QStringList effectOf(const CommonSize &common) const;
    [[nodiscard]] Project withCommon(const CommonSize &common) const;

    bool m_measured = false;
    bool m_touched = false; ///< a reading was given since the block was taken up
    Workspace &m_workspace;
    Session &m_session;
    StepModel &m_steps;
    QString m_inHand; ///< the block at the station, where `m_block` may be another
    QString m_block;
    Readings m_readings;
    Taken m_taken{};
    std::optional<Finding> m_finding;
};

} // namespace matside
