// SPDX-License-Identifier: MIT
#include "app/sharing.h"

#include <QCoreApplication>
#include <QLocale>

#include <array>

namespace matside {

namespace {

struct Said {
    ShareCode code;
    const char *words; ///< %1: the name inside the file
};

constexpr std::array refusals{
    Said{ShareCode::CannotOpen, QT_TRANSLATE_NOOP("Sharing", "The file cannot be opened.")},
    Said{ShareCode::NotAnArchive,
         QT_TRANSLATE_NOOP("Sharing",
                           "This is no share file, or it is damaged. Ask for it to be sent once more.")},
    Said{ShareCode::NotAShare, QT_TRANSLATE_NOOP("Sharing", "This file does not come from Matside.")},
    Said{ShareCode::Newer,
         QT_TRANSLATE_NOOP("Sharing", "This file is from a newer Matside. A newer Matside will open it.")},
    Said{ShareCode::TooLarge, QT_TRANSLATE_NOOP("Sharing", "There is more in it than can be taken: %1")},
    Said{ShareCode::TooManyFiles,
         QT_TRANSLATE_NOOP("Sharing",
                           "There are more photographs in it than can be taken; 4000 is the most.")},
    Said{ShareCode::TooTight,
         QT_TRANSLATE_NOOP("Sharing",
                           "Something in it would swell up when unpacked, as no photograph does: %1")},
    Said{ShareCode::OutsidePath,
         QT_TRANSLATE_NOOP("Sharing", "Something in it would be written outside its own folder: %1")},
    Said{ShareCode::Link, QT_TRANSLATE_NOOP("Sharing", "Something in it is a link, not a file: %1")},
    Said{ShareCode::Locked, QT_TRANSLATE_NOOP("Sharing", "Something in it is locked with a password: %1")},
    Said{ShareCode::UnknownPacking,
         QT_TRANSLATE_NOOP("Sharing", "Something in it is packed in a way that is not known here: %1")},
    Said{ShareCode::DoubledFile, QT_TRANSLATE_NOOP("Sharing", "The same name stands in it twice. %1")},
    Said{ShareCode::StrayFile,
         QT_TRANSLATE_NOOP("Sharing", "Something is in it that does not belong there: %1")},
    Said{ShareCode::MissingFile,
         QT_TRANSLATE_NOOP("Sharing", "Something is missing in it: %1. Ask for it to be sent once more.")},
    Said{ShareCode::WrongHash,
         QT_TRANSLATE_NOOP("Sharing",
                           "Something in it was damaged or changed on the way: %1. Ask for it to be "
                           "sent once more.")},
    Said{ShareCode::BadManifest, QT_TRANSLATE_NOOP("Sharing", "Its list of contents cannot be read.")},
    Said{ShareCode::BadNotes, QT_TRANSLATE_NOOP("Sharing", "The notes in it cannot be read.")},
    Said{ShareCode::BadProject, QT_TRANSLATE_NOOP("Sharing", "The project in it cannot be read.")},
    Said{ShareCode::NotAPicture,
         QT_TRANSLATE_NOOP("Sharing", "A photograph in it is none, or is cut short: %1")},
    Said{ShareCode::Exists,
         QT_TRANSLATE_NOOP("Sharing", "There is a file of that name already, and it was left as it is.")},
    Said{ShareCode::NoPicture,
         QT_TRANSLATE_NOOP("Sharing", "A photograph of this project is missing or cannot be read: %1")},
    Said{ShareCode::Disk,
         QT_TRANSLATE_NOOP("Sharing",
                           "It could not be written: the disk is full, or the folder takes no files.")},
};

bool takenIn(ShareCode code)
{
    return code != ShareCode::Exists && code != ShareCode::NoPicture && code != ShareCode::Disk;
}

QString counted(qint64 number, const char *one, const char *many)
{
    return number == 1 ? QCoreApplication::translate("Sharing", one)
                       : QCoreApplication::translate("Sharing", many).arg(number);
}

QString notes(qint64 number)
{
    return number == 0 ? QCoreApplication::translate("Sharing", "no notes")
                       : counted(number, QT_TRANSLATE_NOOP("Sharing", "one note"),
                                 QT_TRANSLATE_NOOP("Sharing", "%1 notes"));
}

QString photographs(qint64 number, qint64 bytes)
{
    if (number == 0)
        return QCoreApplication::translate("Sharing", "no photographs");
    return counted(number, QT_TRANSLATE_NOOP("Sharing", "one photograph"),
                   QT_TRANSLATE_NOOP("Sharing", "%1 photographs")) +
           QStringLiteral(" (%1)").arg(QLocale().formattedDataSize(bytes, 1));
}

} // namespace

QString shareSentence(const ShareError &error)
{
    for (const Said &refusal : refusals) {
        if (refusal.code != error.code)
            continue;
        QString words = QCoreApplication::translate("Sharing", refusal.words);
        if (words.contains(QStringLiteral("%1")))
            words = words.arg(error.name);
        if (takenIn(error.code))
            words += u' ' + QCoreApplication::translate("Sharing", "Nothing of it was kept.");
        return words;
    }
    return {};
}

QStringList backupWords(const BackedUp &told)
{
    QStringList lines{counted(told.projects, QT_TRANSLATE_NOOP("Sharing", "one project"),
                              QT_TRANSLATE_NOOP("Sharing", "%1 projects")),
                      notes(told.notes), photographs(told.pictures - told.missing, told.bytes)};
    if (told.missing > 0)
        lines += counted(
            told.missing,
            QT_TRANSLATE_NOOP("Sharing", "one photograph was gone or damaged before and is not in it"),
            QT_TRANSLATE_NOOP("Sharing", "%1 photographs were gone or damaged before and are not in it"));
    return lines;
}

QStringList insideWords(const Inside &inside)
{
    QStringList lines{
        QCoreApplication::translate("Sharing", "%1 by %2 blocks").arg(inside.columns).arg(inside.rows)};
    lines += inside.blocksMade == 0
                 ? QCoreApplication::translate("Sharing", "no block made yet")
                 : counted(inside.blocksMade, QT_TRANSLATE_NOOP("Sharing", "one block made"),
                           QT_TRANSLATE_NOOP("Sharing", "%1 blocks made"));
    lines += notes(static_cast<qint64>(inside.parcel.notes.size()));
    lines += photographs(inside.pictures, inside.pictureBytes);
    if (const auto problems = static_cast<qint64>(inside.problems.size()); problems > 0)
        lines +=
            counted(problems, QT_TRANSLATE_NOOP("Sharing", "one thing in it cannot be read as it stands"),
                    QT_TRANSLATE_NOOP("Sharing", "%1 things in it cannot be read as they stand"));
    return lines;
}

} // namespace matside
