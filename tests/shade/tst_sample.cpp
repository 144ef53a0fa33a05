// SPDX-License-Identifier: MIT
//
// The mean about one place of a photograph.
#include "shade/sample.h"

#include <QTest>

#include <array>
#include <random>

using namespace matside;

namespace {

std::uint32_t pixelOf(int red, int green, int blue, unsigned alpha = 255)
{
    return alpha << 24U | static_cast<unsigned>(red) << 16U | static_cast<unsigned>(green) << 8U |
           static_cast<unsigned>(blue);
}
/// A board of black and white by turns, `cells` a side.
std::vector<std::uint32_t> board(int cells)
{
    std::vector<std::uint32_t> pixels;
    for (int row = 0; row < cells; ++row)
        for (int column = 0; column < cells; ++column)
            pixels.push_back((row + column) % 2 == 0 ? pixelOf(0, 0, 0) : pixelOf(255, 255, 255));
    return pixels;
}

} // namespace

class SampleTest : public QObject {
    Q_OBJECT
private slots:
    void lightIsAddedUp();
    void placesOffThePicture();
    void onlyTheNeighbourhoodCounts();
    void seeThroughCountsForNothing();
    void meanIsTheMiddleOfTable();
};

// F31 | published figure | the textbook example of mixing in linear light: a fine board of black and white
// looks like
//     | level 188 (#bcbcbc), not 128
void SampleTest::lightIsAddedUp()
{
    const std::vector<std::uint32_t> pixels = board(200);
    const auto sample = sampleAt({pixels, 200, 200}, 100, 100, 300);
    QVERIFY(sample);
    QVERIFY(sample->mean == (Colour{188, 188, 188}));
    QVERIFY(sample->unevenness > 49.9 && sample->unevenness <= 50.0); // half at L* 0, half at 100
    const std::vector<std::uint32_t> plain(400, pixelOf(74, 100, 128));
    const auto even = sampleAt({plain, 20, 20}, 3, 19, 12);
    QVERIFY(even && even->mean == (Colour{74, 100, 128}));
    QVERIFY(even->unevenness < 1e-5);
}

void SampleTest::placesOffThePicture()
{
    const std::vector<std::uint32_t> pixels(12, pixelOf(10, 20, 30));
    const Picture picture{pixels, 4, 3};
    for (const auto &[x, y] : {std::pair(-1, 0), {0, -1}, {4, 0}, {0, 3}, {1 << 30, 1 << 30}})
        QVERIFY(!sampleAt(picture, x, y, 1));
    QVERIFY(!sampleAt({pixels, 5, 3}, 0, 0, 1)); // fewer pixels than told
    QVERIFY(!sampleAt({{}, 0, 0}, 0, 0, 1));
    QVERIFY(!sampleAt({pixels, -4, -3}, 0, 0, 1));
    QCOMPARE(sampleAt(picture, 0, 0, -5).value_or(Sample{}).pixels, 1);
    QCOMPARE(sampleAt(picture, 3, 2, 1 << 20).value_or(Sample{}).pixels, 12);
}

void SampleTest::onlyTheNeighbourhoodCounts()
{
    std::vector<std::uint32_t> pixels(121, pixelOf(255, 255, 255));
    const auto at = [&](int x, int y) -> std::uint32_t & {
        return pixels[static_cast<std::size_t>(y) * 11 + static_cast<std::size_t>(x)];
    };
    for (int y = 0; y < 11; ++y) // points a whole number of pixels off whose squares add up to no more than 9
        for (int x = 0; x < 11; ++x)
            if ((x - 4) * (x - 4) + (y - 5) * (y - 5) <= 9)
                at(x, y) = pixelOf(181, 84, 58);
    const auto inside = sampleAt({pixels, 11, 11}, 4, 5, 3);
    QVERIFY(inside && inside->mean == (Colour{181, 84, 58}));
    QCOMPARE(inside->pixels, 29); // Gauss's circle problem: 29 points for r = 3 (OEIS A000328)
    const auto over = sampleAt({pixels, 11, 11}, 4, 5, 4);
    QCOMPARE(over.value_or(Sample{}).pixels, 49);
    QVERIFY(!(over->mean == inside->mean));
}

void SampleTest::seeThroughCountsForNothing()
{
    std::vector<std::uint32_t> pixels(9, pixelOf(0, 0, 0, 0));
    QVERIFY(!sampleAt({pixels, 3, 3}, 1, 1, 3));
    pixels[0] = pixelOf(200, 100, 50, 200);
    const auto sample = sampleAt({pixels, 3, 3}, 1, 1, 3);
    QVERIFY(sample && sample->mean == (Colour{200, 100, 50}));
    QCOMPARE(sample->pixels, 1);
    // Half of 255 lies between: 127 lets more light through than it holds, 128 less.
    for (const unsigned alpha : {127U, 128U}) {
        pixels[0] = pixelOf(200, 100, 50, alpha);
        QCOMPARE(sampleAt({pixels, 3, 3}, 1, 1, 3).has_value(), alpha == 128);
    }
}

// F31 | independent derivation | random pixels: the mean by a table of the 256 levels' light, summed apart
// and looked
//     | up backwards by the nearest level
void SampleTest::meanIsTheMiddleOfTable()
{
    std::array<double, 256> table{};
    for (int level = 0; level < 256; ++level) {
        const double c = level / 255.0;
        table.at(static_cast<std::size_t>(level)) =
            c > 0.04045 ? std::pow((c + 0.055) / 1.055, 2.4) : c / 12.92;
    }
    std::mt19937_64 random(7);
    for (int round = 0; round < 50; ++round) {
        std::vector<std::uint32_t> pixels;
        std::array<double, 3> sums{};
        for (int i = 0; i < 64; ++i) {
            std::array<int, 3> channels{};
            for (std::size_t c = 0; c < 3; ++c) {
                channels.at(c) = static_cast<int>(random() % 256);
                sums.at(c) += table.at(static_cast<std::size_t>(channels.at(c)));
            }
            pixels.push_back(pixelOf(channels[0], channels[1], channels[2]));
        }
        const Sample sample = sampleAt({pixels, 8, 8}, 4, 4, 100).value_or(Sample{});
        const std::array<int, 3> got{sample.mean.red, sample.mean.green, sample.mean.blue};
        for (std::size_t c = 0; c < 3; ++c) { // the mean lies between the levels beside the one found
            const int level = got.at(c);
            const double mean = sums.at(c) / 64;
            QVERIFY(level == 0 || table.at(static_cast<std::size_t>(level - 1)) < mean);
            QVERIFY(level == 255 || table.at(static_cast<std::size_t>(level + 1)) > mean);
        }
    }
}

QTEST_MAIN(SampleTest)
#include "tst_sample.moc"
