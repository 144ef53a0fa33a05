// SPDX-License-Identifier: MIT
#pragma once

#include "app/clothcolour.h"
#include "app/shademodel.h"
#include "desk.h"
#include "fakesource.h"

#include <QColorSpace>
#include <QPainter>

/// What the tests of light and dark stand on.
namespace shadebench {

using namespace matside;

inline Cloth cloth(const char *id, ClothRole role, const std::string &colour)
{
    Cloth made;
    made.id = id;
    made.name = id;
    made.role = role;
    made.soldBy = "1/8 yd";
    made.soldStep = usualSoldStep(System::Inch);
    made.colour = colour;
    return made;
}
inline Patch patch(const char *name, const char *of)
{
    Patch made;
    made.name = name;
    made.width = made.height = Length::inches(2);
    made.over = Length::inches(0, 1, 2);
    made.cloth = of;
    return made;
}
inline std::string greyAt(double value)
{
    const double y = luminanceOfValue(value);
    return writeColour(colourOf(Light{y, y, y}));
}
/// Three patches of values 2, 3 and 6 on a ground of 9: a boat of hull, keel and sail.
inline Project boat()
{
    Project project = desk::topper();
    project.cloths = {
        cloth("ground", ClothRole::Front, greyAt(9)),    cloth("back", ClothRole::Back, "#4a6480"),
        cloth("wadding", ClothRole::Batting, "#ffffff"), cloth("edge", ClothRole::Binding, ""),
        cloth("dark", ClothRole::Patch, greyAt(2)),      cloth("deep", ClothRole::Patch, greyAt(3)),
        cloth("mid", ClothRole::Patch, greyAt(6))};
    project.patches = {patch("hull", "dark"), patch("keel", "deep"), patch("sail", "mid")};
    return project;
}

struct Bench {
    explicit Bench(const Project &project = boat()) : open(project, Station::Shop) { shade.setActive(true); }
    QString cloth(int row, const char *key) const
    {
        return shade.cloths().at(row).toMap().value(QLatin1String(key)).toString();
    }

    desk::Open open;
    ShadeModel shade{open.workspace, open.session};
    NoteBook book{*open.store};
    PhotoKeeper keeper{book};
    FakeSource camera;
    PicturePicker picker{open.dir.path()};
    ClothColour colour{open.workspace, open.session, keeper, camera, picker};

    /// A picture of two cloths side by side.
    QString photograph(const QColor &left, const QColor &right, const QColorSpace &space,
                       const char *name = "cloths.png")
    {
        QImage image(400, 200, QImage::Format_ARGB32);
        image.fill(left);
        QPainter(&image).fillRect(200, 0, 200, 200, right);
        image.setColorSpace(space);
        const QString path = open.dir.filePath(QLatin1String(name));
        return image.save(path) ? path : QString();
    }
    bool look(const QString &path)
    {
        camera.be(FakeSource::Manner::Serves, path);
        camera.plug(true);
        camera.capture();
        return keeper.settle(5000);
    }
};

} // namespace shadebench
