// SPDX-License-Identifier: MIT
#include "app/planfile.h"

namespace matside {

namespace {

using Json = nlohmann::ordered_json;

const char *nameOf(LineOn on)
{
    switch (on) {
    case LineOn::Outline:
        return "outline";
    case LineOn::Fold:
        return "fold";
    case LineOn::CutEdge:
        break;
    }
    return "cut-edge";
}

const char *nameOf(Fence fence)
{
    switch (fence) {
    case Fence::SlideAlong:
        return "slide-along";
    case Fence::Mat:
        return "mat";
    case Fence::LongEnough:
        break;
    }
    return "long-enough";
}

Json rulerFile(const RulerPlace &ruler, Marks marks)
{
    const bool mat = ruler.fence == Fence::Mat;
    Json file{{"layers", ruler.layers},
              {"first", ruler.first},
              {"firstLength", lengthFile(ruler.firstLength, marks)},
              {"firstWidth", lengthFile(ruler.firstWidth, marks)},
              {"line", lengthFile(ruler.line, marks)},
              {"on", nameOf(ruler.on)},
              {"second", ruler.second ? Json(*ruler.second) : Json()},
              {"blade", mat            ? "mat"
                        : ruler.second ? "second"
                                       : "first"},
              {"keep", ruler.keep},
              {"fence", nameOf(ruler.fence)}};
    if (ruler.second) {
        file["secondWidth"] = lengthFile(ruler.secondWidth, marks);
        file["secondLength"] = lengthFile(ruler.secondLength, marks);
    }
    return file;
}

Json piecesFile(const std::vector<Piece> &pieces)
{
    Json all = Json::array();
    for (const Piece &piece : pieces)
        all.push_back({{"piece", piece.name}, {"count", piece.count}});
    return all;
}

Json stepFile(const Step &step, Marks marks)
{
    Json file{{"id", step.id},
              {"station", nameOf(step.station)},
              {"does", nameOf(step.does)},
              {"trial", step.trial},
              {"notTried", step.notTried},
              {"cloth", step.cloth.empty() ? Json() : Json(step.cloth)},
              {"count", step.count},
              {"done", step.done}};
    // As the step's own screen and the sheet tell it: the line it lies on under the ruler.
    if (step.size)
        file["size"] = {{"width", lengthFile(step.size->across, marks)},
                        {"length", lengthFile(step.size->along, marks)}};
    if (!step.figure.empty())
        file["figure"] = step.figure;
    if (step.ruler)
        file["ruler"] = rulerFile(*step.ruler, marks);
    if (step.seam)
        file["seam"] = lengthFile(*step.seam, marks, Round::Fine);
    if (step.fold)
        file["fold"] = lengthFile(*step.fold, marks, Round::Down);
    file["takes"] = piecesFile(step.takes);
    file["makes"] = piecesFile(step.makes);
    if (!step.lies.empty()) {
        file["lies"] = Json::array();
        for (const BandLie &lie : step.lies)
            file["lies"].push_back({{"count", lie.count},
                                    {"band", lengthFile(lie.band, marks)},
                                    {"off", lengthFile(lie.off, marks)},
                                    {"width", lengthFile(lie.width, marks)}});
    }
    if (!step.at.empty()) {
        file["at"] = Json::array();
        for (const Length at : step.at)
            file["at"].push_back(lengthFile(at, marks));
    }
    file["check"] = step.check;
    file["caution"] = step.caution;
    return file;
}

} // namespace

nlohmann::ordered_json stepsFile(const std::vector<Step> &steps, Marks marks)
{
    Json all = Json::array();
    for (const Step &step : steps)
        all.push_back(stepFile(step, marks));
    return all;
}

} // namespace matside
