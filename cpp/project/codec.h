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
/// impossible count). A project with problems is still whole: nothing of the file is lost.
struct ReadProject {
    Project project;
    std::vector<Problem> problems;
};

/// Why a file could not be read at all (exit 2): not UTF-8, not JSON, a duplicate key, not this format,
/// a newer version, over a bound (4 MiB, 32 levels, 20 000 values in a list or object, 200 characters in a
/// name…).
struct Unreadable {
    Problem problem;
};

/// Reads a project file (design page 5.1). Never throws; lengths are strings (bare numbers are taken in
/// the project's unit), wrong types and values become problems at their pointer with the allowed values as
/// offers.
[[nodiscard]] Result<ReadProject, Unreadable> readProject(std::string_view json);

/// Writes a project: fixed key order, two-space indent, a final newline; what was unknown comes last.
/// read(write(p)) == p, and write(read(write(p))) is byte-identical.
[[nodiscard]] std::string writeProject(const Project &project);

/// Applies an offer (or any edit) to a project file's text. An edit that does not fit leaves it unchanged.
[[nodiscard]] std::string applyOffer(std::string_view json, const Offer &offer);
[[nodiscard]] std::string applyEdits(std::string_view json, const std::vector<Edit> &edits, System system);

} // namespace matside
