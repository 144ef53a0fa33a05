// SPDX-License-Identifier: MIT
#include "project/codec.h"

#include "length/read.h"
#include "project/fields.h"
#include "project/lesson.h"
#include "project/readlaid.h"
#include "project/readmade.h"
#include "project/spelling.h"

#include <algorithm>
#include <set>

namespace matside {

namespace {

constexpr std::int64_t newestVersion = 1;

/// Marks a maker's ruler may have.
std::vector<Length> marksOf(System system)
{
    if (system == System::Metric)
        return {Length::mm(1), Length::mmTenths(5)};
    return {Length::inches(0, 1, 16), Length::inches(0, 1, 8), Length::inches(0, 1, 32),
            Length::inches(0, 1, 64)};
}

void readFinest(Fields &fields, Length &finest)
{
    const std::size_t before = fields.problems().size();
    fields.length("finest", finest);
    const std::vector<Length> marks = marksOf(fields.system());
    const bool isMark = std::find(marks.begin(), marks.end(), finest) != marks.end();
    if (isMark && fields.problems().size() == before)
        return;
    if (!isMark) {
        std::vector<Offer> offers;
        offers.reserve(marks.size());
        for (const Length mark : marks)
            offers.push_back({"set-length", fields.at("finest"), mark, {Told{mark, Round::Nearest}}, {}});
        fields.wrong("finest", "finest-not-a-mark", {Told{finest, Round::Nearest}}, std::move(offers));
        finest = marks.front();
    }
}

void readBlocks(Fields &fields, Blocks &blocks)
{
    const Json *object = fields.object("blocks");
    const auto countOffer = [&](const char *key, std::int64_t value) {
        return Offer{"set-count", fields.at("blocks") + '/' + key, value, {value}, {}};
    };
    const auto lengthOffer = [&](const char *key, Length value) {
        return Offer{"set-length", fields.at("blocks") + '/' + key, value, {Told{value, Round::Nearest}}, {}};
    };
    if (!object && fields.has("blocks"))
        return;
    static const Json nothing = Json::object();
    Fields inner(object ? *object : nothing, fields.at("blocks"), fields.system(), fields.problems());
    inner.count("columns", blocks.columns, 1, 1000);
    inner.count("rows", blocks.rows, 1, 1000);
    inner.length("width", blocks.width);
    blocks.height = blocks.width;
    inner.length("height", blocks.height);
    inner.count("spare", blocks.spare, 0, 1000);
    inner.count("spareInAll", blocks.spareInAll, 0, 1000);
    if (!inner.has("columns"))
        inner.needed("columns", {countOffer("columns", blocks.columns)});
    if (!inner.has("rows"))
        inner.needed("rows", {countOffer("rows", blocks.rows)});
    if (!inner.has("width"))
        inner.needed("width", {lengthOffer("width", blocks.width)});
    blocks.rest = inner.rest();
}

void readSashing(Fields &fields, Project &project)
{
    if (const Json *object = fields.object("sashing")) {
        Fields inner(*object, fields.at("sashing"), fields.system(), fields.problems());
        inner.length("finished", project.sashing.finished);
        inner.length("cutBack", project.sashing.cutBack);
        inner.length("allowance", project.sashing.allowance);
        project.sashing.rest = inner.rest();
    }
    if (const Json *object = fields.object("fold")) {
        Fields inner(*object, fields.at("fold"), fields.system(), fields.problems());
        inner.length("catch", project.fold.fold_catch);
        inner.length("turn", project.fold.turn, Least::Zero);
        inner.flag("doubled", project.fold.doubled);
        project.fold.rest = inner.rest();
    }
    if (const Json *object = fields.object("drawUp")) {
        Fields inner(*object, fields.at("drawUp"), fields.system(), fields.problems());
        inner.share("along", project.drawUp.along, Share{}, mostDrawUp);
        inner.share("across", project.drawUp.across, Share{}, mostDrawUp);
        project.drawUp.rest = inner.rest();
    }
}

constexpr std::int64_t mostScallops = 1000;

void readEdge(Fields &fields, Edge &edge)
{
    const Json *object = fields.object("edge");
    if (!object)
        return;
    Fields inner(*object, fields.at("edge"), fields.system(), fields.problems());
    inner.choice("kind", edge.kind, std::span<const Spelling<EdgeKind>>(spelling::edgeKind));
    inner.length("outside", edge.outside);
    inner.length("seam", edge.seam);
    inner.choice("binding", edge.binding, std::span<const Spelling<Binding>>(spelling::binding));
    inner.choice("sewn", edge.sewn, std::span<const Spelling<Sewn>>(spelling::sewn));
    if (const Json *held = inner.object("corner")) {
        Fields corner(*held, inner.at("corner"), fields.system(), fields.problems());
        corner.choice("kind", edge.corner.kind, std::span<const Spelling<CornerKind>>(spelling::cornerKind));
        corner.length("radius", edge.corner.radius);
        corner.length("depth", edge.corner.depth);
        corner.count("along", edge.corner.along, 0, mostScallops);
        corner.count("across", edge.corner.across, 0, mostScallops);
        edge.corner.rest = corner.rest();
    }
    edge.rest = inner.rest();
}

void readHoop(Fields &fields, Project &project)
{
    if (const Json *object = fields.object("hoop")) {
        Fields inner(*object, fields.at("hoop"), fields.system(), fields.problems());
        inner.word("name", project.hoop.name);
        inner.choice("kind", project.hoop.kind, std::span<const Spelling<HoopKind>>(spelling::hoopKind));
        inner.pair("field", project.hoop.field);
        inner.pair("opening", project.hoop.opening);
        inner.pair("outside", project.hoop.outside);
        inner.length("sandwich", project.hoop.sandwich);
        inner.word("bracket", project.hoop.bracket);
        project.hoop.rest = inner.rest();
    }
    if (const Json *object = fields.object("strip")) {
        Strip &strip = project.strip;
        Fields inner(*object, fields.at("strip"), fields.system(), fields.problems());
        inner.length("usable", strip.usable);
        inner.length("margin", strip.margin, Least::Zero);
        inner.length("placing", strip.placing, Least::Zero);
        inner.length("sliver", strip.sliver, Least::Zero);
        inner.length("tail", strip.tail, Least::Zero);
        inner.length("gap", strip.gap);
        inner.flag("frameMayOverlap", strip.frameMayOverlap);
        inner.flag("tails", strip.tails);
        inner.flag("harvest", strip.harvest);
        inner.count("harvestGaps", strip.harvestGaps, 0, 1000);
        strip.rest = inner.rest();
    }
}

void readThread(Fields &fields, Thread &thread)
{
    const Json *object = fields.object("thread");
    if (!object)
        return;
    Fields inner(*object, fields.at("thread"), fields.system(), fields.problems());
    inner.length("spacing", thread.spacing);
    inner.length("stitch", thread.stitch);
    inner.length("bobbin", thread.bobbin);
    inner.count("speed", thread.speed, 1, 5000);
    inner.flag("trimAtStops", thread.trimAtStops);
    inner.flag("sashingLine", thread.sashingLine);
    thread.rest = inner.rest();
}

void readSold(Fields &inner, Cloth &cloth)
{
    cloth.soldStep = usualSoldStep(inner.system());
    cloth.soldBy = inner.system() == System::Inch ? "1/8 yd" : "10 cm";
    const std::size_t before = inner.problems().size();
    inner.length("soldBy", cloth.soldStep);
    if (!inner.has("soldBy") || inner.problems().size() > before)
        return;
    if (inner.isText("soldBy"))
        inner.word("soldBy", cloth.soldBy);
    else
        cloth.soldBy = writeLength(cloth.soldStep, inner.system());
}

/// Each id stands for one cloth: the first free one is offered where it is missing or taken. `places` are
/// the pointers of the ids.
void checkIds(const std::vector<Cloth> &cloths, const std::vector<std::string> &places,
              std::vector<Problem> &problems)
{
    std::set<std::string> all;
    for (const Cloth &cloth : cloths)
        all.insert(cloth.id);
    const auto offerFree = [&](const std::string &stem, const std::string &place) {
        std::int64_t number = 2;
        while (all.contains(stem + '-' + std::to_string(number)))
            ++number;
        const std::string id = stem + '-' + std::to_string(number);
        return Offer{"set-word", place, id, {id}, {}};
    };
    std::set<std::string> seen;
    for (std::size_t i = 0; i < cloths.size(); ++i) {
        const std::string &id = cloths[i].id;
        if (id.empty())
            problems.push_back({places[i], "needed", {}, {offerFree("cloth", places[i])}});
        else if (!seen.insert(id).second)
            problems.push_back({places[i], "doubled-id", {id}, {offerFree(id, places[i])}});
    }
}

void readCloths(Fields &fields, std::vector<Cloth> &cloths)
{
    std::vector<std::string> places;
    fields.each("cloths", 200, [&](Fields &inner) {
        Cloth cloth;
        inner.word("id", cloth.id);
        inner.word("name", cloth.name);
        inner.choice("role", cloth.role, std::span<const Spelling<ClothRole>>(spelling::role));
        inner.length("usable", cloth.usable);
        readSold(inner, cloth);
        inner.number("price", cloth.price);
        inner.word("colour", cloth.colour);
        inner.flag("directional", cloth.directional);
        readOwned(inner, cloth.owned);
        readPackages(inner, cloth.packages);
        cloth.rest = inner.rest();
        places.push_back(inner.at("id"));
        cloths.push_back(std::move(cloth));
    });
    checkIds(cloths, places, fields.problems());
}

/// The listed patch cloths, or any where none is for patches.
std::vector<Offer> patchCloths(const std::vector<Cloth> &cloths, const std::string &place)
{
    const auto forPatches = [](const Cloth &cloth) { return cloth.role == ClothRole::Patch; };
    const bool some = std::any_of(cloths.begin(), cloths.end(), forPatches);
    std::vector<Offer> offers;
    for (const Cloth &cloth : cloths)
        if (!cloth.id.empty() && (!some || forPatches(cloth)))
            offers.push_back({"set-choice", place, cloth.id, {cloth.id}, {}});
    return offers;
}

void readPatches(Fields &fields, Project &project)
{
    const Length over = fields.system() == System::Inch ? Length::inches(0, 1, 2) : Length::mm(12);
    fields.each("patches", 200, [&](Fields &inner) {
        Patch patch;
        patch.over = over;
        patch.width = over * 4;
        inner.word("name", patch.name);
        inner.length("width", patch.width);
        patch.height = patch.width;
        inner.length("height", patch.height);
        inner.length("over", patch.over, Least::Zero);
        inner.word("cloth", patch.cloth);
        inner.count("perBlock", patch.perBlock, 0, 1000);
        patch.rest = inner.rest();
        if (!inner.has("width"))
            inner.needed("width",
                         {{"set-length", inner.at("width"), over * 4, {Told{over * 4, Round::Nearest}}, {}}});
        const auto listed = [&](const Cloth &cloth) { return cloth.id == patch.cloth; };
        if (patch.cloth.empty() || std::none_of(project.cloths.begin(), project.cloths.end(), listed)) {
            std::vector<Offer> offers = patchCloths(project.cloths, inner.at("cloth"));
            if (offers.empty())
                offers.push_back(Fields::takeAway(inner.at()));
            inner.wrong("cloth", "cloth-not-listed", {patch.cloth}, std::move(offers));
        }
        project.patches.push_back(std::move(patch));
    });
}

void readRulers(Fields &fields, Project &project)
{
    if (!fields.has("rulers"))
        return;
    std::vector<Ruler> rulers;
    const std::size_t before = fields.problems().size();
    fields.each("rulers", 50, [&](Fields &inner) {
        Ruler ruler;
        inner.word("name", ruler.name);
        const Length usual = fields.system() == System::Inch ? Length::inches(6) : Length::mm(150);
        ruler.length = ruler.width = usual;
        inner.length("length", ruler.length);
        inner.length("width", ruler.width);
        inner.length("finest", ruler.finest);
        ruler.rest = inner.rest();
        for (const char *key : {"length", "width"})
            if (!inner.has(key))
                inner.needed(key, {{"set-length", inner.at(key), usual, {Told{usual, Round::Nearest}}, {}}});
        rulers.push_back(std::move(ruler));
    });
    // A list that could not be read at all leaves the usual rulers.
    if (!rulers.empty() || fields.problems().size() == before)
        project.rulers = std::move(rulers);
}

void readDesigns(Fields &fields, Project &project)
{
    fields.each("designs", 200, [&](Fields &inner) {
        Design design;
        inner.word("id", design.id);
        inner.words("patches", design.patches);
        inner.count("stitches", design.stitches, 0, 10'000'000);
        inner.word("up", design.up);
        design.rest = inner.rest();
        project.designs.push_back(std::move(design));
    });
    const Json *rows = fields.array("layout", 1000);
    for (std::size_t r = 0; rows && r < rows->size(); ++r) {
        std::vector<std::string> row;
        const Json &held = (*rows)[r];
        for (std::size_t c = 0; held.is_array() && c < held.size() && held[c].is_string(); ++c)
            row.push_back(held[c].get<std::string>());
        const bool whole = held.is_null() || (held.is_array() && row.size() == held.size());
        if (!whole) {
            const std::string at = step(fields.at("layout"), r);
            fields.problems().push_back({at, "wrong-type", {std::string("list")}, {Fields::takeAway(at)}});
        }
        project.layout.push_back(std::move(row));
    }
}

Project readFields(const Json &file, std::vector<Problem> &problems)
{
    System system = System::Inch;
    std::vector<Problem> early;
    Fields(file, {}, system, early)
        .choice("system", system, std::span<const Spelling<System>>(spelling::system));
    Project project = freshProject(system);
    Fields fields(file, {}, system, problems);
    fields.choice("system", project.system, std::span<const Spelling<System>>(spelling::system));
    std::string format;
    std::int64_t version = newestVersion;
    fields.word("format", format);
    fields.count("version", version, 1, newestVersion);
    fields.word("name", project.name);
    readFinest(fields, project.finest);
    fields.choice("hand", project.hand, std::span<const Spelling<Hand>>(spelling::hand));
    readTable(fields, project.table);
    readBlocks(fields, project.blocks);
    readDesigns(fields, project);
    fields.choice("build", project.build, std::span<const Spelling<Build>>(spelling::build));
    fields.choice("cleanBack", project.cleanBack, std::span<const Spelling<CleanBack>>(spelling::cleanBack));
    fields.length("seam", project.seam);
    readSashing(fields, project);
    fields.length("loft", project.loft, Least::Zero);
    readEdge(fields, project.edge);
    readHoop(fields, project);
    readThread(fields, project.thread);
    readCloths(fields, project.cloths);
    readPatches(fields, project);
    readRulers(fields, project);
    readLesson(fields, project);
    fields.length("slack", project.slack, Least::Zero);
    if (const Json *made = fields.object("made"))
        project.made = readMade(*made, fields.at("made"), system, problems);
    project.rest = fields.rest();
    return project;
}

} // namespace

Result<ReadProject, Unreadable> readProject(std::string_view json)
{
    const Result<Json, Problem> read = readJson(json);
    if (!read)
        return Unreadable{read.error()};
    const Json &file = read.value();
    const auto format = file.is_object() ? file.find("format") : file.end();
    if (!file.is_object() || format == file.end() || *format != "matside-project")
        return Unreadable{{"/format", "not-a-project", {}, {}}};
    const auto version = file.find("version");
    if (version != file.end() && isNumber(*version) &&
        numberValue(*version) > static_cast<double>(newestVersion))
        return Unreadable{{"/version", "version-newer", {numberText(*version), newestVersion}, {}}};
    if (version == file.end() || !version->is_number_integer() || *version != newestVersion)
        return Unreadable{{"/version", "version-unknown", {}, {}}};
    ReadProject project;
    project.project = readFields(file, project.problems);
    return project;
}

} // namespace matside
