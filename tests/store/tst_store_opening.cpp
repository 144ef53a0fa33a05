// SPDX-License-Identifier: MIT
#include "store/storehelp.h"

#include <QDir>

#include <csignal>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace storehelp;

namespace {

/// Runs as nobody while it lives, when the tests run as root: root may write where nobody else may.
class AsNobody {
public:
    AsNobody() : m_was(::getuid())
    {
        constexpr uid_t nobody = 65534;
        if (m_was == 0)
            m_changed = ::setresuid(nobody, nobody, 0) == 0;
    }
    ~AsNobody()
    {
        if (m_changed && ::setresuid(0, 0, 0) != 0)
            std::abort();
    }
    AsNobody(const AsNobody &) = delete;
    AsNobody &operator=(const AsNobody &) = delete;

private:
    uid_t m_was;
    bool m_changed = false;
};

} // namespace

class TestStoreOpening : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    QString dir(const char *name) const { return m_folder.filePath(QString::fromLatin1(name)); }

private slots:
    void initTestCase();
    void makesAStrictStore();
    void keepsForeignKeysOn();
    void leavesANewerStoreToTheByte();
    void leavesAnotherProgramsFile();
    void aSecondInstanceReads();
    void takesOverALockLeftBehind_data();
    void takesOverALockLeftBehind();
    void leavesALivingProgramItsLock();
    void readsInAFolderThatCannotBeWritten();
    void readsTheLogInAFolderThatCannotBeWritten();
    void saysThatNothingCanBeMadeThere();
    void saysThatTheDiskIsFull();
    void backsUpIntoOneSoundFile();
};

void TestStoreOpening::initTestCase()
{
    // So that somebody else than the owner may look into it.
    QVERIFY(QFile::setPermissions(m_folder.path(), QFileDevice::Permissions(0x7755)));
}

void TestStoreOpening::makesAStrictStore()
{
    const QString folder = m_folder.filePath(u"made/by the store ä"_qs);
    auto store = opened(folder);
    QVERIFY(store->access() == Access::Full);
    QVERIFY(names(*store).isEmpty());
    store.reset();
    QCOMPARE(ask(storeFile(folder), u"PRAGMA user_version"_qs)[0][0].toInt(), allMigrations().back().version);
    QCOMPARE(ask(storeFile(folder), u"PRAGMA journal_mode"_qs)[0][0].toString(), u"wal"_qs);
    for (const Row &row :
         ask(storeFile(folder),
             u"SELECT name, strict FROM pragma_table_list WHERE name NOT LIKE 'sqlite_%'"_qs))
        QVERIFY2(row[1].toInt() == 1, qPrintable(row[0].toString()));
    QVERIFY(!QFile::exists(folder + u"/backups"_qs)); // there was nothing to copy
}

void TestStoreOpening::keepsForeignKeysOn()
{
    auto store = opened(dir("keys"));
    const QString id = got(store->create(documentOf(u"A"_qs)));
    store.reset();
    Database database;
    got(database.open(storeFile(dir("keys")), Database::Mode::Write));
    got(database.makeDurable());
    QCOMPARE(got(database.value(u"PRAGMA foreign_keys"_qs)).toInt(), 1);
    QCOMPARE(got(database.value(u"PRAGMA synchronous"_qs)).toInt(), 2);
    QCOMPARE(fault(database.run(u"INSERT INTO project_state (project, document) VALUES ('none', '')"_qs)),
             int(StoreCode::Refused));
    got(database.run(u"DELETE FROM projects WHERE id = ?"_qs, {id}));
    QCOMPARE(got(database.value(u"SELECT count(*) FROM project_state"_qs)).toInt(), 0);
    QCOMPARE(got(database.value(u"SELECT count(*) FROM commands"_qs)).toInt(), 0);
}

void TestStoreOpening::leavesANewerStoreToTheByte()
{
    const QString folder = dir("newer");
    got(opened(folder)->create(documentOf(u"A"_qs)));
    ask(storeFile(folder), u"PRAGMA user_version = 99"_qs);
    const QByteArray before = bytesOf(storeFile(folder));
    QCOMPARE(fault(openStore(folder)), int(StoreCode::Newer));
    QCOMPARE(bytesOf(storeFile(folder)), before);
    // Also when it was not closed: its last rows, and its version, lie in the log.
    const QString log = storeFile(folder) + u"-wal"_qs;
    {
        Database writer;
        got(writer.open(storeFile(folder), Database::Mode::Write));
        got(writer.run(u"PRAGMA user_version = 100"_qs));
        const QString left = dir("newer, left open");
        QVERIFY(QDir().mkpath(left));
        QVERIFY(QFile::copy(storeFile(folder), storeFile(left)));
        QVERIFY(QFile::copy(log, storeFile(left) + u"-wal"_qs));
        const QByteArray logBefore = bytesOf(storeFile(left) + u"-wal"_qs);
        QVERIFY(!logBefore.isEmpty());
        const auto refused = openStore(left);
        QCOMPARE(fault(refused), int(StoreCode::Newer));
        QVERIFY(refused.error().detail.contains(u"100"_qs));
        QCOMPARE(bytesOf(storeFile(left)), before);
        QCOMPARE(bytesOf(storeFile(left) + u"-wal"_qs), logBefore);
    }
}

void TestStoreOpening::leavesAnotherProgramsFile()
{
    const QString folder = dir("foreign");
    QVERIFY(QDir().mkpath(folder));
    ask(storeFile(folder), u"CREATE TABLE stamps (country TEXT)"_qs);
    const QByteArray before = bytesOf(storeFile(folder));
    QCOMPARE(fault(openStore(folder)), int(StoreCode::CannotOpen));
    QCOMPARE(bytesOf(storeFile(folder)), before);
}

void TestStoreOpening::aSecondInstanceReads()
{
    const QString folder = dir("second");
    const QString a = documentOf(u"A"_qs);
    auto first = opened(folder);
    const QString id = got(first->create(a));
    auto second = opened(folder);
    QVERIFY(second->access() == Access::SecondInstance);
    QVERIFY(!second->canWrite());
    QCOMPARE(got(second->load(id)), a);
    got(first->applyEdit(id, edit(a, documentOf(u"B"_qs)))); // the reader does not hinder, and sees it
    QCOMPARE(names(*second), QStringList{u"B"_qs});
    QCOMPARE(fault(second->create(a)), int(StoreCode::ReadOnly));
    QCOMPARE(fault(second->rename(id, u"C"_qs)), int(StoreCode::ReadOnly));
    QCOMPARE(fault(second->putAway(id)), int(StoreCode::ReadOnly));
    QCOMPARE(fault(second->throwAway(id)), int(StoreCode::ReadOnly));
    QCOMPARE(fault(second->makeAgain(id, u"C"_qs)), int(StoreCode::ReadOnly));
    QCOMPARE(fault(second->ensureDemo(a)), int(StoreCode::ReadOnly));
    QCOMPARE(fault(second->undo(id)), int(StoreCode::ReadOnly));
    QCOMPARE(fault(second->undoShelf()), int(StoreCode::ReadOnly));
    QCOMPARE(fault(second->setSetting(settings::station, u"cut"_qs)), int(StoreCode::ReadOnly));
    second.reset();
    first.reset();
    QVERIFY(opened(folder)->access() == Access::Full);
}

void TestStoreOpening::takesOverALockLeftBehind_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<int>("age");
    // As a kill or a power cut leaves it, just after it was made.
    QTest::newRow("no text, old") << QByteArray() << 60;
    QTest::newRow("no text, of this moment") << QByteArray() << 0;
    QTest::newRow("half a text") << QByteArray("12") << 60;
    QTest::newRow("of the machine's former name")
        << QByteArray::number(QCoreApplication::applicationPid()) + "\nmatside\nformer-name\n\n\n"
        << 60;
}

void TestStoreOpening::takesOverALockLeftBehind()
{
    QFETCH(QByteArray, text);
    QFETCH(int, age);
    QTemporaryDir folder;
    QFile lock(folder.filePath(u"matside.lock"_qs));
    QVERIFY(lock.open(QIODevice::WriteOnly) && lock.write(text) == text.size() && lock.flush());
    QVERIFY(lock.setFileTime(QDateTime::currentDateTime().addSecs(-age), QFileDevice::FileModificationTime));
    lock.close();
    QVERIFY(opened(folder.path())->access() == Access::Full);
}

void TestStoreOpening::leavesALivingProgramItsLock()
{
    QTemporaryDir folder;
    auto first = opened(folder.path());
    QFile lock(folder.filePath(u"matside.lock"_qs));
    QVERIFY(lock.open(QIODevice::ReadWrite) && lock.resize(0)); // whatever became of its text
    QVERIFY(opened(folder.path())->access() == Access::SecondInstance);
    first.reset();
    QVERIFY(opened(folder.path())->access() == Access::Full);
}

void TestStoreOpening::readsInAFolderThatCannotBeWritten()
{
    const QString folder = dir("readonly");
    const QString id = got(opened(folder)->create(documentOf(u"A"_qs)));
    QVERIFY(::chmod(qPrintable(folder), 0555) == 0);
    {
        const AsNobody nobody;
        auto store = opened(folder);
        QVERIFY(store->access() == Access::ReadOnlyFolder);
        QCOMPARE(got(store->load(id)), documentOf(u"A"_qs));
        QCOMPARE(fault(store->create(documentOf(u"B"_qs))), int(StoreCode::ReadOnly));
        QCOMPARE(fault(openStore(folder, with(addsColour))), int(StoreCode::NeedsUpgrade));
    }
    QCOMPARE(QDir(folder).entryList(QDir::Files), QStringList{u"matside.sqlite"_qs});
    QVERIFY(::chmod(qPrintable(folder), 0755) == 0);
    // A file that cannot be written, in a folder that can.
    QVERIFY(::chmod(qPrintable(storeFile(folder)), 0444) == 0);
    QVERIFY(::chmod(qPrintable(folder), 0777) == 0);
    {
        const AsNobody nobody;
        QVERIFY(opened(folder)->access() == Access::ReadOnlyFolder);
    }
    QVERIFY(::chmod(qPrintable(storeFile(folder)), 0644) == 0);
}

void TestStoreOpening::readsTheLogInAFolderThatCannotBeWritten()
{
    const QString folder = dir("readonly, left open");
    QVERIFY(QDir().mkpath(folder));
    auto writer = opened(dir("writer"));
    got(writer->create(documentOf(u"In the log"_qs)));
    for (const auto &end : {u""_qs, u"-wal"_qs})
        QVERIFY(QFile::copy(storeFile(dir("writer")) + end, storeFile(folder) + end));
    QVERIFY(::chmod(qPrintable(folder), 0555) == 0);
    {
        const AsNobody nobody;
        auto store = opened(folder);
        QVERIFY(store->access() == Access::ReadOnlyFolder);
        QCOMPARE(names(*store), QStringList{u"In the log"_qs});
    }
    QVERIFY(::chmod(qPrintable(folder), 0755) == 0);
}

void TestStoreOpening::saysThatNothingCanBeMadeThere()
{
    QVERIFY(QDir().mkpath(dir("bare")));
    QVERIFY(::chmod(qPrintable(dir("bare")), 0555) == 0);
    {
        const AsNobody nobody;
        QCOMPARE(fault(openStore(dir("bare"))), int(StoreCode::CannotOpen));
        QCOMPARE(fault(openStore(dir("bare") + u"/below"_qs)), int(StoreCode::CannotOpen));
    }
    QVERIFY(overwrite(dir("file"), 0, "no folder"));
    QCOMPARE(fault(openStore(dir("file"))), int(StoreCode::CannotOpen));
}

void TestStoreOpening::saysThatTheDiskIsFull()
{
    const QString folder = dir("full");
    auto store = opened(folder);
    const QString a = documentOf(u"A"_qs);
    const QString id = got(store->create(a));
    // A limit on the size of files stands in for the disk: writing beyond it fails.
    rlimit usual{};
    QVERIFY(::getrlimit(RLIMIT_FSIZE, &usual) == 0);
    const auto usualSignal = std::signal(SIGXFSZ, SIG_IGN);
    rlimit tight = usual;
    tight.rlim_cur = rlim_t(QFile(storeFile(folder) + u"-wal"_qs).size() + 6000);
    QVERIFY(::setrlimit(RLIMIT_FSIZE, &tight) == 0);
    const auto refused = store->create(documentOf(QString(190, u'B')));
    const auto refusedEdit = store->applyEdit(id, edit(a, a + QString(20'000, u' ')));
    ::setrlimit(RLIMIT_FSIZE, &usual);
    std::signal(SIGXFSZ, usualSignal);
    QCOMPARE(fault(refused), int(StoreCode::Disk));
    QCOMPARE(fault(refusedEdit), int(StoreCode::Disk));
    QCOMPARE(names(*store), QStringList{u"A"_qs});
    QCOMPARE(got(store->load(id)), a);
    got(store->create(documentOf(u"C"_qs))); // once there is room again
    store.reset();
    QCOMPARE(names(*opened(folder)), (QStringList{u"C"_qs, u"A"_qs}));
}

void TestStoreOpening::backsUpIntoOneSoundFile()
{
    auto store = opened(dir("backup"));
    const QString id = got(store->create(documentOf(u"A"_qs)));
    const QString copy = storeFile(dir("restored"));
    got(store->backupTo(copy)); // while it is open, its rows still in the log
    QCOMPARE(fault(store->backupTo(copy)), int(StoreCode::Exists));
    auto restored = opened(dir("restored"));
    QVERIFY(restored->access() == Access::Full);
    QCOMPARE(got(restored->load(id)), documentOf(u"A"_qs));
    QVERIFY(overwrite(dir("no folder"), 0, "x"));
    QCOMPARE(fault(store->backupTo(dir("no folder") + u"/copy.sqlite"_qs)), int(StoreCode::CannotOpen));
}

QTEST_GUILESS_MAIN(TestStoreOpening)
#include "tst_store_opening.moc"
