// SPDX-License-Identifier: MIT
//
// Photographs on their way out: what tells of place, time and device is gone, the picture is the same.
// Tags after CIPA DC-008 (Exif 2.3): 4.6.4 (Make, Model, Orientation, DateTime) and 4.6.6 (GPS).
#include "share/bare.h"
#include "share/sharehelp.h"

#include <QColorSpace>
#include <QImageReader>

using namespace sharehelp;

namespace {

/// A number in Exif's big-endian order.
QByteArray number(quint32 value, int bytes)
{
    QByteArray text;
    for (int shift = 8 * (bytes - 1); shift >= 0; shift -= 8)
        text.append(static_cast<char>(value >> shift));
    return text;
}

/// One tag: its number, type, count and value or place.
QByteArray tag(quint32 id, quint32 type, quint32 count, quint32 value)
{
    return number(id, 2) + number(type, 2) + number(count, 4) + number(value, 4);
}

/// As a telephone writes it: maker, model, time, place (51° 28′ 40″ N), a comment, a small copy and a
/// trailer.
QByteArray telephone(const QByteArray &jpeg)
{
    const QByteArray make("Brightbox\0", 10);
    const QByteArray model("Pocket 7\0\0", 10);
    const QByteArray time("2026:02:03 04:05:06\0", 20);
    const quint32 entries = 5;
    const quint32 first = 8 + 2 + 12 * entries + 4;
    const quint32 gps = first + 10 + 10 + 20;
    const quint32 degrees = gps + 2 + 12 * 2 + 4;
    QByteArray tiff("MM\0\x2A\0\0\0\x08", 8);
    tiff += number(entries, 2) + tag(0x010F, 2, 10, first) + tag(0x0110, 2, 10, first + 10) +
            tag(0x0112, 3, 1, 6U << 16U) + tag(0x0132, 2, 20, first + 20) + tag(0x8825, 4, 1, gps) +
            number(0, 4);
    tiff += make + model + time;
    tiff += number(2, 2) + tag(1, 2, 2, 0x4E000000U) + tag(2, 5, 3, degrees) + number(0, 4);
    for (const quint32 part : {51U, 28U, 40U})
        tiff += number(part, 4) + number(1, 4);
    const auto segment = [](char marker, const QByteArray &body) {
        return QByteArray("\xFF", 1) + marker + number(static_cast<quint32>(body.size()) + 2, 2) + body;
    };
    return jpeg.left(2) + segment('\xE1', QByteArray("Exif\0\0", 6) + tiff) +
           segment('\xE1',
                   QByteArray("http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>Alder Lane</x:xmpmeta>", 63)) +
           segment('\xED', "caption: Alder Lane") + segment('\xFE', "seen at Alder Lane") + jpeg.mid(2) +
           QByteArray("trailer of a moving picture, Brightbox");
}

QImage shown(const QByteArray &bytes)
{
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    return reader.read().convertToFormat(QImage::Format_RGB32);
}

Bare bare(const QByteArray &bytes)
{
    auto made = bareOf(bytes);
    return made ? made.value() : Bare{};
}

} // namespace

class TestBare : public QObject {
    Q_OBJECT
private slots:
    void placeAndDeviceAreGone();
    void everyOrientationStays();
    void againIsTheSame();
    void wordsInPngAreGone();
    void otherProfilesAreBroughtToSrgb();
    void otherFormatsBecomePng();
    void progressiveStaysProgressive();
    void cutShortIsRefused();
    void sharedPicturesAreBare();
};

void TestBare::placeAndDeviceAreGone()
{
    const QByteArray jpeg = encoded(picture(7, {400, 300}));
    const QByteArray came = telephone(jpeg);
    // The picture does carry it, and Qt reads its orientation: a quarter turn.
    QVERIFY(came.contains("Brightbox") && came.contains("Alder Lane"));
    QCOMPARE(shown(came).size(), QSize(300, 400));
    const Bare made = bare(came);
    QCOMPARE(made.format, u"jpeg"_qs);
    for (const char *told : {"Brightbox", "Pocket", "2026:", "Alder", "xmpmeta", "caption", "trailer"})
        QVERIFY2(!made.bytes.contains(told), told);
    QVERIFY(!made.bytes.contains(number(51, 4) + number(1, 4) + number(28, 4)));
    QCOMPARE(shown(made.bytes), shown(came)); // nothing was packed anew
    // 36 bytes say which way up it is.
    QCOMPARE(made.bytes.size(), jpeg.size() + 36);
}

void TestBare::everyOrientationStays()
{
    const QByteArray jpeg = encoded(picture(8, {160, 90}));
    for (char orientation = 1; orientation <= 8; ++orientation) {
        const QByteArray came = turned(jpeg, orientation);
        QCOMPARE(shown(bare(came).bytes), shown(came));
    }
    QCOMPARE(bare(turned(jpeg, 1)).bytes, bare(jpeg).bytes);
}

void TestBare::againIsTheSame()
{
    QImage wide = picture(9, {64, 48});
    wide.setColorSpace(QColorSpace(QColorSpace::DisplayP3));
    const QByteArray jpeg = encoded(picture(9, {64, 48}));
    for (const QByteArray &came : {telephone(jpeg), jpeg, encoded(picture(9, {64, 48}), "png"), encoded(wide),
                                   encoded(wide, "png"), encoded(picture(9, {64, 48}), "bmp")}) {
        const Bare once = bare(came);
        QVERIFY(!once.bytes.isEmpty());
        QCOMPARE(bare(once.bytes).bytes, once.bytes);
    }
}

void TestBare::wordsInPngAreGone()
{
    QImage image = picture(10, {50, 40});
    image.setText(u"Author"_qs, u"Alder Lane"_qs);
    image.setText(u"Software"_qs, u"Brightbox"_qs);
    image.setDotsPerMeterX(3000);
    const QByteArray came = encoded(image, "png") + "Alder Lane trailer";
    QVERIFY(came.contains("Alder Lane"));
    const Bare made = bare(came);
    QCOMPARE(made.format, u"png"_qs);
    QVERIFY(!made.bytes.contains("Alder") && !made.bytes.contains("Brightbox") &&
            !made.bytes.contains("tEXt"));
    QCOMPARE(shown(made.bytes), shown(came));
}

void TestBare::otherProfilesAreBroughtToSrgb()
{
    QImage image(16, 16, QImage::Format_RGB32);
    image.fill(QColor(200, 40, 40));
    image.setColorSpace(QColorSpace(QColorSpace::DisplayP3));
    const QByteArray came = encoded(image);
    QVERIFY(came.contains("ICC_PROFILE"));
    const Bare made = bare(came);
    QVERIFY(!made.bytes.contains("ICC_PROFILE"));
    // Qt's own conversion of the colour says what it should look like; JPEG is let off by 3 of 255.
    const QColor wanted = QColorSpace(QColorSpace::DisplayP3)
                              .transformationToColorSpace(QColorSpace(QColorSpace::SRgb))
                              .map(QColor(200, 40, 40));
    const QColor seen = shown(made.bytes).pixelColor(8, 8);
    QVERIFY2(std::abs(seen.red() - wanted.red()) <= 3 && std::abs(seen.green() - wanted.green()) <= 3,
             qPrintable(seen.name()));
    QVERIFY(seen.red() > 205); // it did change
}

void TestBare::otherFormatsBecomePng()
{
    const QImage image = picture(11, {30, 20});
    const Bare made = bare(encoded(image, "bmp"));
    QCOMPARE(made.format, u"png"_qs);
    QCOMPARE(shown(made.bytes), image.convertToFormat(QImage::Format_RGB32));
}

void TestBare::progressiveStaysProgressive()
{
    QByteArray came;
    QBuffer buffer(&came);
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer(&buffer, "jpeg");
    writer.setProgressiveScanWrite(true);
    QVERIFY(writer.write(picture(12, {120, 80})));
    buffer.close();
    const Bare made = bare(telephone(came));
    QVERIFY(made.bytes.contains("\xFF\xC2")); // a progressive frame: ITU-T T.81, table B.1
    QCOMPARE(shown(made.bytes), shown(telephone(came)));
}

void TestBare::cutShortIsRefused()
{
    const QByteArray came = telephone(encoded(picture(13, {80, 60})));
    const qsizetype end = came.indexOf("\xFF\xD9");
    for (qsizetype size = 0; size < end; size += 7) {
        const auto made = bareOf(came.left(size));
        QVERIFY2(!made.ok(), qPrintable(QString::number(size)));
    }
}

void TestBare::sharedPicturesAreBare()
{
    Home home(false);
    home.document = documentOf(u"Lane"_qs);
    home.id = got(home.store->create(home.document));
    home.log(noteOf(u"A1"_qs, home.keep(telephone(encoded(picture(14, {200, 100}))))));
    QTemporaryDir out;
    const QString path = out.filePath(u"one.matside"_qs);
    QCOMPARE(home.share(path), QByteArray());
    QVERIFY(!bytesOf(path).contains("Brightbox")); // photographs are stored as they are
    QVERIFY(!bytesOf(path).contains("Alder"));
    // Her own copy stays as it came; only when she says so does it go out so.
    const Photograph own = *home.parcel().notes.front().faces[0];
    QVERIFY(bytesOf(home.book.folder().original(own.sha, own.format)).contains("Brightbox"));
    const QString told = out.filePath(u"two.matside"_qs);
    QCOMPARE(home.share(told, Photographs::AsTheyCame), QByteArray());
    QVERIFY(bytesOf(told).contains("Brightbox"));
}

QTEST_GUILESS_MAIN(TestBare)
#include "tst_bare.moc"
