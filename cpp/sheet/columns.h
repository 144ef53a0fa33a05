// SPDX-License-Identifier: MIT
#pragma once

#include "sheet/paper.h"

#include <QStringList>

#include <vector>

namespace matside {

/// One cell of a row.
struct Cell {
    QString text;
    Type type = types::body;
};

/// Rows across the page. A row is never split between pages; the heads are said again on a new page.
class Columns {
public:
    /// `columns` are widths in millimetres, from the left margin on; heads may be empty.
    Columns(Paper &paper, std::vector<double> columns, QStringList heads);
    /// A thin rule and a row beneath it. `least` is its least height; gives the row's top.
    double row(const std::vector<Cell> &cells, double least = 0);
    [[nodiscard]] double at(std::size_t column) const;

private:
    void heads();

    Paper &m_paper;
    std::vector<double> m_columns;
    QStringList m_heads;
    int m_page = 0;
};

/// Figures with their names above them, `across` to a line.
struct Named {
    QString name;
    QString figure;
    bool untried = false; ///< hangs on a trial not made yet
};
void figureGrid(Paper &paper, const std::vector<Named> &figures, int across, Type figure = types::figure);

} // namespace matside
