// SPDX-License-Identifier: MIT
#include "store/storehelp.h"

#include "store/writing.h"

using namespace storehelp;

/// Edits of one project, taken back and done again, also after closing and opening.
class TestStoreEdits : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    QString dir(const char *name) const { return m_folder.filePath(QString::fromLatin1(name)); }

private slots:
    void undoesAndRedoesAcrossReopening();
    void forgetsWhatWasUndoneAtTheNextEdit();
    void refusesAnEditOfAnOlderState();
    void refusesWhatIsNoProjectFile();
    void keepsFiveHundredCommandsOfEachProject();
    void keepsProjectsApart();
    void storesOnlyTheStretchThatDiffers_data();
    void storesOnlyTheStretchThatDiffers();
    void keepsEveryCharacter();
    void numbersNeverComeAgain();
    void refusesAWrongNumberOfValues();
    void takesBackWhatFailsHalfway();
    void remembersSettings();
};

void TestStoreEdits::undoesAndRedoesAcrossReopening()
{
    const QString one = documentOf(QStringLiteral("Runner"), 1);
    const QString two = documentOf(QStringLiteral("Runner"), 127);
    const QString three = documentOf(QStringLiteral("Table runner"), 127);
    auto store = opened(dir("undo"));
    const QString id = got(store->create(one));
    const auto first = got(store->applyEdit(id, edit(one, two, QStringLiteral("slack"))));
    const auto second = got(store->applyEdit(id, edit(two, three, QStringLiteral("name"))));
    QVERIFY(second > first);
    QCOMPARE(names(*store), QStringList{QStringLiteral("Table runner")});

    store.reset();
    store = opened(dir("undo"));
    QCOMPARE(got(store->load(id)), three);
    QCOMPARE(got(store->undoable(id))->seq, second);
    const Reversed undone = got(store->undo(id));
    QCOMPARE(undone.seq, second);
    QCOMPARE(undone.label.code, QStringLiteral("name"));
    QCOMPARE(undone.document, two);
    QCOMPARE(names(*store), QStringList{QStringLiteral("Runner")});

    store.reset();
    store = opened(dir("undo"));
    QCOMPARE(got(store->load(id)), two);
    QCOMPARE(got(store->redoable(id))->seq, second);
    QCOMPARE(got(store->undo(id)).document, one);
    QCOMPARE(fault(store->undo(id)), int(StoreCode::NothingLeft));
    QVERIFY(!got(store->undoable(id)));
    QCOMPARE(got(store->redo(id)).document, two);
    QCOMPARE(got(store->redo(id)).document, three);
    QCOMPARE(fault(store->redo(id)), int(StoreCode::NothingLeft));
}

void TestStoreEdits::forgetsWhatWasUndoneAtTheNextEdit()
{
    auto store = opened(dir("forget"));
    const QString a = documentOf(QStringLiteral("A"));
    const QString b = documentOf(QStringLiteral("B"));
    const QString c = documentOf(QStringLiteral("C"));
    const QString id = got(store->create(a));
    got(store->applyEdit(id, edit(a, b)));
    got(store->undo(id));
    QVERIFY(got(store->redoable(id)));
    got(store->applyEdit(id, edit(a, c)));
    QVERIFY(!got(store->redoable(id)));
    QCOMPARE(got(store->undo(id)).document, a);
}

void TestStoreEdits::refusesAnEditOfAnOlderState()
{
    auto store = opened(dir("stale"));
    const QString a = documentOf(QStringLiteral("A"));
    const QString b = documentOf(QStringLiteral("B"));
    const QString id = got(store->create(a));
    got(store->applyEdit(id, edit(a, b)));
    QCOMPARE(fault(store->applyEdit(id, edit(a, documentOf(QStringLiteral("C"))))), int(StoreCode::Stale));
    QCOMPARE(got(store->load(id)), b);
    QCOMPARE(fault(store->applyEdit(QStringLiteral("none"), edit(a, b))), int(StoreCode::NotFound));
}

void TestStoreEdits::refusesWhatIsNoProjectFile()
{
    auto store = opened(dir("unreadable"));
    QCOMPARE(fault(store->create(QStringLiteral("{"))), int(StoreCode::Unreadable));
    QCOMPARE(fault(store->create(QStringLiteral("[]"))), int(StoreCode::Unreadable));
    const QString a = documentOf(QStringLiteral("A"));
    const QString id = got(store->create(a));
    QCOMPARE(fault(store->applyEdit(id, edit(a, a.left(40)))), int(StoreCode::Unreadable));
    QCOMPARE(got(store->load(id)), a);
    QVERIFY(!got(store->undoable(id)));
}

void TestStoreEdits::keepsFiveHundredCommandsOfEachProject()
{
    auto store = opened(dir("bounded"));
    QString now = documentOf(QStringLiteral("A"), 0);
    const QString id = got(store->create(now));
    const QString other = got(store->create(now));
    got(store->applyEdit(other, edit(now, documentOf(QStringLiteral("Other")))));
    for (int step = 1; step <= 510; ++step) {
        const QString next = documentOf(QStringLiteral("A"), step);
        got(store->applyEdit(id, edit(now, next)));
        now = next;
    }
    int undone = 0;
    while (got(store->undoable(id))) {
        QCOMPARE(got(store->undo(id)).document, documentOf(QStringLiteral("A"), 509 - undone));
        ++undone;
    }
    QCOMPARE(undone, 500);
    QVERIFY(got(store->undoable(other)));
}

void TestStoreEdits::keepsProjectsApart()
{
    auto store = opened(dir("apart"));
    const QString a = documentOf(QStringLiteral("A"));
    const QString b = documentOf(QStringLiteral("B"));
    const QString one = got(store->create(a));
    const QString two = got(store->create(b));
    got(store->applyEdit(one, edit(a, b)));
    got(store->applyEdit(two, edit(b, a)));
    QCOMPARE(got(store->undo(one)).document, a);
    QCOMPARE(got(store->load(two)), a);
    QVERIFY(got(store->undoable(two)));
}

void TestStoreEdits::storesOnlyTheStretchThatDiffers_data()
{
    QTest::addColumn<QString>("before");
    QTest::addColumn<QString>("after");
    QTest::addColumn<int>("place");
    QTest::addColumn<QString>("from");
    QTest::addColumn<QString>("to");
    const auto row = [](const char *name, const QString &before, const QString &after, int place,
                        const QString &from,
                        const QString &to) { QTest::newRow(name) << before << after << place << from << to; };
    row("same", u"abc"_qs, u"abc"_qs, 3, u""_qs, u""_qs);
    row("middle", u"abc"_qs, u"axc"_qs, 1, u"b"_qs, u"x"_qs);
    row("repeated", u"aa"_qs, u"aaa"_qs, 2, u""_qs, u"a"_qs);
    row("shortened", u"aaa"_qs, u"aa"_qs, 2, u"a"_qs, u""_qs);
    row("from nothing", u""_qs, u"ab"_qs, 0, u""_qs, u"ab"_qs);
    // U+1F9F5 and U+1F9F6 share their first half, U+1F9F5 and U+1F5F5 their second.
    row("first half alike", u"a\U0001F9F5b"_qs, u"a\U0001F9F6b"_qs, 1, u"\U0001F9F5"_qs, u"\U0001F9F6"_qs);
    row("second half alike", u"a\U0001F9F5b"_qs, u"a\U0001F5F5b"_qs, 1, u"\U0001F9F5"_qs, u"\U0001F5F5"_qs);
}

void TestStoreEdits::storesOnlyTheStretchThatDiffers()
{
    QFETCH(QString, before);
    QFETCH(QString, after);
    const Stretch stretch = stretchBetween(before, after);
    QTEST(static_cast<int>(stretch.place), "place");
    QTEST(stretch.before, "from");
    QTEST(stretch.after, "to");
    QCOMPARE(replaced(before, stretch.place, stretch.before, stretch.after), after);
    QCOMPARE(replaced(after, stretch.place, stretch.after, stretch.before), before);
    QVERIFY(!replaced(before, before.size() + 1, QString(), QString()));
    QVERIFY(!replaced(before, 0, before + u'!', QString()));
}

void TestStoreEdits::keepsEveryCharacter()
{
    auto store = opened(dir("characters"));
    const QString one = documentOf(u"Größe \"7½\" \\ \U0001F9F5"_qs);
    const QString two = documentOf(u"Größe \"7½\" \\ \U0001F9F6 ’; DROP TABLE projects; --"_qs);
    const QString id = got(store->create(one));
    got(store->applyEdit(id, edit(one, two)));
    QCOMPARE(got(store->load(id)), two);
    QCOMPARE(got(store->undo(id)).document, one);
    QCOMPARE(got(store->redo(id)).document, two);
}

void TestStoreEdits::numbersNeverComeAgain()
{
    auto store = opened(dir("numbers"));
    const QString a = documentOf(QStringLiteral("A"));
    const QString b = documentOf(QStringLiteral("B"));
    const QString id = got(store->create(a));
    std::int64_t last = 0;
    for (int turn = 0; turn < 5; ++turn) {
        const auto seq = got(store->applyEdit(id, edit(a, b)));
        QVERIFY(seq > last);
        last = seq;
        got(store->undo(id));
        store.reset();
        store = opened(dir("numbers"));
    }
}

void TestStoreEdits::refusesAWrongNumberOfValues()
{
    Database database;
    got(database.open(m_folder.filePath(QStringLiteral("binds.sqlite")), Database::Mode::Write));
    got(database.run(QStringLiteral("CREATE TABLE t (a TEXT, b TEXT) STRICT")));
    const QString insert = QStringLiteral("INSERT INTO t (a, b) VALUES (?, ?)");
    QCOMPARE(fault(database.run(insert, {1})), int(StoreCode::Refused));
    QCOMPARE(fault(database.run(insert, {1, 2, 3})), int(StoreCode::Refused));
    QCOMPARE(fault(database.run(QStringLiteral("SELECT 1; SELECT 2"))), int(StoreCode::Refused));
    QCOMPARE(got(database.value(QStringLiteral("SELECT count(*) FROM t"))).toInt(), 0);
    QVERIFY(database.run(insert, {QStringLiteral("1"), QStringLiteral("2")}));
}

void TestStoreEdits::takesBackWhatFailsHalfway()
{
    Database database;
    got(database.open(m_folder.filePath(QStringLiteral("guard.sqlite")), Database::Mode::Write));
    got(database.run(QStringLiteral("CREATE TABLE t (a INTEGER NOT NULL) STRICT")));
    {
        const Transaction transaction(database);
        QVERIFY(transaction.began());
        got(database.run(QStringLiteral("INSERT INTO t (a) VALUES (?)"), {1}));
        QVERIFY(!database.run(QStringLiteral("INSERT INTO t (a) VALUES (?)"), {QStringLiteral("x")}));
    }
    QCOMPARE(got(database.value(QStringLiteral("SELECT count(*) FROM t"))).toInt(), 0);
    Transaction again(database);
    QVERIFY(again.began());
    QVERIFY(again.commit());
}

void TestStoreEdits::remembersSettings()
{
    constexpr SettingKey<bool> flag{"flag"};
    constexpr SettingKey<std::int64_t> number{"number"};
    constexpr SettingKey<double> wrongType{"station"};
    auto store = opened(dir("settings"));
    QVERIFY(!got(store->setting(settings::station)));
    got(store->setSetting(settings::station, QStringLiteral("cut")));
    got(store->setSetting(settings::station, QStringLiteral("sew")));
    got(store->setSetting(settings::calibration, 0.1 + 0.2));
    got(store->setSetting(flag, false));
    got(store->setSetting(number, std::numeric_limits<std::int64_t>::min()));
    store.reset();
    store = opened(dir("settings"));
    QCOMPARE(got(store->setting(settings::station)), QStringLiteral("sew"));
    QVERIFY(*got(store->setting(settings::calibration)) == 0.1 + 0.2); // every bit of it
    QCOMPARE(got(store->setting(flag)), false);
    QCOMPARE(got(store->setting(number)), std::numeric_limits<std::int64_t>::min());
    QVERIFY(!got(store->setting(wrongType)));
}

QTEST_GUILESS_MAIN(TestStoreEdits)
#include "tst_store_edits.moc"
