// SPDX-License-Identifier: MIT
//
// What a program does to open files of the watched folder: writing, cutting, copying, flushing, closing.
#include "state.h"

#include <algorithm>
#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <vector>

#include <fcntl.h>
#include <sys/sendfile.h>
#include <sys/syscall.h>
#include <sys/uio.h>
#include <unistd.h>

using disk::behind;
using disk::Kind;
using disk::Recorder;
using disk::wholePath;

namespace {

std::string_view text(const void *bytes, ssize_t size)
{
    return {static_cast<const char *>(bytes), static_cast<std::size_t>(size)};
}

/// Where the next byte of a plain write goes is known after it.
std::int64_t startOf(int fd, ssize_t written)
{
    return ::lseek(fd, 0, SEEK_CUR) - written;
}

ssize_t noRoom()
{
    errno = ENOSPC;
    return -1;
}

/// `write` does it with as many bytes as fit; a negative place is the file's own.
template <class Write> ssize_t written(int fd, const void *bytes, std::size_t size, off_t at, Write write)
{
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    if (recorder.tells(fd)) {
        recorder.log(Kind::Said, -1, 0, text(bytes, static_cast<ssize_t>(size)));
        return static_cast<ssize_t>(size);
    }
    if (!recorder.tracked(fd))
        return write(size);
    const std::size_t fits = recorder.fits(size);
    if (fits == 0 && size > 0)
        return noRoom();
    const ssize_t done = write(fits);
    if (done > 0) {
        recorder.used(done);
        recorder.log(Kind::Write, fd, at < 0 ? startOf(fd, done) : at, text(bytes, done));
    }
    return done;
}

ssize_t joined(int fd, const iovec *parts, int count, off_t at)
{
    using WriteV = ssize_t(int, const iovec *, int);
    using PWriteV = ssize_t(int, const iovec *, int, off_t);
    static WriteV *const real = behind<WriteV>("writev");
    static PWriteV *const realAt = behind<PWriteV>("pwritev");
    std::string whole;
    for (int part = 0; part < count; ++part)
        whole.append(static_cast<const char *>(parts[part].iov_base), parts[part].iov_len);
    return written(fd, whole.data(), whole.size(), at, [&](std::size_t fits) {
        if (fits == whole.size())
            return at < 0 ? real(fd, parts, count) : realAt(fd, parts, count, at);
        const iovec one{whole.data(), fits};
        return at < 0 ? real(fd, &one, 1) : realAt(fd, &one, 1, at);
    });
}

int resized(int fd, off_t size, int (*real)(int, off_t))
{
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    const int done = real(fd, size);
    if (done == 0 && recorder.tracked(fd))
        recorder.log(Kind::Size, fd, size);
    return done;
}

int resizedByName(const char *path, off_t size)
{
    using Truncate = int(const char *, off_t);
    static Truncate *const real = behind<Truncate>("truncate");
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    const int done = real(path, size);
    if (const std::string whole = wholePath(AT_FDCWD, path); done == 0 && recorder.inside(whole))
        recorder.log(Kind::Size, -1, size, whole);
    return done;
}

/// Room that is set aside makes a file longer and changes no byte of it.
int roomTaken(int fd, off_t at, off_t size)
{
    using Take = int(int, off_t, off_t);
    static Take *const real = behind<Take>("posix_fallocate");
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    if (recorder.tracked(fd) &&
        recorder.fits(static_cast<std::size_t>(size)) < static_cast<std::size_t>(size))
        return ENOSPC;
    const off_t was = ::lseek(fd, 0, SEEK_END);
    const int done = real(fd, at, size);
    if (done == 0 && recorder.tracked(fd))
        recorder.log(Kind::Size, fd, std::max(was, at + size));
    return done;
}

/// Copied inside the system: read back and written down.
ssize_t copied(int to, int from, off_t *at, std::size_t size)
{
    using SendFile = ssize_t(int, int, off_t *, std::size_t);
    static SendFile *const real = behind<SendFile>("sendfile64");
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    if (!recorder.tracked(to))
        return real(to, from, at, size);
    const std::size_t fits = recorder.fits(size);
    if (fits == 0 && size > 0)
        return noRoom();
    const off_t start = at ? *at : ::lseek(from, 0, SEEK_CUR);
    const ssize_t done = real(to, from, at, fits);
    if (done <= 0)
        return done;
    std::vector<char> bytes(static_cast<std::size_t>(done));
    if (::pread(from, bytes.data(), bytes.size(), start) != done)
        std::abort();
    recorder.used(done);
    recorder.log(Kind::Write, to, startOf(to, done), text(bytes.data(), done));
    return done;
}

int flushedThrough(int fd, const char *name)
{
    using Flush = int(int);
    Flush *const real = behind<Flush>(name);
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    if (!recorder.tracked(fd))
        return real(fd);
    if (recorder.flushFails()) {
        errno = EIO;
        return -1;
    }
    // The record stands for the disk: nothing needs to go there.
    recorder.log(Kind::Flush, fd, 0);
    return 0;
}

int sameFile(int was, int now)
{
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    if (now < 0)
        return now;
    recorder.forget(now);
    if (recorder.tracked(was)) {
        recorder.track(now);
        recorder.log(Kind::Same, was, now);
    }
    return now;
}

} // namespace

extern "C" {

ssize_t write(int fd, const void *bytes, std::size_t size)
{
    using Write = ssize_t(int, const void *, std::size_t);
    static Write *const real = behind<Write>("write");
    return written(fd, bytes, size, -1, [&](std::size_t fits) { return real(fd, bytes, fits); });
}
ssize_t pwrite64(int fd, const void *bytes, std::size_t size, off64_t at)
{
    using Write = ssize_t(int, const void *, std::size_t, off64_t);
    static Write *const real = behind<Write>("pwrite64");
    return written(fd, bytes, size, at, [&](std::size_t fits) { return real(fd, bytes, fits, at); });
}
ssize_t pwrite(int fd, const void *bytes, std::size_t size, off_t at)
{
    return pwrite64(fd, bytes, size, at);
}
ssize_t writev(int fd, const iovec *parts, int count)
{
    return joined(fd, parts, count, -1);
}
ssize_t pwritev(int fd, const iovec *parts, int count, off_t at)
{
    return joined(fd, parts, count, at);
}
ssize_t pwritev64(int fd, const iovec *parts, int count, off64_t at)
{
    return joined(fd, parts, count, at);
}

int ftruncate64(int fd, off64_t size) noexcept
{
    static auto *const real = behind<int(int, off_t)>("ftruncate64");
    return resized(fd, size, real);
}
int ftruncate(int fd, off_t size) noexcept
{
    return ftruncate64(fd, size);
}
int truncate(const char *path, off_t size) noexcept
{
    return resizedByName(path, size);
}
int truncate64(const char *path, off64_t size) noexcept
{
    return resizedByName(path, size);
}
int posix_fallocate(int fd, off_t at, off_t size)
{
    return roomTaken(fd, at, size);
}
int posix_fallocate64(int fd, off64_t at, off64_t size)
{
    return roomTaken(fd, at, size);
}

ssize_t sendfile(int to, int from, off_t *at, std::size_t size) noexcept
{
    return copied(to, from, at, size);
}
ssize_t sendfile64(int to, int from, off64_t *at, std::size_t size) noexcept
{
    return copied(to, from, at, size);
}

int fsync(int fd)
{
    return flushedThrough(fd, "fsync");
}
int fdatasync(int fd)
{
    return flushedThrough(fd, "fdatasync");
}

/// What the C library wrote by itself is read back when it closes the file.
int fclose(std::FILE *file)
{
    static auto *const real = behind<int(std::FILE *)>("fclose");
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    const int fd = ::fileno(file);
    if (!recorder.tracked(fd))
        return real(file);
    if ((::syscall(SYS_fcntl, fd, F_GETFL) & O_ACCMODE) == O_RDONLY) {
        recorder.log(Kind::Close, fd, 0);
        recorder.forget(fd);
        return real(file);
    }
    std::fflush(file);
    std::vector<char> bytes(static_cast<std::size_t>(::lseek(fd, 0, SEEK_END)));
    const std::string path = disk::wholePath(AT_FDCWD, ("/proc/self/fd/" + std::to_string(fd)).c_str());
    const int again = static_cast<int>(::syscall(SYS_openat, AT_FDCWD, path.c_str(), O_RDONLY | O_CLOEXEC));
    if (again >= 0 && ::pread(again, bytes.data(), bytes.size(), 0) == static_cast<ssize_t>(bytes.size())) {
        recorder.log(Kind::Size, fd, 0);
        recorder.log(Kind::Write, fd, 0, text(bytes.data(), static_cast<ssize_t>(bytes.size())));
    }
    if (again >= 0)
        ::syscall(SYS_close, again);
    recorder.log(Kind::Close, fd, 0);
    recorder.forget(fd);
    return real(file);
}
int close(int fd)
{
    static auto *const real = behind<int(int)>("close");
    Recorder &recorder = Recorder::instance();
    const std::lock_guard held(recorder.lock);
    if (recorder.tracked(fd))
        recorder.log(Kind::Close, fd, 0);
    recorder.forget(fd);
    return real(fd);
}

int dup(int fd) noexcept
{
    static auto *const real = behind<int(int)>("dup");
    return sameFile(fd, real(fd));
}
int dup2(int fd, int now) noexcept
{
    static auto *const real = behind<int(int, int)>("dup2");
    return sameFile(fd, real(fd, now));
}
int dup3(int fd, int now, int flags) noexcept
{
    static auto *const real = behind<int(int, int, int)>("dup3");
    return sameFile(fd, real(fd, now, flags));
}
int fcntl64(int fd, int command, ...)
{
    using Control = int(int, int, ...);
    static Control *const real = behind<Control>("fcntl64");
    va_list arguments;
    va_start(arguments, command);
    void *const argument = va_arg(arguments, void *);
    va_end(arguments);
    const int done = real(fd, command, argument);
    return command == F_DUPFD || command == F_DUPFD_CLOEXEC ? sameFile(fd, done) : done;
}
int fcntl(int fd, int command, ...)
{
    va_list arguments;
    va_start(arguments, command);
    void *const argument = va_arg(arguments, void *);
    va_end(arguments);
    return fcntl64(fd, command, argument);
}
}
