// SPDX-License-Identifier: MIT
#include "store/storehelp.h"

#include <QProcess>

#include <map>
#include <thread>

using namespace storehelp;

namespace {

/// The commands that stand, oldest first, as the writer told them; and what it had begun when it was killed.
struct Heard {
    std::vector<qlonglong> standing;
    QByteArray begun;
    qlonglong begunNumber = 0;
    std::map<qlonglong, qlonglong> wrote; ///< the number a command put into the document
    int saved = 0;
};

void hear(Heard &heard, const QByteArray &output)
{
    heard.begun.clear();
    // A line cut short says nothing.
    for (const QByteArray &line : output.left(output.lastIndexOf('\n') + 1).split('\n')) {
        if (line.isEmpty())
            continue;
        const QByteArray word = line.left(line.indexOf(' '));
        const qlonglong number = line.mid(line.indexOf(' ') + 1).toLongLong();
        if (word == "editing" || word == "undoing") {
            heard.begun = word;
            heard.begunNumber = number;
            continue;
        }
        if (word == "saved") {
            heard.standing.push_back(number);
            heard.wrote[number] = heard.begunNumber;
        }
        if (word == "undone" && !heard.standing.empty() && heard.standing.back() == number)
            heard.standing.pop_back();
        else if (word == "undone")
            QFAIL("a command was undone that did not stand last");
        ++heard.saved;
        heard.begun.clear();
    }
}

std::vector<qlonglong> standingIn(const QString &dir)
{
    std::vector<qlonglong> standing;
    for (const Row &row :
         ask(storeFile(dir), u"SELECT seq FROM commands WHERE shelf = 0 AND undone = 0 ORDER BY seq"_qs))
        standing.push_back(row[0].toLongLong());
    return standing;
}

/// Whether `held` is what was told, or that and the one command begun; only the oldest may have gone.
bool agrees(const Heard &heard, const std::vector<qlonglong> &held)
{
    const auto endsAlike = [&](std::vector<qlonglong> whole) {
        if (whole.size() > 500)
            whole.erase(whole.begin(), whole.end() - 500);
        // Undoing may have left fewer than 500 of those trimmed to 500 before.
        return held.size() <= whole.size() && std::equal(held.rbegin(), held.rend(), whole.rbegin()) &&
               (heard.saved > 500 || held.size() == whole.size());
    };
    if (endsAlike(heard.standing))
        return true;
    auto other = heard.standing;
    if (heard.begun == "editing" && !held.empty() && (other.empty() || held.back() > other.back()))
        other.push_back(held.back());
    else if (heard.begun == "undoing" && !other.empty())
        other.pop_back();
    else
        return false;
    return endsAlike(other);
}

} // namespace

/// Kills a writer at random instants. What it said was saved is there; what it had begun is there whole or
/// not at all. tests/long runs a thousand.
class TestStoreKills : public QObject {
    Q_OBJECT

private slots:
    void losesNothingThatWasSaved();
};

void TestStoreKills::losesNothingThatWasSaved()
{
    std::mt19937 random(seed());
    QTemporaryDir folder;
    const QString id = got(opened(folder.path())->create(documentOf(u"Killed"_qs)));
    const QString writer = QCoreApplication::applicationDirPath() + u"/killed_writer"_qs;
    Heard heard;
    const int kills = count(20);
    for (int kill = 0; kill < kills; ++kill) {
        const QByteArray where = qPrintable(u"seed %1, kill %2"_qs.arg(seed()).arg(kill));
        QProcess process;
        process.start(writer, {folder.path(), QString::number(random())});
        QVERIFY2(process.waitForStarted(), where);
        // A quarter may be struck while it opens the store; the others once it writes, however slow the
        // machine.
        if (kill % 4 != 0)
            QVERIFY2(process.waitForReadyRead(60'000), where);
        std::this_thread::sleep_for(std::chrono::microseconds(random() % 250'000));
        process.kill();
        QVERIFY2(process.waitForFinished(), where);
        QVERIFY2(process.exitStatus() == QProcess::CrashExit, where); // it was still writing
        hear(heard, process.readAllStandardOutput());

        auto store = opened(folder.path());
        QVERIFY2(store->access() == Access::Full,
                 where + ", access " + QByteArray::number(int(store->access())));
        const QString document = got(store->load(id));
        const auto read = readProject(document.toStdString());
        QVERIFY2(read.ok(), where);
        const auto next = got(store->undoable(id));
        store.reset();
        const auto held = standingIn(folder.path());
        QVERIFY2(agrees(heard, held), where);
        QVERIFY2(next ? next->seq == held.back() : held.empty(), where);
        // The document and its commands were written together.
        if (!held.empty() && !heard.wrote.contains(held.back()))
            heard.wrote[held.back()] = heard.begunNumber;
        const auto number = held.empty() ? 0 : heard.wrote[held.back()];
        QVERIFY2(read.value().project.slack == Length::ticks(number), where);
        heard.standing = held; // the one begun may have been kept
        QCOMPARE(ask(storeFile(folder.path()), u"PRAGMA integrity_check"_qs)[0][0].toString(), u"ok"_qs);
    }
    // Enough was written for the kills to have struck between commands.
    QVERIFY2(heard.saved > kills, qPrintable(QString::number(heard.saved)));
    qInfo("%d kills, %d commands saved", kills, heard.saved);
}

QTEST_GUILESS_MAIN(TestStoreKills)
#include "tst_store_kills.moc"
