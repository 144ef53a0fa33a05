// SPDX-License-Identifier: MIT
//
// Logs photographs until it is killed: killed_photographer FOLDER SEED. Says after each step what has been
// promised to be there.
#include "project/codec.h"
#include "store/photohelp.h"

#include <QCoreApplication>

#include <cstdio>

using namespace matside;
using namespace photohelp;

namespace {

void say(const char *what, const QString &which)
{
    std::printf("%s %s\n", what, qPrintable(which));
    std::fflush(stdout);
}

QString documentOf(std::int64_t number)
{
    Project project = freshProject(System::Inch);
    project.name = "Killed";
    project.slack = Length::ticks(number);
    return QString::fromStdString(writeProject(project));
}

std::optional<Photograph> taken(NoteBook &book, const QString &id, const QString &block, Face face,
                                std::mt19937 &random)
{
    const auto kept = book.folder().keep(encoded(picture(quint32(random()), {96, 64})));
    if (!kept || !book.keepDraft(id, block, face, kept.value()))
        return std::nullopt;
    say("drafted", kept.value().sha);
    return kept.value();
}

/// One block from the first photograph to the note; gives whether to go on.
bool logOne(Store &store, NoteBook &book, const QString &id, std::mt19937 &random)
{
    const QString block = QStringLiteral("A%1").arg(1 + random() % 6);
    const auto front = taken(book, id, block, Face::Front, random);
    if (!front)
        return false;
    std::optional<Photograph> back;
    if (random() % 2 == 0 && !(back = taken(book, id, block, Face::Back, random)))
        return false;
    const auto held = store.load(id);
    if (!held)
        return false;
    const Note note = noteOf(block, front, back);
    const QString after = documentOf(std::int64_t(random() % 1'000'000));
    say("logging", note.id);
    if (!book.log(
            id, {{QStringLiteral("edit"), QStringLiteral("log"), QStringLiteral("[]")}, held.value(), after},
            note))
        return false;
    say("logged", note.id);
    if (random() % 8 != 0)
        return true;
    say("undoing", note.id);
    if (!store.undo(id))
        return false;
    say("undone", note.id);
    return true;
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
    NoteBook book(*store.value());
    if (!book.forgetUnused() || !sweepPhotographs(QString::fromLocal8Bit(argv[1])))
        return 5;
    while (logOne(*store.value(), book, projects.value().front().id, random)) {
    }
    return 6;
}
