// SPDX-License-Identifier: MIT
#pragma once

#include "project/project.h"

#include <string>

namespace matside {

/// Whose a value is: the system's, as every new piece has it; hers; or it stands nowhere in the project and
/// is reckoned.
enum class Whose { Preset, Hers, Reckoned };

/// The value at a JSON pointer ("/strip/margin").
[[nodiscard]] Whose whoseIs(const Project &project, const std::string &pointer);

} // namespace matside
