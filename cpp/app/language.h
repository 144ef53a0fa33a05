// SPDX-License-Identifier: MIT
#pragma once

#include "app/single.h"
#include "store/store.h"

#include <QTranslator>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace matside {

/// The words in force for the whole program: those of the source (English), or a translation of them. While
/// it lives its translation stays installed; numbers and dates follow the language.
class Spoken {
public:
    /// The languages there are, by their two letters; English comes first.
    [[nodiscard]] static QStringList known();
    /// The first of the system's languages that is known, or English.
    [[nodiscard]] static QString ofSystem();
    /// Takes a language of known(); false, and nothing changed, for any other.
    bool speak(const QString &code);
    [[nodiscard]] const QString &code() const { return m_code; }

private:
    QTranslator m_words;
    QString m_code;
};

/// Whether lengths are read in millimetres by custom where this is read: wherever that is not in English.
[[nodiscard]] bool metricIsTheCustom();

/// The language she reads: the one asked for, or the one she chose before, or the system's.
class Language : public QObject, public Single<Language> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString code READ code WRITE setCode NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList choices READ choices CONSTANT FINAL)
    Q_PROPERTY(bool metricFirst READ metricFirst NOTIFY changed FINAL)
public:
    /// `asked` is of the command line; what is not known there is passed over.
    explicit Language(Store &store, const QString &asked = {});
    using Single<Language>::create;

    [[nodiscard]] QString code() const { return m_spoken.code(); }
    void setCode(const QString &code);
    /// {value, says}: each language by its own name.
    [[nodiscard]] QVariantList choices() const;
    /// Whether a new piece is first offered in millimetres.
    [[nodiscard]] bool metricFirst() const { return metricIsTheCustom(); }

signals:
    /// Every word and every number on the screen is to be told anew.
    void changed();

private:
    Store &m_store;
    Spoken m_spoken;
};

} // namespace matside
