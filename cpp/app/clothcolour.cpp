// SPDX-License-Identifier: MIT
#include "app/clothcolour.h"

#include "app/shadewords.h"
#include "app/wording.h"
#include "store/photo.h"

#include <QBuffer>
#include <QColorSpace>
#include <QFile>
#include <QImageReader>

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

/// A larger picture is made smaller as it is read: this many pixels hold about 200 MB.
constexpr qint64 mostPixels = 50'000'000;
/// A place as uneven as this is told: common practice, no published source.
constexpr double unevenFrom = 12;

/// The picture upright, in sRGB; null when it cannot be read whole.
QImage uprightInSrgb(const QString &path)
{
    const auto bytes = readPicture(path);
    if (!bytes || !lookAt(bytes.value()))
        return {};
    QBuffer buffer;
    buffer.setData(bytes.value());
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    const qint64 pixels = qint64(size.width()) * size.height();
    if (size.isValid() && pixels > mostPixels)
        reader.setScaledSize(size * std::sqrt(double(mostPixels) / double(pixels)));
    QImage image = reader.read();
    if (image.isNull())
        return image;
    if (image.colorSpace().isValid() && image.colorSpace() != QColorSpace(QColorSpace::SRgb)) {
        if (image.format() != QImage::Format_ARGB32)
            image = image.convertToFormat(QImage::Format_ARGB32);
        image.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    }
    return image.convertToFormat(QImage::Format_ARGB32);
}

/// Its lines follow each other without gaps: four bytes a pixel need none.
Picture pixelsOf(const QImage &image)
{
    const auto count = static_cast<std::size_t>(image.width()) * static_cast<std::size_t>(image.height());
    return {
        {reinterpret_cast<const std::uint32_t *>(image.constBits()), count}, image.width(), image.height()};
}

} // namespace

ClothColour::ClothColour(Workspace &workspace, Session &session, PhotoKeeper &keeper, PhotoSource &camera,
                         PicturePicker &picker)
    : m_workspace(workspace), m_session(session), m_keeper(keeper), m_camera(camera), m_picker(picker)
{
    for (PhotoSource *source : {&m_camera, static_cast<PhotoSource *>(&m_picker)})
        connect(source, &PhotoSource::captured, this, &ClothColour::receive);
    connect(&m_workspace, &Workspace::changed, this, [this] {
        if (!m_cloth.isEmpty() && !listed())
            setCloth({}); // taken away meanwhile, or another project
        emit changed();
        emit reworded();
    });
}

ClothColour::~ClothColour()
{
    if (m_passing)
        QFile::remove(m_path);
}

const Cloth *ClothColour::listed() const
{
    return m_workspace.isOpen() ? clothNamed(m_workspace.project(), m_cloth.toStdString()) : nullptr;
}

void ClothColour::setCloth(const QString &cloth)
{
    dropPicture();
    m_problem.clear();
    m_cloth = cloth;
    const Cloth *here = cloth.isEmpty() ? nullptr : listed();
    if (!here)
        m_cloth.clear();
    m_colour = here ? readColour(here->colour) : std::nullopt;
    m_shade = m_colour ? shadeOf(*m_colour) : Shade{0, 60, 0};
    emit changed();
}

QString ClothColour::name() const
{
    return m_cloth.isEmpty() ? QString() : clothText(m_workspace.project(), m_cloth.toStdString());
}

QString ClothColour::colour() const
{
    return m_colour ? toQt(writeColour(*m_colour)) : QString();
}

QString ClothColour::grey() const
{
    return m_colour ? toQt(writeColour(greyOf(*m_colour))) : QString();
}

QString ClothColour::says() const
{
    return m_colour ? colourSays(*m_colour) : tr("no colour yet");
}

QVariantList ClothColour::palette() const
{
    return paletteOf(false);
}

QVariantList ClothColour::paletteByHue() const
{
    return paletteOf(true);
}

bool ClothColour::canTake() const
{
    const Cloth *cloth = m_cloth.isEmpty() ? nullptr : listed();
    return cloth && m_colour && !m_session.readOnly() && readColour(cloth->colour) != m_colour;
}

QUrl ClothColour::picture() const
{
    return m_image.isNull() ? QUrl() : QUrl::fromLocalFile(m_path);
}

QString ClothColour::pictureSays() const
{
    if (m_image.isNull())
        return {};
    if (!m_sample)
        return tr("Tap the cloth in the picture.");
    if (m_sample->unevenness >= unevenFrom)
        return tr("Light and dark meet in this place: a print, a fold or a shadow. The mean of all of it is "
                  "shown.");
    return tr("The mean about the place you tapped. Tap another place to compare.");
}

void ClothColour::choose(const QString &colour)
{
    const auto chosen = readColour(colour.toStdString());
    if (m_cloth.isEmpty() || !chosen)
        return;
    m_colour = chosen;
    m_shade = shadeOf(*chosen);
    m_sample.reset();
    emit changed();
}

void ClothColour::nudge(const QString &what, int steps)
{
    if (m_cloth.isEmpty())
        return;
    if (what == QLatin1String("lightness"))
        m_shade.lightness = std::clamp(m_shade.lightness + 5.0 * steps, 0.0, 100.0);
    else if (what == QLatin1String("hue"))
        m_shade.hue = std::fmod(m_shade.hue + 15.0 * steps + 3600.0, 360.0);
    else
        m_shade.strength = std::clamp(m_shade.strength + 0.1 * steps, 0.0, 1.0);
    m_colour = colourOf(m_shade);
    m_sample.reset();
    emit changed();
}

void ClothColour::receive(const QString &path, bool passing)
{
    if (m_cloth.isEmpty()) { // it comes too late
        if (passing)
            QFile::remove(path);
        return;
    }
    const int asked = ++m_asked;
    m_looking = true;
    m_problem.clear();
    emit changed();
    m_keeper.answer<QImage>(
        this, [path] { return uprightInSrgb(path); },
        [this, path, passing, asked](const QImage &image) {
            const bool wanted = asked == m_asked && !m_cloth.isEmpty();
            if (passing && (!wanted || image.isNull()))
                QFile::remove(path);
            if (!wanted)
                return;
            dropPicture();
            if (image.isNull()) {
                m_problem = tr("This picture cannot be read. Choose another one.");
            } else {
                m_path = path;
                m_passing = passing;
                m_image = image;
            }
            emit changed();
            if (!m_image.isNull())
                emit opened();
        });
}

void ClothColour::tap(double across, double down)
{
    if (m_image.isNull())
        return;
    const int radius = std::max(2, static_cast<int>(std::min(m_image.width(), m_image.height()) * reach));
    const auto sample = sampleAt(pixelsOf(m_image), static_cast<int>(std::floor(across * m_image.width())),
                                 static_cast<int>(std::floor(down * m_image.height())), radius);
    if (!sample)
        return;
    m_sample = sample;
    m_spot = {across, down};
    m_colour = sample->mean;
    m_shade = shadeOf(sample->mean);
    emit changed();
}

void ClothColour::dropPicture()
{
    ++m_asked; // one still on its way is not wanted
    m_looking = false;
    if (m_passing)
        QFile::remove(m_path);
    m_passing = false;
    m_path.clear();
    m_image = QImage();
    m_sample.reset();
    emit changed();
}

bool ClothColour::take()
{
    if (!canTake())
        return false;
    Project next = m_workspace.project();
    const std::string id = m_cloth.toStdString();
    for (Cloth &cloth : next.cloths)
        if (cloth.id == id)
            cloth.colour = writeColour(*m_colour);
    return m_workspace.commit("cloth-colour", next);
}

} // namespace matside
