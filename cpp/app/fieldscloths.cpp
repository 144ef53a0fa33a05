// SPDX-License-Identifier: MIT
//
// The cloths and the rulers: each is a head with its own fields beneath it, and a way to take it away.
#include "app/field.h"

#include "app/fielditems.h"
#include "app/rulerwords.h"
#include "length/read.h"
#include "project/spelling.h"

#include <array>

namespace matside {

namespace {

/// Colours a cloth is found by on the screen, light to dark; worded by choiceWords().
constexpr std::array<const char *, 12> colours{"#f4f1e8", "#c9bda2", "#d8a13a", "#b5543a",
                                               "#8c2f39", "#6b4a6e", "#4a6480", "#27535a",
                                               "#7f8f5a", "#8a7a66", "#9a9a96", "#3a3733"};

std::vector<std::string> soldChoices(System system)
{
    if (system == System::Inch)
        return {"1/8 yd", "1/4 yd", "1/2 yd", "1 yd"};
    return {"10 cm", "25 cm", "50 cm", "1 m"};
}

/// Where a cloth's or ruler's field stands, and what it is called.
Field itemField(const char *list, std::size_t index, const char *key, FieldKind kind)
{
    Field field;
    field.item = '/' + std::string(list) + '/' + std::to_string(index);
    field.pointer = field.item + '/' + key;
    field.group = list;
    field.kind = kind;
    field.label = '/' + std::string(list) + '/' + key;
    field.get = [](const Project &, const Plan &) -> OfferValue { return Remove{}; };
    field.put = [](Project &, const OfferValue &) {};
    return field;
}

/// A field of a cloth: `read` gives its value, `write` takes one.
template <class Read, class Write>
Field clothField(std::size_t index, const char *key, FieldKind kind, Read read, Write write)
{
    Field field = itemField("cloths", index, key, kind);
    field.get = [index, read](const Project &from, const Plan &plan) -> OfferValue {
        return index < from.cloths.size() ? OfferValue(read(from.cloths[index], plan)) : Remove{};
    };
    field.put = [index, write](Project &to, const OfferValue &value) {
        if (index < to.cloths.size())
            write(to.cloths[index], value);
    };
    return field;
}

template <class Read, class Write>
Field rulerField(std::size_t index, const char *key, FieldKind kind, Read read, Write write)
{
    Field field = itemField("rulers", index, key, kind);
    field.get = [index, read](const Project &from, const Plan &) -> OfferValue {
        return index < from.rulers.size() ? OfferValue(read(from.rulers[index], from)) : Remove{};
    };
    field.put = [index, write](Project &to, const OfferValue &value) {
        if (index < to.rulers.size())
            write(to.rulers[index], value, to.system);
    };
    return field;
}

std::string wordIn(const OfferValue &value)
{
    const std::string *word = std::get_if<std::string>(&value);
    return word ? *word : std::string();
}

/// The head bears the cloth's colour; its name and role are read beside it.
Field clothHead(std::size_t index)
{
    return clothField(
        index, "head", FieldKind::Head, [](const Cloth &cloth, const Plan &) { return cloth.colour; },
        [](Cloth &, const OfferValue &) {});
}

Field clothRole(std::size_t index)
{
    Field field = clothField(
        index, "role", FieldKind::Choice,
        [](const Cloth &cloth, const Plan &) { return spelling::wordFor(spelling::role, cloth.role); },
        [](Cloth &cloth, const OfferValue &value) {
            for (const Spelling<ClothRole> &role : spelling::role)
                if (role.word == wordIn(value)) {
                    if (cloth.name == nameGiven(cloth.role)) // she has not named it yet
                        cloth.name = nameGiven(role.value);
                    cloth.role = role.value;
                }
        });
    for (const Spelling<ClothRole> &role : spelling::role)
        field.choices.emplace_back(role.word);
    return field;
}

Field clothUsable(std::size_t index)
{
    Field field = clothField(
        index, "usable", FieldKind::Length,
        [](const Cloth &cloth, const Plan &plan) { return cloth.usable.value_or(plan.strip.usable); },
        [](Cloth &cloth, const OfferValue &value) { cloth.usable = lengthIn(value); });
    field.given = [index](const Project &from) {
        return index < from.cloths.size() && from.cloths[index].usable.has_value();
    };
    return field;
}

Field clothSold(std::size_t index, System system)
{
    Field field = clothField(
        index, "soldBy", FieldKind::Choice, [](const Cloth &cloth, const Plan &) { return cloth.soldBy; },
        [system](Cloth &cloth, const OfferValue &value) {
            const std::string word = wordIn(value);
            if (const auto step = readLength(word, system)) {
                cloth.soldBy = word;
                cloth.soldStep = step.value();
            }
        });
    field.choices = soldChoices(system);
    return field;
}

Field clothPrice(std::size_t index, System system)
{
    Field field = clothField(
        index, "price", FieldKind::Price,
        [](const Cloth &cloth, const Plan &) { return cloth.price.value_or(std::string()); },
        [](Cloth &cloth, const OfferValue &value) { cloth.price = wordIn(value); });
    field.label = system == System::Inch ? "/cloths/price/yard" : "/cloths/price/metre";
    return field;
}

Field clothColour(std::size_t index)
{
    Field field = clothField(
        index, "colour", FieldKind::Colour, [](const Cloth &cloth, const Plan &) { return cloth.colour; },
        [](Cloth &cloth, const OfferValue &value) { cloth.colour = wordIn(value); });
    field.choices.assign(colours.begin(), colours.end());
    return field;
}

void addCloth(std::vector<Field> &fields, std::size_t index, System system)
{
    fields.push_back(clothHead(index));
    fields.push_back(clothField(
        index, "name", FieldKind::Name, [](const Cloth &cloth, const Plan &) { return cloth.name; },
        [](Cloth &cloth, const OfferValue &value) { cloth.name = wordIn(value); }));
    fields.push_back(clothRole(index));
    fields.push_back(clothUsable(index));
    fields.push_back(clothSold(index, system));
    fields.push_back(clothPrice(index, system));
    fields.push_back(clothColour(index));
    fields.push_back(clothField(
        index, "directional", FieldKind::Flag,
        [](const Cloth &cloth, const Plan &) { return cloth.directional; },
        [](Cloth &cloth, const OfferValue &value) {
            if (const bool *given = std::get_if<bool>(&value))
                cloth.directional = *given;
        }));
    fields.push_back(itemField("cloths", index, "away", FieldKind::Away));
}

Field rulerSide(std::size_t index, const char *key, Length Ruler::*side)
{
    return rulerField(
        index, key, FieldKind::Length, [side](const Ruler &ruler, const Project &) { return ruler.*side; },
        [side](Ruler &ruler, const OfferValue &value, System) {
            ruler.*side = lengthIn(value).value_or(ruler.*side);
        });
}

/// A ruler without marks of its own has those of the finest.
Field rulerFinest(std::size_t index, System system)
{
    Field field = rulerField(
        index, "finest", FieldKind::Choice,
        [](const Ruler &ruler, const Project &from) {
            return writeLength(ruler.finest.value_or(from.finest), from.system);
        },
        [](Ruler &ruler, const OfferValue &value, System of) {
            if (const auto read = readLength(wordIn(value), of))
                ruler.finest = read.value();
        });
    field.choices = finestChoices(system);
    return field;
}

void addRuler(std::vector<Field> &fields, std::size_t index, System system)
{
    fields.push_back(itemField("rulers", index, "head", FieldKind::Head));
    fields.push_back(rulerField(
        index, "name", FieldKind::Name,
        [](const Ruler &ruler, const Project &) {
            return ruler.name.empty() ? ruler.name : rulerText(ruler.name).toStdString();
        },
        [](Ruler &ruler, const OfferValue &value, System) { ruler.name = wordIn(value); }));
    fields.push_back(rulerSide(index, "length", &Ruler::length));
    fields.push_back(rulerSide(index, "width", &Ruler::width));
    fields.push_back(rulerFinest(index, system));
    fields.push_back(itemField("rulers", index, "away", FieldKind::Away));
}

/// The row a cloth or ruler is added with.
Field moreOf(const char *list)
{
    Field field = itemField(list, 0, "more", FieldKind::More);
    field.pointer = '/' + std::string(list);
    field.item.clear();
    return field;
}

/// The finest mark of the maker's rulers.
Field finestField(System system)
{
    Field field{"/finest", "rulers", FieldKind::Choice};
    field.choices = finestChoices(system);
    field.get = [](const Project &from, const Plan &) -> OfferValue {
        return writeLength(from.finest, from.system);
    };
    field.put = [](Project &to, const OfferValue &value) {
        if (const auto read = readLength(wordIn(value), to.system))
            to.finest = read.value();
    };
    return field;
}

} // namespace

std::vector<std::string> finestChoices(System system)
{
    if (system == System::Inch)
        return {"1/8 in", "1/16 in", "1/32 in", "1/64 in"};
    return {"1 mm", "0.5 mm"};
}

std::vector<Field> clothFields(const Project &project)
{
    std::vector<Field> fields;
    for (std::size_t i = 0; i < project.cloths.size(); ++i)
        addCloth(fields, i, project.system);
    fields.push_back(moreOf("cloths"));
    return fields;
}

std::vector<Field> rulerFields(const Project &project)
{
    std::vector<Field> fields{finestField(project.system)};
    for (std::size_t i = 0; i < project.rulers.size(); ++i)
        addRuler(fields, i, project.system);
    fields.push_back(moreOf("rulers"));
    return fields;
}

} // namespace matside
