// SPDX-License-Identifier: MIT
#include "sewing.h"

#include <algorithm>
#include <cmath>

namespace workroom {

/// Straight seams through the pieces, in the order they lie; the spare lies half at either end.
void Sewing::joinLong(const Json &step, std::int64_t count)
{
    const Shelf::Hand hand = m_shelf.take(step, count);
    const Length seam = lengthOf(step.at("seam"));
    Rectangle whole;
    std::vector<Length> joins;
    for (const Json &taken : step.at("takes")) {
        const Rectangle next = hand.at(taken.at("piece").get<std::string>()).front();
        if (whole.along > Length()) {
            joins.push_back(whole.along - seam - m_room.longSpare.scaled(1, 2));
            whole.along -= seam * 2;
        }
        whole.along += next.along;
        whole.across = next.across;
    }
    const std::vector<Length> told = placesOf(step);
    must(told.size() == joins.size(), idOf(step) + ": a join too many or too few");
    for (std::size_t i = 0; i < joins.size(); ++i)
        must(near(joins[i], told[i]), idOf(step) + ": a join stands elsewhere");
    m_joins[makes(step)] = joins;
    m_shelf.put(makes(step), count, whole);
}

void Sewing::join(const Json &step, std::int64_t count)
{
    const Shelf::Hand hand = m_shelf.take(step, count);
    const std::string kind = step.at("does") == "join-short" ? "short" : "long";
    m_seam = lengthOf(step.at("seam"));
    must(hand.count(kind + "/front") == 1, idOf(step) + ": no front strip");
    const std::vector<Rectangle> &fronts = hand.at(kind + "/front");
    const auto backs = hand.find(kind + "/back");
    for (std::size_t i = 0; i < fronts.size(); ++i) {
        if (backs != hand.end())
            fold(step, fronts[i], backs->second.at(i));
        m_shelf.put(makes(step), 1, fronts[i]);
    }
    if (kind == "long")
        m_marks = placesOf(step);
}

/// The back strip is sewn at one edge, turned, laid over the visible width and folded under; or it was folded
/// in half first, and its two raw edges are sewn together.
void Sewing::fold(const Json &step, const Rectangle &front, const Rectangle &back)
{
    const Length visible = front.across - m_seam * 2;
    const bool doubled = !step.contains("fold") || step.at("fold").is_null();
    const Length over = doubled ? back.across.scaled(1, 2) : back.across - lengthOf(step.at("fold"));
    m_passes.push_back(over - m_seam - visible);
    m_turned = m_turned || !doubled;
    must(near(front.along, back.along), idOf(step) + ": front and back strips differ in length");
}

void Sewing::row(const Json &step, std::int64_t count)
{
    const Shelf::Hand hand = m_shelf.take(step, count);
    const std::vector<Rectangle> &blocks = hand.at("block");
    const auto columns = static_cast<std::size_t>(m_room.columns);
    must(blocks.size() == columns * static_cast<std::size_t>(count), idOf(step) + ": blocks of other rows");
    Rectangle whole{blocks.front().along, blocks.front().across};
    m_centres.clear();
    for (std::size_t column = 1; column < columns; ++column) {
        const Rectangle strip = hand.at("short-join").at(column - 1);
        must(reaches(strip.along, whole.across), idOf(step) + ": a short does not reach across");
        m_centres.push_back(whole.along + between(strip).scaled(1, 2));
        whole.along += between(strip) + blocks[column].along;
    }
    m_shelf.put(makes(step), count, whole);
}

/// The visible strip less both blocks' allowances, which lie under it.
Length Sewing::between(const Rectangle &strip) const
{
    return strip.across - m_seam * 2 - m_room.allowance.value_or(m_seam) * 2;
}

Rectangle Sewing::piece(const Shelf::Hand &hand) const
{
    const std::vector<Rectangle> &rows = hand.at("row");
    must(static_cast<std::int64_t>(rows.size()) == m_room.rows * m_room.kits, "rows of other pieces");
    Rectangle whole = rows.front();
    for (std::size_t r = 1; r < static_cast<std::size_t>(m_room.rows); ++r) {
        const Rectangle strip = hand.at("long-join").at(r - 1);
        must(near(strip.along, whole.along + m_room.longSpare), "a long is not its row with the spare");
        whole.across += between(strip) + rows[r].across;
    }
    return whole;
}

void Sewing::edge(const Json &step, std::int64_t count)
{
    const Shelf::Hand hand = m_shelf.take(step, count);
    const std::string does = step.at("does").get<std::string>();
    if (hand.count("row") == 1)
        m_piece = piece(hand);
    if (hand.count("backing") == 1)
        m_backing = hand.at("backing").front();
    m_bagged = m_bagged || does == "bag-out";
    if (does == "square-piece") {
        m_rows = m_squarings++ == 0 ? m_piece : m_rows;
        m_squared = m_piece;
    }
    if (does == "lay-backing") // the rows of a framed piece were squared before
        must(m_squarings == (m_frameFront.empty() ? 0 : 1),
             idOf(step) + ": squared before its backing lay under it");
    m_shelf.put(makes(step), count, m_piece);
}

void Sewing::frame(const Json &step, std::int64_t count)
{
    const Shelf::Hand hand = m_shelf.take(step, count);
    const auto ofOne = [&](const char *name) {
        std::vector<Rectangle> strips = hand.count(name) == 1 ? hand.at(name) : std::vector<Rectangle>();
        strips.resize(strips.size() / static_cast<std::size_t>(count));
        return strips;
    };
    const bool sides = hand.count("squared-piece") == 1;
    if (sides) {
        m_frameFront = ofOne("frame-strip/front");
        m_frameBack = ofOne("frame-strip/back");
        m_filler = ofOne("frame-filler");
    }
    must(!m_frameFront.empty() && !m_filler.empty(), idOf(step) + ": no strips for the frame");
    for (const Rectangle &back : m_frameBack)
        must(near(back.across, m_frameFront.front().across), idOf(step) + ": the faces differ in width");
    // The seam lies on the outline, the blocks' allowance inside it; the strip reaches out from there.
    const Length seam = lengthOf(step.at("seam"));
    const Length gains = m_frameFront.front().across - seam - m_room.allowance.value_or(seam);
    const Length length = sides ? m_piece.across : m_piece.along;
    must(near(sizeOf(step).along, length), idOf(step) + ": the strip is not as long as its side");
    m_frameLengths.push_back(length);
    (sides ? m_piece.along : m_piece.across) += gains * 2;
    m_shelf.put(makes(step), count, m_piece);
}

void Sewing::bind(const Json &step, std::int64_t count)
{
    const Shelf::Hand hand = m_shelf.take(step, count);
    m_bindingStrips = hand.at("binding-strip");
    m_bindingStrips.resize(m_bindingStrips.size() / static_cast<std::size_t>(count));
    m_shelf.put(makes(step), count, m_piece);
}

void Sewing::compare(const Json &plan) const
{
    const Json &raw = plan.at("size").at("raw");
    must(near(m_rows.along, lengthOf(raw.at("along"))), "raw length is off");
    must(near(m_rows.across, lengthOf(raw.at("across"))), "raw width is off");
    compareFrame(plan);
    compareFolds(plan);
    compareJoins();
    compareBacking(plan);
    compareBinding(plan);
}

void Sewing::compareFolds(const Json &plan) const
{
    must(m_passes.empty() || !plan.at("fold").is_null(), "folded, with no fold planned");
    must(m_passes.empty() || m_turned != plan.at("fold").contains("doubled"),
         "turned under, or doubled, against the plan");
    for (const Length passes : m_passes) {
        must(reaches(passes, lengthOf(plan.at("fold").at("catch"))),
             "the fold does not pass the seam far enough");
        must(passes < lengthOf(plan.at("fold").at("catch")) + Length::inches(0, 1, 16),
             "the fold passes the seam too far");
    }
}

/// Marks meet the short sashings; joins of a long stand clear of them, and back joins off the front's.
void Sewing::compareJoins() const
{
    must(m_marks.empty() || m_marks.size() == m_centres.size(), "a mark for no short sashing");
    for (std::size_t i = 0; i < m_marks.size(); ++i)
        must(near(m_marks[i], m_centres[i]), "a mark misses its short sashing");
    for (const auto &[name, joins] : m_joins)
        for (const Length join : joins)
            for (const Length centre : m_centres)
                must((join - centre).magnitude() > m_seam * 2, name + " is joined at a crossing");
    const auto front = m_joins.find("long/front");
    const auto back = m_joins.find("long/back");
    if (front == m_joins.end() || back == m_joins.end())
        return;
    for (const Length join : front->second)
        for (const Length behind : back->second)
            must((join - behind).magnitude() > m_seam * 2, "front and back are joined at one place");
}

void Sewing::compareBacking(const Json &plan) const
{
    const Json &size = plan.at("size");
    const bool backed = size.contains("backing") && !size.at("backing").is_null();
    must(backed == (m_backing.along > Length()), "backed, or not, against the plan");
    if (!backed)
        return;
    must(near(m_backing.along, lengthOf(size.at("backing").at("along"))) &&
             near(m_backing.across, lengthOf(size.at("backing").at("across"))),
         "the backing is off");
    if (m_bagged) {
        must(m_backing.along < m_squared.along && m_backing.across < m_squared.across,
             "the backing is no smaller than what it is bagged with");
        must(m_backing.along > m_squared.along - m_seam * 2, "the backing does not reach its seams");
    } else {
        must(m_backing.along > m_squared.along && m_backing.across > m_squared.across,
             "the backing does not reach past the piece");
    }
}

void Sewing::justYield(const std::vector<Rectangle> &strips, Length spare, Length joinSeam) const
{
    const Length room = strips.front().along;
    std::vector<Length> wanted;
    Length all;
    for (const Length length : m_frameLengths)
        for (int face = 0; face < 2; ++face) {
            wanted.push_back(length + spare);
            all += length + spare;
        }
    std::sort(wanted.begin(), wanted.end());
    if (wanted.back() > room) { // sewn end to end, each join taking two seams
        const auto tape = [&](std::size_t count) {
            const auto number = static_cast<std::int64_t>(count);
            return room * number - joinSeam * 2 * (number - 1);
        };
        must(reaches(tape(strips.size()), all), "the frame strips are too few");
        must(!reaches(tape(strips.size() - 1), all), "a frame strip too many");
        return;
    }
    // Every way to deal four pieces out to the strips is tried.
    const auto holds = [&](std::size_t count) {
        std::size_t ways = 1;
        for (std::size_t piece = 0; piece < wanted.size(); ++piece)
            ways *= count;
        for (std::size_t way = 0; way < ways; ++way) {
            std::vector<Length> used(count);
            std::size_t rest = way;
            for (const Length piece : wanted) {
                used[rest % count] += piece;
                rest /= count;
            }
            if (std::all_of(used.begin(), used.end(), [&](Length length) { return reaches(room, length); }))
                return true;
        }
        return false;
    };
    must(holds(strips.size()), "the frame strips do not hold its pieces");
    must(!holds(strips.size() - 1), "a frame strip too many");
}

/// The frame covers the outermost allowance, its batting begins where that ends, and both reach the raw edge.
void Sewing::compareFrame(const Json &plan) const
{
    const bool framed = !plan.at("frame").is_null();
    must(framed == !m_frameFront.empty(), "framed, or not, against the plan");
    if (!framed)
        return;
    const Json &finished = plan.at("size").at("finished");
    must(near(m_squared.along, lengthOf(finished.at("along"))), "the framed length is off");
    must(near(m_squared.across, lengthOf(finished.at("across"))), "the framed width is off");
    must(m_frameBack.empty() == plan.at("sashing").at("cutBack").is_null(), "framed on the wrong faces");
    const Length halfInch = m_room.shortSpare; // 1/2 in | 12 mm, as the straight seam of a join is
    justYield(m_frameFront, m_room.longSpare, halfInch);
    if (!m_frameBack.empty())
        justYield(m_frameBack, m_room.longSpare, halfInch);
    justYield(m_filler, m_room.longSpare, Length());
    const Length beyond = (m_squared.along - m_rows.along).scaled(1, 2);
    must(near(m_filler.front().across, beyond), "the batting does not fill the frame");
}

/// The edge of a scalloped piece, walked along its arcs in short steps from the chord and depth alone.
double scallopedEdge(const Json &plan)
{
    const Json &scallops = plan.at("binding").at("bias").at("scallops");
    const double depth = lengthOf(scallops.at("depth")).asInches();
    double around = 0;
    for (const char *way : {"along", "across"}) {
        const double side = lengthOf(plan.at("size").at("finished").at(way)).asInches() - 2 * depth;
        const double chord = side / scallops.at(way).get<double>();
        const double radius = (chord * chord / 4 + depth * depth) / (2 * depth);
        constexpr int steps = 20'000;
        double arc = 0;
        double from = 0;
        for (int i = 1; i <= steps; ++i) {
            const double x = chord * i / steps - chord / 2;
            const double to = std::sqrt(radius * radius - x * x) - (radius - depth);
            arc += std::hypot(chord / steps, to - from);
            from = to;
        }
        around += 2 * arc * scallops.at(way).get<double>();
    }
    return around;
}

/// One square, cut into a tube: two seams of 1/4 in | 6 mm run its whole side, the rest is strip.
void Sewing::compareBias(const Json &plan) const
{
    must(m_bindingStrips.size() == 1, "bias comes from one square");
    const Rectangle square = m_bindingStrips.front();
    must(near(square.along, square.across), "the square for bias is none");
    const double side = square.along.asInches();
    const double strip = lengthOf(plan.at("binding").at("cut")).asInches();
    const double wanted = lengthOf(plan.at("binding").at("length")).asInches();
    must((side * side - 4 * 0.25 * side) / strip >= wanted, "the square is too small for its bias");
    must((side - 5) * (side - 5) / strip < wanted, "the square is larger than it need be");
    // The corners saved are those of four quarter circles against their squares.
    const Json &finished = plan.at("size").at("finished");
    const double around = 2 * (lengthOf(finished.at("along")) + lengthOf(finished.at("across"))).asInches();
    const double radius = lengthOf(plan.at("binding").at("bias").at("radius")).asInches();
    const bool scalloped = plan.at("binding").at("bias").contains("scallops");
    const double edge = scalloped ? scallopedEdge(plan) : around - 8 * radius + 2 * std::acos(-1.0) * radius;
    must(std::abs(wanted - edge - strip - m_room.slack.asInches()) < 0.001,
         "the bias is not as long as its edge");
}

/// Strips sewn end to end on the diagonal: each join takes one strip width.
void Sewing::compareBinding(const Json &plan) const
{
    const bool bound = plan.contains("binding") && !plan.at("binding").is_null();
    must(bound == !m_bindingStrips.empty(), "bound, or not, against the plan");
    if (!bound)
        return;
    if (plan.at("binding").contains("bias")) {
        compareBias(plan);
        return;
    }
    Length tape;
    for (const Rectangle &strip : m_bindingStrips)
        tape += tape == Length() ? strip.along : strip.along - strip.across;
    const Rectangle strip = m_bindingStrips.front();
    const Json &finished = plan.at("size").at("finished");
    const Length wanted =
        (lengthOf(finished.at("along")) + lengthOf(finished.at("across"))) * 2 + m_room.slack;
    // The last join, end to beginning, takes a strip width as every other does.
    must(reaches(tape - strip.across, wanted), "the binding is too short");
    must(tape - strip.along < wanted || m_bindingStrips.size() == 1, "a binding strip too many");
    must(reaches(tape, lengthOf(plan.at("binding").at("length"))), "less binding than the plan tells of");
}

} // namespace workroom
