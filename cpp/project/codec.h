// SPDX-License-Identifier: MIT
#pragma once

#include "length/result.h"
#include "project/problem.h"
#include "project/project.h"

#include <string>
#include <string_view>
#include <vector>

namespace matside {

/// A project read from a file, with what is wrong in it that a remedy can mend (an unknown value, an
/// impossible count). The field has its default then, so that there is a plan to look at; the value itself
/// stands in the file alone. So mend the text with `applyOffer`, and do not write such a project over it.
struct ReadProject {
    Project project;
    std::vector<Problem> problems;
};

/// Why a file could not be read at all (exit 2): not UTF-8, not JSON, a duplicate key, not this format,
/// a newer version, over a bound (4 MiB, 32 levels, 20 000 values in a list or object, 200 000 in all,
/// 20 000 bytes in a text).
///
/// Codes: not-utf8-or-json, doubled-key, file-too-large, too-deep, too-many-values, text-too-long (json.h has
/// their arguments); not-a-project; version-unknown; version-newer (given, known).
struct Unreadable {
    Problem problem;
};

/// Reads a project file (design page 5.1). Never throws; lengths are strings (bare numbers are taken in
/// the project's unit), wrong types and values become problems at their pointer with the allowed values, the
/// nearest valid one or taking the value away as offers. A null is nothing there, in a list too. Numbers that
/// are kept (prices, unknown keys) are kept to the digit.
///
/// Codes of problems: wrong-type (kind), wrong-count (wanted), not-a-choice (given), needed,
/// not-a-length (given, byte), length-too-long (given, byte), length-too-small (given),
/// not-a-share (given, byte), draw-up-out-of-range (share, most), count-out-of-range (least, most),
/// text-too-long (most), too-many (most; no offer), finest-not-a-mark (length), table-not-whole,
/// doubled-id (id), cloth-not-listed (id), test-block-not-whole, piece-not-whole.
/// Codes of offers: set-length, set-share, set-draw-up, set-count, set-flag, set-choice, set-word, take-away.
[[nodiscard]] Result<ReadProject, Unreadable> readProject(std::string_view json);

/// Writes a project: fixed key order, two-space indent, a final newline; what was unknown comes last.
/// read(write(p)) == p, and write(read(write(p))) is byte-identical.
[[nodiscard]] std::string writeProject(const Project &project);

/// Applies an offer (or any edit) to a project file's text: parent objects are made, key order and numbers
/// stay as they are. Of a list, `Remove` leaves a null. An edit that does not fit leaves the text unchanged.
[[nodiscard]] std::string applyOffer(std::string_view json, const Offer &offer);
[[nodiscard]] std::string applyEdits(std::string_view json, const std::vector<Edit> &edits, System system);

} // namespace matside
