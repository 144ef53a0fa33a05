// SPDX-License-Identifier: MIT
#include "faults/ledger.h"
#include "store/photohelp.h"
#include "store/storehelp.h"

#include <functional>

using namespace storehelp;

namespace {

const QString runner = u"3f0e433a-26fa-4a53-a6de-8ece1c92f996"_qs;  // of the kept stores
const QString kitchen = u"94636e24-92ee-4adb-8c73-6a50b46a3ee9"_qs; // put away

QStringList statementsOf(const QString &sqlFile)
{
    return QString::fromUtf8(bytesOf(sqlFile)).split(u"\n\n"_qs, Qt::SkipEmptyParts);
}

/// The store as the earlier program left it.
void layOld(const QString &sqlFile, const QString &dir)
{
    Database database;
    got(database.open(storeFile(dir), Database::Mode::Write));
    for (const QString &statement : statementsOf(sqlFile))
        got(database.run(statement.trimmed()));
}

/// The same rows in a store that today's program made.
void layFresh(const QString &sqlFile, const QString &dir)
{
    opened(dir).reset();
    Database database;
    got(database.open(storeFile(dir), Database::Mode::Write));
    got(database.run(u"DELETE FROM counter"_qs));
    for (const QString &statement : statementsOf(sqlFile))
        if (statement.trimmed().startsWith(u"INSERT"_qs))
            got(database.run(statement.trimmed()));
}

/// What a maker does next, with nothing left to chance.
QStringList workOn(Store &store)
{
    QStringList told;
    const auto tell = [&](const auto &result) {
        told.append(result ? result.value().label.kind + result.value().document
                           : QString::number(int(result.error().code)));
    };
    tell(store.undo(runner));
    tell(store.redo(runner));
    tell(store.undoShelf());
    tell(store.redoShelf());
    got(store.bringBack(kitchen));
    got(store.rename(kitchen, u"Kitchen table"_qs));
    const QString held = got(store.load(runner));
    const QString wider = QString(held).replace(u"\"kits\""_qs, u"\"spare\": 3, \"kits\""_qs);
    got(store.applyEdit(runner, edit(held, wider, u"spare"_qs)));
    NoteBook book(store);
    Note note = photohelp::noteOf(
        u"B2"_qs, book.folder().keep(photohelp::encoded(photohelp::picture(5, {64, 48}))).value());
    note.id = u"7f0e433a-26fa-4a53-a6de-8ece1c92f990"_qs;
    got(book.log(runner, edit(wider, held, u"kits"_qs), note));
    got(store.setSetting(settings::station, u"trim"_qs));
    got(store.throwAway(kitchen));
    tell(store.undoShelf());
    for (const ProjectRow &row : got(store.projects()))
        told.append(row.name);
    return told;
}

} // namespace

/// A store of each released version, brought up to date, is the store today's program would have made: row by
/// row, and in what comes of it.
class TestUpgraded : public QObject {
    Q_OBJECT

private slots:
    void holdsWhatAFreshOneHolds_data();
    void holdsWhatAFreshOneHolds();
};

void TestUpgraded::holdsWhatAFreshOneHolds_data()
{
    QTest::addColumn<QString>("file");
    QTest::addColumn<int>("version");
    for (const Migration &migration : allMigrations())
        QTest::addRow("version %d", migration.version)
            << u"%1/version-%2.sql"_qs.arg(QStringLiteral(STORE_DATA_DIR)).arg(migration.version)
            << migration.version;
}

void TestUpgraded::holdsWhatAFreshOneHolds()
{
    QFETCH(QString, file);
    QFETCH(int, version);
    QTemporaryDir old, fresh;
    layOld(file, old.path());
    const QStringList before = ledger::rowsOf(storeFile(old.path()));
    QVERIFY(before.size() > 8);
    layFresh(file, fresh.path());
    auto upgraded = opened(old.path());
    auto made = opened(fresh.path());
    QVERIFY(upgraded->canWrite() && made->canWrite());
    // Not a row was lost or changed on the way.
    const QStringList after = ledger::rowsOf(storeFile(old.path()));
    for (const QString &row : before)
        QVERIFY2(after.contains(row), qPrintable(row));
    QCOMPARE(after, ledger::rowsOf(storeFile(fresh.path())));
    const QString copy = old.filePath(u"backups/matside-version-%1.sqlite"_qs.arg(version));
    QCOMPARE(QFile::exists(copy), version < allMigrations().back().version);
    if (QFile::exists(copy))
        QCOMPARE(ledger::rowsOf(copy), before);
    // And what is done with it afterwards comes out the same.
    QCOMPARE(workOn(*upgraded), workOn(*made));
    QCOMPARE(ledger::rowsOf(storeFile(old.path())), ledger::rowsOf(storeFile(fresh.path())));
    QVERIFY(ledger::rowsOf(storeFile(old.path())).size() > before.size() + 3);
}

QTEST_GUILESS_MAIN(TestUpgraded)
#include "tst_upgraded.moc"
