// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"
#include "plan/plan.h"
#include "project/problem.h"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace matside {

/// The plan file (`format: "matside-plan"`, version 1) of a project: fixed keys, each length as
/// `{in, mm, shows}` with six decimals. `reading` are the problems found while the project was read; they
/// come before the plan's own.
[[nodiscard]] std::string writePlanFile(const Project &project, const Plan &plan,
                                        const std::vector<Step> &steps, const std::vector<Problem> &reading);

/// The plan file of something that could not be read: only `{format, version, problems}`.
[[nodiscard]] std::string writeUnreadable(const Problem &problem);

/// A length as it stands in a plan file; `null` for an overflowed one.
[[nodiscard]] nlohmann::ordered_json lengthFile(Length length, Marks marks, Round round = Round::Nearest);
[[nodiscard]] nlohmann::ordered_json stepsFile(const std::vector<Step> &steps, Marks marks);
[[nodiscard]] nlohmann::ordered_json problemsFile(const std::vector<Problem> &problems, Marks marks);

} // namespace matside
