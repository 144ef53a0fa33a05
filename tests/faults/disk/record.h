// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

/// What the recorder writes down of everything that is done under one folder, in the order it was done.
namespace disk {

/// Of each kind: what `fd`, `at`, `first` and `second` hold.
enum class Kind : std::uint8_t {
    Begun = 'B',    ///< another program begins: no file is open
    Open = 'O',     ///< fd; at: how(); first: path
    Close = 'X',    ///< fd
    Same = 'D',     ///< fd; at: the second number of the same open file
    Write = 'W',    ///< fd; at: byte; first: what was written
    Size = 'Z',     ///< fd, or first: path; at: the new size
    Rename = 'R',   ///< first: from; second: to
    Remove = 'U',   ///< first: path of a file
    Link = 'L',     ///< fd of a file without a name, or first: path; second: the new name
    Folder = 'M',   ///< first: path
    NoFolder = 'N', ///< first: path of a folder that is gone
    Flush = 'F',    ///< fd of a file or a folder
    Said = 'S',     ///< first: what the program told
};

/// How a file was opened.
enum Opened : std::int64_t { made = 1, emptied = 2, nameless = 4, folder = 8 };

/// Stands before each event; the two texts follow.
struct Head {
    Kind kind;
    std::int32_t fd;
    std::int64_t at;
    std::uint32_t first;
    std::uint32_t second;
};

/// The environment of a recorded program.
inline constexpr auto rootVariable = "DISK_ROOT"; ///< the folder, without links in its path
inline constexpr auto logVariable = "DISK_LOG";   ///< where the record goes, outside that folder
inline constexpr auto saidVariable = "DISK_SAID"; ///< a file; what is written to it is told, and goes nowhere
inline constexpr auto roomVariable = "DISK_ROOM"; ///< bytes until the disk is full

} // namespace disk

extern "C" {
/// Watches this folder in the program that is linked with the recorder.
void disk_watch(const char *root);
/// So many bytes are left; less than none: as many as there are.
void disk_room(long long bytes);
/// From now on flushing fails, or does not.
void disk_flush_fails(bool fails);
/// So many seconds are added to the time of day.
void disk_clock(long seconds);
}
