// SPDX-License-Identifier: MIT
#include "store/storehelp.h"

#include <QDir>

#include <set>

using namespace storehelp;

namespace {
constexpr int pageSize = 4096; // SQLite's default since 3.12 (sqlite.org/pgszchng2016.html)
constexpr int projectsMade = 40;
} // namespace

/// A damaged file is never written, and gives what can still be read.
class TestStoreDamage : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    QByteArray m_sound;
    std::set<int> m_roots; ///< pages on which the whole of a table hangs

    QString dir(const QString &name) const { return m_folder.filePath(name); }
    void lay(const QString &dir, const QByteArray &bytes) const
    {
        QVERIFY(QDir().mkpath(dir));
        QVERIFY(overwrite(storeFile(dir), 0, bytes));
    }

private slots:
    void initTestCase();
    void exportsEverythingFromASoundStore();
    void losesNoMoreThanTheDamagedPage();
    void readsNothingFromWhatIsNoDatabase_data();
    void readsNothingFromWhatIsNoDatabase();
    void writesNothing();
};

void TestStoreDamage::initTestCase()
{
    const QString folder = dir(u"sound"_qs);
    auto store = opened(folder);
    for (int number = 1; number <= projectsMade; ++number)
        got(store->create(documentOf(u"Project %1"_qs.arg(number))));
    store.reset();
    m_sound = bytesOf(storeFile(folder));
    QVERIFY(m_sound.size() > 20 * pageSize);
    for (const Row &row : ask(storeFile(folder), u"SELECT rootpage FROM sqlite_schema"_qs))
        m_roots.insert(row[0].toInt());
    // The list of the tables itself hangs on page 1; where it has grown past it, on the pages that page names
    // (the SQLite file format, 1.6: an interior page is of type 5, its cells begin with a child's number).
    const auto number = [this](qsizetype at, int bytes) {
        int value = 0;
        for (int i = 0; i < bytes; ++i)
            value = value * 256 + static_cast<unsigned char>(m_sound[at + i]);
        return value;
    };
    if (m_sound[100] != 5)
        return;
    m_roots.insert(number(108, 4));
    for (int cell = 0; cell < number(103, 2); ++cell)
        m_roots.insert(number(number(112 + 2 * cell, 2), 4));
}

void TestStoreDamage::exportsEverythingFromASoundStore()
{
    lay(dir(u"whole"_qs), m_sound);
    auto store = opened(dir(u"whole"_qs));
    QVERIFY(store->access() == Access::Full);
    got(store->throwAway(got(store->projects())[0].id));
    const auto exported = got(store->exportReadable(dir(u"out"_qs)));
    QCOMPARE(exported.files.size(), projectsMade - 1);
    QVERIFY(exported.unreadable.isEmpty());
    QCOMPARE(bytesOf(dir(u"out"_qs) + u"/Project 7.json"_qs), documentOf(u"Project 7"_qs).toUtf8());
    // A second time: beside what is there.
    got(store->exportReadable(dir(u"out"_qs)));
    QCOMPARE(bytesOf(dir(u"out"_qs) + u"/Project 7 2.json"_qs), documentOf(u"Project 7"_qs).toUtf8());
}

void TestStoreDamage::losesNoMoreThanTheDamagedPage()
{
    int damaged = 0;
    for (int page = 2; page * pageSize <= m_sound.size(); ++page) {
        if (m_roots.contains(page))
            continue;
        QByteArray bytes = m_sound;
        bytes.replace((page - 1) * pageSize, pageSize, QByteArray(pageSize, '\xa5'));
        const QString folder = dir(u"page %1"_qs.arg(page));
        lay(folder, bytes);
        auto store = opened(folder);
        if (store->access() == Access::Full) // the page was in no use
            continue;
        ++damaged;
        QVERIFY(store->access() == Access::Damaged);
        (void)store->projects();
        const auto exported = got(store->exportReadable(folder + u"/out"_qs));
        // A page holds three documents of more than a quarter of it at the most.
        QVERIFY(documentOf(u"Project 1"_qs).size() > pageSize / 4);
        QVERIFY2(exported.files.size() >= projectsMade - 3, qPrintable(folder));
        QVERIFY(exported.files.size() + exported.unreadable.size() <= projectsMade);
        store.reset();
        QCOMPARE(bytesOf(storeFile(folder)), bytes);
    }
    QVERIFY(damaged > 10);
}

void TestStoreDamage::readsNothingFromWhatIsNoDatabase_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::newRow("text") << QByteArray("no database at all");
    QTest::newRow("first page gone") << QByteArray(pageSize, '\xa5') + m_sound.mid(pageSize);
    QTest::newRow("cut short") << m_sound.left(5 * pageSize + 100);
    QTest::newRow("zeros") << QByteArray(m_sound.size(), '\0');
}

void TestStoreDamage::readsNothingFromWhatIsNoDatabase()
{
    QFETCH(QByteArray, bytes);
    const QString folder = dir(QString::fromUtf8(QTest::currentDataTag()));
    lay(folder, bytes);
    auto store = opened(folder);
    QVERIFY(store->access() == Access::Damaged);
    QVERIFY(store->projects());
    QVERIFY(!store->load(u"none"_qs));
    QVERIFY(store->exportReadable(folder + u"/out"_qs));
    QVERIFY(!store->backupTo(folder + u"/copy.sqlite"_qs));
    QVERIFY(!QFile::exists(folder + u"/copy.sqlite"_qs));
    store.reset();
    QCOMPARE(bytesOf(storeFile(folder)), bytes);
}

void TestStoreDamage::writesNothing()
{
    const QString folder = dir(u"refuses"_qs);
    lay(folder, QByteArray(pageSize, '\xa5') + m_sound.mid(pageSize));
    auto store = opened(folder);
    QVERIFY(!store->canWrite());
    QCOMPARE(fault(store->create(documentOf(u"A"_qs))), int(StoreCode::ReadOnly));
    QCOMPARE(fault(store->setSetting(settings::station, u"cut"_qs)), int(StoreCode::ReadOnly));
    QCOMPARE(QDir(folder).entryList({u"matside.sqlite*"_qs}, QDir::Files), QStringList{u"matside.sqlite"_qs});
}

QTEST_GUILESS_MAIN(TestStoreDamage)
#include "tst_store_damage.moc"
