// SPDX-License-Identifier: MIT
#include "share/manifest.h"

#include "length/read.h"
#include "project/json.h"
#include "share/archivereader.h"

#include <QCryptographicHash>
#include <QRegularExpression>
#include <QUuid>

#include <set>

namespace matside {

namespace {

constexpr std::int64_t newestVersion = 1;
constexpr std::size_t longestCode = 200; ///< bytes of a flag or an id
constexpr std::size_t longestPlace = 2000;
constexpr std::size_t mostFlags = 100;

std::string_view textOf(const QByteArray &bytes)
{
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

QByteArray written(const Json &json)
{
    return QByteArray::fromStdString(writeJson(json, Layout::Indented)) + '\n';
}

/// The JSON of a text within bounds that suit so many notes or files.
Result<Json, Problem> parsed(const QByteArray &text, const ArchiveReader::Bounds &most = {})
{
    JsonBounds bounds;
    bounds.bytes = static_cast<std::size_t>(most.text);
    bounds.depth = 8;
    bounds.values = 2'000'000;
    bounds.children = static_cast<std::size_t>(std::max(most.files, sharelimits::notes));
    return readJson(textOf(text), bounds);
}

/// The value under a key, or nullptr; of anything but an object nullptr.
const Json *valueAt(const Json &object, const char *key)
{
    if (!object.is_object())
        return nullptr;
    for (const auto &[name, value] : object.get_ref<const Json::object_t &>())
        if (name == key)
            return &value;
    return nullptr;
}

const std::string *stringAt(const Json &object, const char *key)
{
    const Json *held = valueAt(object, key);
    return held ? held->get_ptr<const std::string *>() : nullptr;
}

const Json *listAt(const Json &object, const char *key)
{
    const Json *held = valueAt(object, key);
    return held && held->is_array() ? held : nullptr;
}

const char *formatOf(ManifestKind kind)
{
    return kind == ManifestKind::Share ? "matside-share" : "matside-backup";
}

bool isSha(const std::string &text)
{
    return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

ShareError badManifest(const char *why)
{
    return {ShareCode::BadManifest, sharenames::manifest, QString::fromLatin1(why)};
}
ShareError badNotes(std::size_t number, const char *why)
{
    return {ShareCode::BadNotes, sharenames::notes,
            QStringLiteral("note %1: %2").arg(number).arg(QLatin1String(why))};
}

/// A text of the note, bounded; an absent one is empty. False: something else stands there.
bool take(const Json &object, const char *key, std::size_t most, QString &to)
{
    if (!valueAt(object, key))
        return true;
    const std::string *held = stringAt(object, key);
    if (!held || held->size() > most)
        return false;
    to = QString::fromStdString(*held);
    return true;
}

bool takeFlags(const Json &object, QStringList &flags)
{
    if (!valueAt(object, "flags"))
        return true;
    const Json *held = listAt(object, "flags");
    if (!held || held->size() > mostFlags)
        return false;
    for (const Json &flag : *held) {
        const auto *text = flag.get_ptr<const std::string *>();
        if (!text || text->size() > longestCode)
            return false;
        flags.append(QString::fromStdString(*text));
    }
    return true;
}

bool takeFace(const Json &object, const char *key, std::optional<Photograph> &face)
{
    QString name;
    if (!take(object, key, longestCode, name))
        return false;
    if (!name.isEmpty())
        face = pictureOf(name);
    return name.isEmpty() || face.has_value();
}

/// A UUID as the store writes them.
bool isId(const QString &text)
{
    const QUuid id(text);
    return !id.isNull() && id.toString(QUuid::WithoutBraces) == text;
}

/// One file of the manifest's list.
ShareResult<Done> listFile(const Json &file, Manifest &manifest, qint64 most)
{
    const std::string *name = stringAt(file, "name");
    const std::string *sha = stringAt(file, "sha256");
    const Json *bytes = valueAt(file, "bytes");
    if (!name || !sha || !isSha(*sha) || !bytes || !bytes->is_number_unsigned())
        return badManifest("a file without name, size or hash");
    const auto size = bytes->get<std::uint64_t>();
    const QString told = QString::fromStdString(*name);
    if (size > static_cast<std::uint64_t>(most))
        return ShareError{ShareCode::TooLarge, told, QString::number(size)};
    const Manifest::File held{static_cast<qint64>(size), QByteArray::fromStdString(*sha)};
    if (!manifest.files.emplace(told, held).second)
        return ShareError{ShareCode::DoubledFile, told, QStringLiteral("in the manifest")};
    return Done{};
}

/// SHA-256 of earlier documents; a list that older programs neither write nor look at.
bool takePast(const Json &json, QStringList &past)
{
    if (!valueAt(json, "past"))
        return true;
    const Json *held = listAt(json, "past");
    if (!held || held->size() > static_cast<std::size_t>(mostPast))
        return false;
    for (const Json &sha : *held) {
        const auto *text = sha.get_ptr<const std::string *>();
        if (!text || !isSha(*text))
            return false;
        past.append(QString::fromStdString(*text));
    }
    return true;
}

bool isLength(const QString &text)
{
    return text.isEmpty() || readLength(text.toStdString(), System::Inch).ok();
}

ShareResult<Note> noteIn(const Json &object, std::size_t number)
{
    Note note;
    if (!object.is_object())
        return badNotes(number, "no object");
    const bool texts =
        take(object, "id", longestCode, note.id) && take(object, "block", longestPlace, note.block) &&
        take(object, "step", longestPlace, note.step) &&
        take(object, "words", JsonBounds().text, note.words) &&
        take(object, "along", longestCode, note.along) && take(object, "across", longestCode, note.across);
    if (!texts)
        return badNotes(number, "a text that is none, or too long");
    if (!isId(note.id))
        return badNotes(number, "no id");
    if (note.block.isEmpty() == note.step.isEmpty())
        return badNotes(number, "neither of a block nor of a step, or of both");
    if (!isLength(note.along) || !isLength(note.across))
        return badNotes(number, "no length");
    if (!takeFlags(object, note.flags))
        return badNotes(number, "flags");
    if (!takeFace(object, "front", note.faces[0]) || !takeFace(object, "back", note.faces[1]))
        return badNotes(number, "a face that names no photograph");
    return note;
}

} // namespace

QByteArray shaOf(const QByteArray &bytes)
{
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex();
}

ShareResult<QByteArray> readListed(const ArchiveReader &archive, const Manifest &manifest,
                                   const QString &name, qint64 most)
{
    auto bytes = archive.read(name, most);
    if (!bytes)
        return bytes;
    const auto listed = manifest.files.find(name);
    if (listed == manifest.files.end() || shaOf(bytes.value()) != listed->second.sha)
        return ShareError{ShareCode::WrongHash, name, {}};
    return bytes;
}

QString pictureName(const Photograph &photo)
{
    return sharenames::folder + photo.sha + u'.' + photo.format;
}

std::optional<Photograph> pictureOf(const QString &name)
{
    static const QRegularExpression form(
        QStringLiteral("\\Aphotographs/([0-9a-f]{64})\\.([a-z][a-z0-9]{1,9})\\z"));
    const auto match = form.match(name);
    if (!match.hasMatch())
        return std::nullopt;
    return Photograph{match.captured(1), match.captured(2), 0, {}};
}

QByteArray writeManifest(const Manifest &manifest, ManifestKind kind)
{
    Json files = Json::array();
    for (const auto &[name, file] : manifest.files)
        files.push_back(
            {{"name", name.toStdString()}, {"bytes", file.bytes}, {"sha256", file.sha.toStdString()}});
    Json json = {{"format", formatOf(kind)}, {"version", newestVersion}};
    if (kind == ManifestKind::Share)
        json["project"] = manifest.project.toStdString();
    for (const QString &sha : manifest.past)
        json["past"].push_back(sha.toStdString());
    json["files"] = std::move(files);
    return written(json);
}

ShareResult<Manifest> readManifest(const QByteArray &text, ManifestKind kind)
{
    const ArchiveReader::Bounds bounds = kind == ManifestKind::Share ? ArchiveReader::Bounds() : backupBounds;
    const auto read = parsed(text, bounds);
    if (!read)
        return badManifest(read.error().code.c_str());
    const Json &json = read.value();
    const std::string *format = stringAt(json, "format");
    if (!format || *format != formatOf(kind))
        return ShareError{ShareCode::NotAShare, sharenames::manifest, {}};
    const Json *version = valueAt(json, "version");
    if (!version || !isNumber(*version))
        return badManifest("version");
    if (numberValue(*version) > double(newestVersion))
        return ShareError{ShareCode::Newer, sharenames::manifest,
                          QString::fromStdString(numberText(*version))};
    if (!version->is_number_integer() || *version != newestVersion)
        return badManifest("version");
    Manifest manifest;
    const std::string *project = stringAt(json, "project");
    manifest.project = project ? QString::fromStdString(*project) : QString();
    if (kind == ManifestKind::Share && !isId(manifest.project))
        return badManifest("project");
    if (kind == ManifestKind::Share && !takePast(json, manifest.past))
        return badManifest("past");
    const Json *files = listAt(json, "files");
    if (!files)
        return badManifest("files");
    if (files->size() > static_cast<std::size_t>(bounds.files))
        return ShareError{ShareCode::TooManyFiles, sharenames::manifest, QString::number(files->size())};
    for (const Json &file : *files)
        if (const auto listed = listFile(file, manifest, bounds.bytes); !listed)
            return listed.error();
    return manifest;
}

QByteArray writeNotes(const std::vector<Note> &notes)
{
    Json all = Json::array();
    for (const Note &note : notes) {
        Json one = {{"id", note.id.toStdString()}};
        const auto put = [&](const char *key, const QString &text) {
            if (!text.isEmpty())
                one[key] = text.toStdString();
        };
        put("block", note.block);
        put("step", note.step);
        put("words", note.words);
        for (const QString &flag : note.flags)
            one["flags"].push_back(flag.toStdString());
        put("along", note.along);
        put("across", note.across);
        put("front", note.faces[0] ? pictureName(*note.faces[0]) : QString());
        put("back", note.faces[1] ? pictureName(*note.faces[1]) : QString());
        all.push_back(std::move(one));
    }
    return written({{"notes", std::move(all)}});
}

ShareResult<std::vector<Note>> readNotes(const QByteArray &text)
{
    const auto read = parsed(text);
    if (!read)
        return ShareError{ShareCode::BadNotes, sharenames::notes, QString::fromStdString(read.error().code)};
    const Json *list = listAt(read.value(), "notes");
    if (!list || list->size() > static_cast<std::size_t>(sharelimits::notes))
        return badNotes(0, "no list");
    std::vector<Note> notes;
    std::set<QString> ids;
    for (const Json &held : *list) {
        auto note = noteIn(held, notes.size() + 1);
        if (!note)
            return note.error();
        if (!ids.insert(note.value().id).second)
            return badNotes(notes.size() + 1, "an id twice");
        notes.push_back(std::move(note).value());
    }
    return notes;
}

} // namespace matside
