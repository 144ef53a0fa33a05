// SPDX-License-Identifier: MIT
//
// The patches of a design, in the order they are laid, and laid otherwise.
#include "app/shademodel.h"

#include <algorithm>
#include <set>

namespace matside {

std::optional<Colour> colourOf(const Cloth *cloth)
{
    return cloth ? readColour(cloth->colour) : std::nullopt;
}

std::vector<const Patch *> patchesOf(const Project &project, const Design *design)
{
    std::vector<const Patch *> patches;
    const auto add = [&](const Patch &patch) {
        if (std::find(patches.begin(), patches.end(), &patch) == patches.end() && patch.perBlock > 0)
            patches.push_back(&patch);
    };
    if (!design || design->patches.empty()) {
        for (const Patch &patch : project.patches)
            add(patch);
        return patches;
    }
    for (const std::string &name : design->patches)
        for (const Patch &patch : project.patches)
            if (patch.name == name)
                add(patch);
    return patches;
}

std::optional<Project> withOrder(const Project &project, std::size_t design,
                                 const std::vector<std::size_t> &order)
{
    const Design *old = design < project.designs.size() ? &project.designs[design] : nullptr;
    if (!old && !project.designs.empty())
        return std::nullopt;
    const std::vector<const Patch *> patches = patchesOf(project, old);
    std::set<std::string> names;
    for (const Patch *patch : patches)
        names.insert(patch->name);
    if (names.size() != patches.size() || names.contains(std::string()) || order.size() != patches.size())
        return std::nullopt;
    std::vector<std::string> laid;
    for (const std::size_t place : order) {
        if (place >= patches.size())
            return std::nullopt;
        laid.push_back(patches[place]->name);
    }
    // Names the list of patches does not know are kept, above the others.
    if (old)
        for (const std::string &name : old->patches)
            if (!names.contains(name))
                laid.push_back(name);
    Project next = project;
    if (!old) {
        next.designs.emplace_back();
        next.designs.back().id = "a";
    }
    next.designs[design].patches = std::move(laid);
    return next;
}

} // namespace matside
