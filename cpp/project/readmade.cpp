// SPDX-License-Identifier: MIT
#include "project/readmade.h"

#include "length/read.h"
#include "project/readlaid.h"
#include "project/spelling.h"

namespace matside {

namespace {

constexpr std::size_t mostEvents = 20'000;

/// One reader for every list of `made`.
template <class Item, class Read>
void readList(Fields &made, const char *key, std::vector<Item> &items, Read read)
{
    made.each(key, mostEvents, [&](Fields &fields) {
        Item item;
        read(fields, item);
        item.rest = fields.rest();
        items.push_back(std::move(item));
    });
}

void readTests(Fields &made, Made &to)
{
    if (const Json *object = made.object("testBlock")) {
        Fields fields(*object, made.at("testBlock"), made.system(), made.problems());
        std::optional<std::array<Length, 2>> sent;
        std::optional<std::array<Length, 2>> outline;
        fields.lengths("sent", sent);
        fields.lengths("outline", outline);
        if (sent && outline)
            to.testBlock = TestBlock{*sent, *outline, fields.rest()};
        else
            made.wrong("testBlock", "test-block-not-whole", {},
                       {{"take-away", made.at("testBlock"), Remove{}, {}, {}}});
    }
    if (const Json *object = made.object("testJoin")) {
        Fields fields(*object, made.at("testJoin"), made.system(), made.problems());
        TestJoin join;
        fields.length("seam", join.seam);
        fields.length("gap", join.gap, Least::Negative);
        fields.length("between", join.between);
        fields.length("loft", join.loft, Least::Zero);
        fields.choice("mend", join.mend, std::span<const Spelling<MendedBy>>(spelling::mendedBy));
        join.rest = fields.rest();
        to.testJoin = std::move(join);
    }
    if (const Json *object = made.object("drawUp")) {
        Fields fields(*object, made.at("drawUp"), made.system(), made.problems());
        DrawUp drawUp;
        fields.share("along", drawUp.along, Share{}, mostDrawUp);
        fields.share("across", drawUp.across, Share{}, mostDrawUp);
        drawUp.rest = fields.rest();
        to.drawUp = std::move(drawUp);
    }
    bool putOff = false;
    made.choice("trial", putOff, std::span<const Spelling<bool>>(spelling::trial));
    to.trialPutOff = putOff;
}

void readPiece(Fields &made, Made &to)
{
    const Json *object = made.object("piece");
    if (!object)
        return;
    Fields fields(*object, made.at("piece"), made.system(), made.problems());
    std::optional<std::array<Length, 4>> sides;
    std::optional<std::array<Length, 2>> diagonals;
    fields.lengths("sides", sides);
    fields.lengths("diagonals", diagonals);
    if (sides && diagonals)
        to.piece = MadePiece{*sides, *diagonals, fields.rest()};
    else
        made.wrong("piece", "piece-not-whole", {}, {{"take-away", made.at("piece"), Remove{}, {}, {}}});
}

void readMadeStrip(Fields &fields, MadeStrip &strip)
{
    fields.count("strip", strip.strip, 1, mostCount);
    fields.length("ended", strip.ended, Least::Zero);
    fields.length("usable", strip.usable);
    fields.flag("closed", strip.closed);
    readList(fields, "outlines", strip.outlines, [](Fields &inner, MadeOutline &outline) {
        inner.length("from", outline.from, Least::Zero);
        inner.length("to", outline.to, Least::Zero);
    });
}

void readBlock(Fields &fields, MadeBlock &block)
{
    fields.word("block", block.block);
    fields.count("strip", block.strip, 0, mostCount);
    fields.count("place", block.place, 0, mostCount);
    fields.lengths("sent", block.sent);
    fields.lengths("outline", block.outline);
    fields.lengths("sides", block.sides);
    fields.lengths("diagonals", block.diagonals);
    fields.choice("state", block.state, std::span<const Spelling<BlockState>>(spelling::blockState));
    fields.count("minutes", block.minutes, 0, mostCount);
    fields.word("replaces", block.replaces);
    fields.word("lies", block.lies);
    fields.words("notes", block.notes);
}

void readEvent(Fields &fields, MadeEvent &event)
{
    fields.word("event", event.event);
    fields.word("does", event.does);
    fields.word("cloth", event.cloth);
    fields.word("block", event.block);
    fields.count("strip", event.strip, 0, mostCount);
    fields.count("count", event.count, 0, mostCount);
    fields.length("length", event.length, Least::Zero);
    fields.word("id", event.id);
}

template <std::size_t N> Json lengthList(const std::array<Length, N> &lengths, System system)
{
    Json list = Json::array();
    for (const Length length : lengths)
        list.push_back(writeLength(length, system));
    return list;
}

Json lengthList(const std::vector<Length> &lengths, System system)
{
    Json list = Json::array();
    for (const Length length : lengths)
        list.push_back(writeLength(length, system));
    return list;
}

Json blockJson(const MadeBlock &block, System system)
{
    Json object = Json::object();
    object["block"] = block.block;
    object["strip"] = block.strip;
    object["place"] = block.place;
    if (block.sent)
        object["sent"] = lengthList(*block.sent, system);
    if (block.outline)
        object["outline"] = lengthList(*block.outline, system);
    if (block.sides)
        object["sides"] = lengthList(*block.sides, system);
    if (block.diagonals)
        object["diagonals"] = lengthList(*block.diagonals, system);
    object["state"] = spelling::wordFor(spelling::blockState, block.state);
    if (block.minutes > 0)
        object["minutes"] = block.minutes;
    if (!block.replaces.empty())
        object["replaces"] = block.replaces;
    if (!block.lies.empty())
        object["lies"] = block.lies;
    if (!block.notes.empty())
        object["notes"] = block.notes;
    addRest(object, block.rest);
    return object;
}

Json stripJson(const MadeStrip &strip, System system)
{
    Json object = Json::object();
    object["strip"] = strip.strip;
    if (strip.ended)
        object["ended"] = writeLength(*strip.ended, system);
    if (strip.usable)
        object["usable"] = writeLength(*strip.usable, system);
    if (strip.closed)
        object["closed"] = true;
    Json outlines = Json::array();
    for (const MadeOutline &outline : strip.outlines) {
        Json one = {{"from", writeLength(outline.from, system)}, {"to", writeLength(outline.to, system)}};
        addRest(one, outline.rest);
        outlines.push_back(std::move(one));
    }
    if (!outlines.empty())
        object["outlines"] = std::move(outlines);
    addRest(object, strip.rest);
    return object;
}

Json eventJson(const MadeEvent &event, System system)
{
    Json object = {{"event", event.event}};
    const auto put = [&](const char *key, const std::string &word) {
        if (!word.empty())
            object[key] = word;
    };
    put("does", event.does);
    put("cloth", event.cloth);
    put("block", event.block);
    if (event.strip > 0)
        object["strip"] = event.strip;
    if (event.count > 0)
        object["count"] = event.count;
    if (event.length)
        object["length"] = writeLength(*event.length, system);
    put("id", event.id);
    addRest(object, event.rest);
    return object;
}

Json joinJson(const TestJoin &join, System system)
{
    Json object = Json::object();
    const auto put = [&](const char *key, const std::optional<Length> &length) {
        if (length)
            object[key] = writeLength(*length, system);
    };
    put("seam", join.seam);
    put("gap", join.gap);
    put("between", join.between);
    put("loft", join.loft);
    if (join.mend != MendedBy::Seam)
        object["mend"] = spelling::wordFor(spelling::mendedBy, join.mend);
    addRest(object, join.rest);
    return object;
}

Json clothJson(const MadeCloth &cloth, System system)
{
    Json object = Json::object();
    object["cloth"] = cloth.cloth;
    if (cloth.usable)
        object["usable"] = writeLength(*cloth.usable, system);
    if (cloth.length)
        object["length"] = writeLength(*cloth.length, system);
    object["prewashed"] = cloth.prewashed;
    addRest(object, cloth.rest);
    return object;
}

template <class Item, class Write>
void putList(Json &to, const char *key, const std::vector<Item> &items, Write write)
{
    if (items.empty())
        return;
    Json list = Json::array();
    for (const Item &item : items)
        list.push_back(write(item));
    to[key] = std::move(list);
}

} // namespace

Made readMade(const Json &object, const std::string &pointer, System system, std::vector<Problem> &problems)
{
    Made made;
    Fields fields(object, pointer, system, problems);
    readList(fields, "cloths", made.cloths, [](Fields &inner, MadeCloth &cloth) {
        inner.word("cloth", cloth.cloth);
        inner.length("usable", cloth.usable);
        inner.length("length", cloth.length);
        inner.flag("prewashed", cloth.prewashed);
    });
    readTests(fields, made);
    readList(fields, "strips", made.strips, readMadeStrip);
    readList(fields, "blocks", made.blocks, readBlock);
    readList(fields, "rows", made.rows, [](Fields &inner, MadeRow &row) {
        inner.word("row", row.row);
        inner.length("length", row.length);
        if (!inner.has("length"))
            inner.needed("length", {Fields::takeAway(inner.at())});
        inner.list("joins", row.joins, Least::Positive);
    });
    readList(fields, "cut", made.cut, [](Fields &inner, MadeCut &cut) {
        inner.word("cloth", cut.cloth);
        inner.word("does", cut.does);
        inner.count("count", cut.count, 0, mostCount);
        inner.count("spoiled", cut.spoiled, 0, mostCount);
    });
    readPiece(fields, made);
    if (const Json *pins = fields.object("pins")) {
        Fields inner(*pins, fields.at("pins"), system, problems);
        made.pins.emplace();
        inner.count("in", made.pins->in, 0, mostCount);
        inner.count("out", made.pins->out, 0, mostCount);
        inner.flag("explained", made.pins->explained);
        made.pins->rest = inner.rest();
    }
    readList(fields, "events", made.events, readEvent);
    readList(fields, "layouts", made.layouts, readLayout);
    made.rest = fields.rest();
    return made;
}

Json writeMade(const Made &made, System system)
{
    Json object = Json::object();
    putList(object, "cloths", made.cloths, [&](const MadeCloth &cloth) { return clothJson(cloth, system); });
    if (made.testBlock) {
        Json test = {{"sent", lengthList(made.testBlock->sent, system)},
                     {"outline", lengthList(made.testBlock->outline, system)}};
        addRest(test, made.testBlock->rest);
        object["testBlock"] = std::move(test);
    }
    if (made.testJoin)
        object["testJoin"] = joinJson(*made.testJoin, system);
    if (made.drawUp) {
        Json share = {{"along", writeShare(made.drawUp->along)}, {"across", writeShare(made.drawUp->across)}};
        addRest(share, made.drawUp->rest);
        object["drawUp"] = std::move(share);
    }
    if (made.trialPutOff)
        object["trial"] = "put-off";
    putList(object, "strips", made.strips, [&](const MadeStrip &strip) { return stripJson(strip, system); });
    putList(object, "blocks", made.blocks, [&](const MadeBlock &block) { return blockJson(block, system); });
    putList(object, "rows", made.rows, [&](const MadeRow &row) {
        Json one = {{"row", row.row}, {"length", writeLength(row.length, system)}};
        if (!row.joins.empty())
            one["joins"] = lengthList(row.joins, system);
        addRest(one, row.rest);
        return one;
    });
    putList(object, "cut", made.cut, [&](const MadeCut &cut) {
        Json one = {{"cloth", cut.cloth}, {"does", cut.does}, {"count", cut.count}};
        if (cut.spoiled > 0)
            one["spoiled"] = cut.spoiled;
        addRest(one, cut.rest);
        return one;
    });
    if (made.piece) {
        Json piece = {{"sides", lengthList(made.piece->sides, system)},
                      {"diagonals", lengthList(made.piece->diagonals, system)}};
        addRest(piece, made.piece->rest);
        object["piece"] = std::move(piece);
    }
    if (made.pins) {
        object["pins"] = {{"in", made.pins->in}, {"out", made.pins->out}};
        if (made.pins->explained)
            object["pins"]["explained"] = true;
        addRest(object["pins"], made.pins->rest);
    }
    putList(object, "events", made.events, [&](const MadeEvent &event) { return eventJson(event, system); });
    putList(object, "layouts", made.layouts,
            [&](const MadeLayout &layout) { return layoutJson(layout, system); });
    addRest(object, made.rest);
    return object;
}

} // namespace matside
