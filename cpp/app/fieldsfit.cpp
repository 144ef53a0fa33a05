// SPDX-License-Identifier: MIT
#include "app/field.h"

namespace matside {

namespace {

bool onRect(const Project &project)
{
    return project.table && !project.table->diameter;
}

bool onRound(const Project &project)
{
    return project.table && project.table->diameter;
}

OfferValue tableShape(const Project &project, const Plan &)
{
    return std::string(onRound(project) ? "round" : onRect(project) ? "rect" : "none");
}

/// A new shape starts at the size of the piece's table as it was, or at a usual table.
void putTableShape(Project &project, const OfferValue &value)
{
    const std::string *shape = std::get_if<std::string>(&value);
    if (!shape || *shape == "none") {
        project.table.reset();
        return;
    }
    const bool inch = project.system == System::Inch;
    Table table = project.table.value_or(Table());
    const Length usual = inch ? Length::inches(60) : Length::mm(1500);
    const Length usualWidth = inch ? Length::inches(36) : Length::mm(900);
    if (*shape == "round") {
        table.diameter = table.diameter.value_or(table.width.value_or(usualWidth));
        table.length.reset();
        table.width.reset();
    } else {
        table.length = table.length.value_or(table.diameter.value_or(usual));
        table.width = table.width.value_or(table.diameter.value_or(usualWidth));
        table.diameter.reset();
    }
    project.table = std::move(table);
}

Field tableLength(const char *pointer, std::optional<Length> Table::*side, bool (*inUse)(const Project &))
{
    Field field{pointer, "table"};
    field.get = [side](const Project &project, const Plan &) -> OfferValue {
        return project.table ? ((*project.table).*side).value_or(Length()) : Length();
    };
    field.put = [side](Project &project, const OfferValue &value) {
        if (const auto length = lengthIn(value); length && project.table)
            (*project.table).*side = *length;
    };
    field.inUse = inUse;
    return field;
}

/// What a leaf adds; 0: the table has none.
Field leaf()
{
    Field field = tableLength("/table/leaf", &Table::leaf,
                              [](const Project &project) { return project.table.has_value(); });
    field.put = [](Project &project, const OfferValue &value) {
        const auto length = lengthIn(value);
        if (!length || !project.table)
            return;
        project.table->leaf = *length > Length() ? length : std::nullopt;
        if (!project.table->leaf)
            project.table->leafIn = false;
    };
    field.leastLength = Length();
    return field;
}

Field leafLies()
{
    Field field{"/table/leafIn", "table", FieldKind::Choice};
    field.get = [](const Project &project, const Plan &) -> OfferValue {
        return std::string(project.table && project.table->leafIn ? "leaf-in" : "leaf-out");
    };
    field.put = [](Project &project, const OfferValue &value) {
        if (project.table)
            project.table->leafIn = value == OfferValue(std::string("leaf-in"));
    };
    field.inUse = [](const Project &project) { return project.table && project.table->leaf; };
    field.choices = {"leaf-out", "leaf-in"};
    return field;
}

Field blockCount(const char *pointer, std::int64_t Blocks::*count, std::int64_t least)
{
    Field field{pointer, "blocks", FieldKind::Count};
    field.get = [count](const Project &project, const Plan &) -> OfferValue { return project.blocks.*count; };
    field.put = [count](Project &project, const OfferValue &value) {
        if (const std::int64_t *given = std::get_if<std::int64_t>(&value))
            project.blocks.*count = *given;
    };
    field.least = least;
    return field;
}

Field blockLength(const char *pointer, Length Blocks::*side)
{
    Field field{pointer, "blocks"};
    field.get = [side](const Project &project, const Plan &) -> OfferValue { return project.blocks.*side; };
    field.put = [side](Project &project, const OfferValue &value) {
        if (const auto length = lengthIn(value))
            project.blocks.*side = *length;
    };
    return field;
}

Field build()
{
    Field field{"/build", "blocks", FieldKind::Choice};
    field.get = [](const Project &project, const Plan &) -> OfferValue {
        return std::string(project.build == Build::Reversible ? "reversible" : "clean-back");
    };
    field.put = [](Project &project, const OfferValue &value) {
        project.build = value == OfferValue(std::string("clean-back")) ? Build::CleanBack : Build::Reversible;
    };
    field.choices = {"reversible", "clean-back"};
    return field;
}

Field cleanBack()
{
    Field field{"/cleanBack", "blocks", FieldKind::Choice};
    field.get = [](const Project &project, const Plan &) -> OfferValue {
        return std::string(project.cleanBack == CleanBack::Layered ? "layered" : "bagged");
    };
    field.put = [](Project &project, const OfferValue &value) {
        project.cleanBack =
            value == OfferValue(std::string("bagged")) ? CleanBack::Bagged : CleanBack::Layered;
    };
    field.inUse = [](const Project &project) { return project.build == Build::CleanBack; };
    field.choices = {"layered", "bagged"};
    return field;
}

Field kits()
{
    Field field{"/kits", "blocks", FieldKind::Count};
    field.get = [](const Project &project, const Plan &) -> OfferValue { return project.kits; };
    field.put = [](Project &project, const OfferValue &value) {
        if (const std::int64_t *given = std::get_if<std::int64_t>(&value))
            project.kits = *given;
        if (project.lesson && project.lesson->kits() != project.kits)
            project.lesson.reset(); // the class stood for another number
    };
    field.most = 10'000;
    return field;
}

/// Of kits made as one set.
Field spareOfSet()
{
    Field field = blockCount("/blocks/spareInAll", &Blocks::spareInAll, 0);
    field.inUse = isOneSet;
    return field;
}

Field direct(const char *pointer, const char *group, Length Project::*side, Length least, bool fine)
{
    Field field{pointer, group};
    field.get = [side](const Project &project, const Plan &) -> OfferValue { return project.*side; };
    field.put = [side](Project &project, const OfferValue &value) {
        if (const auto length = lengthIn(value))
            project.*side = *length;
    };
    field.leastLength = least;
    field.fine = fine;
    return field;
}

Field drawUpField(const char *pointer, Share DrawUp::*way, Share Basis::*inForce)
{
    Field field{pointer, "seam", FieldKind::Share};
    field.get = [inForce](const Project &, const Plan &plan) -> OfferValue { return plan.basis.*inForce; };
    field.put = [way](Project &project, const OfferValue &value) {
        if (const Share *share = std::get_if<Share>(&value))
            project.drawUp.*way = *share;
    };
    // Once the test block is measured, the planned draw-up has no more say.
    field.inUse = [](const Project &project) { return !project.made.testBlock; };
    return field;
}

Field sashingField(const char *pointer, std::optional<Length> Sashing::*width,
                   std::function<Length(const Project &, const Plan &)> inForce)
{
    Field field{pointer, "sashing"};
    field.get = [inForce = std::move(inForce)](const Project &project, const Plan &plan) -> OfferValue {
        return inForce(project, plan);
    };
    field.put = [width](Project &project, const OfferValue &value) {
        project.sashing.*width = lengthIn(value);
    };
    field.given = [width](const Project &project) { return (project.sashing.*width).has_value(); };
    return field;
}

Field foldField(const char *pointer, Length Fold::*side, Length least)
{
    Field field{pointer, "sashing"};
    field.get = [side](const Project &project, const Plan &) -> OfferValue { return project.fold.*side; };
    field.put = [side](Project &project, const OfferValue &value) {
        if (const auto length = lengthIn(value))
            project.fold.*side = *length;
    };
    field.inUse = [](const Project &project) { return project.build == Build::Reversible; };
    field.leastLength = least;
    field.fine = true;
    return field;
}

Field doubledField()
{
    Field field{"/fold/doubled", "sashing", FieldKind::Flag};
    field.get = [](const Project &project, const Plan &) -> OfferValue { return project.fold.doubled; };
    field.put = [](Project &project, const OfferValue &value) {
        if (const bool *given = std::get_if<bool>(&value))
            project.fold.doubled = *given;
    };
    field.inUse = [](const Project &project) { return project.build == Build::Reversible; };
    return field;
}

} // namespace

std::vector<Field> tableFields()
{
    Field shape{"/table", "table", FieldKind::Choice, tableShape, putTableShape};
    shape.choices = {"none", "rect", "round"};
    return {std::move(shape),
            tableLength("/table/length", &Table::length, onRect),
            tableLength("/table/width", &Table::width, onRect),
            tableLength("/table/diameter", &Table::diameter, onRound),
            leaf(),
            leafLies(),
            blockCount("/blocks/columns", &Blocks::columns, 1),
            blockCount("/blocks/rows", &Blocks::rows, 1),
            blockLength("/blocks/width", &Blocks::width),
            blockLength("/blocks/height", &Blocks::height),
            blockCount("/blocks/spare", &Blocks::spare, 0),
            kits(),
            spareOfSet(),
            build(),
            cleanBack()};
}

std::vector<Field> seamFields()
{
    Field cutBack =
        sashingField("/sashing/cutBack", &Sashing::cutBack, [](const Project &, const Plan &plan) {
            return plan.sashing.cutBack.value_or(Length());
        });
    cutBack.inUse = [](const Project &project) { return project.build == Build::Reversible; };
    return {direct("/seam", "seam", &Project::seam, Length::ticks(1), true),
            direct("/loft", "seam", &Project::loft, Length(), true),
            drawUpField("/drawUp/along", &DrawUp::along, &Basis::drawAlong),
            drawUpField("/drawUp/across", &DrawUp::across, &Basis::drawAcross),
            sashingField("/sashing/finished", &Sashing::finished,
                         [](const Project &, const Plan &plan) { return plan.basis.finished; }),
            sashingField("/sashing/allowance", &Sashing::allowance,
                         [](const Project &, const Plan &plan) { return plan.basis.allowance; }),
            std::move(cutBack),
            foldField("/fold/catch", &Fold::fold_catch, Length::ticks(1)),
            foldField("/fold/turn", &Fold::turn, Length()),
            doubledField()};
}

} // namespace matside
