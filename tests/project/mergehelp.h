// SPDX-License-Identifier: MIT
#pragma once

#include "project/codec.h"
#include "project/merge.h"

#include "testing.h"
#include <QFile>

/// Projects of two tablets, for the tests of putting them together.
namespace mergehelp {

using namespace matside;

inline Project example()
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    if (!file.open(QIODevice::ReadOnly))
        qFatal("no example");
    return readProject(file.readAll().toStdString()).value().project;
}

inline MadeEvent noted(const std::string &event, const std::string &id = {})
{
    MadeEvent made;
    made.event = event;
    made.id = id;
    return made;
}

inline MadeBlock stitched(const std::string &block, BlockState state = BlockState::Stitched)
{
    MadeBlock made;
    made.block = block;
    made.strip = 1;
    made.place = 1;
    made.state = state;
    return made;
}

inline Merged merged(const std::optional<Project> &base, const Project &mine, const Project &theirs,
                     const Answers &answers = {})
{
    const auto result = mergeProjects(base ? std::optional(writeProject(*base)) : std::nullopt,
                                      writeProject(mine), writeProject(theirs), answers);
    if (!result)
        qFatal("refused: %s", result.error().code.c_str());
    return result.value();
}

inline Project projectOf(const Merged &merged)
{
    const auto read = readProject(merged.document);
    if (!read || !read.value().problems.empty())
        qFatal("the merged document cannot be read");
    return read.value().project;
}

/// The same questions answered alike, seen from the other tablet.
inline Answers turnedRound(const Answers &answers)
{
    Answers turned;
    for (const auto &[at, says] : answers)
        turned[at] = says == Says::Mine ? Says::Theirs : says == Says::Theirs ? Says::Mine : Says::Together;
    return turned;
}

} // namespace mergehelp
