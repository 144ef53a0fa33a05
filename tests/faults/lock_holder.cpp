// SPDX-License-Identifier: MIT
//
// Another program that holds the file of a store until its input ends: lock_holder FILE [alone]. Alone, it
// lets nobody read either.
#include "store/database.h"

#include <QCoreApplication>

#include <cstdio>

using namespace matside;

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    if (argc < 2)
        return 2;
    Database database;
    if (!database.open(QString::fromLocal8Bit(argv[1]), Database::Mode::Write))
        return 3;
    if (argc > 2 && !database.run(QStringLiteral("PRAGMA locking_mode = EXCLUSIVE")))
        return 4;
    if (!database.run(QStringLiteral("BEGIN EXCLUSIVE")))
        return 5;
    std::puts("held");
    std::fflush(stdout);
    while (std::getchar() != EOF) {
    }
    return 0;
}
