// SPDX-License-Identifier: MIT
#include "store/photonotes.h"
#include "store/storehelp.h"

#include <QDir>

using namespace storehelp;

namespace {

/// The tables as SQLite reports them: columns, types, NOT NULL, defaults, keys, indexes, strictness.
QStringList schemaOf(const QString &file)
{
    QStringList schema;
    const auto tell = [&](const QString &sql) {
        for (const Row &row : ask(file, sql)) {
            QStringList cells;
            for (const QVariant &cell : row)
                cells.append(cell.toString());
            schema.append(cells.join(u'|'));
        }
    };
    tell(u"SELECT t.name, t.type, t.strict, t.wr, c.cid, c.name, c.type, c.\"notnull\", c.dflt_value, c.pk "
         "FROM pragma_table_list AS t, pragma_table_xinfo(t.name) AS c WHERE t.name NOT LIKE 'sqlite_%' "
         "ORDER BY t.name, c.cid"_qs);
    tell(u"SELECT t.name, f.* FROM pragma_table_list AS t, pragma_foreign_key_list(t.name) AS f "
         "ORDER BY t.name, f.id"_qs);
    tell(u"SELECT t.name, i.name, i.\"unique\", i.partial, x.seqno, x.name FROM pragma_table_list AS t, "
         "pragma_index_list(t.name) AS i, pragma_index_info(i.name) AS x "
         "WHERE t.name NOT LIKE 'sqlite_%' ORDER BY t.name, i.name, x.seqno"_qs);
    tell(u"SELECT name, tbl_name, sql FROM sqlite_schema WHERE type = 'trigger' ORDER BY name"_qs);
    return schema;
}

/// Makes a store as an earlier program left it: the statements of a file, one to a paragraph.
void makeFrom(const QString &sqlFile, const QString &dir)
{
    QVERIFY(QDir().mkpath(dir));
    Database database;
    got(database.open(storeFile(dir), Database::Mode::Write));
    for (const QString &statement : QString::fromUtf8(bytesOf(sqlFile)).split(u"\n\n"_qs, Qt::SkipEmptyParts))
        got(database.run(statement.trimmed()));
}

StoreResult<Done> failsMidway(const Database &database)
{
    for (const auto &statement : {u"CREATE TABLE half (a TEXT NOT NULL) STRICT"_qs,
                                  u"DELETE FROM projects"_qs, u"INSERT INTO nowhere VALUES (1)"_qs})
        if (auto ran = database.run(statement); !ran)
            return ran.error();
    return Done{};
}

} // namespace

/// Stores of earlier versions, brought up to date with a copy kept.
class TestStoreUpgrades : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    QString dir(const char *name) const { return m_folder.filePath(QString::fromLatin1(name)); }

private slots:
    void readsWhatEachEarlierVersionLeft_data();
    void readsWhatEachEarlierVersionLeft();
    void upgradesWithACopyFirst();
    void anUpgradeThatFailsChangesNothing();
    void doesNotUpgradeWithoutACopy();
};

void TestStoreUpgrades::readsWhatEachEarlierVersionLeft_data()
{
    QTest::addColumn<QString>("file");
    const QDir data(QStringLiteral(STORE_DATA_DIR));
    for (const QString &file : data.entryList({u"version-*.sql"_qs}))
        QTest::newRow(qPrintable(file)) << data.filePath(file);
    // One for each released version.
    QCOMPARE(data.entryList({u"version-*.sql"_qs}).size(), qsizetype(allMigrations().size()));
}

void TestStoreUpgrades::readsWhatEachEarlierVersionLeft()
{
    QFETCH(QString, file);
    QTemporaryDir old;
    QTemporaryDir fresh;
    makeFrom(file, old.path());
    auto store = opened(old.path());
    QVERIFY(store->access() == Access::Full);
    QCOMPARE(names(*store), (QStringList{u"Window runner"_qs, u"Kitchen"_qs}));
    const QString id = got(store->projects())[0].id;
    const auto document = u"{\"format\": \"matside-project\", \"version\": 1, \"name\": \"Window runner\", "
                          "\"system\": \"inch\", \"kits\": %1}"_qs;
    QCOMPARE(got(store->load(id)), document.arg(2));
    // Notes came with version 2; this one belongs to the command that is undone next.
    const auto notes = got(NoteBook(*store).notes(id, u"A1"_qs));
    QCOMPARE(notes.size(), std::size_t(file.contains(u"version-1."_qs) ? 0 : 1));
    QVERIFY(notes.empty() || (notes[0].along == u"6 15/16 in"_qs && notes[0].faces[0]->size.width() == 4000));
    QCOMPARE(got(store->undo(id)).document, document.arg(1));
    QVERIFY(got(NoteBook(*store).notes(id)).empty());
    QCOMPARE(got(store->setting(settings::station)), u"cut"_qs);
    QCOMPARE(got(store->undoShelf()).label.kind, u"put-away"_qs);
    store.reset();
    opened(fresh.path()).reset();
    QCOMPARE(schemaOf(storeFile(old.path())), schemaOf(storeFile(fresh.path())));
    QVERIFY(schemaOf(storeFile(fresh.path())).size() > 20);
    QVERIFY(ask(storeFile(old.path()), u"PRAGMA foreign_key_check"_qs).empty());
}

void TestStoreUpgrades::upgradesWithACopyFirst()
{
    const QString folder = dir("upgrade");
    got(opened(folder)->create(documentOf(u"A"_qs)));
    const int version = allMigrations().back().version;
    auto store = got(openStore(folder, with(addsColour)));
    QVERIFY(store && store->access() == Access::Full);
    QCOMPARE(names(*store), QStringList{u"A"_qs});
    store.reset();
    QCOMPARE(ask(storeFile(folder), u"PRAGMA user_version"_qs)[0][0].toInt(), version + 1);
    const QString copy = folder + u"/backups/matside-version-%1.sqlite"_qs.arg(version);
    QCOMPARE(ask(copy, u"PRAGMA user_version"_qs)[0][0].toInt(), version);
    QCOMPARE(ask(copy, u"SELECT name FROM projects"_qs)[0][0].toString(), u"A"_qs);
    QCOMPARE(QDir(folder + u"/backups"_qs).entryList(QDir::Files).size(), 1);
    QCOMPARE(fault(openStore(folder)), int(StoreCode::Newer));
}

void TestStoreUpgrades::anUpgradeThatFailsChangesNothing()
{
    const QString folder = dir("fails");
    got(opened(folder)->create(documentOf(u"A"_qs)));
    const QStringList before = schemaOf(storeFile(folder));
    for (int attempt = 1; attempt <= 2; ++attempt) {
        QCOMPARE(fault(openStore(folder, with(failsMidway))), int(StoreCode::Refused));
        QCOMPARE(schemaOf(storeFile(folder)), before);
        QCOMPARE(ask(storeFile(folder), u"PRAGMA user_version"_qs)[0][0].toInt(),
                 allMigrations().back().version);
        QCOMPARE(QDir(folder + u"/backups"_qs).entryList(QDir::Files).size(), attempt);
    }
    QCOMPARE(names(*opened(folder)), QStringList{u"A"_qs});
}

void TestStoreUpgrades::doesNotUpgradeWithoutACopy()
{
    const QString folder = dir("nocopy");
    got(opened(folder)->create(documentOf(u"A"_qs)));
    QVERIFY(overwrite(folder + u"/backups"_qs, 0, "a file where the folder should be"));
    QCOMPARE(fault(openStore(folder, with(addsColour))), int(StoreCode::NoCopy));
    QVERIFY(opened(folder)->access() == Access::Full);
}

QTEST_GUILESS_MAIN(TestStoreUpgrades)
#include "tst_store_upgrades.moc"
