// SPDX-License-Identifier: MIT
#pragma once

#include "app/voice.h"

#include <QTextToSpeech>

#include <memory>

namespace matside {

/// The voice of the tablet: the first of the speech engines installed that has a voice for the language.
/// Nothing is loaded before it is first asked for.
class Speech : public Voice {
public:
    [[nodiscard]] bool speaks(const QString &language) override;
    void say(const QString &text, const QString &language) override;
    [[nodiscard]] bool speaking() const override;
    void hush() override;

private:
    std::unique_ptr<QTextToSpeech> m_engine;
    QString m_language; ///< the one that was last looked for
};

} // namespace matside
