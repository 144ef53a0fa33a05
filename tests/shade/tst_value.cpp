// SPDX-License-Identifier: MIT
//
// Colour to light, lightness and the ten-step scale, against printed figures and Little CMS.
#include "shade/value.h"

#include <QTest>

#include <lcms2.h>

#include <cmath>
#include <memory>
#include <type_traits>

using namespace matside;

namespace {

Colour grey(int level)
{
    const auto byte = static_cast<std::uint8_t>(level);
    return {byte, byte, byte};
}
double lightnessOf(Colour colour)
{
    return lightness(luminance(lightOf(colour)));
}
bool near(double a, double b, double within)
{
    return std::fabs(a - b) <= within;
}

template <auto close> struct Closing {
    void operator()(void *handle) const { close(handle); }
};
using Profile = std::unique_ptr<void, Closing<cmsCloseProfile>>;
using Transform = std::unique_ptr<void, Closing<cmsDeleteTransform>>;

/// L* of a colour under its own white, D65, all by Little CMS: its own sRGB profile to XYZ, which is adapted
/// to D50 in a profile, taken back to D65 by its own adaptation.
class LittleCms {
public:
    LittleCms()
        : m_srgb(cmsCreate_sRGBProfile()), m_xyz(cmsCreateXYZProfile()),
          m_transform(cmsCreateTransform(m_srgb.get(), TYPE_RGB_DBL, m_xyz.get(), TYPE_XYZ_DBL,
                                         INTENT_RELATIVE_COLORIMETRIC,
                                         cmsFLAGS_NOOPTIMIZE | cmsFLAGS_NOCACHE))
    {
        const cmsCIExyY d65{0.3127, 0.3290, 1.0};
        cmsxyY2XYZ(&m_white, &d65);
    }
    [[nodiscard]] double lightnessOf(Colour colour) const
    {
        const double rgb[3] = {colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0};
        cmsCIEXYZ adapted{}, own{};
        cmsDoTransform(m_transform.get(), rgb, &adapted, 1);
        cmsAdaptToIlluminant(&own, cmsD50_XYZ(), &m_white, &adapted);
        cmsCIELab lab{};
        cmsXYZ2Lab(&m_white, &lab, &own);
        return lab.L;
    }

private:
    Profile m_srgb;
    Profile m_xyz;
    Transform m_transform;
    cmsCIEXYZ m_white{};
};

} // namespace

class ValueTest : public QObject {
    Q_OBJECT
private slots:
    void colourIsReadAndWritten();
    void transferAsPrinted();
    void transferGoesBothWays();
    void transferAgreesWithLittleCms();
    void lightnessAsPrinted();
    void contrastRatiosAsPrinted();
    void gridAgreesWithLittleCms();
    void valueAsPrinted();
    void valueFollowsTheRenotation();
    void valueIsSolvedBack();
    void stepsOfTheScale();
    void huesKeepTheirLightness();
    void everyColourIsItsShade();
};

void ValueTest::colourIsReadAndWritten()
{
    QVERIFY(readColour("#0aF59c") == (Colour{10, 245, 156}));
    QCOMPARE(writeColour({10, 245, 156}), std::string("#0af59c"));
    for (const char *no : {"", "#", "0af59c", "#0af59", "#0af59cc", "#0ag59c", "red", "#-af59c", "# af59c"})
        QVERIFY2(!readColour(no), no);
    for (int level = 0; level < 256; ++level)
        QVERIFY(readColour(writeColour(grey(level))) == grey(level));
}

// F29 | published figure | IEC 61966-2-1 as the web's accessibility guidelines (WCAG 2.2, relative luminance)
// print
//     | it, and the example of an open colour library's documentation: 0.18 is written 0.4613561…
void ValueTest::transferAsPrinted()
{
    QVERIFY(near(encodedOf(0.18), 0.4613561, 5e-8));
    QVERIFY(near(lightOf(0.04045), 0.04045 / 12.92, 1e-15));
    QVERIFY(near(lightOf(0.5), std::pow(0.555 / 1.055, 2.4), 1e-15));
    QCOMPARE(lightOf(0.0), 0.0);
    QCOMPARE(lightOf(1.0), 1.0);
    // The two pieces meet to within the standard's own rounding of the knee.
    QVERIFY(near(lightOf(0.04045 + 1e-9), lightOf(0.04045), 1e-7));
    QCOMPARE(lightOf(-1.0), 0.0);
    QCOMPARE(encodedOf(2.0), 1.0);
}

void ValueTest::transferGoesBothWays()
{
    for (int level = 0; level < 256; ++level) {
        QVERIFY(near(encodedOf(lightOf(level / 255.0)), level / 255.0, 1e-7));
        QVERIFY(colourOf(lightOf(grey(level))) == grey(level));
    }
}

// F29 | general-purpose library | Little CMS: its own curve of the sRGB profile, all 256 levels
void ValueTest::transferAgreesWithLittleCms()
{
    const Profile srgb(cmsCreate_sRGBProfile());
    const auto *curve = static_cast<const cmsToneCurve *>(cmsReadTag(srgb.get(), cmsSigGreenTRCTag));
    QVERIFY(curve);
    for (int level = 0; level < 256; ++level) {
        const auto theirs =
            static_cast<double>(cmsEvalToneCurveFloat(curve, static_cast<cmsFloat32Number>(level / 255.0)));
        QVERIFY2(near(lightOf(level / 255.0), theirs, 2e-5), qPrintable(QString::number(level)));
    }
}

// F29 | published figure | CIE 1976 lightness: the figures an open colour library tests itself by
void ValueTest::lightnessAsPrinted()
{
    QVERIFY(near(lightness(0.1219722535), 41.527875844653451, 1e-9));
    QVERIFY(near(lightness(0.2304276781), 55.116362849525402, 1e-9));
    QVERIFY(near(lightness(0.0615720079), 29.805654680097106, 1e-9));
    // An encyclopaedia's article on middle grey: level 119, and 18.4 % of the light for L* 50.
    QVERIFY(near(lightnessOf(grey(119)), 50.0, 0.05));
    QVERIFY(near(luminanceOfLightness(50), 0.184, 0.0005));
    QCOMPARE(lightness(0), 0.0);
    QVERIFY(near(lightness(1), 100, 1e-12));
    for (int l = 0; l <= 100; ++l)
        QVERIFY(near(lightness(luminanceOfLightness(l)), l, 1e-9));
}

// F29 | published figure | WCAG contrast as every checker tells it: #767676 on white is the darkest-but-one
// grey to
//     | reach 4.5, #777777 does not, #595959 reaches 7
void ValueTest::contrastRatiosAsPrinted()
{
    const auto onWhite = [](const char *text) {
        return 1.05 / (luminance(lightOf(readColour(text).value_or(Colour{}))) + 0.05);
    };
    QVERIFY(near(onWhite("#767676"), 4.542, 5e-4));
    QVERIFY(near(onWhite("#777777"), 4.478, 5e-4));
    QVERIFY(near(onWhite("#595959"), 7.005, 5e-4));
    QVERIFY(near(onWhite("#000000"), 21, 1e-9));
}

// F29 | general-purpose library | Little CMS: L* over a grid of 4913 colours, by its profile, its adaptation
// of the
//     | white and its own Lab
void ValueTest::gridAgreesWithLittleCms()
{
    const LittleCms cms;
    double worst = 0;
    for (int red = 0; red <= 256; red += 16)
        for (int green = 0; green <= 256; green += 16)
            for (int blue = 0; blue <= 256; blue += 16) {
                const auto level = [](int at) { return static_cast<std::uint8_t>(std::min(at, 255)); };
                const Colour colour{level(red), level(green), level(blue)};
                worst = std::max(worst, std::fabs(lightnessOf(colour) - cms.lightnessOf(colour)));
            }
    // The profile's numbers are kept in 16 bits after the point, the standard's factors in four places.
    QVERIFY2(worst < 0.05, qPrintable(QString::number(worst)));
}

// F30 | published figure | ASTM D1535-08, equation 2: the figures an open colour library tests itself by
void ValueTest::valueAsPrinted()
{
    const double printed[][2] = {
        {4.08244375, 12.236342675366036}, {5.39132685, 22.893999867280378}, {2.97619312, 6.2902253509053132}};
    for (const auto &[value, percent] : printed) {
        QVERIFY(near(luminanceOfValue(value) * 100, percent, 2e-7));
        QVERIFY(near(valueOf(percent / 100), value, 1e-7));
    }
    QVERIFY(near(luminanceOfValue(10), 1.0, 1e-5));
}

// F30 | published figure | the renotation's own luminances of 1943 for values 1 to 9, under magnesium
// oxide: 1.0257
//     | times the standard's, to within a thousandth
void ValueTest::valueFollowsTheRenotation()
{
    const double printed[] = {1.21, 3.126, 6.55, 12.00, 19.77, 30.03, 43.06, 59.10, 78.66};
    for (int value = 1; value <= 9; ++value)
        QVERIFY2(near(luminanceOfValue(value) * 102.57, printed[value - 1], printed[value - 1] * 1e-3),
                 qPrintable(QString::number(value)));
}

void ValueTest::valueIsSolvedBack()
{
    double before = -1;
    for (int i = 0; i <= 1000; ++i) {
        const double value = valueOf(luminanceOfValue(i / 100.0));
        QVERIFY(near(value, i / 100.0, 2e-6));
        QVERIFY(value > before);
        before = value;
    }
    // L* is ten values to within 1.05 (both are meant to be even steps for the eye).
    for (int level = 0; level < 256; ++level)
        QVERIFY(near(10 * valueOf(grey(level)), lightnessOf(grey(level)), 1.06));
}

void ValueTest::stepsOfTheScale()
{
    QCOMPARE(stepOf(0), 1);
    QCOMPARE(stepOf(0.999), 1);
    QCOMPARE(stepOf(1), 2);
    QCOMPARE(stepOf(9.5), 10);
    QCOMPARE(stepOf(10), 10);
    QCOMPARE(stepOf(-3), 1);
    QCOMPARE(stepOf(30), 10);
    for (int step = 1; step <= 10; ++step) {
        QCOMPARE(stepOf(valueOf(greyOfStep(step))), step);
        QVERIFY(near(valueOf(greyOfStep(step)), step - 0.5, 0.1)); // as near as 256 levels allow
    }
    QVERIFY(near(stepsApart(grey(0), grey(255)), 10, 1e-4));
    QVERIFY(near(stepsApart({200, 30, 30}, {30, 30, 200}), stepsApart({30, 30, 200}, {200, 30, 30}), 1e-12));
    for (int level = 0; level < 256; level += 5) { // the grey of a colour is as light as the colour
        const Colour colour{static_cast<std::uint8_t>(level), static_cast<std::uint8_t>(255 - level), 90};
        QVERIFY(near(lightnessOf(greyOf(colour)), lightnessOf(colour), 0.25));
    }
}

void ValueTest::huesKeepTheirLightness()
{
    for (int hue = -720; hue <= 720; hue += 15)
        for (int wanted = 5; wanted <= 95; wanted += 5)
            for (const double strength : {0.0, 0.4, 1.0}) {
                const Colour colour = colourOf(Shade{double(hue), double(wanted), strength});
                QVERIFY2(near(lightnessOf(colour), wanted, 0.75),
                         qPrintable(QString::asprintf("%d %d %f", hue, wanted, strength)));
                if (strength == 0.0)
                    QVERIFY(colour.red == colour.green && colour.green == colour.blue);
            }
    QVERIFY(colourOf(Shade{0, 53.23, 1}) == (Colour{255, 0, 0}));
    QVERIFY(colourOf(Shade{360, 53.23, 9}) == (Colour{255, 0, 0}));
    QVERIFY(colourOf(Shade{77, 200, 1}) == (Colour{255, 255, 255}));
    QVERIFY(colourOf(Shade{77, -1, 1}) == (Colour{0, 0, 0}));
    const Colour leaf = colourOf(Shade{120, 40, 1});
    QVERIFY(leaf.green > leaf.red && leaf.green > leaf.blue);
}

void ValueTest::everyColourIsItsShade()
{
    const auto within = [](int a, int b) { return std::abs(a - b) <= 1; };
    for (int red = 0; red < 256; red += 15)
        for (int green = 0; green < 256; green += 15)
            for (int blue = 0; blue < 256; blue += 15) {
                const Colour colour{static_cast<std::uint8_t>(red), static_cast<std::uint8_t>(green),
                                    static_cast<std::uint8_t>(blue)};
                const Shade shade = shadeOf(colour);
                QVERIFY(shade.hue >= 0 && shade.hue < 360 && shade.strength >= 0 && shade.strength <= 1);
                const Colour again = colourOf(shade);
                QVERIFY2(within(again.red, red) && within(again.green, green) && within(again.blue, blue),
                         writeColour(colour).c_str());
            }
    QCOMPARE(shadeOf({0, 255, 0}).hue, 120.0);
    QCOMPARE(shadeOf({0, 0, 200}).hue, 240.0);
    QCOMPARE(shadeOf({255, 0, 255}).hue, 300.0);
    QCOMPARE(shadeOf({80, 80, 80}).strength, 0.0);
    QCOMPARE(shadeOf({255, 0, 0}).strength, 1.0);
}

QTEST_MAIN(ValueTest)
#include "tst_value.moc"
