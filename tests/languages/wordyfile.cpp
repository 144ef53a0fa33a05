// SPDX-License-Identifier: MIT
#include "wordy.h"

#include <QFile>

#include <cstdio>

/// wordyfile IN.ts OUT.ts: the same messages, each lengthened.
int main(int argc, char **argv)
{
    QFile in(argc == 3 ? QString::fromLocal8Bit(argv[1]) : QString());
    QFile out(argc == 3 ? QString::fromLocal8Bit(argv[2]) : QString());
    if (in.open(QIODevice::ReadOnly) && out.open(QIODevice::WriteOnly)) {
        const QByteArray longer = languages::lengthenedFile(in.readAll());
        if (!longer.isEmpty() && out.write(longer) == longer.size())
            return 0;
    }
    std::fprintf(stderr, "wordyfile needs a translation file and a place for the longer one.\n");
    return 1;
}
