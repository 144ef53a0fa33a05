// SPDX-License-Identifier: MIT
#pragma once

#include "length/result.h"
#include "project/project.h"

#include <QString>

#include <optional>
#include <string>

namespace matside {

/// A piece lists no more.
constexpr std::size_t mostCloths = 200;

/// The cloth that would be listed for a use that has none, where `id` is what that use goes by; nothing for a
/// cloth that is listed, nor for any other id.
[[nodiscard]] std::optional<Cloth> unlisted(const Project &project, const std::string &id);

/// The project with one more cloth (the part that is lacking first) or one more ruler; `list` is "/cloths" or
/// "/rulers". At most 200 cloths and 50 rulers: the refusal in words.
[[nodiscard]] Result<Project, QString> withAnother(const Project &project, const std::string &list);

/// What a cloth is called until she names it: by the part it plays.
[[nodiscard]] std::string nameGiven(ClothRole role);

/// The project without the cloth or ruler at a pointer ("/cloths/2"). What is still used stays: the refusal
/// in words says by what.
[[nodiscard]] Result<Project, QString> withoutItem(const Project &project, const std::string &item);

} // namespace matside
