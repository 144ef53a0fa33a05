// SPDX-License-Identifier: MIT
#include "main/pictures.h"

#include "main/scenes.h"
#include "main/states.h"
#include "main/wordsfit.h"

#include <QDir>
#include <QImage>

#include <cstdio>

namespace matside {

namespace {

constexpr const char *sets[] = {"day", "lamp", "contrast"};

/// Where a picture goes: what it shows, at which size, in which light, for which hand.
QString pathOf(const QString &dir, const Scene &scene, const Sheet &sheet, const char *set, bool left)
{
    return QStringLiteral("%1/%2-%3x%4-%5-%6.png")
        .arg(dir, scene.name)
        .arg(sheet.width)
        .arg(sheet.height)
        .arg(QLatin1String(set), left ? QStringLiteral("left") : QStringLiteral("right"));
}

bool wanted(const Scene &scene, const QString &only)
{
    return only.isEmpty() || only.split(u',').contains(scene.name);
}

bool wanted(const Sheet &sheet, const QString &at)
{
    const QString size = QStringLiteral("%1x%2").arg(sheet.width).arg(sheet.height);
    return at.isEmpty() || at.split(u',').contains(size);
}

/// Every page, and every state of the work.
std::vector<Scene> allOf(Room &room, QQuickWindow &window)
{
    std::vector<Scene> all = scenesOf(room, window);
    for (Scene &state : statesOf(room, window))
        all.push_back(std::move(state));
    return all;
}

void lay(Room &room, QQuickWindow &window, const Sheet &sheet)
{
    room.look().setPxPerMm(sheet.pxPerMm);
    window.resize(sheet.width, sheet.height);
}

/// What does not fit once the page has come to rest: rows are laid out some frames after they are made.
QStringList misfitsAtRest(QQuickWindow &window, bool whole)
{
    QStringList found;
    for (int look = 0; look < 25; ++look) {
        settle(60);
        found = wordsThatDoNotFit(window, whole);
        if (found.isEmpty())
            break;
    }
    return found;
}

/// The window once it has come to rest: drawings are painted some frames after they are made, later still on
/// a busy machine.
QImage pictureAtRest(QQuickWindow &window)
{
    settle(100);
    QImage last = window.grabWindow();
    for (int look = 0; look < 25; ++look) {
        settle(60);
        const QImage next = window.grabWindow();
        if (next == last)
            break;
        last = next;
    }
    return last;
}

/// Any warning while the self test runs fails it, whoever gives it.
int warningsHeard = 0;
QtMessageHandler before = nullptr;
void hear(QtMsgType type, const QMessageLogContext &context, const QString &message)
{
    if (type != QtDebugMsg && type != QtInfoMsg)
        ++warningsHeard;
    if (before)
        before(type, context, message);
}

} // namespace

int takePictures(Room &room, const QString &dir, const QString &only, const QString &at)
{
    QQuickWindow *window = windowOf(room);
    if (!window || !QDir().mkpath(dir))
        return 1;
    int written = 0;
    int failed = 0;
    for (const Sheet &sheet : sheets) {
        if (!wanted(sheet, at))
            continue;
        lay(room, *window, sheet);
        for (const Scene &scene : allOf(room, *window)) {
            if (!wanted(scene, only))
                continue;
            scene.open();
            for (const char *set : sets) {
                room.look().setColourSet(QLatin1String(set));
                for (const bool left : {false, true}) {
                    // What is drawn once a set shows the left hand by lamplight.
                    if (!scene.bothHands && left != (set == sets[1]))
                        continue;
                    room.session().setLeftHanded(left);
                    const bool saved = pictureAtRest(*window).save(pathOf(dir, scene, sheet, set, left));
                    saved ? ++written : ++failed;
                }
            }
            scene.leave();
        }
    }
    std::fprintf(stdout, "%d pictures written to %s\n", written, qPrintable(dir));
    return failed == 0 ? 0 : 1;
}

int selfTest(Room &room)
{
    QQuickWindow *window = windowOf(room);
    if (!window)
        return 1;
    warningsHeard = 0;
    before = qInstallMessageHandler(hear);
    for (const Sheet &sheet : sheets) {
        lay(room, *window, sheet);
        for (const Scene &scene : allOf(room, *window)) {
            scene.open();
            settle(30);
            scene.leave();
        }
    }
    qInstallMessageHandler(before);
    return warningsHeard == 0 ? 0 : 1;
}

int checkWords(Room &room, const QString &only, const QString &at, bool whole)
{
    QQuickWindow *window = windowOf(room);
    if (!window)
        return 1;
    int misfits = 0;
    int looked = 0;
    for (const Sheet &sheet : sheets) {
        if (!wanted(sheet, at))
            continue;
        lay(room, *window, sheet);
        for (const Scene &scene : allOf(room, *window)) {
            if (!wanted(scene, only))
                continue;
            scene.open();
            ++looked;
            for (const QString &says : misfitsAtRest(*window, whole)) {
                std::fprintf(stderr, "%s, %d x %d: %s\n", qPrintable(scene.name), sheet.width, sheet.height,
                             qPrintable(says));
                ++misfits;
            }
            scene.leave();
        }
    }
    std::fprintf(stdout, "%d words cannot be read whole, of %d pages\n", misfits, looked);
    return misfits == 0 && looked > 0 ? 0 : 1;
}

} // namespace matside
