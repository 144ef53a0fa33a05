// SPDX-License-Identifier: MIT
#include "share/sharefault.h"

#include <array>

namespace matside {

const char *nameOf(ShareCode code)
{
    constexpr std::array names{
        "cannot-open",   "not-an-archive", "not-a-share", "newer",        "too-large",       "too-many-files",
        "too-tight",     "outside-path",   "link",        "locked",       "unknown-packing", "doubled-file",
        "stray-file",    "missing-file",   "wrong-hash",  "bad-manifest", "bad-notes",       "bad-project",
        "not-a-picture", "exists",         "no-picture",  "disk"};
    static_assert(names.size() == static_cast<std::size_t>(ShareCode::Disk) + 1);
    return names.at(static_cast<std::size_t>(code));
}

} // namespace matside
