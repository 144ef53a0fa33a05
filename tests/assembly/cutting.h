// SPDX-License-Identifier: MIT
#pragma once

#include "workroom.h"

namespace workroom {

/// The table with the mat: everything that is cut from cloth.
class Cutting {
public:
    Cutting(const Room &room, Shelf &shelf) : m_room(room), m_shelf(shelf) {}

    void straighten(const Json &step);
    /// A strip, band, binding strip or backing across the width of its cloth.
    void fromCloth(const Json &step, std::int64_t count);
    /// A sashing, or a piece of one, from the bands it names.
    void crossCut(const Json &step, std::int64_t count);
    void patch(const Json &step, std::int64_t count);
    /// Batting laid into a wide sashing: as wide as the gap, a piece as long as each sashing of the join.
    void fill(const Json &step, std::int64_t count);
    /// The bands hold every piece cut from them, and one band fewer would not.
    void bandsWereEnough() const;

    /// The lines on the rulers add up to what is kept, and the blade has something to follow.
    static void checkRuler(const Json &step);

private:
    struct Bands {
        std::size_t count = 0;
        Rectangle each;
        std::vector<Length> cut;
    };
    void onlyOnce(const Json &step) const;

    const Room &m_room;
    Shelf &m_shelf;
    std::map<std::string, Bands> m_bands;
};

} // namespace workroom
