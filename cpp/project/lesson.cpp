// SPDX-License-Identifier: MIT
#include "project/lesson.h"

#include "project/readmade.h"

namespace matside {

void readLesson(Fields &fields, Project &project)
{
    fields.count("kits", project.kits, 1, 10'000);
    fields.flag("kitsShareStrips", project.kitsShareStrips);
    const Json *object = fields.object("class");
    if (!object)
        return;
    Fields inner(*object, fields.at("class"), fields.system(), fields.problems());
    Lesson lesson;
    inner.count("students", lesson.students, 1, mostStudents);
    if (inner.has("spare")) {
        std::int64_t spare = lesson.spareKits();
        inner.count("spare", spare, 0, mostSpareKits);
        lesson.spare = spare;
    }
    inner.count("machines", lesson.machines, 1, mostMachines);
    inner.flag("underEighteen", lesson.young);
    lesson.rest = inner.rest();
    project.kits = lesson.kits();
    project.lesson = std::move(lesson);
}

Json lessonJson(const Lesson &lesson)
{
    Json object = {{"students", lesson.students}};
    if (lesson.spare)
        object["spare"] = *lesson.spare;
    object["machines"] = lesson.machines;
    if (lesson.young)
        object["underEighteen"] = true;
    addRest(object, lesson.rest);
    return object;
}

} // namespace matside
