// SPDX-License-Identifier: MIT
#pragma once

namespace measure {

/// A finger drags the piece's corner at the Fit station, 1280 × 800, software renderer, no screen: from each
/// touch event to the end of the frame that shows its figure. Needs a QGuiApplication. False when the
/// window or the corner could not be found.
[[nodiscard]] bool frameWhileDragging(int moves);

} // namespace measure
