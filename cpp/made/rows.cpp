// SPDX-License-Identifier: MIT
#include "made/rows.h"

#include <algorithm>
#include <array>

namespace matside {

namespace {

constexpr std::array remedies{"leave", "ease", "resew-seams", "take-apart"};

RowFinding judgeRow(const MadeRow &row, Length mean, std::int64_t columns, const Tolerances &tolerances)
{
    RowFinding finding;
    finding.row = row.row;
    finding.off = row.length - mean;
    const Length far = finding.off.magnitude();
    const std::int64_t joins = columns - 1;
    const Length bySeams = tolerances.visible * joins, byEasing = tolerances.easePerBlock * columns;
    if (joins > 0) // the row changes by −4 (c − 1) δ
        finding.seamBy = finding.off.scaled(1, 4 * joins);
    if (far <= tolerances.crossing)
        return finding;
    if (far <= tolerances.rowPerColumn * columns) {
        finding.does = RowRemedy::Ease;
        finding.toEase = far;
        return finding;
    }
    finding.toEase = max(Length(), far - bySeams);
    finding.does = finding.toEase <= byEasing && joins > 0 ? RowRemedy::ResewSeams : RowRemedy::TakeApart;
    return finding;
}

} // namespace

std::string_view nameOf(RowRemedy remedy)
{
    return remedies.at(static_cast<std::size_t>(remedy));
}

Length joinedAlong(const std::vector<MadeRow> &rows, Length planned)
{
    if (rows.empty())
        return planned;
    Length sum;
    for (const MadeRow &row : rows)
        sum += row.length;
    return sum.scaled(1, static_cast<std::int64_t>(rows.size()));
}

RowsFinding judgeRows(const std::vector<MadeRow> &rows, std::int64_t columns, const Tolerances &tolerances)
{
    RowsFinding finding;
    if (rows.empty() || columns < 1)
        return finding;
    finding.mean = joinedAlong(rows, Length());
    for (const MadeRow &row : rows)
        finding.rows.push_back(judgeRow(row, finding.mean, columns, tolerances));
    return finding;
}

std::vector<CrossingsFinding> judgeCrossings(const std::vector<MadeRow> &rows, const Tolerances &tolerances)
{
    std::vector<CrossingsFinding> findings;
    for (std::size_t r = 1; r < rows.size(); ++r) {
        CrossingsFinding finding;
        finding.row = rows[r].row;
        const std::size_t joins = std::min(rows[r].joins.size(), rows.front().joins.size());
        for (std::size_t j = 0; j < joins; ++j) {
            const Length off = rows[r].joins[j] - rows.front().joins[j];
            if (finding.join == 0 || off.magnitude() > finding.worst.magnitude()) {
                finding.worst = off;
                finding.join = static_cast<std::int64_t>(j) + 1;
            }
        }
        finding.good = finding.worst.magnitude() <= tolerances.crossing;
        findings.push_back(finding);
    }
    return findings;
}

} // namespace matside
