// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace matside {

/// Something that can say a text. Nothing is waited for, and nothing is said of what cannot be spoken.
class Voice {
public:
    Voice() = default;
    Voice(const Voice &) = delete;
    Voice &operator=(const Voice &) = delete;
    virtual ~Voice() = default;

    /// Whether there is a voice for this language (two letters). May look for one the first time.
    [[nodiscard]] virtual bool speaks(const QString &language) = 0;
    /// Says it in place of whatever is being said.
    virtual void say(const QString &text, const QString &language) = 0;
    /// Whether something is being said now.
    [[nodiscard]] virtual bool speaking() const = 0;
    virtual void hush() = 0;
};

} // namespace matside
