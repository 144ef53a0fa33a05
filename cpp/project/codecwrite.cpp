// SPDX-License-Identifier: MIT
#include "project/codec.h"

#include "length/read.h"
#include "project/lesson.h"
#include "project/readlaid.h"
#include "project/readmade.h"
#include "project/spelling.h"

#include <set>

namespace matside {

namespace {

/// Puts lengths into an object in the project's own way of writing them.
class Writer {
public:
    Writer(Json &object, System system) : m_object(object), m_system(system) {}
    void length(const char *key, Length length) { m_object[key] = writeLength(length, m_system); }
    void length(const char *key, const std::optional<Length> &given)
    {
        if (given)
            length(key, *given);
    }
    void pair(const char *key, const std::optional<Pair> &given)
    {
        if (given)
            m_object[key] =
                Json::array({writeLength(given->along, m_system), writeLength(given->across, m_system)});
    }

private:
    Json &m_object;
    System m_system;
};

Json tableJson(const Table &table, System system)
{
    Json object = Json::object();
    Writer write(object, system);
    write.length("length", table.length);
    write.length("width", table.width);
    write.length("diameter", table.diameter);
    write.length("leaf", table.leaf);
    if (table.leafIn)
        object["leafIn"] = true;
    addRest(object, table.rest);
    return object;
}

Json blocksJson(const Blocks &blocks, System system)
{
    Json object = {{"columns", blocks.columns}, {"rows", blocks.rows}};
    Writer write(object, system);
    write.length("width", blocks.width);
    write.length("height", blocks.height);
    object["spare"] = blocks.spare;
    if (blocks.spareInAll > 0)
        object["spareInAll"] = blocks.spareInAll;
    addRest(object, blocks.rest);
    return object;
}

/// Square corners of a project that says nothing of them stay unsaid.
Json cornerJson(const Corner &corner, System system)
{
    Json object = Json::object();
    if (corner == Corner())
        return object;
    object["kind"] = spelling::wordFor(spelling::cornerKind, corner.kind);
    Writer write(object, system);
    write.length("radius", corner.radius);
    write.length("depth", corner.depth);
    if (corner.along != 0)
        object["along"] = corner.along;
    if (corner.across != 0)
        object["across"] = corner.across;
    addRest(object, corner.rest);
    return object;
}

Json edgeJson(const Edge &edge, System system)
{
    Json object = {{"kind", spelling::wordFor(spelling::edgeKind, edge.kind)}};
    Writer write(object, system);
    write.length("outside", edge.outside);
    write.length("seam", edge.seam);
    object["binding"] = spelling::wordFor(spelling::binding, edge.binding);
    object["sewn"] = spelling::wordFor(spelling::sewn, edge.sewn);
    if (Json corner = cornerJson(edge.corner, system); !corner.empty())
        object["corner"] = std::move(corner);
    addRest(object, edge.rest);
    return object;
}

Json hoopJson(const Hoop &hoop, System system)
{
    Json object = {{"name", hoop.name}, {"kind", spelling::wordFor(spelling::hoopKind, hoop.kind)}};
    Writer write(object, system);
    write.pair("field", hoop.field);
    write.pair("opening", hoop.opening);
    write.pair("outside", hoop.outside);
    write.length("sandwich", hoop.sandwich);
    if (!hoop.bracket.empty())
        object["bracket"] = hoop.bracket;
    addRest(object, hoop.rest);
    return object;
}

Json stripJson(const Strip &strip, System system)
{
    Json object = Json::object();
    Writer write(object, system);
    write.length("usable", strip.usable);
    write.length("margin", strip.margin);
    write.length("placing", strip.placing);
    write.length("sliver", strip.sliver);
    write.length("tail", strip.tail);
    write.length("gap", strip.gap);
    object["frameMayOverlap"] = strip.frameMayOverlap;
    object["tails"] = strip.tails;
    object["harvest"] = strip.harvest;
    if (strip.harvestGaps > 0)
        object["harvestGaps"] = strip.harvestGaps;
    addRest(object, strip.rest);
    return object;
}

/// What differs from the usual alone.
Json threadJson(const Thread &thread, System system)
{
    Json object = Json::object();
    Writer write(object, system);
    write.length("spacing", thread.spacing);
    write.length("stitch", thread.stitch);
    write.length("bobbin", thread.bobbin);
    if (thread.speed != Thread().speed)
        object["speed"] = thread.speed;
    if (thread.trimAtStops)
        object["trimAtStops"] = true;
    if (thread.sashingLine)
        object["sashingLine"] = true;
    addRest(object, thread.rest);
    return object;
}

template <class Item, class Write> Json listOf(const std::vector<Item> &items, Write write)
{
    Json list = Json::array();
    for (const Item &item : items)
        list.push_back(write(item));
    return list;
}

Json clothJson(const Cloth &cloth, System system)
{
    Json object = {
        {"id", cloth.id}, {"name", cloth.name}, {"role", spelling::wordFor(spelling::role, cloth.role)}};
    Writer(object, system).length("usable", cloth.usable);
    object["soldBy"] = cloth.soldBy;
    if (cloth.price)
        if (const Result<Json, Problem> price = readJson(*cloth.price); price && isNumber(price.value()))
            object["price"] = price.value();
    if (!cloth.colour.empty())
        object["colour"] = cloth.colour;
    object["directional"] = cloth.directional;
    if (!cloth.owned.empty())
        object["owned"] =
            listOf(cloth.owned, [&](const OwnedPiece &owned) { return ownedJson(owned, system); });
    if (!cloth.packages.empty())
        object["packages"] =
            listOf(cloth.packages, [&](const Package &package) { return packageJson(package, system); });
    addRest(object, cloth.rest);
    return object;
}

Json patchJson(const Patch &patch, System system)
{
    Json object = {{"name", patch.name}};
    Writer write(object, system);
    write.length("width", patch.width);
    write.length("height", patch.height);
    write.length("over", patch.over);
    object["cloth"] = patch.cloth;
    object["perBlock"] = patch.perBlock;
    addRest(object, patch.rest);
    return object;
}

Json rulerJson(const Ruler &ruler, System system)
{
    Json object = {{"name", ruler.name}};
    Writer write(object, system);
    write.length("length", ruler.length);
    write.length("width", ruler.width);
    write.length("finest", ruler.finest);
    addRest(object, ruler.rest);
    return object;
}

Json designJson(const Design &design)
{
    Json object = {{"id", design.id}, {"patches", design.patches}, {"stitches", design.stitches}};
    if (!design.up.empty())
        object["up"] = design.up;
    addRest(object, design.rest);
    return object;
}

void putWidths(Json &file, const Project &p)
{
    Json sashing = Json::object();
    Writer sash(sashing, p.system);
    sash.length("finished", p.sashing.finished);
    sash.length("cutBack", p.sashing.cutBack);
    sash.length("allowance", p.sashing.allowance);
    addRest(sashing, p.sashing.rest);
    if (!sashing.empty())
        file["sashing"] = std::move(sashing);

    Json fold = Json::object();
    Writer folded(fold, p.system);
    folded.length("catch", p.fold.fold_catch);
    folded.length("turn", p.fold.turn);
    if (p.fold.doubled)
        fold["doubled"] = true;
    addRest(fold, p.fold.rest);
    file["fold"] = std::move(fold);
    file["loft"] = writeLength(p.loft, p.system);

    Json drawUp = {{"along", writeShare(p.drawUp.along)}, {"across", writeShare(p.drawUp.across)}};
    addRest(drawUp, p.drawUp.rest);
    file["drawUp"] = std::move(drawUp);
}

void putLists(Json &file, const Project &p)
{
    const System system = p.system;
    file["cloths"] = listOf(p.cloths, [&](const Cloth &cloth) { return clothJson(cloth, system); });
    if (!p.patches.empty())
        file["patches"] = listOf(p.patches, [&](const Patch &patch) { return patchJson(patch, system); });
    file["rulers"] = listOf(p.rulers, [&](const Ruler &ruler) { return rulerJson(ruler, system); });
}

} // namespace

void addRest(Json &object, const std::string &rest)
{
    if (rest.empty())
        return;
    const Result<Json, Problem> kept = readJson(rest);
    if (!kept || !kept.value().is_object())
        return;
    std::set<std::string, std::less<>> has;
    for (const auto &[key, value] : object.items())
        has.insert(key);
    for (const auto &[key, value] : kept.value().items())
        if (has.find(key) == has.end())
            append(object, key, value);
}

std::string writeProject(const Project &p)
{
    Json file = {{"format", "matside-project"}, {"version", 1}, {"name", p.name}};
    file["system"] = spelling::wordFor(spelling::system, p.system);
    file["finest"] = writeLength(p.finest, p.system);
    file["hand"] = spelling::wordFor(spelling::hand, p.hand);
    if (p.table)
        file["table"] = tableJson(*p.table, p.system);
    file["blocks"] = blocksJson(p.blocks, p.system);
    if (!p.designs.empty())
        file["designs"] = listOf(p.designs, designJson);
    if (!p.layout.empty())
        file["layout"] = p.layout;
    file["build"] = spelling::wordFor(spelling::build, p.build);
    file["cleanBack"] = spelling::wordFor(spelling::cleanBack, p.cleanBack);
    file["seam"] = writeLength(p.seam, p.system);
    putWidths(file, p);
    file["edge"] = edgeJson(p.edge, p.system);
    file["hoop"] = hoopJson(p.hoop, p.system);
    file["strip"] = stripJson(p.strip, p.system);
    if (Json thread = threadJson(p.thread, p.system); !thread.empty())
        file["thread"] = std::move(thread);
    putLists(file, p);
    file["kits"] = p.kits;
    if (p.lesson)
        file["class"] = lessonJson(*p.lesson);
    file["kitsShareStrips"] = p.kitsShareStrips;
    file["slack"] = writeLength(p.slack, p.system);
    if (Json made = writeMade(p.made, p.system); !made.empty())
        file["made"] = std::move(made);
    addRest(file, p.rest);
    return writeFile(file);
}

} // namespace matside
