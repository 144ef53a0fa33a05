// SPDX-License-Identifier: MIT
#include "app/fieldsmodel.h"

#include "app/figures.h"
#include "app/shadewords.h"
#include "app/wording.h"
#include "length/read.h"
#include "plan/mats.h"
#include "project/spelling.h"

#include <QLocale>
#include <QVariantMap>

#include <algorithm>
#include <utility>

namespace matside {

namespace {

const char *kindName(FieldKind kind)
{
    switch (kind) {
    case FieldKind::Length:
        return "length";
    case FieldKind::Count:
        return "count";
    case FieldKind::Choice:
        return "choice";
    case FieldKind::Share:
        return "share";
    case FieldKind::Name:
        return "name";
    case FieldKind::Price:
        return "price";
    case FieldKind::Colour:
        return "colour";
    case FieldKind::Head:
        return "head";
    case FieldKind::Away:
        return "away";
    case FieldKind::More:
        return "more";
    case FieldKind::Flag:
        break;
    }
    return "flag";
}

/// The cloth or ruler of a pointer like "/cloths/2".
template <class T> const T *itemAt(const std::vector<T> &list, const char *name, const std::string &item)
{
    for (std::size_t i = 0; i < list.size(); ++i)
        if (item == '/' + std::string(name) + '/' + std::to_string(i))
            return &list[i];
    return nullptr;
}

/// A cloth or ruler by its own name.
QString nameOf(const Project &project, const std::string &item)
{
    if (const Cloth *cloth = itemAt(project.cloths, "cloths", item))
        return toQt(cloth->name.empty() ? cloth->id : cloth->name);
    const Ruler *ruler = itemAt(project.rulers, "rulers", item);
    return ruler ? toQt(ruler->name) : QString();
}

/// What is said of a cloth or ruler beside its name: the part it plays, or how large it is.
QString saidOf(const Project &project, const std::string &item)
{
    if (const Cloth *cloth = itemAt(project.cloths, "cloths", item))
        return wordsOrCode(choiceWords(), spelling::wordFor(spelling::role, cloth->role));
    const Ruler *ruler = itemAt(project.rulers, "rulers", item);
    if (!ruler)
        return {};
    //: a ruler's length and width
    return FieldsModel::tr("%1 by %2")
        .arg(figureText(ruler->length, project.marks()), figureText(ruler->width, project.marks()));
}

std::string codeOf(const OfferValue &value)
{
    if (const bool *flag = std::get_if<bool>(&value))
        return *flag ? "true" : "false";
    const std::string *word = std::get_if<std::string>(&value);
    return word ? *word : std::string();
}

QVariant plainValue(const OfferValue &value, System system)
{
    if (const bool *flag = std::get_if<bool>(&value))
        return *flag;
    if (const Length *length = std::get_if<Length>(&value))
        return toQt(writeLength(*length, system));
    if (const std::int64_t *count = std::get_if<std::int64_t>(&value))
        return QString::number(*count);
    return toQt(codeOf(value));
}

QVariantList choicesOf(const Field &field)
{
    QVariantList list;
    for (const std::string &choice : field.choices)
        list.append(QVariantMap{{QStringLiteral("value"), toQt(choice)},
                                {QStringLiteral("says"), wordsOrCode(choiceWords(), choice)}});
    return list;
}

/// A problem at the field itself or at the whole it is part of.
QString problemAt(const Plan &plan, const Field &field, Marks marks)
{
    const auto inside = [pointer = std::string_view(field.pointer)](std::string_view whole) {
        return pointer.starts_with(whole) && (pointer.size() == whole.size() || pointer[whole.size()] == '/');
    };
    for (const Problem &problem : plan.problems)
        if (inside(problem.at))
            return figuresWhole(sentence(problem, marks));
    return {};
}

bool alike(Marks a, Marks b)
{
    return a.system == b.system && a.finest == b.finest;
}

/// A value in words: a choice by its own, a colour of hers by its hue and step.
QString valueSays(FieldKind kind, const std::string &code)
{
    if (const auto colour = kind == FieldKind::Colour ? readColour(code) : std::nullopt)
        return colourSays(*colour);
    return wordsOrCode(choiceWords(), code);
}

/// A price as it is written, with the point of the reader's language.
FigureView priceOf(const OfferValue &value)
{
    FigureView view;
    view.text = toQt(codeOf(value)).replace(u'.', QLocale().decimalPoint());
    view.whole = view.text;
    view.valid = !view.text.isEmpty();
    return view;
}

} // namespace

FieldsModel::FieldsModel(Workspace &workspace) : m_workspace(workspace) {}

FieldsModel::State FieldsModel::stateOf(std::size_t row, const State *before) const
{
    const Field &field = m_fields[row];
    const Project &project = m_workspace.project();
    State now;
    now.value = field.get(project, m_workspace.plan());
    now.marks = project.marks();
    if (before && now.value == before->value && alike(now.marks, before->marks)) {
        now.figure = before->figure;
        now.canLess = before->canLess;
        now.canMore = before->canMore;
    } else {
        now.figure = field.kind == FieldKind::Price ? priceOf(now.value) : figureOf(now.value, now.marks);
        now.canLess = nudged(field, now.value, -1, project) != now.value;
        now.canMore = nudged(field, now.value, 1, project) != now.value;
    }
    if (field.kind == FieldKind::Head) {
        now.label = nameOf(project, field.item);
        now.said = saidOf(project, field.item);
    } else {
        // The pieces of a set are mats, which taking one layout or another turns them into.
        const bool mats = field.pointer == "/kits" && setOfMats(project, m_workspace.plan());
        now.label = before && field.pointer != "/kits" ? before->label
                    : mats                             ? wordsOrCode(fieldWords(), "mats")
                           : wordsOrCode(fieldWords(), field.label.empty() ? field.pointer : field.label);
        if (field.kind == FieldKind::Choice || field.kind == FieldKind::Flag ||
            field.kind == FieldKind::Colour)
            now.said = before && now.value == before->value ? before->said
                                                            : valueSays(field.kind, codeOf(now.value));
    }
    if (!m_workspace.plan().problems.empty())
        now.problem = problemAt(m_workspace.plan(), field, now.marks);
    now.first = row == 0 || std::string_view(m_fields[row - 1].group) != field.group;
    now.reckoned = field.given && !field.given(project);
    now.inUse = !field.inUse || field.inUse(project);
    // A number alone says little of the blocks: the head of their group tells both.
    if (field.pointer == "/blocks/columns")
        now.said = QStringLiteral("%1 × %2").arg(project.blocks.columns).arg(project.blocks.rows);
    return now;
}

void FieldsModel::startAnew()
{
    beginResetModel();
    m_fields = fieldsOf(m_workspace.project());
    m_states.clear();
    for (std::size_t row = 0; row < m_fields.size(); ++row)
        m_states.push_back(stateOf(row, nullptr));
    endResetModel();
    emit countChanged();
}

void FieldsModel::rearrange()
{
    std::vector<Field> fields = fieldsOf(m_workspace.project());
    const auto alike = [](const Field &a, const Field &b) { return a.pointer == b.pointer; };
    const auto head =
        std::mismatch(m_fields.begin(), m_fields.end(), fields.begin(), fields.end(), alike).first -
        m_fields.begin();
    const auto most = std::min(std::ssize(m_fields), std::ssize(fields)) - head;
    const auto tail = std::min<std::ptrdiff_t>(
        most, std::mismatch(m_fields.rbegin(), m_fields.rend(), fields.rbegin(), fields.rend(), alike).first -
                  m_fields.rbegin());
    const auto gone = std::ssize(m_fields) - head - tail;
    const auto come = std::ssize(fields) - head - tail;
    const int first = static_cast<int>(head);
    if (gone > 0) {
        beginRemoveRows({}, first, first + static_cast<int>(gone) - 1);
        m_fields.erase(m_fields.begin() + head, m_fields.begin() + head + gone);
        m_states.erase(m_states.begin() + head, m_states.begin() + head + gone);
        endRemoveRows();
    }
    if (come > 0) {
        beginInsertRows({}, first, first + static_cast<int>(come) - 1);
        m_fields.insert(m_fields.begin() + head, fields.begin() + head, fields.begin() + head + come);
        m_states.insert(m_states.begin() + head, static_cast<std::size_t>(come), State());
        for (auto row = head; row < head + come; ++row)
            m_states[static_cast<std::size_t>(row)] = stateOf(static_cast<std::size_t>(row), nullptr);
        endInsertRows();
    }
    emit countChanged();
}

void FieldsModel::updateRow(std::size_t row)
{
    State now = stateOf(row, &m_states[row]);
    State &before = m_states[row];
    QList<int> roles;
    const auto tell = [&roles](bool differs, Role role) {
        if (differs)
            roles << role;
    };
    tell(now.value != before.value, Value);
    tell(now.figure != before.figure, Figure);
    tell(now.label != before.label, Label);
    tell(now.said != before.said, ChoiceText);
    tell(now.problem != before.problem, ProblemText);
    tell(now.canLess != before.canLess, CanLess);
    tell(now.canMore != before.canMore, CanMore);
    tell(now.reckoned != before.reckoned, Reckoned);
    tell(now.first != before.first, FirstOfGroup);
    tell(now.inUse != before.inUse, InUse);
    before = std::move(now);
    if (roles.isEmpty())
        return;
    const QModelIndex at = index(static_cast<int>(row));
    emit dataChanged(at, at, roles);
}

void FieldsModel::refresh()
{
    const Project &project = m_workspace.project();
    const Shape shape{project.system, project.cloths.size(), project.rulers.size(), QLocale().name()};
    const Shape before = std::exchange(m_shape, shape);
    if (m_fields.empty() || shape.system != before.system || shape.tongue != before.tongue)
        return startAnew();
    if (shape != before)
        rearrange();
    for (std::size_t row = 0; row < m_fields.size(); ++row)
        updateRow(row);
}

const Field *FieldsModel::find(const QString &pointer) const
{
    const std::string wanted = pointer.toStdString();
    for (const Field &field : m_fields)
        if (field.pointer == wanted)
            return &field;
    return nullptr;
}

int FieldsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant FieldsModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto row = static_cast<std::size_t>(index.row());
    const Field &field = m_fields[row];
    const State &state = m_states[row];
    switch (role) {
    case Pointer:
        return toQt(field.pointer);
    case Group:
        return wordsOrCode(fieldWords(), std::string("group:") + field.group);
    case GroupSign:
        return QString::fromLatin1(field.group);
    case Label:
        return state.label;
    case Kind:
        return QString::fromLatin1(kindName(field.kind));
    case Figure:
        return QVariant::fromValue(state.figure);
    case Value:
        return plainValue(state.value, state.marks.system);
    case Choices:
        return choicesOf(field);
    case ChoiceText:
        return state.said;
    case ProblemText:
        return state.problem;
    case CanLess:
        return state.canLess;
    case CanMore:
        return state.canMore;
    case Reckoned:
        return state.reckoned;
    case FirstOfGroup:
        return state.first;
    case Item:
        return toQt(field.item);
    case InUse:
        return state.inUse;
    default:
        return {};
    }
}

QHash<int, QByteArray> FieldsModel::roleNames() const
{
    return {{Pointer, "pointer"},
            {Group, "group"},
            {GroupSign, "groupSign"},
            {Label, "label"},
            {Kind, "kind"},
            {Figure, "figure"},
            {Value, "value"},
            {Choices, "choices"},
            {ChoiceText, "choiceText"},
            {ProblemText, "problem"},
            {CanLess, "canLess"},
            {CanMore, "canMore"},
            {Reckoned, "reckoned"},
            {InUse, "inUse"},
            {FirstOfGroup, "firstOfGroup"},
            {Item, "item"}};
}

} // namespace matside
