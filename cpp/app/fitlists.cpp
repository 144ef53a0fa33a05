// SPDX-License-Identifier: MIT
#include "app/fitlists.h"

#include "app/figures.h"
#include "app/wording.h"
#include "length/read.h"

#include <QVariantMap>

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
    case FieldKind::Flag:
        break;
    }
    return "flag";
}

QString labelOf(const Field &field)
{
    const QString label = wordsOrCode(fieldWords(), field.label.empty() ? field.pointer : field.label);
    return field.name.empty() ? label : toQt(field.name) + QStringLiteral(", ") + label;
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
    for (const Problem &problem : plan.problems)
        if (field.pointer == problem.at || field.pointer.starts_with(problem.at + '/'))
            return sentence(problem, marks);
    return {};
}

/// Tells the views that every row may read otherwise, without taking rows away under a finger.
void allChanged(QAbstractItemModel &model)
{
    if (model.rowCount() > 0)
        emit model.dataChanged(model.index(0, 0), model.index(model.rowCount() - 1, 0));
}

} // namespace

FieldsModel::FieldsModel(Workspace &workspace) : m_workspace(workspace) {}

void FieldsModel::refresh()
{
    std::vector<Field> fields = fieldsOf(m_workspace.project());
    const bool same =
        std::equal(fields.begin(), fields.end(), m_fields.begin(), m_fields.end(),
                   [](const Field &a, const Field &b) { return a.pointer == b.pointer && a.name == b.name; });
    if (same)
        return allChanged(*this);
    beginResetModel();
    m_fields = std::move(fields);
    endResetModel();
    emit countChanged();
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
    const Field &field = m_fields[static_cast<std::size_t>(index.row())];
    const Project &project = m_workspace.project();
    const OfferValue value = field.get(project, m_workspace.plan());
    switch (role) {
    case Pointer:
        return toQt(field.pointer);
    case Group:
        return wordsOrCode(fieldWords(), std::string("group:") + field.group);
    case Label:
        return labelOf(field);
    case Kind:
        return QString::fromLatin1(kindName(field.kind));
    case Figure:
        return QVariant::fromValue(figureOf(value, project.marks()));
    case Value:
        return plainValue(value, project.system);
    case Choices:
        return choicesOf(field);
    case ChoiceText:
        return field.kind == FieldKind::Choice || field.kind == FieldKind::Flag
                   ? wordsOrCode(choiceWords(), codeOf(value))
                   : QString();
    case ProblemText:
        return problemAt(m_workspace.plan(), field, project.marks());
    case CanLess:
        return nudged(field, value, -1, project) != value;
    case CanMore:
        return nudged(field, value, 1, project) != value;
    case Reckoned:
        return field.given && !field.given(project);
    case FirstOfGroup:
        return index.row() == 0 ||
               std::string_view(m_fields[static_cast<std::size_t>(index.row()) - 1].group) != field.group;
    case InUse:
        return !field.inUse || field.inUse(project);
    default:
        return {};
    }
}

QHash<int, QByteArray> FieldsModel::roleNames() const
{
    return {{Pointer, "pointer"},     {Group, "group"},
            {Label, "label"},         {Kind, "kind"},
            {Figure, "figure"},       {Value, "value"},
            {Choices, "choices"},     {ChoiceText, "choiceText"},
            {ProblemText, "problem"}, {CanLess, "canLess"},
            {CanMore, "canMore"},     {Reckoned, "reckoned"},
            {InUse, "inUse"},         {FirstOfGroup, "firstOfGroup"}};
}

FiguresModel::FiguresModel(Workspace &workspace) : m_workspace(workspace) {}

void FiguresModel::refresh()
{
    static constexpr std::array keys{
        "strip.width",         "strip.perStrip",       "strip.strips",         "strip.gap",
        "strip.end",           "strip.advance",        "strip.remainder",      "block.sent.along",
        "block.sent.across",   "block.trimmed.along",  "block.trimmed.across", "sashing.cutFront",
        "sashing.cutBack",     "sashing.expected",     "sashing.shorts.count", "sashing.shorts.length",
        "sashing.longs.count", "sashing.longs.length", "fold.under",           "fold.catchShown",
        "size.raw.along",      "size.raw.across",      "binding.cut",          "binding.length",
        "binding.strips",      "table.reveal.along",   "table.reveal.across",  "table.corner"};
    std::vector<FigureView> figures;
    for (const char *key : keys)
        if (FigureView figure = planFigure(m_workspace.project(), m_workspace.plan(), key); figure.valid)
            figures.push_back(std::move(figure));
    const bool same = std::equal(figures.begin(), figures.end(), m_figures.begin(), m_figures.end(),
                                 [](const FigureView &a, const FigureView &b) { return a.key == b.key; });
    if (same) {
        m_figures = std::move(figures);
        return allChanged(*this);
    }
    beginResetModel();
    m_figures = std::move(figures);
    endResetModel();
    emit countChanged();
}

int FiguresModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant FiguresModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const FigureView &figure = m_figures[static_cast<std::size_t>(index.row())];
    if (role == Figure)
        return QVariant::fromValue(figure);
    return role == Label ? wordsOrCode(figureWords(), figure.key.toStdString()) : QVariant();
}

QHash<int, QByteArray> FiguresModel::roleNames() const
{
    return {{Figure, "figure"}, {Label, "label"}};
}

ProblemsModel::ProblemsModel(Workspace &workspace) : m_workspace(workspace) {}

void ProblemsModel::refresh()
{
    const Plan &plan = m_workspace.plan();
    if (plan.problems.empty() && plan.cautions.empty() && m_problems.empty())
        return;
    beginResetModel();
    m_problems = plan.problems;
    m_stopping = m_problems.size();
    m_problems.insert(m_problems.end(), plan.cautions.begin(), plan.cautions.end());
    endResetModel();
    emit countChanged();
}

int ProblemsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

const Offer *ProblemsModel::offer(int row, int index) const
{
    if (row < 0 || row >= count() || index < 0)
        return nullptr;
    const std::vector<Offer> &offers = m_problems[static_cast<std::size_t>(row)].offers;
    return static_cast<std::size_t>(index) < offers.size() ? &offers[static_cast<std::size_t>(index)]
                                                           : nullptr;
}

QVariant ProblemsModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto row = static_cast<std::size_t>(index.row());
    const Problem &problem = m_problems[row];
    const Marks marks = m_workspace.project().marks();
    switch (role) {
    case At:
        return toQt(problem.at);
    case Says:
        return sentence(problem, marks);
    case Caution:
        return row >= m_stopping;
    case Offers: {
        QVariantList list;
        for (std::size_t i = 0; i < problem.offers.size(); ++i)
            list.append(QVariantMap{{QStringLiteral("says"), sentence(problem.offers[i], marks)},
                                    {QStringLiteral("index"), static_cast<int>(i)}});
        return list;
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> ProblemsModel::roleNames() const
{
    return {{At, "at"}, {Says, "says"}, {Caution, "caution"}, {Offers, "offers"}};
}

} // namespace matside
