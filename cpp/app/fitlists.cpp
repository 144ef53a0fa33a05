// SPDX-License-Identifier: MIT
#include "app/fitlists.h"

#include "app/figures.h"
#include "app/wording.h"
#include "bench/otherwise.h"
#include "plan/mats.h"

#include <QVariantMap>

#include <algorithm>
#include <array>
#include <iterator>

namespace matside {

namespace {

/// What is listed, in this order.
constexpr std::array keys{
    "strip.width",         "strip.perStrip",       "strip.strips",         "strip.gap",
    "strip.end",           "strip.advance",        "strip.remainder",      "block.sent.along",
    "block.sent.across",   "block.trimmed.along",  "block.trimmed.across", "sashing.cutFront",
    "sashing.cutBack",     "sashing.expected",     "sashing.shorts.count", "sashing.shorts.length",
    "sashing.longs.count", "sashing.longs.length", "fold.under",           "fold.catchShown",
    "size.raw.along",      "size.raw.across",      "binding.cut",          "binding.length",
    "binding.strips",      "binding.square",       "table.reveal.along",   "table.reveal.across",
    "table.corner",        "table.leafIn.along",   "table.leafIn.corner",  "table.leafOut.along",
    "table.leafOut.corner"};

} // namespace

FiguresModel::FiguresModel(Workspace &workspace) : m_workspace(workspace) {}

void FiguresModel::refresh()
{
    // Of a set of mats it says nothing what one of them in the table's middle would leave bare.
    const bool set = setOfMats(m_workspace.project(), m_workspace.plan()).has_value();
    const std::size_t before = m_figures.size();
    std::size_t row = 0; // both lists are in the order of the keys
    for (const char *key : keys) {
        FigureView now = set && std::string_view(key).starts_with("table.")
                             ? FigureView()
                             : planFigure(m_workspace.project(), m_workspace.plan(), key);
        const bool listed = row < m_figures.size() && m_figures[row].key == QLatin1String(key);
        const int at = static_cast<int>(row);
        if (!now.valid) {
            if (listed) {
                beginRemoveRows({}, at, at);
                m_figures.erase(m_figures.begin() + at);
                endRemoveRows();
            }
            continue;
        }
        if (!listed) {
            beginInsertRows({}, at, at);
            m_figures.insert(m_figures.begin() + at, std::move(now));
            endInsertRows();
        } else if (now != m_figures[row]) {
            m_figures[row] = std::move(now);
            emit dataChanged(index(at), index(at), {Figure});
        }
        ++row;
    }
    if (m_figures.size() != before)
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

ProblemsModel::Row ProblemsModel::rowOf(const Problem &problem, bool caution) const
{
    const Marks marks = m_workspace.project().marks();
    QVariantList offers;
    for (std::size_t i = 0; i < problem.offers.size(); ++i)
        offers.append(QVariantMap{{QStringLiteral("says"), figuresWhole(sentence(problem.offers[i], marks))},
                                  {QStringLiteral("index"), static_cast<int>(i)}});
    return {problem, caution, figuresWhole(sentence(problem, marks)), std::move(offers)};
}

void ProblemsModel::updateRow(std::size_t row, Row &&now)
{
    const Row &before = m_rows[row];
    QList<int> roles;
    if (now.problem.at != before.problem.at)
        roles << At;
    if (now.says != before.says)
        roles << Says;
    if (now.caution != before.caution)
        roles << Caution;
    if (now.offers != before.offers)
        roles << Offers;
    m_rows[row] = std::move(now);
    if (roles.isEmpty())
        return;
    const QModelIndex at = index(static_cast<int>(row));
    emit dataChanged(at, at, roles);
}

void ProblemsModel::refresh()
{
    const Plan &plan = m_workspace.plan();
    std::vector<Row> rows;
    for (const Problem &problem : plan.problems)
        rows.push_back(rowOf(problem, false));
    // A plan that cannot be made has no steps to say what was cut.
    if (plan.problems.empty() && m_workspace.project().made.started()) {
        for (const Problem &problem : madeOtherwise(m_workspace.project(), plan, m_workspace.steps()))
            rows.push_back(rowOf(problem, true));
        for (const Problem &problem : cutOfAnother(m_workspace.project(), m_workspace.steps()))
            rows.push_back(rowOf(problem, true));
    }
    for (const Problem &problem : plan.cautions)
        rows.push_back(rowOf(problem, true));
    const std::size_t both = std::min(rows.size(), m_rows.size());
    for (std::size_t row = 0; row < both; ++row)
        updateRow(row, std::move(rows[row]));
    if (rows.size() == m_rows.size())
        return;
    // At the foot rows come and go; none is made anew that only reads otherwise.
    const int first = static_cast<int>(both);
    if (rows.size() < m_rows.size()) {
        beginRemoveRows({}, first, count() - 1);
        m_rows.resize(both);
        endRemoveRows();
    } else {
        beginInsertRows({}, first, static_cast<int>(rows.size()) - 1);
        std::move(rows.begin() + first, rows.end(), std::back_inserter(m_rows));
        endInsertRows();
    }
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
    const std::vector<Offer> &offers = m_rows[static_cast<std::size_t>(row)].problem.offers;
    return static_cast<std::size_t>(index) < offers.size() ? &offers[static_cast<std::size_t>(index)]
                                                           : nullptr;
}

QVariant ProblemsModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case At:
        return toQt(row.problem.at);
    case Says:
        return row.says;
    case Caution:
        return row.caution;
    case Offers:
        return row.offers;
    default:
        return {};
    }
}

QHash<int, QByteArray> ProblemsModel::roleNames() const
{
    return {{At, "at"}, {Says, "says"}, {Caution, "caution"}, {Offers, "offers"}};
}

} // namespace matside
