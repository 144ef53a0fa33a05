// SPDX-License-Identifier: MIT
#include "app/fielditems.h"

#include "app/wording.h"
#include "bench/build.h"
#include "bench/otherwise.h"
#include "project/spelling.h"

#include <QUuid>

#include <algorithm>
#include <charconv>

namespace matside {

namespace {

constexpr std::size_t mostRulers = 50;

/// "/cloths/2" → 2, when the list is that one.
std::optional<std::size_t> placeIn(const std::string &item, std::string_view list)
{
    if (!item.starts_with(list))
        return std::nullopt;
    std::size_t place = 0;
    const char *end = item.data() + item.size();
    const auto read = std::from_chars(item.data() + list.size(), end, place);
    return read.ec == std::errc() && read.ptr == end ? std::optional(place) : std::nullopt;
}

/// An id no cloth has had, not even one of which only records are left.
std::string freeId(const Project &project)
{
    const auto taken = [&](const std::string &id) {
        const auto is = [&](const auto &thing) { return thing.cloth == id; };
        return std::any_of(project.cloths.begin(), project.cloths.end(),
                           [&](const Cloth &cloth) { return cloth.id == id; }) ||
               std::any_of(project.made.cut.begin(), project.made.cut.end(), is) ||
               std::any_of(project.made.cloths.begin(), project.made.cloths.end(), is) ||
               std::any_of(project.made.events.begin(), project.made.events.end(), is) ||
               std::any_of(project.patches.begin(), project.patches.end(), is);
    };
    // Made by chance, not counted: another tablet may add a cloth to the same piece.
    for (;;)
        if (std::string id = "cloth-" + QUuid::createUuid().toString(QUuid::Id128).left(8).toStdString();
            !taken(id))
            return id;
}

/// With a cloth of its own for this part, what is cut of the one that has it now would count for nothing.
bool takesOver(const Project &project, ClothRole role)
{
    if (project.made.cut.empty())
        return false;
    Project next = project;
    Cloth cloth;
    cloth.id = freeId(project);
    cloth.role = role;
    next.cloths.push_back(std::move(cloth));
    const Plan now = plan(next);
    return now.problems.empty() && !cutOfAnother(next, steps(next, now)).empty();
}

void nameAndSell(Cloth &cloth, System system)
{
    cloth.name = nameGiven(cloth.role);
    cloth.soldBy = system == System::Inch ? "1/8 yd" : "10 cm";
    cloth.soldStep = usualSoldStep(system);
}

Cloth newCloth(const Project &project)
{
    Cloth cloth;
    cloth.role = ClothRole::Patch;
    for (const ClothRole role : {ClothRole::Front, ClothRole::Back, ClothRole::Batting, ClothRole::Binding,
                                 ClothRole::SashingFront, ClothRole::SashingBack})
        if (!clothFor(project, role) && !takesOver(project, role)) {
            cloth.role = role;
            break;
        }
    cloth.id = freeId(project);
    nameAndSell(cloth, project.system);
    return cloth;
}

/// The ruler most makers own.
Ruler newRuler(const Project &project)
{
    Ruler ruler;
    ruler.name = inWords(QT_TRANSLATE_NOOP("Words", "new ruler")).toStdString();
    const bool inch = project.system == System::Inch;
    ruler.length = inch ? Length::inches(24) : Length::mm(600);
    ruler.width = inch ? Length::inches(6) : Length::mm(150);
    return ruler;
}

/// What still hangs on a cloth, in words; nothing when it can go.
std::optional<QString> useOf(const Project &project, const Cloth &cloth)
{
    const QString name = toQt(cloth.name.empty() ? cloth.id : cloth.name);
    for (const Patch &patch : project.patches)
        if (patch.cloth == cloth.id)
            //: a cloth cannot be taken away; %1 is the cloth, %2 a patch cut from it
            return inWords(
                       QT_TRANSLATE_NOOP(
                           "Words", "“%1” is the cloth of the patch “%2”: it stays while the patch does."))
                .arg(name, toQt(patch.name));
    const auto is = [&](const auto &thing) { return thing.cloth == cloth.id; };
    const Made &made = project.made;
    if (std::any_of(made.cut.begin(), made.cut.end(), is) ||
        std::any_of(made.events.begin(), made.events.end(), is))
        return inWords(QT_TRANSLATE_NOOP("Words", "“%1” has been cut already: it stays with this piece."))
            .arg(name);
    if (std::any_of(made.cloths.begin(), made.cloths.end(), is))
        return inWords(
                   QT_TRANSLATE_NOOP("Words", "“%1” has been bought or measured: it stays with this piece."))
            .arg(name);
    return std::nullopt;
}

} // namespace

std::string nameGiven(ClothRole role)
{
    // There may be many patches: each is to be told from the next.
    const QString name = role == ClothRole::Patch
                             ? inWords(QT_TRANSLATE_NOOP("Words", "new cloth"))
                             : clothText(Project(), spelling::wordFor(spelling::role, role));
    return name.toStdString();
}

std::optional<Cloth> unlisted(const Project &project, const std::string &id)
{
    if (id.empty() || clothNamed(project, id))
        return std::nullopt;
    for (const Spelling<ClothRole> &role : spelling::role)
        // The id stays: what was cut of it counts for the listed cloth.
        if (role.value != ClothRole::Patch && clothId(project, role.value) == id) {
            Cloth cloth;
            cloth.id = id;
            cloth.role = role.value;
            nameAndSell(cloth, project.system);
            return cloth;
        }
    return std::nullopt;
}

Result<Project, QString> withAnother(const Project &project, const std::string &list)
{
    Project next = project;
    if (list == "/cloths") {
        if (next.cloths.size() >= mostCloths)
            return inWords(QT_TRANSLATE_NOOP("Words", "More than %1 cloths do not fit in one piece."))
                .arg(mostCloths);
        next.cloths.push_back(newCloth(project));
    } else {
        if (next.rulers.size() >= mostRulers)
            return inWords(QT_TRANSLATE_NOOP("Words", "More than %1 rulers cannot be kept.")).arg(mostRulers);
        next.rulers.push_back(newRuler(project));
    }
    return next;
}

Result<Project, QString> withoutItem(const Project &project, const std::string &item)
{
    Project next = project;
    if (const auto place = placeIn(item, "/cloths/"); place && *place < next.cloths.size()) {
        if (auto use = useOf(project, next.cloths[*place]))
            return *std::move(use);
        next.cloths.erase(next.cloths.begin() + static_cast<std::ptrdiff_t>(*place));
        return next;
    }
    if (const auto place = placeIn(item, "/rulers/"); place && *place < next.rulers.size()) {
        if (next.rulers.size() == 1)
            return inWords(QT_TRANSLATE_NOOP("Words", "One ruler stays: every cut is laid out with it."));
        next.rulers.erase(next.rulers.begin() + static_cast<std::ptrdiff_t>(*place));
        return next;
    }
    return inWords(QT_TRANSLATE_NOOP("Words", "It is no longer there."));
}

} // namespace matside
