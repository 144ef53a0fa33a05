// SPDX-License-Identifier: MIT
//
// The battery, in folders as the kernel lays them out (Documentation/ABI/testing/sysfs-class-power).
#include "app/power.h"
#include "desk.h"

#include "testing.h"

using namespace matside;

namespace {

/// A folder of power supplies.
class Supplies {
public:
    void put(const char *supply, const char *file, const QString &text) const
    {
        QVERIFY(QDir(m_folder.path()).mkpath(QLatin1String(supply)));
        QFile out(m_folder.filePath(QLatin1String(supply) + QLatin1Char('/') + QLatin1String(file)));
        QVERIFY(out.open(QIODevice::WriteOnly));
        out.write(text.toUtf8() + '\n');
    }
    void battery(const char *name, int percent, const char *status, const char *full = nullptr) const
    {
        put(name, "type", QStringLiteral("Battery"));
        put(name, "capacity", QString::number(percent));
        put(name, "status", QLatin1String(status));
        if (full)
            put(name, "energy_full", QLatin1String(full));
    }
    void mains(bool online) const
    {
        put("AC", "type", QStringLiteral("Mains"));
        put("AC", "online", online ? QStringLiteral("1") : QStringLiteral("0"));
    }
    [[nodiscard]] QString path() const { return m_folder.path(); }

private:
    QTemporaryDir m_folder;
};

} // namespace

class PowerTest : public QObject {
    Q_OBJECT

private slots:
    void noBattery();
    void oneBattery();
    void twoBatteriesWeighed();
    void aMouseDoesNotCount();
    void unreadable();
    void oneQuietLine();
    void nothingNewIsBegun();
};

void PowerTest::noBattery()
{
    QVERIFY(!chargeIn(QStringLiteral("nowhere")));
    Supplies supplies;
    QVERIFY(!chargeIn(supplies.path()));
    supplies.mains(true);
    QVERIFY(!chargeIn(supplies.path()));
}

void PowerTest::oneBattery()
{
    Supplies supplies;
    supplies.battery("BAT0", 14, "Discharging");
    supplies.mains(false);
    QCOMPARE(chargeIn(supplies.path()), (Charge{14, false}));
    supplies.mains(true);
    QCOMPARE(chargeIn(supplies.path()), (Charge{14, true}));
    supplies.mains(false);
    supplies.battery("BAT0", 14, "Charging");
    QCOMPARE(chargeIn(supplies.path()), (Charge{14, true}));
}

void PowerTest::twoBatteriesWeighed()
{
    Supplies supplies;
    supplies.battery("BAT0", 10, "Discharging", "30000000");
    supplies.battery("BAT1", 50, "Unknown", "10000000");
    // (10 × 30 + 50 × 10) / 40
    QCOMPARE(chargeIn(supplies.path()), (Charge{20, false}));
    supplies.put("BAT1", "energy_full", QStringLiteral("?"));
    QCOMPARE(chargeIn(supplies.path()), (Charge{30, false}));
}

void PowerTest::aMouseDoesNotCount()
{
    Supplies supplies;
    supplies.battery("hidpp_battery_0", 3, "Discharging");
    supplies.put("hidpp_battery_0", "scope", QStringLiteral("Device"));
    QVERIFY(!chargeIn(supplies.path()));
}

void PowerTest::unreadable()
{
    Supplies supplies;
    supplies.put("BAT0", "type", QStringLiteral("Battery"));
    QVERIFY(!chargeIn(supplies.path()));
    supplies.put("BAT0", "capacity", QStringLiteral("full of sorrow"));
    QVERIFY(!chargeIn(supplies.path()));
    supplies.battery("BAT0", 400, "Discharging");
    QCOMPARE(chargeIn(supplies.path())->percent, 100.0);
}

void PowerTest::oneQuietLine()
{
    desk::Open open(desk::topper(), Station::Cut);
    Supplies supplies;
    Power power(open.session, supplies.path());
    power.watch();
    QVERIFY(open.session.notice().isEmpty());
    const auto at = [&](int percent, const char *status) {
        open.session.dismissNotice();
        supplies.battery("BAT0", percent, status);
        power.look();
        return open.session.notice();
    };
    QVERIFY(at(15, "Discharging").isEmpty());
    QVERIFY(at(14, "Discharging").contains(QStringLiteral("low")));
    QVERIFY(at(13, "Discharging").isEmpty());
    QVERIFY(at(13, "Charging").isEmpty());
    QVERIFY(!at(13, "Discharging").isEmpty());
    QVERIFY(!power.spent());
}

void PowerTest::nothingNewIsBegun()
{
    desk::Open open(desk::topper(), Station::Cut);
    Supplies supplies;
    Power power(open.session, supplies.path());
    QSignalSpy changed(&power, &Power::changed);
    supplies.battery("BAT0", 5, "Discharging");
    power.look();
    QVERIFY(!power.spent() && power.says().isEmpty());
    supplies.battery("BAT0", 4, "Discharging");
    power.look();
    QVERIFY(power.spent() && !power.says().isEmpty());
    QVERIFY(open.session.notice().contains(QStringLiteral("saved")));
    QCOMPARE(changed.size(), 1);
    // What is in hand may be finished: the step is still taken and kept.
    QVERIFY(open.steps.canGoNext());
    open.steps.next();
    QVERIFY(open.kept().made.started());
    supplies.mains(true);
    power.look();
    QVERIFY(!power.spent());
    QCOMPARE(changed.size(), 2);
}

QTEST_GUILESS_MAIN(PowerTest)
#include "tst_power.moc"
