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

/// Reads JSON (RFC 8259, UTF-8) within bounds and without doubled keys, in time linear in the text. Never
/// throws. Codes: not-utf8-or-json (line, column; also a number no double can hold), doubled-key (key),
/// file-too-large (bytes, most), too-deep (most), too-many-values (most), text-too-long (most)
///
/// A number that a double would not give back to the digit (9.50, 1e3, 23 digits) is held as its text; ask
/// the three functions below instead of `is_number()` and write with `writeJson`.
[[nodiscard]] Result<Json, Problem> readJson(std::string_view text, const JsonBounds &bounds = {});

[[nodiscard]] bool isNumber(const Json &held);
/// As it stood in the file; only of a number.
[[nodiscard]] std::string numberText(const Json &held);
/// Near enough to compare with a bound; only of a number.
[[nodiscard]] double numberValue(const Json &held);

enum class Layout { Indented, OneLine };
/// Two spaces a level, or all on one line; numbers as they were read, bytes that are no UTF-8 replaced.
[[nodiscard]] std::string writeJson(const Json &json, Layout layout);

/// A whole file: indented, or on one line where indenting would take it over the bound it is read with.
[[nodiscard]] std::string writeFile(const Json &json);

/// Appends a key that the object is known not to have: `json[key]` would look through all of them first.
void append(Json &object, std::string key, Json value);

/// A value as an offer writes it: lengths and shares in the project file's own words, null to take a key
/// away.
[[nodiscard]] Json asJson(const OfferValue &value, System system);

/// A key or index as a JSON pointer's further step (RFC 6901).
[[nodiscard]] std::string step(std::string_view pointer, std::string_view key);
[[nodiscard]] std::string step(std::string_view pointer, std::size_t index);

} // namespace matside
