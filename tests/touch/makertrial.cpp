// SPDX-License-Identifier: MIT
#include "maker.h"

#include "eyes.h"

#include "testing.h"

#include <QQuickItem>

namespace touching {

using namespace matside;

namespace {

constexpr int readingMs = 15000;

} // namespace

/// Reading after reading is read as it is shown, the outline along as it came out; then all are taken.
bool Maker::measureTrial(const Step &step)
{
    ++m_trials;
    const auto enabled = [&](const char *name) {
        const QQuickItem *item = byObjectName(screen(), QLatin1String(name));
        return item && item->isEnabled();
    };
    bool typed = step.does != Does::MeasureTest || trialOutline.isEmpty();
    for (int reads = 0; reads < 12 && (!enabled("action") || !typed); ++reads) {
        const auto inHand = [&] {
            const QQuickItem *value = byObjectName(screen(), QStringLiteral("reading"));
            return value ? spokenName(value) : QString();
        };
        if (!typed && inHand().startsWith(QStringLiteral("measured outline, along "))) {
            if (!touchObject(QStringLiteral("reading")) || !typeOn(trialOutline))
                return false;
            typed = QTest::qWaitFor([&] { return inHand().contains(trialOutline); }, readingMs);
            if (!typed)
                return fail(QStringLiteral("the outline was typed and not taken"));
        } else if (!touchObject(QStringLiteral("read"))) {
            return false;
        }
    }
    return touchObject(QStringLiteral("action"));
}

bool Maker::notFinishedYet()
{
    if (!byObjectName(screen(), QStringLiteral("sheet-resume")))
        return true;
    // What has just come up is not answered by the hand that lies there.
    constexpr int newlyShownMs = 450;
    QTest::qWait(newlyShownMs);
    return touch(QStringLiteral("Not finished: still to do"));
}

} // namespace touching
