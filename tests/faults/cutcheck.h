// SPDX-License-Identifier: MIT
#pragma once

#include "faults/disk/model.h"

#include <QMap>
#include <QString>

/// What must hold of the stores after a power cut.
namespace powercut {

/// The folder before the worker begins: "shelf" is not there, "old" holds a store of the first version, and
/// "other" one whose program was killed, with nothing in it but the demo.
struct Scene {
    disk::Disk before;
    QMap<QByteArray, QByteArray> sums; ///< of each store, once it is opened
    QByteArray oldest;                 ///< sum of the first version's own rows
};
[[nodiscard]] Scene sceneIn(const QString &root);

/// What lies in the folder and is not in the record, or is in the record and not in the folder; empty when
/// they agree. Of files that were mapped nothing is known.
[[nodiscard]] QString missedBy(const Scene &scene, const std::vector<disk::Event> &events,
                               const QString &root);

/// What had been shown as saved at an instant, and what was about to be.
class Promises {
public:
    Promises(const Scene &scene, const std::vector<disk::Event> &events);
    void hear(const disk::Event &event);

    /// The sums a store may have now.
    [[nodiscard]] QList<QByteArray> allowed(const QByteArray &folder) const;
    /// Files that were got out, and their SHA-256.
    [[nodiscard]] const QMap<QString, QByteArray> &files() const { return m_files; }
    [[nodiscard]] const Scene &scene() const { return m_scene; }

private:
    const Scene &m_scene;
    QMap<QByteArray, QByteArray> m_last;
    QMap<QByteArray, QList<QByteArray>> m_next;
    QMap<QString, QByteArray> m_files;
};

/// What is wrong after a cut, with what was got out and with these stores, in words; empty when nothing is.
/// Counts the stores it opened.
[[nodiscard]] QString faultAfterCut(const QString &root, const Promises &promises,
                                    const QByteArrayList &folders, int &opened);

} // namespace powercut
