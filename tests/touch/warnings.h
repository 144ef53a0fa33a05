// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>
#include <QtGlobal>

namespace touching {

/// Hears every warning given while it lives and passes it on. One at a time.
class Warnings {
public:
    Warnings();
    Warnings(const Warnings &) = delete;
    Warnings &operator=(const Warnings &) = delete;
    ~Warnings();

    /// What was said since it was last asked.
    [[nodiscard]] QString taken();

private:
    static void hear(QtMsgType type, const QMessageLogContext &context, const QString &message);
    static Warnings *&listening();

    QtMessageHandler m_before = nullptr;
    QStringList m_heard;
};

} // namespace touching
