// SPDX-License-Identifier: MIT
#include "share/archivereader.h"

#include <QFile>
#include <QFileInfo>
#include <QSet>

#include <limits>
#include <optional>

#include <zip.h>

namespace matside {

namespace {

constexpr qsizetype endRecord = 22; ///< the end of a zip file's directory, without a comment
constexpr qsizetype locatorRecord = 20;
constexpr qsizetype largeRecord = 56;
constexpr qint64 longestName = 200; ///< bytes
constexpr qint64 directoryPerFile = 46 + 2 * longestName;
constexpr unsigned kindMask = 0170000; ///< of a Unix mode: what kind of file it is
constexpr unsigned plainFile = 0100000;
constexpr unsigned folderKind = 0040000;

/// The directory as the last bytes of the file tell it, read before anything is reserved for what it claims.
struct Directory {
    qint64 files = 0;
    qint64 bytes = 0;
    qint64 at = 0;
    qint64 end = 0; ///< where the records after it begin
};

qint64 little(const QByteArray &record, qsizetype at, int bytes)
{
    quint64 value = 0;
    for (int i = bytes - 1; i >= 0; --i)
        value = (value << 8U) | static_cast<unsigned char>(record[at + i]);
    return value > quint64(std::numeric_limits<qint64>::max()) ? -1 : static_cast<qint64>(value);
}

QByteArray readAt(QFile &file, qint64 at, qsizetype bytes)
{
    return at >= 0 && file.seek(at) ? file.read(bytes) : QByteArray();
}

/// The 64-bit record of a large file (4.3.14, 4.3.15): its locator stands right before the end record.
std::optional<Directory> largeDirectory(QFile &file, qint64 size)
{
    const qint64 locatorAt = size - endRecord - locatorRecord;
    const QByteArray locator = readAt(file, locatorAt, locatorRecord);
    if (locator.size() != locatorRecord || !locator.startsWith("PK\x06\x07"))
        return std::nullopt;
    const qint64 at = little(locator, 8, 8);
    const QByteArray record = readAt(file, at, largeRecord);
    if (record.size() != largeRecord || !record.startsWith("PK\x06\x06") || at + largeRecord != locatorAt)
        return std::nullopt;
    return Directory{little(record, 32, 8), little(record, 40, 8), little(record, 48, 8), at};
}

/// A zip file of ours ends with its end record: neither a comment nor a second directory hides behind it.
ShareResult<Directory> directoryOf(const QString &path, const ArchiveReader::Bounds &bounds)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.isSequential())
        return ShareError{ShareCode::CannotOpen, {}, file.errorString()};
    const qint64 size = file.size();
    if (size > bounds.bytes)
        return ShareError{ShareCode::TooLarge, {}, QString::number(size)};
    const QByteArray record = readAt(file, size - endRecord, endRecord);
    if (record.size() != endRecord || !record.startsWith("PK\x05\x06"))
        return ShareError{ShareCode::NotAnArchive, {}, QStringLiteral("no end of a directory")};
    Directory told{little(record, 10, 2), little(record, 12, 4), little(record, 16, 4), size - endRecord};
    const bool plain =
        little(record, 4, 4) == 0 && little(record, 8, 2) == told.files && little(record, 20, 2) == 0;
    if (const auto large = largeDirectory(file, size))
        told = *large;
    if (told.files > bounds.files)
        return ShareError{ShareCode::TooManyFiles, {}, QString::number(told.files)};
    const bool fits = plain && told.files >= 0 && told.bytes >= 0 &&
                      told.bytes <= told.files * directoryPerFile && told.at >= 0 && told.at <= size &&
                      told.at + told.bytes == told.end;
    if (!fits)
        return ShareError{ShareCode::NotAnArchive, {}, QStringLiteral("the directory does not fit")};
    return told;
}

bool pointsOutside(const QByteArray &name)
{
    const QList<QByteArray> steps = name.split('/');
    const bool drive = name.size() > 1 && name[1] == ':';
    return name.isEmpty() || name.startsWith('/') || name.contains('\\') || drive || steps.contains("..") ||
           steps.contains(".");
}

/// Letters that a name in a share file has: nothing else needs to be told apart or shown.
bool plainName(const QByteArray &name)
{
    return name.size() <= longestName && std::all_of(name.begin(), name.end(), [](char letter) {
               return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') ||
                      (letter >= '0' && letter <= '9') || letter == '.' || letter == '-' || letter == '_' ||
                      letter == '/';
           });
}

/// What shows a name from outside safely: its plain letters, the rest as marks.
QString shown(const QByteArray &name)
{
    QString text = QString::fromUtf8(name.left(longestName));
    for (QChar &letter : text)
        if (!letter.isPrint())
            letter = u'?';
    return text;
}

/// The mode of a file made on Unix; 0 of any other.
unsigned modeOf(zip *archive, zip_uint64_t index)
{
    zip_uint8_t system = 0;
    zip_uint32_t attributes = 0;
    if (zip_file_get_external_attributes(archive, index, 0, &system, &attributes) != 0)
        return 0;
    return system == ZIP_OPSYS_UNIX || system == ZIP_OPSYS_OS_X ? attributes >> 16U : 0;
}

ShareResult<bool> checkKind(const QByteArray &name, const zip_stat_t &stat, unsigned mode,
                            const ArchiveReader::Bounds &bounds)
{
    if (pointsOutside(name))
        return ShareError{ShareCode::OutsidePath, shown(name), {}};
    if (!plainName(name))
        return ShareError{ShareCode::StrayFile, shown(name), {}};
    const unsigned kind = mode & kindMask;
    if (kind != 0 && kind != (name.endsWith('/') ? folderKind : plainFile))
        return ShareError{ShareCode::Link, shown(name), QString::number(mode, 8)};
    if ((stat.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && stat.encryption_method != ZIP_EM_NONE)
        return ShareError{ShareCode::Locked, shown(name), {}};
    if (stat.comp_method != ZIP_CM_STORE && stat.comp_method != ZIP_CM_DEFLATE)
        return ShareError{ShareCode::UnknownPacking, shown(name), QString::number(stat.comp_method)};
    const bool bounded =
        stat.size <= zip_uint64_t(bounds.bytes) && stat.comp_size <= zip_uint64_t(bounds.bytes);
    if (!bounded)
        return ShareError{ShareCode::TooLarge, shown(name), QString::number(stat.size)};
    // Texts are bounded closely and may shrink as they like.
    const bool large = stat.size > zip_uint64_t(bounds.text);
    if (large && stat.size / zip_uint64_t(sharelimits::tightness) > stat.comp_size)
        return ShareError{ShareCode::TooTight, shown(name), QString::number(stat.size)};
    return true;
}

} // namespace

ShareResult<std::unique_ptr<ArchiveReader>> ArchiveReader::open(const QString &path, const Bounds &bounds)
{
    const auto directory = directoryOf(path, bounds);
    if (!directory)
        return directory.error();
    int fault = 0;
    zip *archive = zip_open(QFile::encodeName(path).constData(), ZIP_RDONLY | ZIP_CHECKCONS, &fault);
    if (!archive)
        return ShareError{fault == ZIP_ER_EXISTS ? ShareCode::DoubledFile : ShareCode::NotAnArchive,
                          {},
                          QStringLiteral("code %1").arg(fault)};
    std::unique_ptr<ArchiveReader> reader(new ArchiveReader(archive, bounds));
    if (zip_get_num_entries(archive, 0) != directory.value().files)
        return ShareError{ShareCode::NotAnArchive, {}, QStringLiteral("another directory")};
    if (const auto looked = reader->lookOver(QFileInfo(path).size()); !looked)
        return looked.error();
    return reader;
}

ArchiveReader::~ArchiveReader()
{
    zip_discard(m_archive);
}

ShareResult<bool> ArchiveReader::lookOver(qint64 fileSize)
{
    QSet<QString> names;
    qint64 unpacked = 0;
    qint64 packed = 0;
    const zip_int64_t count = zip_get_num_entries(m_archive, 0);
    for (zip_uint64_t index = 0; index < static_cast<zip_uint64_t>(count); ++index) {
        zip_stat_t stat;
        zip_stat_init(&stat);
        constexpr zip_uint64_t wanted = ZIP_STAT_SIZE | ZIP_STAT_COMP_SIZE | ZIP_STAT_COMP_METHOD;
        const char *name = zip_get_name(m_archive, index, ZIP_FL_ENC_RAW);
        if (!name || zip_stat_index(m_archive, index, 0, &stat) != 0 || (stat.valid & wanted) != wanted)
            return ShareError{ShareCode::NotAnArchive, {}, QStringLiteral("entry %1").arg(index)};
        if (auto kind = checkKind(name, stat, modeOf(m_archive, index), m_bounds); !kind)
            return kind;
        const QString told = QString::fromLatin1(name);
        if (names.contains(told.toLower()))
            return ShareError{ShareCode::DoubledFile, told, {}};
        names.insert(told.toLower());
        unpacked += static_cast<qint64>(stat.size);
        packed += static_cast<qint64>(stat.comp_size);
        if (unpacked > m_bounds.bytes)
            return ShareError{ShareCode::TooLarge, told, QString::number(unpacked)};
        // Files that lie over one another unpack to more than the archive holds.
        if (packed > fileSize)
            return ShareError{ShareCode::NotAnArchive, told, QStringLiteral("files overlap")};
        m_entries.push_back({told, static_cast<qint64>(stat.size)});
    }
    return true;
}

const ArchiveReader::Entry *ArchiveReader::entry(const QString &name) const
{
    for (const Entry &entry : m_entries)
        if (entry.name == name)
            return &entry;
    return nullptr;
}

ShareResult<QByteArray> ArchiveReader::read(const QString &name, qint64 most) const
{
    const Entry *held = entry(name);
    if (!held)
        return ShareError{ShareCode::MissingFile, name, {}};
    if (held->bytes > most)
        return ShareError{ShareCode::TooLarge, name, QString::number(held->bytes)};
    const auto index = static_cast<zip_uint64_t>(held - m_entries.data());
    zip_file_t *file = zip_fopen_index(m_archive, index, 0);
    if (!file)
        return ShareError{ShareCode::WrongHash, name, QString::fromUtf8(zip_strerror(m_archive))};
    // One byte more than it says it has: a longer one is found out, and its checksum is looked at.
    QByteArray bytes;
    constexpr qsizetype piece = qsizetype{1} << 18U;
    zip_int64_t got = 1;
    while (got > 0 && bytes.size() <= held->bytes) {
        const qsizetype before = bytes.size();
        bytes.resize(before + std::min<qsizetype>(piece, held->bytes - before + 1));
        got = zip_fread(file, bytes.data() + before, static_cast<zip_uint64_t>(bytes.size() - before));
        bytes.resize(before + std::max<qsizetype>(got, 0));
    }
    zip_fclose(file);
    if (got < 0 || bytes.size() != held->bytes)
        return ShareError{ShareCode::WrongHash, name, QStringLiteral("%1 bytes").arg(bytes.size())};
    return bytes;
}

} // namespace matside
