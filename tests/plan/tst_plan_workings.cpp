// SPDX-License-Identifier: MIT
//
// The sum shown behind a figure is the sum: its formula is read and reckoned again here, by a small
// calculator that knows nothing of the plan, and must give the figure.
#include "plan/laidsum.h"
#include "plan/working.h"
#include "planhelp.h"

#include <cmath>
#include <map>
#include <set>

using namespace matside;

namespace {

/// A calculator for + - * / ( ) max up floor ceil sqrt over named values, in ticks or counts.
class Calculator {
public:
    Calculator(std::string text, std::map<std::string, long double> values)
        : m_text(std::move(text)), m_values(std::move(values))
    {
    }
    long double value()
    {
        const long double result = sum();
        m_good = m_good && m_at == m_text.size();
        return result;
    }
    bool good() const { return m_good; }

private:
    char peek()
    {
        while (m_at < m_text.size() && m_text[m_at] == ' ')
            ++m_at;
        return m_at < m_text.size() ? m_text[m_at] : '\0';
    }
    bool take(char c)
    {
        if (peek() != c)
            return false;
        ++m_at;
        return true;
    }
    long double sum()
    {
        long double left = product();
        for (;;) {
            if (take('+'))
                left += product();
            else if (take('-'))
                left -= product();
            else
                return left;
        }
    }
    long double product()
    {
        long double left = atom();
        for (;;) {
            if (take('*'))
                left *= atom();
            else if (take('/'))
                left /= atom();
            else
                return left;
        }
    }
    long double atom()
    {
        if (take('(')) {
            const long double inside = sum();
            m_good = take(')') && m_good;
            return inside;
        }
        peek();
        std::string name;
        while (m_at < m_text.size() && (std::isalnum(static_cast<unsigned char>(m_text[m_at]))))
            name += m_text[m_at++];
        if (name.empty()) {
            m_good = false;
            return 0;
        }
        if (std::isdigit(static_cast<unsigned char>(name[0])))
            return std::stold(name);
        return take('(') ? call(name) : named(name);
    }
    long double named(const std::string &name)
    {
        const auto held = m_values.find(name);
        m_good = m_good && held != m_values.end();
        m_used.insert(name);
        return held == m_values.end() ? 0 : held->second;
    }
    long double call(const std::string &name)
    {
        std::vector<long double> given{sum()};
        while (take(','))
            given.push_back(sum());
        m_good = take(')') && m_good;
        if (name == "max")
            return *std::max_element(given.begin(), given.end());
        if (name == "up" && given.size() == 2)
            return std::ceil(given[0] / given[1] - 1e-9L) * given[1];
        if (name == "floor")
            return std::floor(given[0] + 1e-12L);
        if (name == "ceil")
            return std::ceil(given[0] - 1e-12L);
        if (name == "sqrt")
            return std::sqrt(given[0]);
        m_good = false;
        return 0;
    }

public:
    std::set<std::string> m_used;

private:
    std::string m_text;
    std::map<std::string, long double> m_values;
    std::size_t m_at = 0;
    bool m_good = true;
};

template <class Value> long double plain(const Value &value)
{
    return std::visit(
        [](const auto &held) -> long double {
            using Held = std::decay_t<decltype(held)>;
            if constexpr (std::is_same_v<Held, Length>)
                return static_cast<long double>(held.count());
            else if constexpr (std::is_same_v<Held, Share>)
                return static_cast<long double>(held.millionths) / 1e6L;
            else
                return static_cast<long double>(held);
        },
        value);
}

QByteArray recheck(const Working &working)
{
    std::map<std::string, long double> values;
    for (const Term &term : working.terms)
        values[term.name] = plain(term.value);
    Calculator calculator(working.formula, values);
    const long double again = calculator.value();
    if (!calculator.good())
        return QByteArray("cannot read ") + working.formula.c_str();
    if (calculator.m_used.size() != values.size())
        return QByteArray("a term is not in ") + working.formula.c_str();
    // One tick for the one rounding of a quotient or product; another where a term was itself rounded.
    if (std::abs(again - plain(working.value)) > 1.01L)
        return QByteArray::number(static_cast<double>(again)) + " is not " +
               QByteArray::number(static_cast<double>(plain(working.value)));
    return {};
}

/// Every piece lies where the last one ended, or back from it; where that ends is told.
QByteArray gapIn(const SumWay &way)
{
    Length at;
    for (const SumPiece &piece : way.pieces) {
        if (piece.length <= Length())
            return "a piece of nothing";
        if (piece.less)
            at -= piece.length;
        if (piece.from != at)
            return "a piece does not lie where the last one ended";
        if (!piece.less)
            at += piece.length;
    }
    return at == way.end ? QByteArray() : "they do not end where they are said to";
}

/// Lengths laid end to end are measured again with a tape: they must come to the figure.
QByteArray laidAmiss(const Working &working)
{
    const LaidSum laid = laidOf(working);
    const Length *value = std::get_if<Length>(&working.value);
    const auto near = [](Length a, Length b) { return (a - b).magnitude() <= Length::ticks(4); };
    for (const SumWay &way : laid.ways) {
        if (const QByteArray gap = gapIn(way); !gap.isEmpty())
            return gap;
        if (way.end * way.times > laid.most || laid.least > Length())
            return "it reaches past what is shown";
    }
    switch (laid.kind) {
    case SumKind::Words: // counts, or nothing there to lay
        return value && *value > Length() ? "a length that is not laid" : "";
    case SumKind::Sum:
        return laid.ways.size() == 1 && near(laid.ways[0].end, *value) ? "" : "the sum is not the figure";
    case SumKind::Larger:
        for (const SumWay &way : laid.ways)
            if (way.counts ? !near(way.end, *value) : way.end > *value)
                return "another way than the larger counts";
        return "";
    case SumKind::Part:
        return near(laid.ways[0].end.scaled(1, laid.parts), *value) ? "" : "a part is not the figure";
    case SumKind::Often:
        const std::int64_t times = std::get<std::int64_t>(working.value);
        const bool up = working.formula.find("ceil") != std::string::npos;
        const Length whole = laid.ways[0].end;
        const Length each = laid.ways[1].end;
        if (up)
            return each * times >= whole && each * (times - 1) < whole ? "" : "it does not reach just over";
        return times == 0 || (each * times <= whole && each * (times + 1) > whole)
                   ? ""
                   : "another would lie in it";
    }
    return "an unknown kind";
}

} // namespace

class PlanWorkings : public QObject {
    Q_OBJECT
private slots:
    void everyFigureIsTheSumItShows();
    void everyTermOfASumIsKnownOrEntered();
    void theLengthsLaidEndToEndComeToTheFigure();
    void theLargerOfTwoWaysIsTheOneThatCounts();
    void unknownFiguresHaveNoSum();
    void untriedFiguresSaySoUntilTheTrial();
};

void PlanWorkings::everyFigureIsTheSumItShows()
{
    planhelp::Chance chance(planhelp::seed(11));
    int checked = 0;
    for (int i = 0; i < planhelp::count(500); ++i) {
        Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        if (chance.coin())
            project.table = Table{std::nullopt, std::nullopt, project.blocks.width * 9, {}};
        const Plan p = plan(project);
        for (const std::string &figure : figuresWithWorking(p)) {
            const auto working = workingOf(project, p, figure);
            QVERIFY2(working, figure.c_str());
            const QByteArray wrong = recheck(*working);
            QVERIFY2(wrong.isEmpty(), (QByteArray(figure.c_str()) + ": " + wrong).constData());
            ++checked;
        }
    }
    QVERIFY(checked > 5000 || planhelp::count(500) < 500);
}

void PlanWorkings::theLengthsLaidEndToEndComeToTheFigure()
{
    planhelp::Chance chance(planhelp::seed(12));
    std::map<SumKind, int> kinds;
    for (int i = 0; i < planhelp::count(500); ++i) {
        Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        if (chance.coin())
            project.table = Table{std::nullopt, std::nullopt, project.blocks.width * 9, {}};
        const Plan p = plan(project);
        for (const std::string &figure : figuresWithWorking(p)) {
            const auto working = workingOf(project, p, figure);
            QVERIFY2(working, figure.c_str());
            const QByteArray wrong = laidAmiss(*working);
            QVERIFY2(
                wrong.isEmpty(),
                (QByteArray(figure.c_str()) + ": " + wrong + ", " + working->formula.c_str()).constData());
            ++kinds[laidOf(*working).kind];
        }
    }
    QCOMPARE(kinds.size(), 5U);
}

/// Worked by hand: a hoop of 11 1/4 in with an inch to each side needs 13 1/4; the block of 6 in with its
/// seams and what frays only 7 1/2.
void PlanWorkings::theLargerOfTwoWaysIsTheOneThatCounts()
{
    Working working;
    working.formula = "max(hoop + 2 * margin, sent + 2 * (seam + fray))";
    working.value = Length::inches(13, 1, 4);
    working.terms = {{"hoop", Length::inches(11, 1, 4), {}, {}},
                     {"margin", Length::inches(1), {}, {}},
                     {"sent", Length::inches(6), {}, {}},
                     {"seam", Length::inches(0, 1, 2), {}, {}},
                     {"fray", Length::inches(0, 1, 4), {}, {}}};
    const LaidSum laid = laidOf(working);
    QCOMPARE(laid.kind, SumKind::Larger);
    QCOMPARE(laid.ways.size(), 2U);
    QCOMPARE(laid.ways[0].pieces.size(), 3U); // the hoop and a margin to each side
    QCOMPARE(laid.ways[1].pieces.size(), 5U);
    QVERIFY(laid.ways[0].counts && !laid.ways[1].counts);
    QCOMPARE(laid.ways[0].end.count(), Length::inches(13, 1, 4).count());
    QCOMPARE(laid.ways[1].end.count(), Length::inches(7, 1, 2).count());
    QCOMPARE(laid.most.count(), Length::inches(13, 1, 4).count());
}

void PlanWorkings::everyTermOfASumIsKnownOrEntered()
{
    const Project project =
        planhelp::piece(3, 3, Length::inches(6), planhelp::hoopP(), Length::inches(40, 1, 2));
    const Plan p = plan(project);
    for (const std::string &figure : figuresWithWorking(p)) {
        const auto working = workingOf(project, p, figure);
        QVERIFY(working);
        for (const Term &term : working->terms)
            QVERIFY2(term.figure.empty() || term.figure.starts_with("strip.") ||
                         workingOf(project, p, term.figure),
                     (figure + " leads to " + term.figure).c_str());
    }
}

void PlanWorkings::unknownFiguresHaveNoSum()
{
    const Project project = planhelp::piece(3, 3, Length::inches(6), planhelp::hoopP(), Length::inches(40));
    const Plan p = plan(project);
    for (const char *figure : {"", "strip", "strip.starts.99", "strip.starts.4", "sashing.marks.2",
                               "strip.starts.-1", "fold.under.0x", "no.such"})
        QVERIFY2(!workingOf(project, p, figure), figure);
}

void PlanWorkings::untriedFiguresSaySoUntilTheTrial()
{
    Project project = planhelp::piece(3, 3, Length::inches(6), planhelp::hoopP(), Length::inches(40));
    QVERIFY(notTriedYet(plan(project), "block.sent.along"));
    QVERIFY(notTriedYet(plan(project), "fold.under"));
    QVERIFY(!notTriedYet(plan(project), "strip.width"));
    project.made.testBlock =
        TestBlock{{Length::inches(6), Length::inches(6)}, {Length::inches(6), Length::inches(6)}, {}};
    project.made.testJoin =
        TestJoin{Length::inches(0, 1, 2), Length(), Length::inches(1), Length::inches(0, 1, 8), {}};
    QVERIFY(!notTriedYet(plan(project), "block.sent.along"));
    QVERIFY(!notTriedYet(plan(project), "fold.under"));
    // One block alone has no join to try.
    const Project mat = planhelp::piece(1, 1, Length::inches(6), planhelp::hoopP(), Length::inches(40));
    QVERIFY(!notTriedYet(plan(mat), "sashing.cutFront"));
}

QTEST_GUILESS_MAIN(PlanWorkings)
#include "tst_plan_workings.moc"
