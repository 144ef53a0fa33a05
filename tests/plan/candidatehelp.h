// SPDX-License-Identifier: MIT
#pragma once

#include "planhelp.h"

#include "plan/candidates.h"

/// What the tests of the layouts that would fit have in common.
namespace candidatehelp {

/// 7 in blocks and hoop Q; the outer allowance is kept whole (a = 1/2), as the case has it.
inline matside::Project onTable(matside::Table table)
{
    matside::Project project =
        planhelp::piece(3, 3, planhelp::in(7), planhelp::hoopQ(), planhelp::in(40, 1, 2));
    project.edge.outside = planhelp::in(0, 1, 2);
    project.table = std::move(table);
    return project;
}

/// How far a layout lies from what was asked, both ways together.
inline matside::Length missOf(const matside::Candidate &candidate)
{
    return candidate.over.along.magnitude() + candidate.over.across.magnitude();
}

/// Every layout in a line, for a message.
inline QByteArray told(const matside::Candidates &found)
{
    QByteArray all = found.none ? QByteArray::fromStdString(found.none->code) : QByteArray();
    for (const matside::Candidate &candidate : found.list)
        all += QStringLiteral("%1x%2 of %3: %4 by %5; ")
                   .arg(candidate.project.blocks.columns)
                   .arg(candidate.project.blocks.rows)
                   .arg(candidate.project.blocks.width.asInches())
                   .arg(candidate.plan.size.finished.along.asInches())
                   .arg(candidate.plan.size.finished.across.asInches())
                   .toUtf8();
    return all;
}

} // namespace candidatehelp
