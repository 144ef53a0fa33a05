// SPDX-License-Identifier: MIT
#pragma once

#include "workroom.h"

namespace workroom {

/// From layered strips to trimmed blocks, and the short sashings that the gaps between them yield.
class Hooping {
public:
    explicit Hooping(Shelf &shelf) : m_shelf(shelf) {}

    /// Front, batting and back lie edge to edge.
    void layer(const Json &step, std::int64_t count);
    void mark(const Json &step, std::int64_t count);
    void stitch(const Json &step, std::int64_t count);
    void trim(const Json &step, std::int64_t count);
    void harvest(const Json &step, std::int64_t count);

    /// Places of which no block was made: at most the rest of one strip for each piece.
    [[nodiscard]] std::int64_t placesOnOneStrip() const { return m_places; }

private:
    void stripHoldsItsBlocks(Rectangle trimmed) const;

    Shelf &m_shelf;
    Rectangle m_strip;
    Rectangle m_sent;
    std::vector<Length> m_centres;
    Length m_allowance;
    std::int64_t m_places = 1;
    std::int64_t m_gaps = 0; ///< of one strip, that come apart into sashing
    bool m_trimmed = false;
};

} // namespace workroom
