// SPDX-License-Identifier: MIT
//
// What a power cut leaves of a disk.
#include "faults/disk/model.h"

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace disk {

namespace {

/// Rather often nothing or all, else anything between.
std::size_t someOf(std::size_t all, std::mt19937 &random)
{
    switch (random() % 4) {
    case 0:
        return 0;
    case 1:
        return all;
    default:
        return random() % (all + 1);
    }
}

std::size_t howMany(Temper::Bytes how, std::size_t all, std::mt19937 &random)
{
    if (how == Temper::Bytes::None)
        return 0;
    return how == Temper::Bytes::All ? all : someOf(all, random);
}

} // namespace

Temper anyTemper(std::mt19937 &random)
{
    Temper temper;
    temper.names = static_cast<Temper::Names>(random() % 4);
    temper.bytes = static_cast<Temper::Bytes>(random() % 4);
    temper.torn = random() % 2 == 0 ? 512 : 4096;
    temper.rubbish = random() % 4 == 0;
    return temper;
}

std::string told(const Temper &temper)
{
    static constexpr const char *words[] = {"none", "all", "in order", "by chance"};
    return std::string("names ") + words[static_cast<int>(temper.names)] + ", bytes " +
           words[static_cast<int>(temper.bytes)] + ", torn at " + std::to_string(temper.torn) +
           (temper.rubbish ? ", rubbish" : "");
}

std::vector<bool> Disk::keptNamings(Temper::Names how, std::mt19937 &random) const
{
    std::vector<bool> kept(m_naming.size(), how == Temper::Names::All);
    if (how == Temper::Names::InOrder)
        std::fill_n(kept.begin(), random() % (kept.size() + 1), true);
    if (how != Temper::Names::ByChance)
        return kept;
    std::set<Place> dropped; // what comes later of these cannot have come alone
    for (std::size_t at = 0; at < m_naming.size(); ++at) {
        const bool stands = std::none_of(m_naming[at].begin(), m_naming[at].end(),
                                         [&](const auto &named) { return dropped.contains(named.first); });
        kept[at] = stands && random() % 2 == 0;
        if (!kept[at])
            for (const auto &named : m_naming[at])
                dropped.insert(named.first);
    }
    return kept;
}

/// Each sector holds what it held after some number of the changes, and the size is one the file has had.
std::string Disk::bytesAfterCut(const Node &node, const Temper &temper, std::mt19937 &random) const
{
    const std::size_t all = node.changes.size();
    std::size_t longest = node.flushed.size();
    std::vector<std::size_t> sizes{longest};
    for (const Change &change : node.changes) {
        const std::size_t size =
            change.cut ? change.at : std::max(sizes.back(), change.at + change.bytes.size());
        sizes.push_back(size);
        longest = std::max(longest, size);
    }
    const std::size_t upTo = howMany(temper.bytes, all, random);
    const bool alike = temper.bytes != Temper::Bytes::ByChance;
    std::vector<std::size_t> kept(longest / temper.torn + 1, upTo);
    for (std::size_t &sector : kept)
        if (!alike)
            sector = someOf(all, random);
    std::string bytes = node.flushed;
    bytes.resize(longest, '\0');
    if (temper.rubbish && !alike)
        std::generate(bytes.begin() + static_cast<std::ptrdiff_t>(node.flushed.size()), bytes.end(),
                      [&] { return static_cast<char>(random()); });
    for (std::size_t at = 0; at < all; ++at) {
        const Change &change = node.changes[at];
        const std::size_t end = change.cut ? longest : change.at + change.bytes.size();
        for (std::size_t from = change.at; from < end;) {
            const std::size_t to = std::min(end, (from / temper.torn + 1) * temper.torn);
            if (at < kept[from / temper.torn])
                bytes.replace(from, to - from,
                              change.cut ? std::string(to - from, '\0')
                                         : change.bytes.substr(from - change.at, to - from));
            from = to;
        }
    }
    bytes.resize(sizes[alike ? upTo : someOf(all, random)]);
    return bytes;
}

void Disk::layAfterCut(const std::string &folder, const Temper &temper, std::mt19937 &random) const
{
    Tree tree = m_flushed;
    const std::vector<bool> kept = keptNamings(temper.names, random);
    for (std::size_t at = 0; at < kept.size(); ++at)
        if (kept[at])
            apply(tree, m_naming[at]);
    lay(tree, 0, folder, temper, random);
}

void Disk::lay(const Tree &tree, Id folder, const std::string &path, const Temper &temper,
               std::mt19937 &random) const
{
    std::filesystem::create_directories(path);
    for (auto at = tree.lower_bound({folder, {}}); at != tree.end() && at->first.folder == folder; ++at) {
        const std::string below = path + '/' + at->first.name;
        if (m_nodes[at->second].folder) {
            lay(tree, at->second, below, temper, random);
            continue;
        }
        std::ofstream file(below, std::ios::binary);
        const std::string bytes = bytesAfterCut(m_nodes[at->second], temper, random);
        file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    }
}

} // namespace disk
