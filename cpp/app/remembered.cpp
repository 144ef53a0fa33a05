// SPDX-License-Identifier: MIT
#include "app/remembered.h"

#include "app/blocklog.h"
#include "app/figures.h"
#include "app/wording.h"
#include "store/photonotes.h"

#include <QCoreApplication>

#include <algorithm>

namespace matside {

QString notedOf(Workspace &workspace, const std::string &block)
{
    const MadeBlock *made = workspace.project().made.goodBlock(block);
    if (made == nullptr || made->notes.empty())
        return {};
    const auto held = NoteBook(workspace.store()).notes(workspace.id(), toQt(block));
    if (!held)
        return {};
    QStringList flags;
    QString words;
    for (const Note &note : held.value()) {
        // One that was spoiled before it had the same name.
        const auto &own = made->notes;
        if (std::find(own.begin(), own.end(), note.id.toStdString()) == own.end())
            continue;
        for (const QString &flag : note.flags)
            if (const QString says = flagSays(flag); !flags.contains(says))
                flags.append(says);
        if (!note.words.trimmed().isEmpty())
            words = figuresWhole(note.words.simplified());
    }
    if (!words.isEmpty())
        flags.append(words);
    return flags.join(QStringLiteral("; "));
}

QString rememberedOf(Workspace &workspace, const std::string &block)
{
    const QString noted = notedOf(workspace, block);
    //: %1 is a block's name, "B2"; %2 is what was noted of it when it was stitched, "Pleat on the back"
    return noted.isEmpty() ? QString()
                           : QCoreApplication::translate("Words", "%1: %2").arg(toQt(block), noted);
}

} // namespace matside
