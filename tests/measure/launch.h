// SPDX-License-Identifier: MIT
#pragma once

#include "times.h"

#include <QStringList>

#include <optional>

namespace measure {

/// Programs started anew each time, as children of this one.
struct Launched {
    Times firstFrame; ///< from the start of the process to the end of its first drawn frame
    double peak = 0;  ///< median of the most memory each had resident, in MB (10⁶ bytes)
};

/// One way to start a program.
struct Launch {
    QString program;
    QStringList arguments;
};

/// Both `rounds` times, turn about. A frame is drawn when Qt Quick says so in its own log; the peak is what
/// the kernel reports (VmHWM) a second after it.
[[nodiscard]] std::optional<std::array<Launched, 2>> launchBoth(const std::array<Launch, 2> &both,
                                                                int rounds);

} // namespace measure
