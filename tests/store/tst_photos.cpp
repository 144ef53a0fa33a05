// SPDX-License-Identifier: MIT
//
// Photographs are kept as they came, upright in small, and never without each other's half.
#include "store/photohelp.h"
#include "store/storehelp.h"

#include <QtEndian>

#ifdef Q_OS_UNIX
#include <csignal>
#include <sys/resource.h>
#include <unistd.h>
#endif

using namespace storehelp;
using namespace photohelp;

namespace {

template <class T> int code(const PhotoResult<T> &result)
{
    return result ? -1 : static_cast<int>(result.error().code);
}

/// A store with one project in it.
struct Bench {
    QTemporaryDir folder;
    std::unique_ptr<Store> store = opened(folder.path());
    QString id = got(store->create(documentOf(u"Runner"_qs)));
    NoteBook book{*store};
    Photograph kept(quint32 seed, QSize size = {60, 40})
    {
        const auto photo = book.folder().keep(encoded(picture(seed, size)));
        return photo ? photo.value() : Photograph();
    }
    Command next(std::int64_t slack)
    {
        return edit(got(store->load(id)), documentOf(u"Runner"_qs, slack), u"log"_qs);
    }
    /// What a start does.
    int start()
    {
        got(book.forgetUnused());
        return got(sweepPhotographs(folder.path()));
    }
    qsizetype files() const { return filesIn(folder.path(), "photographs").size(); }
};

/// A PNG that says how large it is and holds one row: ISO/IEC 15948, clause 11.2.2. The checksum is CRC-32 of
/// the same standard, annex D.
QByteArray pngOf(quint32 width, quint32 height)
{
    QByteArray bytes = encoded(picture(1, {2, 2}), "png");
    qToBigEndian(width, bytes.data() + 16);
    qToBigEndian(height, bytes.data() + 20);
    quint32 crc = 0xFFFFFFFFU;
    for (qsizetype i = 12; i < 29; ++i) {
        crc ^= static_cast<unsigned char>(bytes[i]);
        for (int bit = 0; bit < 8; ++bit)
            crc = (crc & 1U) != 0 ? 0xEDB88320U ^ (crc >> 1U) : crc >> 1U;
    }
    qToBigEndian(~crc, bytes.data() + 29);
    return bytes;
}

/// The picture's frame header rewritten to another size: ITU-T T.81, B.2.2.
QByteArray jpegOf(quint16 width, quint16 height)
{
    QByteArray bytes = encoded(picture(1, {64, 64}));
    const qsizetype frame = bytes.indexOf("\xFF\xC0");
    qToBigEndian(height, bytes.data() + frame + 5);
    qToBigEndian(width, bytes.data() + frame + 7);
    return bytes;
}

} // namespace

class TestPhotos : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;

private slots:
    void keepsTheBytesAsTheyCame();
    void theSameBytesAreOneFile();
    void thumbnailsStandUpright();
    void thumbnailsAreMadeAgain();
    void refusesWhatIsNoPicture_data();
    void refusesWhatIsNoPicture();
    void everyCutOfAPictureIsSeen_data();
    void everyCutOfAPictureIsSeen();
    void aPictureWithBytesBehindItIsWhole();
    void saysWhenAFileCannotBeRead();
    void saysWhenTheDiskIsFull();
    void noRowComesBeforeItsFile();
    void aNoteIsUndoneWithItsEdit();
    void anUndoneNoteGoesWhenItCannotComeBack();
    void notesOutliveTheEditsThatCanBeUndone();
    void aRemadeBlockKeepsItsForerunnersNotes();
    void draftsOutliveAClosedProgram();
    void orphansAreSweptAndNothingElse();
    void notesGoWithTheirProject();
    void aStaleEditKeepsNoNote();
};

void TestPhotos::keepsTheBytesAsTheyCame()
{
    const PhotoFolder folder(m_folder.filePath(u"as-came"_qs));
    for (const char *format : {"jpeg", "png", "bmp"}) {
        const QByteArray bytes = encoded(picture(7, {120, 80}), format);
        const auto kept = folder.keep(bytes);
        QVERIFY2(kept.ok(), format);
        QCOMPARE(kept.value().sha, shaOf(bytes));
        QCOMPARE(kept.value().size, QSize(120, 80));
        QCOMPARE(kept.value().format, QString::fromLatin1(format));
        QCOMPARE(bytesOf(folder.original(kept.value().sha, kept.value().format)), bytes);
    }
    // SHA-256 of "abc" as FIPS 180-4's examples give it: the sum names the file.
    QCOMPARE(shaOf("abc"), u"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"_qs);
}

void TestPhotos::theSameBytesAreOneFile()
{
    Bench bench;
    const Photograph once = bench.kept(3);
    QCOMPARE(bench.kept(3), once);
    QCOMPARE(bench.files(), 1);
    got(bench.book.log(bench.id, bench.next(1), noteOf(u"A1"_qs, once, once)));
    QCOMPARE(ask(storeFile(bench.folder.path()), u"SELECT count(*) FROM photographs"_qs)[0][0].toInt(), 1);
}

void TestPhotos::thumbnailsStandUpright()
{
    // Left half dark; the tag asks for a quarter turn to the right, which brings it to the top.
    QImage image(2000, 1000, QImage::Format_RGB32);
    image.fill(Qt::white);
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < 1000; ++x)
            image.setPixel(x, y, 0xFF000000U);
    const PhotoFolder folder(m_folder.filePath(u"upright"_qs));
    const auto kept = folder.keep(turned(encoded(image), 6));
    QVERIFY(kept.ok());
    const QImage thumb(folder.thumb(kept.value().sha));
    QCOMPARE(thumb.size(), QSize(photolimits::thumb / 2, photolimits::thumb));
    QVERIFY(qGray(thumb.pixel(120, 60)) < 40);
    QVERIFY(qGray(thumb.pixel(120, 420)) > 215);
    QCOMPARE(kept.value().size, QSize(2000, 1000));
}

void TestPhotos::thumbnailsAreMadeAgain()
{
    const PhotoFolder folder(m_folder.filePath(u"again"_qs));
    const auto kept = folder.keep(encoded(picture(5, {900, 600})));
    QVERIFY(kept.ok());
    const QString thumb = folder.thumb(kept.value().sha);
    QVERIFY(QFile::remove(thumb));
    const auto made = folder.makeThumb(kept.value().sha, kept.value().format);
    QVERIFY(made.ok());
    QCOMPARE(made.value(), thumb);
    QCOMPARE(QImage(thumb).size(), QSize(480, 320));
    QCOMPARE(code(folder.makeThumb(QString(64, u'0'), u"jpeg"_qs)), int(PhotoCode::Unreadable));
}

void TestPhotos::refusesWhatIsNoPicture_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<int>("code");
    const QByteArray jpeg = encoded(picture(2, {300, 200}));
    const QByteArray png = encoded(picture(2, {300, 200}), "png");
    QTest::newRow("nothing") << QByteArray() << int(PhotoCode::NotAnImage);
    QTest::newRow("words") << QByteArray("Dear sister, the blocks are done.") << int(PhotoCode::NotAnImage);
    QTest::newRow("noise") << QByteArray(5000, '\xA7') << int(PhotoCode::NotAnImage);
    QTest::newRow("half a JPEG") << jpeg.left(jpeg.size() / 2) << int(PhotoCode::Truncated);
    QTest::newRow("half a PNG") << png.left(png.size() / 2) << int(PhotoCode::Truncated);
    QTest::newRow("JPEG of 200 MP") << jpegOf(16000, 12500) << int(PhotoCode::TooLarge);
    QTest::newRow("PNG of 200 MP") << pngOf(16000, 12500) << int(PhotoCode::TooLarge);
    QTest::newRow("PNG of 33 MP, which must be read whole") << pngOf(6600, 5000) << int(PhotoCode::TooLarge);
    QTest::newRow("PNG without end") << pngOf(4000000000U, 4000000000U) << int(PhotoCode::NotAnImage);
}

void TestPhotos::refusesWhatIsNoPicture()
{
    QFETCH(QByteArray, bytes);
    QFETCH(int, code);
    const QString dir = m_folder.filePath(u"refused"_qs);
    QCOMPARE(::code(PhotoFolder(dir).keep(bytes)), code);
    QVERIFY(filesIn(dir, "photographs").isEmpty() && filesIn(dir, "thumbs").isEmpty());
}

void TestPhotos::everyCutOfAPictureIsSeen_data()
{
    QTest::addColumn<QByteArray>("format");
    QTest::newRow("jpeg") << QByteArray("jpeg");
    QTest::newRow("png") << QByteArray("png");
}

void TestPhotos::everyCutOfAPictureIsSeen()
{
    QFETCH(QByteArray, format);
    const QByteArray whole = encoded(picture(9, {48, 32}, true), format);
    QVERIFY(lookAt(whole).ok());
    for (qsizetype length = 0; length < whole.size(); ++length)
        QVERIFY2(!lookAt(whole.left(length)).ok(), QByteArray::number(length));
}

void TestPhotos::aPictureWithBytesBehindItIsWhole()
{
    // Some cameras put a second picture or a film behind the first.
    const QByteArray bytes = encoded(picture(4, {80, 60})) + QByteArray(1000, '\x07');
    const PhotoFolder folder(m_folder.filePath(u"behind"_qs));
    const auto kept = folder.keep(bytes);
    QVERIFY(kept.ok());
    QCOMPARE(bytesOf(folder.original(kept.value().sha, kept.value().format)), bytes);
}

void TestPhotos::saysWhenAFileCannotBeRead()
{
    QCOMPARE(code(readPicture(m_folder.filePath(u"not-there.jpg"_qs))), int(PhotoCode::Unreadable));
    QCOMPARE(code(readPicture(m_folder.path())), int(PhotoCode::Unreadable));
    QFile large(m_folder.filePath(u"large"_qs));
    QVERIFY(large.open(QIODevice::WriteOnly) && large.resize(photolimits::bytes + 1)); // sparse
    QCOMPARE(code(readPicture(large.fileName())), int(PhotoCode::TooLarge));
}

void TestPhotos::saysWhenTheDiskIsFull()
{
#ifdef Q_OS_UNIX
    Bench bench;
    const Photograph before = bench.kept(1);
    got(bench.book.log(bench.id, bench.next(1), noteOf(u"A1"_qs, before)));
    // A file may not grow past 20 kB: every further write is refused, as on a full disk.
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit had{};
    QCOMPARE(::getrlimit(RLIMIT_FSIZE, &had), 0);
    const rlimit small{20'000, had.rlim_max};
    const QByteArray large = encoded(picture(2, {600, 400}, true));
    QVERIFY(large.size() > 20'000);
    QCOMPARE(::setrlimit(RLIMIT_FSIZE, &small), 0);
    const auto kept = bench.book.folder().keep(large);
    QCOMPARE(::setrlimit(RLIMIT_FSIZE, &had), 0);
    QCOMPARE(code(kept), int(PhotoCode::Disk));
    QCOMPARE(filesIn(bench.folder.path(), "photographs").size(), 1); // not even half of it is left
    QCOMPARE(got(bench.book.notes(bench.id)).size(), std::size_t(1));
    // With room again it goes through.
    QVERIFY(bench.book.folder().keep(large).ok());
#endif
    QTemporaryDir dir;
    QVERIFY(overwrite(dir.filePath(u"photographs"_qs), 0, "a file where the folder should be"));
    QCOMPARE(code(PhotoFolder(dir.path()).keep(encoded(picture(1, {9, 9})))), int(PhotoCode::Disk));
}

void TestPhotos::noRowComesBeforeItsFile()
{
    Bench bench;
    Photograph missing = bench.kept(1);
    missing.sha = QString(64, u'a');
    QCOMPARE(fault(bench.book.log(bench.id, bench.next(1), noteOf(u"A1"_qs, missing))),
             int(StoreCode::NotFound));
    QCOMPARE(fault(bench.book.keepDraft(bench.id, u"A1"_qs, Face::Front, missing)), int(StoreCode::NotFound));
    QVERIFY(got(bench.book.notes(bench.id)).empty());
    QVERIFY(!got(bench.store->undoable(bench.id)).has_value()); // the edit went with it
}

void TestPhotos::aNoteIsUndoneWithItsEdit()
{
    Bench bench;
    Note note = noteOf(u"A1"_qs, bench.kept(1), bench.kept(2));
    note.flags = QStringList{u"pleat"_qs, u"thread"_qs};
    note.words = u"second try"_qs;
    const auto number = got(bench.book.log(bench.id, bench.next(1), note));
    const auto held = got(bench.book.notes(bench.id, u"A1"_qs));
    QCOMPARE(held.size(), std::size_t(1));
    QCOMPARE(held[0].number, number);
    QCOMPARE(held[0].flags, note.flags);
    QCOMPARE(held[0].words, note.words);
    QCOMPARE(held[0].along, note.along);
    QVERIFY(held[0].faces == note.faces);
    got(bench.store->undo(bench.id));
    QVERIFY(got(bench.book.notes(bench.id)).empty());
    QVERIFY(got(bench.book.covers(bench.id)).empty());
    QCOMPARE(bench.start(), 0); // it may come back: nothing is thrown away
    got(bench.store->redo(bench.id));
    QCOMPARE(got(bench.book.notes(bench.id)).size(), std::size_t(1));
    QVERIFY(got(bench.book.notes(bench.id))[0].faces == note.faces);
}

void TestPhotos::anUndoneNoteGoesWhenItCannotComeBack()
{
    Bench bench;
    got(bench.book.log(bench.id, bench.next(1), noteOf(u"A1"_qs, bench.kept(1))));
    got(bench.store->undo(bench.id));
    got(bench.store->applyEdit(bench.id, bench.next(2)));
    QCOMPARE(ask(storeFile(bench.folder.path()), u"SELECT count(*) FROM notes"_qs)[0][0].toInt(), 0);
    QCOMPARE(bench.start(), 2); // the photograph and its thumbnail
    QCOMPARE(bench.files(), 0);
}

void TestPhotos::notesOutliveTheEditsThatCanBeUndone()
{
    Bench bench;
    got(bench.book.log(bench.id, bench.next(1), noteOf(u"A1"_qs, bench.kept(1))));
    for (int slack = 2; slack < 600; ++slack)
        got(bench.store->applyEdit(bench.id, bench.next(slack)));
    while (got(bench.store->undoable(bench.id)))
        got(bench.store->undo(bench.id));
    QCOMPARE(got(bench.book.notes(bench.id)).size(), std::size_t(1));
    QCOMPARE(bench.start(), 0);
}

void TestPhotos::aRemadeBlockKeepsItsForerunnersNotes()
{
    Bench bench;
    for (int turn = 1; turn <= 3; ++turn)
        got(bench.book.log(bench.id, bench.next(turn), noteOf(u"A1"_qs, bench.kept(quint32(turn)))));
    got(bench.book.log(bench.id, bench.next(4), noteOf(u"A2"_qs, {})));
    const auto all = got(bench.book.notes(bench.id, u"A1"_qs));
    QCOMPARE(all.size(), std::size_t(3));
    QVERIFY(all[0].number < all[1].number && all[1].number < all[2].number);
    QCOMPARE(got(bench.book.notes(bench.id)).size(), std::size_t(4));
    const auto covers = got(bench.book.covers(bench.id));
    QCOMPARE(covers.size(), std::size_t(2));
    QCOMPARE(covers[0].sha, all[2].faces[0]->sha); // the newest is shown
    QVERIFY(covers[1].sha.isEmpty());
}

void TestPhotos::draftsOutliveAClosedProgram()
{
    QTemporaryDir dir;
    QString id;
    Photograph front;
    {
        auto store = opened(dir.path());
        id = got(store->create(documentOf(u"Runner"_qs)));
        NoteBook book(*store);
        front = book.folder().keep(encoded(picture(1, {50, 50}))).value();
        got(book.keepDraft(id, u"A1"_qs, Face::Front, front));
    }
    auto store = opened(dir.path());
    NoteBook book(*store);
    got(book.forgetUnused());
    QCOMPARE(got(sweepPhotographs(dir.path())), 0);
    QCOMPARE(got(book.drafts(id, u"A1"_qs))[0], front);
    QVERIFY(!got(book.drafts(id, u"A1"_qs))[1]);
    QVERIFY(!got(book.drafts(id, u"A2"_qs))[0]);
    // Logged, it is a draft no more; dropped, it goes.
    got(book.log(id, edit(got(store->load(id)), documentOf(u"Runner"_qs, 1)), noteOf(u"A1"_qs, front)));
    QVERIFY(!got(book.drafts(id, u"A1"_qs))[0]);
    const Photograph back = book.folder().keep(encoded(picture(2, {50, 50}))).value();
    got(book.keepDraft(id, u"A2"_qs, Face::Back, back));
    got(book.dropDraft(id, u"A2"_qs, Face::Back));
    got(book.forgetUnused());
    QCOMPARE(got(sweepPhotographs(dir.path())), 2);
    QCOMPARE(filesIn(dir.path(), "photographs"), QStringList{front.sha + u".jpeg"_qs});
}

void TestPhotos::orphansAreSweptAndNothingElse()
{
    Bench bench;
    const Photograph noted = bench.kept(1);
    got(bench.book.log(bench.id, bench.next(1), noteOf(u"A1"_qs, noted)));
    (void)bench.kept(2); // its row never came
    const QString photographs = bench.folder.path() + u"/photographs/"_qs;
    QVERIFY(overwrite(photographs + QString(64, u'c') + u".jpeg.part"_qs, 0, "half"));
    QVERIFY(overwrite(photographs + u"read me.txt"_qs, 0, "hers"));
    QCOMPARE(bench.start(), 3);
    QCOMPARE(filesIn(bench.folder.path(), "photographs"),
             (QStringList{noted.sha + u".jpeg"_qs, u"read me.txt"_qs}));
    QCOMPARE(bench.start(), 0);
}

void TestPhotos::notesGoWithTheirProject()
{
    Bench bench;
    got(bench.book.log(bench.id, bench.next(1), noteOf(u"A1"_qs, bench.kept(1))));
    got(bench.book.keepDraft(bench.id, u"A2"_qs, Face::Front, bench.kept(2)));
    got(bench.store->throwAway(bench.id));
    QCOMPARE(bench.start(), 0); // it can still be brought back
    got(bench.store->undoShelf());
    QCOMPARE(got(bench.book.notes(bench.id)).size(), std::size_t(1));
    got(bench.store->throwAway(bench.id));
    for (int other = 0; other < 501; ++other)
        QVERIFY(!got(bench.store->create(documentOf(u"Other"_qs, other))).isEmpty());
    QCOMPARE(ask(storeFile(bench.folder.path()), u"SELECT count(*) FROM notes"_qs)[0][0].toInt(), 0);
    QCOMPARE(bench.start(), 4);
}

void TestPhotos::aStaleEditKeepsNoNote()
{
    Bench bench;
    const Command stale = edit(documentOf(u"Runner"_qs, 99), documentOf(u"Runner"_qs, 100));
    QCOMPARE(fault(bench.book.log(bench.id, stale, noteOf(u"A1"_qs, bench.kept(1)))), int(StoreCode::Stale));
    QVERIFY(got(bench.book.notes(bench.id)).empty());
    auto second = opened(bench.folder.path());
    QVERIFY(second->access() == Access::SecondInstance);
    QCOMPARE(fault(NoteBook(*second).log(bench.id, bench.next(1), noteOf(u"A1"_qs, bench.kept(1)))),
             int(StoreCode::ReadOnly));
}

QTEST_GUILESS_MAIN(TestPhotos)
#include "tst_photos.moc"
