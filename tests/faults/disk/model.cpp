// SPDX-License-Identifier: MIT
#include "faults/disk/model.h"

#include <cstring>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace disk {

namespace fs = std::filesystem;

namespace {

std::string bytesOf(const fs::path &path)
{
    std::ifstream file(path, std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

/// What a run of writes and cuts does to a file's bytes.
void put(std::string &bytes, bool cut, std::size_t at, const std::string &written)
{
    if (cut) {
        bytes.resize(at, '\0');
        return;
    }
    if (bytes.size() < at + written.size())
        bytes.resize(at + written.size(), '\0');
    bytes.replace(at, written.size(), written);
}

} // namespace

std::vector<Event> readRecord(const std::string &path)
{
    const std::string bytes = bytesOf(path);
    std::vector<Event> events;
    Head head{};
    for (std::size_t at = 0; at + sizeof head <= bytes.size();) {
        std::memcpy(&head, bytes.data() + at, sizeof head);
        at += sizeof head;
        if (at + head.first + head.second > bytes.size())
            break; // the program was killed while it wrote this
        events.push_back({head.kind, head.fd, head.at, bytes.substr(at, head.first),
                          bytes.substr(at + head.first, head.second)});
        at += head.first + head.second;
    }
    return events;
}

Disk::Disk(std::string root) : m_root(std::move(root))
{
    take(m_root, make(true));
    for (const Naming &naming : m_naming)
        apply(m_flushed, naming);
    m_naming.clear();
    for (Node &node : m_nodes) {
        node.flushed = node.now;
        node.changes.clear();
    }
}

void Disk::take(const std::string &path, Id into)
{
    for (const auto &entry : fs::directory_iterator(path)) {
        const Id id = make(entry.is_directory());
        name({{{into, entry.path().filename()}, id}});
        if (entry.is_directory())
            take(entry.path(), id);
        else
            m_nodes[id].now = bytesOf(entry.path());
    }
}

std::optional<Disk::Place> Disk::placeOf(const std::string &path) const
{
    if (!path.starts_with(m_root + '/'))
        return std::nullopt;
    Place place{0, {}};
    std::istringstream parts(path.substr(m_root.size() + 1));
    for (std::string part; std::getline(parts, part, '/');) {
        if (!place.name.empty()) {
            const auto &entries = m_nodes[place.folder].entries;
            const auto below = entries.find(place.name);
            if (below == entries.end() || !m_nodes[below->second].folder)
                return std::nullopt;
            place.folder = below->second;
        }
        place.name = part;
    }
    return place;
}

std::optional<Disk::Id> Disk::nodeAt(const std::string &path) const
{
    if (path == m_root)
        return 0;
    const auto place = placeOf(path);
    if (!place)
        return std::nullopt;
    const auto &entries = m_nodes[place->folder].entries;
    const auto found = entries.find(place->name);
    return found == entries.end() ? std::nullopt : std::optional(found->second);
}

std::optional<Disk::Id> Disk::nodeOf(const Event &event) const
{
    if (event.fd < 0)
        return nodeAt(event.first);
    const auto open = m_open.find(event.fd);
    return open == m_open.end() ? std::nullopt : std::optional(open->second);
}

Disk::Id Disk::make(bool folder)
{
    m_nodes.push_back({});
    m_nodes.back().folder = folder;
    return m_nodes.size() - 1;
}

void Disk::name(Naming naming)
{
    for (const auto &[place, id] : naming) {
        auto &entries = m_nodes[place.folder].entries;
        if (id)
            entries[place.name] = *id;
        else
            entries.erase(place.name);
    }
    m_naming.push_back(std::move(naming));
}

void Disk::apply(Tree &tree, const Naming &naming)
{
    for (const auto &[place, id] : naming)
        if (id)
            tree[place] = *id;
        else
            tree.erase(place);
}

void Disk::change(Node &node, Change change)
{
    put(node.now, change.cut, change.at, change.bytes);
    node.changes.push_back(std::move(change));
}

/// A folder's flush takes along each change of a name in it, and what those changes stand on.
void Disk::flush(Id id)
{
    Node &node = m_nodes[id];
    node.flushed = node.now;
    node.changes.clear();
    if (!node.folder)
        return;
    std::set<Place> needed;
    std::vector<bool> goes(m_naming.size());
    for (std::size_t at = m_naming.size(); at-- > 0;) {
        for (const auto &named : m_naming[at])
            goes[at] = goes[at] || named.first.folder == id || needed.contains(named.first);
        if (goes[at])
            for (const auto &named : m_naming[at])
                needed.insert(named.first);
    }
    std::vector<Naming> stays;
    for (std::size_t at = 0; at < m_naming.size(); ++at)
        if (goes[at])
            apply(m_flushed, m_naming[at]);
        else
            stays.push_back(std::move(m_naming[at]));
    m_naming = std::move(stays);
}

bool Disk::opens(const Event &event)
{
    if ((event.at & nameless) != 0) {
        m_open[event.fd] = make(false);
        return true;
    }
    if ((event.at & made) != 0) {
        const auto place = placeOf(event.first);
        if (!place)
            return false;
        const Id id = make(false);
        name({{*place, id}});
        m_open[event.fd] = id;
        return true;
    }
    const auto id = nodeAt(event.first);
    if (!id)
        return false;
    if ((event.at & emptied) != 0)
        change(m_nodes[*id], {true, 0, {}});
    m_open[event.fd] = *id;
    return true;
}

bool Disk::names(const Event &event)
{
    const auto first = placeOf(event.first);
    const auto second = placeOf(event.second);
    const auto id = nodeOf(event);
    switch (event.kind) {
    case Kind::Folder:
        if (first)
            name({{*first, make(true)}});
        return first.has_value();
    case Kind::Remove:
    case Kind::NoFolder:
        if (first)
            name({{*first, std::nullopt}});
        return first.has_value();
    case Kind::Rename:
        if (first && second && id)
            name({{*first, std::nullopt}, {*second, *id}});
        return first && second && id;
    default:
        if (second && id)
            name({{*second, *id}});
        return second && id;
    }
}

bool Disk::apply(const Event &event)
{
    const auto id = nodeOf(event);
    switch (event.kind) {
    case Kind::Begun:
        m_open.clear();
        return true;
    case Kind::Said:
        return true;
    case Kind::Open:
        return opens(event);
    case Kind::Close:
        return m_open.erase(event.fd) == 1;
    case Kind::Same:
        if (id)
            m_open[static_cast<int>(event.at)] = *id;
        return id.has_value();
    case Kind::Write:
    case Kind::Size:
        if (id)
            change(m_nodes[*id], {event.kind == Kind::Size, static_cast<std::size_t>(event.at),
                                  event.kind == Kind::Size ? std::string() : event.first});
        return id.has_value();
    case Kind::Flush:
        if (id)
            flush(*id);
        return id.has_value();
    default:
        return names(event);
    }
}

std::size_t Disk::waiting() const
{
    std::size_t all = m_naming.size();
    for (const Node &node : m_nodes)
        all += node.changes.size();
    return all;
}

std::map<std::string, std::string> Disk::whole() const
{
    std::map<std::string, std::string> all;
    gather(0, {}, all);
    return all;
}

void Disk::gather(Id folder, const std::string &path, std::map<std::string, std::string> &all) const
{
    for (const auto &[name, id] : m_nodes[folder].entries)
        if (m_nodes[id].folder)
            gather(id, path + name + '/', all);
        else
            all[path + name] = m_nodes[id].now;
}

} // namespace disk
