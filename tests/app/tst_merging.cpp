// SPDX-License-Identifier: MIT
//
// Two tablets at one piece: sent over, worked on at both, put together. What is expected is what was done at
// both, kept by the test beside the tablets.
#include "app/mergewords.h"
#include "app/wording.h"
#include "project/codec.h"
#include "sharedesk.h"

#include <QSignalSpy>

#include <random>
#include <set>

using namespace sharehelp;

namespace {

using Change = std::function<void(Project &)>;

/// A tablet with a piece on it.
struct Tablet : Desk {
    explicit Tablet(bool filled) : Desk(filled), id(home.id) {}

    [[nodiscard]] QString document() const { return got(home.store->load(id)); }
    [[nodiscard]] Project project() const { return projectIn(document()); }
    void change(const Change &change)
    {
        workspace.open(id);
        Project next = workspace.project();
        change(next);
        QVERIFY(workspace.commit("edit", next));
    }
    /// Notes a thing; gives the note's id.
    QString note(const QString &block, int pictured = 0)
    {
        Note note =
            noteOf(block, pictured > 0 ? home.keep(encoded(picture(static_cast<quint32>(pictured), {64, 48})))
                                       : std::nullopt);
        const QString text = document();
        got(home.book.log(id, edit(text, text), note));
        return note.id;
    }
    /// A new share file of it.
    [[nodiscard]] QString sent()
    {
        sharing.share(id);
        if (!settled() || sharing.refused())
            qFatal("not shared: %s", qPrintable(sharing.said()));
        return sharing.said().section(u"Written to "_qs, 1).section(u".matside"_qs, 0, 0) + u".matside"_qs;
    }
    void look(const QString &file)
    {
        sharing.look(file);
        QVERIFY(settled());
        QVERIFY2(sharing.refusal().isEmpty(), qPrintable(sharing.refusal()));
    }
    void take(const QString &file)
    {
        look(file);
        QVERIFY(merging().ready());
        sharing.takeIn();
        QVERIFY(settled());
        QVERIFY2(sharing.refusal().isEmpty(), qPrintable(sharing.refusal()));
        QVERIFY(sharing.chosen().isEmpty());
    }
    void bringIn(const QString &file)
    {
        look(file);
        QSignalSpy came(&sharing, &Sharing::broughtIn);
        sharing.bringIn();
        QVERIFY(settled());
        QCOMPARE(came.size(), 1);
        id = came[0][0].toString();
    }
    [[nodiscard]] QStringList noteIds() const
    {
        QStringList ids;
        for (const Note &note : got(home.book.notes(id)))
            ids.append(note.id);
        ids.sort();
        return ids;
    }
    Merging &merging() { return *sharing.merging(); }
    [[nodiscard]] QVariant told(int row, int role) { return merging().data(merging().index(row), role); }

    QString id;
};

MadeBlock stitched(const std::string &name)
{
    MadeBlock block;
    block.block = name;
    block.strip = 1;
    block.place = 2;
    return block;
}

} // namespace

class TestMerging : public QObject {
    Q_OBJECT
private slots:
    void workOfBothIsPutTogether();
    void bothTabletsEndAlike();
    void whatBothChangedIsChosen();
    void asAProjectOfItsOwnAndThenTogether();
    void anOlderFileAsksMore();
    void inchesAndMillimetresStayApart();
    void whatHappenedGetsAnIdOfItsTablet();
    void anyOrderOfWork();
    void everyPlaceHasWords();
};

void TestMerging::workOfBothIsPutTogether()
{
    Tablet mine(true);
    Tablet theirs(false);
    theirs.bringIn(mine.sent());
    QCOMPARE(theirs.id, mine.id);
    mine.note(u"A3"_qs, 7);
    mine.change([](Project &p) { p.made.blocks.push_back(stitched("A3")); });
    theirs.note(u"B1"_qs, 8);
    theirs.change([](Project &p) {
        p.made.blocks.push_back(stitched("B1"));
        p.name = "Runner of both";
    });
    const QString before = mine.document();
    const QStringList notesBefore = mine.noteIds();
    const qsizetype filesBefore = filesIn(mine.home.dir.path(), "photographs").size();

    const QString file = theirs.sent();
    mine.look(file);
    QVERIFY(mine.merging().possible() && mine.merging().ready());
    QCOMPARE(mine.merging().count(), 0);
    QCOMPARE(mine.merging().lines(),
             QStringList({u"one block made on the other tablet"_qs, u"one note"_qs, u"one photograph"_qs,
                          u"the project’s name: Runner of both"_qs}));
    QCOMPARE(mine.document(), before); // a look writes nothing
    QCOMPARE(filesIn(mine.home.dir.path(), "photographs").size(), filesBefore);

    mine.take(file);
    QCOMPARE(names(*mine.home.store), QStringList{u"Runner of both"_qs}); // no second project
    const Project now = mine.project();
    QVERIFY(now.made.goodBlock("A1") && now.made.goodBlock("A3") && now.made.goodBlock("B1"));
    QStringList all = notesBefore + theirs.noteIds();
    all.removeDuplicates();
    all.sort();
    QCOMPARE(mine.noteIds(), all);
    // Only the photograph that was not here: the others have lost their place and device on the way.
    QCOMPARE(filesIn(mine.home.dir.path(), "photographs").size(), filesBefore + 1);
    const auto inFile = lookInside(file);
    QVERIFY(inFile.ok());
    for (const Note &note : got(mine.home.book.notes(mine.id, u"B1"_qs)))
        QVERIFY(note.faces[0] &&
                QFile::exists(mine.home.book.folder().original(note.faces[0]->sha, note.faces[0]->format)) &&
                writeNotes(inFile.value().parcel.notes).contains(note.faces[0]->sha.toLatin1()));

    mine.look(file); // once more: nothing comes
    QVERIFY(mine.merging().nothingNew() && !mine.merging().ready());
    mine.session.openProject(mine.id);
    QVERIFY(mine.session.undoText().contains(u"two tablets together"_qs));
    QVERIFY(mine.workspace.undo()); // one act
    QCOMPARE(mine.document(), before);
    QCOMPARE(mine.noteIds(), notesBefore);
    mine.take(file); // and anew
    QCOMPARE(mine.noteIds(), all);
}

void TestMerging::bothTabletsEndAlike()
{
    Tablet mine(true);
    Tablet theirs(false);
    theirs.bringIn(mine.sent());
    for (int round = 1; round <= 3; ++round) {
        mine.note(u"A%1"_qs.arg(round));
        mine.change([&](Project &p) { p.made.blocks.push_back(stitched("A" + std::to_string(2 + round))); });
        theirs.note(u"B%1"_qs.arg(round));
        theirs.change([&](Project &p) {
            p.made.blocks.push_back(stitched("B" + std::to_string(round)));
            p.name = "Round " + std::to_string(round);
        });
        mine.take(theirs.sent());
        theirs.take(mine.sent());
        QCOMPARE(theirs.document(), mine.document());
        QCOMPARE(theirs.noteIds(), mine.noteIds());
        QCOMPARE(mine.noteIds().size(), 3 + 2 * round);
        mine.look(theirs.sent());
        QVERIFY(mine.merging().nothingNew());
    }
}

void TestMerging::whatBothChangedIsChosen()
{
    Tablet mine(true);
    mine.change([](Project &p) { p.made.cut = {{"front", "cut-strip", 2, 0, {}}}; });
    Tablet theirs(false);
    theirs.bringIn(mine.sent());
    mine.change([](Project &p) {
        p.seam = Length::inches(0, 3, 8);
        p.made.cut[0].count = 5;
    });
    theirs.change([](Project &p) {
        p.seam = Length::inches(0, 5, 8);
        p.edge.sewn = p.edge.sewn == Sewn::Hand ? Sewn::Machine : Sewn::Hand;
        p.made.cut[0].count = 4;
    });
    mine.look(theirs.sent());
    QCOMPARE(mine.merging().count(), 3);
    QCOMPARE(mine.told(0, Merging::Label).toString(), u"seam"_qs);
    QCOMPARE(mine.told(0, Merging::Here).toString(), u"3/8 in"_qs);
    QCOMPARE(mine.told(0, Merging::There).toString(), u"5/8 in"_qs);
    QCOMPARE(mine.told(0, Merging::Why).toString(), u"Both tablets changed it."_qs);
    QCOMPARE(mine.told(1, Merging::Label).toString(), u"sewn on the back"_qs);
    QCOMPARE(mine.told(1, Merging::Why).toString(), u"Something made meanwhile hangs on it."_qs);
    QVERIFY(mine.told(2, Merging::Label).toString().startsWith(u"done: Cut a hoop strip of"_qs));
    QCOMPARE(mine.told(2, Merging::Together).toString(), u"7"_qs);
    mine.sharing.takeIn(); // not yet
    QVERIFY(mine.settled() && !mine.sharing.chosen().isEmpty());
    mine.merging().say(0, Merging::BothTogether); // a seam has no sum
    mine.merging().say(0, Merging::Open);
    mine.merging().say(9, Merging::ThisTablet);
    QCOMPARE(mine.merging().unanswered(), 3);
    mine.merging().say(0, Merging::OtherTablet);
    mine.merging().say(1, Merging::ThisTablet);
    QVERIFY(!mine.merging().ready());
    mine.merging().say(2, Merging::BothTogether);
    QCOMPARE(mine.told(2, Merging::Said).toInt(), int(Merging::BothTogether));
    QVERIFY(mine.merging().ready());
    const Sewn sewn = mine.project().edge.sewn;
    mine.sharing.takeIn();
    QVERIFY(mine.settled());
    QCOMPARE(mine.project().seam, Length::inches(0, 5, 8));
    QVERIFY(mine.project().edge.sewn == sewn);
    QCOMPARE(mine.project().made.cut[0].count, 7);
    // What she chose is not asked again: the other tablet takes it.
    theirs.take(mine.sent());
    QCOMPARE(theirs.document(), mine.document());
}

void TestMerging::asAProjectOfItsOwnAndThenTogether()
{
    Tablet mine(true);
    Tablet theirs(false);
    theirs.bringIn(mine.sent());
    theirs.note(u"B1"_qs, 8);
    const QString file = theirs.sent();
    const QString own = mine.id;
    mine.bringIn(file); // a second one, which has the note's id now
    QVERIFY(mine.id != own);
    mine.id = own;
    QCOMPARE(mine.noteIds().size(), 3);
    mine.take(file);
    QCOMPARE(mine.noteIds().size(), 4);
    mine.look(file);
    QVERIFY(mine.merging().nothingNew()); // the note is known again under its new id
    theirs.look(mine.sent());
    QVERIFY(theirs.merging().nothingNew()); // and on the tablet where it was made
}

void TestMerging::anOlderFileAsksMore()
{
    Tablet mine(true);
    const QString file = mine.paper(u"older.matside"_qs);
    Parcel parcel = mine.home.parcel();
    QVERIFY(!parcel.past.isEmpty());
    parcel.past.clear(); // as an older program wrote it
    parcel.document.replace(u"Reading-room runner"_qs, u"Another name"_qs);
    QVERIFY(writeShare(parcel, mine.home.book.folder(), file).ok());
    mine.look(file);
    QCOMPARE(mine.merging().count(), 1);
    QCOMPARE(mine.told(0, Merging::Why).toString(), u"Which of the two is newer is not known."_qs);
    mine.merging().say(0, Merging::OtherTablet);
    mine.sharing.takeIn();
    QVERIFY(mine.settled());
    QCOMPARE(names(*mine.home.store), QStringList{u"Another name"_qs});
}

void TestMerging::inchesAndMillimetresStayApart()
{
    Tablet mine(true);
    Parcel parcel = mine.home.parcel();
    parcel.document = QString::fromStdString(writeProject(inWholeMillimetres(mine.project())));
    const QString file = mine.paper(u"metric.matside"_qs);
    QVERIFY(writeShare(parcel, mine.home.book.folder(), file).ok());
    mine.look(file);
    QVERIFY(mine.merging().possible() && !mine.merging().ready());
    QVERIFY(mine.merging().refusal().startsWith(u"One tablet has this piece in inches"_qs));
    QVERIFY(mine.merging().lines().isEmpty());
    mine.bringIn(file); // this always goes
    QCOMPARE(names(*mine.home.store).size(), 2);
}

void TestMerging::whatHappenedGetsAnIdOfItsTablet()
{
    Tablet mine(true);
    for (int i = 0; i < 2; ++i)
        mine.change([](Project &p) {
            MadeEvent bobbin;
            bobbin.event = "new-bobbin";
            p.made.events.push_back(bobbin);
        });
    const auto events = mine.project().made.events;
    QCOMPARE(events.size(), std::size_t(2));
    QVERIFY(!QUuid(QString::fromStdString(events[0].id)).isNull());
    QVERIFY(events[0].id != events[1].id);
}

void TestMerging::anyOrderOfWork()
{
    std::mt19937_64 chance(20);
    const auto upTo = [&](std::uint64_t most) { return chance() % (most + 1); };
    for (int round = 0; round < 6; ++round) {
        Tablet one(true);
        Tablet other(false);
        other.bringIn(one.sent());
        QStringList all = one.noteIds();
        std::set<std::string> blocks;
        for (int work = 0; work < 12; ++work) {
            Tablet &tablet = upTo(1) ? one : other;
            Tablet &from = &tablet == &one ? other : one;
            if (upTo(2) == 0) {
                const QString file = from.sent();
                tablet.look(file);
                if (!tablet.merging().nothingNew())
                    tablet.take(file);
                continue;
            }
            all.append(tablet.note(u"C%1"_qs.arg(work)));
            const std::string name = "D" + std::to_string(work);
            blocks.insert(name);
            tablet.change([&](Project &p) { p.made.blocks.push_back(stitched(name)); });
        }
        for (const auto &[to, from] : {std::pair(&one, &other), std::pair(&other, &one)}) {
            const QString file = from->sent();
            to->look(file);
            if (!to->merging().nothingNew())
                to->take(file);
        }
        all.sort();
        QCOMPARE(one.noteIds(), all);
        QCOMPARE(other.noteIds(), all);
        QCOMPARE(one.document(), other.document());
        QCOMPARE(one.project().made.blocks.size(), blocks.size() + 1);
    }
}

void TestMerging::everyPlaceHasWords()
{
    // Every place of a project file that says something, found by leaving it out.
    Tablet mine(true);
    mine.workspace.open(mine.id);
    const Project example = mine.workspace.project();
    const auto merged = mergeProjects({}, writeProject(example), writeProject(freshProject(System::Inch)));
    QVERIFY(merged.ok());
    for (const MergeQuestion &asked : merged.value().questions) {
        const QString label = mergeLabel(asked.differs.at, example);
        QVERIFY2(!label.isEmpty() && !label.contains(u'/') && !label.contains(u'%'),
                 asked.differs.at.c_str());
        const QString key = QString::fromStdString(asked.differs.at).section(u'/', -1);
        QVERIFY2(label != key || wordsFor(fieldWords(), asked.differs.at), qPrintable(label));
        for (const std::string &value : {asked.differs.mine, asked.differs.theirs}) {
            const QString words = mergeValue(value, example.marks());
            QVERIFY2(!words.contains(u'{') && !words.contains(u'"'), qPrintable(words));
        }
    }
}

QTEST_GUILESS_MAIN(TestMerging)
#include "tst_merging.moc"
