// SPDX-License-Identifier: MIT
#include "faults/deeds.h"
#include "faults/disk/record.h"
#include "faults/ledger.h"
#include "store/photohelp.h"
#include "store/storehelp.h"

#include <QProcess>

using namespace storehelp;

namespace {

constexpr int pageSize = 4096;  // SQLite's default since 3.12 (sqlite.org/pgszchng2016.html)
constexpr int headerSize = 100; // sqlite.org/fileformat.html, 1.3

/// A shelf on which much was done.
QByteArray workedOn(const QString &root)
{
    deeds::Deeds deeds(root, 7);
    for (int deed = 0; deed < 150; ++deed)
        if (const auto outcome = deeds.next(); outcome.end != deeds::End::Done)
            qFatal("%s", qPrintable(outcome.told));
    deeds.close();
    return bytesOf(storeFile(deeds.shelf()));
}

/// One damage of a page: a sector of rubbish or of zeros, or a few bytes.
void damage(QByteArray &bytes, int page, std::mt19937 &random)
{
    const qsizetype start = qsizetype(page) * pageSize;
    const qsizetype sector = start + qsizetype(random() % 8) * 512;
    switch (random() % 3) {
    case 0:
        bytes.replace(sector, 512, QByteArray(512, '\0'));
        return;
    case 1:
        for (qsizetype at = sector; at < sector + 512; ++at)
            bytes[at] = char(random());
        return;
    default:
        for (unsigned flips = 1 + unsigned(random() % 8); flips > 0; --flips)
            bytes[start + qsizetype(random() % pageSize)] = char(random());
    }
}

class LockHolder {
public:
    LockHolder(const QString &file, const QStringList &how = {})
    {
        m_process.start(QCoreApplication::applicationDirPath() + u"/lock_holder"_qs, QStringList{file} + how);
        m_holds = m_process.waitForReadyRead(30'000) && m_process.readAll().startsWith("held");
    }
    ~LockHolder()
    {
        m_process.closeWriteChannel();
        m_process.waitForFinished();
    }
    LockHolder(const LockHolder &) = delete;
    LockHolder &operator=(const LockHolder &) = delete;
    [[nodiscard]] bool holds() const { return m_holds; }

private:
    QProcess m_process;
    bool m_holds = false;
};

} // namespace

/// What else can become of the file, of the clock, and of other programs at the same time.
class TestStoreFaults : public QObject {
    Q_OBJECT

private slots:
    // What is flushed here need not reach a disk.
    void initTestCase() { disk_watch(qPrintable(QDir::tempPath())); }
    void cleanup() { disk_clock(0); }
    void anyDamageIsShownOrHarmless();
    void anyDamageOfTheLogLosesOnlyWhatCameAfter();
    void aLockedFileIsToldAndThenWritten();
    void aClockSetBackChangesNoOrder();
};

void TestStoreFaults::anyDamageIsShownOrHarmless()
{
    QTemporaryDir root;
    const QByteArray sound = workedOn(root.path());
    const auto pages = int(sound.size() / pageSize);
    std::mt19937 random(seed());
    int shown = 0, unseen = 0, refused = 0;
    for (int number = 0; number < std::max(pages, count(200)); ++number) {
        const int page = number % pages;
        const QByteArray where =
            qPrintable(u"seed %1, damage %2, page %3"_qs.arg(seed()).arg(number).arg(page + 1));
        QByteArray bytes = sound;
        damage(bytes, page, random);
        QTemporaryDir folder;
        QVERIFY(overwrite(storeFile(folder.path()), 0, bytes));
        auto store = openStore(folder.path());
        if (!store) {
            // Only where the file no longer says that it is ours, and of which version.
            QVERIFY2(page == 0 && bytes.left(headerSize) != sound.left(headerSize), where);
            QVERIFY2(bytesOf(storeFile(folder.path())) == bytes, where);
            ++refused;
            continue;
        }
        const bool full = store.value()->access() == Access::Full;
        QVERIFY2(full || store.value()->access() == Access::Damaged, where);
        const auto rows = store.value()->projects();
        for (const ProjectRow &row : rows ? rows.value() : std::vector<ProjectRow>()) {
            (void)store.value()->load(row.id);
            (void)store.value()->undoable(row.id);
            (void)NoteBook(*store.value()).notes(row.id);
        }
        const auto exported = store.value()->exportReadable(folder.filePath(u"out"_qs));
        QVERIFY2(exported, where);
        if (full) {
            ++unseen;
            // Nobody can tell bytes that were text from other text; the work goes on with what is there.
            const auto made = store.value()->create(documentOf(u"After"_qs));
            QVERIFY2(made || made.error().code == StoreCode::Damaged ||
                         made.error().code == StoreCode::Refused,
                     where);
        } else {
            ++shown;
            store.value().reset();
            QVERIFY2(bytesOf(storeFile(folder.path())) == bytes, where);
        }
    }
    // How many hit what the database itself looks at, and not a text or a page in no use, is chance.
    QVERIFY(shown > 0);
    qInfo("%d pages: %d damages shown, %d in no use or within a text, %d left as another's file", pages,
          shown, unseen, refused);
}

void TestStoreFaults::anyDamageOfTheLogLosesOnlyWhatCameAfter()
{
    QTemporaryDir living;
    QList<QByteArray> sums;
    auto store = opened(living.path());
    sums.append(ledger::sumOf(storeFile(living.path())));
    for (int number = 0; number < 12; ++number) {
        got(store->create(documentOf(u"Project %1"_qs.arg(number))));
        sums.append(ledger::sumOf(storeFile(living.path())));
    }
    const QByteArray file = bytesOf(storeFile(living.path())),
                     log = bytesOf(storeFile(living.path()) + u"-wal"_qs);
    QVERIFY(log.size() > 12 * pageSize);
    std::mt19937 random(seed());
    int before = 0;
    for (int number = 0; number < count(100); ++number) {
        QByteArray bytes = log;
        const auto at = qsizetype(random() % std::size_t(log.size()));
        if (random() % 4 == 0)
            bytes.truncate(at);
        else
            bytes[at] = char(bytes[at] ^ char(1 + random() % 255));
        QTemporaryDir folder;
        QVERIFY(overwrite(storeFile(folder.path()), 0, file));
        QVERIFY(overwrite(storeFile(folder.path()) + u"-wal"_qs, 0, bytes));
        const QByteArray where =
            qPrintable(u"seed %1, damage %2 at byte %3"_qs.arg(seed()).arg(number).arg(at));
        auto again = openStore(folder.path());
        QVERIFY2(again && again.value()->access() == Access::Full, where);
        const auto held = sums.indexOf(ledger::sumOf(storeFile(folder.path())));
        // Everything up to some command, whole; never a mixture.
        QVERIFY2(held >= 0 || got(again.value()->projects()).empty(), where);
        QVERIFY2(ledger::faultsIn(folder.path()).isEmpty(), where);
        before += held < sums.size() - 1 ? 1 : 0;
    }
    QVERIFY(before > count(100) / 3);
}

void TestStoreFaults::aLockedFileIsToldAndThenWritten()
{
    QTemporaryDir folder;
    const QString a = documentOf(u"A"_qs);
    auto store = opened(folder.path());
    const QString id = got(store->create(a));
    {
        const LockHolder other(storeFile(folder.path()));
        QVERIFY(other.holds());
        QCOMPARE(fault(store->applyEdit(id, edit(a, documentOf(u"B"_qs)))), int(StoreCode::Busy));
        QCOMPARE(got(store->load(id)), a); // still to be read
    }
    got(store->applyEdit(id, edit(a, documentOf(u"B"_qs))));
    store.reset();
    {
        const LockHolder other(storeFile(folder.path()), {u"alone"_qs});
        QVERIFY(other.holds());
        QCOMPARE(fault(openStore(folder.path())), int(StoreCode::Busy));
    }
    QCOMPARE(names(*opened(folder.path())), QStringList{u"B"_qs});
}

void TestStoreFaults::aClockSetBackChangesNoOrder()
{
    constexpr long year = 365L * 24 * 3600;
    QTemporaryDir folder;
    QStringList expected;
    QString id;
    for (const long shift : {0L, -30 * year, 5 * year, -1L, -20 * year}) {
        disk_clock(shift);
        QVERIFY(std::abs(QDateTime::currentSecsSinceEpoch() - shift - 1'764'000'000) < 60 * year);
        auto store = opened(folder.path()); // its lock is not of the future either
        QVERIFY(store->access() == Access::Full);
        if (id.isEmpty())
            id = got(store->create(documentOf(u"Clock"_qs)));
        NoteBook book(*store);
        const QString held = got(store->load(id));
        const auto photo =
            book.folder().keep(photohelp::encoded(photohelp::picture(quint32(expected.size()), {32, 32})));
        QVERIFY(photo.ok());
        const Note note = photohelp::noteOf(u"A1"_qs, photo.value());
        got(book.log(id, edit(held, documentOf(u"Clock"_qs, expected.size() + 1)), note));
        expected.append(note.id);
        QStringList told;
        for (const Note &kept : got(book.notes(id)))
            told.append(kept.id);
        QCOMPARE(told, expected);
        // The second instance is seen at any time of day.
        QVERIFY(opened(folder.path())->access() == Access::SecondInstance);
    }
    auto store = opened(folder.path());
    for (qsizetype left = expected.size(); left > 0; --left) {
        QCOMPARE(got(NoteBook(*store).notes(id)).size(), std::size_t(left));
        got(store->undo(id));
    }
    QCOMPARE(got(store->load(id)), documentOf(u"Clock"_qs));
}

QTEST_GUILESS_MAIN(TestStoreFaults)
#include "tst_store_faults.moc"
