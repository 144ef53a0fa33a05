// SPDX-License-Identifier: MIT
#include "sheet/pieces.h"

#include "project/codec.h"

#include <QFile>

namespace matside {

namespace {

Project read(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const auto project = readProject(file.readAll().toStdString());
    return project ? project.value().project : Project();
}

Project rounded()
{
    Project project = example();
    project.edge.corner.kind = CornerKind::Rounded;
    return project;
}

Project cleanBacked()
{
    Project project = example();
    project.build = Build::CleanBack;
    return project;
}

Project harvested()
{
    Project project = example();
    project.strip.harvest = true;
    project.strip.tails = true;
    project.kits = 3;
    return project;
}

} // namespace

Project example()
{
    return read(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
}

Project longOne()
{
    Project project = example();
    project.table.reset();
    project.blocks.columns = 24;
    project.blocks.rows = 17;
    return project;
}

std::vector<std::pair<const char *, Project>> sheetPieces()
{
    return {{"example", example()},
            {"demo", read(QStringLiteral(ASSETS_DIR "/demo-project.json"))},
            {"metric", inWholeMillimetres(example())},
            {"long", longOne()},
            {"rounded", rounded()},
            {"clean back", cleanBacked()},
            {"harvested", harvested()}};
}

} // namespace matside
