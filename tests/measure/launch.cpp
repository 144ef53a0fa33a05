// SPDX-License-Identifier: MIT
#include "launch.h"

#include <QElapsedTimer>
#include <QFile>
#include <QProcess>

#include <algorithm>

namespace measure {

namespace {

constexpr int patience = 20'000; // ms
constexpr int settling = 1'000;  // ms

/// VmHWM of a running process, in kB; 0 when it cannot be read (proc(5)).
double peakOf(qint64 process)
{
    QFile status(QStringLiteral("/proc/%1/status").arg(process));
    if (!status.open(QIODevice::ReadOnly))
        return 0;
    for (const QByteArray &line : status.readAll().split('\n'))
        if (line.startsWith("VmHWM:"))
            return line.mid(6).simplified().split(' ').front().toDouble();
    return 0;
}

struct One {
    std::chrono::steady_clock::duration firstFrame{};
    double peak = 0;
};

std::optional<One> launchOnce(const Launch &launch)
{
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    environment.insert(QStringLiteral("QT_QUICK_BACKEND"), QStringLiteral("software"));
    environment.insert(QStringLiteral("QT_LOGGING_RULES"),
                       QStringLiteral("qt.scenegraph.time.renderloop=true"));
    environment.insert(QStringLiteral("QT_FORCE_STDERR_LOGGING"), QStringLiteral("1"));
    process.setProcessEnvironment(environment);
    process.setStandardOutputFile(QProcess::nullDevice());
    process.setReadChannel(QProcess::StandardError);
    One one;
    QByteArray said;
    const auto begun = std::chrono::steady_clock::now();
    process.start(launch.program, launch.arguments);
    while (!said.contains("rame rendered")) {
        if (std::chrono::steady_clock::now() - begun > std::chrono::milliseconds(patience) ||
            (!process.waitForReadyRead(patience) && process.state() == QProcess::NotRunning)) {
            std::fprintf(stderr, "%s drew nothing: %s\n", qPrintable(launch.program), said.constData());
            process.kill();
            process.waitForFinished();
            return std::nullopt;
        }
        one.firstFrame = std::chrono::steady_clock::now() - begun;
        said += process.readAllStandardError();
    }
    // What it draws and loads right after belongs to the start, too.
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < settling)
        (void)process.waitForReadyRead(int(settling - timer.elapsed()));
    one.peak = peakOf(process.processId());
    process.terminate();
    if (!process.waitForFinished(patience)) {
        process.kill();
        process.waitForFinished();
    }
    return one.peak > 0 ? std::optional(one) : std::nullopt;
}

} // namespace

std::optional<std::array<Launched, 2>> launchBoth(const std::array<Launch, 2> &both, int rounds)
{
    std::array<Launched, 2> launched;
    std::array<std::vector<double>, 2> peaks;
    for (int round = -1; round < rounds; ++round)
        for (std::size_t which = 0; which < both.size(); ++which) {
            const auto one = launchOnce(both[which]);
            if (!one)
                return std::nullopt;
            if (round < 0)
                continue; // the first of each reads its libraries from the disk
            launched[which].firstFrame.add(one->firstFrame);
            peaks[which].push_back(one->peak * 1024 / 1e6);
        }
    for (std::size_t which = 0; which < both.size(); ++which) {
        std::sort(peaks[which].begin(), peaks[which].end());
        launched[which].peak = peaks[which][peaks[which].size() / 2];
    }
    return launched;
}

} // namespace measure
