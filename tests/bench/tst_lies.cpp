// SPDX-License-Identifier: MIT
//
// The ruler lies for the piece at hand: a patch that lies a quarter turned in its band is measured off by its
// other side, and the band is named. Every place of a layout is walked here by itself, strip by strip.
#include "alonghelp.h"
#include "bench/progress.h"
#include "bench/record.h"
#include "bench/relay.h"
#include "bench/shopping.h"

using namespace alonghelp;

namespace {

/// One place of a layout: the band it is cut from, and the side that lies along it.
struct Place {
    Length band;
    Length off;
    Length width;
};

/// The places of a step that are cut from bands, in the order of the strips.
std::vector<Place> placesOf(const MadeLayout &layout, const std::string &does)
{
    std::vector<Place> places;
    for (const LaidStrip &strip : layout.strips)
        for (std::int64_t i = 0; strip.does != does && i < strip.repeats; ++i)
            for (const LaidPiece &piece : strip.pieces)
                for (std::int64_t k = 0; piece.does == does && k < piece.count; ++k)
                    places.push_back({strip.height, piece.across, piece.along});
    return places;
}

const Step *nextOf(const std::vector<Step> &all)
{
    const auto open = std::find_if(all.begin(), all.end(), [](const Step &step) {
        return step.station == Station::Cut && step.cloth == "leaf" && step.done < step.count;
    });
    return open == all.end() ? nullptr : &*open;
}

} // namespace

class Lies : public QObject {
    Q_OBJECT
private slots:
    void theRulerLiesForThePlaceAtHand();
    void aBackingIsMeasuredOffByTheSideAlongTheSelvage();
};

void Lies::theRulerLiesForThePlaceAtHand()
{
    planhelp::Chance chance(61);
    int turned = 0, straight = 0, bothWays = 0, wider = 0;
    for (int i = 0; i < planhelp::count(40); ++i) {
        Project project = longPatches();
        project.blocks.columns = chance.between(1, 3);
        project.patches = {patchOf("one", in(chance.between(2, 12)), in(chance.between(2, 12)), 1),
                           patchOf("two", in(chance.between(2, 12)), in(chance.between(2, 12)), 2),
                           patchOf("three", in(chance.between(2, 12)), in(chance.between(2, 12)), 1)};
        if (!plan(project).problems.empty())
            continue;
        project = withBought(project, plan(project), benchhelp::stepsOf(project), "leaf");
        const MadeLayout layout = *project.made.layoutOf("leaf");
        std::map<std::string, std::size_t> cut;
        for (;;) {
            const std::vector<Step> all = benchhelp::stepsOf(project);
            const Step *step = nextOf(all);
            if (!step)
                break;
            const std::string does = progressName(*step);
            const std::vector<Place> places = placesOf(layout, does);
            if (step->does == Does::CutPatch && !places.empty()) {
                const std::size_t at = cut[does]++;
                QVERIFY(at < places.size() && step->ruler && step->size);
                const Place &place = places[at];
                QCOMPARE(step->ruler->line + step->ruler->secondWidth, place.off);
                QCOMPARE(step->lies[step->lie].band, place.band);
                QCOMPARE(step->lies[step->lie].width, place.width);
                // It is the patch itself, one way round or the other.
                const Pair size = *step->size;
                const bool asListed = place.off == size.along && place.width == size.across;
                const bool otherWay = place.off == size.across && place.width == size.along;
                QVERIFY(asListed || otherWay);
                straight += asListed ? 1 : 0;
                turned += asListed ? 0 : 1;
                wider += place.width < place.band ? 1 : 0;
                bothWays += std::any_of(places.begin(), places.end(),
                                        [&](const Place &other) { return other.off != place.off; })
                                ? 1
                                : 0;
            }
            project = withDone(project, plan(project), *step);
        }
    }
    QVERIFY(straight > 50);
    QVERIFY(turned > 50);
    QVERIFY(bothWays > 10);
    QVERIFY(wider > 10);
}

void Lies::aBackingIsMeasuredOffByTheSideAlongTheSelvage()
{
    // A fact of the trade, no published source: cloth is cut off the bolt along its length, and the side that
    // goes from selvage to selvage is no longer than the cloth is wide.
    int turned = 0;
    for (const std::int64_t columns : {1, 2, 3, 5}) {
        Project project = benchhelp::nineBlocksOfCloth();
        project.blocks.columns = columns;
        project.blocks.rows = 2;
        project.build = Build::CleanBack;
        const Plan p = plan(project);
        QVERIFY(p.problems.empty() && p.size.backing);
        const std::vector<Step> all = steps(project, p);
        for (const Step &step : all) {
            if (step.does != Does::CutBacking)
                continue;
            const Length usable = usableOf(project, p, step.cloth);
            const Length off = step.ruler->line + step.ruler->secondWidth;
            const Length other = off == step.size->across ? step.size->along : step.size->across;
            QVERIFY(off == step.size->across || off == step.size->along);
            if (min(step.size->along, step.size->across) <= usable)
                QVERIFY(other <= usable);
            turned += off == step.size->along && off != step.size->across ? 1 : 0;
        }
    }
    QVERIFY(turned > 0);
}

QTEST_APPLESS_MAIN(Lies)
#include "tst_lies.moc"
