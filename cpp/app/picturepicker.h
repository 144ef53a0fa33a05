// SPDX-License-Identifier: MIT
#pragma once

#include "app/photosource.h"

#include <QAbstractListModel>
#include <QDir>

namespace matside {

/// The pictures of one folder, newest first, after its folders; nothing else is listed, and nothing outside
/// the folder it began with. At most 500 rows.
class PictureFolder : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to PicturePicker")
    Q_PROPERTY(int count READ count NOTIFY listed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY listed FINAL)
    Q_PROPERTY(bool canGoUp READ canGoUp NOTIFY listed FINAL)
public:
    enum Role { Name = Qt::UserRole + 1, Picture, IsFolder };
    static constexpr int rowsShown = 500;

    explicit PictureFolder(const QString &root, QObject *parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    /// The folder's own name.
    [[nodiscard]] QString title() const;
    [[nodiscard]] bool canGoUp() const;

    /// Lists the folder as it is now.
    Q_INVOKABLE void refresh();
    Q_INVOKABLE void goUp();
    /// Opens a folder of the list. Gives the picture's path when the row is a picture.
    QString open(int row);

signals:
    void listed();

private:
    struct Entry {
        QString name;
        QString path;
        bool folder = false;
    };
    QString m_root;
    QString m_here;
    std::vector<Entry> m_rows;
};

/// A picture that is there already. Choosing is the taking.
class PicturePicker : public PhotoSource {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made with the log of blocks")
    Q_PROPERTY(matside::PictureFolder *folder READ folder CONSTANT FINAL)
public:
    /// `root`: the folder of pictures; empty for the system's own.
    explicit PicturePicker(const QString &root = {}, QObject *parent = nullptr);
    [[nodiscard]] PictureFolder *folder() { return &m_folder; }
    /// Takes the picture of a row, or opens its folder.
    Q_INVOKABLE void choose(int row);

protected:
    void take() override;

private:
    PictureFolder m_folder;
    QString m_chosen;
};

} // namespace matside
