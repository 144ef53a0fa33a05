// SPDX-License-Identifier: MIT
//
// moving_kills KILLS SEED: a program fills a shelf, brings an old store up to date, backs the shelf up and
// restores it into another folder; it is killed outright at some instant of that. Then every store is opened
// as the program does at its start: what had been told as done is there, and what was begun is there whole or
// not at all. (`kills` and `photos` do the same to editing, undoing and logging.)
#include "faults/cutcheck.h"
#include "faults/disk/record.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <random>
#include <thread>

using namespace powercut;

namespace {

constexpr int deedsAtMost = 16; ///< few leave the shelf empty, more fill it

/// What the worker told up to now, whole lines only.
QByteArrayList toldIn(const QString &path)
{
    QFile file(path);
    const QByteArray all = file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    const QByteArray whole = all.left(all.lastIndexOf('\n') + 1);
    return whole.isEmpty() ? QByteArrayList() : whole.chopped(1).split('\n');
}

/// Works until `killed` milliseconds have gone (never when negative); the milliseconds it worked, or nothing
/// when it fell by itself.
std::optional<qint64> work(const QString &root, const QString &said, unsigned seed, int deeds, double killed)
{
    QProcess worker;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QString::fromLatin1(disk::saidVariable), said);
    worker.setProcessEnvironment(environment);
    worker.setProcessChannelMode(QProcess::ForwardedChannels);
    QElapsedTimer clock;
    clock.start();
    worker.start(QCoreApplication::applicationDirPath() + u"/power_worker"_qs,
                 {root, QString::number(seed), QString::number(deeds)});
    if (!worker.waitForStarted())
        return std::nullopt;
    if (killed >= 0) {
        std::this_thread::sleep_for(std::chrono::duration<double, std::milli>(killed));
        worker.kill();
    }
    worker.waitForFinished(-1);
    const bool ended = worker.exitStatus() == QProcess::NormalExit;
    if (ended ? worker.exitCode() != 0 : killed < 0)
        return std::nullopt;
    return clock.elapsed();
}

disk::Event told(const QByteArray &line)
{
    disk::Event event;
    event.kind = disk::Kind::Said;
    event.first = line.toStdString();
    return event;
}

struct Tally {
    int kills = 0;
    int atShelf = 0;
    int upgrading = 0;
    int moving = 0;
    int ended = 0;
    int opened = 0;
};

/// What was wrong after the kill, in words.
QString faultAfterKill(const Scene &scene, const QString &root, int deeds, const QByteArrayList &lines,
                       Tally &tally)
{
    const auto last = [&](const QByteArray &begin) {
        const auto found = std::find_if(lines.rbegin(), lines.rend(),
                                        [&](const QByteArray &line) { return line.startsWith(begin); });
        return found == lines.rend() ? QByteArray() : *found;
    };
    const auto shelved = std::count_if(lines.begin(), lines.end(),
                                       [](const QByteArray &line) { return line.startsWith("state shelf"); });
    const bool filled = shelved == deeds;
    const bool upgraded = !last("state old").isEmpty();
    const bool moved = !last("state other").isEmpty();

    // What comes next is known: the shelf as it is goes into the other folder.
    std::vector<disk::Event> events;
    for (const QByteArray &line : lines)
        events.push_back(told(line));
    const std::size_t heard = events.size();
    if (filled && !moved)
        events.push_back(told("state other" + last("state shelf").mid(int(qstrlen("state shelf")))));
    Promises promises(scene, events);
    for (std::size_t at = 0; at < heard; ++at)
        promises.hear(events[at]);

    ++(!filled ? tally.atShelf : !upgraded ? tally.upgrading : tally.moving);
    // A deed on the shelf that was begun may hold what nobody was told: `kills` looks after these.
    QByteArrayList folders{"old", "other"};
    if (filled)
        folders.append("shelf");
    return faultAfterCut(root, promises, folders, tally.opened);
}

int failed(const QString &what)
{
    std::fprintf(stderr, "moving_kills: %s\n", qPrintable(what));
    return 1;
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 3)
        return 2;
    const int kills = QByteArray(argv[1]).toInt();
    std::mt19937 random(QByteArray(argv[2]).toUInt());
    double whole = 0; // how long a worker that nobody kills takes
    Tally tally;
    for (int tried = 0; tally.kills < kills; ++tried) {
        QTemporaryDir folder;
        const QString root = folder.path() + u"/data"_qs;
        const QString said = folder.path() + u"/said"_qs;
        const Scene scene = sceneIn(root);
        // One in fifty is left alone, for the machine's pace changes.
        const bool left = tried % 50 == 0;
        const double killed = left ? -1 : whole * double(random() % 10'000) / 10'000;
        const int deeds = left ? deedsAtMost : 1 + int(random() % deedsAtMost);
        const auto worked = work(root, said, unsigned(random()), deeds, killed);
        const QString where = u"try %1, after %2 ms"_qs.arg(tried).arg(killed);
        if (!worked)
            return failed(where + u": the worker fell"_qs);
        if (left)
            whole = double(*worked);
        const QByteArrayList lines = toldIn(said);
        if (const QString fault = faultAfterKill(scene, root, deeds, lines, tally); !fault.isEmpty()) {
            folder.setAutoRemove(false);
            return failed(where + u", in "_qs + folder.path() + u": "_qs + fault);
        }
        ++(left ? tally.ended : tally.kills);
    }
    std::printf(
        "moving_kills: %d kills (with %d that were left alone: %d while the shelf was filled, %d at the "
        "upgrade, %d while it was backed up and restored); %d stores opened, nothing lost\n",
        tally.kills, tally.ended, tally.atShelf, tally.upgrading, tally.moving, tally.opened);
    return 0;
}
