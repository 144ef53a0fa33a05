// SPDX-License-Identifier: MIT
#include "sheet/columns.h"

#include <algorithm>

namespace matside {

namespace {

constexpr double gutter = 2;   ///< between columns
constexpr double rowAir = 1.3; ///< above and below a row's words

/// Room for the ring before a name.
double markOf(const Named &named)
{
    return named.untried ? 3.6 : 0;
}

} // namespace

Columns::Columns(Paper &paper, std::vector<double> columns, QStringList heads)
    : m_paper(paper), m_columns(std::move(columns)), m_heads(std::move(heads))
{
}

double Columns::at(std::size_t column) const
{
    double x = m_paper.left();
    for (std::size_t i = 0; i < column; ++i)
        x += m_columns[i];
    return x;
}

void Columns::heads()
{
    m_page = m_paper.pages();
    double most = 0;
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        if (const QString &head = m_heads.value(static_cast<qsizetype>(i)); !head.isEmpty())
            most = std::max(most, m_paper.write(at(i), m_paper.y, m_columns[i] - gutter, head, types::soft));
    m_paper.y += most > 0 ? most + 0.8 : 0;
}

double Columns::row(const std::vector<Cell> &cells, double least)
{
    double height = least;
    for (std::size_t i = 0; i < cells.size() && i < m_columns.size(); ++i)
        height = std::max(height, m_paper.tall(m_columns[i] - gutter, cells[i].text, cells[i].type));
    height += 2 * rowAir;
    m_paper.keep(height + (m_page == 0 ? 6 : 0));
    if (m_page != m_paper.pages())
        heads();
    m_paper.line(m_paper.left(), m_paper.y, m_paper.right(), m_paper.y, 0.15);
    const double top = m_paper.y + rowAir;
    for (std::size_t i = 0; i < cells.size() && i < m_columns.size(); ++i)
        m_paper.write(at(i), top, m_columns[i] - gutter, cells[i].text, cells[i].type);
    m_paper.y += height;
    return top;
}

void figureGrid(Paper &paper, const std::vector<Named> &figures, int across, Type figure)
{
    const double step = paper.width() / across;
    for (std::size_t first = 0; first < figures.size(); first += static_cast<std::size_t>(across)) {
        const std::size_t end = std::min(figures.size(), first + static_cast<std::size_t>(across));
        double names = 0;
        double values = 0;
        for (std::size_t i = first; i < end; ++i) {
            names = std::max(names,
                             paper.tall(step - gutter - markOf(figures[i]), figures[i].name, types::small));
            values = std::max(values, paper.tall(step - gutter, figures[i].figure, figure));
        }
        paper.keep(names + values + 3.5);
        for (std::size_t i = first; i < end; ++i) {
            const double x = paper.left() + step * static_cast<double>(i - first);
            const Named &named = figures[i];
            // A ring: it hangs on the trial, as on the screen.
            const double mark = markOf(named);
            if (named.untried) {
                paper.painter().setBrush(Qt::NoBrush);
                const double name = paper.tall(step - gutter - mark, named.name, types::small);
                paper.painter().drawEllipse(QRectF(x + 0.2, paper.y + names - name + 0.9, 2.2, 2.2));
            }
            paper.write(x + mark,
                        paper.y + names - paper.tall(step - gutter - mark, named.name, types::small),
                        step - gutter - mark, named.name, types::small);
            paper.write(x, paper.y + names + 0.4, step - gutter, named.figure, figure);
        }
        paper.y += names + values + 3.5;
    }
}

} // namespace matside
