// SPDX-License-Identifier: MIT
//
// Project files on the screen: found, looked into, mended and laid on the shelf without being written to; and
// what of a project that cannot be read in full is never written over.
#include "app/fitmodel.h"
#include "app/session.h"
#include "app/shelf.h"
#include "project/codec.h"

#include "testing.h"
#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

using namespace matside;

namespace {

QByteArray example()
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// The example with a seam that is no length and an edge nobody knows; the rest is sound.
QByteArray faulty()
{
    return example()
        .replace("\"seam\": \"1/2 in\",\n  \"sashing\"", "\"seam\": \"soft\",\n  \"sashing\"")
        .replace("\"kind\": \"magnetic\"", "\"kind\": \"nailed\"");
}

void put(const QString &path, const QByteArray &text)
{
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    QCOMPARE(file.write(text), text.size());
}

QByteArray got(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

struct Desk {
    explicit Desk(const QByteArray &document = example()) : store(std::move(openStore(dir.path()).value()))
    {
        id = store->create(QString::fromUtf8(document)).value();
        session.openProject(id);
        fit.files()->setDocuments(papers.path());
    }
    QTemporaryDir dir;
    QTemporaryDir papers;
    std::unique_ptr<Store> store;
    QString id;
    Workspace workspace{*store};
    Session session{workspace};
    Shelf shelf{workspace, session};
    FitModel fit{workspace};
    OpenFiles &files = *fit.files();
};

QStringList names(const OpenFiles &files)
{
    QStringList list;
    for (int row = 0; row < files.rowCount(); ++row)
        list << files.index(row).data(OpenFiles::Name).toString();
    return list;
}

} // namespace

class TestOpenFiles : public QObject {
    Q_OBJECT
private slots:
    void onlyFoldersAndProjectsAreListed()
    {
        Desk desk;
        const QDir papers(desk.papers.path());
        QVERIFY(papers.mkdir(QStringLiteral("older")));
        put(papers.filePath(QStringLiteral("runner.json")), example());
        put(papers.filePath(QStringLiteral("accounts.json")), "{\"format\": \"something else\"}");
        put(papers.filePath(QStringLiteral("letter.txt")), example());
        desk.files.showDocuments();
        QCOMPARE(names(desk.files), QStringList({QStringLiteral("older"), QStringLiteral("runner")}));
        QVERIFY(desk.files.index(0).data(OpenFiles::IsFolder).toBool());
        desk.files.show(desk.files.index(0).data(OpenFiles::Path).toString());
        QCOMPARE(desk.files.rowCount(), 0);
        QVERIFY(desk.files.canGoUp());
        desk.files.goUp();
        QCOMPARE(desk.files.folder(), papers.absolutePath());
        desk.files.show(QStringLiteral("/"));
        QVERIFY(!desk.files.canGoUp());
    }

    void aSoundFileIsLaidOnTheShelfAsItIs()
    {
        Desk desk;
        const QString path = QDir(desk.papers.path()).filePath(QStringLiteral("runner.json"));
        put(path, example());
        desk.files.look(path);
        QVERIFY(desk.files.ready());
        QVERIFY(desk.files.problems().isEmpty());
        const QString id = desk.files.open();
        QVERIFY(!id.isEmpty() && id != desk.id);
        QCOMPARE(desk.store->load(id).value().toUtf8(), example());
        QCOMPARE(got(path), example());
        QVERIFY(desk.files.chosen().isEmpty());
        // Opening is a change of the shelf like any other.
        QVERIFY(desk.store->undoableShelf().value().has_value());
    }

    void whatIsWrongIsSaidAndMendedInTheCopy()
    {
        Desk desk;
        const QString path = QDir(desk.papers.path()).filePath(QStringLiteral("faulty.json"));
        put(path, faulty());
        desk.files.look(path);
        QVERIFY(!desk.files.ready());
        QCOMPARE(desk.files.open(), QString());
        QCOMPARE(desk.store->projects().value().size(), std::size_t(1));
        QCOMPARE(desk.files.problems().size(), 2);
        for (int guard = 0; guard < 5 && !desk.files.problems().isEmpty(); ++guard) {
            const QVariantMap first = desk.files.problems().first().toMap();
            QVERIFY(first.value(QStringLiteral("says")).toString().size() > 10);
            QVERIFY(!first.value(QStringLiteral("offers")).toList().isEmpty());
            desk.files.takeOffer(0, 0);
        }
        QVERIFY(desk.files.ready());
        QVERIFY(!desk.files.open().isEmpty());
        QCOMPARE(got(path), faulty());
    }

    void whatIsNoProjectIsRefusedInWords_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("empty") << QByteArray();
        QTest::newRow("no JSON") << QByteArray("\"matside-project\" but not JSON");
        QTest::newRow("newer") << example().replace("\"version\": 1", "\"version\": 99");
        QTest::newRow("not UTF-8") << example().replace("Reading", "Read\xff");
    }
    void whatIsNoProjectIsRefusedInWords()
    {
        QFETCH(QByteArray, text);
        Desk desk;
        const QString path = QDir(desk.papers.path()).filePath(QStringLiteral("odd.json"));
        put(path, text);
        desk.files.look(path);
        QVERIFY(!desk.files.ready());
        QVERIFY2(desk.files.refusal().size() > 10, qPrintable(desk.files.refusal()));
        QVERIFY(desk.files.open().isEmpty());
        QCOMPARE(desk.store->projects().value().size(), std::size_t(1));
    }

    void aFileThatIsGoneIsRefusedToo()
    {
        Desk desk;
        desk.files.look(QDir(desk.papers.path()).filePath(QStringLiteral("gone.json")));
        QVERIFY(!desk.files.ready());
        QVERIFY(!desk.files.refusal().isEmpty());
    }

    void theProjectIsWrittenToAFileAndNothingIsWrittenOver()
    {
        Desk desk;
        desk.fit.nudge(QStringLiteral("/blocks/rows"), 1);
        const QString name = desk.files.nameForFile();
        QVariantMap said = desk.files.write(name);
        QVERIFY2(said.value(QStringLiteral("ok")).toBool(),
                 qPrintable(said.value(QStringLiteral("says")).toString()));
        const QString path = QDir(desk.papers.path()).filePath(name + QStringLiteral(".json"));
        QCOMPARE(got(path), desk.store->load(desk.id).value().toUtf8());
        // The same name is refused and the file left; the next name proposed is free.
        put(path, "mine");
        said = desk.files.write(name);
        QVERIFY(!said.value(QStringLiteral("ok")).toBool());
        QVERIFY(!said.value(QStringLiteral("says")).toString().isEmpty());
        QCOMPARE(got(path), QByteArray("mine"));
        QVERIFY(desk.files.nameForFile() != name);
        QVERIFY(desk.files.write(desk.files.nameForFile()).value(QStringLiteral("ok")).toBool());
        QCOMPARE(QDir(desk.papers.path()).entryList(QDir::Files).size(), 2);
        // A name never leads out of the folder.
        QVERIFY(!desk.files.write(QStringLiteral(" / ")).value(QStringLiteral("ok")).toBool());
        QVERIFY(desk.files.write(QStringLiteral("../beside")).value(QStringLiteral("ok")).toBool());
        QCOMPARE(QDir(desk.papers.path()).entryList(QDir::Files).size(), 3);
    }

    void aProjectThatIsNotReadInFullIsNotCopied()
    {
        Desk desk(faulty());
        const QString before = desk.store->load(desk.id).value();
        for (const bool metric : {false, true}) {
            desk.session.dismissNotice();
            metric ? desk.shelf.metricCopy(desk.id) : desk.shelf.makeAgain(desk.id);
            QVERIFY(!desk.session.notice().isEmpty());
            QCOMPARE(desk.store->projects().value().size(), std::size_t(1));
            QCOMPARE(desk.store->load(desk.id).value(), before);
        }
        const auto again = desk.store->makeAgain(desk.id, QStringLiteral("again"));
        QVERIFY(!again);
        QCOMPARE(again.error().code, StoreCode::Unsound);
    }

    void aProjectThatIsNotReadInFullIsOnlyMended()
    {
        Desk desk(faulty());
        const QString before = desk.store->load(desk.id).value();
        QSignalSpy told(&desk.workspace, &Workspace::failed);
        desk.fit.nudge(QStringLiteral("/blocks/rows"), 1);
        desk.fit.beginDrag(QStringLiteral("/blocks/columns"));
        desk.fit.dragCorner(40.0 * 25.4, 32.0 * 25.4);
        desk.fit.endDrag();
        QCOMPARE(told.size(), 2);
        QCOMPARE(desk.store->load(desk.id).value(), before);
        QCOMPARE(desk.workspace.project().blocks.rows, 3);
        // Its remedies stand at Fit; with the last of them taken everything can be changed again.
        for (int guard = 0; guard < 5 && !desk.workspace.faults().empty(); ++guard)
            desk.fit.takeOffer(0, 0);
        QVERIFY(desk.workspace.faults().empty());
        desk.fit.nudge(QStringLiteral("/blocks/rows"), 1);
        QCOMPARE(desk.workspace.project().blocks.rows, 4);
        desk.shelf.makeAgain(desk.id);
        QCOMPARE(desk.store->projects().value().size(), std::size_t(2));
    }
};

QTEST_GUILESS_MAIN(TestOpenFiles)
#include "tst_openfiles.moc"
