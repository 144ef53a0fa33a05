// SPDX-License-Identifier: MIT
//
// The least-squares fit of a plane quadrilateral. The top left corner lies at the origin and the top side
// along x, so five numbers are sought: x of the top right corner, x and y of the two below.
#include "made/quadrilateral.h"

#include <algorithm>
#include <cmath>

namespace matside {

namespace {

constexpr std::size_t unknowns = 5;
using Vector = std::array<double, unknowns>;
using Matrix = std::array<Vector, unknowns>;

Shape shapeAt(const Vector &x)
{
    return {{Point{0, 0}, Point{x[0], 0}, Point{x[1], x[2]}, Point{x[3], x[4]}}};
}

/// Which corners a length joins, in the order of `Six`.
constexpr std::array<std::array<std::size_t, 2>, 6> joins{
    {{{0, 1}}, {{1, 2}}, {{2, 3}}, {{3, 0}}, {{0, 2}}, {{1, 3}}}};
/// Where a corner's x and y stand among the unknowns; unknowns = fixed.
constexpr std::array<std::array<std::size_t, 2>, 4> places{
    {{{unknowns, unknowns}}, {{0, unknowns}}, {{1, 2}}, {{3, 4}}}};

/// The change of one length with the unknowns.
Vector slopeOf(const Shape &shape, std::size_t length)
{
    const auto [from, to] = joins[length];
    const Point a = shape.corner[from], b = shape.corner[to];
    const double far = std::max(std::hypot(b.x - a.x, b.y - a.y), 1e-9);
    std::array<double, unknowns + 1> slope{}; // the last takes what belongs to fixed coordinates
    slope[places[to][0]] += (b.x - a.x) / far;
    slope[places[to][1]] += (b.y - a.y) / far;
    slope[places[from][0]] -= (b.x - a.x) / far;
    slope[places[from][1]] -= (b.y - a.y) / far;
    Vector known{};
    std::copy_n(slope.begin(), unknowns, known.begin());
    return known;
}

/// Solves a symmetric positive matrix by Cholesky's factors; false where it is not positive.
bool solve(Matrix m, Vector &x)
{
    for (std::size_t i = 0; i < unknowns; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double sum = m[i][j];
            for (std::size_t k = 0; k < j; ++k)
                sum -= m[i][k] * m[j][k];
            if (i == j && sum <= 0)
                return false;
            m[i][j] = i == j ? std::sqrt(sum) : sum / m[j][j];
        }
    }
    for (std::size_t i = 0; i < unknowns; ++i) {
        for (std::size_t k = 0; k < i; ++k)
            x[i] -= m[i][k] * x[k];
        x[i] /= m[i][i];
    }
    for (std::size_t i = unknowns; i-- > 0;) {
        for (std::size_t k = i + 1; k < unknowns; ++k)
            x[i] -= m[k][i] * x[k];
        x[i] /= m[i][i];
    }
    return true;
}

struct Problem {
    Six six;
    Six weight; ///< 1 / precision, 0 for a reading left out
};

double cost(const Problem &problem, const Vector &x)
{
    const Six now = lengthsOf(shapeAt(x));
    double sum = 0;
    for (std::size_t i = 0; i < 6; ++i)
        sum += std::pow((problem.six[i] - now[i]) * problem.weight[i], 2);
    return sum;
}

/// A step shorter than this many ticks changes nothing that is ever rounded.
constexpr double settled = 1e-6;

/// One damped step; false when no step lessens the cost.
bool step(const Problem &problem, Vector &x, double &best, double &damping)
{
    const Shape shape = shapeAt(x);
    const Six now = lengthsOf(shape);
    Matrix normal{};
    Vector right{};
    for (std::size_t i = 0; i < 6; ++i) {
        const Vector slope = slopeOf(shape, i);
        const double w = problem.weight[i] * problem.weight[i];
        for (std::size_t r = 0; r < unknowns; ++r) {
            right[r] += w * slope[r] * (problem.six[i] - now[i]);
            for (std::size_t c = 0; c < unknowns; ++c)
                normal[r][c] += w * slope[r] * slope[c];
        }
    }
    constexpr int attempts = 24;
    for (int i = 0; i < attempts; ++i) {
        if (i > 0)
            damping *= 10;
        Matrix damped = normal;
        for (std::size_t r = 0; r < unknowns; ++r)
            damped[r][r] += damping * (normal[r][r] + 1e-30);
        Vector move = right;
        if (!solve(damped, move))
            continue;
        Vector next = x;
        double farthest = 0;
        for (std::size_t r = 0; r < unknowns; ++r) {
            next[r] += move[r];
            farthest = std::max(farthest, std::abs(move[r]));
        }
        if (farthest < settled)
            return false;
        const double there = cost(problem, next);
        if (there < best) {
            x = next;
            best = there;
            damping = std::max(damping / 10, 1e-15);
            return true;
        }
    }
    return false;
}

/// A start from two triangles on the top side, or a plain rectangle where they do not close.
Vector startFor(const Six &six)
{
    const auto &[a, b, c, d, p, q] = six;
    const double cx = (a * a + p * p - b * b) / (2 * a), cy = p * p - cx * cx;
    const double dx = (a * a + d * d - q * q) / (2 * a), dy = d * d - dx * dx;
    if (cy > 0 && dy > 0)
        return {a, cx, std::sqrt(cy), dx, std::sqrt(dy)};
    return {a, c, b, 0, d};
}

Fit run(const Readings &readings, Precision precision, std::size_t left)
{
    Fit fit;
    Problem problem{inTicks(readings), {}};
    const auto &six = problem.six;
    if (std::any_of(six.begin(), six.end(), [](double length) { return !(length > 0); }))
        return fit;
    for (std::size_t i = 0; i < 6; ++i) {
        const Length near = i < 4 ? precision.side : precision.diagonal;
        problem.weight[i] =
            i == left ? 0.0 : 1.0 / static_cast<double>(std::max<std::int64_t>(near.count(), 1));
    }
    Vector x = startFor(six);
    double best = cost(problem, x);
    double damping = 1e-9;
    constexpr int enough = 60;
    for (int i = 0; i < enough && best > 1e-24; ++i) {
        const double before = best;
        if (!step(problem, x, best, damping) || before - best < 1e-16 * before)
            break;
    }
    fit.shape = shapeAt(x);
    fit.misfit = std::sqrt(best);
    fit.settled = true;
    const Six now = lengthsOf(fit.shape);
    const double mean = (now[0] + now[1] + now[2] + now[3]) / 4;
    for (std::size_t i = 0; i < 6; ++i) {
        fit.residual[i] = six[i] - now[i];
        // The residuals weighed as K weighs its readings, so that both are the same kind of length.
        fit.disagreement += (i < 4 ? -1 : 1) * now[i] / mean * fit.residual[i];
    }
    return fit;
}

} // namespace

Fit fitTo(const Readings &readings, Precision precision)
{
    return run(readings, precision, 6);
}

Fit fitWithout(const Readings &readings, Precision precision, std::size_t left)
{
    return run(readings, precision, left);
}

} // namespace matside
