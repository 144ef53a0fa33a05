// SPDX-License-Identifier: MIT
#include "share/archivewriter.h"

#include "store/files.h"

#include <QFile>

#include <zip.h>

namespace matside {

namespace {

/// 1 January 1980: the first day a zip file knows.
constexpr zip_uint16_t noTime = 0;
constexpr zip_uint16_t noDay = (1U << 5U) | 1U;

} // namespace

void ArchiveWriter::addText(const QString &name, const QByteArray &bytes)
{
    m_items.push_back({name, bytes, {}});
}

void ArchiveWriter::addFile(const QString &name, const QString &path)
{
    m_items.push_back({name, {}, path});
}

ShareResult<Done> ArchiveWriter::write(const QString &path) const
{
    int fault = 0;
    zip_t *archive = zip_open(QFile::encodeName(path).constData(), ZIP_CREATE | ZIP_EXCL, &fault);
    if (!archive)
        return ShareError{ShareCode::Disk, path, QStringLiteral("code %1").arg(fault)};
    const auto failed = [&](const QString &name) {
        ShareError error{ShareCode::Disk, name, QString::fromUtf8(zip_strerror(archive))};
        zip_discard(archive);
        QFile::remove(path);
        return error;
    };
    for (const Item &item : m_items) {
        zip_source_t *source =
            item.path.isEmpty() ? zip_source_buffer(archive, item.bytes.constData(),
                                                    static_cast<zip_uint64_t>(item.bytes.size()), 0)
                                : zip_source_file(archive, QFile::encodeName(item.path).constData(), 0, -1);
        if (!source)
            return failed(item.name);
        const zip_int64_t index =
            zip_file_add(archive, item.name.toLatin1().constData(), source, ZIP_FL_ENC_UTF_8);
        if (index < 0) {
            zip_source_free(source);
            return failed(item.name);
        }
        const auto place = static_cast<zip_uint64_t>(index);
        const zip_int32_t packing = item.path.isEmpty() ? ZIP_CM_DEFLATE : ZIP_CM_STORE;
        if (zip_set_file_compression(archive, place, packing, 0) != 0 ||
            zip_file_set_dostime(archive, place, noTime, noDay, 0) != 0)
            return failed(item.name);
    }
    if (zip_close(archive) != 0)
        return failed({});
    if (!flushedFile(path)) {
        QFile::remove(path);
        return ShareError{ShareCode::Disk, {}, QStringLiteral("not flushed")};
    }
    return Done{};
}

} // namespace matside
