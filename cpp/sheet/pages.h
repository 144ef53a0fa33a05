// SPDX-License-Identifier: MIT
#pragma once

#include "bench/shopping.h"
#include "bench/step.h"
#include "plan/plan.h"
#include "sheet/columns.h"

namespace matside {

/// What a sheet is made of: nothing of it is reckoned here.
struct Job {
    const Project &project;
    const Plan &plan;
    const std::vector<Step> &steps;
    const std::vector<Buy> &shop;
};

/// A text of the sheet in her language; it is marked with QT_TRANSLATE_NOOP("Sheet", …).
[[nodiscard]] QString tell(const char *text);

/// The parts of the long form, in order. Each begins where the one before ended, or on a new page.
void piecePart(Paper &paper, const Job &job);
void cautionsPart(Paper &paper, const Job &job);
void shopPart(Paper &paper, const Job &job);
void cutPart(Paper &paper, const Job &job);
void hoopPart(Paper &paper, const Job &job);
void trimPart(Paper &paper, const Job &job);
void joinPart(Paper &paper, const Job &job);
void edgePart(Paper &paper, const Job &job);
void figuresPart(Paper &paper, const Job &job);

/// The short form: one page, whatever the project.
void shortForm(Paper &paper, const Job &job);

/// The class form: for all kits, to buy, and a page for every student (one to be copied for more than 40).
void classForm(Paper &paper, const Job &job);

/// The steps of a station as the screen words them, one row each: how often, what, its figure, what to look
/// at, and once for each kind of danger the caution.
void stepRows(Paper &paper, const Job &job, Station station);

/// The piece on its table to scale, at most this large; gives the height it took.
double pieceDrawing(Paper &paper, const Job &job, double x, double top, double across, double down);

/// The piece alone in a rectangle of its shape.
void drawPiece(QPainter &painter, const Job &job, const QRectF &piece);

/// The drawings of the long form one by one, from `y` down; `y` goes below them. What a project has no need
/// of is left out.
void pieceAlone(Paper &paper, const Job &job);
void flatStrip(Paper &paper, const Job &job);
void drawnInStrip(Paper &paper, const Job &job);
void trimAlone(Paper &paper, const Job &job);
void frontMap(Paper &paper, const Job &job);
void backMap(Paper &paper, const Job &job);
void matchMarks(Paper &paper, const Job &job);
void bindingLaid(Paper &paper, const Job &job);
void clothLayouts(Paper &paper, const Job &job);

/// How one cloth is cut, drawn to scale, with its strips in words; nothing for a cloth that is not bought.
void clothLayout(Paper &paper, const Job &job, const std::string &cloth);
/// How high its first drawing stands.
[[nodiscard]] double clothLayoutTall(const Paper &paper, const Job &job, const std::string &cloth);

/// A bar of exactly 4 in | 100 mm, solid, with the words that say so; `y` goes below it.
void checkBar(Paper &paper, const Job &job);
/// The height it will take with the words beside it.
[[nodiscard]] double checkBarTall(const Paper &paper, const Job &job);
/// Seam, fold, catch, allowance and sashing at true size, all from one edge.
void gauge(Paper &paper, const Job &job);

/// A figure of the plan by its key, named as on the screen; nothing when the plan has none.
[[nodiscard]] std::optional<Named> named(const Job &job, const char *key);
[[nodiscard]] std::vector<Named> named(const Job &job, std::initializer_list<const char *> keys);

/// 1 : n such that `mm` takes no more than `room` mm of paper; n is round.
[[nodiscard]] int scaleFor(double mm, double room);

} // namespace matside
