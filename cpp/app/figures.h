// SPDX-License-Identifier: MIT
#pragma once

#include "app/views.h"
#include "bench/step.h"
#include "project/problem.h"

#include <string_view>

namespace matside {

/// A length as a figure of no plan key.
[[nodiscard]] FigureView figureOf(Length length, Marks marks, Round round = Round::Nearest);
/// A count, a share or a length.
[[nodiscard]] FigureView figureOf(const OfferValue &value, Marks marks);
/// A figure of the plan by its key ("strip.width", "strip.strips", "block.sent.along"): its value, how it is
/// rounded, whether its sum can be told and whether it hangs on a trial not made. Invalid when the plan has
/// no such figure.
[[nodiscard]] FigureView planFigure(const Project &project, const Plan &plan, std::string_view key);

[[nodiscard]] TableView tableView(const Project &project, const Plan &plan);
/// The same words with no blank a line may break at.
[[nodiscard]] QString onOneLine(QString words);
/// A sentence whose lengths no line's end parts: neither number from fraction nor either from the unit.
[[nodiscard]] QString figuresWhole(QString sentence);
[[nodiscard]] RulerView rulerView(const Step &step, const Project &project, const Plan &plan);

} // namespace matside
