// SPDX-License-Identifier: MIT
// What the program itself says of project files, for schemas.py to compare with.
//   matside-told                    for each line of standard input, a project file on one line, prints
//                                   {"problems": [{"at", "code"}], "plan": …} on one line
//   matside-told --random SEED N    prints N projects made by chance as the program writes them, one a line
#include "app/plancommand.h"
#include "project/codec.h"
#include "project/json.h"
#include "project/randomproject.h"

#include <QCoreApplication>
#include <QLocale>

#include <iostream>

namespace {

using matside::Json;
using matside::Layout;

Json told(const std::string &text)
{
    Json problems = Json::array();
    const auto read = matside::readProject(text);
    const auto add = [&](const matside::Problem &problem) {
        problems.push_back({{"at", problem.at}, {"code", problem.code}});
    };
    if (!read)
        add(read.error().problem);
    else
        for (const matside::Problem &problem : read.value().problems)
            add(problem);
    const matside::PlanAnswer answer = matside::planText(QByteArray::fromStdString(text));
    return {{"problems", std::move(problems)}, {"plan", Json::parse(answer.file.toStdString())}};
}

int makeByChance(std::uint64_t seed, int count)
{
    RandomProject random(seed);
    for (int i = 0; i < count; ++i) {
        const auto read = matside::readJson(matside::writeProject(random.project()));
        if (!read)
            return 1;
        std::cout << matside::writeJson(read.value(), Layout::OneLine) << '\n';
    }
    return 0;
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 4 && arguments[1] == QStringLiteral("--random"))
        return makeByChance(arguments[2].toULongLong(), arguments[3].toInt());
    std::string line;
    while (std::getline(std::cin, line))
        std::cout << told(line).dump(-1, ' ', false, Json::error_handler_t::replace) << '\n' << std::flush;
    return 0;
}
