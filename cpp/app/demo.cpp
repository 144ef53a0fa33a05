// SPDX-License-Identifier: MIT
#include "app/demo.h"

#include "app/language.h"
#include "project/codec.h"

#include <QCoreApplication>
#include <QFile>

#include <nlohmann/json.hpp>

#include <array>
#include <string>

namespace matside {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::array named{
    //: the demo's name: a runner is a long narrow table topper
    QT_TRANSLATE_NOOP("Demo", "Reading-room runner"),
    //: a hoop's own name
    QT_TRANSLATE_NOOP("Demo", "the square magnetic one"),
    //: a cloth's own name, like those that follow
    QT_TRANSLATE_NOOP("Demo", "oat linen"),
    QT_TRANSLATE_NOOP("Demo", "small blue print"),
    //: batting that stays flat
    QT_TRANSLATE_NOOP("Demo", "low-loft cotton"),
    QT_TRANSLATE_NOOP("Demo", "dark teal"),
    QT_TRANSLATE_NOOP("Demo", "rust"),
    QT_TRANSLATE_NOOP("Demo", "cream"),
    //: a patch: the hull of a boat
    QT_TRANSLATE_NOOP("Demo", "hull"),
    QT_TRANSLATE_NOOP("Demo", "sail"),
    //: a ruler's own name: the long one
    QT_TRANSLATE_NOOP("Demo", "long"),
    //: a ruler's own name: the square one
    QT_TRANSLATE_NOOP("Demo", "square"),
};

/// A name in the reader's language.
void translateName(Json &holder)
{
    const auto name = holder.find("name");
    if (name == holder.end() || !name->is_string())
        return;
    for (const char *known : named)
        if (name->get<std::string>() == known) {
            *name = QCoreApplication::translate("Demo", known).toStdString();
            return;
        }
}

} // namespace

QString demoProject()
{
    QFile file(QStringLiteral(":/demo/demo-project.json"));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    Json demo = Json::parse(file.readAll().toStdString(), nullptr, false);
    if (!demo.is_object())
        return {};
    translateName(demo);
    if (const auto hoop = demo.find("hoop"); hoop != demo.end() && hoop->is_object())
        translateName(*hoop);
    for (const char *list : {"cloths", "patches", "rulers"})
        if (const auto all = demo.find(list); all != demo.end() && all->is_array())
            for (Json &one : *all)
                translateName(one);
    return QString::fromStdString(demo.dump(2));
}

QString demoByCustom()
{
    QString demo = demoProject();
    const auto read = readProject(demo.toStdString());
    if (!metricIsTheCustom() || !read.ok())
        return demo;
    Project project = inWholeMillimetres(read.value().project);
    // Hers are sold by the centimetre.
    const Length step = Length::mm(10);
    for (Ruler &ruler : project.rulers) {
        ruler.length = ruler.length.downTo(step);
        ruler.width = ruler.width.downTo(step);
    }
    return QString::fromStdString(writeProject(project));
}

} // namespace matside
