// SPDX-License-Identifier: MIT
#pragma once

#include "app/session.h"
#include "app/views.h"

#include <QStringList>
#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// Cloth she has already: pieces and remnants of the listed cloths, cut up before any is bought.
class StockModel : public QObject, public Single<StockModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString headSays READ headSays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList amounts READ amounts NOTIFY changed FINAL)
    Q_PROPERTY(QStringList pieces READ pieces NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap remnant READ remnant NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList drawn READ drawn NOTIFY changed FINAL)
    Q_PROPERTY(double mostLengthMm READ mostLengthMm NOTIFY changed FINAL)
    Q_PROPERTY(double mostWidthMm READ mostWidthMm NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList figures READ figures NOTIFY changed FINAL)
    Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed FINAL)
    Q_PROPERTY(QString addText READ addText NOTIFY changed FINAL)
public:
    StockModel(Workspace &workspace, Session &session);
    using Single<StockModel>::create;

    /// "2 pieces"; empty when there is none.
    [[nodiscard]] QString headSays() const;
    /// The piece being entered: which cloth (its choices with {print, colour}), its length, its width.
    [[nodiscard]] QVariantList amounts() const;
    /// What is there, piece by piece.
    [[nodiscard]] QStringList pieces() const;
    /// The piece being entered as it is drawn: {print, colour, lengthMm, widthMm, lengthSays, widthSays,
    /// roomLengthMm, roomWidthMm}, the last two what of its cloth is drawn at the least, so that a small
    /// piece looks small.
    [[nodiscard]] QVariantMap remnant() const;
    /// {print, colour, lengthMm, widthMm} of each of `pieces`, and the most of either side.
    [[nodiscard]] QVariantList drawn() const;
    [[nodiscard]] double mostLengthMm() const;
    [[nodiscard]] double mostWidthMm() const;
    /// "18 × 40 1/2" of each of `pieces`, its lengths in braces.
    [[nodiscard]] QVariantList figures() const;
    /// Why the piece being entered cannot be added; empty when it can.
    [[nodiscard]] QString whyNot() const;
    /// What adding it does: a cloth that is not listed at Fit is listed with it.
    [[nodiscard]] QString addText() const;

    Q_INVOKABLE void nudge(const QString &key, int steps);
    /// The corner of the piece being entered is drawn so far: to the nearest step of its sides.
    Q_INVOKABLE void dragTo(double lengthMm, double widthMm);
    /// {ok, says}
    Q_INVOKABLE QVariantMap enter(const QString &key, const QString &text);
    Q_INVOKABLE void pick(const QString &cloth);
    Q_INVOKABLE void add();
    /// Takes a piece away again, by its place in `pieces`.
    Q_INVOKABLE void takeAway(int row);

signals:
    void changed();

private:
    void begin();
    /// Every cloth the piece is cut from, the listed ones first.
    [[nodiscard]] std::vector<std::string> cloths() const;
    /// The one picked; before that the first of them.
    [[nodiscard]] std::string chosen() const;
    [[nodiscard]] double mostDrawn(const QString &side) const;
    [[nodiscard]] Length *lengthOf(const QString &key);

    Workspace &m_workspace;
    Session &m_session;
    std::string m_cloth;
    Length m_length;
    Length m_width;
};

} // namespace matside
