// SPDX-License-Identifier: MIT
#pragma once

#include "app/shopmodel.h"
#include "bench/packages.h"

#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// Batting from the roll or by the package, beside each other: the sizes it is sold in are entered or picked
/// from usual ones; a press says which way it is bought.
class BattingModel : public QObject, public Single<BattingModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool known READ known NOTIFY listed FINAL)
    Q_PROPERTY(QString headSays READ headSays NOTIFY listed FINAL)
    Q_PROPERTY(QVariantList amounts READ amounts NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList ways READ ways NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap offered READ offered NOTIFY changed FINAL)
    Q_PROPERTY(double mostLengthMm READ mostLengthMm NOTIFY changed FINAL)
    Q_PROPERTY(double mostWidthMm READ mostWidthMm NOTIFY changed FINAL)
    Q_PROPERTY(QString verdictSays READ verdictSays NOTIFY changed FINAL)
    Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed FINAL)
    Q_PROPERTY(bool open WRITE setOpen READ open NOTIFY changed FINAL)
public:
    BattingModel(Workspace &workspace, Session &session, const ShopModel &shop);
    using Single<BattingModel>::create;

    /// The piece has batting of its own, and it is still to be bought.
    [[nodiscard]] bool known() const;
    /// "from the roll" or "2 packages".
    [[nodiscard]] QString headSays() const;
    /// The roll's width, and the package being entered: a usual size, its two sides, its price.
    [[nodiscard]] QVariantList amounts() const;
    /// {says, more, taken}: the roll first, then each package size; lengths in braces. And how it is drawn:
    /// {roll, count, strips, lengthMm, usableMm, lengthSays, widthSays}.
    [[nodiscard]] QVariantList ways() const;
    /// The package being entered, told and drawn like them; empty while it cannot be added.
    [[nodiscard]] QVariantMap offered() const;
    /// The longest and the widest of all that is drawn: they share one scale.
    [[nodiscard]] double mostLengthMm() const;
    [[nodiscard]] double mostWidthMm() const;
    /// Which way wastes least.
    [[nodiscard]] QString verdictSays() const;
    /// Why the size being entered cannot be added; empty when it can.
    [[nodiscard]] QString whyNot() const;
    [[nodiscard]] bool open() const { return m_open; }
    /// Only while it lies open is it reckoned.
    void setOpen(bool open);

    Q_INVOKABLE void nudge(const QString &key, int steps);
    /// {ok, says}
    Q_INVOKABLE QVariantMap enter(const QString &key, const QString &text);
    Q_INVOKABLE void pick(const QVariant &size);
    Q_INVOKABLE void add();
    /// Buys it this way: 0 the roll, then the package sizes.
    Q_INVOKABLE void take(int way);
    /// Takes all package sizes off the list again.
    Q_INVOKABLE void forget();

signals:
    void changed();
    /// What the piece has of batting: opening this does not change it.
    void listed();

private:
    void begin();
    void refresh();
    [[nodiscard]] const Cloth *batting() const;
    [[nodiscard]] Length *lengthOf(const QString &key);
    [[nodiscard]] QVariantMap rollWay() const;
    [[nodiscard]] QVariantMap packageWay(const PackageBuy &buy) const;
    [[nodiscard]] QVariantMap rollDrawn() const;
    [[nodiscard]] QVariantMap packageDrawn(const PackageBuy &buy) const;
    [[nodiscard]] double mostDrawn(const QString &side) const;
    void setRoll(Length width);

    Workspace &m_workspace;
    Session &m_session;
    const ShopModel &m_shop;
    std::optional<BattingChoice> m_choice;
    Length m_length;
    Length m_width;
    std::int64_t m_price = 0; ///< hundredths; 0: not said
    bool m_open = false;
};

} // namespace matside
