// SPDX-License-Identifier: MIT
#pragma once

#include "store/photonotes.h"

#include <QMutex>
#include <QObject>
#include <QPointer>
#include <QThread>
#include <QUrl>

#include <deque>
#include <functional>
#include <memory>
#include <optional>

namespace matside {

/// What a picture is taken for.
struct PhotoPlace {
    QString project;
    QString block;
    Face face = Face::Front;
    friend bool operator==(const PhotoPlace &, const PhotoPlace &) = default;
};

/// Keeps pictures and makes thumbnails on one thread of its own, so that no screen waits for a disk or a
/// decoder. A picture to be kept never waits for more than one thumbnail. First of all the folder is swept.
class PhotoKeeper : public QObject {
    Q_OBJECT
public:
    explicit PhotoKeeper(NoteBook &book, QObject *parent = nullptr);
    ~PhotoKeeper() override;

    [[nodiscard]] NoteBook &book() { return m_book; }
    /// Keeps the picture in a file and notes it as a draft; kept() or refused() follows. `passing`: the file
    /// is removed once it is kept.
    void keep(const PhotoPlace &place, const QString &path, bool passing);
    /// Runs something that reads or keeps photographs on the thread, after what was asked for before; `then`
    /// runs here afterwards.
    void work(const std::function<void()> &onThread, const std::function<void()> &then);
    /// The same for work that comes to an answer; `then` does not run when `here` has gone meanwhile.
    template <class Answer>
    void answer(QObject *here, std::function<Answer()> onThread, std::function<void(const Answer &)> then)
    {
        const auto held = std::make_shared<std::optional<Answer>>();
        work([held, onThread = std::move(onThread)] { held->emplace(onThread()); },
             [held, then = std::move(then), guard = QPointer<QObject>(here)] {
                 if (guard)
                     then(**held);
             });
    }
    /// The small picture, or an empty address when it is not there yet: then thumbMade() follows.
    [[nodiscard]] QUrl thumb(const QString &sha, const QString &format);
    [[nodiscard]] bool keeping() const { return m_keeping > 0; }
    /// Waits until all that was asked for is answered; for tests and the end of the program.
    bool settle(int ms) const;

signals:
    /// It is on the disk, with its row.
    void kept(const matside::PhotoPlace &place, const matside::Photograph &photo);
    void refused(const matside::PhotoPlace &place, const QString &says);
    void thumbMade(const QString &sha);
    void workAsked(); ///< to the thread
    void workDone();  ///< from the thread

private:
    struct Asked {
        PhotoPlace place;
        QString path;
        bool passing = false;
    };
    void finish(const Asked &asked, const PhotoResult<Photograph> &result);
    void nextThumb();
    void workNext(); ///< on the thread
    void finishWork();

    using Work = std::pair<std::function<void()>, std::function<void()>>;

    NoteBook &m_book;
    QMutex m_guard; ///< of the two lists after it
    std::deque<Work> m_work;
    std::deque<std::function<void()>> m_worked;
    QThread m_thread;
    QObject m_worker; ///< lives on the thread; only a place to run there
    std::deque<Photograph> m_thumbs;
    bool m_making = false;
    int m_keeping = 0;
};

/// Plain words for why a picture could not be kept, with what can be done.
[[nodiscard]] QString photoSentence(const PhotoError &error);

} // namespace matside
