// SPDX-License-Identifier: MIT
#pragma once

#include "project/json.h"

#include <string>
#include <string_view>

namespace matside {

/// How the values at a place of the project file are put together.
enum class MergeWay {
    Whole,    ///< one tablet's or the other's
    Fields,   ///< an object, key by key
    Items,    ///< a list of things with names of their own
    Log,      ///< a list to which things are only added
    Names,    ///< a list of ids: all of both
    Progress, ///< a block's state: the further one
    Count,    ///< pieces counted off
};

/// `pattern` is a pointer with "*" for the step into a list: "/cloths/*/price".
[[nodiscard]] MergeWay mergeWayAt(std::string_view pattern);
/// The name of a thing in the list at such a place.
[[nodiscard]] std::string mergeKeyOf(std::string_view listPattern, const Json &item);
/// Something cut or stitched may hang on the decision there.
[[nodiscard]] bool piecesHangOn(std::string_view pattern);
/// How far a block's state has come; less than 0: spoiled, lost or unknown.
[[nodiscard]] int furtherOf(const Json &state);

} // namespace matside
