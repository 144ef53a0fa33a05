// SPDX-License-Identifier: MIT
//
// A project with what was made, its notes and photographs, from one store through one file into another.
#include "share/sharehelp.h"

#include "project/codec.h"

using namespace sharehelp;

class TestShare : public QObject {
    Q_OBJECT
private slots:
    void roundTripIsIdentical();
    void whatIsInsideIsToldFirst();
    void nothingIsEverOverwritten();
    void undoingTakesTheNotesAwayToo();
    void missingPhotographsAreNamed();
    void aProjectWithoutNotesIsShared();
    void asTheyCameKeepsEveryByte();
    void nothingOfTheMachineGoesIn();
};

void TestShare::roundTripIsIdentical()
{
    const Home home(true);
    QTemporaryDir out;
    const QString first = out.filePath(u"one.matside"_qs);
    QCOMPARE(home.share(first), QByteArray());

    Home other(false);
    const QString id = other.bringIn(first);
    QCOMPARE(id, home.id); // free here, so it stays
    QCOMPARE(got(other.store->load(id)), home.document);
    other.id = id;
    const QString second = out.filePath(u"two.matside"_qs);
    QCOMPARE(other.share(second), QByteArray());
    QCOMPARE(bytesOf(second), bytesOf(first)); // to the byte

    const Parcel sent = home.parcel();
    const Parcel came = other.parcel();
    QCOMPARE(came.notes.size(), std::size_t(3));
    for (std::size_t i = 0; i < sent.notes.size(); ++i) {
        QCOMPARE(came.notes[i].id, sent.notes[i].id);
        QCOMPARE(came.notes[i].words, sent.notes[i].words);
        QCOMPARE(came.notes[i].flags, sent.notes[i].flags);
        QCOMPARE(came.notes[i].step, sent.notes[i].step);
        QCOMPARE(came.notes[i].along, sent.notes[i].along);
        for (std::size_t face = 0; face < 2; ++face) {
            QCOMPARE(came.notes[i].faces[face].has_value(), sent.notes[i].faces[face].has_value());
            if (came.notes[i].faces[face]) // full size
                QCOMPARE(came.notes[i].faces[face]->size, sent.notes[i].faces[face]->size);
        }
    }
    // Each photograph once: two faces show the same.
    QCOMPARE(filesIn(other.dir.path(), "photographs").size(), 2);
}

void TestShare::whatIsInsideIsToldFirst()
{
    const Home home(true);
    QTemporaryDir out;
    const QString path = out.filePath(u"one.matside"_qs);
    QCOMPARE(home.share(path), QByteArray());
    const auto inside = lookInside(path);
    QVERIFY2(inside.ok(), codeOf(inside).constData());
    QCOMPARE(inside.value().name, u"Reading-room runner"_qs);
    QCOMPARE(inside.value().columns, 6);
    QCOMPARE(inside.value().rows, 3);
    QCOMPARE(inside.value().blocksMade, 1);
    QCOMPARE(inside.value().parcel.notes.size(), std::size_t(3));
    QCOMPARE(inside.value().pictures, 2);
    QVERIFY(inside.value().problems.empty());
    QVERIFY(inside.value().pictureBytes > 1000);
}

void TestShare::nothingIsEverOverwritten()
{
    Home home(true);
    QTemporaryDir out;
    const QString path = out.filePath(u"one.matside"_qs);
    QCOMPARE(home.share(path), QByteArray());
    const QByteArray before = bytesOf(path);
    QCOMPARE(home.share(path), QByteArray("exists"));
    QCOMPARE(bytesOf(path), before);
    QCOMPARE(QDir(out.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot),
             QStringList{u"one.matside"_qs}); // no passing folder stays

    // Brought into the store it came from, it is a second project with notes of its own.
    const QString second = home.bringIn(path);
    QVERIFY(!second.isEmpty() && second != home.id);
    QCOMPARE(names(*home.store).size(), 2);
    QCOMPARE(got(home.store->load(home.id)), home.document);
    const auto own = got(home.book.notes(home.id));
    const auto came = got(home.book.notes(second));
    QCOMPARE(came.size(), own.size());
    for (std::size_t i = 0; i < own.size(); ++i)
        QVERIFY(came[i].id != own[i].id && came[i].words == own[i].words);
    // And a third time.
    QVERIFY(home.bringIn(path) != second);
    QCOMPARE(names(*home.store).size(), 3);
}

void TestShare::undoingTakesTheNotesAwayToo()
{
    const Home home(true);
    QTemporaryDir out;
    const QString path = out.filePath(u"one.matside"_qs);
    QCOMPARE(home.share(path), QByteArray());
    Home other(false);
    const QString id = other.bringIn(path);
    QCOMPARE(got(other.store->undoableShelf())->label.kind, u"bring-in"_qs);
    got(other.store->undoShelf());
    QVERIFY(names(*other.store).isEmpty());
    QVERIFY(got(other.book.notes(id)).empty());
    got(other.store->redoShelf());
    QCOMPARE(got(other.book.notes(id)).size(), std::size_t(3));
    QCOMPARE(got(other.store->load(id)), home.document);
}

void TestShare::missingPhotographsAreNamed()
{
    const Home home(true);
    const Photograph photo = *home.parcel().notes.front().faces[0];
    QVERIFY(QFile::remove(home.book.folder().original(photo.sha, photo.format)));
    QTemporaryDir out;
    const auto written = writeShare(home.parcel(), home.book.folder(), out.filePath(u"one.matside"_qs));
    QCOMPARE(codeOf(written), QByteArray("no-picture"));
    QCOMPARE(written.error().name, pictureName(photo));
    QVERIFY(QDir(out.path()).isEmpty());
}

void TestShare::aProjectWithoutNotesIsShared()
{
    Home home(false);
    home.document = documentOf(u"Bare bench"_qs);
    home.id = got(home.store->create(home.document));
    QTemporaryDir out;
    const QString path = out.filePath(u"one.matside"_qs);
    QCOMPARE(home.share(path), QByteArray());
    Home other(false);
    QCOMPARE(got(other.store->load(other.bringIn(path))), home.document);
    QVERIFY(!QDir(other.dir.filePath(u"photographs"_qs)).exists());
}

void TestShare::asTheyCameKeepsEveryByte()
{
    const Home home(true);
    QTemporaryDir out;
    const QString path = out.filePath(u"one.matside"_qs);
    QCOMPARE(home.share(path, Photographs::AsTheyCame), QByteArray());
    Home other(false);
    QVERIFY(!other.bringIn(path).isEmpty());
    QCOMPARE(filesIn(other.dir.path(), "photographs"), filesIn(home.dir.path(), "photographs"));
}

void TestShare::nothingOfTheMachineGoesIn()
{
    const Home home(true);
    QTemporaryDir out;
    QVERIFY(QDir(out.path()).mkpath(u"elsewhere"_qs));
    const QString one = out.filePath(u"one.matside"_qs);
    const QString two = out.filePath(u"elsewhere/two.matside"_qs);
    QCOMPARE(home.share(one), QByteArray());
    QTest::qWait(2100); // a zip file counts times by two seconds
    QCOMPARE(home.share(two), QByteArray());
    QCOMPARE(bytesOf(two), bytesOf(one));
    QVERIFY(!bytesOf(one).contains(home.dir.path().toUtf8()));
}

QTEST_GUILESS_MAIN(TestShare)
#include "tst_share.moc"
