// SPDX-License-Identifier: MIT
//
// A block is logged by touches alone, whatever the camera does, and nothing that was seen as kept is lost.
#include "app/blocklog.h"
#include "app/desk.h"
#include "app/fakesource.h"
#include "app/gallery.h"
#include "store/photohelp.h"

#include "testing.h"
#include <QAbstractItemModelTester>
#include <QTemporaryDir>

using namespace matside;
using Trouble = PhotoSource::Trouble;

namespace {

struct Desk : desk::Open {
    explicit Desk(const QString &folder) : Open(folder)
    {
        log.camera()->setPatience(60);
        camera.plug(true);
    }
    void start() { lay(desk::topper(), Station::Hoop); }
    std::vector<Note> notes(const QString &block = {}) const
    {
        return book.notes(workspace.id(), block).value();
    }
    bool settled()
    {
        const bool all = keeper.settle(20'000);
        QCoreApplication::processEvents();
        return all;
    }

    NoteBook book{*store};
    PhotoKeeper keeper{book};
    FakeSource camera;
    QTemporaryDir pictures;
    PicturePicker picker{pictures.path()};
    BlockLog log{workspace, keeper, camera, picker};
    Gallery gallery{workspace, keeper};
};

} // namespace

class TestBlockLog : public QObject {
    Q_OBJECT
    QTemporaryDir m_pictures;
    int m_folders = 0;
    QTemporaryDir m_data;
    QString fresh() { return m_data.filePath(QString::number(++m_folders)); }
    QString file(quint32 seed, const QByteArray &bytes = {})
    {
        QFile file(m_pictures.filePath(QStringLiteral("%1.jpg").arg(seed)));
        if (!file.open(QIODevice::WriteOnly))
            qFatal("no picture could be written");
        file.write(bytes.isEmpty() ? photohelp::encoded(photohelp::picture(seed, {200, 150})) : bytes);
        return file.fileName();
    }

private slots:
    void sameAsPlannedLogsTheBlock();
    void marksGoUpAndDownFromThePlannedSize();
    void aPictureOfEachFaceIsKept();
    void savingWaitsForThePictureNotTheHand();
    void aStalledCameraSaysSoAndALatePictureIsTaken();
    void aRefusalIsSaidAndTheNextPictureGoesThrough();
    void aVanishedCameraIsSaidAndAPictureChosen();
    void noPictureIsSaidAndNothingLost();
    void undoTakesTheNoteAwayWithTheBlock();
    void aPictureOutlivesAClosedProgram();
    void flagsAndHistoryStayWithARemadeBlock();
    void theGalleryFollowsTheLayout();
    void theFolderListsPicturesOnly();
};

void TestBlockLog::sameAsPlannedLogsTheBlock()
{
    Desk desk(fresh());
    desk.start();
    QSignalSpy saved(&desk.log, &BlockLog::saved);
    desk.log.setBlock(QStringLiteral("A1"));
    QCOMPARE(desk.log.along().text, QStringLiteral("6 in"));
    QCOMPARE(desk.log.placeSays(), QStringLiteral("Strip 1, place 1"));
    QVERIFY(desk.log.asPlanned() && desk.log.canSave());
    QVERIFY(desk.log.save());
    QCOMPARE(saved.size(), 1);
    const Project project = desk.kept();
    QCOMPARE(project.made.blocks.size(), std::size_t(1));
    QCOMPARE(project.made.blocks[0].block, std::string("A1"));
    QVERIFY(project.made.blocks[0].outline == (std::array{Length::inches(6), Length::inches(6)}));
    QCOMPARE(desk.notes().size(), std::size_t(1));
    QCOMPARE(project.made.blocks[0].notes, std::vector{desk.notes()[0].id.toStdString()});
    QCOMPARE(desk.notes()[0].along, QStringLiteral("6 in"));
    // The block that is not stitched next cannot be logged.
    desk.log.setBlock(QStringLiteral("C3"));
    QVERIFY(!desk.log.canSave() && !desk.log.save());
}

void TestBlockLog::marksGoUpAndDownFromThePlannedSize()
{
    Desk desk(fresh());
    desk.start();
    desk.log.setBlock(QStringLiteral("A1"));
    desk.log.stepAlong(-1);
    desk.log.stepAcross(1);
    desk.log.stepAcross(1);
    QCOMPARE(desk.log.along().text, QStringLiteral("5 15/16 in"));
    QCOMPARE(desk.log.across().text, QStringLiteral("6 1/8 in"));
    QVERIFY(!desk.log.asPlanned());
    // Beyond a sixteenth (common practice, no published limit) she is told where it is judged.
    QVERIFY2(desk.log.plannedSays().contains(QStringLiteral("off by {1/8 in}: Trim")),
             qPrintable(desk.log.plannedSays()));
    for (int slip = 0; slip < 200; ++slip)
        desk.log.stepAlong(1);
    QCOMPARE(desk.log.along().text, QStringLiteral("12 in")); // twice the size is a slip of the hand
    desk.log.setAsPlanned();
    QVERIFY(desk.log.asPlanned());
    desk.log.stepAlong(-1);
    QVERIFY(!desk.log.plannedSays().contains(QStringLiteral("off by")));
    QVERIFY(desk.log.save());
    // Looked at again it is as measured, and may be put right.
    desk.log.setBlock(QStringLiteral("A1"));
    QCOMPARE(desk.log.along().text, QStringLiteral("5 15/16 in"));
    desk.log.stepAlong(-1);
    QVERIFY(desk.log.save());
    QCOMPARE(desk.kept().made.blocks.size(), std::size_t(1));
    QVERIFY((*desk.kept().made.blocks[0].outline)[0] == Length::inches(5, 7, 8));
    QCOMPARE(desk.notes().size(), std::size_t(2));
}

void TestBlockLog::aPictureOfEachFaceIsKept()
{
    Desk desk(fresh());
    desk.start();
    desk.log.setBlock(QStringLiteral("A1"));
    QSignalSpy kept(&desk.log, &BlockLog::pictureKept);
    for (const int face : {0, 1}) {
        desk.log.setFace(face);
        desk.camera.be(FakeSource::Manner::Serves, file(quint32(face + 1)));
        desk.camera.capture();
        QVERIFY(desk.settled());
        QCOMPARE(kept.takeFirst()[0].toInt(), face);
    }
    QVERIFY(QFile::exists(desk.log.front().toLocalFile()) && QFile::exists(desk.log.back().toLocalFile()));
    QVERIFY(desk.log.front() != desk.log.back());
    QVERIFY(desk.log.save());
    const Note note = desk.notes()[0];
    for (const int face : {0, 1}) {
        QFile original(
            desk.book.folder().original(note.faces[std::size_t(face)]->sha, QStringLiteral("jpeg")));
        QFile source(file(quint32(face + 1)));
        QVERIFY(original.open(QIODevice::ReadOnly) && source.open(QIODevice::ReadOnly));
        QCOMPARE(original.readAll(), source.readAll());
    }
    QVERIFY(desk.log.front().isEmpty());
}

void TestBlockLog::savingWaitsForThePictureNotTheHand()
{
    Desk desk(fresh());
    desk.start();
    desk.log.setBlock(QStringLiteral("A1"));
    desk.camera.be(FakeSource::Manner::Serves, file(3));
    QSignalSpy saved(&desk.log, &BlockLog::saved);
    desk.camera.capture();
    QVERIFY(desk.log.keeping());
    QVERIFY(desk.log.save()); // at once: she need not wait for the disk
    QVERIFY(desk.settled());
    QCOMPARE(saved.size(), 1);
    QVERIFY(desk.notes()[0].faces[0].has_value());
}

void TestBlockLog::aStalledCameraSaysSoAndALatePictureIsTaken()
{
    Desk desk(fresh());
    desk.start();
    desk.log.setBlock(QStringLiteral("A1"));
    desk.camera.be(FakeSource::Manner::Stalls, file(4));
    desk.camera.capture();
    QVERIFY(desk.camera.busy() && !desk.camera.ready());
    desk.camera.capture(); // nothing: it was asked already
    QCOMPARE(desk.camera.asked(), 1);
    QTRY_COMPARE(desk.camera.trouble(), Trouble::Stalled);
    QVERIFY(!desk.camera.says().isEmpty() && desk.camera.ready());
    desk.camera.answerLate();
    QVERIFY(desk.settled());
    QCOMPARE(desk.camera.trouble(), Trouble::None);
    QVERIFY(!desk.log.front().isEmpty());
}

void TestBlockLog::aRefusalIsSaidAndTheNextPictureGoesThrough()
{
    Desk desk(fresh());
    desk.start();
    desk.log.setBlock(QStringLiteral("A1"));
    desk.log.stepAlong(-1);
    desk.camera.be(FakeSource::Manner::Refuses);
    desk.camera.capture();
    QCOMPARE(desk.camera.trouble(), Trouble::Failed);
    QVERIFY(!desk.camera.says().isEmpty());
    QCOMPARE(desk.log.along().text, QStringLiteral("5 15/16 in"));
    desk.camera.be(FakeSource::Manner::Serves, file(5));
    desk.camera.capture();
    QVERIFY(desk.settled());
    QVERIFY(desk.camera.says().isEmpty() && !desk.log.front().isEmpty());
}

void TestBlockLog::aVanishedCameraIsSaidAndAPictureChosen()
{
    Desk desk(fresh());
    desk.start();
    desk.log.setBlock(QStringLiteral("A1"));
    desk.camera.be(FakeSource::Manner::Vanishes);
    desk.camera.capture();
    QVERIFY(!desk.camera.present() && !desk.camera.busy());
    QCOMPARE(desk.camera.trouble(), Trouble::Gone);
    desk.camera.capture();
    QCOMPARE(desk.camera.asked(), 1);
    QVERIFY(QFile::copy(file(6), desk.pictures.filePath(QStringLiteral("block.jpg"))));
    desk.picker.folder()->refresh();
    desk.picker.choose(0);
    QVERIFY(desk.settled());
    QVERIFY(!desk.log.front().isEmpty());
    QVERIFY(QFile::exists(desk.pictures.filePath(QStringLiteral("block.jpg")))); // hers stays hers
    desk.camera.plug(true);
    QCOMPARE(desk.camera.trouble(), Trouble::None);
}

void TestBlockLog::noPictureIsSaidAndNothingLost()
{
    Desk desk(fresh());
    desk.start();
    desk.log.setBlock(QStringLiteral("A1"));
    desk.log.toggleFlag(QStringLiteral("pleat"));
    const QByteArray whole = photohelp::encoded(photohelp::picture(7, {200, 150}));
    QStringList told;
    for (const QByteArray &bytes : {QByteArray("no picture"), whole.left(whole.size() / 2)}) {
        desk.camera.be(FakeSource::Manner::Serves, file(8, bytes));
        desk.camera.capture();
        QVERIFY(desk.settled());
        QVERIFY(!desk.log.problem().isEmpty() && !desk.log.keeping() && desk.log.front().isEmpty());
        told.append(desk.log.problem());
        desk.log.dismissProblem();
    }
    desk.camera.be(FakeSource::Manner::Serves, m_pictures.filePath(QStringLiteral("gone.jpg")));
    desk.camera.capture();
    QVERIFY(desk.settled());
    told.append(desk.log.problem());
    told.removeDuplicates();
    QCOMPARE(told.size(), 3); // each its own words
    QVERIFY(desk.log.save());
    QCOMPARE(desk.notes()[0].flags, QStringList{QStringLiteral("pleat")});
}

void TestBlockLog::undoTakesTheNoteAwayWithTheBlock()
{
    Desk desk(fresh());
    desk.start();
    desk.log.setBlock(QStringLiteral("A1"));
    QVERIFY(desk.log.save());
    QVERIFY(desk.session.canUndo());
    desk.session.undo();
    QVERIFY(desk.kept().made.blocks.empty());
    QVERIFY(desk.notes().empty());
    QVERIFY(desk.store->redo(desk.workspace.id()).ok());
    QCOMPARE(desk.notes().size(), std::size_t(1));
}

void TestBlockLog::aPictureOutlivesAClosedProgram()
{
    const QString folder = fresh();
    QString id;
    {
        Desk desk(folder);
        desk.start();
        id = desk.workspace.id();
        desk.log.setBlock(QStringLiteral("A1"));
        desk.camera.be(FakeSource::Manner::Serves, file(9));
        desk.camera.capture();
        QVERIFY(desk.settled());
    }
    Desk desk(folder);
    desk.session.openProject(id);
    QVERIFY(desk.settled());
    desk.log.setBlock(QStringLiteral("A1"));
    QVERIFY(!desk.log.front().isEmpty());
    QCOMPARE(desk.log.face(), 1); // the back is what is missing
    desk.log.dropPicture(0);
    QVERIFY(desk.log.front().isEmpty());
    desk.log.setBlock(QStringLiteral("A1"));
    QVERIFY(desk.log.front().isEmpty());
}

void TestBlockLog::flagsAndHistoryStayWithARemadeBlock()
{
    Desk desk(fresh());
    desk.start();
    desk.log.setBlock(QStringLiteral("A1"));
    desk.log.toggleFlag(QStringLiteral("pleat"));
    desk.log.toggleFlag(QStringLiteral("look"));
    desk.log.toggleFlag(QStringLiteral("look"));
    QVERIFY(desk.log.save());
    Project next = desk.kept();
    next.made.blocks[0].state = BlockState::Spoiled;
    QVERIFY(desk.workspace.commit("spoiled", next));
    desk.log.setBlock(QStringLiteral("A1"));
    QVERIFY(desk.log.canSave()); // it is to be stitched again
    QVERIFY(desk.log.save());
    QCOMPARE(desk.kept().made.blocks.size(), std::size_t(2));
    QVERIFY(desk.kept().made.blocks[0] == next.made.blocks[0]); // what was made is never rewritten
    const QVariantList history = desk.gallery.history(QStringLiteral("A1"));
    QCOMPARE(history.size(), 2);
    QCOMPARE(history[1].toMap()[QStringLiteral("flagsSays")].toString(), flagSays(QStringLiteral("pleat")));
    QVERIFY(history[0].toMap()[QStringLiteral("flagsSays")].toString().isEmpty());
}

void TestBlockLog::theGalleryFollowsTheLayout()
{
    Desk desk(fresh());
    desk.start();
    QAbstractItemModelTester tester(&desk.gallery, QAbstractItemModelTester::FailureReportingMode::QtTest);
    desk.gallery.setActive(true);
    QCOMPARE(desk.gallery.columns(), int(desk.kept().blocks.columns));
    QCOMPARE(desk.gallery.count(),
             int(desk.kept().blocks.columns * desk.kept().blocks.rows + desk.kept().blocks.spare));
    const auto told = [&](int role) { return desk.gallery.data(desk.gallery.index(0), role).toString(); };
    QCOMPARE(told(Gallery::Block), QStringLiteral("A1"));
    QCOMPARE(told(Gallery::State), QStringLiteral("to-do"));
    desk.log.setBlock(QStringLiteral("A1"));
    desk.log.toggleFlag(QStringLiteral("mark"));
    desk.camera.be(FakeSource::Manner::Serves, file(10));
    desk.camera.capture();
    QVERIFY(desk.settled());
    QVERIFY(desk.log.save());
    QCOMPARE(told(Gallery::State), QStringLiteral("stitched"));
    QCOMPARE(told(Gallery::SizeSays), QStringLiteral("{6 in} × {6 in}"));
    QCOMPARE(desk.gallery.pictured(), 1);
    // How far they are is counted: those to do, and the one that is stitched.
    const QVariantList tally = desk.gallery.tally();
    QCOMPARE(tally.size(), 2);
    QCOMPARE(tally[0].toMap().value(QStringLiteral("state")).toString(), QStringLiteral("to-do"));
    QCOMPARE(tally[0].toMap().value(QStringLiteral("count")).toInt(), desk.gallery.count() - 1);
    QCOMPARE(tally[1].toMap().value(QStringLiteral("state")).toString(), QStringLiteral("stitched"));
    QCOMPARE(tally[1].toMap().value(QStringLiteral("count")).toInt(), 1);
    QVERIFY(desk.gallery.data(desk.gallery.index(0), Gallery::Flagged).toBool());
    QVERIFY(!desk.gallery.data(desk.gallery.index(0), Gallery::Noted).toBool());
    const QString thumb = desk.gallery.data(desk.gallery.index(0), Gallery::Thumb).toUrl().toLocalFile();
    QVERIFY(QFile::remove(thumb));
    QVERIFY(desk.gallery.data(desk.gallery.index(0), Gallery::Thumb).toUrl().isEmpty());
    QSignalSpy again(&desk.gallery, &QAbstractItemModel::dataChanged);
    QVERIFY(desk.settled());
    QVERIFY(QFile::exists(thumb) && !again.isEmpty());
    // Words alone are marked too, and are no flag.
    desk.log.setBlock(QStringLiteral("A2"));
    desk.log.setWords(QStringLiteral("Thread snapped"));
    QVERIFY(desk.log.save());
    QVERIFY(desk.gallery.data(desk.gallery.index(1), Gallery::Noted).toBool());
    QVERIFY(!desk.gallery.data(desk.gallery.index(1), Gallery::Flagged).toBool());
}

void TestBlockLog::theFolderListsPicturesOnly()
{
    QTemporaryDir dir;
    QVERIFY(QDir(dir.path()).mkpath(QStringLiteral("album/deeper")));
    QVERIFY(QFile::copy(file(11), dir.filePath(QStringLiteral("block.jpg"))));
    QVERIFY(QFile::copy(file(11), dir.filePath(QStringLiteral("words.txt"))));
    PictureFolder folder(dir.path());
    QAbstractItemModelTester tester(&folder, QAbstractItemModelTester::FailureReportingMode::QtTest);
    folder.refresh();
    QCOMPARE(folder.count(), 2);
    QVERIFY(folder.data(folder.index(0), PictureFolder::IsFolder).toBool());
    QCOMPARE(folder.open(1), dir.filePath(QStringLiteral("block.jpg")));
    QVERIFY(!folder.canGoUp());
    folder.goUp(); // never out of the folder it began with
    QCOMPARE(folder.count(), 2);
    QCOMPARE(folder.open(0), QString());
    QCOMPARE(folder.title(), QStringLiteral("album"));
    folder.goUp();
    QCOMPARE(folder.count(), 2);
    QCOMPARE(folder.open(99), QString());
}

QTEST_MAIN(TestBlockLog)
#include "tst_blocklog.moc"
