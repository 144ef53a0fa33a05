// SPDX-License-Identifier: MIT
#pragma once

#include "app/acts.h"
#include "plan/bindinglay.h"
#include "plan/plan.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace matside {

/// What is said of the edge, on the screen and on paper; lengths in braces.

/// Where the binding begins and closes (first), and where its strips are joined.
struct LaidPlace {
    EdgePlace place;
    QString says;
    QString cut; ///< what to cut off the strip first; empty where nothing is
};
[[nodiscard]] std::vector<LaidPlace> bindingPlaces(const Project &project, const BindingLay &lay);
/// What the joins keep clear of, and how much to hang loose.
[[nodiscard]] Acts bindingLayActs(const Project &project, const Plan &plan, const BindingLay &lay);
[[nodiscard]] QString bindingLaySays(const Project &project, const Plan &plan, const BindingLay &lay);
/// How it is sewn round the corners and closed; empty without a binding.
[[nodiscard]] Acts bindingSewActs(const Project &project, const Plan &plan);
[[nodiscard]] QString bindingSewSays(const Project &project, const Plan &plan);
/// The corners themselves, and what a round one does to the stippling; empty without a binding.
[[nodiscard]] QString cornersSay(const Project &project, const Plan &plan);
/// The bias cut as strips across the cloth instead of from a square; empty where no cloth is wide enough.
[[nodiscard]] QString biasStripsSay(const Project &project, const Plan &plan);
[[nodiscard]] QString cornersBite(const Project &project, const Plan &plan);
/// How the frame is cut to length, sewn and filled; nothing where the edge has none.
[[nodiscard]] Acts frameActs(const Project &project, const Plan &plan);
[[nodiscard]] QStringList frameLines(const Project &project, const Plan &plan);
/// Use and washing of the finished piece.
[[nodiscard]] Acts careActs();
[[nodiscard]] QStringList careLines();
/// Sleeve, pillow and label: what may be sewn to it.
[[nodiscard]] Acts useActs(const Project &project, const Plan &plan);
[[nodiscard]] QStringList useLines(const Project &project, const Plan &plan);

} // namespace matside
