// SPDX-License-Identifier: MIT
#include "shelf.h"

#include <cmath>

namespace workroom {

namespace {

constexpr std::int64_t good = 64;

} // namespace

void must(bool holds, const std::string &what)
{
    if (!holds)
        throw Wrong{what};
}

bool near(Length a, Length b)
{
    return (a - b).magnitude() <= Length::ticks(good);
}

bool reaches(Length a, Length b)
{
    return a + Length::ticks(good) >= b;
}

Length lengthOf(const Json &told)
{
    return Length::ticks(std::llround(told.at("in").get<double>() * 8128.0));
}

Rectangle sizeOf(const Json &step)
{
    return {lengthOf(step.at("size").at("length")), lengthOf(step.at("size").at("width"))};
}

std::vector<Length> placesOf(const Json &step)
{
    std::vector<Length> places;
    if (step.contains("at"))
        for (const Json &place : step.at("at"))
            places.push_back(lengthOf(place));
    return places;
}

std::string idOf(const Json &step)
{
    return step.at("id").get<std::string>();
}

std::string makes(const Json &step)
{
    return step.at("makes").at(0).at("piece").get<std::string>();
}

void Shelf::put(const std::string &name, std::int64_t count, Rectangle piece)
{
    m_held[name].insert(m_held[name].end(), static_cast<std::size_t>(count), piece);
    m_made[name] += count;
}

Shelf::Hand Shelf::take(const Json &step, std::int64_t times)
{
    Hand hand;
    for (const Json &taken : step.at("takes")) {
        const std::string name = taken.at("piece").get<std::string>();
        const std::int64_t count = taken.at("count").get<std::int64_t>() * times;
        std::vector<Rectangle> &held = m_held[name];
        must(!held.empty() && static_cast<std::int64_t>(held.size()) >= count, idOf(step) + " lacks " + name);
        hand[name].assign(held.end() - count, held.end());
        held.resize(held.size() - static_cast<std::size_t>(count));
    }
    return hand;
}

bool Shelf::has(const std::string &name) const
{
    const auto held = m_held.find(name);
    return held != m_held.end() && !held->second.empty();
}

std::int64_t Shelf::made(const std::string &name) const
{
    const auto made = m_made.find(name);
    return made == m_made.end() ? 0 : made->second;
}

} // namespace workroom
