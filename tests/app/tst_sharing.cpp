// SPDX-License-Identifier: MIT
//
// Sharing from the shelf: out as one file, looked into, mended where it has to be, and in as a new project.
#include "app/backups.h"
#include "app/fitmodel.h"
#include "sharedesk.h"
#include "sheet/sheetcommand.h"

#include <QSignalSpy>

using namespace sharehelp;

class TestSharing : public QObject {
    Q_OBJECT
private slots:
    void goesOutUnderAFreeName();
    void comesInAfterALook();
    void faultsAreMendedFirst();
    void refusalsAreSaid();
    void everyRefusalHasWords();
    void aSheetIsWrittenForTheWall();
    void aShareFileIsListed();
    void closingMeanwhileIsSafe();
    void backedUpAndPutBack();
};

void TestSharing::goesOutUnderAFreeName()
{
    Desk desk(true);
    for (int i = 0; i < 2; ++i) {
        desk.sharing.share(desk.home.id);
        QVERIFY(desk.sharing.busy());
        desk.sharing.share(desk.home.id); // pressed twice: once is enough
        QVERIFY(desk.settled());
        QVERIFY2(!desk.sharing.refused(), qPrintable(desk.sharing.said()));
        QCOMPARE(desk.sharing.sharedId(), desk.home.id);
    }
    QVERIFY(desk.sharing.said().contains(u"Reading-room runner 2.matside"_qs));
    QCOMPARE(QDir(desk.papers.path()).entryList(QDir::Files | QDir::Hidden).size(), 2);
    desk.sharing.share(u"no such project"_qs);
    QVERIFY(desk.sharing.refused() && !desk.sharing.busy());
}

void TestSharing::aSheetIsWrittenForTheWall()
{
    Desk desk(true);
    desk.sharing.print(desk.home.id); // nothing to print with
    QVERIFY(desk.sharing.said().isEmpty());
    QString asked;
    desk.sharing.setPrinter(
        [&asked](const Project &project, const Plan &plan, const QString &path, const QString &form) {
            asked = form;
            return saveSheet(project, plan, path, {PaperSize::A4, false});
        });
    for (const QString &name : {u"Reading-room runner.pdf"_qs, u"Reading-room runner 2.pdf"_qs}) {
        desk.sharing.print(desk.home.id);
        QVERIFY2(!desk.sharing.refused() && desk.sharing.said().contains(name),
                 qPrintable(desk.sharing.said()));
        QFile file(desk.paper(name));
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY(file.readAll().startsWith("%PDF-"));
    }
    QCOMPARE(asked, u"long"_qs);
    desk.sharing.print(desk.home.id, u"short"_qs);
    QCOMPARE(asked, u"short"_qs);
    QVERIFY(!desk.sharing.refused() && QFile::exists(desk.paper(u"Reading-room runner 3.pdf"_qs)));
    // A class of one is no class: the words say where to make it one.
    desk.sharing.print(desk.home.id, u"class"_qs);
    QCOMPARE(asked, u"short"_qs);
    QVERIFY(desk.sharing.refused() && desk.sharing.said().contains(u"kits"_qs));
    QString many = desk.home.document;
    many.replace(u"\"kits\": 1"_qs, u"\"kits\": 4"_qs);
    QVERIFY(many != desk.home.document);
    desk.sharing.print(got(desk.home.store->create(many)), u"class"_qs);
    QCOMPARE(asked, u"class"_qs);
    QVERIFY(!desk.sharing.refused());
    // What cannot be made is not printed: the reason is said, and no file is left.
    QString text = desk.home.document;
    text.replace(u"\"columns\": 6"_qs, u"\"columns\": 0"_qs);
    QVERIFY(text != desk.home.document);
    const QString id = got(desk.home.store->create(text));
    desk.sharing.print(id);
    QVERIFY(desk.sharing.refused() && !desk.sharing.said().isEmpty());
    QVERIFY(!QFile::exists(desk.paper(u"Reading-room runner 5.pdf"_qs)));
    desk.sharing.print(u"no such project"_qs);
    QVERIFY(desk.sharing.refused());
}

void TestSharing::comesInAfterALook()
{
    Desk from(true);
    from.sharing.share(from.home.id);
    QVERIFY(from.settled());
    Desk to(false);
    const QString path = from.paper(u"Reading-room runner.matside"_qs);
    to.sharing.look(path);
    QVERIFY(to.sharing.busy() && !to.sharing.ready());
    to.sharing.bringIn(); // too early: nothing comes of it
    QVERIFY(to.settled());
    QVERIFY2(to.sharing.ready(), qPrintable(to.sharing.refusal()));
    QCOMPARE(to.sharing.chosenName(), u"Reading-room runner"_qs);
    const QStringList lines = to.sharing.inside();
    QCOMPARE(lines.mid(0, 3), QStringList({u"6 by 3 blocks"_qs, u"one block made"_qs, u"3 notes"_qs}));
    QVERIFY(lines[3].startsWith(u"2 photographs ("_qs));
    QVERIFY(names(*to.home.store).isEmpty()); // a look adds nothing
    QVERIFY(filesIn(to.home.dir.path(), "photographs").isEmpty());

    QSignalSpy came(&to.sharing, &Sharing::broughtIn);
    to.sharing.bringIn();
    QVERIFY(to.settled());
    QCOMPARE(came.size(), 1);
    const QString id = came[0][0].toString();
    QCOMPARE(got(to.home.store->load(id)), from.home.document);
    QCOMPARE(got(to.home.book.notes(id)).size(), std::size_t(3));
    QCOMPARE(filesIn(to.home.dir.path(), "photographs").size(), 2);
    QVERIFY(to.sharing.chosen().isEmpty() && to.sharing.inside().isEmpty());
}

void TestSharing::faultsAreMendedFirst()
{
    Desk from(false);
    QString text = documentOf(u"Odd"_qs);
    text.replace(u"\"hand\": \"right\""_qs, u"\"hand\": \"both\""_qs);
    from.home.document = text;
    from.home.id = got(from.home.store->create(text));
    from.sharing.share(from.home.id);
    QVERIFY(from.settled());
    Desk to(false);
    to.sharing.look(from.paper(u"Odd.matside"_qs));
    QVERIFY(to.settled());
    QVERIFY(!to.sharing.ready() && to.sharing.refusal().isEmpty());
    QCOMPARE(to.sharing.problems().size(), 1);
    QVERIFY(to.sharing.inside().last().startsWith(u"one thing"_qs));
    to.sharing.bringIn();
    QVERIFY(names(*to.home.store).isEmpty());
    to.sharing.takeOffer(3, 0);
    to.sharing.takeOffer(0, 99);
    QVERIFY(!to.sharing.ready());
    to.sharing.takeOffer(0, 1);
    QVERIFY(to.sharing.ready());
    to.sharing.bringIn();
    QVERIFY(to.settled());
    QCOMPARE(names(*to.home.store), QStringList{u"Odd"_qs});
    QVERIFY(got(to.home.store->load(got(to.home.store->projects()).front().id))
                .contains(u"\"hand\": \"left\""_qs));
}

void TestSharing::refusalsAreSaid()
{
    Desk desk(true);
    const auto before = everything(desk.home.dir.path());
    const QString path = desk.paper(u"bad.matside"_qs);
    QVERIFY(overwrite(path, 0, "this is no zip file, whatever its name says"));
    desk.sharing.look(path);
    QVERIFY(desk.settled());
    QVERIFY(!desk.sharing.ready());
    QVERIFY(desk.sharing.refusal().contains(u"Nothing of it was kept"_qs));
    desk.sharing.bringIn();
    QVERIFY(desk.settled());
    QCOMPARE(everything(desk.home.dir.path()), before);
    // Taken back while it is looked into: the answer comes too late to be shown.
    desk.sharing.look(path);
    desk.sharing.leave();
    QVERIFY(desk.settled());
    QVERIFY(desk.sharing.refusal().isEmpty() && desk.sharing.chosen().isEmpty());
}

void TestSharing::everyRefusalHasWords()
{
    QSet<QString> all;
    for (int code = 0; code <= static_cast<int>(ShareCode::Disk); ++code) {
        const QString words = shareSentence({static_cast<ShareCode>(code), u"photographs/a.png"_qs, {}});
        QVERIFY2(words.size() > 15 && !words.contains(u'%'), nameOf(static_cast<ShareCode>(code)));
        all.insert(words);
    }
    QCOMPARE(all.size(), static_cast<int>(ShareCode::Disk) + 1);
}

void TestSharing::aShareFileIsListed()
{
    Desk desk(true);
    desk.sharing.share(desk.home.id);
    QVERIFY(desk.settled());
    OpenFiles files(desk.workspace);
    files.show(desk.papers.path());
    QCOMPARE(files.count(), 1);
    QVERIFY(files.index(0).data(OpenFiles::IsShare).toBool());
    QCOMPARE(files.index(0).data(OpenFiles::Name).toString(), u"Reading-room runner"_qs);
}

void TestSharing::closingMeanwhileIsSafe()
{
    QTemporaryDir papers;
    Home home(true);
    Workspace workspace(*home.store);
    Session session(workspace);
    PhotoKeeper keeper(home.book);
    {
        Sharing sharing(workspace, session, keeper);
        sharing.setDocuments(papers.path());
        sharing.share(home.id);
    }
    QVERIFY(keeper.settle(20'000));
    QVERIFY(lookInside(papers.filePath(u"Reading-room runner.matside"_qs)).ok());
}

void TestSharing::backedUpAndPutBack()
{
    Desk desk(true);
    Backups backups(desk.workspace, desk.keeper);
    backups.setDocuments(desk.papers.path());
    for (int i = 0; i < 2; ++i) {
        backups.backUp();
        QVERIFY(backups.busy());
        QVERIFY(desk.settled());
        QVERIFY2(!backups.refused(), qPrintable(backups.said()));
    }
    QVERIFY(backups.said().contains(u"Backup 2.matside-backup"_qs) && backups.said().contains(u"3 notes"_qs));
    const QString path = desk.paper(u"Backup.matside-backup"_qs);
    backups.look(path); // there is a project here
    QVERIFY(desk.settled());
    QVERIFY(!backups.ready() && !backups.refusal().isEmpty() && !backups.inside().isEmpty());
    backups.restore();
    QVERIFY(!backups.busy() && !restoringWaits(desk.home.dir.path()));

    const QTemporaryDir dir;
    {
        const auto store = opened(dir.path());
        Workspace workspace(*store);
        NoteBook book(*store);
        PhotoKeeper keeper(book);
        Backups here(workspace, keeper);
        here.look(path);
        QVERIFY(keeper.settle(20'000));
        QVERIFY2(here.ready(), qPrintable(here.refusal()));
        here.restore();
        QVERIFY(keeper.settle(20'000));
        QVERIFY2(here.said().contains(u"open it again"_qs), qPrintable(here.refusal()));
    }
    QVERIFY(finishRestoring(dir.path()).ok()); // as the next start does
    QCOMPARE(names(*opened(dir.path())), QStringList{u"Reading-room runner"_qs});
}

QTEST_MAIN(TestSharing)
#include "tst_sharing.moc"
