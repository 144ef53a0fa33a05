// SPDX-License-Identifier: MIT
#include "cutting.h"

#include <algorithm>
#include <functional>

namespace workroom {

namespace {

/// First fit by falling length: what a maker with a list and a pile of bands does.
bool packs(const std::vector<Length> &falling, Length room, std::size_t bands)
{
    std::vector<Length> left(bands, room);
    for (const Length piece : falling) {
        const auto fits =
            std::find_if(left.begin(), left.end(), [&](Length rest) { return reaches(rest, piece); });
        if (fits == left.end())
            return false;
        *fits -= piece;
    }
    return true;
}

} // namespace

void Cutting::onlyOnce(const Json &step) const
{
    must(m_shelf.made(makes(step)) == 0, idOf(step) + ": " + makes(step) + " was cut already");
}

void Cutting::straighten(const Json &step)
{
    onlyOnce(step);
    m_shelf.put(makes(step), 1, {});
}

void Cutting::fromCloth(const Json &step, std::int64_t count)
{
    const std::string cloth = step.at("cloth").get<std::string>();
    must(m_shelf.has("straight/" + cloth), cloth + " was not straightened");
    const auto width = m_room.usable.find(cloth);
    must(width != m_room.usable.end(), "no such cloth: " + cloth);
    const Rectangle piece = sizeOf(step);
    must(reaches(width->second, std::min(piece.along, piece.across)), "wider than the cloth: " + cloth);
    if (step.at("does") != "cut-backing" && step.at("does") != "cut-bias")
        must(reaches(width->second, piece.along), "longer than the cloth is wide: " + cloth);
    onlyOnce(step);
    m_shelf.put(makes(step), count, piece);
    if (step.at("does") == "cut-band")
        m_bands[makes(step)] = {static_cast<std::size_t>(count), piece, {}};
    if (step.at("does") == "cut-sashing-filler" &&
        !step.at("trial").get<bool>()) // each kit is filled from strips of its own
        m_bands[makes(step)] = {static_cast<std::size_t>(count / m_room.kits), piece, {}};
}

void Cutting::crossCut(const Json &step, std::int64_t count)
{
    const std::string from = step.at("takes").at(0).at("piece").get<std::string>();
    const auto bands = m_bands.find(from);
    must(bands != m_bands.end(), "no bands to cut from: " + from);
    const Rectangle piece = sizeOf(step);
    must(near(bands->second.each.across, piece.across), "the band has another width: " + from);
    // A gap may have yielded shorts already; a band yields each kind of piece once.
    must(step.at("does") == "cut-short" || m_shelf.made(makes(step)) == 0, idOf(step) + " was cut already");
    bands->second.cut.insert(bands->second.cut.end(), static_cast<std::size_t>(count), piece.along);
    m_shelf.put(makes(step), count, piece);
}

void Cutting::patch(const Json &step, std::int64_t count)
{
    const std::string cloth = step.at("cloth").get<std::string>();
    must(m_shelf.has("straight/" + cloth), cloth + " was not straightened");
    onlyOnce(step);
    m_shelf.put(makes(step), count, sizeOf(step));
}

void Cutting::fill(const Json &step, std::int64_t count)
{
    const std::string sashing = step.at("takes").at(0).at("piece").get<std::string>();
    must(m_shelf.has(sashing), idOf(step) + " lacks " + sashing);
    const Rectangle strip = m_shelf.held().at(sashing).front();
    const Length seam = lengthOf(step.at("seam"));
    const Length gap = strip.across - seam * 2 - m_room.allowance.value_or(seam) * 2;
    const bool filled = std::any_of(step.at("takes").begin(), step.at("takes").end(),
                                    [](const Json &taken) { return taken.at("piece") == "sashing-filler"; });
    must(filled == (gap > Length::inches(0, 1, 8)), idOf(step) + ": filled, or not, against its gap");
    if (!filled)
        return;
    const auto strips = m_bands.find("sashing-filler");
    must(strips != m_bands.end(), idOf(step) + ": no batting to lay in");
    must(near(strips->second.each.across, gap), idOf(step) + ": the batting does not fill the gap");
    for (std::int64_t i = 0; i < count / m_room.kits; ++i) {
        Length left = strip.along;
        for (; left > strips->second.each.along; left -= strips->second.each.along)
            strips->second.cut.push_back(strips->second.each.along);
        strips->second.cut.push_back(left);
    }
}

void Cutting::bandsWereEnough() const
{
    for (const auto &[name, bands] : m_bands) {
        std::vector<Length> wanted = bands.cut;
        std::sort(wanted.begin(), wanted.end(), std::greater<>());
        must(!wanted.empty(), "nothing was cut from " + name);
        must(packs(wanted, bands.each.along, bands.count), "the bands do not hold all pieces: " + name);
        must(!packs(wanted, bands.each.along, bands.count - 1), "a band too many: " + name);
    }
}

void Cutting::checkRuler(const Json &step)
{
    if (!step.contains("ruler") || step.at("ruler").is_null() || step.at("ruler").at("on") != "cut-edge")
        return;
    const Json &ruler = step.at("ruler");
    const bool two = !ruler.at("second").is_null();
    const Length reads = lengthOf(ruler.at("line")) + (two ? lengthOf(ruler.at("secondWidth")) : Length());
    const Rectangle piece = sizeOf(step);
    // A strip is measured by its width and cut along its length; a cross-cut the other way about.
    const bool byWidth = near(reads, piece.across);
    must(byWidth || near(reads, piece.along), idOf(step) + ": the rulers do not add up to the piece");
    must(lengthOf(ruler.at("firstWidth")) >= lengthOf(ruler.at("line")) || ruler.at("fence") == "mat",
         idOf(step) + ": the first ruler has no such line");
    if (ruler.at("fence") != "long-enough")
        return;
    const Length fence = lengthOf(ruler.at(two ? "secondLength" : "firstLength"));
    const Length cut = byWidth ? piece.along : piece.across;
    must(reaches(fence * ruler.at("layers").get<std::int64_t>(), cut),
         idOf(step) + ": the fence is shorter than the cut");
}

} // namespace workroom
