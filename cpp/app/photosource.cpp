// SPDX-License-Identifier: MIT
#include "app/photosource.h"

#include <QDir>
#include <QFileInfo>
#include <QLibraryInfo>
#include <QLoggingCategory>

namespace matside {

namespace {
Q_LOGGING_CATEGORY(cameraLog, "matside.camera", QtInfoMsg)
} // namespace

PhotoSource::PhotoSource(QObject *parent) : QObject(parent)
{
    m_patience.setSingleShot(true);
    m_patience.setInterval(patienceMs);
    connect(&m_patience, &QTimer::timeout, this, [this] { end(Trouble::Stalled); });
}

QString PhotoSource::says() const
{
    switch (m_trouble) {
    case Trouble::None:
        return {};
    case Trouble::Gone:
        return tr("The camera is gone. Nothing was lost: plug it in again.");
    case Trouble::Stalled:
        return tr("The camera does not answer. Nothing was lost: try again, or choose a picture.");
    case Trouble::Failed:
        return tr("The camera could not take the picture. Nothing was lost: try again, or choose one.");
    }
    return {};
}

void PhotoSource::capture()
{
    if (!ready())
        return;
    m_busy = true;
    m_trouble = Trouble::None;
    m_patience.start();
    emit changed();
    take();
}

void PhotoSource::end(Trouble trouble)
{
    m_patience.stop();
    m_busy = false;
    m_trouble = trouble;
    emit changed();
}

void PhotoSource::deliver(const QString &path, bool passing)
{
    end(Trouble::None);
    emit captured(path, passing);
}

void PhotoSource::fail()
{
    end(Trouble::Failed);
}

void PhotoSource::setState(bool present, bool able)
{
    if (present == m_present && able == m_able)
        return;
    const bool vanished = m_present && !present;
    const bool returned = !m_present && present;
    m_present = present;
    m_able = able;
    if (vanished)
        end(Trouble::Gone);
    else if (returned)
        end(Trouble::None);
    else
        emit changed();
}

CameraSource::CameraSource(QObject *parent) : PhotoSource(parent) {}

bool CameraSource::installed()
{
    const QString modules = QLibraryInfo::path(QLibraryInfo::QmlImportsPath);
    return QFileInfo::exists(modules + QStringLiteral("/QtMultimedia/qmldir"));
}

bool CameraSource::plugged()
{
#ifdef Q_OS_LINUX
    // Asked of the kernel: Qt Multimedia would open a sound server to answer.
    return !QDir(QStringLiteral("/dev")).entryList({QStringLiteral("video*")}, QDir::System).isEmpty();
#else
    return true;
#endif
}

QUrl CameraSource::view() const
{
    return installed() && plugged() ? QUrl(QStringLiteral("qrc:/qt/qml/Matside/Stations/PhotoCamera.qml"))
                                    : QUrl();
}

void CameraSource::failed(const QString &detail)
{
    qCInfo(cameraLog) << "the camera says" << detail;
    fail();
}

void CameraSource::take()
{
    if (!m_folder)
        m_folder.emplace();
    if (!m_folder->isValid()) {
        fail();
        return;
    }
    ++m_taken;
    emit wanted(m_folder->filePath(QStringLiteral("picture-%1.jpg").arg(m_taken)));
}

} // namespace matside
