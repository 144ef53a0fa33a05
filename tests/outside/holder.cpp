// SPDX-License-Identifier: MIT
// matside-holder DIR NAME PICTURE…: makes a store with one project of that name and a note for each picture.
#include "project/codec.h"
#include "store/photonotes.h"

#include <QCoreApplication>
#include <QUuid>

using namespace matside;

namespace {

bool fill(Store &store, const QStringList &arguments)
{
    Project project = freshProject(System::Inch);
    project.name = arguments[2].toStdString();
    const QString document = QString::fromStdString(writeProject(project));
    const auto id = store.create(document);
    NoteBook book(store);
    for (qsizetype i = 3; id && i < arguments.size(); ++i) {
        const auto bytes = readPicture(arguments[i]);
        const auto kept = bytes ? book.folder().keep(bytes.value()) : PhotoResult<Photograph>(bytes.error());
        if (!kept)
            return false;
        Note note;
        note.id = QUuid::createUuid().toString(QUuid::WithoutBraces);
        note.block = QStringLiteral("A%1").arg(i - 2);
        note.faces[0] = kept.value();
        const CommandLabel label{QStringLiteral("edit"), QStringLiteral("stitch-block"),
                                 QStringLiteral("[]")};
        if (!book.log(id.value(), {label, document, document}, note))
            return false;
    }
    return id.ok();
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() < 3)
        return 1;
    const auto store = openStore(arguments[1]);
    return store && fill(*store.value(), arguments) ? 0 : 1;
}
