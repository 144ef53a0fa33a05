// SPDX-License-Identifier: MIT
#pragma once

#include "app/photosource.h"

/// A source that does what it is told: serves a file, says nothing, refuses, vanishes.
class FakeSource : public matside::PhotoSource {
    Q_OBJECT
public:
    enum class Manner { Serves, Stalls, Refuses, Vanishes };
    Q_ENUM(Manner)
    explicit FakeSource(QObject *parent = nullptr) : PhotoSource(parent) {}

    void be(Manner manner, const QString &file = {})
    {
        m_manner = manner;
        m_file = file;
    }
    Q_INVOKABLE void plug(bool present, bool able = true) { setState(present, able); }
    /// The picture it was asked for long ago.
    void answerLate() { deliver(m_file, false); }
    Q_PROPERTY(int asked READ asked FINAL)
    int asked() const { return m_asked; }

protected:
    void take() override
    {
        ++m_asked;
        switch (m_manner) {
        case Manner::Serves:
            deliver(m_file, false);
            break;
        case Manner::Stalls:
            break;
        case Manner::Refuses:
            fail();
            break;
        case Manner::Vanishes:
            setState(false, false);
            break;
        }
    }

private:
    Manner m_manner = Manner::Serves;
    QString m_file;
    int m_asked = 0;
};
