// SPDX-License-Identifier: MIT
#include "store/storehelp.h"

using namespace storehelp;

namespace {

/// What the store should hold of one project: plain lists of whole documents.
struct Model {
    QString id;
    QString now;
    std::vector<std::pair<QString, QString>> done; ///< before, after
    std::vector<std::pair<QString, QString>> undone;
};

QString anyDocument(std::mt19937 &random)
{
    const QStringList names{u"Runner"_qs, u"Rünner"_qs, u"\U0001F9F5"_qs, u"\U0001F9F6 Runner"_qs, u"R"_qs};
    return storehelp::documentOf(names[qsizetype(random() % 5)], std::int64_t(random() % 40));
}

} // namespace

/// Random edits, undos and redos in several projects, against a model in memory.
class TestStoreRandom : public QObject {
    Q_OBJECT

    static void step(Store &store, Model &model, std::mt19937 &random);

private slots:
    void agreesWithAModel();
};

void TestStoreRandom::step(Store &store, Model &model, std::mt19937 &random)
{
    const auto what = random() % 10;
    if (what < 5) {
        const QString next = anyDocument(random);
        got(store.applyEdit(model.id, edit(model.now, next)));
        model.done.emplace_back(model.now, next);
        if (model.done.size() + model.undone.size() > 500 && model.done.size() > 500)
            model.done.erase(model.done.begin());
        model.undone.clear();
        model.now = next;
    } else if (what < 8) {
        const auto undone = store.undo(model.id);
        QCOMPARE(undone.ok(), !model.done.empty());
        if (!undone)
            return;
        model.now = model.done.back().first;
        model.undone.push_back(model.done.back());
        model.done.pop_back();
        QCOMPARE(undone.value().document, model.now);
    } else {
        const auto redone = store.redo(model.id);
        QCOMPARE(redone.ok(), !model.undone.empty());
        if (!redone)
            return;
        model.now = model.undone.back().second;
        model.done.push_back(model.undone.back());
        model.undone.pop_back();
        QCOMPARE(redone.value().document, model.now);
    }
}

void TestStoreRandom::agreesWithAModel()
{
    const int steps = count(10'000);
    std::mt19937 random(seed());
    QTemporaryDir folder;
    auto store = opened(folder.path());
    std::vector<Model> models(3);
    for (Model &model : models) {
        model.now = anyDocument(random);
        model.id = got(store->create(model.now));
    }
    for (int number = 0; number < steps; ++number) {
        Model &model = models[random() % models.size()];
        step(*store, model, random);
        QVERIFY2(!QTest::currentTestFailed(), qPrintable(u"seed %1, step %2"_qs.arg(seed()).arg(number)));
        if (random() % 500 == 0) {
            store.reset();
            store = opened(folder.path());
        }
        if (number % 50 == 0)
            for (const Model &each : models)
                QCOMPARE(got(store->load(each.id)), each.now);
    }
    for (Model &model : models) {
        while (!model.done.empty()) {
            QCOMPARE(got(store->undo(model.id)).document, model.done.back().first);
            model.done.pop_back();
        }
        QVERIFY(!got(store->undoable(model.id)));
    }
}

QTEST_GUILESS_MAIN(TestStoreRandom)
#include "tst_store_random.moc"
