// SPDX-License-Identifier: MIT
#include "app/shademodel.h"

#include "app/prints.h"
#include "app/shadewords.h"
#include "app/wording.h"
#include "plan/onstrip.h"
#include "project/spelling.h"

#include <algorithm>

namespace matside {

namespace {

/// Blocks drawn each by its own design; in a larger piece all are drawn alike.
constexpr std::int64_t blocksDrawn = 900;

bool isSeen(ClothRole role)
{
    return role != ClothRole::Batting && role != ClothRole::Web;
}

std::optional<Colour> colourFor(const Project &project, ClothRole role)
{
    return colourOf(clothServing(project, role));
}

} // namespace

QVariantList designsOfBlocks(const Project &project)
{
    QVariantList at;
    if (project.designs.size() < 2 || project.blocks.columns * project.blocks.rows > blocksDrawn)
        return at;
    for (std::size_t row = 0; row < static_cast<std::size_t>(project.blocks.rows); ++row)
        for (std::size_t column = 0; column < static_cast<std::size_t>(project.blocks.columns); ++column) {
            int number = 0;
            if (row < project.layout.size() && column < project.layout[row].size()) {
                const std::string &place = project.layout[row][column];
                const std::string id = place.substr(0, place.find('@')); // a turn stands behind it
                for (std::size_t i = 0; i < project.designs.size(); ++i)
                    if (project.designs[i].id == id)
                        number = static_cast<int>(i);
            }
            at.append(number);
        }
    return at;
}

ShadeModel::ShadeModel(Workspace &workspace, Session &session) : m_workspace(workspace), m_session(session)
{
    connect(&m_workspace, &Workspace::changed, this, &ShadeModel::refresh);
    connect(&m_workspace, &Workspace::opened, this, [this] { m_design = 0; });
}

void ShadeModel::setActive(bool active)
{
    if (active == m_active)
        return;
    m_active = active;
    m_grey = true;
    if (active)
        refresh();
    else
        emit changed();
}

void ShadeModel::setGrey(bool grey)
{
    if (grey == m_grey)
        return;
    m_grey = grey;
    refresh();
}

void ShadeModel::setDesign(int design)
{
    if (design == m_design || design < 0)
        return;
    m_design = design;
    refresh();
}

void ShadeModel::refresh()
{
    if (!m_active) { // Edge may still show a face
        emit changed();
        return;
    }
    const Project &project = m_workspace.project();
    m_design = std::clamp(m_design, 0, std::max(0, static_cast<int>(project.designs.size()) - 1));
    const auto at = static_cast<std::size_t>(m_design);
    const Cloth *ground = clothFor(project, ClothRole::Front);
    m_layers = {{ground ? ground->id : std::string(), colourOf(ground)}};
    m_names = {ground ? clothText(project, ground->id) : QString()};
    for (const Patch *patch :
         patchesOf(project, at < project.designs.size() ? &project.designs[at] : nullptr)) {
        m_layers.push_back({patch->cloth, colourOf(clothNamed(project, patch->cloth))});
        m_names.append(patch->name.empty() ? clothText(project, patch->cloth) : toQt(patch->name));
    }
    m_pairs = meetings(m_layers);
    m_least = leastOf(m_pairs);
    m_order = betterOrder(m_layers);
    sortCloths();
    emit changed();
}

QString ShadeModel::shown(const std::optional<Colour> &colour) const
{
    if (!colour)
        return {};
    return toQt(writeColour(m_grey ? greyOf(*colour) : *colour));
}

void ShadeModel::sortCloths()
{
    const Project &project = m_workspace.project();
    std::vector<std::pair<double, const Cloth *>> sorted;
    for (const Cloth &cloth : project.cloths)
        if (isSeen(cloth.role)) {
            const auto colour = colourOf(&cloth);
            sorted.emplace_back(colour ? valueOf(*colour) : -1, &cloth);
        }
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const auto &a, const auto &b) { return a.first > b.first; });
    m_cloths.clear();
    for (const auto &[value, cloth] : sorted) {
        const auto colour = colourOf(cloth);
        const QString step = colour ? stepsText(placeAmongSteps(value)) : QString();
        const auto place = static_cast<int>(m_cloths.size());
        m_cloths.append(QVariantMap{
            {QStringLiteral("id"), toQt(cloth->id)},
            // A, B … Z; a piece with more cloths goes on with AA.
            {QStringLiteral("letter"), place < 26 ? QString(QChar(u'A' + place))
                                                  : QStringLiteral("A") + QChar(u'A' + (place - 26) % 26)},
            {QStringLiteral("name"), clothText(project, cloth->id)},
            {QStringLiteral("part"),
             wordsOrCode(choiceWords(), spelling::wordFor(spelling::role, cloth->role))},
            {QStringLiteral("print"), printOf(project, cloth->id)},
            {QStringLiteral("known"), colour.has_value()},
            {QStringLiteral("colour"), colour ? toQt(writeColour(*colour)) : QString()},
            {QStringLiteral("grey"), colour ? toQt(writeColour(greyOf(*colour))) : QString()},
            {QStringLiteral("value"), std::max(value, 0.0)},
            {QStringLiteral("step"), step},
            {QStringLiteral("says"), colour
                                         //: of the scale from black to white, with one decimal
                                         ? tr("step %1").arg(step)
                                         : tr("no colour yet")}});
    }
}

QVariantMap ShadeModel::face(ClothRole cloth, ClothRole sashing) const
{
    const Project &project = m_workspace.project();
    return {{QStringLiteral("block"), shown(colourFor(project, cloth))},
            {QStringLiteral("sashing"), shown(colourFor(project, sashing))},
            {QStringLiteral("bound"), project.edge.kind == EdgeKind::Bound},
            {QStringLiteral("binding"), shown(colourFor(project, ClothRole::Binding))},
            {QStringLiteral("patches"), QVariantList()},
            {QStringLiteral("at"), QVariantList()}};
}

QVariantMap ShadeModel::front() const
{
    const Project &project = m_workspace.project();
    QVariantMap front = face(ClothRole::Front, ClothRole::SashingFront);
    QVariantList all;
    for (std::size_t i = 0; i < std::max<std::size_t>(project.designs.size(), 1); ++i) {
        QVariantList patches;
        for (const Patch *patch :
             patchesOf(project, i < project.designs.size() ? &project.designs[i] : nullptr)) {
            const std::optional<Colour> own = colourOf(clothNamed(project, patch->cloth));
            // The dye stays as it is while the face is looked at in grey: the finished piece is drawn with
            // it.
            patches.append(QVariantMap{{QStringLiteral("colour"), shown(own)},
                                       {QStringLiteral("dye"), own ? toQt(writeColour(*own)) : QString()},
                                       {QStringLiteral("widthMm"), patch->width.asMm()},
                                       {QStringLiteral("heightMm"), patch->height.asMm()}});
        }
        all.append(QVariant(patches));
    }
    front.insert(QStringLiteral("patches"), all);
    front.insert(QStringLiteral("at"), designsOfBlocks(project));
    return front;
}

QVariantMap ShadeModel::back() const
{
    // A clean back is one cloth from edge to edge.
    const bool pieced = m_workspace.project().build == Build::Reversible;
    return face(ClothRole::Back, pieced ? ClothRole::SashingBack : ClothRole::Back);
}

QVariantList ShadeModel::scale() const
{
    QVariantList steps;
    for (int step = 1; step <= 10; ++step)
        steps.append(QVariantMap{{QStringLiteral("step"), step},
                                 {QStringLiteral("grey"), toQt(writeColour(greyOfStep(step)))}});
    return steps;
}

QVariantList ShadeModel::designs() const
{
    QVariantList list;
    const std::vector<Design> &designs = m_workspace.project().designs;
    for (std::size_t i = 0; designs.size() > 1 && i < designs.size(); ++i)
        list.append(QVariantMap{{QStringLiteral("value"), static_cast<int>(i)},
                                {QStringLiteral("says"), toQt(designs[i].id)}});
    return list;
}

QString ShadeModel::nameOf(std::size_t layer) const
{
    return m_names.value(static_cast<qsizetype>(layer));
}

std::size_t ShadeModel::patchCount() const
{
    return m_layers.empty() ? 0 : m_layers.size() - 1;
}

QVariantList ShadeModel::pairs() const
{
    QVariantList list;
    for (const Meeting &pair : m_pairs)
        list.append(QVariantMap{
            //: one patch lies on another, or on the ground
            {QStringLiteral("says"), tr("%1 on %2").arg(nameOf(pair.over), nameOf(pair.under))},
            {QStringLiteral("over"), shown(m_layers[pair.over].colour)},
            {QStringLiteral("under"), shown(m_layers[pair.under].colour)},
            {QStringLiteral("apart"), stepsText(pair.apart)},
            {QStringLiteral("clear"), pair.apart >= stepsClear},
            {QStringLiteral("least"), pair.over == m_least->over && pair.under == m_least->under}});
    return list;
}

QString ShadeModel::says() const
{
    if (m_least)
        return leastSays(nameOf(m_least->over), nameOf(m_least->under), m_least->apart);
    if (patchCount() == 0)
        return tr("No patches are listed: look how far apart the cloths lie on the scale.");
    return tr("Give the ground and the patches their colours: press a cloth.");
}

QString ShadeModel::fixedSays() const
{
    const Project &project = m_workspace.project();
    if (!project.made.blocks.empty())
        return tr("Blocks are stitched already: the order stays as it is.");
    std::vector<std::size_t> same(patchCount());
    for (std::size_t i = 0; i < same.size(); ++i)
        same[i] = i;
    if (!withOrder(project, static_cast<std::size_t>(m_design), same))
        return tr("Patches of one name cannot be put in order.");
    return {};
}

QString ShadeModel::inOrder() const
{
    QStringList names;
    for (const std::size_t layer : m_order->order)
        if (layer > 0)
            names.append(nameOf(layer));
    return names.join(QStringLiteral(", "));
}

QString ShadeModel::orderSays() const
{
    if (patchCount() > patchesOrdered)
        return tr("An order is sought for up to %1 patches; here there are %2.")
            .arg(patchesOrdered)
            .arg(patchCount());
    if (!m_order)
        return {};
    //: %1 lists patches, %2 and %3 are numbers of steps of the ten-step scale
    const QString order =
        tr("Laid from the lowest up as %1, patches that follow each other would be %2 steps "
           "apart or more, not %3.")
            .arg(inOrder(), stepsText(m_order->least), stepsText(m_order->before));
    const QString fixed = fixedSays();
    return order + QLatin1Char(' ') +
           (fixed.isEmpty() ? tr("Look first whether your design lets one lie over the other.") : fixed);
}

bool ShadeModel::canReorder() const
{
    return m_order && !m_session.readOnly() && fixedSays().isEmpty();
}

bool ShadeModel::takeOrder()
{
    if (!canReorder())
        return false;
    std::vector<std::size_t> order;
    for (const std::size_t layer : m_order->order)
        if (layer > 0)
            order.push_back(layer - 1);
    const auto next = withOrder(m_workspace.project(), static_cast<std::size_t>(m_design), order);
    return next && m_workspace.commit("patch-order", *next);
}

} // namespace matside
