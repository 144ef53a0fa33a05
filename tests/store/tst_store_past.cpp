// SPDX-License-Identifier: MIT
//
// What the store knows of a project's earlier documents, against a list the test keeps itself. The SHA-256
// are reckoned here from the bytes.
#include "store/photonotes.h"
#include "store/storehelp.h"

#include <QCryptographicHash>

#include <random>

using namespace storehelp;

namespace {

QString shaOf(const QString &document)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(document.toUtf8());
    return QString::fromLatin1(hash.result().toHex());
}

QStringList shasOf(const QStringList &documents)
{
    QStringList shas;
    for (const QString &document : documents)
        if (!shas.contains(shaOf(document)))
            shas.append(shaOf(document));
    return shas;
}

} // namespace

class TestStorePast : public QObject {
    Q_OBJECT
private slots:
    void tellsEveryStateNewestFirst();
    void whatWasSentOutIsRemembered();
    void whatWasTakenInIsMetUntilItIsUndone();
    void aBroughtInProjectKnowsWhatItWas();
    void foreignNotesGetTheSameIdAgain();
};

void TestStorePast::tellsEveryStateNewestFirst()
{
    const QTemporaryDir dir;
    auto store = opened(dir.path());
    std::mt19937 chance(7);
    QStringList states{documentOf(u"Runner"_qs, 0)};
    const QString id = got(store->create(states[0]));
    for (int i = 1; i <= 60; ++i) {
        if (chance() % 4 == 0 && states.size() > 1) {
            got(store->undo(id));
            states.removeFirst();
        } else {
            const QString next = documentOf(u"Runner “%1”"_qs.arg(chance() % 5), int(chance() % 9));
            got(store->applyEdit(id, edit(states[0], next)));
            states.prepend(next);
        }
        QCOMPARE(got(store->past(id)), shasOf(states));
        const QString known = states[qsizetype(chance() % unsigned(states.size()))];
        // Of several that the other knows the newest.
        QCOMPARE(got(store->commonPast(id, {shaOf(known), shaOf(states.last())})), std::optional(known));
    }
    QVERIFY(!got(store->commonPast(id, {shaOf(u"another"_qs)})));
    QVERIFY(!got(store->commonPast(id, {})));
    QCOMPARE(fault(store->past(u"no such"_qs)), int(StoreCode::NotFound));
}

void TestStorePast::whatWasSentOutIsRemembered()
{
    const QTemporaryDir dir;
    auto store = opened(dir.path());
    const QString one = documentOf(u"A"_qs, 1);
    const QString two = documentOf(u"A"_qs, 2);
    const QString id = got(store->create(one));
    got(store->applyEdit(id, edit(one, two)));
    got(store->sentOut(id, two));
    got(store->undo(id));
    QCOMPARE(got(store->past(id)), shasOf({one, two})); // she took it back after they had parted
    QCOMPARE(got(store->commonPast(id, {shaOf(two)})), std::optional(two));
    const QString other = got(store->create(one));
    QVERIFY(!got(store->commonPast(other, {shaOf(two)}))); // of its own project only
}

void TestStorePast::whatWasTakenInIsMetUntilItIsUndone()
{
    const QTemporaryDir dir;
    auto store = opened(dir.path());
    NoteBook book(*store);
    const QString mine = documentOf(u"A"_qs, 1);
    const QString theirs = documentOf(u"A"_qs, 2);
    const QString both = documentOf(u"A"_qs, 3);
    const QString id = got(store->create(mine));
    Note note;
    note.id = u"0f4c1de2-5d6e-4c0a-9d3e-0d2b8c1f7a11"_qs;
    note.block = u"A1"_qs;
    const std::vector<Note> notes{note};
    QCOMPARE(got(book.takeIn(id, edit(mine, both, u"merge"_qs), notes, theirs)), 1);
    QCOMPARE(got(store->past(id)), shasOf({both, theirs, mine}));
    QCOMPARE(got(book.notes(id)).size(), std::size_t(1));
    QVERIFY(got(book.missing(id, notes)).empty());
    QCOMPARE(got(book.takeIn(id, edit(both, both, u"merge"_qs), notes, theirs)), 0); // again
    QCOMPARE(got(book.notes(id)).size(), std::size_t(1));
    got(store->undo(id));
    got(store->undo(id));
    QCOMPARE(got(store->past(id)), shasOf({mine}));
    QVERIFY(got(book.notes(id)).empty());
    got(store->redo(id));
    QCOMPARE(got(store->past(id)), shasOf({both, theirs, mine}));
    QCOMPARE(got(book.notes(id)).size(), std::size_t(1));
    got(store->undo(id));
    // Undone, forgotten by it, and taken in anew under the same id.
    QCOMPARE(got(book.takeIn(id, edit(mine, both, u"merge"_qs), notes, theirs)), 1);
    QCOMPARE(got(book.notes(id)).front().id, note.id);
    QCOMPARE(fault(book.takeIn(id, edit(mine, both), notes, theirs)), int(StoreCode::Stale));
}

void TestStorePast::aBroughtInProjectKnowsWhatItWas()
{
    const QTemporaryDir dir;
    auto store = opened(dir.path());
    NoteBook book(*store);
    const QString one = documentOf(u"A"_qs, 1);
    const QString wanted = u"94636e24-92ee-4adb-8c73-6a50b46a3ee9"_qs;
    const QString id = got(book.bringIn(wanted, one, {}));
    QCOMPARE(id, wanted);
    QCOMPARE(got(store->past(id)), shasOf({one}));
    QCOMPARE(ask(storeFile(dir.path()), u"SELECT document FROM met"_qs)[0][0].toString(), one);
}

void TestStorePast::foreignNotesGetTheSameIdAgain()
{
    // RFC 4122, 4.3: a name-based id is the same for the same name space and name, and says version 5.
    const QString project = u"94636e24-92ee-4adb-8c73-6a50b46a3ee9"_qs;
    const QString id = noteIdIn(project, u"0f4c1de2-5d6e-4c0a-9d3e-0d2b8c1f7a11"_qs);
    QCOMPARE(id, noteIdIn(project, u"0f4c1de2-5d6e-4c0a-9d3e-0d2b8c1f7a11"_qs));
    QCOMPARE(id[14], QChar(u'5'));
    QVERIFY(id !=
            noteIdIn(u"3f0e433a-26fa-4a53-a6de-8ece1c92f996"_qs, u"0f4c1de2-5d6e-4c0a-9d3e-0d2b8c1f7a11"_qs));
}

QTEST_GUILESS_MAIN(TestStorePast)
#include "tst_store_past.moc"
