// SPDX-License-Identifier: MIT
//
// What random bytes must not be able to do. One source, three programs: FUZZ_LENGTH, FUZZ_CODEC or FUZZ_PLAN
// says which. An assertion that fails stops the program, and libFuzzer keeps the bytes that did it.
#include "bench/step.h"
#include "length/read.h"
#include "length/show.h"
#include "plan/onstrip.h"
#include "plan/plan.h"
#include "plan/problems.h"
#include "project/codec.h"

#include <cstdio>
#include <cstdlib>
#include <optional>
#include <set>
#include <string>
#include <string_view>

using namespace matside;

namespace {

void must(bool holds, const char *what)
{
    if (holds)
        return;
    std::fprintf(stderr, "broken: %s\n", what);
    std::abort();
}

/// What is read is a length in range, and written again reads to the same tick; a fault points into the text.
[[maybe_unused]] void tryLength(std::string_view text)
{
    for (const System system : {System::Inch, System::Metric}) {
        const auto read = readLength(text, system);
        if (!read.ok()) {
            must(read.error().at <= text.size(), "a fault points past the text");
            continue;
        }
        const Length length = read.value();
        must(length.valid() && length.magnitude() <= longest(), "read a length out of range");
        const auto again = readLength(writeLength(length, system), system);
        must(again.ok() && again.value() == length, "written, it does not read back");
        const Marks marks{system, system == System::Inch ? Length::inches(0, 1, 16) : Length::mm(1)};
        must(!matside::text(show(length, marks)).empty(), "shown as nothing");
    }
    const auto share = readShare(text);
    if (share.ok())
        must(readShare(writeShare(share.value())).value() == share.value(), "a share does not read back");
}

/// Whatever was understood of a file is written so that it reads back to the same, byte for byte.
[[maybe_unused]] std::optional<Project> tryCodec(std::string_view bytes)
{
    const auto read = readProject(bytes);
    if (!read.ok()) {
        must(!read.error().problem.code.empty(), "unreadable, and no code says why");
        return std::nullopt;
    }
    const std::string written = writeProject(read.value().project);
    const auto again = readProject(written);
    must(again.ok(), "what was written is not read");
    must(writeProject(again.value().project) == written, "written twice, it is not the same");
    for (const Problem &problem : read.value().problems)
        must(!problem.code.empty() && (problem.at.empty() || problem.at[0] == '/'),
             "a problem without place");
    if (!read.value().problems.empty())
        return std::nullopt;
    return read.value().project;
}

/// A project that was read gives a plan, and steps where nothing forbids it.
[[maybe_unused]] void tryPlan(std::string_view bytes)
{
    const std::optional<Project> project = tryCodec(bytes);
    if (!project)
        return;
    const Plan made = plan(*project);
    must(made.sashing.shorts == project->blocks.rows * (project->blocks.columns - 1), "shorts miscounted");
    for (const std::vector<Problem> *found : {&made.problems, &made.cautions})
        for (const Problem &problem : *found)
            for (const Offer &offer : problem.offers) {
                Project tried = *project;
                must(applyTo(tried, offer), "an offer that cannot be taken");
            }
    if (!made.problems.empty())
        return;
    must(made.strip.perStrip > 0 && made.strip.remainder >= Length(), "planned, but no block fits");
    for (std::size_t place = 1; place < made.strip.starts.size(); ++place)
        must(made.strip.starts[place] > made.strip.starts[place - 1], "places out of order");
    if (project->blocks.columns * project->blocks.rows * project->kits > 400)
        return; // the steps of a great many kits are slow, and no other
    std::set<std::string> ids;
    for (const Step &step : steps(*project, made))
        must(ids.insert(step.id).second, "two steps of one name");
    for (const StripWork &work : stripsInWork(*project, made))
        must(work.capacity >= 0, "a strip with less than no room");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const unsigned char *data, std::size_t size)
{
    const std::string_view bytes(reinterpret_cast<const char *>(data), size);
#if defined(FUZZ_LENGTH)
    tryLength(bytes);
#elif defined(FUZZ_CODEC)
    tryCodec(bytes);
#else
    tryPlan(bytes);
#endif
    return 0;
}
