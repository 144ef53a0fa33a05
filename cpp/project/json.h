// SPDX-License-Identifier: MIT
#pragma once

#include "length/result.h"
#include "project/problem.h"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace matside {

using Json = nlohmann::ordered_json;

/// Bounds on a file before anything is made of it.
struct JsonBounds {
    std::size_t bytes = 4U << 20U;
    std::size_t depth = 32;
    std::size_t values = 200'000;
    std::size_t children = 20'000; ///< in one list or object
    std::size_t text = 20'000;     ///< bytes in one string
};

/// Reads JSON (RFC 8259, UTF-8) within bounds and without doubled keys. Never throws. Codes:
/// not-utf8-or-json (line, column), doubled-key (key, line), file-too-large (bytes, most), too-deep (most),
/// too-many-values (most), text-too-long (most)
[[nodiscard]] Result<Json, Problem> readJson(std::string_view text, const JsonBounds &bounds = {});

/// A key or index as a JSON pointer's further step (RFC 6901).
[[nodiscard]] std::string step(std::string_view pointer, std::string_view key);
[[nodiscard]] std::string step(std::string_view pointer, std::size_t index);

} // namespace matside
