// SPDX-License-Identifier: MIT
#pragma once

#include "bench/mishap.h"
#include "bench/record.h"
#include "benchhelp.h"

#include <algorithm>

namespace benchhelp {

using namespace matside;

/// A project with its plan and steps, and what is done at them.
struct Bench {
    Project project;
    Plan plan;
    std::vector<Step> all;
    explicit Bench(Project p) : project(std::move(p)) { again(); }
    void again()
    {
        plan = matside::plan(project);
        all = steps(project, plan);
    }
    void take(Project p)
    {
        project = std::move(p);
        again();
    }
    const Step &step(std::string_view id) const
    {
        const auto found = std::find_if(all.begin(), all.end(), [&](const Step &s) { return s.id == id; });
        if (found == all.end())
            qFatal("no such step");
        return *found;
    }
    Answered answer(std::string_view id, Mishap mishap, std::optional<Length> measure = {},
                    std::int64_t strip = 0) const
    {
        return answerTo(project, plan, all, step(id), mishap, measure, strip);
    }
    void done(std::string_view id, int times)
    {
        for (int i = 0; i < times; ++i)
            take(withDone(project, plan, step(id)));
    }
};

inline bool says(const Answered &answer, std::string_view code)
{
    return std::any_of(answer.says.begin(), answer.says.end(),
                       [&](const Said &said) { return said.code == code; });
}

} // namespace benchhelp
