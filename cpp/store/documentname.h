// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <optional>

namespace matside {

/// The text under "name" of a JSON object (RFC 8259), empty when it has none; nothing when the document is no
/// object from its first character to its last. Every edit is looked at, so no tree is built of it.
[[nodiscard]] std::optional<QString> nameInObject(const QString &document);

} // namespace matside
