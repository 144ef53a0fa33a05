// SPDX-License-Identifier: MIT
#include "app/mergewords.h"

#include "app/wording.h"
#include "length/read.h"
#include "project/json.h"

#include <QCoreApplication>

#include <array>
#include <set>

namespace matside {

namespace {

/// What has no name of its own among the fields at Fit. "*" stands for a thing in a list.
constexpr std::array places{
    Worded{"/name", QT_TRANSLATE_NOOP("Merge", "the project’s name")},
    //: the hand she holds the cutter in
    Worded{"/hand", QT_TRANSLATE_NOOP("Merge", "cutting hand")},
    Worded{"/layout", QT_TRANSLATE_NOOP("Merge", "which block goes where")},
    Worded{"/drawUp", QT_TRANSLATE_NOOP("Merge", "draw-up")},
    Worded{"/edge/corner", QT_TRANSLATE_NOOP("Merge", "corners")},
    Worded{"/hoop/name", QT_TRANSLATE_NOOP("Merge", "hoop")},
    Worded{"/hoop/field", QT_TRANSLATE_NOOP("Merge", "hoop’s field")},
    Worded{"/hoop/opening", QT_TRANSLATE_NOOP("Merge", "hoop’s opening")},
    Worded{"/hoop/outside", QT_TRANSLATE_NOOP("Merge", "hoop’s outside")},
    //: sandwich: front, batting and back together
    Worded{"/hoop/sandwich", QT_TRANSLATE_NOOP("Merge", "thickest sandwich in the hoop")},
    Worded{"/hoop/bracket", QT_TRANSLATE_NOOP("Merge", "side of the hoop’s bracket")},
    Worded{"/strip/harvestGaps", QT_TRANSLATE_NOOP("Merge", "gaps that give sashing")},
    Worded{"/kitsShareStrips", QT_TRANSLATE_NOOP("Merge", "kits cut from the same strips")},
    Worded{"/thread/spacing", QT_TRANSLATE_NOOP("Merge", "between stippling lines")},
    Worded{"/thread/stitch", QT_TRANSLATE_NOOP("Merge", "stitch length")},
    Worded{"/thread/bobbin", QT_TRANSLATE_NOOP("Merge", "thread on a bobbin")},
    Worded{"/thread/speed", QT_TRANSLATE_NOOP("Merge", "stitches a minute")},
    Worded{"/thread/trimAtStops", QT_TRANSLATE_NOOP("Merge", "patches trimmed at the machine")},
    Worded{"/rulers/*", QT_TRANSLATE_NOOP("Merge", "ruler “%1”")},
    Worded{"/designs/*", QT_TRANSLATE_NOOP("Merge", "design “%1”")},
    Worded{"/cloths/*", QT_TRANSLATE_NOOP("Merge", "cloth “%1”")},
    //: patch: a shape of cloth stitched onto the block
    Worded{"/patches/*", QT_TRANSLATE_NOOP("Merge", "patch “%1”")},
    Worded{"/made/testBlock", QT_TRANSLATE_NOOP("Merge", "test block, as measured")},
    Worded{"/made/testJoin", QT_TRANSLATE_NOOP("Merge", "test join, as measured")},
    Worded{"/made/drawUp", QT_TRANSLATE_NOOP("Merge", "draw-up taken from the first blocks")},
    Worded{"/made/trial", QT_TRANSLATE_NOOP("Merge", "trial put off")},
    Worded{"/made/piece", QT_TRANSLATE_NOOP("Merge", "whole piece, as measured")},
    Worded{"/made/pins", QT_TRANSLATE_NOOP("Merge", "pins counted, in and out")},
    Worded{"/made/cloths/*", QT_TRANSLATE_NOOP("Merge", "cloth “%1”, as bought")},
    Worded{"/made/rows/*", QT_TRANSLATE_NOOP("Merge", "row %1, as measured")},
    Worded{"/made/strips/*", QT_TRANSLATE_NOOP("Merge", "strip %1")},
    Worded{"/made/blocks/*", QT_TRANSLATE_NOOP("Merge", "block %1")},
    Worded{"/made/blocks/*/state", QT_TRANSLATE_NOOP("Merge", "block %1, how far it is")},
    //: sent: the size given to the embroidery machine
    Worded{"/made/blocks/*/sent", QT_TRANSLATE_NOOP("Merge", "block %1, size sent to the machine")},
    Worded{"/made/blocks/*/outline", QT_TRANSLATE_NOOP("Merge", "block %1, outline as measured")},
    Worded{"/made/blocks/*/sides", QT_TRANSLATE_NOOP("Merge", "block %1, sides as measured")},
    Worded{"/made/blocks/*/diagonals", QT_TRANSLATE_NOOP("Merge", "block %1, diagonals as measured")},
    Worded{"/made/blocks/*/minutes", QT_TRANSLATE_NOOP("Merge", "block %1, minutes at the machine")},
    Worded{"/made/blocks/*/lies", QT_TRANSLATE_NOOP("Merge", "block %1, where it lies")},
    Worded{"/made/blocks/*/strip", QT_TRANSLATE_NOOP("Merge", "block %1, its strip")},
    Worded{"/made/blocks/*/place", QT_TRANSLATE_NOOP("Merge", "block %1, place on its strip")},
    //: how many pieces were cut or sewn; %1 is the work in words
    Worded{"/made/cut/*/count", QT_TRANSLATE_NOOP("Merge", "done: %1")},
    Worded{"/made/cut/*/spoiled", QT_TRANSLATE_NOOP("Merge", "spoiled: %1")},
    Worded{"/made/cut/*", QT_TRANSLATE_NOOP("Merge", "done: %1")},
};

constexpr std::array values{
    Worded{"stitched", QT_TRANSLATE_NOOP("Merge", "stitched")},
    Worded{"trimmed", QT_TRANSLATE_NOOP("Merge", "trimmed")},
    Worded{"joined", QT_TRANSLATE_NOOP("Merge", "joined")},
    Worded{"spoiled", QT_TRANSLATE_NOOP("Merge", "spoiled")},
    Worded{"lost", QT_TRANSLATE_NOOP("Merge", "lost")},
    Worded{"right", QT_TRANSLATE_NOOP("Merge", "right")},
    Worded{"left", QT_TRANSLATE_NOOP("Merge", "left")},
    Worded{"put-off", QT_TRANSLATE_NOOP("Merge", "yes")},
};

QString tell(const char *text)
{
    return QCoreApplication::translate("Merge", text);
}

template <std::size_t N> const Worded *wordedIn(const std::array<Worded, N> &all, std::string_view code)
{
    for (const Worded &one : all)
        if (one.code == code)
            return &one;
    return nullptr;
}

/// The name of a step of a pointer as it was before it was escaped.
QString plain(const QString &step)
{
    return QString(step)
        .replace(QStringLiteral("~1"), QStringLiteral("/"))
        .replace(QStringLiteral("~0"), QStringLiteral("~"));
}

/// "cut-strip front": what was done, told as at its step.
QString workText(const QString &key, const Project &project)
{
    const QString does = key.section(u' ', 0, 0);
    const auto words = wordsFor(doesWords(), does.section(u'/', 0, 0).toStdString());
    if (!words)
        return key;
    return words->contains(QStringLiteral("%1"))
               ? words->arg(clothText(project, key.section(u' ', 1).toStdString()))
               : *words;
}

/// The lists whose things have names of their own.
bool isList(const QStringList &steps, qsizetype length)
{
    static const QStringList lists{QStringLiteral("cloths"), QStringLiteral("patches"),
                                   QStringLiteral("rulers"), QStringLiteral("designs")};
    return (length == 1 && lists.contains(steps[0])) || (length == 2 && steps[0] == QStringLiteral("made"));
}

QString itemText(const QStringList &steps, const QString &item, const Project &project)
{
    if (steps[0] == QStringLiteral("cloths") || (steps.size() > 2 && steps[1] == QStringLiteral("cloths")))
        return clothText(project, item.toStdString());
    if (steps.size() > 2 && steps[1] == QStringLiteral("cut"))
        return workText(item, project);
    return item;
}

QString valueOf(const Json &value, Marks marks);

/// A word of the file: a choice, a length, or her own words.
QString wordText(const std::string &word, Marks marks)
{
    if (const Worded *known = wordedIn(values, word))
        return tell(known->text);
    if (const auto choice = wordsFor(choiceWords(), word))
        return *choice;
    const bool unit =
        word.size() > 3 && (word.substr(word.size() - 3) == " in" || word.substr(word.size() - 3) == " mm");
    if (const auto length = readLength(word, marks.system); unit && length)
        return figureText(length.value(), marks);
    return toQt(word);
}

QString listText(const Json &list, Marks marks)
{
    QStringList parts;
    for (const Json &one : list)
        parts.append(valueOf(one, marks));
    return parts.join(list.size() == 2 ? QStringLiteral(" × ") : QStringLiteral(", "));
}

/// A record without what its label says already: of pieces counted off only how many.
QString recordText(const Json &record, Marks marks)
{
    static const std::set<std::string, std::less<>> said{"block", "cloth", "does", "row", "id", "notes"};
    QStringList parts;
    for (const auto &held : record.items()) {
        const QString text = valueOf(held.value(), marks);
        if (text.isEmpty() || said.find(held.key()) != said.end())
            continue;
        parts.append(held.key() == "strip" ? tell(QT_TRANSLATE_NOOP("Merge", "strip %1")).arg(text)
                     //: a block's place on its strip
                     : held.key() == "place" ? tell(QT_TRANSLATE_NOOP("Merge", "place %1")).arg(text)
                                             : text);
    }
    return parts.join(QStringLiteral(", "));
}

QString valueOf(const Json &value, Marks marks)
{
    if (const auto *word = value.get_ptr<const std::string *>())
        return wordText(*word, marks);
    if (isNumber(value))
        return inSign(toQt(numberText(value)));
    if (value.is_boolean())
        return wordsOrCode(choiceWords(), value.get<bool>() ? "true" : "false");
    if (value.is_array())
        return listText(value, marks);
    return value.is_object() ? recordText(value, marks) : QString();
}

QString counted(qint64 number, const char *one, const char *many)
{
    return number == 1 ? tell(one) : tell(many).arg(number);
}

} // namespace

QString mergeLabel(const std::string &at, const Project &project)
{
    const QStringList steps = toQt(at).split(u'/').mid(1);
    QString pattern;
    QString field;
    QString item;
    for (qsizetype i = 0; i < steps.size(); ++i) {
        if (isList(steps, i)) {
            item = itemText(steps, plain(steps[i]), project);
            pattern += QStringLiteral("/*");
            continue;
        }
        pattern += u'/' + steps[i];
        field += u'/' + steps[i];
    }
    if (const Worded *known = wordedIn(places, pattern.toStdString())) {
        const QString words = tell(known->text);
        return words.contains(QStringLiteral("%1")) ? words.arg(item) : words;
    }
    if (field == QStringLiteral("/cloths/price"))
        field += project.system == System::Inch ? QStringLiteral("/yard") : QStringLiteral("/metre");
    const auto words = wordsFor(fieldWords(), field.toStdString());
    const QString told = words ? *words : steps.isEmpty() ? QString() : plain(steps.last());
    //: %1 is a cloth, a strip or a block, %2 what is told of it
    return item.isEmpty() ? told : QCoreApplication::translate("Merge", "%1: %2").arg(item, told);
}

QString mergeValue(const std::string &json, Marks marks)
{
    if (json.empty())
        //: in place of a value: one of the two tablets says nothing of it
        return QCoreApplication::translate("Merge", "nothing of it");
    const auto read = readJson(json);
    return read ? valueOf(read.value(), marks) : toQt(json);
}

QStringList mergeLines(const Merged &merged, const Project &project, qint64 notes, qint64 photographs)
{
    QStringList lines;
    const auto add = [&](qint64 number, const char *one, const char *many) {
        if (number > 0)
            lines += counted(number, one, many);
    };
    add(merged.blocksCame, QT_TRANSLATE_NOOP("Merge", "one block made on the other tablet"),
        QT_TRANSLATE_NOOP("Merge", "%1 blocks made on the other tablet"));
    add(merged.eventsCame, QT_TRANSLATE_NOOP("Merge", "one thing that happened there"),
        QT_TRANSLATE_NOOP("Merge", "%1 things that happened there"));
    add(notes, QT_TRANSLATE_NOOP("Merge", "one note"), QT_TRANSLATE_NOOP("Merge", "%1 notes"));
    add(photographs, QT_TRANSLATE_NOOP("Merge", "one photograph"),
        QT_TRANSLATE_NOOP("Merge", "%1 photographs"));
    for (const MergeDifference &change : merged.came)
        if (change.at.rfind("/made/blocks/", 0) != 0 || !change.mine.empty())
            //: what is told, and its value on the other tablet
            lines += QCoreApplication::translate("Merge", "%1: %2")
                         .arg(mergeLabel(change.at, project), mergeValue(change.theirs, project.marks()));
    return lines;
}

QString mergeRefusal(const std::string &code)
{
    if (code == "merge-system")
        return QCoreApplication::translate(
            "Merge", "One tablet has this piece in inches, the other in millimetres. Bring it in as a "
                     "project of its own.");
    if (code == "merge-unreadable")
        return QCoreApplication::translate(
            "Merge", "The project on this tablet has something to be mended first, at Fit.");
    return QCoreApplication::translate("Merge",
                                       "The two do not fit together. Bring it in as a project of its own.");
}

} // namespace matside
