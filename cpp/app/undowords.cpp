// SPDX-License-Identifier: MIT
#include "app/undowords.h"

#include "app/wording.h"

#include <QCoreApplication>

#include <algorithm>

namespace matside {

namespace {

/// What a field holds because she said so; what is reckoned follows from another.
OfferValue saidIn(const Field &field, const Project &project, const Plan &plan)
{
    const bool said = field.get && (!field.given || field.given(project));
    return said ? field.get(project, plan) : OfferValue(Remove{});
}

bool isValue(FieldKind kind)
{
    return kind != FieldKind::Head && kind != FieldKind::Away && kind != FieldKind::More;
}

QString labelOf(const Field &field, const Project &project)
{
    QString label = wordsOrCode(fieldWords(), field.label.empty() ? field.pointer : field.label);
    for (std::size_t i = 0; i < project.cloths.size(); ++i)
        if (field.item == "/cloths/" + std::to_string(i))
            //: %1 is a cloth's name, %2 what was changed of it
            return inWords(QT_TRANSLATE_NOOP("Words", "%1: %2"))
                .arg(clothText(project, project.cloths[i].id), label);
    return label;
}

} // namespace

FieldsBefore::FieldsBefore(const Project &project, const Plan &plan)
{
    for (const Field &field : fieldsOf(project))
        if (isValue(field.kind))
            m_values.emplace_back(field.pointer, saidIn(field, project, plan));
}

QString FieldsBefore::changed(const Project &project, const Plan &plan) const
{
    for (const Field &field : fieldsOf(project)) {
        const auto before = std::ranges::find(
            m_values, field.pointer, [](const auto &held) -> const auto & { return held.first; });
        if (before != m_values.end() && isValue(field.kind) && before->second != saidIn(field, project, plan))
            return labelOf(field, project);
    }
    return {};
}

QString stepSays(const std::vector<Step> &steps, const std::string &about, const Project &project)
{
    const auto step = std::ranges::find(steps, about, &Step::id);
    if (about.empty() || step == steps.end())
        return {};
    // "Join two blocks with a short sashing: sew, press, sew, …"
    QString says = doesText(*step, project).section(QLatin1Char(':'), 0, 0).trimmed();
    if (says.endsWith(QLatin1Char('.')))
        says.chop(1);
    return says;
}

} // namespace matside
