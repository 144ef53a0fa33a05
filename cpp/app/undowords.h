// SPDX-License-Identifier: MIT
#pragma once

#include "app/field.h"
#include "bench/step.h"

#include <QString>

#include <string>
#include <utility>
#include <vector>

namespace matside {

/// What stood in her fields, to be compared with what stands there after a command was taken back.
class FieldsBefore {
public:
    FieldsBefore(const Project &project, const Plan &plan);
    /// The first field that now reads otherwise, by its name ("seam", "Oat linen: usable width"); empty when
    /// none does.
    [[nodiscard]] QString changed(const Project &project, const Plan &plan) const;

private:
    std::vector<std::pair<std::string, OfferValue>> m_values;
};

/// What a step does, short enough for a message: "Cut a sashing band of oat linen". `about` is the step's id;
/// empty when no step has it.
[[nodiscard]] QString stepSays(const std::vector<Step> &steps, const std::string &about,
                               const Project &project);

} // namespace matside
