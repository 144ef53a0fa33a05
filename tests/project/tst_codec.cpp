// SPDX-License-Identifier: MIT
#include "project/codec.h"

#include "testing.h"
#include <QFile>
#include <nlohmann/json.hpp>

using namespace matside;

namespace {

std::string example()
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

std::string small(const std::string &more)
{
    return R"({"format":"matside-project","version":1,"blocks":{"columns":3,"rows":3,"width":"6 in"})" +
           (more.empty() ? "" : "," + more) + "}";
}

} // namespace

class CodecTest : public QObject {
    Q_OBJECT
private slots:
    void exampleComesBackAsItWent();
    void unknownKeysAreKeptAtEveryLevel();
    void secondExportIsTheSameToTheByte();
    void itIsSetOutAsTheLibrarySetsItOut();
    void whereTheTextBreaksIsTold();
    void everythingMadeComesBack();
    void refusesWhatItCannotRead_data();
    void refusesWhatItCannotRead();
    void namesThePlaceOfEachFault_data();
    void namesThePlaceOfEachFault();
    void everyOfferOfTheCodecMendsItsFault();
    void editsMakeWhatIsMissingAndNothingElse();
    void numbersAreKeptToTheDigit();
    void bareNumbersAreInTheProjectsUnit();
    void aDoubledKeyIsNamedWhereItStands();
    void aWideFileIsReadInOneGo();
};

void CodecTest::exampleComesBackAsItWent()
{
    const auto read = readProject(example());
    QVERIFY(read.ok());
    QCOMPARE(read.value().problems.size(), std::size_t(0));
    const Project &project = read.value().project;
    QCOMPARE(project.name, std::string("Reading-room runner"));
    QCOMPARE(project.blocks.columns, 6);
    QCOMPARE(project.drawUp.along, Share{20'000});
    QCOMPARE(project.cloths.size(), std::size_t(8));
    QCOMPARE(*project.cloths[0].price, std::string("9.5"));
    QCOMPARE(project.hoop.field->along, Length::inches(9, 1, 4));
    const auto again = readProject(writeProject(project));
    QVERIFY(again.ok());
    QCOMPARE(again.value().project, project);
}

void CodecTest::unknownKeysAreKeptAtEveryLevel()
{
    std::string text = example();
    for (const char *place : {"\"blocks\": {", "\"edge\": {", "\"hoop\": {", "\"strip\": {", "\"fold\": {",
                              "\"drawUp\": {", "\"sashing\": {", "\"table\": {"}) {
        const std::size_t at = text.find(place);
        QVERIFY2(at != std::string::npos, place);
        text.insert(at + std::string(place).size(), "\"strange\": {\"deep\": [1, 2.5, null, \"x\"]},");
    }
    text.insert(text.find("\"id\": \"ground\""), "\"strange\": true,");
    text.insert(text.find('{') + 1, "\"strangest\": \"\u00E9\",");
    const auto read = readProject(text);
    QVERIFY(read.ok());
    const std::string written = writeProject(read.value().project);
    std::size_t found = 0;
    for (std::size_t at = written.find("\"strange\""); at != std::string::npos;
         at = written.find("\"strange\"", at + 1))
        ++found;
    QCOMPARE(found, std::size_t(9));
    QVERIFY(written.find("\"strangest\": \"\u00E9\"") != std::string::npos);
}

void CodecTest::secondExportIsTheSameToTheByte()
{
    const std::string first = writeProject(readProject(example()).value().project);
    const std::string second = writeProject(readProject(first).value().project);
    QCOMPARE(second, first);
    for (const System system : {System::Inch, System::Metric}) {
        const std::string fresh = writeProject(freshProject(system));
        const auto read = readProject(fresh);
        QVERIFY(read.ok() && read.value().problems.empty());
        QCOMPARE(writeProject(read.value().project), fresh);
        QCOMPARE(read.value().project, freshProject(system));
    }
}

void CodecTest::itIsSetOutAsTheLibrarySetsItOut()
{
    // nlohmann_json, indented by two.
    const std::string text = writeProject(readProject(example()).value().project);
    const auto lines = [](const std::string &whole) {
        return QString::fromStdString(whole).trimmed().split(u'\n');
    };
    QCOMPARE(lines(text), lines(nlohmann::ordered_json::parse(text).dump(2)));
    // What is not there is not written.
    QVERIFY(text.find("spareInAll") == std::string::npos);
    Project project = freshProject(System::Inch);
    project.blocks.spareInAll = 2;
    QVERIFY(writeProject(project).find("\"spareInAll\": 2") != std::string::npos);
}

void CodecTest::whereTheTextBreaksIsTold()
{
    const auto read = readProject("{\n  \"format\": \"matside-project\",\n  \"version\": !1\n}\n");
    QVERIFY(!read.ok());
    QCOMPARE(std::get<std::int64_t>(read.error().problem.args.at(0)), std::int64_t(3));
    QCOMPARE(std::get<std::int64_t>(read.error().problem.args.at(1)),
             std::int64_t(14)); // at the sign, counted from 1
}

void CodecTest::everythingMadeComesBack()
{
    const std::string text = small(R"("made":{"cloths":[{"cloth":"a","usable":"39 in","prewashed":true}],
        "testBlock":{"sent":["6 in","6 in"],"outline":["5 7/8 in","5 15/16 in"]},
        "testJoin":{"seam":"1/2 in","gap":"-1/16 in","between":"31/32 in","loft":"1/8 in"},
        "trial":"put-off",
        "strips":[{"strip":1,"ended":"19 in","outlines":[{"from":"2 5/8 in","to":"9 5/8 in"}]}],
        "blocks":[{"block":"A1","strip":1,"place":1,"sides":["6 in","6 in","6 in","6 in"],
                   "diagonals":["8 5/8 in","8 3/8 in"],"state":"trimmed","replaces":"","notes":["n"]}],
        "rows":[{"row":"A","length":"21 in","joins":["7 in","14 in"]}],
        "cut":[{"cloth":"ground","does":"cut-strip","count":2,"spoiled":1}],
        "pins":{"in":12,"out":11}})");
    const auto read = readProject(text);
    QVERIFY(read.ok());
    QVERIFY2(read.value().problems.empty(),
             read.value().problems.empty() ? "" : read.value().problems[0].at.c_str());
    const Made &made = read.value().project.made;
    QVERIFY(made.started() && made.trialPutOff);
    QCOMPARE(*made.testJoin->gap, Length::inches(0, -1, 16));
    QCOMPARE(made.blocks[0].state, BlockState::Trimmed);
    QCOMPARE(made.rows[0].joins.size(), std::size_t(2));
    QCOMPARE(made.cut[0].spoiled, 1);
    QCOMPARE(readProject(writeProject(read.value().project)).value().project, read.value().project);
}

void CodecTest::refusesWhatItCannotRead_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<QByteArray>("code");
    const auto row = [](const char *name, const std::string &text, const char *code) {
        QTest::newRow(name) << QByteArray::fromStdString(text) << QByteArray(code);
    };
    row("empty", "", "not-utf8-or-json");
    row("not JSON", "plan", "not-utf8-or-json");
    row("bad UTF-8", "{\"format\":\"matside-project\",\"version\":1,\"name\":\"\xC3\x28\"}",
        "not-utf8-or-json");
    row("not a number", "{\"format\":\"matside-project\",\"version\":NaN}", "not-utf8-or-json");
    row("number beyond any", small("\"kits\":1e999"), "not-utf8-or-json");
    row("doubled key", small("\"seam\":\"1/2 in\",\"seam\":\"1/4 in\""), "doubled-key");
    row("too deep", std::string(100'000, '['), "too-deep");
    row("too large", std::string(5U << 20U, ' '), "file-too-large");
    row("another format", "{\"format\":\"something\",\"version\":1}", "not-a-project");
    row("a list", "[]", "not-a-project");
    row("no version", "{\"format\":\"matside-project\"}", "version-unknown");
    row("newer version", "{\"format\":\"matside-project\",\"version\":2}", "version-newer");
    row("far newer version", "{\"format\":\"matside-project\",\"version\":99999999999999999999}",
        "version-newer");
    std::string many = "{\"format\":\"matside-project\",\"version\":1,\"x\":[0";
    for (int i = 0; i < 30'000; ++i)
        many += ",0";
    row("too many values", many + "]}", "too-many-values");
    row("too long a text", small("\"name\":\"" + std::string(30'000, 'a') + "\""), "text-too-long");
}
void CodecTest::refusesWhatItCannotRead()
{
    QFETCH(QByteArray, text);
    QFETCH(QByteArray, code);
    const auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())});
    QVERIFY(!read.ok());
    QCOMPARE(QByteArray::fromStdString(read.error().problem.code), code);
}

void CodecTest::namesThePlaceOfEachFault_data()
{
    QTest::addColumn<QByteArray>("more");
    QTest::addColumn<QByteArray>("at");
    QTest::addColumn<QByteArray>("code");
    const auto row = [](const char *more, const char *at, const char *code) {
        QTest::newRow(more) << QByteArray(more) << QByteArray(at) << QByteArray(code);
    };
    row(R"("seam":"half an inch")", "/seam", "not-a-length");
    row(R"("seam":true)", "/seam", "wrong-type");
    row(R"("seam":"-1/2 in")", "/seam", "length-too-small");
    row(R"("seam":"0 in")", "/seam", "length-too-small");
    row(R"("seam":"90000 m")", "/seam", "length-too-long");
    row(R"("build":"inside-out")", "/build", "not-a-choice");
    row(R"("hand":7)", "/hand", "not-a-choice");
    row(R"("kits":0)", "/kits", "count-out-of-range");
    row(R"("kits":100000)", "/kits", "count-out-of-range");
    row(R"("kits":1.5)", "/kits", "count-out-of-range");
    row(R"("kits":"two")", "/kits", "wrong-type");
    row(R"("drawUp":{"along":"20 %"})", "/drawUp/along", "draw-up-out-of-range");
    row(R"("drawUp":{"across":"-1 %"})", "/drawUp/across", "draw-up-out-of-range");
    row(R"("finest":"1/5 in")", "/finest", "finest-not-a-mark");
    row(R"("hoop":{"field":["5 in"]})", "/hoop/field", "wrong-type");
    row(R"("hoop":{"field":["5 in","x"]})", "/hoop/field/1", "not-a-length");
    row(R"("table":{"length":"60 in"})", "/table", "table-not-whole");
    row(R"("cloths":[{"id":"a"},{"id":"a"}])", "/cloths/1/id", "doubled-id");
    row(R"("cloths":[{}])", "/cloths/0/id", "needed");
    row(R"("cloths":[{"id":"a","role":"lining"}])", "/cloths/0/role", "not-a-choice");
    row(R"("patches":[{"name":"p","width":"2 in","cloth":"none"}])", "/patches/0/cloth", "cloth-not-listed");
    row(R"("strip":{"tails":"yes"})", "/strip/tails", "wrong-type");
    row(R"("made":{"testBlock":{"sent":["6 in"]}})", "/made/testBlock/sent", "wrong-count");
    row(R"("made":{"blocks":[{"state":"eaten"}]})", "/made/blocks/0/state", "not-a-choice");
    row(R"("name":[1])", "/name", "wrong-type");
    row(R"("made":{"trial":"later"})", "/made/trial", "not-a-choice");
    row(R"("made":{"rows":[{"row":"A"}]})", "/made/rows/0/length", "needed");
    row(R"("cloths":[5])", "/cloths/0", "wrong-type");
    row(R"("cloths":[{"id":"a","price":-1}])", "/cloths/0/price", "wrong-type");
    row(R"("cloths":[{"id":"a","usable":"0 in"}])", "/cloths/0/usable", "length-too-small");
    row(R"("rulers":[{"length":"0 in","width":"6 in"}])", "/rulers/0/length", "length-too-small");
    row(R"("system":"metric","finest":"1/16 in")", "/finest", "finest-not-a-mark");
    row(R"("seam":1e20)", "/seam", "length-too-long");
    row(R"("layout":[5])", "/layout/0", "wrong-type");
}
void CodecTest::namesThePlaceOfEachFault()
{
    QFETCH(QByteArray, more);
    QFETCH(QByteArray, at);
    QFETCH(QByteArray, code);
    const auto read = readProject(small(more.toStdString()));
    QVERIFY(read.ok());
    QVERIFY(!read.value().problems.empty());
    QCOMPARE(QByteArray::fromStdString(read.value().problems[0].at), at);
    QCOMPARE(QByteArray::fromStdString(read.value().problems[0].code), code);
}

void CodecTest::everyOfferOfTheCodecMendsItsFault()
{
    int offers = 0;
    for (const char *more :
         {R"("seam":"half an inch")",
          R"("build":"inside-out")",
          R"("kits":0)",
          R"("kits":1.5)",
          R"("drawUp":{"along":"20 %"})",
          R"("finest":"1/5 in")",
          R"("table":{"length":"60 in"})",
          R"("cloths":[{"id":"a"},{"id":"a"}])",
          R"("cloths":[{}])",
          R"("cloths":[{"id":"b"}],"patches":[{"name":"p","width":"2 in","cloth":"none"}])",
          R"("sashing":{"finished":"wide"})",
          R"("system":"ells")",
          R"("seam":true)",
          R"("name":7)",
          R"("strip":[])",
          R"("strip":{"tails":"yes"})",
          R"("drawUp":{"along":true})",
          R"("drawUp":{"along":"much"})",
          R"("hoop":{"field":["5 in"]})",
          R"("hoop":{"field":["x","5 in"]})",
          R"("cloths":[5,6])",
          R"("cloths":{})",
          R"("cloths":[{"id":"a"},{"id":"a-3"},{"id":"a"}])",
          R"("cloths":[{"id":"a","price":"dear","soldBy":"bolt"}])",
          R"("patches":[{"cloth":"none"}])",
          R"("rulers":[{}])",
          R"("layout":[5])",
          R"("designs":[{"patches":[7]}])",
          R"("made":7)",
          R"("made":{"trial":"later"})",
          R"("made":{"rows":[{}]})",
          R"("made":{"testBlock":{}})",
          R"("made":{"testBlock":{"sent":["6 in"]}})",
          R"("made":{"blocks":[{"sides":["x"]}]})"}) {
        const std::string file = small(more);
        const auto faulty = readProject(file);
        QVERIFY(faulty.ok());
        for (const Problem &problem : faulty.value().problems) {
            QVERIFY2(!problem.offers.empty(), problem.code.c_str());
            for (const Offer &offer : problem.offers) {
                ++offers;
                const auto mended = readProject(applyOffer(file, offer));
                QVERIFY(mended.ok());
                for (const Problem &left : mended.value().problems)
                    QVERIFY2(left.at != problem.at || left.code != problem.code,
                             (problem.at + offer.code).c_str());
            }
        }
    }
    QCOMPARE(offers, 44); // none of the rows above has lost an offer
}

void CodecTest::editsMakeWhatIsMissingAndNothingElse()
{
    const std::string file = small("");
    const std::string edited = applyEdits(
        file, {{"/strip/gap", Length::inches(2)}, {"/seam", Length::inches(0, 1, 4)}}, System::Inch);
    const Project project = readProject(edited).value().project;
    QCOMPARE(*project.strip.gap, Length::inches(2));
    QCOMPARE(project.seam, Length::inches(0, 1, 4));
    QCOMPARE(project.blocks.columns, 3);
    QCOMPARE(applyEdits(file, {{"/cloths/3/usable", Length::inches(2)}, {"nonsense", true}}, System::Inch),
             file);
    const std::string removed = applyEdits(edited, {{"/strip/gap", Remove{}}}, System::Inch);
    QVERIFY(!readProject(removed).value().project.strip.gap);
    // Taking away what is not there adds nothing.
    const std::string same = applyEdits(file, {{"/strip/gap", Remove{}}}, System::Inch);
    QVERIFY(same.find("strip") == std::string::npos);
}

void CodecTest::numbersAreKeptToTheDigit()
{
    const std::string file =
        small(R"("cloths":[{"id":"a","price":9.50}],"x":[123456789012345678901234,1.10,1e3,-0.0])");
    const auto read = readProject(file);
    QVERIFY(read.ok() && read.value().problems.empty());
    QCOMPARE(*read.value().project.cloths[0].price, std::string("9.50"));
    for (const std::string &text :
         {writeProject(read.value().project), applyEdits(file, {{"/kits", std::int64_t(2)}}, System::Inch)})
        for (const char *digits : {"9.50", "123456789012345678901234,", "1.10", "1e3", "-0.0"})
            QVERIFY2(text.find(digits) != std::string::npos, digits);
}

void CodecTest::bareNumbersAreInTheProjectsUnit()
{
    const auto inch = readProject(small(R"("seam":0.5,"slack":1e1,"cloths":[{"id":"a","soldBy":4.5}])"));
    QVERIFY(inch.ok() && inch.value().problems.empty());
    QCOMPARE(inch.value().project.seam, Length::inches(0, 1, 2));
    QCOMPARE(inch.value().project.slack, Length::inches(10));
    QCOMPARE(inch.value().project.cloths[0].soldStep, Length::inches(4, 1, 2));
    QCOMPARE(inch.value().project.cloths[0].soldBy, std::string("4 1/2 in"));
    const auto metric = readProject(small(R"("system":"metric","seam":12,"loft":2.50)"));
    QVERIFY(metric.ok() && metric.value().problems.empty());
    QCOMPARE(metric.value().project.seam, Length::mm(12));
    QCOMPARE(metric.value().project.loft, Length::mmTenths(25));
}

void CodecTest::aDoubledKeyIsNamedWhereItStands()
{
    const auto top = readProject(small(R"("seam":"1/2 in","kits":1,"loft":"1/8 in","kits":2)"));
    QVERIFY(!top.ok());
    QCOMPARE(top.error().problem.at, std::string("/kits"));
    const auto deep = readProject(small(R"("cloths":[{"id":"a"},{"id":"b","name":"n","id":"c"}])"));
    QVERIFY(!deep.ok());
    QCOMPARE(deep.error().problem.at, std::string("/cloths/1/id"));
}

void CodecTest::aWideFileIsReadInOneGo()
{
    // As many keys in one object as the bounds allow, at several levels: all kept, in their order.
    std::string file = "{\"format\":\"matside-project\",\"version\":1,\"blocks\":{\"columns\":3,"
                       "\"rows\":3,\"width\":\"6 in\"}";
    for (int object = 0; object < 9; ++object) {
        file += ",\"wide" + std::to_string(object) + "\":{\"first\":0";
        for (int key = 0; key < 19'000; ++key)
            file += ",\"k" + std::to_string(key) + "\":1";
        file += '}';
    }
    const auto read = readProject(file + '}');
    QVERIFY(read.ok() && read.value().problems.empty());
    const std::string written = writeProject(read.value().project);
    const auto again = readProject(written);
    QVERIFY(again.ok());
    QVERIFY(again.value().project == read.value().project);
    QVERIFY(written.find("\"wide8\"") < written.rfind("\"k18999\""));
}

QTEST_GUILESS_MAIN(CodecTest)
#include "tst_codec.moc"
