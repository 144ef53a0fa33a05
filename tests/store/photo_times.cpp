// SPDX-License-Identifier: MIT
//
// photo_times COUNT SEED: logs so many notes with a photograph of 12 MP each and prints how long each took,
// from the file to the committed note with its thumbnail, and the most memory the process had. It judges
// nothing.
#include "project/codec.h"
#include "store/photohelp.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>

using namespace matside;
using namespace photohelp;

namespace {

QString documentOf(std::int64_t number)
{
    Project project = freshProject(System::Inch);
    project.name = "Timed";
    project.slack = Length::ticks(number);
    return QString::fromStdString(writeProject(project));
}

/// The most memory held so far, in MB, as the system tells it; 0 where it does not.
qint64 peakMemory()
{
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly))
        return 0;
    for (const QByteArray &line : status.readAll().split('\n'))
        if (line.startsWith("VmHWM:"))
            return line.mid(6).trimmed().split(' ').front().toLongLong() / 1024;
    return 0;
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 3)
        return 2;
    const int count = QString::fromLocal8Bit(argv[1]).toInt();
    const auto seed = QString::fromLocal8Bit(argv[2]).toUInt();
    QTemporaryDir folder;
    auto store = openStore(folder.path());
    if (!store)
        return 3;
    const auto id = store.value()->create(documentOf(0));
    if (!id)
        return 4;
    NoteBook book(*store.value());
    // One grainy picture of 12 MP; what follows its end differs, so that every one is a file of its own.
    const QByteArray whole = encoded(picture(seed, {4000, 3000}, true));
    std::printf("one photograph: %.1f MB; memory with it drawn: %lld MB\n", double(whole.size()) / 1e6,
                static_cast<long long>(peakMemory()));
    std::vector<double> times;
    for (int number = 1; number <= count; ++number) {
        const QByteArray bytes = whole + QByteArray::number(number);
        const QString before = store.value()->load(id.value()).value();
        const QString after = documentOf(number);
        QElapsedTimer timer;
        timer.start();
        const auto photo = book.folder().keep(bytes);
        if (!photo)
            return 5;
        if (!book.keepDraft(id.value(), QStringLiteral("A1"), Face::Front, photo.value()) ||
            !book.log(id.value(),
                      {{QStringLiteral("edit"), QStringLiteral("log"), QStringLiteral("[]")}, before, after},
                      noteOf(QStringLiteral("A1"), photo.value())))
            return 6;
        times.push_back(double(timer.nsecsElapsed()) / 1e6);
    }
    std::sort(times.begin(), times.end());
    if (!times.empty())
        std::printf("%d notes: median %.0f ms, slowest %.0f ms; memory at most %lld MB\n", count,
                    times[times.size() / 2], times.back(), static_cast<long long>(peakMemory()));
    return 0;
}
