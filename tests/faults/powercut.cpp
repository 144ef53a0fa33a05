// SPDX-License-Identifier: MIT
//
// power_cuts CUTS SEED: a program works on stores while everything it does to the disk is written down. Then
// the folder is laid out as the disk may hold it after the power failed at some instant, and the store is
// opened on it. What had been shown as saved before that instant is there.
#include "faults/cutcheck.h"

#include <QCoreApplication>
#include <QDir>
#include <QProcess>
#include <QTemporaryDir>

#include <cstdio>

using namespace powercut;

namespace {

constexpr int cutsOfARecord = 50;
constexpr int deedsOfARecord = 110;

/// Lets the worker work under the recorder; false, told, when it could not.
bool record(const QString &root, const QString &log, unsigned seed)
{
    QProcess worker;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(u"LD_PRELOAD"_qs, QStringLiteral(DISK_RECORDER));
    environment.insert(QString::fromLatin1(disk::rootVariable), root);
    environment.insert(QString::fromLatin1(disk::logVariable), log);
    environment.insert(QString::fromLatin1(disk::saidVariable), log + u".said"_qs);
    worker.setProcessEnvironment(environment);
    worker.setProcessChannelMode(QProcess::ForwardedChannels);
    worker.start(QCoreApplication::applicationDirPath() + u"/power_worker"_qs,
                 {root, QString::number(seed), QString::number(deedsOfARecord)});
    return worker.waitForFinished(-1) && worker.exitStatus() == QProcess::NormalExit &&
           worker.exitCode() == 0;
}

int failed(const QString &what)
{
    std::fprintf(stderr, "power_cuts: %s\n", qPrintable(what));
    return 1;
}

struct Tally {
    int cuts = 0;
    int opened = 0;
    std::size_t events = 0;
    std::size_t waiting = 0;
};

/// Where the worker has done with the shelf.
std::size_t endOfShelf(const std::vector<disk::Event> &events)
{
    for (std::size_t at = events.size(); at-- > 0;)
        if (events[at].kind == disk::Kind::Said && events[at].first.starts_with("state shelf"))
            return at;
    return 0;
}

/// Cuts the power at instants of one record; gives what was wrong at the first where something was.
QString cut(const Scene &scene, const std::vector<disk::Event> &events, int cuts, std::mt19937 &random,
            Tally &tally)
{
    const std::size_t moving = endOfShelf(events);
    std::multiset<std::size_t> instants;
    while (instants.size() < std::size_t(cuts))
        // Upgrading and restoring are few events among many; every third cut falls there.
        instants.insert(random() % 3 == 0 ? moving + random() % (events.size() + 1 - moving)
                                          : random() % (events.size() + 1));
    Promises promises(scene, events);
    disk::Disk disk = scene.before;
    std::size_t done = 0;
    for (const std::size_t instant : instants) {
        for (; done < instant; ++done) {
            if (!disk.apply(events[done]))
                return u"event %1 does not fit the record"_qs.arg(done);
            promises.hear(events[done]);
        }
        const disk::Temper temper = disk::anyTemper(random);
        QTemporaryDir after;
        disk.layAfterCut(after.path().toStdString(), temper, random);
        tally.waiting += disk.waiting();
        // What is settled, or not yet begun, need not be opened each time.
        const bool all = random() % 8 == 0;
        QByteArrayList folders;
        if (all || instant <= moving)
            folders.append("shelf");
        if (all || instant >= moving)
            folders += {"old", "other"};
        const QString fault = faultAfterCut(after.path(), promises, folders, tally.opened);
        if (!fault.isEmpty()) {
            after.setAutoRemove(false);
            return u"instant %1 of %2, %3, laid out in %4: %5"_qs.arg(instant)
                .arg(events.size())
                .arg(QString::fromStdString(disk::told(temper)), after.path(), fault);
        }
        ++tally.cuts;
    }
    return {};
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 3)
        return 2;
    const int cuts = QByteArray(argv[1]).toInt();
    const unsigned seed = QByteArray(argv[2]).toUInt();
    // What is looked at after a cut need not be flushed to a real disk once more.
    disk_watch(qPrintable(QDir::tempPath()));
    Tally tally;
    for (unsigned number = 0; tally.cuts < cuts; ++number) {
        std::mt19937 random(seed * 1000 + number);
        QTemporaryDir folder;
        const QString root = folder.path() + u"/data"_qs;
        const QString log = folder.path() + u"/record"_qs;
        const Scene scene = sceneIn(root);
        if (!record(root, log, unsigned(random())))
            return failed(u"seed %1, record %2: the worker fell"_qs.arg(seed).arg(number));
        const auto events = disk::readRecord(log.toStdString());
        if (const QString missed = missedBy(scene, events, root); !missed.isEmpty())
            return failed(u"the record is not what happened: "_qs + missed);
        const QString fault = cut(scene, events, std::min(cutsOfARecord, cuts - tally.cuts), random, tally);
        if (!fault.isEmpty())
            return failed(u"seed %1, record %2, %3"_qs.arg(seed).arg(number).arg(fault));
        tally.events += events.size();
    }
    std::printf(
        "power_cuts: %d cuts of %zu recorded events, on average %zu changes not flushed; %d stores opened, "
        "nothing lost\n",
        tally.cuts, tally.events, tally.waiting / std::size_t(std::max(1, tally.cuts)), tally.opened);
    return 0;
}
