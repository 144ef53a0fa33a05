// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QTemporaryDir>
#include <QTimer>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace matside {

/// Something pictures come from. It is never waited for: one that does not answer in time says so, and a
/// picture that arrives late is still taken. What is not the source's business: keeping, sides, blocks.
class PhotoSource : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made with the log of blocks")
    Q_PROPERTY(bool present READ present NOTIFY changed FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)
    Q_PROPERTY(Trouble trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(QString says READ says NOTIFY changed FINAL)
    Q_PROPERTY(QUrl view READ view NOTIFY changed FINAL)
public:
    enum class Trouble {
        None,
        Gone,    ///< it was there and is not any more
        Stalled, ///< it was asked for a picture and does not answer
        Failed,  ///< it answered that it could not
    };
    Q_ENUM(Trouble)
    static constexpr int patienceMs = 4000;

    explicit PhotoSource(QObject *parent = nullptr);

    /// Whether there is one at all; without, a picture is chosen from a folder.
    [[nodiscard]] bool present() const { return m_present; }
    /// A picture can be asked for now.
    [[nodiscard]] bool ready() const { return m_present && m_able && !m_busy; }
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] Trouble trouble() const { return m_trouble; }
    /// What is the matter and what to do, in words; empty when nothing is.
    [[nodiscard]] QString says() const;
    /// The QML file that shows what the source sees; empty when there is nothing to see.
    [[nodiscard]] virtual QUrl view() const { return {}; }
    /// How long a picture may take, in milliseconds.
    void setPatience(int ms) { m_patience.setInterval(ms); }

    /// Asks for one picture; nothing when it is not ready.
    Q_INVOKABLE void capture();

signals:
    void changed();
    /// A picture lies in this file. `passing`: the file is the receiver's to remove.
    void captured(const QString &path, bool passing);

protected:
    /// Begins to take one picture; deliver() or fail() ends it.
    virtual void take() = 0;
    void deliver(const QString &path, bool passing);
    void fail();
    /// What is known of the device. Gone in the middle of a picture it is Trouble::Gone.
    void setState(bool present, bool able);

private:
    void end(Trouble trouble);

    QTimer m_patience;
    Trouble m_trouble = Trouble::None;
    bool m_present = false;
    bool m_able = false;
    bool m_busy = false;
};

/// The tablet's camera. Qt Multimedia itself lives in one QML file that is loaded where the module is
/// installed; it tells here what happens and is asked through wanted().
class CameraSource : public matside::PhotoSource { // by its whole name: so the QML tools find it
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made with the log of blocks")
public:
    explicit CameraSource(QObject *parent = nullptr);
    [[nodiscard]] QUrl view() const override;
    /// True when the QML module of Qt Multimedia can be loaded.
    [[nodiscard]] static bool installed();
    /// Whether the system has any camera at all; without one nothing of Qt Multimedia is loaded.
    [[nodiscard]] static bool plugged();

    Q_INVOKABLE void report(bool present, bool able) { setState(present, able); }
    Q_INVOKABLE void saved(const QString &path) { deliver(path, true); }
    Q_INVOKABLE void failed(const QString &detail);

signals:
    /// Take a picture and write it to this file.
    void wanted(const QString &path);

protected:
    void take() override;

private:
    std::optional<QTemporaryDir> m_folder; ///< made with the first picture
    int m_taken = 0;
};

} // namespace matside
