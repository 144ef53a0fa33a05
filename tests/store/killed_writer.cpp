// SPDX-License-Identifier: MIT
//
// Writes commands until it is killed: killed_writer FOLDER SEED. Says before each what it will do, and
// after each what the store has promised to hold.
#include "project/codec.h"
#include "store/store.h"

#include <QCoreApplication>

#include <cstdio>
#include <random>

using namespace matside;

namespace {

void say(const char *what, long long number)
{
    std::printf("%s %lld\n", what, number);
    std::fflush(stdout);
}

QString documentOf(std::int64_t number)
{
    Project project = freshProject(System::Inch);
    project.name = "Killed";
    project.slack = Length::ticks(number);
    return QString::fromStdString(writeProject(project));
}

/// Gives whether to go on.
bool step(Store &store, const QString &id, std::mt19937 &random, std::int64_t &number)
{
    const auto held = store.load(id);
    if (!held)
        return false;
    if (random() % 4 == 0) {
        say("undoing", 0);
        const auto undone = store.undo(id);
        if (undone)
            say("undone", undone.value().seq);
        return undone || undone.error().code == StoreCode::NothingLeft;
    }
    say("editing", ++number);
    const auto seq = store.applyEdit(
        id, {{QStringLiteral("edit"), QStringLiteral("slack")}, held.value(), documentOf(number)});
    if (seq)
        say("saved", seq.value());
    return seq.ok();
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 3)
        return 2;
    std::mt19937 random(QString::fromLocal8Bit(argv[2]).toUInt());
    auto store = openStore(QString::fromLocal8Bit(argv[1]));
    if (!store || store.value()->access() != Access::Full)
        return 3;
    const auto projects = store.value()->projects();
    if (!projects || projects.value().size() != 1)
        return 4;
    const QString id = projects.value().front().id;
    std::int64_t number = std::int64_t(random() % 1000) * 1000;
    while (step(*store.value(), id, random, number)) {
    }
    return 5;
}
