// SPDX-License-Identifier: MIT
#include "faults/deeds.h"
#include "faults/disk/record.h"
#include "faults/ledger.h"
#include "store/storehelp.h"

#include <QDirIterator>

#include <sys/mount.h>

using namespace storehelp;
using deeds::Deeds;
using deeds::End;
using deeds::Outcome;

namespace {

/// What the store holds, but for photographs nothing refers to any more: those go when it is opened.
QStringList heldIn(const QString &dir)
{
    QStringList rows = ledger::rowsOf(storeFile(dir));
    rows.removeIf([](const QString &row) { return row.startsWith(u"photographs"_qs); });
    return rows;
}

/// Files that were got out, and none half written beside them. An export writes one file after another.
QStringList strayIn(const QString &root, const QSet<QString> &told)
{
    QStringList stray;
    QDirIterator files(root + u"/out"_qs, QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        const QString name = files.next().mid(root.size() + 1);
        if (!told.contains(name) && !name.contains(u"-projects/"_qs))
            stray.append(name);
    }
    return stray;
}

} // namespace

/// A disk that takes no more: what is refused is refused in words and leaves nothing behind, everything else
/// stays, and with room again the work goes on.
class TestFullDisk : public QObject {
    Q_OBJECT

private slots:
    void cleanup()
    {
        disk_room(-1);
        disk_flush_fails(false);
    }
    void runsOutAtAnyByte();
    void runsOutOnASmallDisk();
    void aCopyWithoutRoomLeavesNothing();
    void refusesWhatCannotBeFlushed();
    void saysSoWhenNothingCanBeBegun();
};

void TestFullDisk::runsOutAtAnyByte()
{
    QTemporaryDir folder;
    disk_watch(qPrintable(folder.path()));
    std::mt19937 random(seed());
    Deeds deeds(folder.path(), seed());
    QSet<QString> told;
    deeds.gotOut = [&](const QString &name) { told.insert(name); };
    QCOMPARE(deeds.open().end, End::Done);
    int refused = 0;
    for (int round = 0; round < count(60); ++round) {
        // Mostly within one deed, so that each of its writes is the first to fail once.
        disk_room(static_cast<long long>(random() % (random() % 4 == 0 ? 400'000 : 40'000)));
        QStringList before = heldIn(deeds.shelf());
        Outcome outcome;
        for (int deed = 0; deed < 40 && outcome.end == End::Done; ++deed) {
            before = heldIn(deeds.shelf());
            outcome = deeds.next();
        }
        const QByteArray where =
            qPrintable(u"seed %1, round %2: %3"_qs.arg(seed()).arg(round).arg(outcome.told));
        QVERIFY2(outcome.end != End::Broken, where);
        disk_room(-1);
        if (outcome.end == End::NoRoom) {
            ++refused;
            QVERIFY2(heldIn(deeds.shelf()) == before, where);
        }
        QVERIFY2(ledger::faultsIn(deeds.shelf()).isEmpty(), where);
        QVERIFY2(strayIn(folder.path(), told).isEmpty(),
                 where + ' ' + qPrintable(strayIn(folder.path(), told).join(u' ')));
        // With room again the same program goes on.
        for (int deed = 0; deed < 3; ++deed) {
            const Outcome again = deeds.next();
            QVERIFY2(again.end == End::Done, where + ", then " + qPrintable(again.told));
        }
    }
    QVERIFY2(refused > count(60) / 2, qPrintable(QString::number(refused)));
    const QStringList held = heldIn(deeds.shelf());
    deeds.close();
    QVERIFY(opened(deeds.shelf())->access() == Access::Full);
    QCOMPARE(heldIn(deeds.shelf()), held);
    qInfo("%d times no room", refused);
}

void TestFullDisk::runsOutOnASmallDisk()
{
    // A disk of its own in memory, where this may mount one; elsewhere one that is as small.
    QTemporaryDir folder;
    const bool mounted = ::mount("none", qPrintable(folder.path()), "tmpfs", 0, "size=600k") == 0;
    disk_watch(qPrintable(folder.path()));
    if (!mounted)
        disk_room(600'000);
    qInfo("%s", mounted ? "a disk of 600 kB in memory" : "no disk could be mounted: 600 kB by the recorder");
    {
        Deeds deeds(folder.path(), seed());
        QCOMPARE(deeds.open().end, End::Done);
        QStringList before;
        Outcome outcome;
        for (int deed = 0; deed < 2000 && outcome.end == End::Done; ++deed) {
            before = heldIn(deeds.shelf());
            outcome = deeds.next();
        }
        QVERIFY2(outcome.end == End::NoRoom, qPrintable(outcome.told));
        // Her files make room.
        QVERIFY(QDir(folder.path() + u"/out"_qs).removeRecursively());
        if (!mounted)
            disk_room(600'000);
        if (!deeds.isOpen())
            QCOMPARE(deeds.open().end, End::Done);
        QCOMPARE(heldIn(deeds.shelf()), before);
        QVERIFY(ledger::faultsIn(deeds.shelf()).isEmpty());
        auto store = opened(deeds.shelf());
        QVERIFY(store->access() == Access::SecondInstance); // the first still has it
        deeds.close();
        store.reset();
        got(opened(deeds.shelf())->create(documentOf(u"Once more"_qs)));
    }
    if (mounted)
        QVERIFY(::umount(qPrintable(folder.path())) == 0);
}

/// A copy of the store that is refused for want of room leaves nothing beside the name it was to have,
/// whatever was written of it.
void TestFullDisk::aCopyWithoutRoomLeavesNothing()
{
    QTemporaryDir folder;
    disk_watch(qPrintable(folder.path()));
    auto store = opened(folder.path());
    store.reset();
    // More than SQLite keeps in memory: the copy is written before it is whole.
    ask(storeFile(folder.path()), u"INSERT INTO settings WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT "
                                  "i + 1 FROM n WHERE i < 60) SELECT i, hex(zeroblob(50000)) FROM n"_qs);
    store = opened(folder.path());
    QVERIFY(QDir(folder.path()).mkpath(u"out"_qs));
    const QString copy = folder.filePath(u"out/copy.sqlite"_qs);
    int refused = 0;
    for (long long room = 0;; room += 200'003) {
        disk_room(room);
        const auto done = store->backupTo(copy);
        disk_room(-1);
        if (done)
            break;
        ++refused;
        const QStringList left = strayIn(folder.path(), {});
        QVERIFY2(left.isEmpty(), qPrintable(u"room for %1: %2"_qs.arg(room).arg(left.join(u' '))));
    }
    QVERIFY2(refused > 20, qPrintable(QString::number(refused)));
    QCOMPARE(strayIn(folder.path(), {}), QStringList{u"out/copy.sqlite"_qs});
}

void TestFullDisk::refusesWhatCannotBeFlushed()
{
    QTemporaryDir folder;
    disk_watch(qPrintable(folder.path()));
    const QString a = documentOf(u"A"_qs), b = documentOf(u"B"_qs);
    auto store = opened(folder.path());
    const QString id = got(store->create(a));
    NoteBook book(*store);
    const QByteArray picture = bytesOf(QStringLiteral(TEST_DATA_DIR "/../../assets/icon/matside-48.png"));
    disk_flush_fails(true);
    QCOMPARE(fault(store->applyEdit(id, edit(a, b))), int(StoreCode::Disk));
    const auto kept = book.folder().keep(picture);
    QVERIFY(!kept && kept.error().code == PhotoCode::Disk);
    QVERIFY(!store->backupTo(folder.filePath(u"copy.sqlite"_qs)));
    QVERIFY(!QFile::exists(folder.filePath(u"copy.sqlite"_qs)));
    QVERIFY(book.folder().kept().isEmpty());
    QCOMPARE(got(store->load(id)), a);
    disk_flush_fails(false);
    got(store->applyEdit(id, edit(a, b)));
    QVERIFY(book.folder().keep(picture).ok());
    store.reset();
    QCOMPARE(got(opened(folder.path())->load(id)), b);
}

void TestFullDisk::saysSoWhenNothingCanBeBegun()
{
    QTemporaryDir folder;
    const QString held = folder.filePath(u"held"_qs);
    const QString id = got(opened(held)->create(documentOf(u"A"_qs)));
    disk_watch(qPrintable(folder.path()));
    disk_room(0);
    // Nothing is there yet: there is nothing to be shown either.
    const auto none = openStore(folder.filePath(u"new"_qs));
    QVERIFY(!none);
    QCOMPARE(fault(none), int(StoreCode::CannotOpen));
    // What is there is shown.
    {
        const auto store = opened(held);
        QVERIFY(store->access() == Access::ReadOnlyFolder);
        QCOMPARE(got(store->load(id)), documentOf(u"A"_qs));
        QCOMPARE(fault(store->create(documentOf(u"B"_qs))), int(StoreCode::ReadOnly));
    }
    disk_room(-1);
    QVERIFY(opened(held)->access() == Access::Full);
    QVERIFY(opened(folder.filePath(u"new"_qs))->access() == Access::Full);
}

QTEST_GUILESS_MAIN(TestFullDisk)
#include "tst_full_disk.moc"
