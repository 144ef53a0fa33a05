// SPDX-License-Identifier: MIT
#include "app/field.h"

#include "app/wording.h"
#include "length/read.h"
#include "project/fields.h"

#include <QRegularExpression>

#include <algorithm>
#include <cstdint>

namespace matside {

namespace {

constexpr int longestName = 80;
constexpr std::int64_t tenthOfPercent = 1'000; ///< in millionths

Result<OfferValue, EntryFault> readCount(const QString &text)
{
    bool ok = false;
    const std::int64_t count = text.trimmed().toLongLong(&ok);
    if (ok)
        return OfferValue(count);
    return EntryFault{inWords(QT_TRANSLATE_NOOP("Words", "That is not a whole number."))};
}

Result<OfferValue, EntryFault> readPercent(const QString &text)
{
    const QString share = text.contains(u'%') ? text : text + QStringLiteral(" %");
    const auto read = readShare(share.trimmed().toStdString());
    if (read)
        return OfferValue(read.value());
    return EntryFault{sentence(read.error(), System::Inch)};
}

Result<OfferValue, EntryFault> checkName(const QString &typed)
{
    const QString name = typed.trimmed();
    if (name.isEmpty())
        return EntryFault{inWords(QT_TRANSLATE_NOOP("Words", "It needs a name. The old one was kept."))};
    if (name.size() > longestName)
        return EntryFault{
            inWords(QT_TRANSLATE_NOOP("Words", "That name is too long; %1 letters are the most."))
                .arg(longestName)};
    return OfferValue(name.toStdString());
}

/// A price is digits, and a point or comma with more of them; it is kept as a number of the file.
Result<OfferValue, EntryFault> checkPrice(const QString &typed)
{
    static const QRegularExpression decimal(QStringLiteral("^[0-9]{1,7}([.,][0-9]{1,4})?$"));
    QString price = typed.trimmed();
    if (!decimal.match(price).hasMatch())
        return EntryFault{inWords(QT_TRANSLATE_NOOP("Words", "A price is a number like 9.50."))};
    price.replace(u',', u'.');
    while (price.size() > 1 && price.startsWith(u'0') && price[1] != u'.')
        price.remove(0, 1);
    return OfferValue(price.toStdString());
}

Result<OfferValue, EntryFault> checkLength(const Field &field, Length length, const Project &project)
{
    if (length < field.leastLength) {
        const Length nearest = field.leastLength == Length() ? Length() : stepOfField(field, project);
        return EntryFault{inWords(QT_TRANSLATE_NOOP("Words", "That is too small; %1 is the least."))
                              .arg(figureText(nearest, project.marks(), Round::Fine)),
                          nearest};
    }
    if (length > longest())
        return EntryFault{inWords(QT_TRANSLATE_NOOP("Words", "That is longer than any piece here can be.")),
                          longest()};
    return OfferValue(length);
}

} // namespace

std::optional<Length> lengthIn(const OfferValue &value)
{
    const Length *length = std::get_if<Length>(&value);
    return length ? std::optional(*length) : std::nullopt;
}

std::vector<Field> fieldsOf(const Project &project)
{
    std::vector<Field> all = tableFields();
    for (std::vector<Field> part :
         {seamFields(), hoopFields(), edgeFields(), clothFields(project), rulerFields(project)})
        all.insert(all.end(), std::make_move_iterator(part.begin()), std::make_move_iterator(part.end()));
    return all;
}

Length stepOfField(const Field &field, const Project &project)
{
    const Length mark = stepOf(Round::Nearest, project.marks());
    return field.fine ? min(mark, stepOf(Round::Fine, project.marks())) : mark;
}

Result<OfferValue, EntryFault> checkEntry(const Field &field, const OfferValue &value, const Project &project)
{
    if (const Length *length = std::get_if<Length>(&value); length && field.kind == FieldKind::Length)
        return checkLength(field, *length, project);
    if (const std::int64_t *count = std::get_if<std::int64_t>(&value);
        count && field.kind == FieldKind::Count) {
        if (*count >= field.least && *count <= field.most)
            return value;
        return EntryFault{inWords(QT_TRANSLATE_NOOP("Words", "This lies between %1 and %2."))
                              .arg(field.least)
                              .arg(field.most),
                          std::clamp(*count, field.least, field.most)};
    }
    if (const Share *share = std::get_if<Share>(&value); share && field.kind == FieldKind::Share) {
        if (*share >= Share{} && *share <= mostDrawUp)
            return value;
        return EntryFault{inWords(QT_TRANSLATE_NOOP("Words", "Draw-up lies between 0 % and 15 %.")),
                          std::clamp(*share, Share{}, mostDrawUp)};
    }
    const std::string *word = std::get_if<std::string>(&value);
    if (word && field.kind == FieldKind::Name)
        return checkName(toQt(*word));
    if (word && field.kind == FieldKind::Price)
        return checkPrice(toQt(*word));
    if (word && (field.kind == FieldKind::Choice || field.kind == FieldKind::Colour) &&
        std::find(field.choices.begin(), field.choices.end(), *word) != field.choices.end())
        return value;
    if (std::holds_alternative<bool>(value) && field.kind == FieldKind::Flag)
        return value;
    if (std::holds_alternative<Remove>(value) && field.given)
        return value;
    return EntryFault{inWords(QT_TRANSLATE_NOOP("Words", "That does not belong here."))};
}

Result<OfferValue, EntryFault> readEntry(const Field &field, const QString &text, const Project &project)
{
    Result<OfferValue, EntryFault> read = EntryFault{};
    switch (field.kind) {
    case FieldKind::Length: {
        const auto length = readLength(text.toStdString(), project.system);
        read = length ? Result<OfferValue, EntryFault>(OfferValue(length.value()))
                      : EntryFault{sentence(length.error(), project.system)};
        break;
    }
    case FieldKind::Count:
        read = readCount(text);
        break;
    case FieldKind::Share:
        read = readPercent(text);
        break;
    case FieldKind::Choice:
    case FieldKind::Name:
    case FieldKind::Price:
    case FieldKind::Colour:
        read = OfferValue(text.toStdString());
        break;
    case FieldKind::Head:
    case FieldKind::Away:
    case FieldKind::More:
        return EntryFault{inWords(QT_TRANSLATE_NOOP("Words", "That does not belong here."))};
    case FieldKind::Flag:
        read = OfferValue(text == QStringLiteral("true"));
        break;
    }
    return read ? checkEntry(field, read.value(), project) : read;
}

OfferValue nudged(const Field &field, const OfferValue &value, int steps, const Project &project)
{
    if (const Length *length = std::get_if<Length>(&value)) {
        const Length step = stepOfField(field, project);
        // The first step goes to the next mark, further ones along the marks.
        const Length from = steps > 0 ? length->downTo(step) : length->upTo(step);
        const Length to = from + step * steps;
        const Length least = field.leastLength == Length() ? Length() : step;
        return min(max(to, least), longest());
    }
    if (const std::int64_t *count = std::get_if<std::int64_t>(&value))
        return std::clamp(*count + steps, field.least, field.most);
    if (const Share *share = std::get_if<Share>(&value))
        return std::clamp(Share{share->millionths + steps * tenthOfPercent}, Share{}, mostDrawUp);
    if (const bool *flag = std::get_if<bool>(&value))
        return !*flag;
    if (const std::string *word = std::get_if<std::string>(&value); word && !field.choices.empty()) {
        const auto at = std::find(field.choices.begin(), field.choices.end(), *word);
        const std::ptrdiff_t last = std::ssize(field.choices) - 1;
        const std::ptrdiff_t to = std::clamp<std::ptrdiff_t>(at - field.choices.begin() + steps, 0, last);
        return field.choices[static_cast<std::size_t>(to)];
    }
    return value;
}

} // namespace matside
