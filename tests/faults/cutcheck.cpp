// SPDX-License-Identifier: MIT
#include "faults/cutcheck.h"

#include "faults/ledger.h"
#include "project/codec.h"
#include "share/backup.h"
#include "store/database.h"
#include "store/photohelp.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>

using namespace matside;

namespace powercut {

namespace {

QByteArray bytesOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

[[noreturn]] void cannotBegin(const char *what)
{
    qFatal("the scene could not be made: %s", what);
}

void makeOld(const QString &dir)
{
    Database database;
    if (!QDir().mkpath(dir) || !database.open(storeFile(dir), Database::Mode::Write))
        cannotBegin("old");
    const QString text = QString::fromUtf8(bytesOf(QStringLiteral(STORE_DATA_DIR "/version-1.sql")));
    for (const QString &statement : text.split(u"\n\n"_qs, Qt::SkipEmptyParts))
        if (!database.run(statement.trimmed()))
            cannotBegin("the first version");
}

/// A store with the demo, whose rows still lie in the log.
void makeKilled(const QString &dir)
{
    const QTemporaryDir living;
    auto store = openStore(living.path());
    const QString demo = QString::fromStdString(writeProject(freshProject(System::Metric)));
    if (!store || !store.value()->ensureDemo(demo) || !QDir().mkpath(dir))
        cannotBegin("other");
    for (const auto &end : {u""_qs, u"-wal"_qs})
        if (!QFile::copy(storeFile(living.path()) + end, storeFile(dir) + end))
            cannotBegin("the log");
}

QByteArray sumOnceOpened(const QString &dir)
{
    if (const auto store = openStore(dir); !store || !store.value()->canWrite())
        cannotBegin("a copy");
    return ledger::sumOf(storeFile(dir));
}

int versionIn(const QString &file)
{
    Database database;
    if (!QFile::exists(file) || !database.open(file, Database::Mode::Snapshot))
        return 0;
    const auto version = database.value(u"PRAGMA user_version"_qs);
    return version ? version.value().toInt() : 0;
}

/// An upgraded store has its copy of before beside it, whole.
QString faultOfUpgrade(const QString &dir, const QByteArray &oldest)
{
    if (versionIn(storeFile(dir)) < 2)
        return {};
    const QString copy = dir + u"/backups/matside-version-1.sqlite"_qs;
    if (versionIn(copy) != 1)
        return u"upgraded, and the copy of before is gone"_qs;
    return ledger::sumOf(copy) == oldest ? QString() : u"the copy of before holds something else"_qs;
}

/// The store takes another project and a photograph.
QString faultInUse(Store &store)
{
    NoteBook book(store);
    if (!book.forgetUnused() || !sweepPhotographs(store.folder()))
        return u"cannot be swept"_qs;
    const auto id = store.create(QString::fromStdString(writeProject(freshProject(System::Inch))));
    if (!id)
        return u"takes no project: "_qs + id.error().detail;
    const auto kept = book.folder().keep(photohelp::encoded(photohelp::picture(77, {48, 32})));
    if (!kept)
        return u"takes no photograph: "_qs + kept.error().detail;
    if (const auto draft = book.keepDraft(id.value(), u"A1"_qs, Face::Front, kept.value()); !draft)
        return u"takes no draft: "_qs + draft.error().detail;
    return ledger::faultsIn(store.folder()).join(u"; "_qs);
}

/// As the program starts.
QString faultOfStore(const QString &dir, const QList<QByteArray> &allowed)
{
    if (const auto restored = finishRestoring(dir); !restored)
        return u"cannot be restored: "_qs + restored.error().detail;
    const auto store = openStore(dir);
    if (!store)
        return u"does not open: "_qs + store.error().detail;
    if (!store.value()->canWrite())
        return u"opens for reading only, %1"_qs.arg(int(store.value()->access()));
    if (const QStringList faults = ledger::faultsIn(dir); !faults.isEmpty())
        return faults.join(u"; "_qs);
    if (!allowed.contains(ledger::sumOf(storeFile(dir))))
        return u"holds neither what was shown as saved nor what was begun"_qs;
    return faultInUse(*store.value());
}

/// The words of what was told.
QList<QByteArray> wordsOf(const disk::Event &event)
{
    return QByteArray::fromStdString(event.first).trimmed().split(' ');
}

} // namespace

Scene sceneIn(const QString &root)
{
    makeOld(root + u"/old"_qs);
    makeKilled(root + u"/other"_qs);
    disk::Disk before(root.toStdString());
    const QTemporaryDir copies;
    std::mt19937 random; // chooses nothing: all is flushed
    before.layAfterCut(copies.path().toStdString(), {}, random);
    Scene scene{std::move(before), {}, ledger::sumOf(storeFile(copies.path() + u"/old"_qs))};
    for (const char *folder : {"shelf", "old", "other"})
        scene.sums[folder] = sumOnceOpened(copies.path() + u'/' + QString::fromLatin1(folder));
    return scene;
}

QString missedBy(const Scene &scene, const std::vector<disk::Event> &events, const QString &root)
{
    disk::Disk disk = scene.before;
    for (std::size_t at = 0; at < events.size(); ++at)
        if (!disk.apply(events[at]))
            return u"event %1"_qs.arg(at);
    const auto recorded = disk.whole();
    const auto real = disk::Disk(root.toStdString()).whole();
    for (const auto *one : {&recorded, &real})
        for (const auto &[name, bytes] : *one) {
            const auto &other = one == &recorded ? real : recorded;
            const auto found = other.find(name);
            if (!name.ends_with("-shm") && (found == other.end() || found->second != bytes))
                return QString::fromStdString(name);
        }
    return {};
}

Promises::Promises(const Scene &scene, const std::vector<disk::Event> &events)
    : m_scene(scene), m_last(scene.sums)
{
    for (const disk::Event &event : events)
        if (event.kind == disk::Kind::Said && event.first.starts_with("state ")) {
            const QList<QByteArray> words = wordsOf(event);
            m_next[words[1]].append(words[2]);
        }
}

void Promises::hear(const disk::Event &event)
{
    if (event.kind != disk::Kind::Said)
        return;
    const QList<QByteArray> words = wordsOf(event);
    if (words[0] == "state")
        m_last[words[1]] = m_next[words[1]].takeFirst();
    else
        m_files[QString::fromUtf8(QByteArray::fromPercentEncoding(words[1]))] = words[2];
}

QList<QByteArray> Promises::allowed(const QByteArray &folder) const
{
    QList<QByteArray> sums{m_last[folder]};
    if (!m_next[folder].isEmpty())
        sums.append(m_next[folder].front());
    return sums;
}

QString faultAfterCut(const QString &root, const Promises &promises, const QByteArrayList &folders,
                      int &opened)
{
    for (auto file = promises.files().begin(); file != promises.files().end(); ++file) {
        const QByteArray bytes = bytesOf(root + u'/' + file.key());
        if (QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex() != file.value())
            return file.key() + u": got out, and not there whole"_qs;
    }
    if (const QString fault = faultOfUpgrade(root + u"/old"_qs, promises.scene().oldest); !fault.isEmpty())
        return fault;
    for (const QByteArray &folder : folders) {
        const QString fault =
            faultOfStore(root + u'/' + QString::fromLatin1(folder), promises.allowed(folder));
        if (!fault.isEmpty())
            return QString::fromLatin1(folder) + u": "_qs + fault;
        ++opened;
    }
    return {};
}

} // namespace powercut
