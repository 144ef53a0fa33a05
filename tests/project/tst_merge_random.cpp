// SPDX-License-Identifier: MIT
//
// Two and three tablets by chance. What stands outside: the laws a merge has to keep (a project with itself
// is itself; the side does not matter; of logs the order of merging does not matter), and the list of all
// that was noted, kept by the test beside the tablets.
#include "mergehelp.h"
#include "project/mergelog.h"
#include "randomproject.h"

#include <algorithm>
#include <random>
#include <set>

using namespace mergehelp;

namespace {

using Keys = std::vector<std::string>;

/// A tablet that notes things; what all tablets ever noted is kept beside it.
class Chance {
public:
    explicit Chance(std::uint64_t seed) : m_engine(seed) {}
    std::uint64_t upTo(std::uint64_t most) { return m_engine() % (most + 1); }
    std::string id() { return std::to_string(m_engine()); }
    template <class T> const T &of(const std::vector<T> &list) { return list[upTo(list.size() - 1)]; }

    void work(Project &project, std::multiset<std::string> &all, std::uint64_t most)
    {
        for (std::uint64_t i = upTo(most); i > 0; --i) {
            MadeEvent event = noted(upTo(1) ? "new-bobbin" : "spoiled", id());
            event.count = static_cast<std::int64_t>(upTo(3));
            project.made.events.push_back(event);
            all.insert(event.id);
            MadeBlock block = stitched("B" + std::to_string(++m_blocks));
            block.notes = {id()};
            project.made.blocks.push_back(block);
            all.insert(block.notes[0]);
        }
    }
    /// Changes some decisions and records, as either tablet may.
    void decide(Project &project)
    {
        const auto length = [&] { return Length::inches(0, 1 + static_cast<std::int64_t>(upTo(3)), 8); };
        if (upTo(1))
            project.seam = length();
        if (upTo(1))
            project.name = "Name " + std::to_string(upTo(2));
        if (upTo(1))
            project.sashing.cutBack = length();
        if (upTo(1) && !project.cloths.empty())
            project.cloths[upTo(project.cloths.size() - 1)].name = "cloth " + std::to_string(upTo(2));
        if (upTo(3) == 0 && !project.rulers.empty())
            project.rulers.pop_back();
        for (MadeBlock &block : project.made.blocks) {
            if (upTo(3) == 0)
                block.state = static_cast<BlockState>(upTo(4));
            if (upTo(3) == 0)
                block.minutes = static_cast<std::int64_t>(upTo(2));
        }
        for (MadeCut &cut : project.made.cut)
            cut.count += static_cast<std::int64_t>(upTo(2));
    }

private:
    std::mt19937_64 m_engine;
    int m_blocks = 0;
};

std::multiset<std::string> notedIn(const Project &project)
{
    std::multiset<std::string> all;
    for (const MadeEvent &event : project.made.events)
        all.insert(event.id);
    for (const MadeBlock &block : project.made.blocks)
        all.insert(block.notes.begin(), block.notes.end());
    return all;
}

Answers anyAnswers(const Merged &asked, Chance &chance)
{
    Answers answers;
    for (const MergeQuestion &question : asked.questions)
        answers[question.differs.at] = static_cast<Says>(chance.upTo(question.together.empty() ? 1 : 2));
    return answers;
}

/// A list that keeps the order of another.
bool inOrder(const Keys &part, const Keys &whole)
{
    auto at = whole.begin();
    for (const std::string &key : part) {
        at = std::find(at, whole.end(), key);
        if (at == whole.end())
            return false;
        ++at;
    }
    return true;
}

} // namespace

class MergeRandomTest : public QObject {
    Q_OBJECT
private slots:
    void aProjectWithItselfIsItself();
    void theSideDoesNotMatter();
    void noNoteIsLostOrDoubled();
    void unrelatedProjectsAreTakenOrRefused();
    void logsMergeInAnyOrder();
    void equalContentsWithoutIds();
};

void MergeRandomTest::aProjectWithItselfIsItself()
{
    for (std::uint64_t seed = 1; seed <= rounds(60); ++seed) {
        const std::string text = writeProject(RandomProject(seed).project());
        if (!readProject(text).value().problems.empty())
            continue;
        for (const std::optional<std::string> &base :
             {std::optional<std::string>(), std::optional(text), std::optional(writeProject(example()))}) {
            const auto itself = mergeProjects(base, text, text);
            QVERIFY2(itself.ok() && itself.value().questions.empty() && itself.value().came.empty(),
                     qPrintable(QString::number(seed)));
            QCOMPARE(itself.value().document, text);
        }
    }
}

void MergeRandomTest::theSideDoesNotMatter()
{
    for (std::uint64_t seed = 1; seed <= rounds(200); ++seed) {
        Chance chance(seed);
        std::multiset<std::string> all;
        Project base = example();
        base.made.cut = {{"front", "cut-strip", 2, 0, {}}, {"back", "cut-strip", 1, 1, {}}};
        chance.work(base, all, 4);
        Project mine = base;
        Project theirs = base;
        chance.work(mine, all, 3);
        chance.work(theirs, all, 3);
        chance.decide(mine);
        chance.decide(theirs);
        const std::optional<Project> known = chance.upTo(3) ? std::optional(base) : std::nullopt;
        const Merged asked = merged(known, mine, theirs);
        const Answers answers = anyAnswers(asked, chance);
        const Merged here = merged(known, mine, theirs, answers);
        const Merged there = merged(known, theirs, mine, turnedRound(answers));
        QVERIFY2(here.document == there.document, qPrintable(QString::number(seed)));
        QCOMPARE(here.questions.size(), there.questions.size());
        // Once more with what was put together: nothing is asked twice, nothing comes twice.
        const Merged again = merged(theirs, projectOf(here), theirs);
        QVERIFY2(again.document == here.document && again.came.empty(), qPrintable(QString::number(seed)));
    }
}

void MergeRandomTest::noNoteIsLostOrDoubled()
{
    for (std::uint64_t seed = 1; seed <= rounds(500); ++seed) {
        Chance chance(seed);
        std::multiset<std::string> all;
        Project base = example();
        chance.work(base, all, 5);
        std::vector<Project> tablets(2 + chance.upTo(1), base);
        for (Project &tablet : tablets)
            chance.work(tablet, all, 5);
        Project whole = tablets[0];
        for (std::size_t i = 1; i < tablets.size(); ++i)
            whole = projectOf(merged(chance.upTo(1) ? std::optional(base) : std::nullopt, whole, tablets[i]));
        QVERIFY2(notedIn(whole) == all, qPrintable(QString::number(seed)));
        // A file brought in a second time adds nothing.
        const Project again = projectOf(merged(tablets[1], whole, tablets[1]));
        QVERIFY2(again == whole, qPrintable(QString::number(seed)));
        QVERIFY2(projectOf(merged({}, whole, tablets[1])) == whole, qPrintable(QString::number(seed)));
    }
}

void MergeRandomTest::unrelatedProjectsAreTakenOrRefused()
{
    int taken = 0;
    for (std::uint64_t seed = 1; seed <= rounds(150); ++seed) {
        const std::string mine = writeProject(RandomProject(seed).project());
        const std::string theirs = writeProject(RandomProject(seed + 100'000).project());
        const std::string base = writeProject(RandomProject(seed + 200'000).project());
        const auto here = mergeProjects(base, mine, theirs);
        const auto there = mergeProjects(base, theirs, mine);
        QVERIFY2(here.ok() == there.ok(), qPrintable(QString::number(seed)));
        if (!here) {
            QCOMPARE(here.error().code, there.error().code);
            continue;
        }
        ++taken;
        QVERIFY2(here.value().questions.size() == there.value().questions.size(),
                 qPrintable(QString::number(seed)));
        QVERIFY(readProject(here.value().document).value().problems.empty());
    }
    QVERIFY(taken > 0);
}

void MergeRandomTest::logsMergeInAnyOrder()
{
    for (std::uint64_t seed = 1; seed <= rounds(4000); ++seed) {
        Chance chance(seed);
        const auto some = [&](std::uint64_t most) {
            Keys keys;
            for (std::uint64_t i = chance.upTo(most); i > 0; --i)
                keys.push_back(chance.id());
            return keys;
        };
        const Keys common = some(4);
        std::vector<Keys> logs(3, common);
        for (Keys &log : logs)
            for (const std::string &key : some(6))
                log.push_back(key);
        const Keys &a = logs[0];
        const Keys &b = logs[1];
        const Keys &c = logs[2];
        const Keys whole = mergedOrder(mergedOrder(a, b), c);
        QCOMPARE(whole, mergedOrder(a, mergedOrder(b, c)));
        QCOMPARE(whole, mergedOrder(c, mergedOrder(b, a)));
        QCOMPARE(whole.size(), a.size() + b.size() + c.size() - 2 * common.size());
        for (const Keys &log : logs)
            QVERIFY(inOrder(log, whole));
        QCOMPARE(mergedOrder(whole, b), whole);
        // Two that went on after they had met.
        Keys later = mergedOrder(a, b);
        Keys other = b;
        for (const std::string &key : some(3))
            later.push_back(key);
        for (const std::string &key : some(3))
            other.push_back(key);
        const Keys met = mergedOrder(later, other);
        QCOMPARE(met, mergedOrder(other, later));
        QVERIFY(inOrder(later, met) && inOrder(other, met));
    }
}

void MergeRandomTest::equalContentsWithoutIds()
{
    for (std::uint64_t seed = 1; seed <= rounds(150); ++seed) {
        Chance chance(seed);
        const auto some = [&] {
            Keys keys;
            for (std::uint64_t i = chance.upTo(5); i > 0; --i)
                keys.push_back(chance.upTo(1) ? "a" : "b");
            return keys;
        };
        const Keys one = some();
        const Keys other = some();
        const Keys both = mergedOrder(numbered(one), numbered(other));
        // Of each content as many as the tablet has that has more of it.
        for (const std::string content : {"a", "b"}) {
            const auto is = [&](const std::string &key) { return key.substr(0, 1) == content; };
            QCOMPARE(std::count_if(both.begin(), both.end(), is),
                     std::max(std::count(one.begin(), one.end(), content),
                              std::count(other.begin(), other.end(), content)));
        }
    }
}

QTEST_APPLESS_MAIN(MergeRandomTest)
#include "tst_merge_random.moc"
