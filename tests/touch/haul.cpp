// SPDX-License-Identifier: MIT
//
// The long haul: hours of a maker's work by touches, in one process, and what it holds after every lap. Run
// through sh tests/long/haul, which says how.
#include "day.h"
#include "ledger.h"
#include "main/scenes.h"
#include "project/codec.h"
#include "warnings.h"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QTemporaryDir>
#include <QTimer>

#include <algorithm>
#include <cstdio>

using namespace matside;
using namespace touching;

namespace {

constexpr QSize tablet(1280, 800);
constexpr int pictures = 6;
/// Touches of the action between two samples.
constexpr int actionsALap = 12;
/// Growth from lap to lap that is let pass. Samples differ by about as much, by what the allocator and the
/// collector of QML happen to hold.
constexpr double mostKib = 24, mostHandles = 0.02;
/// Over a few laps caches still fill: the short form only finds what would be gross.
constexpr double mostKibShort = 4096, mostHandlesShort = 0.5;

struct Asked {
    int laps = 1;
    unsigned seed = 1;
    bool brief = false;
};

/// Photographs of two million pixels, each another.
bool layPictures(const QString &folder)
{
    for (int number = 1; number <= pictures; ++number) {
        QImage image(1600, 1200, QImage::Format_RGB32);
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                image.setPixel(x, y, qRgb((x * number) / 8, (y + x / number) / 8, (x ^ y) / (8 + number)));
        if (!image.save(folder + QStringLiteral("/picture-%1.jpg").arg(number)))
            return false;
    }
    return true;
}

/// The demo project on a shelf of its own; a smaller one of the same kind for the short form. Its name.
QString layPiece(const QString &folder, bool brief)
{
    QFile file(QStringLiteral(DEMO_PROJECT));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    auto read = readProject(file.readAll().toStdString());
    if (!read.ok())
        return {};
    Project project = read.value().project;
    if (brief) {
        project.blocks.columns = 2;
        project.blocks.rows = 1;
        project.blocks.spare = 0;
    }
    auto store = openStore(folder);
    if (!store)
        return {};
    const auto id = store.value()->create(QString::fromStdString(writeProject(project)));
    if (!id || !store.value()->setSetting(settings::openProject, id.value()))
        return {};
    return QString::fromStdString(project.name);
}

/// What was held, lap by lap, and how many laps passed until a piece was finished (none: all of them).
struct Hauled {
    std::vector<Holding> samples;
    std::size_t first = 0;
    /// The laps in which caches fill: the first quarter, and all of the first piece, for until it is finished
    /// there are pages that were never open; the quarter alone where no piece was finished.
    [[nodiscard]] std::size_t warmUp() const
    {
        return std::max(samples.size() / 4, first < samples.size() ? first : 0);
    }
};

std::vector<double> afterWarmUp(const Hauled &hauled, std::int64_t Holding::*what)
{
    const std::vector<Holding> &samples = hauled.samples;
    std::vector<double> later;
    for (std::size_t lap = hauled.warmUp(); lap < samples.size(); ++lap)
        later.push_back(static_cast<double>(samples[lap].*what));
    return later;
}

int judge(const Hauled &hauled, const Asked &asked)
{
    const double kib = growth(afterWarmUp(hauled, &Holding::kib));
    const double heap = growth(afterWarmUp(hauled, &Holding::heap));
    const double handles = growth(afterWarmUp(hauled, &Holding::handles));
    const double threads = growth(afterWarmUp(hauled, &Holding::threads));
    const double most = asked.brief ? mostKibShort : mostKib;
    const double mostOpen = asked.brief ? mostHandlesShort : mostHandles;
    std::printf("growth a lap after the first %zu: memory %.1f KiB (at most %.0f), heap %.1f KiB, handles "
                "%.3f (at most %.2f), "
                "threads %.3f\n",
                hauled.warmUp(), kib, most, heap, handles, mostOpen, threads);
    if (kib <= most && handles <= mostOpen && threads <= mostOpen)
        return 0;
    std::printf("haul: it grows; again with --seed %u --count %d\n", asked.seed, asked.laps);
    return 1;
}

int haul(const Asked &asked)
{
    Warnings warnings;
    const QTemporaryDir data;
    const QString piece = layPiece(data.path(), asked.brief);
    Program program;
    if (piece.isEmpty() || !program.open(data.path(), tablet))
        return std::fputs("haul: the program could not be opened\n", stderr), 1;
    Maker maker(program);
    Day day(program, maker, piece, pictures, asked.seed);
    Hauled hauled;
    for (int lap = 1; lap <= asked.laps; ++lap) {
        if (!day.lap(asked.brief ? actionsALap / 2 : actionsALap)) {
            std::printf("haul: lap %d: %s\n", lap, qPrintable(day.trouble()));
            return 1;
        }
        settle(200);
        hauled.samples.push_back(holding());
        const Holding &held = hauled.samples.back();
        if (day.pieces() == 0)
            hauled.first = hauled.samples.size();
        std::printf("lap %3d: %5.1f h of work, %2d pieces, %3d photographs, %6lld KiB (heap %lld), %lld "
                    "handles, %lld threads\n",
                    lap, day.minutes() / 60, day.pieces(), day.photographs(),
                    static_cast<long long>(held.kib), static_cast<long long>(held.heap),
                    static_cast<long long>(held.handles), static_cast<long long>(held.threads));
        std::fflush(stdout);
        if (const QString heard = warnings.taken(); !heard.isEmpty()) {
            std::printf("haul: lap %d: %s\n", lap, qPrintable(heard));
            return 1;
        }
    }
    std::printf("%d touches of the action, %.1f hours of a maker's work, %d pieces finished\n", day.actions(),
                day.minutes() / 60, day.pieces());
    return judge(hauled, asked);
}

} // namespace

int main(int argc, char **argv)
{
    if (argc != 4)
        return std::fputs("haul LAPS SEED long|short\n", stderr), 2;
    // Her pictures lie in a home of her own.
    const QTemporaryDir home;
    qputenv("HOME", home.path().toLocal8Bit());
    qunsetenv("XDG_CONFIG_HOME");
    if (!QDir(home.path()).mkpath(QStringLiteral("Pictures")) ||
        !layPictures(home.filePath(QStringLiteral("Pictures"))))
        return std::fputs("haul: no pictures could be laid down\n", stderr), 1;
    QGuiApplication app(argc, argv);
    const Asked asked{std::atoi(argv[1]), static_cast<unsigned>(std::atoll(argv[2])),
                      QByteArray(argv[3]) == "short"};
    // Within the program's own loop: what is deleted later is deleted.
    QTimer::singleShot(0, &app, [&] { QCoreApplication::exit(haul(asked)); });
    return QGuiApplication::exec();
}
