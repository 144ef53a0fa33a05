// SPDX-License-Identifier: MIT
#include "app/photokeeper.h"

#include "app/workspace.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFile>

#include <algorithm>

namespace matside {

QString photoSentence(const PhotoError &error)
{
    const auto tell = [](const char *text) { return QCoreApplication::translate("Photos", text); };
    switch (error.code) {
    case PhotoCode::Unreadable:
        return tell(QT_TRANSLATE_NOOP("Photos", "The picture cannot be read. Choose another."));
    case PhotoCode::NotAnImage:
        return tell(
            QT_TRANSLATE_NOOP("Photos", "That is no picture this program can read. Take or choose another."));
    case PhotoCode::Truncated:
        return tell(QT_TRANSLATE_NOOP(
            "Photos", "The picture is cut short: its end is missing. Copy it again, or choose another."));
    case PhotoCode::TooLarge:
        return tell(
            QT_TRANSLATE_NOOP("Photos", "The picture is too large. Up to 100 million pixels can be kept."));
    case PhotoCode::Disk:
        return tell(QT_TRANSLATE_NOOP(
            "Photos",
            "The disk is full, so the picture was not kept. Nothing else was lost; free some room."));
    }
    return {};
}

PhotoKeeper::PhotoKeeper(NoteBook &book, QObject *parent) : QObject(parent), m_book(book)
{
    m_worker.moveToThread(&m_thread);
    connect(this, &PhotoKeeper::workAsked, &m_worker, [this] { workNext(); });
    connect(this, &PhotoKeeper::workDone, this, &PhotoKeeper::finishWork);
    if (m_book.canWrite()) {
        (void)m_book.forgetUnused();
        // Before any picture is kept: what has a file and no row now never gets one.
        connect(&m_thread, &QThread::started, &m_worker,
                [dir = m_book.dir()] { (void)sweepPhotographs(dir); });
    }
    m_thread.start(QThread::LowPriority);
}

PhotoKeeper::~PhotoKeeper()
{
    // A picture that is being written is written to its end: it has its row when the program comes back.
    (void)settle(10'000);
    m_thread.quit();
    m_thread.wait();
}

void PhotoKeeper::keep(const PhotoPlace &place, const QString &path, bool passing)
{
    ++m_keeping;
    const PhotoFolder folder = m_book.folder();
    const Asked asked{place, path, passing};
    QMetaObject::invokeMethod(&m_worker, [this, folder, asked] {
        const auto bytes = readPicture(asked.path);
        const PhotoResult<Photograph> result =
            bytes ? folder.keep(bytes.value()) : PhotoResult<Photograph>(bytes.error());
        QMetaObject::invokeMethod(this, [this, asked, result] { finish(asked, result); });
    });
}

void PhotoKeeper::work(const std::function<void()> &onThread, const std::function<void()> &then)
{
    ++m_keeping;
    {
        const QMutexLocker lock(&m_guard);
        m_work.emplace_back(onThread, then);
    }
    emit workAsked();
}

void PhotoKeeper::workNext()
{
    Work next;
    {
        const QMutexLocker lock(&m_guard);
        next = std::move(m_work.front());
        m_work.pop_front();
    }
    next.first();
    {
        const QMutexLocker lock(&m_guard);
        m_worked.push_back(std::move(next.second));
    }
    emit workDone();
}

void PhotoKeeper::finishWork()
{
    std::function<void()> then;
    {
        const QMutexLocker lock(&m_guard);
        then = std::move(m_worked.front());
        m_worked.pop_front();
    }
    --m_keeping;
    then();
}

void PhotoKeeper::finish(const Asked &asked, const PhotoResult<Photograph> &result)
{
    --m_keeping;
    const PhotoPlace &place = asked.place;
    if (!result) {
        emit refused(place, photoSentence(result.error()));
        return;
    }
    if (const auto noted = m_book.keepDraft(place.project, place.block, place.face, result.value()); !noted) {
        emit refused(place, storeSentence(noted.error()));
        return;
    }
    if (asked.passing)
        QFile::remove(asked.path);
    emit kept(place, result.value());
}

QUrl PhotoKeeper::thumb(const QString &sha, const QString &format)
{
    if (sha.isEmpty())
        return {};
    const QString path = m_book.folder().thumb(sha);
    if (QFile::exists(path))
        return QUrl::fromLocalFile(path);
    // Where nothing can be written the photograph itself is shown, small.
    if (!m_book.canWrite())
        return QUrl::fromLocalFile(m_book.folder().original(sha, format));
    const auto same = [&](const Photograph &photo) { return photo.sha == sha; };
    if (std::none_of(m_thumbs.begin(), m_thumbs.end(), same))
        m_thumbs.push_back({sha, format, 0, {}});
    nextThumb();
    return {};
}

void PhotoKeeper::nextThumb()
{
    if (m_making || m_thumbs.empty())
        return;
    m_making = true;
    const Photograph photo = m_thumbs.front();
    const PhotoFolder folder = m_book.folder();
    QMetaObject::invokeMethod(&m_worker, [this, folder, photo] {
        const bool made = folder.makeThumb(photo.sha, photo.format).ok();
        QMetaObject::invokeMethod(this, [this, photo, made] {
            m_making = false;
            m_thumbs.pop_front();
            if (made)
                emit thumbMade(photo.sha);
            nextThumb();
        });
    });
}

bool PhotoKeeper::settle(int ms) const
{
    QElapsedTimer waited;
    waited.start();
    while ((m_keeping > 0 || m_making) && waited.elapsed() < ms)
        QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents, 20);
    return m_keeping == 0 && !m_making;
}

} // namespace matside
