// SPDX-License-Identifier: MIT
#include "workroom.h"

#include "cutting.h"
#include "hooping.h"
#include "sewing.h"

#include <stdexcept>

namespace workroom {

namespace {

class Making {
public:
    Making(const Json &plan, const Room &room)
        : m_plan(plan), m_room(room), m_cutting(room, m_shelf), m_hooping(m_shelf), m_sewing(room, m_shelf)
    {
    }

    void allSteps()
    {
        bool counted = false;
        must(!m_plan.at("steps").empty(), "no steps");
        for (const Json &step : m_plan.at("steps")) {
            const bool trial = step.at("trial").get<bool>();
            counted = counted || !trial;
            must(!(trial && counted), idOf(step) + ": tried after the work began");
            Cutting::checkRuler(step);
            oneStep(step);
        }
    }

    void compareWithThePlan()
    {
        m_cutting.bandsWereEnough();
        nothingLeftOver();
        must(m_shelf.made("finished-piece") == m_room.kits, "not every piece was finished");
        const Json &sashing = m_plan.at("sashing");
        const auto counted = [&](const char *kind) {
            return sashing.at(kind).at("count").get<std::int64_t>() * m_room.kits;
        };
        must(m_shelf.made("short/front") == counted("shorts"), "front shorts");
        must(m_shelf.made("long/front") == counted("longs"), "front longs");
        const bool back = !sashing.at("cutBack").is_null();
        must(m_shelf.made("short/back") == (back ? counted("shorts") : 0), "back shorts");
        must(m_shelf.made("long/back") == (back ? counted("longs") : 0), "back longs");
        m_sewing.compare(m_plan);
    }

private:
    void oneStep(const Json &step)
    {
        const std::string does = step.at("does").get<std::string>();
        const std::int64_t count = step.at("count").get<std::int64_t>();
        if (does == "straighten")
            m_cutting.straighten(step);
        else if (does == "cut-strip" || does == "cut-band" || does == "cut-binding" ||
                 does == "cut-backing" || does == "cut-bias" || does == "cut-frame" || does == "cut-filler" ||
                 does == "cut-sashing-filler")
            m_cutting.fromCloth(step, count);
        else if (does == "cut-short" || does == "cut-long" || does == "cut-long-piece")
            m_cutting.crossCut(step, count);
        else if (does == "cut-patch")
            m_cutting.patch(step, count);
        else if (!atTheHoop(step, does, count) && !atTheMachine(step, does, count))
            passOn(step, count);
    }

    bool atTheHoop(const Json &step, const std::string &does, std::int64_t count)
    {
        if (does == "layer")
            m_hooping.layer(step, count);
        else if (does == "mark-strip")
            m_hooping.mark(step, count);
        else if (does == "stitch-block" || does == "stitch-test")
            m_hooping.stitch(step, count);
        else if (does == "trim-block")
            m_hooping.trim(step, count);
        else if (does == "harvest-short")
            m_hooping.harvest(step, count);
        else
            return false;
        return true;
    }

    bool atTheMachine(const Json &step, const std::string &does, std::int64_t count)
    {
        if (does == "join-long")
            m_sewing.joinLong(step, count);
        else if (does == "join-short" || does == "join-long-row")
            filledAndJoined(step, count);
        else if (does == "join-row")
            m_sewing.row(step, count);
        else if (does == "square-piece" || does == "lay-backing" || does == "bag-out")
            m_sewing.edge(step, count);
        else if (does == "sew-frame")
            m_sewing.frame(step, count);
        else if (does == "sew-binding")
            m_sewing.bind(step, count);
        else
            return false;
        return true;
    }

    void filledAndJoined(const Json &step, std::int64_t count)
    {
        m_cutting.fill(step, count);
        m_sewing.join(step, count);
    }

    /// Pressed, looked at, measured: the piece is the same afterwards.
    void passOn(const Json &step, std::int64_t count)
    {
        const Shelf::Hand hand = m_shelf.take(step, count);
        must(!hand.empty(), idOf(step) + ": works on nothing");
        m_shelf.put(makes(step), count, hand.begin()->second.front());
    }

    void nothingLeftOver() const
    {
        for (const auto &[name, held] : m_shelf.held()) {
            const bool stays = name.starts_with("straight/") || name.starts_with("band/") ||
                               name.starts_with("trial-band/") || name.starts_with("gap/") ||
                               name == "trial-place" || name == "sashing-filler" || name == "finished-piece";
            std::int64_t most = 0;
            if (name == "block")
                most = m_room.spare * m_room.kits;
            if (name == "place")
                most = (m_hooping.placesOnOneStrip() - 1) * m_room.kits;
            if (name == "draw-up" || name == "joint-tried")
                most = 1;
            must(stays || static_cast<std::int64_t>(held.size()) <= most, "left over: " + name);
        }
    }

    const Json &m_plan;
    const Room &m_room;
    Shelf m_shelf;
    Cutting m_cutting;
    Hooping m_hooping;
    Sewing m_sewing;
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
    } catch (const std::out_of_range &missing) {
        return std::string("a piece is missing: ") + missing.what();
    }
    return {};
}

} // namespace workroom
