// SPDX-License-Identifier: MIT
#include "store/storehelp.h"

using namespace storehelp;

/// The shelf: its order, its commands, and the demo.
class TestStoreShelf : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    QString dir(const char *name) const { return m_folder.filePath(QString::fromLatin1(name)); }

private slots:
    void laysTheNewestFirst();
    void putsAwayAndBringsBack();
    void throwsAwayUntilItCannotBeUndone();
    void takesBackMaking();
    void renamesTheDocument();
    void takesBackARenameFromTheShelf();
    void makesAgainBesideWithNothingMade();
    void copiesInMillimetres();
    void goesOnWithHerDemo();
    void laysAFreshDemoBeside();
    void walksBackAndForthAcrossReopening();
};

void TestStoreShelf::laysTheNewestFirst()
{
    auto store = opened(dir("order"));
    for (const auto &name : {u"A"_qs, u"B"_qs, u"C"_qs})
        got(store->create(documentOf(name)));
    QCOMPARE(names(*store), (QStringList{u"C"_qs, u"B"_qs, u"A"_qs}));
    const auto rows = got(store->projects());
    QVERIFY(rows[0].created > rows[1].created);
    QVERIFY(rows[0].kind == ProjectKind::Own);
    QVERIFY(rows[0].id != rows[1].id);
}

void TestStoreShelf::putsAwayAndBringsBack()
{
    auto store = opened(dir("away"));
    const QString id = got(store->create(documentOf(u"A"_qs)));
    got(store->putAway(id));
    QCOMPARE(names(*store, false), QStringList{});
    QCOMPARE(names(*store, true), QStringList{u"A"_qs});
    QVERIFY(got(store->projects())[0].putAway);
    QVERIFY(store->load(id));
    const auto next = got(store->undoableShelf());
    QCOMPARE(next->label.kind, u"put-away"_qs);
    QCOMPARE(next->label.args, u"[\"A\"]"_qs);
    got(store->putAway(id)); // already: no command more
    QCOMPARE(got(store->undoableShelf())->seq, next->seq);
    got(store->bringBack(id));
    QCOMPARE(names(*store, false), QStringList{u"A"_qs});
    got(store->undoShelf());
    QCOMPARE(names(*store, false), QStringList{});
    QCOMPARE(fault(store->putAway(u"none"_qs)), int(StoreCode::NotFound));
}

void TestStoreShelf::throwsAwayUntilItCannotBeUndone()
{
    auto store = opened(dir("thrown"));
    const QString a = documentOf(u"A"_qs);
    const QString id = got(store->create(a));
    got(store->applyEdit(id, edit(a, documentOf(u"A"_qs, 5))));
    got(store->throwAway(id));
    QCOMPARE(names(*store), QStringList{});
    QCOMPARE(fault(store->load(id)), int(StoreCode::NotFound));
    QCOMPARE(fault(store->throwAway(id)), int(StoreCode::NotFound));
    QCOMPARE(fault(store->undo(id)), int(StoreCode::NotFound));
    const Reversed back = got(store->undoShelf());
    QCOMPARE(back.project, id);
    QCOMPARE(got(store->load(id)), documentOf(u"A"_qs, 5));
    QCOMPARE(got(store->undo(id)).document, a);

    got(store->throwAway(id));
    const QString other = got(store->create(documentOf(u"B"_qs)));
    const auto held = [&] {
        return ask(storeFile(dir("thrown")), u"SELECT count(*) FROM project_state"_qs)[0][0].toInt();
    };
    for (int turn = 0; turn < 249; ++turn) {
        got(store->putAway(other));
        got(store->bringBack(other));
    }
    QCOMPARE(held(), 2); // 499 commands after it: it can still be taken back
    got(store->putAway(other));
    QCOMPARE(held(), 1);
    QCOMPARE(names(*store), QStringList{u"B"_qs});
}

void TestStoreShelf::takesBackMaking()
{
    auto store = opened(dir("making"));
    const QString id = got(store->create(documentOf(u"A"_qs)));
    got(store->undoShelf());
    QCOMPARE(names(*store), QStringList{});
    QCOMPARE(got(store->redoShelf()).document, documentOf(u"A"_qs));
    QCOMPARE(names(*store), QStringList{u"A"_qs});
    got(store->undoShelf());
    got(store->create(documentOf(u"B"_qs))); // the first can no longer be made again
    QVERIFY(!got(store->redoableShelf()));
    QCOMPARE(ask(storeFile(dir("making")), u"SELECT id FROM projects"_qs).size(), std::size_t{1});
    QCOMPARE(fault(store->load(id)), int(StoreCode::NotFound));
}

void TestStoreShelf::renamesTheDocument()
{
    auto store = opened(dir("rename"));
    const QString id = got(store->create(documentOf(u"A"_qs)));
    got(store->rename(id, u"Größer \"B\""_qs));
    QCOMPARE(names(*store), QStringList{u"Größer \"B\""_qs});
    QCOMPARE(got(store->load(id)), documentOf(u"Größer \"B\""_qs));
    QCOMPARE(fault(store->rename(id, QString(5000, u'x'))), int(StoreCode::Refused));
    QCOMPARE(got(store->undo(id)).document, documentOf(u"A"_qs));
    QCOMPARE(names(*store), QStringList{u"A"_qs});
}

void TestStoreShelf::takesBackARenameFromTheShelf()
{
    auto store = opened(dir("renamed"));
    const QString id = got(store->create(documentOf(u"A"_qs)));
    got(store->rename(id, u"B"_qs));
    QCOMPARE(got(store->undoableShelf())->label.kind, u"rename"_qs);
    QCOMPARE(got(store->undoShelf()).document, documentOf(u"A"_qs));
    QCOMPARE(got(store->redoableShelf())->label.kind, u"rename"_qs);
    QCOMPARE(got(store->redoShelf()).document, documentOf(u"B"_qs));
    // With work done on it since, the shelf leaves the rename to the project.
    got(store->applyEdit(id, edit(documentOf(u"B"_qs), documentOf(u"B"_qs, 9))));
    QCOMPARE(got(store->undoableShelf())->label.kind, u"create"_qs);
    got(store->undo(id));
    QCOMPARE(got(store->undoableShelf())->label.kind, u"rename"_qs);
}

void TestStoreShelf::makesAgainBesideWithNothingMade()
{
    auto store = opened(dir("again"));
    got(store->create(documentOf(u"Last"_qs)));
    Project project = freshProject(System::Inch);
    project.name = "First";
    project.slack = Length();
    project.made.blocks.push_back({});
    project.made.blocks.back().block = "A1";
    const QString id = got(store->create(QString::fromStdString(writeProject(project))));
    got(store->create(documentOf(u"Newest"_qs)));
    const QString copy = got(store->makeAgain(id, u"Second"_qs));
    QCOMPARE(names(*store), (QStringList{u"Newest"_qs, u"First"_qs, u"Second"_qs, u"Last"_qs}));
    QCOMPARE(got(store->load(copy)), documentOf(u"Second"_qs));
    QCOMPARE(got(store->load(id)), QString::fromStdString(writeProject(project)));
    got(store->undoShelf());
    QCOMPARE(names(*store), (QStringList{u"Newest"_qs, u"First"_qs, u"Last"_qs}));
}

void TestStoreShelf::copiesInMillimetres()
{
    auto store = opened(dir("metric"));
    const QString id = got(store->create(documentOf(u"A"_qs)));
    const QString copy = got(store->metricCopy(id, u"A, metric"_qs));
    const auto read = readProject(got(store->load(copy)).toStdString());
    QVERIFY(read);
    QVERIFY(read.value().project.system == System::Metric);
    // 6 in are 152.4 mm: an inch is 25.4 mm by the addendum to NBS Circular 572 (1960), section 2.
    QCOMPARE(read.value().project.blocks.width, Length::mm(152));
    QCOMPARE(got(store->load(id)), documentOf(u"A"_qs));
}

void TestStoreShelf::goesOnWithHerDemo()
{
    const QString pristine = documentOf(u"Demo"_qs);
    const QString hers = documentOf(u"Demo"_qs, 254);
    auto store = opened(dir("demo"));
    const QString id = got(store->ensureDemo(pristine));
    QVERIFY(got(store->projects())[0].kind == ProjectKind::Demo);
    got(store->applyEdit(id, edit(pristine, hers)));
    store.reset();
    store = opened(dir("demo"));
    QCOMPARE(got(store->ensureDemo(pristine)), id);
    QCOMPARE(got(store->load(id)), hers);
    QCOMPARE(names(*store).size(), 1);
    got(store->throwAway(id));
    const QString second = got(store->ensureDemo(pristine));
    QVERIFY(second != id);
    QCOMPARE(got(store->load(second)), pristine);
}

void TestStoreShelf::laysAFreshDemoBeside()
{
    const QString pristine = documentOf(u"Demo"_qs);
    auto store = opened(dir("fresh"));
    const QString id = got(store->ensureDemo(pristine));
    got(store->applyEdit(id, edit(pristine, documentOf(u"Mine"_qs))));
    got(store->create(documentOf(u"Own"_qs)));
    const QString fresh = got(store->freshDemo(pristine));
    QCOMPARE(names(*store), (QStringList{u"Own"_qs, u"Mine"_qs, u"Demo"_qs}));
    QCOMPARE(got(store->ensureDemo(pristine)), fresh); // the one touched last
    QCOMPARE(got(store->load(id)), documentOf(u"Mine"_qs));
}

void TestStoreShelf::walksBackAndForthAcrossReopening()
{
    auto store = opened(dir("walk"));
    const QString id = got(store->create(documentOf(u"A"_qs)));
    got(store->create(documentOf(u"B"_qs)));
    got(store->putAway(id));
    got(store->throwAway(id));
    const std::vector<QStringList> states{{}, {u"A"_qs}, {u"B"_qs, u"A"_qs}, {u"B"_qs, u"A"_qs}, {u"B"_qs}};
    for (auto state = states.rbegin() + 1; state != states.rend(); ++state) {
        store.reset();
        store = opened(dir("walk"));
        got(store->undoShelf());
        QCOMPARE(names(*store), *state);
    }
    QCOMPARE(fault(store->undoShelf()), int(StoreCode::NothingLeft));
    for (auto state = states.begin() + 1; state != states.end(); ++state) {
        got(store->redoShelf());
        QCOMPARE(names(*store), *state);
    }
    QCOMPARE(fault(store->redoShelf()), int(StoreCode::NothingLeft));
}

QTEST_GUILESS_MAIN(TestStoreShelf)
#include "tst_store_shelf.moc"
