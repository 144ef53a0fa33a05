// SPDX-License-Identifier: MIT
#include "share/archivereader.h"

#include <QFile>
#include <QFileInfo>
#include <QSet>
#include <QtEndian>

#include <zip.h>

namespace matside {

namespace {

constexpr qsizetype endRecord = 22; ///< the end of a zip file's directory, without a comment
constexpr qint64 longestName = 200; ///< bytes
constexpr qint64 directoryPerFile = 46 + 2 * longestName;
constexpr unsigned kindMask = 0170000; ///< of a Unix mode: what kind of file it is
constexpr unsigned plainFile = 0100000;
constexpr unsigned folder = 0040000;

/// What the last bytes of the file say, read before anything is reserved for what they claim.
struct End {
    qint64 files = 0;
};

/// A zip file of ours ends with its end record: neither a comment nor a second directory hides behind it.
ShareResult<End> endOf(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.isSequential())
        return ShareError{ShareCode::CannotOpen, {}, file.errorString()};
    const qint64 size = file.size();
    if (size > sharelimits::bytes)
        return ShareError{ShareCode::TooLarge, {}, QString::number(size)};
    if (size < endRecord || !file.seek(size - endRecord))
        return ShareError{ShareCode::NotAnArchive, {}, QStringLiteral("too short")};
    const QByteArray record = file.read(endRecord);
    if (record.size() != endRecord || !record.startsWith("PK\x05\x06"))
        return ShareError{ShareCode::NotAnArchive, {}, QStringLiteral("no end of a directory")};
    const auto half = [&](qsizetype at) { return qFromLittleEndian<quint16>(record.constData() + at); };
    const auto whole = [&](qsizetype at) {
        return qint64{qFromLittleEndian<quint32>(record.constData() + at)};
    };
    const qint64 files = half(10);
    if (files > sharelimits::files)
        return ShareError{ShareCode::TooManyFiles, {}, QString::number(files)};
    const bool fits = half(4) == 0 && half(6) == 0 && half(8) == files && half(20) == 0 &&
                      whole(12) <= files * directoryPerFile && whole(16) + whole(12) == size - endRecord;
    if (!fits)
        return ShareError{ShareCode::NotAnArchive, {}, QStringLiteral("the directory does not fit")};
    return End{files};
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

ShareResult<bool> checkKind(const QByteArray &name, const zip_stat_t &stat, unsigned mode)
{
    if (pointsOutside(name))
        return ShareError{ShareCode::OutsidePath, shown(name), {}};
    if (!plainName(name))
        return ShareError{ShareCode::StrayFile, shown(name), {}};
    const unsigned kind = mode & kindMask;
    if (kind != 0 && kind != (name.endsWith('/') ? folder : plainFile))
        return ShareError{ShareCode::Link, shown(name), QString::number(mode, 8)};
    if ((stat.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && stat.encryption_method != ZIP_EM_NONE)
        return ShareError{ShareCode::Locked, shown(name), {}};
    if (stat.comp_method != ZIP_CM_STORE && stat.comp_method != ZIP_CM_DEFLATE)
        return ShareError{ShareCode::UnknownPacking, shown(name), QString::number(stat.comp_method)};
    const bool bounded =
        stat.size <= zip_uint64_t(sharelimits::bytes) && stat.comp_size <= zip_uint64_t(sharelimits::bytes);
    if (!bounded)
        return ShareError{ShareCode::TooLarge, shown(name), QString::number(stat.size)};
    // Texts are bounded closely and may shrink as they like.
    const bool large = stat.size > zip_uint64_t(sharelimits::text);
    if (large && stat.size / zip_uint64_t(sharelimits::tightness) > stat.comp_size)
        return ShareError{ShareCode::TooTight, shown(name), QString::number(stat.size)};
    return true;
}

} // namespace

ShareResult<std::unique_ptr<ArchiveReader>> ArchiveReader::open(const QString &path)
{
    const auto end = endOf(path);
    if (!end)
        return end.error();
    int fault = 0;
    zip *archive = zip_open(QFile::encodeName(path).constData(), ZIP_RDONLY | ZIP_CHECKCONS, &fault);
    if (!archive)
        return ShareError{fault == ZIP_ER_EXISTS ? ShareCode::DoubledFile : ShareCode::NotAnArchive,
                          {},
                          QStringLiteral("code %1").arg(fault)};
    std::unique_ptr<ArchiveReader> reader(new ArchiveReader(archive));
    if (zip_get_num_entries(archive, 0) != end.value().files)
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
        if (auto kind = checkKind(name, stat, modeOf(m_archive, index)); !kind)
            return kind;
        const QString told = QString::fromLatin1(name);
        if (names.contains(told.toLower()))
            return ShareError{ShareCode::DoubledFile, told, {}};
        names.insert(told.toLower());
        unpacked += static_cast<qint64>(stat.size);
        packed += static_cast<qint64>(stat.comp_size);
        if (unpacked > sharelimits::bytes)
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
