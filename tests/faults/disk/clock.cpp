// SPDX-License-Identifier: MIT
//
// The time of day as the watched program is told it.
#include "state.h"

#include <atomic>

#include <ctime>
#include <sys/time.h>

using disk::behind;

namespace {
std::atomic<long> shift = 0;
} // namespace

extern "C" {

void disk_clock(long seconds)
{
    shift = seconds;
}

int clock_gettime(clockid_t clock, timespec *now) noexcept
{
    static auto *const real = behind<int(clockid_t, timespec *)>("clock_gettime");
    const int done = real(clock, now);
    if (done == 0 && (clock == CLOCK_REALTIME || clock == CLOCK_REALTIME_COARSE))
        now->tv_sec += shift;
    return done;
}
int gettimeofday(timeval *now, void *zone) noexcept
{
    static auto *const real = behind<int(timeval *, void *)>("gettimeofday");
    const int done = real(now, zone);
    if (done == 0)
        now->tv_sec += shift;
    return done;
}
time_t time(time_t *now) noexcept
{
    timespec whole{};
    clock_gettime(CLOCK_REALTIME, &whole);
    if (now)
        *now = whole.tv_sec;
    return whole.tv_sec;
}
}
