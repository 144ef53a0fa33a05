// SPDX-License-Identifier: MIT
#pragma once

#include "app/sharing.h"
#include "share/sharehelp.h"

namespace sharehelp {

/// A tablet: a store with what shares from it and brings in to it, and a folder for its files.
struct Desk {
    explicit Desk(bool filled) : home(filled), workspace(*home.store), session(workspace), keeper(home.book)
    {
        sharing.setDocuments(papers.path());
    }
    /// Waits until what was asked for is answered.
    [[nodiscard]] bool settled() const { return keeper.settle(20'000) && !sharing.busy(); }
    [[nodiscard]] QString paper(const QString &name) const { return papers.filePath(name); }

    Home home;
    QTemporaryDir papers;
    Workspace workspace;
    Session session;
    PhotoKeeper keeper;
    Sharing sharing{workspace, session, keeper};
};

} // namespace sharehelp
