// SPDX-License-Identifier: MIT
#include "app/sharecommand.h"

#include "app/sharing.h"
#include "app/wording.h"

#include <QCommandLineParser>
#include <QStandardPaths>

#include <cstdio>

namespace matside {

namespace {

constexpr int done = 0;
constexpr int refused = 1;
constexpr int fileRefused = 2;
constexpr int toBeMended = 3;

int refuse(const QString &says, int code = refused)
{
    std::fprintf(stderr, "%s\n", qPrintable(says));
    return code;
}

int refuse(const ShareError &error)
{
    return refuse(QStringLiteral("%1 (%2)").arg(shareSentence(error), QLatin1String(nameOf(error.code))),
                  fileRefused);
}

void tell(const Inside &inside)
{
    std::printf("%s\n", qPrintable(inside.name));
    for (const QString &line : insideWords(inside))
        std::printf("  %s\n", qPrintable(line));
    for (const Problem &problem : inside.problems)
        std::printf("  %s (%s)\n", qPrintable(sentence(problem, inside.marks)), problem.at.c_str());
}

QString dirOf(const QCommandLineParser &options)
{
    const QString dir = options.value(QStringLiteral("data"));
    return dir.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) : dir;
}

StoreResult<std::unique_ptr<Store>> storeOf(const QCommandLineParser &options)
{
    return openStore(dirOf(options));
}

/// The project of an id, or the only one of a name; empty with the reason told.
QString projectOf(const Store &store, const QString &wanted)
{
    const auto rows = store.projects();
    if (!rows) {
        refuse(storeSentence(rows.error()));
        return {};
    }
    QStringList ids;
    for (const ProjectRow &row : rows.value()) {
        if (row.id == wanted)
            return row.id;
        if (row.name == wanted)
            ids += row.id;
    }
    if (ids.size() == 1)
        return ids.first();
    refuse(ids.isEmpty()
               ? QStringLiteral("No project \"%1\" is on the shelf.").arg(wanted)
               : QStringLiteral("There are several of that name; take one of: %1").arg(ids.join(u' ')));
    return {};
}

int share(const QCommandLineParser &options)
{
    const QStringList names = options.positionalArguments();
    if (names.size() != 1)
        return refuse(QStringLiteral("--share wants one project: its name or its id."));
    const auto store = storeOf(options);
    if (!store)
        return refuse(storeSentence(store.error()));
    const QString id = projectOf(*store.value(), names.first());
    if (id.isEmpty())
        return refused;
    const NoteBook book(*store.value());
    const auto parcel = gather(*store.value(), book, id);
    if (!parcel)
        return refuse(storeSentence(parcel.error()));
    const bool kept = options.isSet(QStringLiteral("as-they-came"));
    const QString path = options.value(QStringLiteral("share"));
    const auto written =
        writeShare(parcel.value(), book.folder(), path, kept ? Photographs::AsTheyCame : Photographs::Bare);
    if (!written)
        return refuse(written.error());
    (void)store.value()->sentOut(id, parcel.value().document);
    std::printf("%s\n", qPrintable(path));
    return done;
}

int lookOrOpen(const QCommandLineParser &options, bool open)
{
    const QString path = options.value(open ? QStringLiteral("open-shared") : QStringLiteral("look-inside"));
    const auto inside = lookInside(path);
    if (!inside)
        return refuse(inside.error());
    tell(inside.value());
    if (!open)
        return done;
    if (!inside.value().problems.empty())
        return refuse(QStringLiteral("This has to be mended first. Bring it in on the screen."), toBeMended);
    auto store = storeOf(options);
    if (!store)
        return refuse(storeSentence(store.error()));
    NoteBook book(*store.value());
    if (!book.canWrite())
        return refuse(storeSentence({StoreCode::ReadOnly, {}}));
    const auto notes = keepPictures(path, inside.value(), book.folder());
    if (!notes)
        return refuse(notes.error());
    const Parcel &parcel = inside.value().parcel;
    const auto id = book.bringIn(parcel.project, parcel.document, notes.value());
    if (!id)
        return refuse(storeSentence(id.error()));
    std::printf("%s\n", qPrintable(id.value()));
    return done;
}

void tell(const BackedUp &told)
{
    for (const QString &line : backupWords(told))
        std::printf("  %s\n", qPrintable(line));
}

int backUp(const QCommandLineParser &options)
{
    const auto store = storeOf(options);
    if (!store)
        return refuse(storeSentence(store.error()));
    const NoteBook book(*store.value());
    const QString path = options.value(QStringLiteral("back-up"));
    const auto copy = copyForBackup(*store.value(), path);
    if (!copy)
        return refuse(storeSentence(copy.error()));
    const auto written = writeBackup(copy.value(), book.folder(), path);
    if (!written)
        return refuse(written.error());
    std::printf("%s\n", qPrintable(path));
    tell(written.value());
    return done;
}

int restore(const QCommandLineParser &options)
{
    const QString dir = dirOf(options);
    {
        // Made when there is none, and held while it is looked at; another Matside may have it open.
        const auto store = openStore(dir);
        if (!store)
            return refuse(storeSentence(store.error()));
        if (!store.value()->canWrite())
            return refuse(storeSentence({StoreCode::ReadOnly, {}}));
        const auto rows = store.value()->projects();
        if (!rows || !rows.value().empty())
            return refuse(
                QStringLiteral("There are projects in %1 already. Restore into an empty folder.").arg(dir));
    }
    const auto staged = stageRestoring(options.value(QStringLiteral("restore")), dir);
    if (!staged)
        return refuse(staged.error());
    if (const auto finished = finishRestoring(dir); !finished)
        return refuse(finished.error());
    if (restoringWaits(dir))
        return refuse(QStringLiteral("Projects lay in %1 before. Restore into an empty folder.").arg(dir));
    const auto store = openStore(dir); // brings an older one up to date
    if (!store)
        return refuse(storeSentence(store.error()));
    tell(staged.value());
    return done;
}

} // namespace

int runShareCommand(const QStringList &arguments)
{
    QCommandLineParser options;
    for (const char *option : {"share", "look-inside", "open-shared", "back-up", "restore", "data"})
        options.addOption({QString::fromLatin1(option), {}, QStringLiteral("FILE")});
    options.addOption({QStringLiteral("as-they-came"), {}});
    if (!options.parse(arguments))
        return refuse(options.errorText());
    if (options.isSet(QStringLiteral("back-up")))
        return backUp(options);
    if (options.isSet(QStringLiteral("restore")))
        return restore(options);
    if (options.isSet(QStringLiteral("share")))
        return share(options);
    return lookOrOpen(options, options.isSet(QStringLiteral("open-shared")));
}

} // namespace matside
