// SPDX-License-Identifier: MIT
#pragma once

#include "share/manifest.h"
#include "share/parcel.h"
#include "share/unpacking.h"
#include "store/photohelp.h"
#include "store/storehelp.h"

#include <QDirIterator>

/// Stores with photographs, and what lies on the disk, for the tests of sharing.
namespace sharehelp {

using namespace matside;
using namespace photohelp;
using namespace storehelp;

template <class T> QByteArray codeOf(const ShareResult<T> &result)
{
    return result ? QByteArray() : QByteArray(nameOf(result.error().code));
}

/// A store with one project that has something made, notes and photographs.
struct Home {
    explicit Home(bool filled) : store(opened(dir.path()))
    {
        if (filled)
            fill();
    }

    void fill()
    {
        QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
        if (!file.open(QIODevice::ReadOnly))
            qFatal("no example");
        QByteArray text = file.readAll();
        text.replace("\"kits\": 1\n",
                     R"("kits": 1, "made": {"blocks": [{"block": "A1", "strip": 1, "place": 1,
            "state": "trimmed", "notes": ["a knot"]}], "later": [1.50, null]}
            )");
        document = QString::fromUtf8(text);
        id = got(store->create(document));
        const QByteArray jpeg = encoded(picture(1, {320, 240}));
        log(noteOf(u"A1"_qs, keep(turned(jpeg, 6)), keep(encoded(picture(2, {200, 300}), "png"))));
        Note words = noteOf(u"A2"_qs, keep(turned(jpeg, 6))); // the same photograph once more
        words.words = u"“pulled” thread, caught with ½ in\n"_qs;
        words.flags = {u"pleat"_qs, u"thread"_qs};
        log(words);
        Note step;
        step.id = QUuid::createUuid().toString(QUuid::WithoutBraces);
        step.step = u"join-row"_qs;
        step.words = u"pressed open"_qs;
        log(step);
    }
    std::optional<Photograph> keep(const QByteArray &bytes)
    {
        auto kept = book.folder().keep(bytes);
        return kept ? std::optional(kept.value()) : std::nullopt;
    }
    void log(const Note &note) { got(book.log(id, edit(document, document), note)); }
    [[nodiscard]] Parcel parcel() const { return got(gather(*store, book, id)); }
    /// Written into `to`; the answer's code, empty when it was written.
    QByteArray share(const QString &to, Photographs as = Photographs::Bare) const
    {
        return codeOf(writeShare(parcel(), book.folder(), to, as));
    }
    /// Brought in here; the id of the new project.
    QString bringIn(const QString &from)
    {
        const auto inside = lookInside(from);
        if (!inside)
            return QString();
        const auto notes = keepPictures(from, inside.value(), book.folder());
        if (!notes)
            return QString();
        return got(
            book.bringIn(inside.value().parcel.project, inside.value().parcel.document, notes.value()));
    }

    QTemporaryDir dir;
    std::unique_ptr<Store> store;
    NoteBook book{*store};
    QString id;
    QString document;
};

/// Every file below a folder with the SHA-256 of its bytes; without the marks SQLite keeps of who is reading.
inline QMap<QString, QString> everything(const QString &dir)
{
    QMap<QString, QString> all;
    QDirIterator entries(dir, QDir::Files | QDir::Hidden | QDir::System, QDirIterator::Subdirectories);
    while (entries.hasNext()) {
        const QString path = entries.next();
        if (path.endsWith(u"-shm"_qs))
            continue;
        all[QDir(dir).relativeFilePath(path)] = photohelp::shaOf(bytesOf(path));
    }
    return all;
}

} // namespace sharehelp
