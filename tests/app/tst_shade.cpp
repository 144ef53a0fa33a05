// SPDX-License-Identifier: MIT
//
// Light and dark: the cloths on the scale, the pair least apart, the order proposed, and a cloth's colour
// from the palette, by steps and off a photograph.
#include "app/demo.h"
#include "app/prints.h"
#include "app/shadewords.h"
#include "app/shelfpiece.h"
#include "app/wording.h"
#include "project/codec.h"
#include "shadebench.h"

#include "testing.h"
#include <QImageWriter>
#include <QSignalSpy>

using namespace matside;
using namespace shadebench;

class ShadeTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QLocale::setDefault(QLocale::c()); }
    void clothsOnTheScale();
    void drawingsShowTheClothThatServes();
    void leastPairIsNamed();
    void whatIsMissingIsSaid();
    void orderIsTakenAndTakenBack();
    void orderOfOneDesign();
    void orderThatStays();
    void facesInGreyAndInColour();
    void wordsForSteps();
    void colourByPaletteAndSteps();
    void colourOffAPhotograph();
    void photographInItsOwnProfile();
    void photographLyingOnItsSide();
    void photographsThatCannotBeRead();
    void passingPicturesAreRemoved();
};

void ShadeTest::clothsOnTheScale()
{
    Bench bench;
    QCOMPARE(bench.shade.cloths().size(), 6); // no batting: it is not seen
    QCOMPARE(bench.cloth(0, "name"), QStringLiteral("ground"));
    QCOMPARE(bench.cloth(0, "letter"), QStringLiteral("A"));
    QCOMPARE(bench.cloth(5, "name"), QStringLiteral("edge"));
    QCOMPARE(bench.cloth(5, "known"), QStringLiteral("false"));
    double before = 11;
    for (const QVariant &row : bench.shade.cloths()) {
        const double value = row.toMap().value(QStringLiteral("value")).toDouble();
        QVERIFY(value <= before);
        before = value;
    }
    QCOMPARE(bench.shade.scale().size(), 10);
    bench.shade.setActive(false);
    Project next = bench.open.workspace.project();
    next.cloths.pop_back();
    next.patches.pop_back(); // the sail was cut from it
    QVERIFY(bench.open.workspace.commit("edit", next));
    QCOMPARE(bench.shade.cloths().size(), 6); // nobody looks
    // The finished piece is drawn from the front all the same.
    const QVariantList drawn = bench.shade.front().value(QStringLiteral("patches")).toList();
    QCOMPARE(drawn.value(0).toList().size(), static_cast<qsizetype>(next.patches.size()));
    bench.shade.setActive(true);
    QCOMPARE(bench.shade.cloths().size(), 5);
}

void ShadeTest::leastPairIsNamed()
{
    Bench bench;
    // By hand: hull 7 off the ground; keel 6 and 1; sail 3 and 3. The keel on the hull is the least.
    const QString says = bench.shade.says();
    QVERIFY2(says.contains(QStringLiteral("keel on hull")), qPrintable(says));
    QVERIFY(!bench.shade.clear());
    int least = 0;
    for (const QVariant &pair : bench.shade.pairs())
        least += pair.toMap().value(QStringLiteral("least")).toBool() ? 1 : 0;
    QCOMPARE(least, 1);
    QCOMPARE(bench.shade.pairs().size(), 5);
}

void ShadeTest::whatIsMissingIsSaid()
{
    Project plain = boat();
    plain.patches.clear();
    QVERIFY(Bench(plain).shade.says().startsWith(QStringLiteral("No patches")));
    Project bare = boat();
    for (Cloth &cloth : bare.cloths)
        cloth.colour = "blue"; // a word is no colour
    Bench bench(bare);
    QVERIFY(bench.shade.says().contains(QStringLiteral("press a cloth")));
    QVERIFY(bench.shade.pairs().isEmpty() && bench.shade.orderSays().isEmpty() && bench.shade.clear());
    Project without = boat();
    without.cloths.clear();
    without.patches.clear();
    QVERIFY(Bench(without).shade.cloths().isEmpty());
}

void ShadeTest::orderIsTakenAndTakenBack()
{
    Bench bench;
    // 2, 6, 3 by hand: four and three apart.
    QVERIFY2(bench.shade.orderSays().contains(QStringLiteral("hull, sail, keel")),
             qPrintable(bench.shade.orderSays()));
    QVERIFY(bench.shade.canReorder());
    const std::vector<Step> steps = bench.open.workspace.steps();
    QVERIFY(bench.shade.takeOrder());
    QCOMPARE(bench.open.kept().designs.size(), std::size_t{1});
    QCOMPARE(bench.open.kept().designs[0].patches, (std::vector<std::string>{"hull", "sail", "keel"}));
    QVERIFY(bench.shade.orderSays().isEmpty() && bench.shade.clear() && !bench.shade.takeOrder());
    // What is cut, and how far it has got, does not hang on the order.
    QCOMPARE(bench.open.workspace.steps().size(), steps.size());
    for (std::size_t i = 0; i < steps.size(); ++i)
        QCOMPARE(bench.open.workspace.steps()[i].id, steps[i].id);
    QCOMPARE(bench.open.session.undoText(), wordsOrCode(commandWords(), "patch-order"));
    bench.open.session.undo();
    QVERIFY(bench.open.kept().designs.empty());
    QVERIFY(bench.shade.canReorder());
}

void ShadeTest::orderOfOneDesign()
{
    Project project = boat();
    project.designs = {{"a", {"sail"}, 0, {}, {}}, {"b", {"hull", "keel", "sail", "mast"}, 0, {}, {}}};
    project.layout = {{"a", "b@90", "a"}, {"b", "a", "b"}, {"a", "b", "a"}};
    Bench bench(project);
    QVERIFY(bench.open.workspace.faults().empty());
    QCOMPARE(bench.shade.designs().size(), 2);
    QVERIFY(bench.shade.orderSays().isEmpty());
    bench.shade.setDesign(1);
    QVERIFY(bench.shade.takeOrder());
    const std::vector<Design> designs = bench.open.kept().designs;
    QCOMPARE(designs[0].patches, std::vector<std::string>{"sail"});
    QCOMPARE(designs[1].patches, (std::vector<std::string>{"hull", "sail", "keel", "mast"}));
    const QVariantList at = bench.shade.front().value(QStringLiteral("at")).toList();
    QCOMPARE(at, (QVariantList{0, 1, 0, 1, 0, 1, 0, 1, 0}));
    bench.shade.setDesign(7); // there is none
    QCOMPARE(bench.shade.design(), 1);
}

void ShadeTest::orderThatStays()
{
    Project stitched = boat();
    MadeBlock block;
    block.block = "A1";
    stitched.made.blocks.push_back(block);
    Bench late(stitched);
    QVERIFY(!late.shade.orderSays().isEmpty());
    QVERIFY(!late.shade.canReorder() && !late.shade.takeOrder());
    Project alike = boat();
    alike.patches[0].name = alike.patches[1].name;
    Bench two(alike);
    QVERIFY(!two.shade.orderSays().isEmpty() && !two.shade.canReorder());
    Project many = boat();
    for (int i = 0; i < 12; ++i)
        many.patches.push_back(patch(("p" + std::to_string(i)).c_str(), i % 2 == 0 ? "dark" : "deep"));
    Bench crowd(many);
    QVERIFY(crowd.shade.orderSays().contains(QStringLiteral("15")));
    QVERIFY(!crowd.shade.canReorder());
}

void ShadeTest::facesInGreyAndInColour()
{
    Project red = boat();
    red.cloths[4].colour = "#8c4a2a"; // the hull's
    Bench bench(red);
    QVERIFY(bench.shade.grey());
    const auto back = [&](const char *key) {
        return bench.shade.back().value(QLatin1String(key)).toString();
    };
    // Level 98 by hand: 0.2126 · 0.0685 + 0.7152 · 0.1274 + 0.0722 · 0.2159 = 0.1213 of the light.
    QCOMPARE(back("block"), QStringLiteral("#626262"));
    QCOMPARE(back("sashing"), back("block")); // none listed: cut from the back
    QCOMPARE(back("binding"), QString());
    const auto patch = [&](const char *key) {
        const QVariantList own =
            bench.shade.front().value(QStringLiteral("patches")).toList().value(0).toList();
        return own.value(0).toMap().value(QLatin1String(key)).toString();
    };
    QCOMPARE(patch("dye"), QStringLiteral("#8c4a2a"));
    QVERIFY(patch("colour") != patch("dye"));
    bench.shade.setGrey(false);
    QCOMPARE(patch("colour"), patch("dye"));
    QCOMPARE(back("block"), QStringLiteral("#4a6480"));
}

void ShadeTest::wordsForSteps()
{
    QCOMPARE(stepsText(1.999), QStringLiteral("1.9"));
    QCOMPARE(stepsText(2.0), QStringLiteral("2.0"));
    QCOMPARE(stepsText(0), QStringLiteral("0.0"));
    QVERIFY(leastSays(QStringLiteral("a"), QStringLiteral("b"), 2.0).contains(QStringLiteral("clear")));
    QVERIFY(
        leastSays(QStringLiteral("a"), QStringLiteral("b"), 1.999).contains(QStringLiteral("washed out")));
    QVERIFY(leastSays(QStringLiteral("a"), QStringLiteral("b"), 0.99).contains(QStringLiteral("lost")));
    QCOMPARE(colourSays(*readColour("#c9bda2")), QStringLiteral("oat"));
    QCOMPARE(colourSays({255, 0, 0}), QStringLiteral("red, step 6 of 10"));
    QCOMPARE(colourSays({128, 128, 128}), QStringLiteral("grey, step 6 of 10"));
    QCOMPARE(colourSays({0, 0, 160}), QStringLiteral("blue, step 2 of 10"));
    QSet<QString> values, words;
    for (const QVariant &cell : paletteOf(false)) {
        values.insert(cell.toMap().value(QStringLiteral("value")).toString());
        words.insert(cell.toMap().value(QStringLiteral("says")).toString());
    }
    QCOMPARE(values.size(), 35);
    QCOMPARE(words.size(), 35); // no two are told alike
    QSet<QString> turned;
    for (const QVariant &cell : paletteOf(true))
        turned.insert(cell.toMap().value(QStringLiteral("value")).toString());
    QCOMPARE(turned, values);
}

void ShadeTest::colourByPaletteAndSteps()
{
    Bench bench;
    bench.colour.choose(QStringLiteral("#112233")); // no cloth in hand
    QVERIFY(bench.colour.colour().isEmpty());
    bench.colour.setCloth(QStringLiteral("edge"));
    QVERIFY(bench.colour.colour().isEmpty() && !bench.colour.canTake());
    bench.colour.choose(QStringLiteral("no colour"));
    QVERIFY(bench.colour.colour().isEmpty());
    bench.colour.choose(QStringLiteral("#27535a"));
    QVERIFY(bench.colour.canTake());
    bench.colour.nudge(QStringLiteral("lightness"), 1);
    const Colour lighter = readColour(bench.colour.colour().toStdString()).value_or(Colour{});
    QVERIFY(std::fabs(shadeOf(lighter).lightness - shadeOf({0x27, 0x53, 0x5a}).lightness - 5) < 0.5);
    bench.colour.nudge(QStringLiteral("lightness"), -1);
    bench.colour.nudge(QStringLiteral("hue"), 3);
    bench.colour.nudge(QStringLiteral("hue"), -3);
    bench.colour.nudge(QStringLiteral("strength"), -1);
    bench.colour.nudge(QStringLiteral("strength"), 1);
    QCOMPARE(bench.colour.colour(), QStringLiteral("#27535a"));
    QVERIFY(bench.colour.take());
    QCOMPARE(bench.open.kept().cloths[3].colour, std::string("#27535a"));
    QVERIFY(!bench.colour.canTake() && !bench.colour.take());
    QCOMPARE(bench.open.session.undoText(), wordsOrCode(commandWords(), "cloth-colour"));
    bench.open.session.undo();
    QVERIFY(bench.open.kept().cloths[3].colour.empty());
    bench.colour.nudge(QStringLiteral("lightness"), 1000);
    QCOMPARE(bench.colour.colour(), QStringLiteral("#ffffff"));
    bench.colour.setCloth(QStringLiteral("no such cloth"));
    QVERIFY(bench.colour.cloth().isEmpty() && !bench.colour.take());
}

void ShadeTest::colourOffAPhotograph()
{
    Bench bench;
    bench.colour.setCloth(QStringLiteral("edge"));
    QSignalSpy opened(&bench.colour, &ClothColour::opened);
    QVERIFY(
        bench.look(bench.photograph(QColor(181, 84, 58), QColor(0, 0, 0), QColorSpace(QColorSpace::SRgb))));
    QTRY_COMPARE(opened.size(), 1);
    QVERIFY(!bench.colour.sampled() && !bench.colour.picture().isEmpty());
    bench.colour.tap(0.2, 0.5);
    QCOMPARE(bench.colour.colour(), QStringLiteral("#b5543a"));
    const QString even = bench.colour.pictureSays();
    bench.colour.tap(0.5, 0.5); // on the border: mixed light, and it is told
    QVERIFY(bench.colour.colour() != QStringLiteral("#b5543a"));
    QVERIFY(bench.colour.pictureSays() != even);
    bench.colour.tap(1.5, 0.5); // beside the picture: as it was
    QCOMPARE(bench.colour.spotX(), 0.5);
    bench.colour.tap(0.9, 0.99);
    QCOMPARE(bench.colour.colour(), QStringLiteral("#000000"));
    QVERIFY(bench.colour.take());
    QCOMPARE(bench.open.kept().cloths[3].colour, std::string("#000000"));
    bench.colour.setCloth({});
    QVERIFY(bench.colour.picture().isEmpty());
    QVERIFY(QFile::exists(bench.open.dir.filePath(QStringLiteral("cloths.png")))); // hers, not ours
}

// Full red of sRGB, written in the wider Display P3, is about (0.9175, 0.2003, 0.1386): value from memory.
// Read through the picture's profile it is full red again.
void ShadeTest::photographInItsOwnProfile()
{
    Bench bench;
    bench.colour.setCloth(QStringLiteral("edge"));
    QSignalSpy opened(&bench.colour, &ClothColour::opened);
    const QColor red(234, 51, 35);
    QVERIFY(bench.look(bench.photograph(red, red, QColorSpace(QColorSpace::DisplayP3), "wide.png")));
    QTRY_COMPARE(opened.size(), 1);
    bench.colour.tap(0.5, 0.5);
    const Colour found = readColour(bench.colour.colour().toStdString()).value_or(Colour{});
    QVERIFY2(found.red >= 254 && found.green <= 8 && found.blue <= 8, qPrintable(bench.colour.colour()));
}

void ShadeTest::photographLyingOnItsSide()
{
    Bench bench;
    bench.colour.setCloth(QStringLiteral("edge"));
    QImage image(400, 200, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter(&image).fillRect(200, 0, 200, 200, Qt::black);
    const QString path = bench.open.dir.filePath(QStringLiteral("turned.jpg"));
    QImageWriter writer(path);
    writer.setTransformation(QImageIOHandler::TransformationRotate90); // as a tablet held upright writes it
    QVERIFY(writer.write(image));
    QSignalSpy opened(&bench.colour, &ClothColour::opened);
    QVERIFY(bench.look(path));
    QTRY_COMPARE(opened.size(), 1);
    bench.colour.tap(0.5, 0.1); // upright, the left half is at the top
    QCOMPARE(bench.colour.colour(), QStringLiteral("#ffffff"));
    bench.colour.tap(0.5, 0.9);
    QCOMPARE(bench.colour.colour(), QStringLiteral("#000000"));
}

void ShadeTest::photographsThatCannotBeRead()
{
    Bench bench;
    bench.colour.setCloth(QStringLiteral("edge"));
    QFile broken(bench.open.dir.filePath(QStringLiteral("broken.jpg")));
    QVERIFY(broken.open(QIODevice::WriteOnly) && broken.write("no picture") > 0);
    broken.close();
    for (const QString &path : {broken.fileName(), QStringLiteral("/nowhere/at/all.png")}) {
        QVERIFY(bench.look(path));
        QTRY_VERIFY(!bench.colour.problem().isEmpty());
        QVERIFY(bench.colour.picture().isEmpty() && !bench.colour.looking());
        bench.colour.tap(0.5, 0.5);
        QVERIFY(bench.colour.colour().isEmpty());
    }
    bench.colour.setCloth(QStringLiteral("dark"));
    QVERIFY(bench.colour.problem().isEmpty());
}

void ShadeTest::passingPicturesAreRemoved()
{
    class Passing : public PhotoSource {
    public:
        Passing() { setState(true, true); }
        QString path;

    protected:
        void take() override { deliver(path, true); }
    } camera;
    Bench bench;
    ClothColour colour{bench.open.workspace, bench.open.session, bench.keeper, camera, bench.picker};
    colour.setCloth(QStringLiteral("edge"));
    camera.path = bench.photograph(Qt::red, Qt::red, QColorSpace(QColorSpace::SRgb), "shot.png");
    camera.capture();
    QTRY_VERIFY(!colour.picture().isEmpty());
    QVERIFY(QFile::exists(camera.path));
    colour.dropPicture();
    QVERIFY(!QFile::exists(camera.path));
    // Left before it was opened: removed all the same.
    camera.path = bench.photograph(Qt::red, Qt::red, QColorSpace(QColorSpace::SRgb), "late.png");
    camera.capture();
    colour.setCloth({});
    QTRY_VERIFY(!QFile::exists(camera.path));
    QVERIFY(colour.picture().isEmpty());
}

void ShadeTest::drawingsShowTheClothThatServes()
{
    Project project = readProject(demoProject().toStdString()).value().project;
    std::erase_if(project.cloths, [](const Cloth &cloth) {
        return cloth.role != ClothRole::Front && cloth.role != ClothRole::Back;
    });
    const auto front = std::ranges::find(project.cloths, ClothRole::Front, &Cloth::role);
    front->colour = "#8c2f39";
    // Without cloths of their own sashing and binding are cut of the front's, and drawn so.
    const QVariantMap linen{{QStringLiteral("print"), QStringLiteral("front")},
                            {QStringLiteral("colour"), QStringLiteral("#8c2f39")}};
    const QVariantMap cloths = clothsDrawn(project);
    QCOMPARE(cloths.value(QStringLiteral("front")).toMap(), linen);
    QCOMPARE(cloths.value(QStringLiteral("sashing")).toMap(), linen);
    QCOMPARE(cloths.value(QStringLiteral("binding")).toMap(), linen);
    QVERIFY(!cloths.contains(QStringLiteral("batting"))); // nothing serves for it
    QCOMPARE(shelfPiece(project).face.value(QStringLiteral("binding")).toString(), QStringLiteral("#8c2f39"));

    Cloth own;
    own.id = "teal";
    own.role = ClothRole::Binding;
    own.colour = "#27535a";
    project.cloths.push_back(own);
    const QVariantMap bound = clothsDrawn(project).value(QStringLiteral("binding")).toMap();
    QCOMPARE(bound.value(QStringLiteral("print")).toString(), QStringLiteral("binding"));
    QCOMPARE(bound.value(QStringLiteral("colour")).toString(), QStringLiteral("#27535a"));
    QCOMPARE(shelfPiece(project).face.value(QStringLiteral("binding")).toString(), QStringLiteral("#27535a"));
}

QTEST_MAIN(ShadeTest)
#include "tst_shade.moc"
