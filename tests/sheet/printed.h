// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QImage>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include <set>
#include <vector>

namespace matside {

/// A PDF as Poppler's programs read it: a reader of its own, not the library that wrote it.
class Printed {
public:
    explicit Printed(QString path) : m_path(std::move(path)) {}

    /// A printed word and where it stands, in millimetres from the page's top left.
    struct Word {
        int page = 0;
        QRectF place;
        QString text;
    };

    [[nodiscard]] int pages() const;
    [[nodiscard]] QSizeF pageMm() const;
    /// All text in the order it was set, white space of every kind as single spaces.
    [[nodiscard]] QString text() const;
    [[nodiscard]] std::vector<Word> words() const;
    /// Name, and whether it is embedded ("yes"), of every font.
    [[nodiscard]] std::vector<QStringList> fonts() const;
    /// A page in grey at so many dots to the inch.
    [[nodiscard]] QImage page(int number, int dpi) const;

private:
    QString m_path;
};

/// Every length in a text, as it is written: "a scant 5/16 in", "12.5 mm".
[[nodiscard]] std::set<QString> lengthsIn(const QString &text);

/// Runs a program and gives what it printed; empty when it failed.
[[nodiscard]] QByteArray printedBy(const QString &program, const QStringList &arguments);

} // namespace matside
