// SPDX-License-Identifier: MIT
//
// The whole demo by touch alone, from the empty shelf over the first cut to the last stitch of the binding
// and the last look, on all three sizes of screen; on the way the program is killed outright and the work
// goes on.
#include "eyes.h"
#include "maker.h"
#include "warnings.h"

#include "testing.h"
#include <QProcess>
#include <QTemporaryDir>

#include <cstdio>
#include <thread>

using namespace matside;
using namespace touching;

namespace {

constexpr QSize sizes[] = {QSize(1280, 800), QSize(800, 1280), QSize(1024, 600)};

/// So many steps, then the program is closed and started again on another screen.
constexpr int stepsAStart = 60;
/// So many steps, then another copy of the program works on and is killed in the middle of it.
constexpr int stepsAKill = 90;

/// Works until it is killed.
int work(const QString &folder)
{
    Program program;
    Maker maker(program);
    if (!program.open(folder, sizes[0]))
        return 3;
    std::puts("open");
    std::fflush(stdout);
    while (program.papers().next && maker.workOnce()) {
    }
    return 4;
}

/// The copy was open and working, and did not end by itself.
bool workAndKill(const QString &folder)
{
    QProcess worker;
    worker.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    worker.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--work"), folder});
    if (!worker.waitForStarted() || !worker.waitForReadyRead(120'000))
        return false;
    std::this_thread::sleep_for(std::chrono::milliseconds(2500));
    worker.kill();
    return worker.waitForFinished() && worker.exitStatus() == QProcess::CrashExit;
}

std::int64_t allDone(const Papers &papers)
{
    std::int64_t all = 0;
    for (const Step &step : papers.steps)
        all += step.done;
    return all;
}

} // namespace

class DemoTest : public QObject {
    Q_OBJECT

private slots:
    void fromTheFirstCutToTheLastStitch();

private:
    Warnings m_warnings;
};

void DemoTest::fromTheFirstCutToTheLastStitch()
{
    QTemporaryDir folder;
    Program program;
    Maker maker(program);
    QVERIFY(program.open(folder.path(), sizes[0]));
    QVERIFY2(maker.touch(QStringLiteral("Open the demo")), qPrintable(maker.trouble()));
    QTRY_VERIFY(program.papers().next.has_value());
    const std::size_t planned = program.papers().steps.size();
    QCOMPARE(program.papers().project.blocks.columns * program.papers().project.blocks.rows, 18);

    int done = 0;
    int kills = 0;
    std::size_t starts = 1;
    std::string last;
    bool bound = false;
    while (const Step *step = program.papers().nextStep()) {
        last = step->id;
        bound = bound || step->does == Does::SewBinding;
        QVERIFY2(maker.workOnce(), qPrintable(maker.trouble()));
        QVERIFY(++done < 2000);
        const bool kill = done % stepsAKill == 0;
        if (!kill && done % stepsAStart != 0)
            continue;
        const std::int64_t before = allDone(program.papers());
        program.close();
        if (kill) {
            QVERIFY(workAndKill(folder.path()));
            ++kills;
        }
        QVERIFY(program.open(folder.path(), sizes[starts++ % std::size(sizes)]));
        QVERIFY(allDone(program.papers()) >= before); // nothing that was shown is lost
    }
    const Papers papers = program.papers();
    QVERIFY(bound && kills > 0 && starts > 3);
    QCOMPARE(QByteArray::fromStdString(last), QByteArray("last-look"));
    QVERIFY(papers.steps.size() >= planned - 20); // the trial's own steps stay among them
    for (const Step &step : papers.steps)
        QVERIFY2(step.done == step.count, step.id.c_str());
    QVERIFY(papers.project.made.testBlock && papers.project.made.testJoin && papers.project.made.pins);
    program.close();
    qInfo("%d steps by touch, %d kills, %zu starts", done, kills, starts);
    const QString heard = m_warnings.taken();
    QVERIFY2(heard.isEmpty(), qPrintable(heard));
}

int main(int argc, char **argv)
{
    // Long: QtTest would end it after five minutes.
    qputenv("QTEST_FUNCTION_TIMEOUT", "7200000");
    QGuiApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 3 && arguments[1] == QStringLiteral("--work"))
        return work(arguments[2]);
    DemoTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_demo.moc"
