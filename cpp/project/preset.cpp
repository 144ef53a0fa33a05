// SPDX-License-Identifier: MIT
#include "project/preset.h"

#include "project/codec.h"
#include "project/json.h"

namespace matside {

namespace {

/// What stands at a pointer of the written project; null where nothing does.
Json standingAt(const Project &project, const std::string &pointer)
{
    const auto read = readJson(writeProject(project));
    if (!read)
        return {};
    const Json::json_pointer at(pointer);
    return read.value().contains(at) ? read.value().at(at) : Json();
}

} // namespace

Whose whoseIs(const Project &project, const std::string &pointer)
{
    const Json own = standingAt(project, pointer);
    if (own.is_null())
        return Whose::Reckoned;
    return own == standingAt(freshProject(project.system), pointer) ? Whose::Preset : Whose::Hers;
}

} // namespace matside
