// SPDX-License-Identifier: MIT
#include "app/shadewords.h"

#include "app/wording.h"

#include <QCoreApplication>
#include <QVariantMap>

#include <array>
#include <cmath>

namespace matside {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Shade)
};

/// A hue, in degrees of the hexagon of light, and what it is called up to the next one's middle.
struct Hue {
    double degrees;
    const char *name;
};
constexpr std::array hues{
    Hue{0, QT_TRANSLATE_NOOP("Shade", "red")},
    Hue{18, QT_TRANSLATE_NOOP("Shade", "orange")},
    Hue{46, QT_TRANSLATE_NOOP("Shade", "yellow")},
    Hue{95, QT_TRANSLATE_NOOP("Shade", "green")},
    //: between green and blue
    Hue{165, QT_TRANSLATE_NOOP("Shade", "blue-green")},
    Hue{218, QT_TRANSLATE_NOOP("Shade", "blue")},
    Hue{262, QT_TRANSLATE_NOOP("Shade", "violet")},
    Hue{330, QT_TRANSLATE_NOOP("Shade", "pink")},
};
/// Weaker than this nobody gives it a hue's name.
constexpr double greyish = 0.12;

const char *hueName(const Shade &shade)
{
    if (shade.strength < greyish)
        return QT_TRANSLATE_NOOP("Shade", "grey");
    const Hue *nearest = hues.data();
    for (const Hue &hue : hues)
        if (std::fabs(std::remainder(shade.hue - hue.degrees, 360.0)) <
            std::fabs(std::remainder(shade.hue - nearest->degrees, 360.0)))
            nearest = &hue;
    return nearest->name;
}

void add(QVariantList &palette, const Shade &shade)
{
    const Colour colour = colourOf(shade);
    palette.append(QVariantMap{{QStringLiteral("value"), toQt(writeColour(colour))},
                               {QStringLiteral("says"), colourSays(colour)}});
}

} // namespace

QString colourSays(Colour colour)
{
    const QString text = toQt(writeColour(colour));
    if (const auto known = wordsFor(choiceWords(), writeColour(colour)))
        return *known;
    //: a colour: its hue and its step on the scale from black to white
    return Words::tr("%1, step %2 of 10")
        .arg(Words::tr(hueName(shadeOf(colour))))
        .arg(stepOf(valueOf(colour)));
}

QVariantList paletteOf(bool byHue)
{
    constexpr double strong = 0.6;
    constexpr std::array lightnesses{90.0, 72.0, 54.0, 38.0, 22.0};
    constexpr std::array<Shade, 7> columns{
        Shade{0, 0, strong},   Shade{18, 0, strong},  Shade{46, 0, strong}, Shade{110, 0, strong},
        Shade{214, 0, strong}, Shade{290, 0, strong}, Shade{0, 0, 0}};
    QVariantList palette;
    if (byHue) {
        for (const Shade &column : columns)
            for (const double lightness : lightnesses)
                add(palette, {column.hue, lightness, column.strength});
        return palette;
    }
    for (const double lightness : lightnesses)
        for (const Shade &column : columns)
            add(palette, {column.hue, lightness, column.strength});
    return palette;
}

QString stepsText(double steps)
{
    return inSign(QString::number(std::floor(steps * 10 + 1e-9) / 10, 'f', 1));
}

QString leastSays(const QString &over, const QString &under, double apart)
{
    if (apart >= stepsClear)
        //: %1 lies on %2; %3 is a number of steps of the ten-step scale
        return Words::tr("Closest: %1 on %2, %3 steps apart. That is clear from across the room.")
            .arg(over, under, stepsText(apart));
    if (apart >= stepsFaint)
        //: %1 lies on %2; %3 is a number of steps of the ten-step scale, below two
        return Words::tr("Closest: %1 on %2, %3 steps apart. From across the room it looks washed out: two "
                         "steps stand clearly apart.")
            .arg(over, under, stepsText(apart));
    //: %1 lies on %2; %3 is a number of steps of the ten-step scale, below one
    return Words::tr(
               "Closest: %1 on %2, only %3 steps apart. From across the room %1 is lost: take a lighter "
               "or a darker cloth for one of the two.")
        .arg(over, under, stepsText(apart));
}

} // namespace matside
