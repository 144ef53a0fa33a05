// SPDX-License-Identifier: MIT
#include "state.h"

#include <cstdlib>
#include <cstring>
#include <vector>

#include <fcntl.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace disk {

namespace {

std::string fromEnvironment(const char *name)
{
    const char *value = std::getenv(name);
    return value ? value : "";
}

/// Straight to the system: what the recorder does itself is not recorded.
void put(int fd, const char *bytes, std::size_t size)
{
    while (size > 0) {
        const long done = ::syscall(SYS_write, fd, bytes, size);
        if (done <= 0)
            std::abort(); // a record with a hole in it proves nothing
        bytes += done;
        size -= static_cast<std::size_t>(done);
    }
}

} // namespace

Recorder &Recorder::instance()
{
    static auto *only = new Recorder; // outlives everything that is closed at the end
    return *only;
}

Recorder::Recorder() : m_root(fromEnvironment(rootVariable)), m_saidPath(fromEnvironment(saidVariable))
{
    if (const std::string room = fromEnvironment(roomVariable); !room.empty())
        m_room = std::atoll(room.c_str());
    const std::string path = fromEnvironment(logVariable);
    if (path.empty())
        return;
    const long opened =
        ::syscall(SYS_openat, AT_FDCWD, path.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0644);
    // A number far from those the program gets.
    constexpr long high = 1000;
    m_log = static_cast<int>(::syscall(SYS_fcntl, opened, F_DUPFD_CLOEXEC, high));
    ::syscall(SYS_close, opened);
    if (m_log < 0)
        std::abort();
    log(Kind::Begun, -1, ::getpid());
}

void Recorder::watch(const std::string &root)
{
    m_root = root;
}

bool Recorder::inside(std::string_view path) const
{
    return !m_root.empty() && path.starts_with(m_root) &&
           (path.size() == m_root.size() || path[m_root.size()] == '/');
}

bool Recorder::tracked(int fd) const
{
    return fd >= 0 && fd < most && m_tracked[fd];
}

void Recorder::track(int fd)
{
    if (fd >= most)
        std::abort();
    m_tracked[fd] = true;
}

void Recorder::forget(int fd)
{
    if (fd >= 0 && fd < most)
        m_tracked[fd] = false;
    if (fd == m_said)
        m_said = -1;
}

void Recorder::log(Kind kind, int fd, std::int64_t at, std::string_view first, std::string_view second)
{
    if (m_log < 0)
        return;
    Head head{};
    head.kind = kind;
    head.fd = fd;
    head.at = at;
    head.first = static_cast<std::uint32_t>(first.size());
    head.second = static_cast<std::uint32_t>(second.size());
    std::string whole(sizeof head, '\0');
    std::memcpy(whole.data(), &head, sizeof head);
    whole.append(first).append(second);
    put(m_log, whole.data(), whole.size());
}

std::size_t Recorder::fits(std::size_t bytes) const
{
    return m_room < 0 || static_cast<unsigned long long>(m_room) >= bytes ? bytes
                                                                          : static_cast<std::size_t>(m_room);
}

void Recorder::used(ssize_t bytes)
{
    if (m_room >= 0 && bytes > 0)
        m_room -= bytes;
}

std::string wholePath(int folder, const char *path)
{
    std::string whole(path);
    if (!whole.starts_with('/')) {
        const std::string link =
            folder == AT_FDCWD ? "/proc/self/cwd" : "/proc/self/fd/" + std::to_string(folder);
        char base[4096];
        const ssize_t size = ::readlink(link.c_str(), base, sizeof base);
        whole = std::string(base, size > 0 ? static_cast<std::size_t>(size) : 0) + '/' + whole;
    }
    std::vector<std::string> parts;
    for (std::size_t at = 0; at < whole.size();) {
        const std::size_t end = std::min(whole.find('/', at), whole.size());
        const std::string part = whole.substr(at, end - at);
        if (part == ".." && !parts.empty())
            parts.pop_back();
        else if (!part.empty() && part != "." && part != "..")
            parts.push_back(part);
        at = end + 1;
    }
    std::string clean;
    for (const std::string &part : parts)
        clean += '/' + part;
    return clean.empty() ? "/" : clean;
}

} // namespace disk

extern "C" {

void disk_watch(const char *root)
{
    const std::lock_guard held(disk::Recorder::instance().lock);
    disk::Recorder::instance().watch(root);
}

void disk_room(long long bytes)
{
    const std::lock_guard held(disk::Recorder::instance().lock);
    disk::Recorder::instance().setRoom(bytes);
}

void disk_flush_fails(bool fails)
{
    const std::lock_guard held(disk::Recorder::instance().lock);
    disk::Recorder::instance().setFlushFails(fails);
}
}
