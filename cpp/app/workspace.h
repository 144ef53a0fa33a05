// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"
#include "store/store.h"

#include <QObject>

#include <functional>
#include <memory>

namespace matside {

/// The project that lies open: its document in the store, what follows from it, and the one way of changing
/// it. A change is in the store before changed() tells the screen. Not for QML: the models stand between.
class Workspace : public QObject {
    Q_OBJECT
public:
    explicit Workspace(Store &store);

    [[nodiscard]] Store &store() { return m_store; }
    [[nodiscard]] const QString &id() const { return m_id; }
    [[nodiscard]] bool isOpen() const { return !m_id.isEmpty(); }
    /// What is shown: while a drag lasts, the project as dragged.
    [[nodiscard]] const Project &project() const { return m_shown; }
    [[nodiscard]] const Plan &plan() const { return m_plan; }
    [[nodiscard]] const std::vector<Step> &steps() const;

    bool open(const QString &id);
    void close();
    /// Saves a changed project as one command; nothing is shown unless it was saved. `about` is what it was
    /// done to (a step's id).
    bool commit(const char *code, const Project &next, const std::string &about = {});
    /// Saves a changed document (an offer taken on its text).
    bool commitText(const char *code, const std::string &document, const std::string &about = {});
    /// As commit(), saved by `save` in place of the store's applyEdit(): for what is written together with
    /// the edit. It is a command even when the project stays as it is.
    using Save = std::function<StoreResult<std::int64_t>(const Command &)>;
    bool commitBy(const char *code, const Project &next, const std::string &about, const Save &save);
    /// What the last command still standing was done to; empty when it was not told.
    [[nodiscard]] std::string lastAbout() const;
    /// Shows a project as it would be, without saving.
    void preview(const Project &next);
    /// Nothing is changed, but all of it is to be worded anew.
    void reword() { emit changed(); }
    /// The same for something only looked at: settling takes it back, whoever asks for it.
    void glance(const Project &next);
    [[nodiscard]] bool previewing() const { return m_previewing; }
    /// Saves what is previewed, or takes it back when nothing came of it.
    bool settle(const char *code);
    bool undo();
    [[nodiscard]] QString document() const { return m_document; }
    /// What in the document could not be read. While there is any, nothing but its remedies is saved: a
    /// project written over it would lose what was not understood.
    [[nodiscard]] const std::vector<Problem> &faults() const { return m_faults; }
    /// The document as previewed or saved, for looking at offers.
    [[nodiscard]] std::string shownText() const;

signals:
    void changed();
    void opened();
    /// Why something could not be saved.
    void failed(const QString &says);

private:
    void take(const QString &document);
    void fail(const StoreError &error);
    void replan();
    [[nodiscard]] bool refusedForFaults();
    bool write(const char *code, const std::string &document, const std::string &about, const Save &save);

    Store &m_store;
    QString m_id;
    QString m_document;
    Project m_saved;
    Project m_shown;
    Plan m_plan;
    std::vector<Problem> m_faults;
    mutable std::vector<Step> m_steps;
    mutable bool m_stepsFresh = false;
    bool m_previewing = false;
    bool m_glancing = false;
};

/// The project in a document of the store; a bare one when it cannot be read.
[[nodiscard]] Project projectIn(const QString &document);

/// Plain words for why the store refused, with what can be done.
[[nodiscard]] QString storeSentence(const StoreError &error);

} // namespace matside
