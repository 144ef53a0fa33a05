// SPDX-License-Identifier: MIT
//
// A copy of this program works the piece by touches and is killed at a random instant, again and again on the
// same folder. Every step the screen had shown as done is done when the data is opened again, and the screen
// goes on where it should.
#include "app/wording.h"
#include "eyes.h"
#include "maker.h"
#include "piece.h"
#include "warnings.h"

#include <QProcess>
#include <QQuickItem>
#include <QTemporaryDir>
#include <QtTest>

#include <cstdio>
#include <random>
#include <thread>

using namespace matside;
using namespace touching;

namespace {

unsigned numberFrom(const char *variable, unsigned otherwise)
{
    bool ok = false;
    const unsigned number = qEnvironmentVariable(variable).toUInt(&ok);
    return ok ? number : otherwise;
}

void say(const std::string &line)
{
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

} // namespace

class TouchKillsTest : public QObject {
    Q_OBJECT

private slots:
    void whatWasShownAsDoneIsDone();
};

void TouchKillsTest::whatWasShownAsDoneIsDone()
{
    const unsigned seed = numberFrom("MATSIDE_SEED", 20251125);
    const int kills = static_cast<int>(numberFrom("MATSIDE_COUNT", 8));
    std::mt19937 random(seed);
    QTemporaryDir folder;
    Program program;
    {
        Maker maker(program);
        QVERIFY(program.open(folder.path(), QSize(1280, 800)));
        QVERIFY2(beginSmallPiece(maker), qPrintable(maker.trouble()));
        program.close();
    }
    Record record;
    std::size_t struck = 0;
    bool finished = false;
    for (int kill = 0; kill < kills && !finished; ++kill) {
        const QByteArray where = qPrintable(QStringLiteral("seed %1, kill %2").arg(seed).arg(kill));
        QProcess worker;
        worker.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        worker.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--work"), folder.path()});
        // Not before its window is open.
        QVERIFY2(worker.waitForStarted() && worker.waitForReadyRead(60000), where);
        std::this_thread::sleep_for(std::chrono::milliseconds(500 + random() % 3500));
        worker.kill();
        QVERIFY2(worker.waitForFinished(), where);
        const QByteArray told = worker.readAllStandardOutput();
        finished = told.endsWith("finished\n");
        QVERIFY2(finished || worker.exitStatus() == QProcess::CrashExit, where + ": " + told);
        hear(record, told);
        struck += record.empty() ? 0U : 1U;

        QVERIFY2(program.open(folder.path(), QSize(1280, 800)), where);
        const Papers papers = program.papers();
        QVERIFY2(!papers.steps.empty(), where);
        QByteArrayList beyond;
        for (const Step &step : papers.steps) {
            std::int64_t &said = record[withoutTrial(step.id)];
            QVERIFY2(step.done >= said, where + ", " + QByteArray::fromStdString(step.id));
            if (step.done > said)
                beyond.append(QByteArray::fromStdString(step.id) + ' ' +
                              QByteArray::number(qlonglong(step.done - said)));
            said = step.done;
        }
        // One touch can have been saved and not yet shown.
        QVERIFY2(beyond.isEmpty() || (beyond.size() == 1 && beyond[0].endsWith(" 1")),
                 where + ", more than was shown: " + beyond.join(", "));
        // And the work goes on there.
        Maker maker(program);
        maker.shownAsDone = [&](const std::string &step, std::int64_t done) {
            record[withoutTrial(step)] = done;
        };
        if (papers.next)
            QVERIFY2(maker.workOnce(), qPrintable(maker.trouble()));
        program.close();
    }
    QVERIFY2(struck > 0, "no touch was seen before a kill");
    qInfo("%d kills", kills);
}

int main(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 3 && arguments[1] == QStringLiteral("--work"))
        return work(arguments[2]);
    TouchKillsTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_touch_kills.moc"
