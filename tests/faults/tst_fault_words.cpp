// SPDX-License-Identifier: MIT
#include "app/desk.h"
#include "app/workspace.h"
#include "faults/disk/record.h"
#include "main/refused.h"
#include "share/backup.h"
#include "store/photohelp.h"
#include "store/storehelp.h"
#include "touch/eyes.h"
#include "touch/fingers.h"

#include <QFile>
#include <QGuiApplication>
#include <QQuickItem>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QTimer>

#include <sys/stat.h>
#include <unistd.h>

using namespace storehelp;
using desk::Open;

namespace {

/// A sentence for a maker: no figures of the system, no words of the database.
bool plain(const QString &says)
{
    static const QRegularExpression inner(u"sqlite|errno|code|0x|\\bI/O\\b|%1|/"_qs,
                                          QRegularExpression::CaseInsensitiveOption);
    return says.size() > 20 && says.endsWith(u'.') && !says.contains(inner);
}

Project widened(const Workspace &workspace)
{
    Project next = workspace.project();
    next.blocks.columns += 1;
    return next;
}

} // namespace

/// What the maker is told of each fault, and that she can go on.
class TestFaultWords : public QObject {
    Q_OBJECT

private slots:
    void cleanup() { disk_room(-1); }
    void everyRefusalIsPlain();
    void aFullDiskIsToldAndNothingIsShownThatIsNotSaved();
    void aSecondInstanceSaysSo();
    void aFolderThatCannotBeWrittenSaysSo();
    void aDamagedFileSaysSo();
    void photographsGoneOrAlteredStopNothing();
    void whatCannotBeOpenedIsSaidInAWindow();
};

void TestFaultWords::everyRefusalIsPlain()
{
    for (const StoreCode code : {StoreCode::CannotOpen, StoreCode::Newer, StoreCode::NeedsUpgrade,
                                 StoreCode::NoCopy, StoreCode::Damaged, StoreCode::ReadOnly, StoreCode::Disk,
                                 StoreCode::Busy, StoreCode::Stale, StoreCode::Unsound})
        QVERIFY2(plain(storeSentence({code, u"disk I/O error 0x1"_qs})),
                 qPrintable(storeSentence({code, {}})));
}

void TestFaultWords::aFullDiskIsToldAndNothingIsShownThatIsNotSaved()
{
    QTemporaryDir folder;
    disk_watch(qPrintable(folder.path())); // before its files are opened
    Open open(folder.path());
    open.lay(desk::topper(), Station::Fit);
    const Project before = open.workspace.project();
    disk_room(0);
    QVERIFY(!open.workspace.commit("size", widened(open.workspace)));
    QVERIFY2(plain(open.session.notice()), qPrintable(open.session.notice()));
    QVERIFY(open.workspace.project() == before && open.kept() == before);
    QVERIFY(!open.workspace.undo() || open.kept() == open.workspace.project());
    disk_room(-1);
    open.session.dismissNotice();
    const Project wider = widened(open.workspace);
    QVERIFY(open.workspace.commit("size", wider));
    QVERIFY(open.session.notice().isEmpty() && open.kept() == wider);
}

void TestFaultWords::aSecondInstanceSaysSo()
{
    Open first(desk::topper(), Station::Fit);
    Open second(first.dir.path());
    second.session.resume();
    QVERIFY2(plain(second.session.notice()), qPrintable(second.session.notice()));
    QVERIFY(second.session.readOnly());
    QCOMPARE(second.workspace.id(), first.workspace.id());
    QVERIFY(!second.workspace.commit("size", widened(second.workspace)));
    QVERIFY2(plain(second.session.notice()), qPrintable(second.session.notice()));
    QVERIFY(first.workspace.commit("size", widened(first.workspace))); // the first is not hindered
}

void TestFaultWords::aFolderThatCannotBeWrittenSaysSo()
{
    QTemporaryDir folder;
    {
        Open open(folder.path());
        open.lay(desk::topper(), Station::Fit);
    }
    QVERIFY(QFile::setPermissions(folder.path(), QFileDevice::Permissions(0x5555)));
    constexpr uid_t nobody = 65534;
    const uid_t was = ::getuid();
    QVERIFY(was != 0 || ::setresuid(nobody, nobody, 0) == 0);
    {
        Open open(folder.path());
        open.session.resume();
        const QString says = open.session.notice();
        const bool showsIt = open.workspace.isOpen() && open.session.readOnly();
        const bool refused = !open.workspace.commit("size", widened(open.workspace));
        QVERIFY(was != 0 || ::setresuid(0, 0, 0) == 0);
        QVERIFY2(plain(says), qPrintable(says));
        QVERIFY(showsIt && refused);
    }
    QVERIFY(QFile::setPermissions(folder.path(), QFileDevice::Permissions(0x7755)));
    Open again(folder.path());
    QVERIFY(!again.session.readOnly());
}

void TestFaultWords::aDamagedFileSaysSo()
{
    QTemporaryDir folder;
    got(opened(folder.path())->create(documentOf(u"A"_qs)));
    QVERIFY(overwrite(storeFile(folder.path()), 4096 + 8, QByteArray(512, '\xa5')));
    Open open(folder.path());
    QVERIFY(open.store->access() == Access::Damaged && open.session.readOnly());
    QVERIFY2(plain(open.session.notice()), qPrintable(open.session.notice()));
}

void TestFaultWords::photographsGoneOrAlteredStopNothing()
{
    QTemporaryDir folder;
    auto store = opened(folder.path());
    NoteBook book(*store);
    const QString id = got(store->create(documentOf(u"A"_qs)));
    QList<QByteArray> pictures;
    QList<Photograph> kept;
    for (quint32 number = 0; number < 3; ++number) {
        pictures.append(photohelp::encoded(photohelp::picture(number, {64, 48})));
        kept.append(book.folder().keep(pictures.back()).value());
        const QString held = got(store->load(id));
        got(book.log(id, edit(held, documentOf(u"A"_qs, number + 1)),
                     photohelp::noteOf(u"A1"_qs, kept.back())));
    }
    const auto path = [&](qsizetype number) {
        return book.folder().original(kept[number].sha, kept[number].format);
    };
    QVERIFY(QFile::remove(path(0)));
    QVERIFY(overwrite(path(1), kept[1].bytes / 2, "\x55\xaa\x55\xaa"));
    // Everything else goes into the backup, and it is told what does not.
    const QString backup = folder.filePath(u"all.matside-backup"_qs);
    const auto written = writeBackup(got(copyForBackup(*store, backup)), book.folder(), backup);
    QVERIFY2(written.ok(), qPrintable(written.ok() ? QString() : written.error().detail));
    QCOMPARE(written.value().missing, 2);
    QCOMPARE(written.value().notes, 3);
    // Notes are still read; the same photograph taken in again is whole again.
    QCOMPARE(got(book.notes(id)).size(), std::size_t(3));
    for (qsizetype number = 0; number < kept.size(); ++number) {
        QVERIFY(book.folder().keep(pictures[number]).value() == kept[number]);
        QCOMPARE(bytesOf(path(number)), pictures[number]);
    }
}

void TestFaultWords::whatCannotBeOpenedIsSaidInAWindow()
{
    QTemporaryDir folder;
    const QString dir = folder.filePath(u"store"_qs);
    QVERIFY(overwrite(dir, 0, "a file where the folder should be"));
    int asked = 0;
    QStringList said;
    QTimer finger;
    touching::Fingers fingers;
    connect(&finger, &QTimer::timeout, this, [&] {
        for (QWindow *window : QGuiApplication::topLevelWindows()) {
            auto *shown = qobject_cast<QQuickWindow *>(window);
            QQuickItem *button = shown && shown->isExposed()
                                     ? touching::called(shown->contentItem(), u"Try again"_qs)
                                     : nullptr;
            if (!button)
                continue;
            QQuickItem *why = touching::byObjectName(shown->contentItem(), u"why"_qs);
            if (++asked == 2)
                QVERIFY(QFile::remove(dir)); // the second time what stood in the way is gone
            said.append(why ? why->property("text").toString() : QString());
            fingers.tap(*shown, touching::seen(button).center(), 40);
        }
    });
    finger.start(1000);
    const auto store = openedOrSaid(dir, true, 5.87);
    finger.stop();
    QVERIFY(store && store->canWrite());
    QCOMPARE(asked, 2);
    for (const QString &says : said)
        QVERIFY2(plain(says), qPrintable(says));
    QVERIFY(!openedOrSaid(folder.filePath(u"store/matside.sqlite"_qs), false, 5.87));
}

QTEST_MAIN(TestFaultWords)
#include "tst_fault_words.moc"
