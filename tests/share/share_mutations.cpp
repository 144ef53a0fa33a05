// SPDX-License-Identifier: MIT
//
// share_mutations COUNT SEED: spoils an honest share file COUNT times by chance (bytes changed, cut out,
// doubled, cut short; in the archive as it is, and inside a part with the archive and its manifest made to
// fit) and looks into it each time. Nothing may be written anywhere on a refusal; what is taken must be what
// it says. A crash or a hang ends the run.
#include "share/archivereader.h"
#include "share/sharehelp.h"
#include "share/zipmaker.h"

#include <QCoreApplication>
#include <QLoggingCategory>

#include <cstdio>
#include <map>

using namespace sharehelp;
using zipmaker::Part;

namespace {

class Chance {
public:
    explicit Chance(quint32 seed) : m_engine(seed) {}
    qsizetype upTo(qsizetype most) { return static_cast<qsizetype>(m_engine() % (quint64(most) + 1)); }
    char byte() { return static_cast<char>(m_engine()); }

    /// One to eight changes.
    QByteArray spoiled(QByteArray bytes)
    {
        for (qsizetype left = 1 + upTo(7); left > 0 && !bytes.isEmpty(); --left) {
            const qsizetype at = upTo(bytes.size() - 1);
            switch (upTo(6)) {
            case 0:
                bytes.truncate(at);
                break;
            case 1:
                bytes.remove(at, 1 + upTo(40));
                break;
            case 2:
                bytes.insert(at, bytes.mid(upTo(bytes.size() - 1), 1 + upTo(200)));
                break;
            case 3: // a header's number made large or nothing
                bytes.replace(at, qMin<qsizetype>(4, bytes.size() - at),
                              QByteArray(4, upTo(1) != 0 ? '\xFF' : '\0'));
                break;
            default:
                bytes[at] = byte();
            }
        }
        return bytes;
    }

private:
    std::mt19937_64 m_engine;
};

QList<Part> partsOf(const QString &path)
{
    const auto archive = ArchiveReader::open(path);
    QList<Part> parts;
    for (const auto &entry : archive.value()->entries())
        if (entry.name != sharenames::manifest)
            parts.append(Part{entry.name.toUtf8(), archive.value()->read(entry.name, entry.bytes).value()});
    return parts;
}

/// An archive around parts of which one was spoiled, with a manifest that fits.
QByteArray rebuilt(QList<Part> parts, const QString &id, Chance &chance)
{
    Part &part = parts[chance.upTo(parts.size() - 1)];
    const QByteArray before = part.name;
    part.bytes = chance.spoiled(part.bytes);
    if (part.name.startsWith("photographs/")) // under its own hash, and the notes speak of it so
        part.name = "photographs/" + matside::shaOf(part.bytes) + part.name.mid(part.name.indexOf('.'));
    const QByteArray after = part.name;
    Manifest manifest;
    manifest.project = id;
    for (Part &one : parts) {
        if (one.name == "notes.json")
            one.bytes.replace(before, after);
        one.method = chance.upTo(1) != 0 ? 8 : 0;
        manifest.files[QString::fromUtf8(one.name)] = {one.bytes.size(), matside::shaOf(one.bytes)};
    }
    parts.prepend(Part{"manifest.json", writeManifest(manifest)});
    return zipmaker::zip(parts);
}

bool put(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    return file.open(QIODevice::WriteOnly | QIODevice::Truncate) && file.write(bytes) == bytes.size();
}

/// What is taken has to come out again as it went in, in a store of its own.
bool takenWell(const QString &path, const Inside &inside)
{
    Home home(false);
    home.id = home.bringIn(path);
    const QString again = home.dir.filePath(QStringLiteral("again.matside"));
    return !home.id.isEmpty() && got(home.store->load(home.id)) == inside.parcel.document &&
           writeShare(home.parcel(), home.book.folder(), again, Photographs::AsTheyCame).ok();
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication app(argc, argv);
    // Decoders tell of every spoiled picture.
    QLoggingCategory::setFilterRules(QStringLiteral("qt.gui.imageio*=false"));
    const QStringList arguments = QCoreApplication::arguments();
    const int count = arguments.value(1, QStringLiteral("200")).toInt();
    Chance chance(arguments.value(2, QStringLiteral("1")).toUInt());
    const Home home(true);
    QTemporaryDir in;
    const QString honest = in.filePath(QStringLiteral("honest.matside"));
    if (!home.share(honest).isEmpty())
        return 1;
    const QByteArray whole = bytesOf(honest);
    const QList<Part> parts = partsOf(honest);
    const QString path = in.filePath(QStringLiteral("spoiled.matside"));
    const auto before = everything(home.dir.path());
    std::map<QByteArray, int> answers;
    for (int i = 0; i < count; ++i) {
        const QByteArray bytes = i % 2 == 0 ? chance.spoiled(whole) : rebuilt(parts, home.id, chance);
        if (!put(path, bytes))
            return 1;
        const auto inside = lookInside(path);
        ++answers[inside ? QByteArray("taken") : codeOf(inside)];
        Inside unseen;
        unseen.parcel.notes = inside ? inside.value().parcel.notes : home.parcel().notes;
        const bool kept = inside.ok() || !keepPictures(path, unseen, home.book.folder()).ok() ||
                          everything(home.dir.path()) == before;
        const bool quiet = i % 50 != 0 || everything(home.dir.path()) == before;
        if (!kept || !quiet || (inside && !takenWell(path, inside.value()))) {
            std::printf("share_mutations: number %d came out wrong\n", i);
            return 1;
        }
    }
    for (const auto &[code, times] : answers)
        std::printf("  %6d %s\n", times, code.constData());
    const bool nothing = everything(home.dir.path()) == before &&
                         QDir(in.path()).entryList(QDir::Files | QDir::Hidden).size() == 2;
    std::printf("%d spoiled files, %s\n", count, nothing ? "nothing written" : "SOMETHING WAS WRITTEN");
    return nothing ? 0 : 1;
}
