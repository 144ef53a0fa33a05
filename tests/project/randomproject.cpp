// SPDX-License-Identifier: MIT
#include "randomproject.h"

#include "length/read.h"

using namespace matside;

Length RandomProject::length()
{
    switch (upTo(2)) {
    case 0:
        return Length::ticks(127 * (1 + upTo(64 * 60)));
    case 1:
        return Length::mmTenths(1 + upTo(20'000));
    default:
        return Length::ticks(1 + upTo(8128 * 100));
    }
}

void RandomProject::maybe(std::optional<Length> &to)
{
    if (often())
        to = length();
}

void RandomProject::maybe(std::optional<Pair> &to)
{
    if (often())
        to = Pair{length(), length()};
}

std::string RandomProject::word()
{
    static const std::array<std::string, 10> letters{"a",  "Z",  "7",      " ",      "\"",
                                                     "\\", "\n", "\u00E9", "\u2212", "\U0001F9F5"};
    std::string text;
    for (std::int64_t left = 1 + upTo(11); left > 0; --left)
        text += letters[static_cast<std::size_t>(upTo(9))];
    return text;
}

std::string RandomProject::rest()
{
    static const std::array<std::string, 5> kept{"", "", R"({"later":{"deep":[1,2.50,null,"x"]}})",
                                                 R"({"big":123456789012345678901234,"e":1e3})",
                                                 R"({"a/b~c":[],"é":{},"flag":true})"};
    return kept[static_cast<std::size_t>(upTo(4))];
}

void RandomProject::widths(Project &p)
{
    p.seam = length();
    p.sashing.rest = rest();
    for (std::optional<Length> *width :
         {&p.sashing.finished, &p.sashing.cutBack, &p.sashing.allowance, &p.edge.outside, &p.edge.seam,
          &p.edge.corner.radius, &p.edge.corner.depth})
        maybe(*width);
    p.fold = {length(), length(), often(), rest()};
    p.loft = length();
    p.drawUp = {Share{upTo(150'000)}, Share{upTo(150'000)}, rest()};
    p.edge.kind = choice<EdgeKind>(2);
    p.edge.binding = choice<Binding>(1);
    p.edge.sewn = choice<Sewn>(1);
    p.edge.corner.kind = choice<CornerKind>(3);
    p.edge.corner.along = upTo(12);
    p.edge.corner.across = upTo(12);
    p.edge.corner.rest = rest();
    p.edge.rest = rest();
    p.slack = length();
}

void RandomProject::hoop(Project &p)
{
    p.hoop.name = word();
    p.hoop.kind = choice<HoopKind>(1);
    for (std::optional<Pair> *pair : {&p.hoop.field, &p.hoop.opening, &p.hoop.outside})
        maybe(*pair);
    p.hoop.rest = rest();
    maybe(p.strip.usable);
    maybe(p.strip.gap);
    p.strip.margin = length();
    p.strip.placing = length();
    p.strip.sliver = length();
    p.strip.tail = length();
    p.strip.frameMayOverlap = often();
    p.strip.tails = often();
    p.strip.harvest = often();
    p.strip.harvestGaps = upTo(5);
    p.strip.rest = rest();
}

void RandomProject::cloths(Project &p)
{
    static const std::array<std::string, 6> prices{"9.50",  "8.0", "12",
                                                   "0.125", "1e1", "0.30000000000000000001"};
    for (std::int64_t i = upTo(6); i > 0; --i) {
        Cloth cloth;
        cloth.id = std::to_string(i) + word();
        cloth.name = word();
        cloth.role = choice<ClothRole>(7);
        maybe(cloth.usable);
        cloth.soldStep = length();
        cloth.soldBy = writeLength(cloth.soldStep, p.system);
        if (often())
            cloth.price = prices[static_cast<std::size_t>(upTo(5))];
        cloth.colour = often() ? "#c9bda2" : "";
        cloth.directional = often();
        for (std::int64_t pieces = upTo(3); pieces > 0; --pieces)
            cloth.owned.push_back({length(), length(), rest(), often()});
        for (std::int64_t sizes = upTo(2); sizes > 0; --sizes)
            cloth.packages.push_back({length(), length(), {}, rest()});
        if (!cloth.packages.empty() && often())
            cloth.packages.front().price = prices[static_cast<std::size_t>(upTo(5))];
        cloth.rest = rest();
        p.cloths.push_back(std::move(cloth));
    }
    for (std::int64_t i = p.cloths.empty() ? 0 : upTo(4); i > 0; --i)
        p.patches.push_back({word(), length(), length(), length(), p.cloths.front().id, upTo(9), rest()});
    p.rulers.clear();
    for (std::int64_t i = upTo(3); i > 0; --i) {
        p.rulers.push_back({word(), length(), length(), std::nullopt, rest()});
        maybe(p.rulers.back().finest);
    }
}

void RandomProject::designs(Project &p)
{
    maybe(p.hoop.sandwich);
    p.hoop.bracket = often() ? "left" : "";
    maybe(p.thread.spacing);
    maybe(p.thread.stitch);
    maybe(p.thread.bobbin);
    p.thread.speed = 1 + upTo(999);
    p.thread.trimAtStops = often();
    p.thread.sashingLine = often();
    for (std::int64_t i = upTo(2); i > 0; --i)
        p.designs.push_back({word(), {word(), word()}, upTo(30'000), word(), rest()});
    for (std::int64_t i = upTo(2); i > 0; --i)
        p.layout.push_back({word(), "a@90"});
}

void RandomProject::trial(Made &made)
{
    if (often())
        made.testBlock = TestBlock{lengths<2>(), lengths<2>(), rest()};
    if (often()) {
        made.testJoin.emplace();
        maybe(made.testJoin->seam);
        maybe(made.testJoin->between);
        maybe(made.testJoin->loft);
        if (often())
            made.testJoin->gap = length() - length();
        made.testJoin->rest = rest();
    }
    if (often())
        made.drawUp = DrawUp{Share{upTo(150'000)}, Share{upTo(150'000)}, rest()};
    made.trialPutOff = often();
}

void RandomProject::made(Made &made)
{
    trial(made);
    for (std::int64_t i = upTo(2); i > 0; --i) {
        made.cloths.push_back({word(), {}, {}, often(), rest()});
        maybe(made.cloths.back().usable);
        maybe(made.cloths.back().length);
        made.strips.push_back({1 + upTo(50), {}, {}, often(), {{length(), length(), rest()}}, rest()});
        maybe(made.strips.back().ended);
        maybe(made.strips.back().usable);
        made.events.push_back({word(), word(), "", "A1", upTo(9), upTo(9), length(), rest(), word()});
        made.rows.push_back({"A", length(), {length(), length()}, rest()});
        made.cut.push_back({word(), word(), upTo(100), upTo(3), rest()});
        LaidStrip strip{word(), length(), 1 + upTo(99), upTo(8), often(), {}, rest()};
        for (std::int64_t pieces = upTo(3); pieces > 0; --pieces)
            strip.pieces.push_back({word(), length(), length(), 1 + upTo(99), often(), rest()});
        made.layouts.push_back({word(), length(), length(), {strip, strip}, rest()});
        MadeBlock block;
        block.block = "A" + std::to_string(i);
        block.strip = upTo(9);
        block.place = upTo(9);
        if (often())
            block.sides = lengths<4>();
        if (often())
            block.outline = lengths<2>();
        if (often())
            block.sent = lengths<2>();
        block.minutes = upTo(60);
        if (often())
            block.diagonals = lengths<2>();
        block.state = choice<BlockState>(4);
        block.replaces = often() ? "A1" : "";
        block.lies = often() ? "B2" : "";
        block.notes = {word()};
        block.rest = rest();
        made.blocks.push_back(std::move(block));
    }
    if (often())
        made.pins = Pins{upTo(99), upTo(99), upTo(1) == 1, rest()};
    if (often())
        made.piece = MadePiece{{length(), length(), length(), length()}, {length(), length()}, rest()};
    made.rest = rest();
}

Project RandomProject::project()
{
    Project p = freshProject(choice<System>(1));
    p.name = word();
    p.hand = choice<Hand>(1);
    p.finest = p.system == System::Inch ? Length::inches(0, 1, 32) : Length::mmTenths(5);
    if (often())
        p.table = often() ? Table{length(), length(), {}, rest()} : Table{{}, {}, length(), rest()};
    if (p.table && often()) {
        p.table->leaf = length();
        p.table->leafIn = often();
    }
    p.blocks = {1 + upTo(999), 1 + upTo(999), length(), length(), upTo(1000), upTo(1000), rest()};
    p.build = choice<Build>(1);
    p.cleanBack = choice<CleanBack>(1);
    widths(p);
    hoop(p);
    cloths(p);
    designs(p);
    p.kits = 1 + upTo(9'999);
    if (often()) {
        p.lesson = Lesson{1 + upTo(mostStudents - 1), {}, 1 + upTo(mostMachines - 1), often(), rest()};
        if (often())
            p.lesson->spare = upTo(mostSpareKits);
        p.kits = p.lesson->kits();
    }
    p.kitsShareStrips = often();
    if (often())
        made(p.made);
    p.rest = rest();
    return p;
}
