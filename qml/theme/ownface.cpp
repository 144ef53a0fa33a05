// SPDX-License-Identifier: MIT
//
// Copies an OpenType face and gives the copy a family name of its own, of the same length.
// A system that has B612 installed also has its fixed-width sister, which answers to the same
// family name: asked by that name, the wrong face may come. The embedded copy must be unmistakable.

#include <cstddef>
#include <cstdint>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>
#include <vector>

namespace {

using Bytes = std::vector<unsigned char>;

std::size_t word(const Bytes &file, std::size_t at)
{
    return (static_cast<std::size_t>(file.at(at)) << 8U) | file.at(at + 1);
}

std::size_t longWord(const Bytes &file, std::size_t at)
{
    return (word(file, at) << 16U) | word(file, at + 2);
}

/// Where the naming table starts, or 0 when the file has none (OpenType, "Table directory").
std::size_t namingTable(const Bytes &file)
{
    constexpr std::size_t header = 12;
    constexpr std::size_t entry = 16;
    const std::size_t tables = word(file, 4);
    for (std::size_t i = 0; i < tables; ++i) {
        const std::size_t at = header + i * entry;
        const std::string tag(file.begin() + static_cast<std::ptrdiff_t>(at),
                              file.begin() + static_cast<std::ptrdiff_t>(at + 4));
        if (tag == "name") {
            return longWord(file, at + 8);
        }
    }
    return 0;
}

/// Writes `to` over each `from` in the bytes [start, end), `step` bytes a letter; how many.
int rename(Bytes &file, std::size_t start, std::size_t end, std::size_t step, const std::string &from,
           const std::string &to)
{
    int found = 0;
    for (std::size_t at = start; at + (from.size() - 1) * step < end; ++at) {
        bool same = true;
        for (std::size_t i = 0; same && i < from.size(); ++i) {
            same = file.at(at + i * step) == static_cast<unsigned char>(from[i]);
        }
        if (!same) {
            continue;
        }
        for (std::size_t i = 0; i < to.size(); ++i) {
            file.at(at + i * step) = static_cast<unsigned char>(to[i]);
        }
        ++found;
    }
    return found;
}

/// Renames the family in every record of the naming table (OpenType, "name"); how many places.
int renameFamily(Bytes &file, const std::string &from, const std::string &to)
{
    const std::size_t table = namingTable(file);
    if (table == 0) {
        return 0;
    }
    constexpr std::size_t header = 6;
    constexpr std::size_t record = 12;
    const std::size_t storage = table + word(file, table + 4);
    int found = 0;
    for (std::size_t i = 0; i < word(file, table + 2); ++i) {
        const std::size_t at = table + header + i * record;
        const bool macintosh = word(file, at) == 1; // one byte a letter; all others two
        const std::size_t start = storage + word(file, at + 10);
        const std::size_t end = start + word(file, at + 8);
        found += rename(file, macintosh ? start : start + 1, end, macintosh ? 1 : 2, from, to);
    }
    return found;
}

} // namespace

int main(int argc, char **argv)
{
    const std::vector<std::string> given(argv + 1, argv + argc);
    if (given.size() != 4 || given[2].size() != given[3].size()) {
        std::cerr << "usage: ownface <from.otf> <to.otf> <family> <family of the same length>\n";
        return 2;
    }
    std::ifstream in(given[0], std::ios::binary);
    Bytes file{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
    if (file.size() < 12 || renameFamily(file, given[2], given[3]) == 0) {
        std::cerr << given[0] << ": no naming table with " << given[2] << " in it\n";
        return 1;
    }
    std::ofstream out(given[1], std::ios::binary);
    for (const unsigned char byte : file) {
        out.put(static_cast<char>(byte));
    }
    return out.good() ? 0 : 1;
}
