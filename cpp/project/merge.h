// SPDX-License-Identifier: MIT
#pragma once

#include "length/result.h"
#include "project/problem.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace matside {

/// One thing the two tablets say, as JSON on one line; empty where one says nothing of it. `at` is a pointer
/// whose steps into a list are the things' own names: "/cloths/front/price", "/made/blocks/A1/outline".
struct MergeDifference {
    std::string at;
    std::string mine;
    std::string theirs;
};

/// What only she can say.
struct MergeQuestion {
    MergeDifference differs;
    /// Of pieces counted on both since they parted: those before and both tablets' own, as JSON; else empty.
    std::string together;
    /// Only one tablet changed it, but meanwhile the other made something that hangs on it.
    bool bears = false;
};

enum class Says { Mine, Theirs, Together };
/// What she said, by the question's `at`.
using Answers = std::map<std::string, Says, std::less<>>;

/// The work of two tablets as one project.
struct Merged {
    std::string document;                 ///< as writeProject() writes it; unanswered questions stay as mine
    std::vector<MergeQuestion> questions; ///< all of them, answered or not
    std::vector<MergeDifference> came;    ///< what was taken from the other tablet without asking
    std::int64_t blocksCame = 0;          ///< records of blocks that only the other tablet had
    std::int64_t eventsCame = 0;          ///< things noted that only the other tablet had
};

/// Puts two tablets' documents of one project together. `base` is what both had when they parted, if that is
/// known. The log of what happened loses nothing and doubles nothing: by the ids made on the tablets, by
/// content where older files have none. A decision that one tablet changed since is taken from it, unless
/// the other made something meanwhile that hangs on it; of what both changed, or what differs when no base is
/// known, she chooses. What stands in records of finished work goes to the further state; of counts she may
/// take the sum. Swapping the two gives the same document when every question is answered alike.
///
/// Nothing is read from a clock: those of two tablets need not agree.
///
/// Codes: merge-unreadable (one of them has something to be mended first), merge-system (one is in inches,
/// one in millimetres), merge-unsound (together they make no project that can be read).
[[nodiscard]] Result<Merged, Problem> mergeProjects(const std::optional<std::string> &base,
                                                    std::string_view mine, std::string_view theirs,
                                                    const Answers &answers = {});

} // namespace matside
