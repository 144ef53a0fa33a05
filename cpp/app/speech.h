// SPDX-License-Identifier: MIT
#pragma once

#include "app/voice.h"

#include <QTextToSpeech>

#include <chrono>
#include <functional>
#include <memory>

namespace matside {

/// The voice of the tablet: the first of the speech engines installed that has a voice for the language.
/// Nothing is loaded before it is first asked for. An engine may wait for another program that never answers,
/// so each works on a thread of its own: one that has not answered in time is left alone for good, and the
/// tablet has no voice.
class Speech : public Voice {
public:
    /// Opens the engine for a language (two letters), null when there is none; called on the engine's thread.
    using Open = std::function<std::unique_ptr<QTextToSpeech>(const QString &language)>;

    Speech();
    Speech(Open open, std::chrono::milliseconds patience);
    ~Speech() override;

    [[nodiscard]] bool speaks(const QString &language) override;
    void say(const QString &text, const QString &language) override;
    [[nodiscard]] bool speaking() const override;
    void hush() override;

private:
    struct Booth;

    Open m_open;
    std::chrono::milliseconds m_patience;
    std::shared_ptr<Booth> m_booth; ///< none before a voice was asked for, nor after one did not answer
    QString m_language;             ///< the one that was last looked for
    bool m_found = false;
    bool m_silent = false; ///< an engine did not answer
};

} // namespace matside
