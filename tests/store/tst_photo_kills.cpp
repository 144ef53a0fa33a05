// SPDX-License-Identifier: MIT
#include "store/photohelp.h"
#include "store/storehelp.h"

#include <QProcess>

#include <thread>

using namespace storehelp;
using namespace photohelp;

namespace {

/// What the photographer said is there: notes that stand, and photographs that wait for their note.
struct Promised {
    QSet<QString> notes;
    QSet<QString> gone;   ///< undone, and said so
    QSet<QString> unsure; ///< begun when it was killed
    int logged = 0;
};

void hear(Promised &promised, const QByteArray &output)
{
    promised.unsure.clear();
    // A line cut short says nothing.
    for (const QByteArray &line : output.left(output.lastIndexOf('\n') + 1).split('\n')) {
        const QByteArray word = line.left(line.indexOf(' '));
        const QString which = QString::fromLatin1(line.mid(line.indexOf(' ') + 1));
        if (word == "logging" || word == "undoing") {
            promised.unsure = {which};
            promised.notes.remove(which);
        } else if (word == "logged") {
            promised.unsure.clear();
            promised.notes.insert(which);
            ++promised.logged;
        } else if (word == "undone") {
            promised.unsure.clear();
            promised.gone.insert(which);
        }
    }
}

QString lastDraft(const QByteArray &output)
{
    const qsizetype at = output.lastIndexOf("drafted ");
    const qsizetype logging = output.lastIndexOf("logging ");
    const qsizetype end = output.indexOf('\n', at);
    return at < 0 || logging > at || end < 0 ? QString()
                                             : QString::fromLatin1(output.mid(at + 8, end - at - 8));
}

QSet<QString> column(const QString &dir, const QString &sql)
{
    QSet<QString> all;
    for (const Row &row : ask(storeFile(dir), sql))
        all.insert(row[0].toString());
    return all;
}

} // namespace

/// Kills a program that logs photographs at random instants. After the next start there is no row without
/// its file, no file without its row, and everything it said was saved. tests/long/photos runs more.
class TestPhotoKills : public QObject {
    Q_OBJECT

private slots:
    void nothingSeenAsSavedIsGone();
};

void TestPhotoKills::nothingSeenAsSavedIsGone()
{
    std::mt19937 random(seed());
    QTemporaryDir folder;
    const QString dir = folder.path();
    const QString id = got(opened(dir)->create(documentOf(u"Killed"_qs)));
    const QString program = QCoreApplication::applicationDirPath() + u"/killed_photographer"_qs;
    Promised promised;
    int orphans = 0;
    const int kills = count(20);
    for (int kill = 0; kill < kills; ++kill) {
        const QByteArray where = qPrintable(u"seed %1, kill %2"_qs.arg(seed()).arg(kill));
        QProcess process;
        process.start(program, {dir, QString::number(random())});
        QVERIFY2(process.waitForStarted(), where);
        // However slow the machine: at work, and every other time with a note logged already.
        QByteArray said;
        const QByteArray begun = kill % 2 == 0 ? "logged " : "drafted ";
        while (!said.contains(begun) && process.waitForReadyRead(60'000))
            said += process.readAllStandardOutput();
        std::this_thread::sleep_for(std::chrono::microseconds(random() % 250'000));
        process.kill();
        QVERIFY2(process.waitForFinished(), where);
        QVERIFY2(process.exitStatus() == QProcess::CrashExit, where); // it was still at work
        said += process.readAllStandardOutput();
        hear(promised, said);

        auto store = opened(dir);
        QVERIFY2(store->access() == Access::Full, where);
        NoteBook book(*store);
        // Nothing refers to a file that is not there, even before anything was swept.
        const QSet<QString> rows = column(dir, u"SELECT sha FROM photographs"_qs);
        QVERIFY2(book.folder().kept().contains(rows), where);
        got(book.forgetUnused());
        orphans += got(sweepPhotographs(dir));
        QVERIFY2(book.folder().kept() == column(dir, u"SELECT sha FROM photographs"_qs), where);
        QVERIFY2(filesIn(dir, "photographs").filter(u".part"_qs).isEmpty(), where);
        QSet<QString> standing;
        for (const Note &note : got(book.notes(id))) {
            standing.insert(note.id);
            QVERIFY2(note.faces[0].has_value(), where);
        }
        QVERIFY2(standing.contains(promised.notes), where);
        QVERIFY2(!standing.intersects(promised.gone), where);
        QVERIFY2((standing - promised.notes - promised.unsure).isEmpty(), where);
        promised.notes = standing; // the one begun may have been kept
        const QString draft = lastDraft(said);
        QVERIFY2(draft.isEmpty() || column(dir, u"SELECT photo FROM drafts"_qs).contains(draft), where);
    }
    // Every file is what its name says.
    const QString photographs = dir + u"/photographs/"_qs;
    for (const QString &name : filesIn(dir, "photographs"))
        QCOMPARE(shaOf(bytesOf(photographs + name)) + u".jpeg"_qs, name);
    QVERIFY2(promised.logged >= kills / 2, qPrintable(QString::number(promised.logged)));
    qInfo("%d kills, %d notes logged, %d files swept", kills, promised.logged, orphans);
}

QTEST_GUILESS_MAIN(TestPhotoKills)
#include "tst_photo_kills.moc"
