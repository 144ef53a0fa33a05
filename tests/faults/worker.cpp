// SPDX-License-Identifier: MIT
//
// Works on the stores under a folder while the recorder listens: power_worker ROOT SEED DEEDS. Tells after
// each deed what the store holds, which from then on is shown as saved: "state FOLDER SUM", "file NAME SHA".
#include "faults/deeds.h"
#include "faults/disk/record.h"
#include "faults/ledger.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QFile>

#include <cstdio>

#include <fcntl.h>
#include <unistd.h>

using namespace matside;

namespace {

class Teller {
public:
    Teller() : m_fd(::open(qgetenv(disk::saidVariable).constData(), O_WRONLY | O_CREAT | O_CLOEXEC, 0600)) {}
    ~Teller() { ::close(m_fd); }
    Teller(const Teller &) = delete;
    Teller &operator=(const Teller &) = delete;

    void say(QByteArray line) const
    {
        line += '\n'; // in one write: a program that is killed tells a line whole or not at all
        if (::write(m_fd, line.constData(), std::size_t(line.size())) != line.size())
            std::abort();
    }
    void state(const QByteArray &folder, const QByteArray &sum) const { say("state " + folder + ' ' + sum); }

private:
    int m_fd;
};

QByteArray shaOfFile(const QString &path)
{
    QFile file(path);
    QCryptographicHash hash(QCryptographicHash::Sha256);
    return file.open(QIODevice::ReadOnly) && hash.addData(&file) ? hash.result().toHex() : QByteArray();
}

int broken(const QString &what)
{
    std::fprintf(stderr, "%s\n", qPrintable(what));
    return 1;
}

/// A store of an earlier version is brought up to date.
bool upgrade(const Teller &teller, const QString &dir)
{
    const auto store = openStore(dir);
    if (store && store.value()->canWrite())
        teller.state("old", ledger::sumOf(storeFile(dir)));
    return store && store.value()->canWrite();
}

/// The shelf as it is goes into a backup, and that into the folder "other".
QString moveHouse(const Teller &teller, const QString &root)
{
    const QString path = root + u"/out/all"_qs + backupEnd;
    const QByteArray sum = ledger::sumOf(storeFile(root + u"/shelf"_qs));
    {
        const auto store = openStore(root + u"/shelf"_qs);
        if (!store)
            return store.error().detail;
        const auto copy = copyForBackup(*store.value(), path);
        if (!copy)
            return copy.error().detail;
        if (const auto written = writeBackup(copy.value(), PhotoFolder(root + u"/shelf"_qs), path); !written)
            return written.error().detail;
        teller.say("file out/all" + QByteArray(backupEnd.data(), backupEnd.size()) + ' ' + shaOfFile(path));
    }
    if (const auto staged = stageRestoring(path, root + u"/other"_qs); !staged)
        return staged.error().detail;
    teller.state("other", sum);
    if (const auto restored = finishRestoring(root + u"/other"_qs); !restored)
        return restored.error().detail;
    const auto store = openStore(root + u"/other"_qs);
    if (!store)
        return store.error().detail;
    const bool same = ledger::sumOf(storeFile(root + u"/other"_qs)) == sum;
    teller.state("other", sum);
    return same ? QString() : u"not what was backed up"_qs;
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 4)
        return 2;
    const QString root = QString::fromLocal8Bit(argv[1]);
    const Teller teller;
    deeds::Deeds deeds(root, QByteArray(argv[2]).toUInt());
    deeds.gotOut = [&](const QString &name) {
        teller.say("file " + name.toUtf8().toPercentEncoding("/") + ' ' + shaOfFile(root + u'/' + name));
    };
    for (int deed = 0; deed < QByteArray(argv[3]).toInt(); ++deed) {
        const deeds::Outcome outcome = deeds.next();
        if (outcome.end != deeds::End::Done)
            return broken(outcome.told);
        teller.state("shelf", ledger::sumOf(storeFile(deeds.shelf())));
    }
    deeds.close();
    if (!upgrade(teller, root + u"/old"_qs))
        return broken(u"the old store could not be upgraded"_qs);
    if (const QString fault = moveHouse(teller, root); !fault.isEmpty())
        return broken(fault);
    return 0;
}
