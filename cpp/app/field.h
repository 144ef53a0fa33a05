// SPDX-License-Identifier: MIT
#pragma once

#include "length/result.h"
#include "plan/plan.h"
#include "project/problem.h"

#include <QString>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace matside {

/// Name, Price and Colour are kept as they are typed or chosen. Head stands for a whole cloth or ruler, Away
/// and More for taking one away and adding one.
enum class FieldKind { Length, Count, Choice, Share, Flag, Name, Price, Colour, Head, Away, More };

/// One thing the maker decides at Fit: where it stands in the project file, how it is read and written, and
/// what it may be.
struct Field {
    std::string pointer;
    const char *group = "";
    FieldKind kind = FieldKind::Length;
    std::function<OfferValue(const Project &, const Plan &)> get = {}; ///< the value in force
    std::function<void(Project &, const OfferValue &)> put = {};       ///< Remove: let it be reckoned
    std::function<bool(const Project &)> given = {};                   ///< absent: always given
    std::function<bool(const Project &)> inUse = {};                   ///< absent: always in use
    std::vector<std::string> choices = {};                             ///< codes, worded by choiceWords()
    std::int64_t least = 1;                                            ///< of a count
    std::int64_t most = 1000;
    Length leastLength = Length::ticks(1); ///< of a length
    bool fine = false;                     ///< steps by 1/32 in | 0.5 mm
    std::string label = {};                ///< code for fieldWords(), the pointer when empty
    std::string item = {};                 ///< pointer of the cloth or ruler it belongs to
};

/// The length a value holds, if it is one.
[[nodiscard]] std::optional<Length> lengthIn(const OfferValue &value);

/// Every field of a project, in the groups table, blocks, seam, sashing, hoop, strip, edge, cloths, rulers.
[[nodiscard]] std::vector<Field> fieldsOf(const Project &project);
[[nodiscard]] std::vector<Field> tableFields();
[[nodiscard]] std::vector<Field> seamFields();
[[nodiscard]] std::vector<Field> hoopFields();
[[nodiscard]] std::vector<Field> edgeFields();
[[nodiscard]] std::vector<Field> clothFields(const Project &project);
[[nodiscard]] std::vector<Field> rulerFields(const Project &project);
/// The marks a ruler may have as its finest.
[[nodiscard]] std::vector<std::string> finestChoices(System system);

/// Why an entry cannot be taken, and the nearest value that can.
struct EntryFault {
    QString says;
    OfferValue nearest = Remove{};
};
/// Reads what was typed for a field and checks it against what the field may be.
[[nodiscard]] Result<OfferValue, EntryFault> readEntry(const Field &field, const QString &text,
                                                       const Project &project);
/// Checks a value against what the field may be.
[[nodiscard]] Result<OfferValue, EntryFault> checkEntry(const Field &field, const OfferValue &value,
                                                        const Project &project);
/// The value so many ruler's marks (or counts, or tenths of a percent) further, kept in range.
[[nodiscard]] OfferValue nudged(const Field &field, const OfferValue &value, int steps,
                                const Project &project);
/// The step a field moves by.
[[nodiscard]] Length stepOfField(const Field &field, const Project &project);

} // namespace matside
