// SPDX-License-Identifier: MIT
#pragma once

#include "app/language.h"
#include "app/spokenwords.h"
#include "app/stepmodel.h"
#include "app/trimmodel.h"
#include "app/voice.h"

namespace matside {

/// Reads the step at hand out. Off unless she chose it; then when she asks, or at each new step. Where a
/// blade is in the hand nothing is read by itself, unless she asked at that very step: then its next
/// repetitions are read too.
class Aloud : public QObject, public Single<Aloud> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// "off", "asked" or "each".
    Q_PROPERTY(QString when READ when WRITE setWhen NOTIFY changed FINAL)
    /// Whether there is a voice for her language; looked for only once reading is not off.
    Q_PROPERTY(bool voiced READ voiced NOTIFY changed FINAL)
    /// Whether a page shows the target that reads out.
    Q_PROPERTY(bool offered READ offered NOTIFY changed FINAL)
public:
    struct Reads {
        StepModel &steps;
        TrimModel &trim;
        Session &session;
        Language &language;
    };
    Aloud(Workspace &workspace, const Reads &reads, Voice &voice);
    using Single<Aloud>::create;

    [[nodiscard]] QString when() const { return m_when; }
    void setWhen(const QString &when);
    [[nodiscard]] bool voiced() const;
    [[nodiscard]] bool offered() const { return m_when != QStringLiteral("off") && voiced(); }
    /// Speaks by another voice than the one it was made with.
    void speakBy(Voice &voice);
    /// What would be said of the step at hand now.
    [[nodiscard]] QString words() const;

    /// She asks for it; asked again while it is being said, it is hushed.
    Q_INVOKABLE void say();
    Q_INVOKABLE void hush();

signals:
    void changed();

private:
    void follow();
    void speak();
    /// The step at hand; null away from a station of steps.
    [[nodiscard]] const Step *atHand() const;

    Workspace &m_workspace;
    Reads m_reads;
    Voice *m_voice;
    QString m_when = QStringLiteral("off");
    std::string m_askedAt; ///< the step she asked at
    QString m_shown;       ///< what stood there when it last changed
};

} // namespace matside
