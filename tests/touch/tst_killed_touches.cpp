// SPDX-License-Identifier: MIT
//
// A copy of this program works the piece by touches and is killed at a random instant, again and again on the
// same folder. Every step the screen had shown as done is done when the data is opened again, and the screen
// goes on where it should.
#include "app/wording.h"
#include "eyes.h"
#include "faults/disk/model.h"
#include "maker.h"
#include "piece.h"
#include "warnings.h"

#include "testing.h"
#include <QProcess>
#include <QQuickItem>
#include <QTemporaryDir>

#include <cstdio>
#include <random>
#include <thread>

#include <fcntl.h>
#include <unistd.h>

using namespace matside;
using namespace touching;

namespace {

unsigned numberFrom(const char *variable, unsigned otherwise)
{
    bool ok = false;
    const unsigned number = qEnvironmentVariable(variable).toUInt(&ok);
    return ok ? number : otherwise;
}

/// To the recorder of the disk where it listens, else to whoever started this.
void say(const std::string &line)
{
    static const int recorder =
        qEnvironmentVariableIsSet(disk::saidVariable)
            ? ::open(qgetenv(disk::saidVariable).constData(), O_WRONLY | O_CREAT | O_CLOEXEC, 0600)
            : -1;
    if (recorder >= 0 && ::write(recorder, line.data(), line.size()) < 0)
        std::abort();
    std::printf("%s\n", line.c_str());
    std::fflush(stdout);
}

/// Works until it is killed or nothing is left: says what the screen shows as done.
int work(const QString &folder)
{
    Warnings warnings;
    Program program;
    Maker maker(program);
    if (!program.open(folder, QSize(1280, 800)))
        return 3;
    maker.shownAsDone = [](const std::string &step, std::int64_t done) {
        say("shown " + std::to_string(done) + ' ' + step);
    };
    say("open");
    while (program.papers().next) {
        if (!maker.workOnce()) {
            std::fputs(qPrintable(maker.trouble()), stderr);
            return 4;
        }
    }
    program.close();
    if (const QString heard = warnings.taken(); !heard.isEmpty())
        return 5;
    say("finished");
    return 0;
}

/// What the screen showed: how often each step was done. A cloth straightened for the trial is straight.
using Record = std::map<std::string, std::int64_t>;

std::string withoutTrial(const std::string &step)
{
    constexpr std::string_view straight = "trial/straighten";
    return step.starts_with(straight) ? step.substr(6) : step;
}

void hear(Record &record, const QByteArray &output)
{
    // A line cut short says nothing.
    for (const QByteArray &line : output.left(output.lastIndexOf('\n') + 1).split('\n')) {
        const QList<QByteArray> words = line.split(' ');
        if (words.size() >= 3 && words[0] == "shown")
            record[withoutTrial(line.mid(line.indexOf(' ', 6) + 1).toStdString())] = words[1].toLongLong();
    }
}

/// What was shown and is not done, or done and was not shown; then the record follows what is done.
QByteArray faultIn(Record &record, const Papers &papers)
{
    if (papers.steps.empty())
        return "nothing can be read";
    QByteArrayList lost;
    QByteArrayList beyond;
    for (const Step &step : papers.steps) {
        std::int64_t &said = record[withoutTrial(step.id)];
        const QByteArray told = QByteArray::fromStdString(step.id) + ' ' +
                                QByteArray::number(qlonglong(said)) + " shown, " +
                                QByteArray::number(qlonglong(step.done)) + " done";
        if (step.done < said)
            lost.append(told);
        for (std::int64_t more = said; more < step.done; ++more)
            beyond.append(told);
        said = step.done;
    }
    if (!lost.isEmpty())
        return "lost: " + lost.join("; ");
    // One touch can have been saved and not yet shown.
    return beyond.size() <= 1 ? QByteArray() : "more than was shown: " + beyond.join("; ");
}

/// Lets a copy of this program work, and write down what it does to the disk, until it has shown so many
/// steps.
bool recordWork(const QString &folder, const QString &beside, qsizetype steps)
{
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("LD_PRELOAD"), QStringLiteral(DISK_RECORDER));
    environment.insert(QString::fromLatin1(disk::rootVariable), folder);
    environment.insert(QString::fromLatin1(disk::logVariable), beside + QStringLiteral("/record"));
    environment.insert(QString::fromLatin1(disk::saidVariable), beside + QStringLiteral("/said"));
    QProcess worker;
    worker.setProcessEnvironment(environment);
    worker.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    worker.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--work"), folder});
    QByteArray told;
    while (told.count("shown") < steps && worker.waitForReadyRead(120'000))
        told += worker.readAllStandardOutput();
    worker.kill();
    return worker.waitForFinished() && told.count("shown") >= steps;
}

/// Lets a copy of this program work for so long once its window is open; gives what it said until it was
/// killed, or nothing when it fell by itself.
QByteArray workAndKill(const QString &folder, int ms)
{
    QProcess worker;
    worker.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    worker.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--work"), folder});
    if (!worker.waitForStarted() || !worker.waitForReadyRead(60000))
        return {};
    std::this_thread::sleep_for(std::chrono::milliseconds(ms));
    worker.kill();
    if (!worker.waitForFinished())
        return {};
    const QByteArray told = worker.readAllStandardOutput();
    return worker.exitStatus() == QProcess::CrashExit || told.endsWith("finished\n") ? told : QByteArray();
}

} // namespace

class KilledTouchesTest : public QObject {
    Q_OBJECT

private slots:
    void whatWasShownAsDoneIsDone();
    void aPowerCutTakesNothingThatWasShown();

private:
    Warnings m_warnings;
};

void KilledTouchesTest::whatWasShownAsDoneIsDone()
{
    const unsigned seed = numberFrom("MATSIDE_SEED", 20251125);
    const int kills = static_cast<int>(numberFrom("MATSIDE_COUNT", 6));
    std::mt19937 random(seed);
    int killed = 0;
    while (killed < kills) {
        // A piece that was finished makes way for a new one.
        QTemporaryDir folder;
        Program program;
        Maker maker(program);
        QVERIFY(program.open(folder.path(), QSize(1280, 800)));
        QVERIFY2(beginSmallPiece(maker), qPrintable(maker.trouble()));
        program.close();
        Record record;
        maker.shownAsDone = [&](const std::string &step, std::int64_t done) {
            record[withoutTrial(step)] = done;
        };
        for (bool finished = false; !finished && killed < kills; ++killed) {
            const QByteArray where = qPrintable(QStringLiteral("seed %1, kill %2").arg(seed).arg(killed));
            const QByteArray told = workAndKill(folder.path(), 500 + static_cast<int>(random() % 3500));
            QVERIFY2(told.startsWith("open\n"), where);
            hear(record, told);
            QVERIFY2(program.open(folder.path(), QSize(1280, 800)), where);
            const QByteArray fault = faultIn(record, program.papers());
            QVERIFY2(fault.isEmpty(), where + ": " + fault);
            // And the work goes on there.
            finished = !program.papers().next;
            if (!finished)
                QVERIFY2(maker.workOnce(), qPrintable(maker.trouble()));
            program.close();
        }
        QVERIFY2(!record.empty(), "no touch was seen before a kill");
    }
    const QString heard = m_warnings.taken();
    QVERIFY2(heard.isEmpty(), qPrintable(heard));
    qInfo("%d kills", killed);
}

/// The same program, its work written down as it reaches the disk; then the power fails at random instants of
/// it.
void KilledTouchesTest::aPowerCutTakesNothingThatWasShown()
{
    const unsigned seed = numberFrom("MATSIDE_SEED", 20251125);
    std::mt19937 random(seed);
    const QTemporaryDir folder, beside;
    Program program;
    Maker maker(program);
    QVERIFY(program.open(folder.path(), QSize(1280, 800)));
    QVERIFY2(beginSmallPiece(maker), qPrintable(maker.trouble()));
    const QString piece = program.room().workspace().id();
    Record atFirst;
    for (const Step &step : program.papers().steps)
        atFirst[withoutTrial(step.id)] = step.done;
    program.close();

    disk::Disk disk(folder.path().toStdString());
    constexpr qsizetype enough = 8;
    QVERIFY2(recordWork(folder.path(), beside.path(), enough), "the worker fell, or showed too little");
    const auto events = disk::readRecord(beside.filePath(QStringLiteral("record")).toStdString());
    QByteArray shown;
    std::multiset<std::size_t> instants;
    for (unsigned cuts = numberFrom("MATSIDE_COUNT", 6) * 10; cuts > 0; --cuts)
        instants.insert(random() % (events.size() + 1));
    std::size_t done = 0;
    for (const std::size_t instant : instants) {
        for (; done < instant; ++done) {
            QVERIFY2(disk.apply(events[done]), "the record does not fit");
            if (events[done].kind == disk::Kind::Said)
                shown += QByteArray::fromStdString(events[done].first) + '\n';
        }
        const disk::Temper temper = disk::anyTemper(random);
        const QByteArray where = qPrintable(QStringLiteral("seed %1, instant %2, ").arg(seed).arg(instant));
        const QTemporaryDir after;
        disk.layAfterCut(after.path().toStdString(), temper, random);
        Record record = atFirst;
        hear(record, shown);
        auto store = openStore(after.path());
        QVERIFY2(store && store.value()->canWrite(), where + told(temper).c_str());
        const QByteArray fault = faultIn(record, papersIn(*store.value(), piece));
        QVERIFY2(fault.isEmpty(), where + told(temper).c_str() + ": " + fault);
    }
    QVERIFY(shown.count("shown") > enough / 2);
    qInfo("%zu cuts of %zu events, %lld steps shown", instants.size(), events.size(),
          qlonglong(shown.count("shown")));
}

int main(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 3 && arguments[1] == QStringLiteral("--work"))
        return work(arguments[2]);
    KilledTouchesTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_killed_touches.moc"
