// SPDX-License-Identifier: MIT
#pragma once

#include "project/fields.h"

namespace matside {

/// Reads how many kits there are, and the key "class" into `project.lesson`; the kits follow from it where it
/// is there.
void readLesson(Fields &fields, Project &project);
[[nodiscard]] Json lessonJson(const Lesson &lesson);

} // namespace matside
