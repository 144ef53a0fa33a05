// SPDX-License-Identifier: MIT
//
// The lists of the Fit station: what a change tells the screen, and that it is never too little.
#include "app/fitmodel.h"
#include "app/session.h"
#include "bench/record.h"
#include "project/codec.h"

#include "testing.h"
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

using namespace matside;

namespace {

QString example()
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

struct Desk {
    explicit Desk(const QString &document = example()) : store(std::move(openStore(dir.path()).value()))
    {
        id = store->create(document).value();
        session.openProject(id);
    }
    QTemporaryDir dir;
    std::unique_ptr<Store> store;
    QString id;
    Workspace workspace{*store};
    Session session{workspace};
    FitModel fit{workspace};
};

/// A copy of a list as a view keeps it: it reads again only what it is told of.
class Onlooker : public QObject {
public:
    explicit Onlooker(QAbstractItemModel &model) : m_model(model)
    {
        readAll();
        connect(&model, &QAbstractItemModel::modelReset, this, [this] {
            ++resets;
            readAll();
        });
        connect(&model, &QAbstractItemModel::rowsRemoved, this,
                [this](const QModelIndex &, int from, int to) { m_seen.remove(from, to - from + 1); });
        connect(&model, &QAbstractItemModel::rowsInserted, this,
                [this](const QModelIndex &, int from, int to) {
                    for (int row = from; row <= to; ++row)
                        m_seen.insert(row, readRow(row));
                });
        connect(&model, &QAbstractItemModel::dataChanged, this,
                [this](const QModelIndex &from, const QModelIndex &to, const QList<int> &roles) {
                    for (int row = from.row(); row <= to.row(); ++row)
                        for (const int role : roles.isEmpty() ? m_model.roleNames().keys() : roles) {
                            m_seen[row][role] = m_model.index(row, 0).data(role);
                            ++readings;
                        }
                });
    }
    /// The rows and roles that read otherwise than the onlooker believes.
    QStringList stale() const
    {
        QStringList wrong;
        if (m_seen.size() != m_model.rowCount())
            wrong << QStringLiteral("rows");
        for (int row = 0; row < m_seen.size(); ++row)
            for (const auto &[role, value] : m_seen[row].asKeyValueRange())
                if (!same(value, m_model.index(row, 0).data(role)))
                    wrong << QStringLiteral("%1:%2").arg(row).arg(
                        QLatin1String(m_model.roleNames().value(role)));
        return wrong;
    }
    int resets = 0;
    int readings = 0;

private:
    static bool same(const QVariant &a, const QVariant &b)
    {
        if (a.metaType() == QMetaType::fromType<FigureView>())
            return a.value<FigureView>() == b.value<FigureView>();
        return a == b;
    }
    void readAll()
    {
        m_seen.clear();
        for (int row = 0; row < m_model.rowCount(); ++row)
            m_seen << readRow(row);
    }
    QHash<int, QVariant> readRow(int row) const
    {
        QHash<int, QVariant> values;
        for (const int role : m_model.roleNames().keys())
            values.insert(role, m_model.index(row, 0).data(role));
        return values;
    }
    QAbstractItemModel &m_model;
    QList<QHash<int, QVariant>> m_seen;
};

} // namespace

class TestFit : public QObject {
    Q_OBJECT
private slots:
    void anUnnamedClothIsCalledByItsPart()
    {
        Desk desk;
        const auto added =
            desk.fit.addItem(QStringLiteral("/cloths")).value(QStringLiteral("item")).toString();
        QVERIFY(!added.isEmpty());
        const auto role = added + QStringLiteral("/role");
        desk.fit.choose(role, QStringLiteral("batting"));
        QCOMPARE(desk.workspace.project().cloths.back().name, std::string("batting"));
        desk.fit.choose(role, QStringLiteral("binding"));
        QCOMPARE(desk.workspace.project().cloths.back().name, std::string("binding cloth"));
        // Her own name stays, whatever part it plays.
        QVERIFY(desk.fit.enter(added + QStringLiteral("/name"), QStringLiteral("Old sheet"))
                    .value(QStringLiteral("ok"))
                    .toBool());
        desk.fit.choose(role, QStringLiteral("batting"));
        QCOMPARE(desk.workspace.project().cloths.back().name, std::string("Old sheet"));
    }

    void aDragTellsOnlyWhatChanged()
    {
        Desk desk;
        Onlooker fields(*desk.fit.fields());
        Onlooker figures(*desk.fit.figures());
        QSignalSpy drawn(&desk.fit, &FitModel::drawingChanged);
        QSignalSpy block(&desk.fit, &FitModel::blockChanged);
        desk.fit.beginDrag(QStringLiteral("/blocks/columns"));
        desk.fit.dragCorner(40.0 * 25.4, 32.0 * 25.4);
        QCOMPARE(desk.workspace.project().blocks.columns, 5);
        QCOMPARE(fields.resets, 0);
        // Columns and rows have a new value and figure; spare, table and the rest stay as they are.
        QVERIFY2(fields.readings > 0 && fields.readings <= 12, qPrintable(QString::number(fields.readings)));
        QCOMPARE(drawn.size(), 1);
        QCOMPARE(block.size(), 0);
        QCOMPARE(fields.stale(), QStringList());
        QCOMPARE(figures.stale(), QStringList());
        desk.fit.endDrag();
        QCOMPARE(drawn.size(), 1);
    }

    void nothingNewIsToldOfNothing()
    {
        Desk desk;
        Onlooker fields(*desk.fit.fields());
        Onlooker figures(*desk.fit.figures());
        Onlooker problems(*desk.fit.problems());
        QSignalSpy sized(&desk.fit, &FitModel::sizeChanged);
        desk.workspace.preview(desk.workspace.project());
        QCOMPARE(fields.readings + figures.readings + problems.readings, 0);
        QCOMPARE(fields.resets + figures.resets + problems.resets, 0);
        QCOMPARE(sized.size(), 0);
    }

    void noChangeIsKeptFromTheScreen()
    {
        Desk desk;
        Onlooker fields(*desk.fit.fields());
        Onlooker figures(*desk.fit.figures());
        Onlooker problems(*desk.fit.problems());
        const auto look = [&](const char *what) {
            const QStringList stale = fields.stale() + figures.stale() + problems.stale();
            QVERIFY2(stale.isEmpty(), qPrintable(QLatin1String(what) + u' ' + stale.join(u' ')));
        };
        // Every field one step up, and one down again; each choice taken in turn.
        QStringList pointers;
        for (int row = 0; row < desk.fit.fields()->rowCount(); ++row)
            pointers << desk.fit.fields()->index(row, 0).data(FieldsModel::Pointer).toString();
        QVERIFY(pointers.size() > 40);
        for (const QString &pointer : pointers)
            for (const int step : {1, 1, -1, -3}) {
                desk.fit.nudge(pointer, step);
                look(qPrintable(pointer));
            }
        while (desk.session.canUndo())
            desk.session.undo();
        look("undone");
        desk.fit.choose(QStringLiteral("/finest"), QStringLiteral("1/8 in"));
        look("a coarser ruler");
        // Refused, with remedies; then another number of remedies; then mended.
        desk.fit.enter(QStringLiteral("/sashing/finished"), QStringLiteral("7/8"));
        look("refused");
        desk.fit.enter(QStringLiteral("/sashing/finished"), QStringLiteral("1/2"));
        look("refused otherwise");
        desk.fit.takeOffer(0, 0);
        look("mended");
        QVERIFY(fields.readings > 0 && figures.readings > 0);
    }

    void aClothIsAddedDescribedAndTakenAway()
    {
        Desk desk;
        const std::size_t before = desk.workspace.project().cloths.size();
        Onlooker fields(*desk.fit.fields());
        const QVariantMap added = desk.fit.addItem(QStringLiteral("/cloths"));
        QVERIFY(added.value(QStringLiteral("ok")).toBool());
        const QString item = added.value(QStringLiteral("item")).toString();
        QCOMPARE(item, QStringLiteral("/cloths/%1").arg(before));
        const auto enter = [&](const char *key, const char *text) {
            return desk.fit.enter(item + QLatin1String(key), QLatin1String(text))
                .value(QStringLiteral("ok"))
                .toBool();
        };
        QVERIFY(enter("/name", " moss twill "));
        QVERIFY(enter("/usable", "42 1/2"));
        QVERIFY(enter("/price", "12,50"));
        desk.fit.choose(item + QStringLiteral("/role"), QStringLiteral("patch"));
        desk.fit.choose(item + QStringLiteral("/soldBy"), QStringLiteral("1/2 yd"));
        desk.fit.choose(item + QStringLiteral("/colour"), QStringLiteral("#7f8f5a"));
        desk.fit.choose(item + QStringLiteral("/directional"), true);
        const Project kept = readProject(desk.store->load(desk.id).value().toStdString()).value().project;
        QCOMPARE(kept.cloths.size(), before + 1);
        const Cloth &cloth = kept.cloths.back();
        QCOMPARE(cloth.name, std::string("moss twill"));
        QCOMPARE(cloth.role, ClothRole::Patch);
        QCOMPARE(cloth.usable->count(), Length::inches(42, 1, 2).count());
        QCOMPARE(cloth.soldStep.count(), Length::inches(18).count()); // half a yard
        QCOMPARE(*cloth.price, std::string("12.50"));
        QCOMPARE(cloth.colour, std::string("#7f8f5a"));
        QVERIFY(cloth.directional);
        for (const char *bad : {"", "-3", "9.5.5", "cheap", "123456789"})
            QVERIFY2(!enter("/price", bad), bad);
        QVERIFY(!enter("/name", "   "));
        QCOMPARE(fields.stale(), QStringList());
        // Rows come and go without the list being read anew, so that nothing jumps under the finger.
        QVERIFY(desk.fit.takeItemAway(item).value(QStringLiteral("ok")).toBool());
        QCOMPARE(desk.workspace.project().cloths.size(), before);
        desk.session.undo();
        QCOMPARE(desk.workspace.project().cloths.back().name, std::string("moss twill"));
        QCOMPARE(fields.resets, 0);
        QCOMPARE(fields.stale(), QStringList());
    }

    void aClothInUseStays()
    {
        Desk desk;
        Project project = desk.workspace.project();
        QVERIFY(!project.patches.empty());
        const std::string used = project.patches.front().cloth;
        for (std::size_t i = 0; i < project.cloths.size(); ++i) {
            if (project.cloths[i].id != used)
                continue;
            const QVariantMap said = desk.fit.takeItemAway(QStringLiteral("/cloths/%1").arg(i));
            QVERIFY(!said.value(QStringLiteral("ok")).toBool());
            QVERIFY(said.value(QStringLiteral("says"))
                        .toString()
                        .contains(QString::fromStdString(project.cloths[i].name)));
        }
        QVERIFY(desk.workspace.project() == project);
        // Once cut it stays as well.
        project.made.cut.push_back({project.cloths[0].id, "strip", 1, 0, {}});
        QVERIFY(desk.workspace.commit("done", project));
        QVERIFY(!desk.fit.takeItemAway(QStringLiteral("/cloths/0")).value(QStringLiteral("ok")).toBool());
        QVERIFY(!desk.fit.takeItemAway(QStringLiteral("/cloths/99")).value(QStringLiteral("ok")).toBool());
        QVERIFY(desk.workspace.project().cloths == project.cloths);
    }

    void theLaterClothsMoveUp()
    {
        Desk desk;
        Project bare = desk.workspace.project();
        bare.patches.clear();
        QVERIFY(desk.workspace.commit("edit", bare));
        Onlooker fields(*desk.fit.fields());
        QVERIFY(desk.fit.takeItemAway(QStringLiteral("/cloths/1")).value(QStringLiteral("ok")).toBool());
        QCOMPARE(desk.workspace.project().cloths[1].name, bare.cloths[2].name);
        QCOMPARE(fields.stale(), QStringList());
        while (desk.workspace.project().cloths.size() > 0)
            QVERIFY(desk.fit.takeItemAway(QStringLiteral("/cloths/0")).value(QStringLiteral("ok")).toBool());
        QCOMPARE(fields.stale(), QStringList());
        QVERIFY(desk.fit.addItem(QStringLiteral("/cloths")).value(QStringLiteral("ok")).toBool());
        // The part that is lacking comes first.
        QCOMPARE(desk.workspace.project().cloths[0].role, ClothRole::Front);
        QCOMPARE(fields.stale(), QStringList());
        QCOMPARE(fields.resets, 0);
    }

    void whatIsCutKeepsItsCloth()
    {
        Desk desk;
        Project cut = desk.workspace.project();
        cut.made.trialPutOff = true;
        std::erase_if(cut.cloths, [](const Cloth &cloth) { return cloth.role == ClothRole::SashingFront; });
        for (const Step &step : steps(cut, plan(cut)))
            if (step.station == Station::Cut)
                countUp(cut, step, step.count, 0);
        QVERIFY(desk.workspace.commit("edit", cut));
        const auto said = [&] {
            QStringList all;
            for (int row = 0; row < desk.fit.problems()->count(); ++row)
                all << desk.fit.problems()->index(row, 0).data(ProblemsModel::At).toString();
            return all;
        };
        const QStringList before = said();
        // The sashing is cut of the front's cloth: a new one does not take it over by itself.
        const QString item =
            desk.fit.addItem(QStringLiteral("/cloths")).value(QStringLiteral("item")).toString();
        QVERIFY(desk.workspace.project().cloths.back().role != ClothRole::SashingFront);
        QCOMPARE(said(), before);
        desk.fit.choose(item + QStringLiteral("/role"), QStringLiteral("sashing-front"));
        QVERIFY2(said().contains(item + QStringLiteral("/role")), qPrintable(said().join(u' ')));
        // Strips of another width are told, and no more once the change is taken back.
        desk.fit.choose(item + QStringLiteral("/role"), QStringLiteral("patch"));
        QCOMPARE(said(), before);
        desk.fit.enter(QStringLiteral("/strip/margin"), QStringLiteral("1 1/4"));
        QVERIFY2(said().contains(QStringLiteral("/blocks/width")), qPrintable(said().join(u' ')));
        QVERIFY(desk.workspace.undo());
        QCOMPARE(said(), before);
    }

    void rulersLikewise()
    {
        Desk desk;
        const std::size_t before = desk.workspace.project().rulers.size();
        const QString item =
            desk.fit.addItem(QStringLiteral("/rulers")).value(QStringLiteral("item")).toString();
        QCOMPARE(item, QStringLiteral("/rulers/%1").arg(before));
        desk.fit.enter(item + QStringLiteral("/name"), QStringLiteral("the long one"));
        desk.fit.enter(item + QStringLiteral("/length"), QStringLiteral("36"));
        desk.fit.enter(item + QStringLiteral("/width"), QStringLiteral("3 1/2"));
        desk.fit.choose(item + QStringLiteral("/finest"), QStringLiteral("1/32 in"));
        const Ruler ruler = desk.workspace.project().rulers.back();
        QCOMPARE(ruler.name, std::string("the long one"));
        QCOMPARE(ruler.length.count(), Length::inches(36).count());
        QCOMPARE(ruler.width.count(), Length::inches(3, 1, 2).count());
        QCOMPARE(ruler.finest->count(), Length::inches(0, 1, 32).count());
        while (desk.workspace.project().rulers.size() > 1)
            QVERIFY(desk.fit.takeItemAway(QStringLiteral("/rulers/0")).value(QStringLiteral("ok")).toBool());
        const QVariantMap last = desk.fit.takeItemAway(QStringLiteral("/rulers/0"));
        QVERIFY(!last.value(QStringLiteral("ok")).toBool());
        QVERIFY(!last.value(QStringLiteral("says")).toString().isEmpty());
    }

    void anotherProjectIsReadAnew()
    {
        Desk desk;
        Onlooker fields(*desk.fit.fields());
        Project metric = freshProject(System::Metric);
        metric.name = "Metric";
        desk.session.openProject(desk.store->create(QString::fromStdString(writeProject(metric))).value());
        QCOMPARE(fields.stale(), QStringList());
        QCOMPARE(fields.resets, 1);
    }
};

QTEST_GUILESS_MAIN(TestFit)
#include "tst_fitlists.moc"
