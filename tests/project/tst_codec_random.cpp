// SPDX-License-Identifier: MIT
//
// Round trips by chance and hostile files. What stands outside: RFC 8259 (JSON), RFC 3629 (UTF-8), and the
// promise of the format that nothing in a file is lost. All seeds are fixed.
#include "project/codec.h"
#include "randomproject.h"

#include "testing.h"
#include <QFile>

using namespace matside;

namespace {

std::string example()
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

/// Reads a file; where that works, writing settles after one pass. True when it was readable.
bool settles(const std::string &text)
{
    const auto read = readProject(text);
    if (!read.ok()) {
        if (read.error().problem.code.empty())
            qFatal("a refusal without a code");
        return false;
    }
    const std::string once = writeProject(read.value().project);
    const auto again = readProject(once);
    if (!again.ok() || writeProject(again.value().project) != once)
        qFatal("writing did not settle: %s", text.c_str());
    return true;
}

} // namespace

class CodecRandomTest : public QObject {
    Q_OBJECT
private slots:
    void anyProjectComesBackWhole();
    void everyEditLeavesTheRestAlone();
    void everyCutShortExampleIsRefused();
    void anyChangedByteIsRefusedOrSettles();
    void manyChangedBytesAreRefusedOrSettle();
    void wrongUtf8IsRefused_data();
    void wrongUtf8IsRefused();
};

void CodecRandomTest::anyProjectComesBackWhole()
{
    for (std::uint64_t seed = 1; seed <= rounds(2500); ++seed) {
        const Project project = RandomProject(seed).project();
        const std::string written = writeProject(project);
        const auto read = readProject(written);
        QVERIFY2(read.ok(), qPrintable(QString::number(seed)));
        for (const Problem &problem : read.value().problems)
            QFAIL(qPrintable(
                QStringLiteral("seed %1: %2 %3")
                    .arg(seed)
                    .arg(QString::fromStdString(problem.at), QString::fromStdString(problem.code))));
        QVERIFY2(read.value().project == project, written.c_str());
        QCOMPARE(writeProject(read.value().project), written);
    }
}

void CodecRandomTest::everyEditLeavesTheRestAlone()
{
    for (std::uint64_t seed = 1; seed <= rounds(300); ++seed) {
        Project project = RandomProject(seed).project();
        const std::string written = writeProject(project);
        const Length gap = Length::ticks(static_cast<std::int64_t>(seed) * 331);
        project.strip.gap = gap;
        project.sashing.finished.reset();
        const std::string edited =
            applyEdits(written, {{"/strip/gap", gap}, {"/sashing/finished", Remove{}}}, project.system);
        const auto read = readProject(edited);
        QVERIFY(read.ok() && read.value().problems.empty());
        QVERIFY2(read.value().project == project, edited.c_str());
    }
}

void CodecRandomTest::everyCutShortExampleIsRefused()
{
    const std::string whole = example();
    QVERIFY(whole.size() > 3000);
    const std::size_t end = whole.find_last_of('}');
    for (std::size_t length = 0; length <= end; ++length) {
        const auto read = readProject(std::string_view(whole).substr(0, length));
        QVERIFY(!read.ok());
        QCOMPARE(read.error().problem.code, std::string("not-utf8-or-json"));
    }
    QVERIFY(readProject(std::string_view(whole).substr(0, end + 1)).ok());
}

void CodecRandomTest::anyChangedByteIsRefusedOrSettles()
{
    const std::string whole = example();
    std::mt19937_64 engine(20'31);
    std::uint64_t readable = 0;
    const std::uint64_t times = rounds(20'000);
    for (std::uint64_t i = 0; i < times; ++i) {
        std::string changed = whole;
        changed[engine() % changed.size()] = static_cast<char>(engine());
        readable += settles(changed) ? 1U : 0U;
    }
    QVERIFY(readable > times / 20 && readable < times);
}

void CodecRandomTest::manyChangedBytesAreRefusedOrSettle()
{
    static const std::string useful = "{}[]\",:0123456789.-+eE nulltrfas/\\u\xC3\xA9\xF0\x80";
    std::mt19937_64 engine(77);
    for (std::uint64_t i = 0; i < rounds(4000); ++i) {
        std::string changed = writeProject(RandomProject(i + 1).project());
        for (std::uint64_t left = 1 + engine() % 4; left > 0; --left) {
            const std::size_t at = engine() % changed.size();
            switch (engine() % 3) {
            case 0:
                changed[at] = useful[engine() % useful.size()];
                break;
            case 1:
                changed.insert(at, 1, useful[engine() % useful.size()]);
                break;
            default:
                changed.erase(at, 1 + engine() % 3);
            }
        }
        (void)settles(changed);
    }
}

void CodecRandomTest::wrongUtf8IsRefused_data()
{
    QTest::addColumn<QByteArray>("bytes");
    // RFC 3629, section 3: no bare continuation, no overlong form, no surrogate, nothing past U+10FFFF.
    QTest::newRow("bare continuation") << QByteArray("\x80");
    QTest::newRow("cut short") << QByteArray("\xE2\x88");
    QTest::newRow("overlong slash") << QByteArray("\xC0\xAF");
    QTest::newRow("overlong in three") << QByteArray("\xE0\x80\xAF");
    QTest::newRow("surrogate") << QByteArray("\xED\xA0\x80");
    QTest::newRow("past the last") << QByteArray("\xF4\x90\x80\x80");
    QTest::newRow("never a byte") << QByteArray("\xFF");
    // RFC 8259, sections 7 and 8.2: control characters are escaped, and half a pair names no character.
    QTest::newRow("bare control") << QByteArray("\x01");
    QTest::newRow("half a pair") << QByteArray("\\uD800");
}
void CodecRandomTest::wrongUtf8IsRefused()
{
    QFETCH(QByteArray, bytes);
    for (const char *place : {"\"name\"", "\"x\""}) {
        const std::string text = std::string("{\"format\":\"matside-project\",\"version\":1,") + place +
                                 ":\"a" + bytes.toStdString() + "b\"}";
        const auto read = readProject(text);
        QVERIFY(!read.ok());
        QCOMPARE(read.error().problem.code, std::string("not-utf8-or-json"));
    }
}

QTEST_GUILESS_MAIN(CodecRandomTest)
#include "tst_codec_random.moc"
