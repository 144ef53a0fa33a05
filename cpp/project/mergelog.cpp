// SPDX-License-Identifier: MIT
#include "project/mergelog.h"

#include <map>
#include <set>

namespace matside {

namespace {

using Keys = std::set<std::string, std::less<>>;

/// One list being walked: its next key that has not been told yet.
class Walk {
public:
    Walk(const std::vector<std::string> &list, const Keys &told) : m_list(list), m_told(told) {}
    const std::string *next()
    {
        while (m_at < m_list.size() && m_told.find(m_list[m_at]) != m_told.end())
            ++m_at;
        return m_at < m_list.size() ? &m_list[m_at] : nullptr;
    }

private:
    const std::vector<std::string> &m_list;
    const Keys &m_told;
    std::size_t m_at = 0;
};

/// Of two keys that may come next: one that the other list does not wait for, else the smaller.
const std::string &chosen(const std::string &mine, bool mineShared, const std::string &theirs,
                          bool theirsShared)
{
    if (mineShared != theirsShared)
        return mineShared ? theirs : mine;
    return mine < theirs ? mine : theirs;
}

} // namespace

std::vector<std::string> mergedOrder(const std::vector<std::string> &mine,
                                     const std::vector<std::string> &theirs)
{
    const Keys ofMine(mine.begin(), mine.end());
    const Keys ofTheirs(theirs.begin(), theirs.end());
    Keys told;
    std::vector<std::string> all;
    Walk here(mine, told);
    Walk there(theirs, told);
    for (;;) {
        const std::string *one = here.next();
        const std::string *other = there.next();
        if (!one && !other)
            return all;
        const std::string *next = one ? one : other;
        if (one && other && *one != *other)
            next = &chosen(*one, ofTheirs.find(*one) != ofTheirs.end(), *other,
                           ofMine.find(*other) != ofMine.end());
        told.insert(*next);
        all.push_back(*next);
    }
}

std::vector<std::string> withoutTakenBack(const std::vector<std::string> &list,
                                          const std::vector<std::string> &other,
                                          const std::vector<std::string> &base)
{
    const Keys there(other.begin(), other.end());
    const Keys before(base.begin(), base.end());
    std::vector<std::string> left;
    for (const std::string &key : list)
        if (before.find(key) == before.end() || there.find(key) != there.end())
            left.push_back(key);
    return left;
}

std::vector<std::string> numbered(const std::vector<std::string> &keys)
{
    std::map<std::string, std::size_t, std::less<>> seen;
    std::vector<std::string> distinct;
    for (const std::string &key : keys) {
        const std::size_t place = ++seen[key];
        distinct.push_back(place == 1 ? key : key + '#' + std::to_string(place));
    }
    return distinct;
}

} // namespace matside
