// SPDX-License-Identifier: MIT
#include "app/sumwords.h"

#include "app/stepmodel.h"
#include "app/wording.h"

#include <string_view>
#include <vector>

namespace matside {

namespace {

bool letter(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

QString sign(char c)
{
    switch (c) {
    case '*':
        return QStringLiteral("×");
    case '/':
        return QStringLiteral("÷");
    case '-':
        return QStringLiteral("−");
    default:
        return {QLatin1Char(c)};
    }
}

/// A part of a sum; `phrase` where it is told in a sentence's words, which do not go on after them.
struct Part {
    QString says;
    bool phrase = false;
    [[nodiscard]] QString apart() const { return phrase ? QStringLiteral("(%1)").arg(says) : says; }
};

Part largest(const std::vector<Part> &of)
{
    QStringList all;
    for (const Part &part : of)
        if (part.says != QStringLiteral("0")) // no count is less than none
            all += part.apart();
    if (all.size() == 1)
        return of.back();
    const QString last = all.takeLast();
    if (all.size() == 1)
        //: in the words of a sum: the one of two lengths that is larger
        return {StepModel::tr("the larger of %1 and %2").arg(all.constFirst(), last), true};
    //: the same of three or more; %1 is all but the last, with commas
    return {StepModel::tr("the largest of %1 and %2").arg(all.join(QStringLiteral(", ")), last), true};
}

Part worded(const std::string &name, const std::vector<Part> &of)
{
    if (name == "max")
        return largest(of);
    const QString what = of.empty() ? QString() : of.front().says;
    if (name == "up")
        //: in the words of a sum; what it is rounded up to stands in the list under it
        return {StepModel::tr("%1, rounded up").arg(what), true};
    if (name == "ceil")
        return {StepModel::tr("%1, rounded up to a whole number").arg(what), true};
    if (name == "floor")
        return {StepModel::tr("%1, rounded down to a whole number").arg(what), true};
    return {StepModel::tr("the square root of %1").arg(what), true};
}

class Sum {
public:
    explicit Sum(std::string_view formula) : m_rest(formula) {}

    /// As far as the comma or the bracket that ends it.
    // NOLINTNEXTLINE(misc-no-recursion): a formula is as deep as its brackets
    Part part()
    {
        Part told;
        bool first = true;
        while (!ended()) {
            const Part next = piece();
            told.phrase = next.phrase && first && ended();
            told.says += told.phrase ? next.says : next.apart();
            first = first && next.says == QStringLiteral(" ");
        }
        told.says = told.says.trimmed();
        return told;
    }

private:
    [[nodiscard]] bool ended() const
    {
        return m_rest.empty() || m_rest.front() == ',' || m_rest.front() == ')';
    }
    char take()
    {
        const char c = m_rest.front();
        m_rest.remove_prefix(1);
        return c;
    }
    // NOLINTNEXTLINE(misc-no-recursion)
    Part piece()
    {
        if (m_rest.front() == '(')
            return {QStringLiteral("(%1)").arg(bracket().front().says)};
        if (!letter(m_rest.front()))
            return {sign(take())};
        std::string word;
        while (!m_rest.empty() && letter(m_rest.front()))
            word += take();
        if (!m_rest.empty() && m_rest.front() == '(')
            return worded(word, bracket());
        return {wordsOrCode(termWords(), word)};
    }
    /// What stands between two brackets, comma by comma.
    // NOLINTNEXTLINE(misc-no-recursion)
    std::vector<Part> bracket()
    {
        std::vector<Part> inside;
        do {
            take();
            inside.push_back(part());
        } while (!m_rest.empty() && m_rest.front() == ',');
        if (!m_rest.empty())
            take();
        return inside;
    }

    std::string_view m_rest;
};

} // namespace

QString sumInWords(const std::string &formula)
{
    return Sum(formula).part().says;
}

} // namespace matside
