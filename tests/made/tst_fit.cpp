// SPDX-License-Identifier: MIT
//
// The fit against a general-purpose library: Eigen's Levenberg–Marquardt on all eight coordinates, with the
// three free motions left to its damping.
#include "madehelp.h"

#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wshadow"
#pragma GCC diagnostic ignored "-Wconversion"
#pragma GCC diagnostic ignored "-Wold-style-cast"
#include <Eigen/Dense>
#include <unsupported/Eigen/NonLinearOptimization>
#include <unsupported/Eigen/NumericalDiff>
#pragma GCC diagnostic pop

using namespace matside;
using namespace madehelp;

namespace {

/// Six weighted residuals of eight coordinates, in inches; two rows of nothing make it square.
struct Residuals {
    using Scalar = double;
    using InputType = Eigen::VectorXd;
    using ValueType = Eigen::VectorXd;
    using JacobianType = Eigen::MatrixXd;
    static constexpr int InputsAtCompileTime = Eigen::Dynamic;
    static constexpr int ValuesAtCompileTime = Eigen::Dynamic;

    Six read{};
    Six near{};
    [[nodiscard]] int inputs() const { return 8; }
    [[nodiscard]] int values() const { return 8; }
    int operator()(const Eigen::VectorXd &x, Eigen::VectorXd &out) const
    {
        static constexpr int ends[6][2] = {{0, 1}, {1, 2}, {2, 3}, {3, 0}, {0, 2}, {1, 3}};
        out.setZero();
        for (int i = 0; i < 6; ++i) {
            const double far = (x.segment<2>(2 * ends[i][1]) - x.segment<2>(2 * ends[i][0])).norm();
            out[i] = (read[std::size_t(i)] - far) / near[std::size_t(i)];
        }
        return 0;
    }
};

Eigen::VectorXd solved(const Residuals &residuals, const Eigen::VectorXd &start)
{
    Eigen::NumericalDiff<Residuals, Eigen::Central> slopes(residuals);
    Eigen::LevenbergMarquardt<Eigen::NumericalDiff<Residuals, Eigen::Central>> solver(slopes);
    solver.parameters.ftol = solver.parameters.xtol = 1e-14;
    solver.parameters.maxfev = 4000;
    Eigen::VectorXd x = start;
    solver.minimize(x);
    return x;
}

} // namespace

class FitTest : public QObject {
    Q_OBJECT
private slots:
    void agreesWithEigen();
    void leavingOneOutMeetsTheOthers();
    void quickAndExactCheckAgreeNearARectangle();
    void oblongsAreCheckedAlikeBothWays();
    void determinantAndDisagreementAreOneCheck();
    void readingsThatAreNone();
    void farFetchedReadingsSettle();
};

// F23 | general-purpose library | Eigen: the fit of six readings by its own least squares
void FitTest::agreesWithEigen()
{
    Chance chance(seed(20261125));
    double worst = 0;
    for (int i = 0; i < count(200); ++i) {
        const double w = chance.between(3, 12), h = chance.between(3, 12);
        std::array<std::array<double, 2>, 4> moved{};
        for (auto &corner : moved)
            corner = {chance.normal(0.15), chance.normal(0.15)};
        Readings read = readOff(block(w, h, chance.normal(0.2), moved));
        for (std::size_t k = 0; k < 6; ++k)
            (k < 4 ? read.sides[k] : read.diagonals[k - 4]) += inch(chance.normal(0.05));
        // Two rulers: the diagonals are read on a coarser one.
        const Precision precision{in(0, 1, 32), in(0, 1, chance.coin() ? 16 : 32)};
        const Fit fit = fitTo(read, precision);
        QVERIFY(fit.settled);
        Residuals residuals;
        const Six six = inTicks(read);
        for (std::size_t k = 0; k < 6; ++k) {
            residuals.read[k] = asInches(six[k]);
            residuals.near[k] = (k < 4 ? precision.side : precision.diagonal).asInches();
        }
        Eigen::VectorXd start(8);
        start << 0, 0, w, 0, w, h, 0, h;
        const Eigen::VectorXd x = solved(residuals, start);
        Eigen::VectorXd left(8);
        residuals(x, left);
        QVERIFY2(std::abs(left.norm() - fit.misfit) < 1e-7 * (1 + fit.misfit),
                 qPrintable(QStringLiteral("%1 and %2").arg(left.norm()).arg(fit.misfit)));
        for (std::size_t k = 0; k < 6; ++k)
            worst = std::max(worst,
                             std::abs(left[Eigen::Index(k)] * residuals.near[k] - asInches(fit.residual[k])));
    }
    qInfo("residuals agree with Eigen's to %.1e in", worst);
    QVERIFY(worst < 1e-5);
}

void FitTest::leavingOneOutMeetsTheOthers()
{
    const Readings read = readings(6, 6.0625, 5.9375, 6, 8.5, 8.625);
    for (std::size_t i = 0; i < 6; ++i) {
        const Fit fit = fitWithout(read, halfMark(in(0, 1, 16)), i);
        QVERIFY(fit.settled);
        for (std::size_t k = 0; k < 6; ++k)
            if (k != i)
                QVERIFY2(std::abs(fit.residual[k]) < 1e-3, qPrintable(QString::number(fit.residual[k])));
    }
}

void FitTest::quickAndExactCheckAgreeNearARectangle()
{
    Chance chance(seed(4));
    double worst = 0;
    for (int i = 0; i < count(2000); ++i) {
        const double w = chance.between(5, 9);
        Readings read = readOff(block(w, w, chance.between(-0.2, 0.2)));
        for (std::size_t k = 0; k < 6; ++k)
            (k < 4 ? read.sides[k] : read.diagonals[k - 4]) += inch(chance.between(-1.0 / 32, 1.0 / 32));
        const Fit fit = fitTo(read, halfMark(in(0, 1, 16)));
        worst = std::max(worst, std::abs(quickCheck(inTicks(read)) - fit.disagreement));
    }
    qInfo("K's quick and exact forms differ by %.4f in at most", asInches(worst));
    QVERIFY(asInches(worst) < 1.0 / 256);
}

void FitTest::oblongsAreCheckedAlikeBothWays()
{
    // Written out for a rectangle w by h with one diagonal d longer: K = (2 p d + d²) / (w + h).
    for (const auto &[w, h] : {std::pair{24.0, 6.0}, {6.0, 24.0}, {9.0, 18.0}}) {
        const double diagonal = std::hypot(w, h), longer = 1.0 / 16;
        const Readings read = readings(w, h, w, h, diagonal + longer, diagonal);
        const double expected = (2 * diagonal * longer + longer * longer) / (w + h);
        QVERIFY(std::abs(asInches(quickCheck(inTicks(read))) - expected) < 0.001);
        QVERIFY(std::abs(asInches(fitTo(read, halfMark(in(0, 1, 16))).disagreement) - expected) < 0.003);
    }
}

void FitTest::determinantAndDisagreementAreOneCheck()
{
    // Where the determinant is zero nothing disagrees; stretched to one side or the other both change sign.
    for (const double by : {-0.1, -0.01, 0.0, 0.01, 0.1}) {
        const Readings read = readings(6, 6, 6, 6, std::sqrt(72.0) + by, std::sqrt(72.0));
        const Fit fit = fitTo(read, halfMark(in(0, 1, 16)));
        Six unit = inTicks(read);
        for (double &length : unit)
            length = asInches(length);
        if (by == 0) {
            QVERIFY(std::abs(fit.disagreement) < 2);
            QVERIFY(std::abs(cayleyMenger(unit)) < 20);
        } else {
            QVERIFY((fit.disagreement > 0) == (by > 0));
            // Diagonals too long cannot close at all, too short ones only in space.
            QVERIFY((cayleyMenger(unit) < 0) == (by > 0));
        }
    }
}

void FitTest::readingsThatAreNone()
{
    Readings read = readings(6, 6, 6, 6, 8.5, 8.5);
    read.sides[2] = Length();
    QVERIFY(!fitTo(read, halfMark(in(0, 1, 16))).settled);
    read.sides[2] = Length::overflow();
    QVERIFY(!fitTo(read, halfMark(in(0, 1, 16))).settled);
    QCOMPARE(judge(read, Measured::Outline, outlineOf(in(6), in(6), in(0, 1, 2)),
                   usualTolerances(System::Inch), sixteenths())
                 .kind,
             FindingKind::MeasureAgain);
}

void FitTest::farFetchedReadingsSettle()
{
    Chance chance(seed(9));
    for (int i = 0; i < count(2000); ++i) {
        Readings read;
        for (std::size_t k = 0; k < 6; ++k)
            (k < 4 ? read.sides[k] : read.diagonals[k - 4]) = inch(chance.between(0.001, 40));
        const Fit fit = fitTo(read, halfMark(in(0, 1, 16)));
        QVERIFY(fit.settled);
        for (const Point corner : fit.shape.corner)
            QVERIFY(std::isfinite(corner.x) && std::isfinite(corner.y));
        const Finding finding = judge(read, Measured::Outline, outlineOf(in(6), in(6), in(0, 1, 2)),
                                      usualTolerances(System::Inch), sixteenths());
        QVERIFY(finding.kind != FindingKind::MeasureAgain || !finding.cut);
    }
}

QTEST_APPLESS_MAIN(FitTest)
#include "tst_fit.moc"
