// SPDX-License-Identifier: MIT
#pragma once

#include "project/fields.h"
#include "project/readmade.h"

namespace matside {

/// One entry of `made.layouts`; the caller keeps what is not understood.
void readLayout(Fields &fields, MadeLayout &layout);
[[nodiscard]] Json layoutJson(const MadeLayout &layout, System system);

/// The table the piece is for.
void readTable(Fields &fields, std::optional<Table> &table);

/// The pieces of a cloth that are there already.
void readOwned(Fields &cloth, std::vector<OwnedPiece> &owned);
[[nodiscard]] Json ownedJson(const OwnedPiece &owned, System system);

/// The sizes a cloth is sold in ready cut.
void readPackages(Fields &cloth, std::vector<Package> &packages);
[[nodiscard]] Json packageJson(const Package &package, System system);

} // namespace matside
