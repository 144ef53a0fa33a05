// SPDX-License-Identifier: MIT
#pragma once

#include "project/json.h"
#include "project/made.h"

namespace matside {

/// Reads and writes what was made (design page 5.4). What is wrong becomes a problem at its pointer.
[[nodiscard]] Made readMade(const Json &object, const std::string &pointer, System system,
                            std::vector<Problem> &problems);
[[nodiscard]] Json writeMade(const Made &made, System system);

/// Appends what an object did not understand when it was read; keys it has stay as they are.
void addRest(Json &object, const std::string &rest);

} // namespace matside
