// SPDX-License-Identifier: MIT
#pragma once

#include "window.h"

namespace measure {

/// The large piece (planning.h) as a project file, on a table it nearly covers so that its corner can be
/// taken.
[[nodiscard]] QString largeDocument();

/// A finger drags the piece's corner at the Fit station: from each touch event to the end of the frame that
/// shows its figure. Nothing when the window or the corner could not be found.
[[nodiscard]] std::optional<Followed> dragCorner(Stage &stage, int moves);

/// A finger slides along the strip at the Hoop station, there and back.
[[nodiscard]] std::optional<Followed> scrubStrip(Stage &stage, int moves);

/// The gallery drawn up and down by its list: every frame that moved it.
[[nodiscard]] std::optional<Times> scrollGallery(Stage &stage, int steps);

} // namespace measure
