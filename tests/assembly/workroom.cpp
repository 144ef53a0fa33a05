// SPDX-License-Identifier: MIT
#include "workroom.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

namespace workroom {

namespace {

/// Six decimal places of an inch are good to far less than a tick; sums of a few dozen stay within four.
constexpr std::int64_t good = 64;

bool near(Length a, Length b)
{
    return (a - b).magnitude() <= Length::ticks(good);
}

struct Wrong {
    std::string what;
};
[[noreturn]] void wrong(const std::string &what)
{
    throw Wrong{what};
}
void must(bool holds, const std::string &what)
{
    if (!holds)
        wrong(what);
}

class Making {
public:
    Making(const Json &plan, const Room &room) : m_plan(plan), m_room(room) {}

    void allSteps()
    {
        must(!m_plan.at("steps").empty(), "no steps");
        for (const Json &step : m_plan.at("steps"))
            oneStep(step);
    }

    void compareWithThePlan()
    {
        nothingLeftOver();
        const Json &size = m_plan.at("size");
        must(m_shelf["finished-piece"].size() == static_cast<std::size_t>(m_room.kits),
             "not every piece was finished");
        must(near(m_squared.along, lengthOf(size.at("raw").at("along"))), "raw length is off");
        must(near(m_squared.across, lengthOf(size.at("raw").at("across"))), "raw width is off");
        const Json &sashing = m_plan.at("sashing");
        must(m_cut["short/front"] == sashing.at("shorts").at("count").get<std::int64_t>() * m_room.kits,
             "front shorts");
        must(m_cut["long/front"] == sashing.at("longs").at("count").get<std::int64_t>() * m_room.kits,
             "front longs");
        if (!sashing.at("cutBack").is_null()) {
            must(m_cut["short/back"] == m_cut["short/front"], "back shorts");
            must(m_cut["long/back"] == m_cut["long/front"], "back longs");
        }
        must(m_cut["place"] >= m_cut["stitched-block"], "more blocks than places");
        const bool bound = m_plan.contains("binding") && !m_plan.at("binding").is_null();
        must(bound == (m_tape > Length()), "bound, or not, against the plan");
        if (!bound)
            return;
        const Json &finished = size.at("finished");
        const Length perimeter = (lengthOf(finished.at("along")) + lengthOf(finished.at("across"))) * 2;
        must(m_tape + Length::ticks(good) >= perimeter + m_room.slack, "the binding is too short");
        must(m_tape - (m_stripLength - m_bindingWidth) < perimeter + m_room.slack,
             "a binding strip too many");
    }

private:
    using Step = Json;

    Length size(const Step &step, const char *side) const { return lengthOf(step.at("size").at(side)); }
    static std::string makes(const Step &step)
    {
        return step.at("makes").at(0).at("piece").get<std::string>();
    }

    void take(const Step &step, std::int64_t times)
    {
        for (const Json &taken : step.at("takes")) {
            const std::string name = taken.at("piece").get<std::string>();
            const std::int64_t count = taken.at("count").get<std::int64_t>() * times;
            std::vector<Rectangle> &held = m_shelf[name];
            if (count == 0) {
                must(!held.empty(), step.at("id").get<std::string>() + " lacks " + name);
                continue;
            }
            must(static_cast<std::int64_t>(held.size()) >= count,
                 step.at("id").get<std::string>() + " lacks " + name);
            m_hand.assign(held.end() - count, held.end());
            held.resize(held.size() - static_cast<std::size_t>(count));
            m_taken[name] = m_hand;
        }
    }
    void put(const std::string &name, std::int64_t count, Rectangle piece)
    {
        m_shelf[name].insert(m_shelf[name].end(), static_cast<std::size_t>(count), piece);
        m_cut[name] += count;
    }
    void onlyOnce(const std::string &name, const Step &step)
    {
        must(m_shelf[name].empty(), step.at("id").get<std::string>() + " was done already");
    }

    void oneStep(const Step &step)
    {
        const std::string does = step.at("does").get<std::string>();
        const std::int64_t count = step.at("count").get<std::int64_t>();
        m_taken.clear();
        checkRuler(step);
        if (does == "straighten") {
            onlyOnce(makes(step), step);
            put(makes(step), 1, {});
        } else if (does == "cut-strip" || does == "cut-band" || does == "cut-binding" ||
                   does == "cut-backing") {
            cutFromCloth(step, does, count);
        } else if (does == "cut-short" || does == "cut-long" || does == "cut-long-piece") {
            crossCut(step, count);
        } else if (does == "cut-patch" || does == "harvest-short") {
            put(makes(step), count, {size(step, "length"), size(step, "width")});
        } else {
            sew(step, does, count);
        }
    }

    /// The marks on the rulers add up to what is kept, and a folded cut is half the cloth.
    void checkRuler(const Step &step)
    {
        if (!step.contains("ruler") || step.at("ruler").is_null() || step.at("ruler").at("on") != "cut-edge")
            return;
        const Json &ruler = step.at("ruler");
        Length reads = lengthOf(ruler.at("line"));
        if (!ruler.at("second").is_null())
            reads += lengthOf(ruler.at("secondWidth"));
        must(near(reads, size(step, "width")) || near(reads, size(step, "length")),
             step.at("id").get<std::string>() + ": the rulers do not add up to the piece");
    }

    void cutFromCloth(const Step &step, const std::string &does, std::int64_t count)
    {
        const std::string cloth = step.at("cloth").get<std::string>();
        must(!m_shelf["straight/" + cloth].empty(), cloth + " was not straightened");
        const Rectangle piece{size(step, "length"), size(step, "width")};
        const auto width = m_room.usable.find(cloth);
        must(width != m_room.usable.end(), "no such cloth: " + cloth);
        if (does != "cut-backing")
            must(piece.along <= width->second + Length::ticks(good),
                 "longer than the cloth is wide: " + cloth);
        const std::string name = makes(step);
        must(m_cut[name] == 0, name + " was cut already");
        put(name, count, piece);
        if (does == "cut-binding") {
            // Strips sewn end to end on the diagonal: each join takes one strip width.
            m_bindingWidth = piece.across;
            m_stripLength = piece.along;
        }
        if (does == "cut-band")
            m_bands[name] = std::vector<Rectangle>(static_cast<std::size_t>(count), piece);
    }

    void crossCut(const Step &step, std::int64_t count)
    {
        const Rectangle piece{size(step, "length"), size(step, "width")};
        const std::string from = step.at("takes").at(0).at("piece").get<std::string>();
        must(!m_bands[from].empty(), "no bands to cut from: " + from);
        must(near(m_bands[from].front().across, piece.across), "the band has another width: " + from);
        must(m_cut[makes(step)] == 0, makes(step) + " was cut already");
        for (std::int64_t i = 0; i < count; ++i)
            m_wanted[from].push_back(piece.along);
        put(makes(step), count, piece);
    }

    /// The bands hold every piece cut from them, and one band fewer would not.
    void packBands()
    {
        for (const auto &[name, bands] : m_bands) {
            std::vector<Length> wanted = m_wanted[name];
            std::sort(wanted.begin(), wanted.end(), std::greater<>());
            must(!wanted.empty(), "nothing was cut from " + name);
            must(packs(wanted, bands.front().along, bands.size()),
                 "the bands do not hold all pieces: " + name);
            must(!packs(wanted, bands.front().along, bands.size() - 1), "a band too many: " + name);
        }
    }
    static bool packs(const std::vector<Length> &falling, Length room, std::size_t bands)
    {
        std::vector<Length> left(bands, room);
        for (const Length piece : falling) {
            const auto fits =
                std::find_if(left.begin(), left.end(), [&](Length rest) { return rest >= piece; });
            if (fits == left.end())
                return false;
            *fits -= piece;
        }
        return true;
    }

    void sew(const Step &step, const std::string &does, std::int64_t count)
    {
        take(step, count);
        const std::int64_t each = step.at("makes").at(0).at("count").get<std::int64_t>();
        Rectangle made;
        if (does == "trim-block")
            made = {size(step, "length"), size(step, "width")};
        else if (does == "join-long")
            made = joinedLong(step);
        else if (does == "join-short" || does == "join-long-row")
            made = stripSewn(step, does == "join-short" ? "short" : "long");
        else if (does == "join-row")
            made = row(step);
        else if (does == "square-piece")
            made = m_squared = piece();
        else if (does == "sew-binding")
            m_tape = m_stripLength * binding(step) - m_bindingWidth * (binding(step) - 1);
        else if (does == "test-join")
            must(m_taken.size() >= 1, "nothing to try the join with");
        if (does == "mark-strip")
            m_perStrip = each;
        put(makes(step), count * each, made);
    }

    static std::int64_t binding(const Step &step)
    {
        return step.at("takes").at(1).at("count").get<std::int64_t>();
    }

    /// Straight seams through the pieces, in the order they lie.
    Rectangle joinedLong(const Step &step)
    {
        const Length seam = lengthOf(step.at("seam"));
        Rectangle whole;
        for (const Json &taken : step.at("takes")) {
            const Rectangle next = m_taken[taken.at("piece").get<std::string>()].front();
            whole.along = whole.along == Length() ? next.along : whole.along + next.along - seam * 2;
            whole.across = next.across;
        }
        return whole;
    }

    /// Both strips sewn to one edge, the back folded over: the fold must pass the far seam.
    Rectangle stripSewn(const Step &step, const std::string &kind)
    {
        const Rectangle front = m_taken[kind + "/front"].front();
        m_seam = lengthOf(step.at("seam"));
        if (m_taken.count(kind + "/back") > 0) {
            const Rectangle back = m_taken[kind + "/back"].front();
            const Length visible = front.across - m_seam * 2;
            const Length fold = lengthOf(step.at("fold"));
            const Length passes = back.across - m_seam - visible - fold;
            must(passes > Length(), "the fold does not reach the seam");
            const Length planned = lengthOf(m_plan.at("fold").at("catch"));
            must(passes >= planned && passes < planned + Length::inches(0, 1, 16),
                 "the fold passes the seam too far");
            must(near(front.along, back.along), "front and back strips differ in length");
        }
        return front;
    }

    Rectangle row(const Step &)
    {
        const std::vector<Rectangle> &blocks = m_taken["block"];
        Rectangle whole{Length(), blocks.front().across};
        for (std::int64_t c = 0; c < m_room.columns; ++c) {
            if (c > 0) {
                const Rectangle strip = m_taken["short-join"].front();
                must(strip.along >= whole.across + m_room.shortSpare - Length::ticks(good),
                     "a short without its spare");
                whole.along += strip.across - m_seam * 4;
            }
            whole.along += blocks[static_cast<std::size_t>(c)].along;
        }
        return whole;
    }

    Rectangle piece()
    {
        Rectangle whole = m_taken["row"].front();
        for (std::int64_t r = 1; r < m_room.rows; ++r) {
            const Rectangle strip = m_taken["long-join"].front();
            must(near(strip.along, whole.along + m_room.longSpare), "a long is not its row with the spare");
            whole.across += strip.across + m_taken["row"][static_cast<std::size_t>(r)].across - m_seam * 4;
        }
        return whole;
    }

    void nothingLeftOver()
    {
        packBands();
        for (const auto &[name, held] : m_shelf) {
            const bool stays = name.starts_with("straight/") || name.starts_with("band/") ||
                               name.starts_with("trial-band/") || name == "finished-piece" ||
                               name == "draw-up" || name == "joint-tried";
            std::int64_t most = 0;
            if (name == "block")
                most = m_room.spare * m_room.kits;
            if (name == "place")
                most = (m_perStrip - 1) * m_room.kits;
            must(stays || static_cast<std::int64_t>(held.size()) <= most, "left over: " + name);
        }
        must(m_shelf["draw-up"].size() <= 1 && m_shelf["joint-tried"].size() <= 1, "tried twice");
    }

    const Json &m_plan;
    const Room &m_room;
    std::map<std::string, std::vector<Rectangle>> m_shelf;
    std::map<std::string, std::vector<Rectangle>> m_taken;
    std::vector<Rectangle> m_hand;
    std::map<std::string, std::int64_t> m_cut;
    std::map<std::string, std::vector<Rectangle>> m_bands;
    std::map<std::string, std::vector<Length>> m_wanted;
    Rectangle m_squared;
    Length m_tape;
    Length m_bindingWidth;
    Length m_seam;
    Length m_stripLength;
    std::int64_t m_perStrip = 1;
};

} // namespace

std::string makeThePiece(const Json &plan, const Room &room)
{
    try {
        Making making(plan, room);
        making.allSteps();
        making.compareWithThePlan();
    } catch (const Wrong &found) {
        return found.what;
    }
    return {};
}

Length lengthOf(const Json &told)
{
    return Length::ticks(std::llround(told.at("in").get<double>() * 8128.0));
}

} // namespace workroom
