// SPDX-License-Identifier: MIT
//
// Everything in one file, and back again where nothing is yet.
#include "share/backup.h"
#include "share/sharehelp.h"
#include "share/zipmaker.h"

using namespace sharehelp;

namespace {

QByteArray backUp(const Home &home, const QString &path)
{
    const auto copy = copyForBackup(*home.store, path);
    return copy ? codeOf(writeBackup(copy.value(), home.book.folder(), path)) : QByteArray("no copy");
}

/// Restored into the folder; what stood in the way.
QByteArray restore(const QString &path, const QString &dir)
{
    if (const auto staged = stageRestoring(path, dir); !staged)
        return codeOf(staged);
    return codeOf(finishRestoring(dir));
}

/// Every project with its marks, document and notes: what has to come back.
QStringList all(Store &store)
{
    QStringList lines;
    NoteBook book(store);
    for (const ProjectRow &row : got(store.projects())) {
        lines += row.id + row.name + QString::number(row.putAway) + got(store.load(row.id));
        for (const Note &note : got(book.notes(row.id))) {
            lines += note.id + note.words + note.flags.join(u',');
            for (const auto &face : note.faces)
                lines += face ? photohelp::shaOf(bytesOf(book.folder().original(face->sha, face->format)))
                              : QString();
        }
    }
    return lines;
}

} // namespace

class TestBackup : public QObject {
    Q_OBJECT
private slots:
    void everythingComesBack();
    void nothingIsOverwritten();
    void olderBackupsAreMigrated();
    void newerAndSpoiledOnesAreRefused();
    void missingPhotographsAreToldAndStopNothing();
    void anInterruptedRestoreGoesOn();
    void whatWasHalfUnpackedIsClearedAway();
    void aRestoreThatOnlyHadToClearAwayLosesNothing();
};

void TestBackup::everythingComesBack()
{
    Home home(true);
    const QString second = got(home.store->create(documentOf(u"Second"_qs)));
    got(home.store->putAway(second));
    got(home.store->setSetting(settings::colours, u"lamp"_qs));
    QTemporaryDir out;
    const QString path = out.filePath(u"all.matside-backup"_qs);
    QCOMPARE(backUp(home, path), QByteArray());
    QCOMPARE(QDir(out.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot).size(), 1);
    const auto told = lookIntoBackup(path);
    QVERIFY2(told.ok(), codeOf(told));
    QCOMPARE(told.value().projects, 2);
    QCOMPARE(told.value().notes, 3);
    QCOMPARE(told.value().pictures, 2);
    QCOMPARE(told.value().missing, 0);

    QTemporaryDir fresh;
    opened(fresh.path()); // as a first start leaves it
    QCOMPARE(restore(path, fresh.path()), QByteArray());
    QVERIFY(!restoringWaits(fresh.path()));
    const auto store = opened(fresh.path());
    QCOMPARE(all(*store), all(*home.store));
    QCOMPARE(*got(store->setting(settings::colours)), u"lamp"_qs);
    QVERIFY(got(store->undoable(home.id)).has_value()); // what was done can be undone there too
    // The photographs stand as they came, and belong to rows: the next start sweeps none away.
    QCOMPARE(got(sweepPhotographs(fresh.path())), 0);
    // Backed up again it holds the same.
    const QString again = out.filePath(u"again.matside-backup"_qs);
    NoteBook book(*store);
    QVERIFY(writeBackup(got(copyForBackup(*store, again)), book.folder(), again).ok());
}

void TestBackup::nothingIsOverwritten()
{
    Home home(true);
    QTemporaryDir out;
    const QString path = out.filePath(u"all.matside-backup"_qs);
    QCOMPARE(backUp(home, path), QByteArray());
    const QByteArray bytes = bytesOf(path);
    QCOMPARE(backUp(home, path), QByteArray("exists"));
    QCOMPARE(bytesOf(path), bytes);
    // A store with a project stays as it is; the backup waits.
    Home other(false);
    got(other.store->create(documentOf(u"Own"_qs)));
    other.store.reset();
    const auto before = bytesOf(storeFile(other.dir.path()));
    QCOMPARE(restore(path, other.dir.path()), QByteArray());
    QVERIFY(restoringWaits(other.dir.path()));
    QCOMPARE(bytesOf(storeFile(other.dir.path())), before);
    QCOMPARE(codeOf(stageRestoring(path, other.dir.path())), QByteArray("exists"));
}

void TestBackup::olderBackupsAreMigrated()
{
    // A database of version 1, as it was before photographs, in a backup of its own.
    QTemporaryDir old;
    {
        Database database;
        got(database.open(storeFile(old.path()), Database::Mode::Write));
        got(allMigrations().front().run(database));
        got(database.run(u"PRAGMA user_version = 1"_qs));
        got(database.run(
            u"INSERT INTO projects VALUES ('4b6f5f6e-0d5e-4a5e-9d7a-0c9f6a1b2c3d', 'Old', 'own', 0, 0, 1, "
            "1, 1)"_qs));
        got(database.run(u"INSERT INTO project_state VALUES ('4b6f5f6e-0d5e-4a5e-9d7a-0c9f6a1b2c3d', ?)"_qs,
                         {documentOf(u"Old"_qs)}));
    }
    QTemporaryDir out;
    const QString path = out.filePath(u"old.matside-backup"_qs);
    const QString copy = out.filePath(u"copy.sqlite"_qs);
    QVERIFY(QFile::copy(storeFile(old.path()), copy));
    const auto written = writeBackup(copy, PhotoFolder(old.path()), path);
    QVERIFY2(written.ok(), codeOf(written) + (written ? "" : written.error().detail.toUtf8()));
    QTemporaryDir fresh;
    QCOMPARE(restore(path, fresh.path()), QByteArray());
    const auto store = opened(fresh.path());
    QCOMPARE(names(*store), QStringList{u"Old"_qs});
    QVERIFY(store->canWrite());
    QVERIFY(got(NoteBook(*store).notes(got(store->projects()).front().id)).empty());
}

void TestBackup::newerAndSpoiledOnesAreRefused()
{
    Home home(true);
    QTemporaryDir out;
    const QString path = out.filePath(u"all.matside-backup"_qs);
    QCOMPARE(backUp(home, path), QByteArray());
    const QByteArray whole = bytesOf(path);
    const QString spoiled = out.filePath(u"spoiled.matside-backup"_qs);
    QTemporaryDir fresh;
    std::mt19937 random(5);
    for (int i = 0; i < 60; ++i) {
        QByteArray bytes = whole;
        if (i % 4 == 0)
            bytes.truncate(qsizetype(random() % quint32(bytes.size())));
        else
            bytes[qsizetype(random() % quint32(bytes.size()))] ^= char(1U << (random() % 8));
        QVERIFY(QFile::remove(spoiled) || i == 0);
        QVERIFY(overwrite(spoiled, 0, bytes));
        const auto staged = stageRestoring(spoiled, fresh.path());
        // A byte that belongs to nothing (a date, a mode) may be changed without harm.
        if (staged)
            QVERIFY(QDir(fresh.filePath(u"restored"_qs)).removeRecursively());
        QVERIFY(QDir(fresh.path()).isEmpty());
    }
    // One from a newer program.
    const QString copy = got(copyForBackup(*home.store, out.filePath(u"new"_qs)));
    ask(copy, u"PRAGMA user_version = 99"_qs);
    QCOMPARE(codeOf(writeBackup(copy, home.book.folder(), out.filePath(u"new"_qs))), QByteArray("newer"));
    // A share file is no backup, and the other way round.
    const QString share = out.filePath(u"one.matside"_qs);
    QCOMPARE(home.share(share), QByteArray());
    QCOMPARE(codeOf(lookIntoBackup(share)), QByteArray("not-a-share"));
    QCOMPARE(codeOf(lookInside(path)), QByteArray("not-a-share"));
}

void TestBackup::missingPhotographsAreToldAndStopNothing()
{
    Home home(true);
    const Photograph photo = *home.parcel().notes.front().faces[0];
    QVERIFY(QFile::remove(home.book.folder().original(photo.sha, photo.format)));
    QTemporaryDir out;
    const QString path = out.filePath(u"all.matside-backup"_qs);
    QCOMPARE(backUp(home, path), QByteArray());
    QCOMPARE(lookIntoBackup(path).value().missing, 1);
    QTemporaryDir fresh;
    QCOMPARE(restore(path, fresh.path()), QByteArray());
    QCOMPARE(names(*opened(fresh.path())).size(), 1);
}

void TestBackup::anInterruptedRestoreGoesOn()
{
    Home home(true);
    QTemporaryDir out;
    const QString path = out.filePath(u"all.matside-backup"_qs);
    QCOMPARE(backUp(home, path), QByteArray());
    QTemporaryDir busy;
    {
        const auto store = opened(busy.path()); // another Matside has it open: it waits
        QVERIFY(stageRestoring(path, busy.path()).ok());
        QCOMPARE(codeOf(finishRestoring(busy.path())), QByteArray());
        QVERIFY(restoringWaits(busy.path()) && names(*store).isEmpty());
    }
    QCOMPARE(codeOf(finishRestoring(busy.path())), QByteArray());
    QVERIFY(!restoringWaits(busy.path()));
    // Cut off after the first photograph was moved: the next start goes on.
    QTemporaryDir fresh;
    QVERIFY(stageRestoring(path, fresh.path()).ok());
    const QString name = filesIn(fresh.filePath(u"restored"_qs), "photographs").first();
    QVERIFY(QDir(fresh.path()).mkpath(u"photographs"_qs));
    QVERIFY(QFile::rename(fresh.filePath(u"restored/photographs/"_qs + name),
                          fresh.filePath(u"photographs/"_qs + name)));
    QCOMPARE(codeOf(finishRestoring(fresh.path())), QByteArray());
    QCOMPARE(all(*opened(fresh.path())), all(*home.store));
    QVERIFY(!QDir(fresh.filePath(u"restored"_qs)).exists());
    // A store that was begun and whose log a power cut took: nothing in it, so the backup goes in its place.
    QTemporaryDir begun;
    {
        const auto store = opened(begun.path());
        QVERIFY(QFile::copy(storeFile(begun.path()), begun.filePath(u"without-log"_qs)));
    }
    QVERIFY(stageRestoring(path, begun.path()).ok());
    QVERIFY(QFile::remove(storeFile(begun.path())));
    QVERIFY(QFile::rename(begun.filePath(u"without-log"_qs), storeFile(begun.path())));
    QCOMPARE(codeOf(finishRestoring(begun.path())), QByteArray());
    QCOMPARE(all(*opened(begun.path())), all(*home.store));
}

void TestBackup::whatWasHalfUnpackedIsClearedAway()
{
    QTemporaryDir home;
    const QString left = home.filePath(u"restoring-a1B2c3/photographs"_qs);
    QVERIFY(QDir().mkpath(left));
    {
        const auto store = opened(home.path()); // it may be this one that is unpacking
        QCOMPARE(codeOf(finishRestoring(home.path())), QByteArray());
        QVERIFY(QDir(left).exists());
    }
    QCOMPARE(codeOf(finishRestoring(home.path())), QByteArray());
    QCOMPARE(QDir(home.path()).entryList({u"restoring-*"_qs}, QDir::Dirs), QStringList());
    QVERIFY(opened(home.path())->canWrite());
}

void TestBackup::aRestoreThatOnlyHadToClearAwayLosesNothing()
{
    // Without a project of her own: the demo, a setting. It must not be taken for a store never used.
    Home home(false);
    got(home.store->ensureDemo(documentOf(u"Demo"_qs)));
    got(home.store->setSetting(settings::colours, u"lamp"_qs));
    QTemporaryDir out;
    const QString path = out.filePath(u"all.matside-backup"_qs);
    QCOMPARE(backUp(home, path), QByteArray());
    QTemporaryDir fresh;
    QVERIFY(stageRestoring(path, fresh.path()).ok());
    QVERIFY(QFile::rename(fresh.filePath(u"restored/matside.sqlite"_qs), storeFile(fresh.path())));
    QCOMPARE(codeOf(finishRestoring(fresh.path())), QByteArray());
    QVERIFY(!restoringWaits(fresh.path()));
    const auto store = opened(fresh.path());
    QCOMPARE(all(*store), all(*home.store));
    QCOMPARE(got(store->setting(settings::colours)), u"lamp"_qs);
}

QTEST_GUILESS_MAIN(TestBackup)
#include "tst_backup.moc"
