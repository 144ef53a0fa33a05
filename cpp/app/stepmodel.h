// SPDX-License-Identifier: MIT
#pragma once

#include "app/acts.h"
#include "app/session.h"
#include "app/views.h"

#include <QAbstractListModel>
#include <QVariantList>
#include <QVariantMap>

#include <map>

namespace matside {

/// The steps of the present station, as a list.
class StepsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to StepModel")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)
public:
    enum Role { Title = Qt::UserRole + 1, FigureText, StationNumber, Count, DoneCount, IsCurrent, Trial };
    explicit StepsModel(Workspace &workspace);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    /// Shows these steps (indices into the workspace's), with one of them current.
    void show(std::vector<std::size_t> rows, std::optional<std::size_t> current);
    [[nodiscard]] std::optional<std::size_t> stepAt(int row) const;

signals:
    void countChanged();

private:
    Workspace &m_workspace;
    std::vector<std::size_t> m_rows;
    std::optional<std::size_t> m_current;
};

enum class Mishap;

/// The step at hand at the present station: its figure, where the ruler lies, and what can be said of it.
class StepModel : public QObject, public Single<StepModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(int done READ done NOTIFY changed FINAL)
    Q_PROPERTY(QString doesText READ doesText NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView figure READ figure NOTIFY changed FINAL)
    Q_PROPERTY(QString firstLine READ firstLine NOTIFY changed FINAL)
    Q_PROPERTY(QString spoken READ spoken NOTIFY changed FINAL)
    Q_PROPERTY(QStringList lies READ lies NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL)
    Q_PROPERTY(QString hazard READ hazard NOTIFY changed FINAL) ///< what the caution warns of, in a word
    Q_PROPERTY(QString check READ check NOTIFY changed FINAL)
    Q_PROPERTY(QString clothName READ clothName NOTIFY changed FINAL)
    Q_PROPERTY(QString clothColour READ clothColour NOTIFY changed FINAL)
    Q_PROPERTY(QString clothRole READ clothRole NOTIFY changed FINAL)
    Q_PROPERTY(QString actionText READ actionText NOTIFY changed FINAL)
    Q_PROPERTY(bool canGoNext READ canGoNext NOTIFY changed FINAL)
    Q_PROPERTY(QString waiting READ waiting NOTIFY changed FINAL)
    Q_PROPERTY(int waitsAt READ waitsAt NOTIFY changed FINAL) ///< another station it waits for; −1: none
    Q_PROPERTY(bool canGoBack READ canGoBack NOTIFY changed FINAL)
    Q_PROPERTY(bool trial READ trial NOTIFY changed FINAL)
    Q_PROPERTY(QString trialSays READ trialSays NOTIFY changed FINAL)
    Q_PROPERTY(bool mayTryAfterAll READ mayTryAfterAll NOTIFY changed FINAL)
    Q_PROPERTY(bool notTried READ notTried NOTIFY changed FINAL)
    Q_PROPERTY(bool finished READ finished NOTIFY changed FINAL)
    Q_PROPERTY(QString elsewhereText READ elsewhereText NOTIFY changed FINAL)
    Q_PROPERTY(matside::RulerView ruler READ ruler NOTIFY changed FINAL)
    Q_PROPERTY(matside::StepsModel *steps READ steps CONSTANT FINAL)
    Q_PROPERTY(QVariantList wrongAnswers READ wrongAnswers NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList lastActs READ lastActs NOTIFY answered FINAL)
    Q_PROPERTY(bool mayRemake READ mayRemake NOTIFY answered FINAL)
    Q_PROPERTY(bool asksBlock READ asksBlock NOTIFY answered FINAL)
    Q_PROPERTY(QStringList blocksMade READ blocksMade NOTIFY changed FINAL)
    Q_PROPERTY(QString block READ block NOTIFY changed FINAL)
    Q_PROPERTY(int strip READ strip WRITE setStrip NOTIFY changed FINAL)
    Q_PROPERTY(QString doing READ doing NOTIFY changed FINAL)
    Q_PROPERTY(bool sided READ sided NOTIFY changed FINAL)
    Q_PROPERTY(bool askUndoDone READ askUndoDone NOTIFY changed FINAL)
    Q_PROPERTY(QString trialKind READ trialKind NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList trialFields READ trialFields NOTIFY changed FINAL)
    Q_PROPERTY(int trialUnread READ trialUnread NOTIFY changed FINAL)
    Q_PROPERTY(bool resuming READ resuming NOTIFY changed FINAL)
    Q_PROPERTY(QString resumeLast READ resumeLast NOTIFY changed FINAL)
    Q_PROPERTY(QString resumeNext READ resumeNext NOTIFY changed FINAL)
public:
    StepModel(Workspace &workspace, Session &session);
    using Single<StepModel>::create;

    /// The step this station is at, or nothing.
    [[nodiscard]] const Step *current() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] int count() const;
    [[nodiscard]] int done() const;
    [[nodiscard]] QString doesText() const;
    [[nodiscard]] FigureView figure() const;
    [[nodiscard]] QStringList lines() const;
    /// The first thing to know about the ruler; all of it in one breath.
    [[nodiscard]] QString firstLine() const { return lines().value(0); }
    [[nodiscard]] QString spoken() const { return lines().join(u' '); }
    /// Where the ruler lies, a sentence each, their lengths in braces.
    [[nodiscard]] QStringList lies() const;
    [[nodiscard]] QString caution() const;
    [[nodiscard]] QString hazard() const;
    [[nodiscard]] QString check() const;
    [[nodiscard]] QString clothName() const;
    [[nodiscard]] QString clothColour() const;
    [[nodiscard]] QString clothRole() const;
    [[nodiscard]] QString actionText() const;
    [[nodiscard]] bool canGoNext() const;
    /// Why the step cannot be done now; empty when it can.
    [[nodiscard]] QString waiting() const;
    [[nodiscard]] int waitsAt() const;
    [[nodiscard]] bool canGoBack() const;
    [[nodiscard]] bool trial() const;
    /// What a strip of the trial is cut for; empty at every other step.
    [[nodiscard]] QString trialSays() const;
    [[nodiscard]] bool notTried() const;
    /// The trial was put off, this step's figures hang on it, and it can still be made.
    [[nodiscard]] bool mayTryAfterAll() const;
    [[nodiscard]] bool finished() const { return !m_current.has_value(); }
    [[nodiscard]] QString elsewhereText() const;
    [[nodiscard]] RulerView ruler() const;
    [[nodiscard]] StepsModel *steps() { return &m_steps; }
    [[nodiscard]] QVariantList wrongAnswers() const;
    /// What the last mishap means, all of it in one text.
    [[nodiscard]] QString lastAnswer() const;
    /// The same act by act: {draws, says, minds}.
    [[nodiscard]] QVariantList lastActs() const;
    [[nodiscard]] bool mayRemake() const { return m_mayRemake; }
    /// Giving the piece up asks which block it is.
    [[nodiscard]] bool asksBlock() const { return m_asksBlock; }
    /// Labels of the good blocks, as they lie in the layout; spares last.
    [[nodiscard]] QStringList blocksMade() const;
    /// The block in hand, where the step goes block by block.
    [[nodiscard]] QString block() const;
    /// The strip she works on at the Hoop; 0: the first one open.
    [[nodiscard]] int strip() const { return m_strip; }
    void setStrip(int strip);
    /// What the step does, in its name of the plan file ("stitch-block").
    [[nodiscard]] QString doing() const;
    /// The step goes side by side: four sides make one repetition (TrimModel has the side at hand).
    [[nodiscard]] bool sided() const;
    /// The hand that cuts, as set on this tablet.
    [[nodiscard]] Hand hand() const { return m_session.leftHanded() ? Hand::Left : Hand::Right; }
    [[nodiscard]] bool askUndoDone() const { return m_asking; }
    [[nodiscard]] QString trialKind() const;
    /// What is read on the trial: {name, says, figure, text, taken, turns, overlap}.
    [[nodiscard]] QVariantList trialFields() const;
    /// How many of the readings that it takes are not yet read.
    [[nodiscard]] int trialUnread() const;
    /// A reading of the trial in hand; nothing before it was read.
    [[nodiscard]] std::optional<Length> trialReading(const char *name) const;
    [[nodiscard]] bool resuming() const { return m_resuming; }
    [[nodiscard]] QString resumeLast() const;
    [[nodiscard]] QString resumeNext() const;
    /// The step at hand at this station; null when nothing is left to do here.
    [[nodiscard]] const Step *stepAtHand() const { return current(); }
    /// Asks "did you finish this?" of the step at hand, once, after the program was started again.
    void askAboutLast();

    Q_INVOKABLE void next();
    Q_INVOKABLE void back();
    /// "mistake", "spoiled", or anything else to leave it as it is.
    Q_INVOKABLE void answerUndo(const QString &answer);
    Q_INVOKABLE void goTo(int row);
    /// Answers a mishap, with the measure or the block it asked for where it did: {ok, says}.
    Q_INVOKABLE QVariantMap wrong(const QString &kind, const QString &measure = {});
    /// She judged: the piece, or the block of that name, is given up and made again.
    Q_INVOKABLE void remake(const QString &block = {});
    Q_INVOKABLE void newBobbin();
    Q_INVOKABLE void putOffTrial();
    Q_INVOKABLE void takeTrialBack();
    /// A reading so many marks further; by none it was read just as it is shown.
    Q_INVOKABLE void nudgeTrial(int at, int by);
    /// A reading as typed: what is wrong with it, or nothing.
    Q_INVOKABLE QString typeTrial(int at, const QString &text);
    /// A gap that is an overlap, or back.
    Q_INVOKABLE void turnTrial(int at);
    /// Takes what was read into the plan: {ok, says}.
    Q_INVOKABLE QVariantMap takeTrial();
    Q_INVOKABLE QVariantList workingFor(const QString &key) const;
    Q_INVOKABLE QString workingSentence(const QString &key) const;
    /// The lengths of the sum as they are laid to one scale, places and lengths as shares of all of it:
    /// {kind, ways [{pieces [{at, share, term, less, rest}], counts, share, times}], zero, total, parts, mm,
    /// says, figure}; kinds sum, larger, part, often, words.
    Q_INVOKABLE QVariantMap workingLaid(const QString &key) const;
    Q_INVOKABLE void answerResume(bool finished);

signals:
    void changed();
    void answered();
    /// A block of the piece has come off the hoop: it can be logged.
    void stitched(const QString &block);

private:
    void refresh();
    [[nodiscard]] bool atStation(Station station) const;
    /// The block at hand came off its strip with the cut before.
    [[nodiscard]] bool nothingToDo() const;
    /// Why the step cannot be done yet, and the station where that is mended.
    struct Wait {
        QString says;
        std::optional<Station> station;
    };
    [[nodiscard]] Wait waitNow() const;
    void spoilLast();
    QVariantMap keepTrial(const QString &kind, const std::vector<Length> &read);
    [[nodiscard]] std::optional<Length> readingAt(int at) const;
    void setReading(int at, Length reading);
    [[nodiscard]] QString trialInHand() const;
    QVariantMap answerMishap(Mishap mishap, std::optional<Length> measure, const QString &block);

    Workspace &m_workspace;
    Session &m_session;
    StepsModel m_steps;
    std::optional<std::size_t> m_current;
    std::optional<std::size_t> m_chosen;
    bool m_fromOwned = false; ///< the next piece is cut from cloth that is there
    Acts m_answer;
    bool m_mayRemake = false;
    bool m_asksBlock = false;
    int m_strip = 0;
    QString m_trialOf; ///< the trial that was read on
    std::map<int, Length> m_trialRead;
    bool m_asking = false;
    bool m_resuming = false;
};

} // namespace matside
