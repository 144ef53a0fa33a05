// SPDX-License-Identifier: MIT
//
// What a program does to names under the watched folder: opening, renaming, removing, linking, folders.
#include "state.h"

#include <cerrno>
#include <cstdarg>
#include <cstdio>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

using disk::behind;
using disk::Kind;
using disk::Recorder;
using disk::wholePath;

namespace {

bool exists(const std::string &path)
{
    struct stat about {};
    return ::lstat(path.c_str(), &about) == 0;
}

bool isFolder(int fd)
{
    struct stat about {};
    return ::fstat(fd, &about) == 0 && S_ISDIR(about.st_mode);
}

mode_t modeIn(int flags, va_list arguments)
{
    return (flags & (O_CREAT | O_TMPFILE)) != 0 ? va_arg(arguments, mode_t) : mode_t(0);
}

/// Opens through `openat` behind this library, whichever name the program called.
int opened(int folder, const char *path, int flags, mode_t mode)
{
    using OpenAt = int(int, const char *, int, ...);
    static OpenAt *const real = behind<OpenAt>("openat64");
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    const std::string whole = wholePath(folder, path);
    if (recorder.isSaid(whole)) {
        const int fd = real(folder, path, flags, mode);
        recorder.trackSaid(fd);
        return fd;
    }
    if (!recorder.inside(whole)) {
        const int fd = real(folder, path, flags, mode);
        recorder.forget(fd);
        return fd;
    }
    const bool nameless = (flags & O_TMPFILE) == O_TMPFILE;
    const bool there = exists(whole);
    if (recorder.full() && (nameless || (!there && (flags & O_CREAT) != 0))) {
        errno = ENOSPC;
        return -1;
    }
    const int fd = real(folder, path, flags, mode);
    if (fd < 0)
        return fd;
    std::int64_t how = 0;
    if (isFolder(fd))
        how |= disk::folder;
    if (nameless)
        how |= disk::nameless;
    else if (!there)
        how |= disk::made;
    else if ((flags & O_TRUNC) != 0 && (flags & O_ACCMODE) != O_RDONLY)
        how |= disk::emptied;
    recorder.track(fd);
    recorder.log(Kind::Open, fd, how, whole);
    return fd;
}

int renamed(int fromFolder, const char *from, int toFolder, const char *to, unsigned flags)
{
    using RenameAt = int(int, const char *, int, const char *, unsigned);
    static RenameAt *const real = behind<RenameAt>("renameat2");
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    const std::string wholeFrom = wholePath(fromFolder, from), wholeTo = wholePath(toFolder, to);
    const int done = real(fromFolder, from, toFolder, to, flags);
    if (done == 0 && recorder.inside(wholeFrom) && recorder.inside(wholeTo))
        recorder.log(Kind::Rename, -1, 0, wholeFrom, wholeTo);
    else if (done == 0 && (recorder.inside(wholeFrom) || recorder.inside(wholeTo)))
        std::abort(); // a way in or out that the record does not know
    return done;
}

int removed(int folder, const char *path, int flags)
{
    using UnlinkAt = int(int, const char *, int);
    static UnlinkAt *const real = behind<UnlinkAt>("unlinkat");
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    const std::string whole = wholePath(folder, path);
    const int done = real(folder, path, flags);
    if (done == 0 && recorder.inside(whole))
        recorder.log((flags & AT_REMOVEDIR) != 0 ? Kind::NoFolder : Kind::Remove, -1, 0, whole);
    return done;
}

int linked(int fromFolder, const char *from, int toFolder, const char *to, int flags)
{
    using LinkAt = int(int, const char *, int, const char *, int);
    static LinkAt *const real = behind<LinkAt>("linkat");
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    const std::string wholeFrom = wholePath(fromFolder, from), wholeTo = wholePath(toFolder, to);
    if (recorder.full() && recorder.inside(wholeTo)) {
        errno = ENOSPC;
        return -1;
    }
    const int done = real(fromFolder, from, toFolder, to, flags);
    if (done != 0 || !recorder.inside(wholeTo))
        return done;
    int fd = -1;
    const bool byNumber = std::sscanf(wholeFrom.c_str(), "/proc/self/fd/%d", &fd) == 1;
    recorder.log(Kind::Link, byNumber ? fd : -1, 0, wholeFrom, wholeTo);
    return done;
}

int folderMade(int folder, const char *path, mode_t mode)
{
    using MakeAt = int(int, const char *, mode_t);
    static MakeAt *const real = behind<MakeAt>("mkdirat");
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    const std::string whole = wholePath(folder, path);
    if (recorder.full() && recorder.inside(whole)) {
        errno = ENOSPC;
        return -1;
    }
    const int done = real(folder, path, mode);
    if (done == 0 && recorder.inside(whole))
        recorder.log(Kind::Folder, -1, 0, whole);
    return done;
}

} // namespace

extern "C" {

#define MATSIDE_OPEN(name)                                                                                   \
    int name(const char *path, int flags, ...)                                                               \
    {                                                                                                        \
        va_list arguments;                                                                                   \
        va_start(arguments, flags);                                                                          \
        const mode_t mode = modeIn(flags, arguments);                                                        \
        va_end(arguments);                                                                                   \
        return opened(AT_FDCWD, path, flags, mode);                                                          \
    }
#define MATSIDE_OPENAT(name)                                                                                 \
    int name(int folder, const char *path, int flags, ...)                                                   \
    {                                                                                                        \
        va_list arguments;                                                                                   \
        va_start(arguments, flags);                                                                          \
        const mode_t mode = modeIn(flags, arguments);                                                        \
        va_end(arguments);                                                                                   \
        return opened(folder, path, flags, mode);                                                            \
    }
MATSIDE_OPEN(open)
MATSIDE_OPEN(open64)
MATSIDE_OPENAT(openat)
MATSIDE_OPENAT(openat64)

// What hardened programs call instead; the headers do not declare them.
int __open_2(const char *path, int flags);
int __open64_2(const char *path, int flags);
int __openat_2(int folder, const char *path, int flags);
int __openat64_2(int folder, const char *path, int flags);
int __open_2(const char *path, int flags)
{
    return opened(AT_FDCWD, path, flags, 0);
}
int __open64_2(const char *path, int flags)
{
    return opened(AT_FDCWD, path, flags, 0);
}
int __openat_2(int folder, const char *path, int flags)
{
    return opened(folder, path, flags, 0);
}
int __openat64_2(int folder, const char *path, int flags)
{
    return opened(folder, path, flags, 0);
}
int creat(const char *path, mode_t mode)
{
    return opened(AT_FDCWD, path, O_WRONLY | O_CREAT | O_TRUNC, mode);
}
int creat64(const char *path, mode_t mode)
{
    return opened(AT_FDCWD, path, O_WRONLY | O_CREAT | O_TRUNC, mode);
}

int rename(const char *from, const char *to) noexcept
{
    return renamed(AT_FDCWD, from, AT_FDCWD, to, 0);
}
int renameat(int fromFolder, const char *from, int toFolder, const char *to) noexcept
{
    return renamed(fromFolder, from, toFolder, to, 0);
}
int renameat2(int fromFolder, const char *from, int toFolder, const char *to, unsigned flags) noexcept
{
    return renamed(fromFolder, from, toFolder, to, flags);
}

int unlink(const char *path) noexcept
{
    return removed(AT_FDCWD, path, 0);
}
int unlinkat(int folder, const char *path, int flags) noexcept
{
    return removed(folder, path, flags);
}
int rmdir(const char *path) noexcept
{
    return removed(AT_FDCWD, path, AT_REMOVEDIR);
}
int remove(const char *path) noexcept
{
    const int done = removed(AT_FDCWD, path, 0);
    return done != 0 && errno == EISDIR ? removed(AT_FDCWD, path, AT_REMOVEDIR) : done;
}

int link(const char *from, const char *to) noexcept
{
    return linked(AT_FDCWD, from, AT_FDCWD, to, 0);
}
int linkat(int fromFolder, const char *from, int toFolder, const char *to, int flags) noexcept
{
    return linked(fromFolder, from, toFolder, to, flags);
}

int mkdir(const char *path, mode_t mode) noexcept
{
    return folderMade(AT_FDCWD, path, mode);
}
int mkdirat(int folder, const char *path, mode_t mode) noexcept
{
    return folderMade(folder, path, mode);
}
}
