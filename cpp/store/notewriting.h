// SPDX-License-Identifier: MIT
#pragma once

#include "store/database.h"
#include "store/photonotes.h"

namespace matside {

/// A note with its photographs, whose files are kept already, inside the caller's transaction. Gives its
/// number.
[[nodiscard]] StoreResult<std::int64_t> writeNote(const Database &database, const PhotoFolder &folder,
                                                  const QString &project, std::int64_t command,
                                                  const Note &note);

} // namespace matside
