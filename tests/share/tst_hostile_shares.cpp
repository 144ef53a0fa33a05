// SPDX-License-Identifier: MIT
//
// Share files nobody honest would write: each is refused by name, and nothing is written anywhere.
#include "share/archivereader.h"
#include "share/sharehelp.h"
#include "share/zipmaker.h"

#include <functional>

using namespace sharehelp;
using zipmaker::Part;

namespace {

/// The parts of an honest share file, to be spoiled.
struct Shared {
    QMap<QByteArray, QByteArray> files; ///< without the manifest
    Manifest manifest;

    /// The manifest as it should be for the files as they are now.
    void list()
    {
        manifest.files.clear();
        for (auto file = files.cbegin(); file != files.cend(); ++file)
            manifest.files[QString::fromUtf8(file.key())] = {file.value().size(),
                                                             matside::shaOf(file.value())};
    }
    [[nodiscard]] QList<Part> parts() const
    {
        QList<Part> all{{"manifest.json", writeManifest(manifest)}};
        for (auto file = files.cbegin(); file != files.cend(); ++file)
            all.append({file.key(), file.value()});
        return all;
    }
    [[nodiscard]] QByteArray picture() const
    {
        for (const QByteArray &name : files.keys())
            if (name.endsWith(".png"))
                return name;
        return {};
    }
    void change(const char *name, const QByteArray &from, const QByteArray &to)
    {
        if (!files[name].contains(from))
            qFatal("no %s in %s", from.constData(), name);
        files[name].replace(from, to);
        list();
    }
};

Shared honest()
{
    const Home home(true);
    QTemporaryDir out;
    const QString path = out.filePath(u"one.matside"_qs);
    if (!home.share(path).isEmpty())
        qFatal("no share file");
    const auto archive = ArchiveReader::open(path);
    Shared shared;
    for (const auto &entry : archive.value()->entries())
        if (entry.name != sharenames::manifest)
            shared.files[entry.name.toUtf8()] = archive.value()->read(entry.name, entry.bytes).value();
    shared.manifest.project = home.id;
    shared.list();
    return shared;
}

using Spoil = std::function<QByteArray(Shared &)>;

struct Trick {
    const char *name;
    const char *code;
    Spoil spoil;
};

/// One more part, spoken of in the manifest too.
Spoil withPart(Part part)
{
    return [part](Shared &shared) {
        shared.manifest.files[QString::fromUtf8(part.name)] = {part.bytes.size(), matside::shaOf(part.bytes)};
        QList<Part> parts = shared.parts();
        parts.append(part);
        return zipmaker::zip(parts);
    };
}

/// A part of the honest file changed in its own entry.
Spoil withChanged(const std::function<void(Part &)> &change)
{
    return [change](Shared &shared) {
        QList<Part> parts = shared.parts();
        change(parts.last());
        return zipmaker::zip(parts);
    };
}

Spoil withText(const char *name, const QByteArray &from, const QByteArray &to)
{
    return [=](Shared &shared) {
        shared.change(name, from, to);
        return zipmaker::zip(shared.parts());
    };
}

/// The text of the manifest changed.
Spoil withManifest(const QByteArray &from, const QByteArray &to)
{
    return [=](Shared &shared) {
        QList<Part> parts = shared.parts();
        if (!parts[0].bytes.contains(from))
            qFatal("no %s in the manifest", from.constData());
        parts[0].bytes.replace(from, to);
        return zipmaker::zip(parts);
    };
}

QList<Trick> pathTricks()
{
    QList<Trick> rows;
    for (const char *name : {"../evil.json", "photographs/../../evil", "/etc/evil", "..", "./evil", "C:evil",
                             "photographs\\evil", "..\\evil", "a/./b"})
        rows.append({name, "outside-path", withPart({name, "x"})});
    rows.append({"a link", "link", withPart({"photographs/a", "../../evil", 0120777})});
    rows.append({"a device", "link", withPart({"photographs/a", "", 020644})});
    rows.append({"a folder that is a file", "link", withPart({"photographs/a", "", 040755})});
    rows.append({"the project a link", "link", withChanged([](Part &part) { part.mode = 0120777; })});
    rows.append({"a name of many letters", "stray-file", withPart({QByteArray(300, 'a'), "x"})});
    rows.append({"an odd name", "stray-file", withPart({"na\x01me", "x"})});
    rows.append({"a program", "stray-file", withPart({"run.sh", "#!/bin/sh", 0100755})});
    return rows;
}

QList<Trick> bombs()
{
    const QByteArray picture = "photographs/" + QByteArray(64, 'a') + ".png";
    QList<Trick> rows;
    rows.append({"zeros", "too-tight", withPart({picture, QByteArray(20'000'000, '\0'), 0100644, 8})});
    rows.append({"claims gigabytes", "too-tight",
                 withChanged([](Part &part) { part.claimed = qint64{2'900'000'000}; })});
    rows.append({"claims more than any", "too-large",
                 withChanged([](Part &part) { part.claimed = qint64{4'000'000'000}; })});
    rows.append({"more than it claims", "wrong-hash", withChanged([](Part &part) { part.claimed = 10; })});
    rows.append({"a huge project", "too-large", [](Shared &shared) {
                     shared.files["project.json"].append(QByteArray(5 << 20, ' '));
                     shared.list();
                     return zipmaker::zip(shared.parts());
                 }});
    rows.append({"ten thousand files", "too-many-files", [](Shared &shared) {
                     QList<Part> parts = shared.parts();
                     for (int i = 0; i < 10'000; ++i)
                         parts.append(Part{"photographs/" + QByteArray::number(i), ""});
                     return zipmaker::zip(parts);
                 }});
    rows.append({"a long list of nothing", "too-many-files", [](Shared &shared) {
                     for (int i = 0; i < 6'000; ++i)
                         shared.manifest.files[u"photographs/%1"_qs.arg(i)] = {0, QByteArray(64, '0')};
                     return zipmaker::zip(shared.parts());
                 }});
    return rows;
}

QList<Trick> lies()
{
    QList<Trick> rows;
    rows.append({"a changed word", "wrong-hash", [](Shared &shared) {
                     shared.files["notes.json"].replace("pressed open", "pressed shut");
                     return zipmaker::zip(shared.parts());
                 }});
    rows.append({"a longer project", "wrong-hash", [](Shared &shared) {
                     shared.files["project.json"].append(' ');
                     return zipmaker::zip(shared.parts());
                 }});
    rows.append({"a picture under another's hash", "wrong-hash", [](Shared &shared) {
                     shared.files[shared.picture()] = encoded(picture(77, {40, 30}), "png");
                     shared.list();
                     return zipmaker::zip(shared.parts());
                 }});
    rows.append({"words for a picture", "not-a-picture", [](Shared &shared) {
                     const QByteArray words = "no picture at all";
                     const QByteArray old = shared.picture();
                     const QByteArray name = "photographs/" + matside::shaOf(words) + ".png";
                     shared.files.remove(old);
                     shared.files[name] = words;
                     shared.change("notes.json", old, name);
                     return zipmaker::zip(shared.parts());
                 }});
    rows.append({"a picture of another format", "not-a-picture", [](Shared &shared) {
                     const QByteArray old = shared.picture();
                     const QByteArray name = old.left(old.indexOf('.')) + ".gif";
                     shared.files[name] = shared.files.take(old);
                     shared.change("notes.json", old, name);
                     return zipmaker::zip(shared.parts());
                 }});
    rows.append({"a picture gone", "missing-file", [](Shared &shared) {
                     shared.files.remove(shared.picture());
                     return zipmaker::zip(shared.parts());
                 }});
    rows.append({"a picture neither there nor listed", "missing-file", [](Shared &shared) {
                     shared.files.remove(shared.picture());
                     shared.list();
                     return zipmaker::zip(shared.parts());
                 }});
    rows.append({"no project", "missing-file", [](Shared &shared) {
                     shared.files.remove("project.json");
                     shared.list();
                     return zipmaker::zip(shared.parts());
                 }});
    rows.append({"a file not listed", "stray-file", [](Shared &shared) {
                     QList<Part> parts = shared.parts();
                     parts.append(Part{"photographs/extra.png", "x"});
                     return zipmaker::zip(parts);
                 }});
    rows.append({"a picture no note shows", "stray-file", [](Shared &shared) {
                     const QByteArray extra = encoded(picture(78, {40, 30}), "png");
                     shared.files["photographs/" + matside::shaOf(extra) + ".png"] = extra;
                     shared.list();
                     return zipmaker::zip(shared.parts());
                 }});
    rows.append({"the project twice", "doubled-file", withPart({"project.json", "{}"})});
    rows.append({"the project in capitals", "doubled-file", withPart({"PROJECT.json", "{}"})});
    rows.append(
        {"listed twice", "doubled-file", withManifest("\"photographs/", "\"project.json\", \"x\": \"")});
    rows.append({"encrypted", "locked", withChanged([](Part &part) { part.flags = 1; })});
    rows.append({"packed oddly", "unknown-packing", withChanged([](Part &part) { part.method = 12; })});
    return rows;
}

QList<Trick> texts()
{
    QList<Trick> rows;
    rows.append(
        {"no manifest", "not-a-share", [](Shared &shared) { return zipmaker::zip(shared.parts().mid(1)); }});
    rows.append({"another manifest", "not-a-share", withManifest("matside-share", "basket")});
    rows.append({"a newer share", "newer", withManifest("\"version\": 1", "\"version\": 2")});
    rows.append({"a far newer share", "newer", withManifest("\"version\": 1", "\"version\": 1e99")});
    rows.append({"no version", "bad-manifest", withManifest("\"version\": 1", "\"version\": \"1\"")});
    rows.append(
        {"a doubled key", "bad-manifest", withManifest("\"version\": 1", "\"version\": 1, \"version\": 1")});
    rows.append({"no id", "bad-manifest", withManifest("\"project\": \"", "\"project\": \"x")});
    const auto withPast = [](const QByteArray &past) {
        return withManifest("\"version\": 1", "\"past\": " + past + ", \"version\": 1");
    };
    rows.append({"a past that is no list", "bad-manifest", withPast("1")});
    rows.append({"a past of no hashes", "bad-manifest", withPast("[\"x\"]")});
    QByteArrayList hashes;
    for (int i = 0; i <= mostPast; ++i)
        hashes << '"' + QByteArray::number(i).rightJustified(64, '0') + '"';
    rows.append({"a past too long", "bad-manifest", withPast('[' + hashes.join(',') + ']')});
    rows.append({"no hash", "bad-manifest", withManifest("\"sha256\": \"", "\"sha256\": \"x")});
    rows.append({"a size below nothing", "bad-manifest", withManifest("\"bytes\": ", "\"bytes\": -")});
    rows.append({"a newer project", "newer", withText("project.json", "\"version\": 1", "\"version\": 7")});
    rows.append({"no project in it", "bad-project", withText("project.json", "matside-project", "other")});
    rows.append(
        {"a broken project", "bad-project", withText("project.json", "\"blocks\": {", "\"blocks\": {{")});
    rows.append(
        {"notes of no block", "bad-notes", withText("notes.json", "\"block\": \"A1\"", "\"block\": \"\"")});
    rows.append(
        {"notes of both", "bad-notes", withText("notes.json", "\"step\":", "\"block\": \"A1\", \"step\":")});
    rows.append({"notes that are none", "bad-notes",
                 withText("notes.json", "\"notes\": [", "\"notes\": 3, \"x\": [")});
    rows.append(
        {"a length that is none", "bad-notes", withText("notes.json", "6 15/16 in", "as long as it is")});
    rows.append({"a face elsewhere", "bad-notes",
                 withText("notes.json", "\"front\": \"photographs/", "\"front\": \"../../photographs/")});
    rows.append({"an id that is none", "bad-notes", withText("notes.json", "\"id\": \"", "\"id\": \"x")});
    return rows;
}

QList<Trick> raw()
{
    QList<Trick> rows;
    const auto text = [&](const char *name, const QByteArray &bytes) {
        rows.append({name, "not-an-archive", [bytes](Shared &) { return bytes; }});
    };
    text("empty", {});
    text("words", "This is no share file, but it is long enough to be one.");
    rows.append(
        {"an end alone", "too-many-files", [](Shared &) { return "PK\x05\x06" + QByteArray(18, '\xFF'); }});
    rows.append({"an empty archive", "not-a-share", [](Shared &) { return zipmaker::zip({}); }});
    rows.append({"cut short", "not-an-archive",
                 [](Shared &shared) { return zipmaker::zip(shared.parts()).chopped(9); }});
    rows.append({"with a comment", "not-an-archive",
                 [](Shared &shared) { return zipmaker::zip(shared.parts()) + "see also"; }});
    rows.append({"a tail before", "not-an-archive",
                 [](Shared &shared) { return "MZ" + zipmaker::zip(shared.parts()); }});
    return rows;
}

} // namespace

class TestHostileShares : public QObject {
    Q_OBJECT
private slots:
    void anHonestOneIsTaken();
    void isRefusedByName_data();
    void isRefusedByName();
    void whatChangesAfterTheLookIsRefused();
    void isNoFolder();
};

void TestHostileShares::anHonestOneIsTaken()
{
    Shared shared = honest();
    QTemporaryDir in;
    QList<Part> parts = shared.parts();
    parts.append(Part{"photographs/", "", 040755}); // as general tools put it in
    for (Part &part : parts)
        part.method = part.name.endsWith(".json") ? 8 : 0;
    const QString path = in.filePath(u"one.matside"_qs);
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly) && file.write(zipmaker::zip(parts)) > 0);
    file.close();
    const auto inside = lookInside(path);
    QVERIFY2(inside.ok(), codeOf(inside) + (inside ? "" : inside.error().name.toUtf8()));
    Home home(false);
    QCOMPARE(home.bringIn(path), shared.manifest.project);
}

void TestHostileShares::isRefusedByName_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QByteArray>("code");
    const Shared good = honest();
    for (const QList<Trick> &rows : {pathTricks(), bombs(), lies(), texts(), raw()})
        for (const Trick &row : rows) {
            Shared shared = good;
            QTest::newRow(row.name) << row.spoil(shared) << QByteArray(row.code);
        }
}

void TestHostileShares::isRefusedByName()
{
    QFETCH(QByteArray, bytes);
    QFETCH(QByteArray, code);
    QTemporaryDir in;
    QVERIFY(QDir(in.path()).mkpath(u"deep/deeper"_qs));
    const QString path = in.filePath(u"deep/deeper/one.matside"_qs);
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
    file.close();
    Home home(true);
    const auto before = everything(home.dir.path());
    const auto outside = everything(in.path());
    QCOMPARE(codeOf(lookInside(path)), code);
    // Even when it was not looked into first.
    Inside unseen;
    unseen.parcel.notes = home.parcel().notes;
    const auto kept = keepPictures(path, unseen, home.book.folder());
    QVERIFY(!kept.ok() || unseen.parcel.notes.empty());
    QCOMPARE(everything(home.dir.path()), before);
    QCOMPARE(everything(in.path()), outside);
    QCOMPARE(names(*home.store).size(), 1);
}

void TestHostileShares::whatChangesAfterTheLookIsRefused()
{
    // Looked into, then another file put in its place: the photographs kept before the fault go again.
    Shared shared = honest();
    QTemporaryDir in;
    const QString path = in.filePath(u"one.matside"_qs);
    const auto put = [&](const QByteArray &bytes) {
        QFile file(path);
        return file.open(QIODevice::WriteOnly | QIODevice::Truncate) && file.write(bytes) == bytes.size();
    };
    QVERIFY(put(zipmaker::zip(shared.parts())));
    const auto inside = lookInside(path);
    QVERIFY(inside.ok());
    const Photograph last = *inside.value().parcel.notes[0].faces[1];
    QList<Part> parts = shared.parts();
    for (Part &part : parts)
        if (part.name == pictureName(last).toUtf8())
            part.bytes[part.bytes.size() / 2] = char(part.bytes[part.bytes.size() / 2] ^ 1);
    QVERIFY(put(zipmaker::zip(parts)));
    const Home home(false);
    QCOMPARE(codeOf(keepPictures(path, inside.value(), home.book.folder())), QByteArray("wrong-hash"));
    QVERIFY(filesIn(home.dir.path(), "photographs").isEmpty());
    QVERIFY(filesIn(home.dir.path(), "thumbs").isEmpty());
}

void TestHostileShares::isNoFolder()
{
    QTemporaryDir in;
    QCOMPARE(codeOf(lookInside(in.path())), QByteArray("cannot-open"));
    QCOMPARE(codeOf(lookInside(in.filePath(u"none.matside"_qs))), QByteArray("cannot-open"));
}

QTEST_GUILESS_MAIN(TestHostileShares)
#include "tst_hostile_shares.moc"
