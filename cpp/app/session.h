// SPDX-License-Identifier: MIT
#pragma once

#include "app/single.h"
#include "app/workspace.h"

#include <QtQml/qqmlregistration.h>

namespace matside {

/// Where she is: which page, which station, which project, and what undo would take back.
class Session : public QObject, public Single<Session> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(int station READ station WRITE setStation NOTIFY stationChanged FINAL)
    Q_PROPERTY(QString view READ view WRITE setView NOTIFY viewChanged FINAL)
    Q_PROPERTY(QString projectName READ projectName NOTIFY projectChanged FINAL)
    Q_PROPERTY(bool leftHanded READ leftHanded WRITE setLeftHanded NOTIFY handChanged FINAL)
    /// Whether a page-turn pedal turns the steps.
    Q_PROPERTY(bool pedal READ pedal WRITE setPedal NOTIFY pedalChanged FINAL)
    /// A second window shows the step without buttons; closed again at each start.
    Q_PROPERTY(bool helper READ helper WRITE setHelper NOTIFY helperChanged FINAL)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY undoChanged FINAL)
    Q_PROPERTY(QString undoText READ undoText NOTIFY undoChanged FINAL)
    Q_PROPERTY(QString notice READ notice NOTIFY noticeChanged FINAL)
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT FINAL)
    Q_PROPERTY(QString units READ units NOTIFY projectChanged FINAL)
public:
    explicit Session(Workspace &workspace);
    using Single<Session>::create;

    [[nodiscard]] int station() const { return m_station; }
    void setStation(int station);
    [[nodiscard]] QString view() const { return m_view; }
    void setView(const QString &view);
    [[nodiscard]] QString projectName() const;
    [[nodiscard]] bool leftHanded() const { return m_left; }
    void setLeftHanded(bool left);
    [[nodiscard]] bool pedal() const { return m_pedal; }
    void setPedal(bool turns);
    [[nodiscard]] bool helper() const { return m_helper; }
    void setHelper(bool shown);
    [[nodiscard]] bool canUndo() const;
    [[nodiscard]] QString undoText() const;
    [[nodiscard]] QString notice() const { return m_notice; }
    [[nodiscard]] bool readOnly() const;
    [[nodiscard]] QString units() const;
    void tell(const QString &notice);
    /// Back to where she left off: the project and station of last time, or the shelf.
    void resume();

    Q_INVOKABLE void undo();
    Q_INVOKABLE void openProject(const QString &id);
    Q_INVOKABLE void showShelf();
    Q_INVOKABLE void dismissNotice();
    /// A page-turn pedal was pressed: the first time ever she is told where to put it.
    Q_INVOKABLE void pedalPressed();
    Q_INVOKABLE QString stationName(int station) const;

signals:
    void stationChanged();
    void viewChanged();
    void projectChanged();
    void handChanged();
    void pedalChanged();
    void helperChanged();
    void undoChanged();
    void noticeChanged();
    /// A change of the shelf was taken back.
    void shelfUndone();
    /// A change was taken back; `what` names it.
    void undone(const QString &what);

private:
    [[nodiscard]] std::optional<Reversible> next() const;
    /// Takes back the last thing done at the open project, and says what it was: the step, or the field.
    /// Empty when nothing was taken back.
    QString undoneAtWork();

    Workspace &m_workspace;
    int m_station = 0;
    QString m_view = QStringLiteral("shelf");
    QString m_notice;
    bool m_left = false;
    bool m_pedal = true;
    bool m_pedalTold = false;
    bool m_helper = false;
};

/// The light she works in and the size of her screen.
class Look : public QObject, public Single<Look> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString colourSet READ colourSet WRITE setColourSet NOTIFY changed FINAL)
    Q_PROPERTY(double pxPerMm READ pxPerMm WRITE setPxPerMm NOTIFY changed FINAL)
    Q_PROPERTY(bool reducedMotion READ reducedMotion WRITE setReducedMotion NOTIFY changed FINAL)
public:
    Look(Store &store, double reportedPxPerMm);
    using Single<Look>::create;
    [[nodiscard]] QString colourSet() const { return m_set; }
    void setColourSet(const QString &set);
    [[nodiscard]] double pxPerMm() const { return m_pxPerMm; }
    void setPxPerMm(double pxPerMm);
    [[nodiscard]] bool reducedMotion() const { return m_still; }
    void setReducedMotion(bool still);

signals:
    void changed();

private:
    Store &m_store;
    QString m_set = QStringLiteral("day");
    double m_pxPerMm = 5.87;
    bool m_still = false;
};

} // namespace matside
