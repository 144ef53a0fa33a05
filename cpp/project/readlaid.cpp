// SPDX-License-Identifier: MIT
#include "project/readlaid.h"

#include "length/read.h"

namespace matside {

namespace {

constexpr std::size_t mostLists = 20'000;

void readPiece(Fields &fields, LaidPiece &piece)
{
    fields.word("does", piece.does);
    fields.length("across", piece.across);
    fields.length("along", piece.along);
    fields.count("count", piece.count, 1, mostCount);
    fields.flag("turned", piece.turned);
    piece.rest = fields.rest();
}

void readLaidStrip(Fields &fields, LaidStrip &strip)
{
    fields.word("does", strip.does);
    fields.length("height", strip.height);
    fields.count("repeats", strip.repeats, 1, mostCount);
    fields.count("owned", strip.owned, 0, 8);
    fields.flag("spoiled", strip.spoiled);
    fields.length("run", strip.run, Least::Zero);
    fields.each("pieces", mostLists, [&](Fields &inner) {
        LaidPiece piece;
        readPiece(inner, piece);
        strip.pieces.push_back(std::move(piece));
    });
    strip.rest = fields.rest();
}

Json pieceJson(const LaidPiece &piece, System system)
{
    Json object = {{"does", piece.does},
                   {"across", writeLength(piece.across, system)},
                   {"along", writeLength(piece.along, system)},
                   {"count", piece.count}};
    if (piece.turned)
        object["turned"] = true;
    addRest(object, piece.rest);
    return object;
}

Json stripJson(const LaidStrip &strip, System system)
{
    Json object = {
        {"does", strip.does}, {"height", writeLength(strip.height, system)}, {"repeats", strip.repeats}};
    if (strip.owned > 0)
        object["owned"] = strip.owned;
    if (strip.spoiled)
        object["spoiled"] = true;
    if (strip.run > Length())
        object["run"] = writeLength(strip.run, system);
    Json pieces = Json::array();
    for (const LaidPiece &piece : strip.pieces)
        pieces.push_back(pieceJson(piece, system));
    if (!pieces.empty())
        object["pieces"] = std::move(pieces);
    addRest(object, strip.rest);
    return object;
}

void needSides(Fields &piece)
{
    for (const char *side : {"length", "width"})
        if (!piece.has(side))
            piece.needed(side, {Fields::takeAway(piece.at())});
}

} // namespace

void readLayout(Fields &fields, MadeLayout &layout)
{
    fields.word("cloth", layout.cloth);
    fields.length("usable", layout.usable);
    fields.length("bought", layout.bought, Least::Zero);
    fields.each("strips", mostLists, [&](Fields &inner) {
        LaidStrip strip;
        readLaidStrip(inner, strip);
        layout.strips.push_back(std::move(strip));
    });
}

Json layoutJson(const MadeLayout &layout, System system)
{
    Json object = {{"cloth", layout.cloth},
                   {"usable", writeLength(layout.usable, system)},
                   {"bought", writeLength(layout.bought, system)}};
    Json strips = Json::array();
    for (const LaidStrip &strip : layout.strips)
        strips.push_back(stripJson(strip, system));
    object["strips"] = std::move(strips);
    addRest(object, layout.rest);
    return object;
}

void readOwned(Fields &cloth, std::vector<OwnedPiece> &owned)
{
    cloth.each("owned", mostOwned, [&](Fields &fields) {
        OwnedPiece piece;
        fields.length("length", piece.length);
        fields.length("width", piece.width);
        fields.flag("package", piece.package);
        piece.rest = fields.rest();
        needSides(fields);
        owned.push_back(std::move(piece));
    });
}

void readPackages(Fields &cloth, std::vector<Package> &packages)
{
    cloth.each("packages", mostPackages, [&](Fields &fields) {
        Package package;
        fields.length("length", package.length);
        fields.length("width", package.width);
        fields.number("price", package.price);
        package.rest = fields.rest();
        needSides(fields);
        packages.push_back(std::move(package));
    });
}

Json packageJson(const Package &package, System system)
{
    Json object = {{"length", writeLength(package.length, system)},
                   {"width", writeLength(package.width, system)}};
    if (package.price)
        if (const Result<Json, Problem> price = readJson(*package.price); price && isNumber(price.value()))
            object["price"] = price.value();
    addRest(object, package.rest);
    return object;
}

Json ownedJson(const OwnedPiece &owned, System system)
{
    Json object = {{"length", writeLength(owned.length, system)},
                   {"width", writeLength(owned.width, system)}};
    if (owned.package)
        object["package"] = true;
    addRest(object, owned.rest);
    return object;
}

} // namespace matside
