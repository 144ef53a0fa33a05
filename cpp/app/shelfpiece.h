// SPDX-License-Identifier: MIT
#pragma once

#include "app/views.h"
#include "project/project.h"

#include <QVariantMap>

namespace matside {

/// What the shelf tells of a piece: how it looks, how large it will be, how far it is and what comes next.
struct ShelfPiece {
    TableView view;      ///< to scale; while there is no size yet, as if its blocks lay edge to edge
    QVariantMap face;    ///< its colours, as PiecePicture takes them
    QVariantList made;   ///< of each place of the layout, row by row: whether its block is stitched
    bool metric = false; ///< in millimetres already
    QString size;        ///< the finished size in words; empty while there is none
    QString stitched;    ///< "5 of 18 blocks stitched"
    double share = 0;    ///< of all that is to be done, 0 to 1; the trial aside
    QString next;        ///< what comes next, or why nothing can
    bool goesOn = false; ///< there is a next step
};

[[nodiscard]] ShelfPiece shelfPiece(const Project &project);

} // namespace matside
