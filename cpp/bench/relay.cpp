// SPDX-License-Identifier: MIT
#include "bench/relay.h"

#include "bench/account.h"
#include "bench/clothlay.h"
#include "bench/progress.h"

#include <algorithm>
#include <set>

namespace matside {

namespace {

using From = Wanted::From;
using Counts = std::map<std::string, std::int64_t>;

/// A strip that is counted by its only sort of pieces, not by a step of its own.
bool countedByPieces(const LaidStrip &strip)
{
    return strip.pieces.size() == 1 && strip.pieces.front().does == strip.does;
}

std::int64_t piecesIn(const LaidStrip &strip, const std::string &does)
{
    std::int64_t pieces = 0;
    for (const LaidPiece &piece : strip.pieces)
        pieces += piece.does == does ? piece.count : 0;
    return pieces;
}

void append(std::vector<LaidStrip> &to, LaidStrip strip, std::int64_t repeats)
{
    strip.repeats = repeats;
    if (repeats > 0)
        to.push_back(std::move(strip));
}

/// The last bands cut of each step are the spoiled ones that are not marked yet.
bool markSpoiled(std::vector<LaidStrip> &cut, const Counts &spoiled)
{
    Counts marked;
    for (const LaidStrip &strip : cut)
        if (strip.spoiled)
            marked[strip.does] += strip.repeats;
    bool any = false;
    for (std::size_t i = cut.size(); i-- > 0;) {
        if (cut[i].spoiled || countedByPieces(cut[i]))
            continue;
        const auto found = spoiled.find(cut[i].does);
        const std::int64_t owed = found == spoiled.end() ? 0 : found->second - marked[cut[i].does];
        const std::int64_t now = std::min(owed, cut[i].repeats);
        if (now <= 0)
            continue;
        any = true;
        marked[cut[i].does] += now;
        LaidStrip lost = cut[i];
        lost.spoiled = true;
        lost.pieces.clear();
        lost.repeats = now;
        cut[i].repeats -= now;
        cut.insert(cut.begin() + static_cast<std::ptrdiff_t>(i) + 1, std::move(lost));
        if (cut[i].repeats == 0)
            cut.erase(cut.begin() + static_cast<std::ptrdiff_t>(i));
    }
    return any;
}

bool sameSize(const LaidPiece &piece, const Wanted &want, Length usable)
{
    if (want.from == From::Cloth)
        return piece.along == want.along && piece.across == usable;
    if (want.from == From::Whole && piece.along == want.takes)
        return true;
    const bool straight = piece.across == want.across && piece.along == want.along;
    const bool turned = piece.across == want.along && piece.along == want.across;
    return piece.turned ? turned : straight;
}

const Wanted *wantFor(const std::vector<Wanted> &wanted, const std::string &does)
{
    const auto found =
        std::find_if(wanted.begin(), wanted.end(), [&](const Wanted &want) { return want.does == does; });
    return found == wanted.end() ? nullptr : &*found;
}

/// Keeps of each strip begun the places used up and those of a size still wanted, as many as are needed;
/// takes these off what is wanted. The places of a step are filled in the order of the strips.
class Keeping {
public:
    Keeping(std::vector<Wanted> &wanted, Counts used, Length usable)
        : m_wanted(wanted), m_used(std::move(used)), m_usable(usable)
    {
    }
    std::vector<LaidStrip> keep(const std::vector<LaidStrip> &cut)
    {
        std::vector<LaidStrip> kept;
        for (const LaidStrip &strip : cut) {
            if (wholly(strip)) {
                kept.push_back(strip);
                continue;
            }
            for (std::int64_t i = 0; i < strip.repeats; ++i)
                add(kept, one(strip));
        }
        return kept;
    }

private:
    /// All its places are used up: the usual case, and thousands of strips stay one entry.
    bool wholly(const LaidStrip &strip)
    {
        for (const LaidPiece &piece : strip.pieces)
            if (m_used[piece.does] < piecesIn(strip, piece.does) * strip.repeats)
                return false;
        for (const LaidPiece &piece : strip.pieces)
            m_used[piece.does] -= piece.count * strip.repeats;
        return true;
    }
    LaidStrip one(const LaidStrip &strip)
    {
        LaidStrip single = strip;
        single.repeats = 1;
        std::vector<LaidPiece> pieces;
        std::size_t last = 0; // what lies before a piece cut already keeps its room
        for (LaidPiece &piece : single.pieces) {
            const std::int64_t gone = std::min(piece.count, m_used[piece.does]);
            m_used[piece.does] -= gone;
            Wanted *want = nullptr;
            for (Wanted &candidate : m_wanted)
                if (candidate.does == piece.does && sameSize(piece, candidate, m_usable))
                    want = &candidate;
            const std::int64_t still = want ? std::min(piece.count - gone, want->count) : 0;
            if (want)
                want->count -= still;
            const std::int64_t blank = piece.does.empty() ? piece.count : piece.count - gone - still;
            const auto put = [&](const std::string &does, std::int64_t count) {
                if (count > 0)
                    pieces.push_back(
                        {does, piece.across, piece.along, count, piece.turned && !does.empty(), {}});
            };
            put(piece.does, piece.does.empty() ? 0 : gone + still);
            if (gone > 0)
                last = pieces.size();
            put({}, blank);
        }
        while (pieces.size() > last && pieces.back().does.empty())
            pieces.pop_back();
        single.pieces = std::move(pieces);
        return single;
    }
    static void add(std::vector<LaidStrip> &kept, LaidStrip strip)
    {
        if (!kept.empty() && kept.back().pieces == strip.pieces && kept.back().height == strip.height &&
            kept.back().does == strip.does && kept.back().owned == strip.owned &&
            kept.back().spoiled == strip.spoiled && kept.back().run == strip.run)
            ++kept.back().repeats;
        else
            kept.push_back(std::move(strip));
    }

    std::vector<Wanted> &m_wanted;
    Counts m_used;
    Length m_usable;
};

/// Lays what is wanted into the room at the end of strips begun. A step's pieces go to the last of its
/// strips or later ones only, so that what was cut stays where it was.
void useRoom(std::vector<LaidStrip> &cut, std::vector<Wanted> &wanted, Length usable)
{
    for (Wanted &want : wanted) {
        if (want.from == From::Cloth || want.from == From::Whole)
            continue;
        std::size_t from = 0;
        for (std::size_t i = 0; i < cut.size(); ++i)
            if (piecesIn(cut[i], want.does) > 0)
                from = cut[i].repeats == 1 ? i : i + 1;
        for (std::size_t i = from; i < cut.size() && want.count > 0; ++i) {
            LaidStrip &strip = cut[i];
            if (strip.spoiled || strip.repeats > 1 || countedByPieces(strip) || want.along > strip.height ||
                strip.owned > 0)
                continue;
            Length room = strip.run > Length() ? strip.run : usable;
            for (const LaidPiece &piece : strip.pieces)
                room -= piece.across * piece.count;
            const std::int64_t fit =
                std::min(std::max<std::int64_t>(room.floorDiv(want.across), 0), want.count);
            if (fit == 0)
                continue;
            strip.pieces.push_back({want.does, want.across, want.along, fit, false, {}});
            want.count -= fit;
        }
    }
}

bool agrees(const LayoutState &state, const std::vector<Wanted> &wanted, Length usable)
{
    const Length open = besideOf(state.open);
    if (state.newlySpoiled || (open > Length() && besideOf(state.cut) + open > usable))
        return false;
    Counts planned = state.unfilled;
    for (const LaidStrip &strip : state.open)
        for (const LaidPiece &piece : strip.pieces) {
            const Wanted *want = wantFor(wanted, piece.does);
            if (!want || !sameSize(piece, *want, usable))
                return false;
            planned[piece.does] += piece.count * strip.repeats;
        }
    return std::all_of(wanted.begin(), wanted.end(), [&](const Wanted &want) {
        const auto found = planned.find(want.does);
        return (found == planned.end() ? 0 : found->second) == std::max<std::int64_t>(want.count, 0);
    });
}

/// Strips begun whose empty places are of a size no longer wanted.
bool staleSlots(const LayoutState &state, const CutCounts &cuts, const std::vector<Wanted> &wanted,
                Length usable)
{
    Counts used = cuts.all;
    for (const LaidStrip &strip : state.cut)
        for (const LaidPiece &piece : strip.pieces) {
            if (piece.does.empty())
                continue;
            const std::int64_t places = piece.count * strip.repeats;
            const std::int64_t gone = std::min(places, used[piece.does]);
            used[piece.does] -= gone;
            const Wanted *want = wantFor(wanted, piece.does);
            if (gone < places && (!want || !sameSize(piece, *want, usable)))
                return true;
        }
    return false;
}

void relay(MadeLayout &layout, const Project &project, const Plan &plan, const std::vector<Step> &steps)
{
    std::vector<Wanted> wanted = wantedOf(project, plan, steps, layout.cloth);
    const CutCounts cuts = cutsOf(project, steps, layout.cloth);
    const LayoutState state = stateOf(project, steps, layout);
    Ground ground = groundOf(project, plan, layout.cloth);
    if (agrees(state, wanted, ground.usable) && !staleSlots(state, cuts, wanted, ground.usable))
        return;
    std::vector<LaidStrip> strips = Keeping(wanted, cuts.all, ground.usable).keep(state.cut);
    useRoom(strips, wanted, min(ground.usable, layout.usable));
    for (const LaidStrip &strip : strips)
        if (strip.owned > 0 && static_cast<std::size_t>(strip.owned) <= ground.owned.size()) {
            Length &left = ground.owned[static_cast<std::size_t>(strip.owned) - 1].along;
            left = max(left - strip.height * strip.repeats, Length());
        }
    // Beside strips along the selvage the rest of their length yields more of them, and nothing else.
    for (LaidStrip &strip :
         fillStretch(wanted, runOf(strips), min(ground.usable, layout.usable) - besideOf(strips)))
        strips.push_back(std::move(strip));
    ground.straighten = strips.empty();
    if (!strips.empty())
        ground.reach = Length();
    for (LaidStrip &strip : layOut(wanted, ground).strips)
        strips.push_back(std::move(strip));
    layout.usable = ground.usable;
    layout.strips = std::move(strips);
}

} // namespace

CutCounts cutsOf(const Project &project, const std::vector<Step> &steps, const std::string &cloth)
{
    CutCounts cuts;
    for (const MadeCut &made : project.made.cut)
        if (made.cloth == cloth) {
            cuts.all[made.does] += made.count;
            cuts.spoiled[made.does] += made.spoiled;
        }
    for (const Step &step : steps)
        if (step.cloth == cloth && step.station == Station::Cut) {
            const std::string does = progressName(step);
            cuts.all[does] = std::max(cuts.all[does], step.done + cuts.spoiled[does]);
        }
    return cuts;
}

LayoutState stateOf(const Project &project, const std::vector<Step> &steps, const MadeLayout &layout)
{
    LayoutState state;
    const CutCounts cuts = cutsOf(project, steps, layout.cloth);
    Counts left = cuts.all; // of strips and pieces not yet accounted for
    for (const LaidStrip &strip : layout.strips) {
        std::int64_t &done = left[strip.does];
        const std::int64_t each = countedByPieces(strip) ? strip.pieces.front().count : 1;
        const std::int64_t begun =
            std::min((std::max<std::int64_t>(done, 0) + each - 1) / each, strip.repeats);
        if (countedByPieces(strip))
            done -= begun * each;
        else
            done -= begun;
        for (const LaidPiece &piece : strip.pieces)
            if (!countedByPieces(strip))
                left[piece.does] -= piece.count * begun;
        append(state.cut, strip, begun);
        append(state.open, strip, strip.repeats - begun);
    }
    state.newlySpoiled = markSpoiled(state.cut, cuts.spoiled);
    for (const LaidStrip &strip : state.cut)
        for (const LaidPiece &piece : strip.pieces)
            state.unfilled[piece.does] += piece.count * strip.repeats;
    for (auto &[does, places] : state.unfilled) {
        const auto used = cuts.all.find(does);
        places = std::max<std::int64_t>(places - (used == cuts.all.end() ? 0 : used->second), 0);
    }
    return state;
}

Project withLayoutsSettled(const Project &project)
{
    if (project.made.layouts.empty())
        return project;
    const Plan now = plan(project);
    if (!now.problems.empty())
        return project; // nothing can be laid out; once it is mended this runs again
    const std::vector<Step> all = steps(project, now);
    Project next = project;
    for (MadeLayout &layout : next.made.layouts)
        relay(layout, project, now, all);
    return next;
}

} // namespace matside
