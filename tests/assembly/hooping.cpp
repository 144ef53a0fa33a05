// SPDX-License-Identifier: MIT
#include "hooping.h"

namespace workroom {

namespace {

Rectangle any(const Shelf::Hand &hand)
{
    return hand.begin()->second.front();
}

} // namespace

void Hooping::layer(const Json &step, std::int64_t count)
{
    const Shelf::Hand hand = m_shelf.take(step, count);
    m_strip = any(hand);
    for (const auto &[name, strips] : hand)
        for (const Rectangle &strip : strips)
            must(near(strip.along, m_strip.along) && near(strip.across, m_strip.across),
                 idOf(step) + ": the layers differ in size");
    must(hand.size() >= 2, idOf(step) + ": a sandwich of one layer");
    m_shelf.put(makes(step), count, m_strip);
}

void Hooping::mark(const Json &step, std::int64_t count)
{
    (void)m_shelf.take(step, count);
    m_centres = placesOf(step);
    must(!m_centres.empty(), idOf(step) + ": no places on the strip");
    m_places = step.at("makes").at(0).at("count").get<std::int64_t>();
    must(m_places == static_cast<std::int64_t>(m_centres.size()), idOf(step) + ": a place without a mark");
    for (const Json &made : step.at("makes")) {
        const std::string name = made.at("piece").get<std::string>();
        const std::int64_t each = made.at("count").get<std::int64_t>();
        if (name.starts_with("gap/"))
            m_gaps = each;
        must(m_gaps < m_places, idOf(step) + ": a gap beside no block");
        m_shelf.put(name, count * each, {});
    }
}

void Hooping::stitch(const Json &step, std::int64_t count)
{
    (void)m_shelf.take(step, count);
    m_sent = sizeOf(step);
    m_shelf.put(makes(step), count, m_sent);
}

void Hooping::trim(const Json &step, std::int64_t count)
{
    (void)m_shelf.take(step, count);
    must(step.at("ruler").at("on") == "outline", idOf(step) + ": not measured from the outline");
    m_allowance = lengthOf(step.at("ruler").at("line"));
    m_trimmed = true;
    const Rectangle block = sizeOf(step);
    stripHoldsItsBlocks(block);
    m_shelf.put(makes(step), count, block);
}

/// Each outline with its allowances lies on the strip and clear of its neighbours'.
void Hooping::stripHoldsItsBlocks(Rectangle trimmed) const
{
    const Length both = m_allowance * 2;
    must(reaches(m_sent.along + both, trimmed.along) && reaches(m_sent.across + both, trimmed.across),
         "a block is trimmed larger than it was stitched");
    must(reaches(m_strip.across, m_sent.across + both), "the strip is too narrow for its blocks");
    const Length half = m_sent.along.scaled(1, 2) + m_allowance;
    must(reaches(m_centres.front(), half), "the first block hangs over the strip's end");
    must(reaches(m_strip.along, m_centres.back() + half), "the last block hangs over the strip's end");
    for (std::size_t i = 1; i < m_centres.size(); ++i)
        must(reaches(m_centres[i] - m_centres[i - 1], half * 2), "two blocks share an allowance");
}

/// A gap piece is as wide as the outlines stand apart, less an allowance at either side.
void Hooping::harvest(const Json &step, std::int64_t count)
{
    (void)m_shelf.take(step, count);
    must(m_trimmed && m_centres.size() > 1, idOf(step) + ": no gap was cut free yet");
    const Rectangle piece = sizeOf(step);
    // The gaps that come apart are the first from the zero end.
    for (std::int64_t i = 0; i < m_gaps; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const Length gap = m_centres.at(at + 1) - m_centres[at] - m_sent.along - m_allowance * 2;
        must(reaches(gap, piece.across), idOf(step) + ": the gap is too narrow");
    }
    must(reaches(m_strip.across, piece.along), idOf(step) + ": the gap is too short");
    must(m_shelf.made(makes(step)) == 0, idOf(step) + ": harvested already");
    m_shelf.put(makes(step), count, piece);
}

} // namespace workroom
