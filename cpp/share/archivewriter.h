// SPDX-License-Identifier: MIT
#pragma once

#include "share/sharefault.h"
#include "store/fault.h"

#include <QByteArray>
#include <QStringList>

#include <vector>

namespace matside {

/// Gathers what goes into a zip file and writes it at once. The same content gives the same bytes: no times,
/// no owner, nothing of the machine goes in.
class ArchiveWriter {
public:
    /// A text, deflated.
    void addText(const QString &name, const QByteArray &bytes);
    /// A file from the disk, stored as it is: photographs do not shrink.
    void addFile(const QString &name, const QString &path);

    /// Writes the file `path`, which must not be there, and flushes it. Code: Disk. What is half written is
    /// removed.
    [[nodiscard]] ShareResult<Done> write(const QString &path) const;

private:
    struct Item {
        QString name;
        QByteArray bytes;
        QString path; ///< empty: `bytes` are the content
    };
    std::vector<Item> m_items;
};

} // namespace matside
