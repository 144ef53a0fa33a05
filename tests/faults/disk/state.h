// SPDX-License-Identifier: MIT
#pragma once

#include "record.h"

#include <mutex>
#include <string>
#include <string_view>

#include <dlfcn.h>
#include <sys/types.h>

/// What the parts of the recorder share. Everything is done under one lock, so that the record has the order
/// in which things were done.
namespace disk {

class Recorder {
public:
    static Recorder &instance();

    std::mutex lock;

    void watch(const std::string &root);
    [[nodiscard]] bool inside(std::string_view path) const;
    [[nodiscard]] bool tracked(int fd) const;
    [[nodiscard]] bool tells(int fd) const { return fd >= 0 && fd == m_said; }
    [[nodiscard]] bool isSaid(const std::string &path) const
    {
        return !m_saidPath.empty() && path == m_saidPath;
    }
    void track(int fd);
    void trackSaid(int fd) { m_said = fd; }
    void forget(int fd);

    void log(Kind kind, int fd, std::int64_t at, std::string_view first = {}, std::string_view second = {});

    /// How many of so many bytes still go onto the disk.
    [[nodiscard]] std::size_t fits(std::size_t bytes) const;
    void used(ssize_t bytes);
    [[nodiscard]] bool full() const { return m_room == 0; }
    void setRoom(long long bytes) { m_room = bytes; }
    [[nodiscard]] bool flushFails() const { return m_flushFails; }
    void setFlushFails(bool fails) { m_flushFails = fails; }

private:
    Recorder();

    static constexpr int most = 4096;
    std::string m_root;
    std::string m_saidPath;
    int m_log = -1;
    int m_said = -1;
    long long m_room = -1;
    bool m_flushFails = false;
    bool m_tracked[most] = {};
};

/// The whole path, without "." and "..", of a path as a program gives it.
[[nodiscard]] std::string wholePath(int folder, const char *path);

/// The function of that name behind this one.
template <class Function> Function *behind(const char *name)
{
    return reinterpret_cast<Function *>(dlsym(RTLD_NEXT, name));
}

} // namespace disk
