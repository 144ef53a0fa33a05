// SPDX-License-Identifier: MIT
#pragma once

#include "length/lengthwords.h"
#include "made/finding.h"

#include "testing.h"
#include <QString>

#include <cmath>
#include <random>

/// Short ways of building measured blocks for tests.
namespace madehelp {

using namespace matside;

inline Length in(std::int64_t whole, std::int64_t num = 0, std::int64_t den = 1)
{
    return Length::inches(whole, num, den);
}
/// Decimal inches to the nearest tick.
inline Length inch(double inches)
{
    return Length::ticks(std::llround(inches * Length::ticksPerInch));
}
inline double asInches(double ticks)
{
    return ticks / Length::ticksPerInch;
}

inline Readings readings(double a, double b, double c, double d, double p, double q)
{
    return {{inch(a), inch(b), inch(c), inch(d)}, {inch(p), inch(q)}};
}
inline Marks sixteenths()
{
    return {System::Inch, in(0, 1, 16)};
}
inline Marks millimetres()
{
    return {System::Metric, Length::mm(1)};
}

/// A block of that size pushed sideways, its corners moved on, everything in inches.
inline Shape block(double width, double height, double lean = 0,
                   std::array<std::array<double, 2>, 4> moved = {})
{
    const std::array<std::array<double, 2>, 4> plain{
        {{-lean / 2, 0}, {width - lean / 2, 0}, {width + lean / 2, height}, {lean / 2, height}}};
    Shape shape;
    for (std::size_t i = 0; i < 4; ++i)
        shape.corner[i] = {(plain[i][0] + moved[i][0]) * Length::ticksPerInch,
                           (plain[i][1] + moved[i][1]) * Length::ticksPerInch};
    return shape;
}

/// The readings of a shape to the nearest multiple of a mark; exact to a tick without one.
inline Readings readOff(const Shape &shape, Length mark = Length::ticks(1))
{
    const Six six = lengthsOf(shape);
    Readings read;
    for (std::size_t i = 0; i < 6; ++i)
        (i < 4 ? read.sides[i] : read.diagonals[i - 4]) =
            mark * std::llround(six[i] / static_cast<double>(mark.count()));
    return read;
}

inline Target outlineOf(Length along, Length across, Length allowance)
{
    return {{along, across}, false, allowance};
}

/// Seed and count of a long run, or the usual ones.
inline std::uint64_t seed(std::uint64_t usual)
{
    return qEnvironmentVariableIsSet("MATSIDE_SEED") ? qEnvironmentVariable("MATSIDE_SEED").toULongLong()
                                                     : usual;
}
inline int count(int usual)
{
    return qEnvironmentVariableIsSet("MATSIDE_COUNT") ? qEnvironmentVariableIntValue("MATSIDE_COUNT") : usual;
}

class Chance {
public:
    explicit Chance(std::uint64_t seed) : m_engine(seed) {}
    double between(double least, double most)
    {
        return std::uniform_real_distribution<double>(least, most)(m_engine);
    }
    double normal(double deviation) { return std::normal_distribution<double>(0, deviation)(m_engine); }
    std::size_t below(std::size_t count)
    {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(m_engine);
    }
    bool coin() { return below(2) == 1; }

private:
    std::mt19937_64 m_engine;
};

} // namespace madehelp

namespace matside {
inline char *toString(const FindingKind &kind)
{
    return qstrdup(std::string(nameOf(kind)).c_str());
}
inline char *toString(const Remedy &remedy)
{
    return qstrdup(std::string(nameOf(remedy)).c_str());
}
} // namespace matside
