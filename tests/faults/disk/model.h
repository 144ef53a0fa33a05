// SPDX-License-Identifier: MIT
#pragma once

#include "faults/disk/record.h"

#include <map>
#include <optional>
#include <random>
#include <set>
#include <string>
#include <vector>

/// The watched folder as a disk holds it: what was flushed, and what was only done. Nothing is promised of
/// what was not flushed but this: a rename is done whole or not at all, two changes of one name or of one
/// sector reach the disk in their order, and a flushed file is there under a name only once its folder was
/// flushed too (IEEE Std 1003.1, fsync; J. Yang and others, and T. S. Pillai and others, OSDI 2014, on what
/// file systems do beyond it).
namespace disk {

struct Event {
    Kind kind = Kind::Begun;
    int fd = -1;
    std::int64_t at = 0;
    std::string first;
    std::string second;
};

/// Every whole event of a record.
[[nodiscard]] std::vector<Event> readRecord(const std::string &path);

/// What a cut does with what was not flushed.
struct Temper {
    enum class Names { None, All, InOrder, ByChance } names = Names::ByChance;
    enum class Bytes { None, All, InOrder, ByChance } bytes = Bytes::ByChance;
    std::size_t torn = 512; ///< bytes that reach the disk together
    bool rubbish = false;   ///< what was never written holds anything instead of zeros
};
[[nodiscard]] Temper anyTemper(std::mt19937 &random);
[[nodiscard]] std::string told(const Temper &temper);

class Disk {
public:
    /// Begins with what lies in the folder, all of it flushed.
    explicit Disk(std::string root);

    /// False when the event does not fit what was done before.
    [[nodiscard]] bool apply(const Event &event);

    /// How many changes wait to be flushed.
    [[nodiscard]] std::size_t waiting() const;
    /// What the folder holds as long as the power stays on.
    [[nodiscard]] std::map<std::string, std::string> whole() const;
    /// What it may hold after a cut at this moment, laid into an empty folder.
    void layAfterCut(const std::string &folder, const Temper &temper, std::mt19937 &random) const;

private:
    using Id = std::size_t;
    struct Change {
        bool cut = false; ///< a new size, not bytes
        std::size_t at = 0;
        std::string bytes;
    };
    struct Node {
        bool folder = false;
        std::map<std::string, Id> entries; ///< as done
        std::string now;                   ///< as done
        std::string flushed;
        std::vector<Change> changes; ///< since it was flushed
    };
    struct Place {
        Id folder;
        std::string name;
        auto operator<=>(const Place &) const = default;
    };
    /// One change of names: all of it or nothing.
    using Naming = std::vector<std::pair<Place, std::optional<Id>>>;
    using Tree = std::map<Place, Id>;

    void take(const std::string &path, Id into);
    [[nodiscard]] std::optional<Place> placeOf(const std::string &path) const;
    [[nodiscard]] std::optional<Id> nodeAt(const std::string &path) const;
    [[nodiscard]] std::optional<Id> nodeOf(const Event &event) const;
    Id make(bool folder);
    void name(Naming naming);
    static void apply(Tree &tree, const Naming &naming);
    void change(Node &node, Change change);
    void flush(Id id);
    [[nodiscard]] bool opens(const Event &event);
    [[nodiscard]] bool names(const Event &event);
    [[nodiscard]] std::vector<bool> keptNamings(Temper::Names how, std::mt19937 &random) const;
    [[nodiscard]] std::string bytesAfterCut(const Node &node, const Temper &temper,
                                            std::mt19937 &random) const;
    void gather(Id folder, const std::string &path, std::map<std::string, std::string> &all) const;
    void lay(const Tree &tree, Id folder, const std::string &path, const Temper &temper,
             std::mt19937 &random) const;

    std::string m_root;
    std::vector<Node> m_nodes;
    std::map<int, Id> m_open;
    Tree m_flushed;               ///< the names that are on the disk
    std::vector<Naming> m_naming; ///< since their folders were flushed
};

} // namespace disk
