// SPDX-License-Identifier: MIT
//
// The Fit station under a finger: a drag along a value moves it by the ruler's marks, a press asks for the
// keypad, and the drawing keeps its room on every screen.
#include "main/room.h"
#include "project/codec.h"

#include "testing.h"
#include <QElapsedTimer>
#include <QFile>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>

#include <functional>

using namespace matside;

namespace {

QString example()
{
    QFile file(QStringLiteral(TEST_DATA_DIR "/project-example.json"));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

void idle(int ms)
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < ms)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
}

using Wanted = std::function<bool(QQuickItem &)>;

QQuickItem *find(QQuickItem *item, const Wanted &wanted)
{
    if (!item->isVisible())
        return nullptr;
    if (wanted(*item))
        return item;
    for (QQuickItem *child : item->childItems())
        if (QQuickItem *found = find(child, wanted))
            return found;
    return nullptr;
}

Wanted ofType(const char *type)
{
    return [type](QQuickItem &item) { return QByteArray(item.metaObject()->className()).startsWith(type); };
}

/// The window on the Fit station of the example.
class Finger {
public:
    Finger()
    {
        auto store = std::move(openStore(m_dir.path()).value());
        const QString id = store->create(example()).value();
        m_room = std::make_unique<Room>(std::move(store), 5.87);
        m_room->session().openProject(id);
        m_room->session().setStation(static_cast<int>(Station::Fit));
        if (m_room->show())
            m_window = qobject_cast<QQuickWindow *>(m_room->engine().rootObjects().value(0));
    }
    bool ready(QSize size)
    {
        if (!m_window)
            return false;
        m_window->resize(size);
        m_window->show();
        idle(120);
        return true;
    }
    Workspace &workspace() { return m_room->workspace(); }
    Session &session() { return m_room->session(); }
    QQuickItem *seek(const Wanted &wanted) const { return find(m_window->contentItem(), wanted); }
    /// Opens a group of fields and brings one of its values into view.
    QQuickItem *value(const QString &group, const QString &pointer) const
    {
        QQuickItem *sheet = seek(ofType("FieldsSheet"));
        if (!sheet)
            return nullptr;
        sheet->setProperty("openGroup", group);
        idle(60);
        QQuickItem *found = seek([&](QQuickItem &item) {
            return ofType("FieldValue")(item) && item.property("pointer").toString() == pointer;
        });
        if (found) {
            const double y = found->mapToItem(sheet->property("contentItem").value<QQuickItem *>(), {}).y();
            sheet->setProperty(
                "contentY", qBound(0.0, y - sheet->height() / 3,
                                   qMax(0.0, sheet->property("contentHeight").toDouble() - sheet->height())));
            idle(60);
        }
        return found;
    }
    void press(QPoint at) { QTest::touchEvent(m_window, m_finger).press(0, at); }
    void move(QPoint at)
    {
        QTest::touchEvent(m_window, m_finger).move(0, at);
        idle(12);
    }
    void release(QPoint at)
    {
        QTest::touchEvent(m_window, m_finger).release(0, at);
        idle(30);
    }

private:
    QTemporaryDir m_dir;
    std::unique_ptr<Room> m_room;
    QQuickWindow *m_window = nullptr;
    QPointingDevice *m_finger = QTest::createTouchDevice();
};

QRectF onScreen(const QQuickItem *item)
{
    return item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
}

} // namespace

class TestFitTouch : public QObject {
    Q_OBJECT
private slots:
    void aDragAlongAValueStepsIt_data()
    {
        QTest::addColumn<QString>("group");
        QTest::addColumn<QString>("pointer");
        QTest::addColumn<bool>("left");
        QTest::newRow("seam") << "Seam and draw-up"
                              << "/seam" << false;
        QTest::newRow("margin") << "The hoop strip"
                                << "/strip/margin" << false;
        QTest::newRow("block, left-handed") << "The blocks"
                                            << "/blocks/width" << true;
    }
    void aDragAlongAValueStepsIt()
    {
        QFETCH(QString, group);
        QFETCH(QString, pointer);
        QFETCH(bool, left);
        Finger hand;
        QVERIFY(hand.ready({1280, 800}));
        hand.session().setLeftHanded(left);
        idle(60);
        QQuickItem *value = hand.value(group, pointer);
        QVERIFY(value);
        const QRectF lies = onScreen(value);
        const QString before = hand.workspace().document();
        const Project was = hand.workspace().project();
        const int x = static_cast<int>(left ? lies.right() - lies.width() * 0.5 : lies.left() + 12);
        const QPoint from(x, static_cast<int>(lies.center().y()));
        int replans = 0;
        QObject::connect(&hand.workspace(), &Workspace::changed, value, [&replans] { ++replans; });
        hand.press(from);
        for (int dx = 8; dx <= 120; dx += 8)
            hand.move(from + QPoint(dx, 0));
        idle(60); // a move is told with the next frame
        // The plan follows the finger on the ruler's marks; nothing is saved yet.
        QVERIFY2(replans > 2, qPrintable(QString::number(replans)));
        QVERIFY(!(hand.workspace().project() == was));
        QCOMPARE(hand.workspace().document(), before);
        const Project dragged = hand.workspace().project();
        hand.release(from + QPoint(120, 0));
        QVERIFY(!hand.workspace().previewing());
        QVERIFY(hand.workspace().project() == dragged);
        QVERIFY(hand.workspace().document() != before);
        // No keypad opened under the finger, and the whole drag is one change.
        QVERIFY(!hand.seek(ofType("EntrySheet")));
        hand.session().undo();
        QCOMPARE(hand.workspace().document(), before);
    }

    void aPressOnAValueAsksForTheKeypad()
    {
        Finger hand;
        QVERIFY(hand.ready({1280, 800}));
        QQuickItem *value = hand.value(QStringLiteral("Seam and draw-up"), QStringLiteral("/seam"));
        QVERIFY(value);
        const QRectF lies = onScreen(value);
        const QPoint at(static_cast<int>(lies.left() + 20), static_cast<int>(lies.center().y()));
        hand.press(at);
        hand.release(at);
        idle(200);
        QVERIFY(hand.seek(ofType("EntrySheet")));
    }

    void aClothOpensInItsGroupAndIsAdded()
    {
        Finger hand;
        QVERIFY(hand.ready({1280, 800}));
        QQuickItem *sheet = hand.seek(ofType("FieldsSheet"));
        QVERIFY(sheet);
        sheet->setProperty("openGroup", QStringLiteral("The cloths"));
        idle(80);
        int heads = 0;
        QQuickItem *more = nullptr;
        const Wanted look = [&](QQuickItem &item) {
            if (ofType("ItemHead")(item))
                ++heads;
            if (ofType("CutButton")(item) &&
                item.property("text").toString() == QStringLiteral("Add a cloth"))
                more = &item;
            return false;
        };
        hand.seek(look);
        QCOMPARE(heads, static_cast<int>(hand.workspace().project().cloths.size()));
        QVERIFY(more);
        QVERIFY(!hand.seek(ofType("FieldSwatches")));
        const std::size_t before = hand.workspace().project().cloths.size();
        QMetaObject::invokeMethod(more, "clicked");
        idle(120);
        QCOMPARE(hand.workspace().project().cloths.size(), before + 1);
        // The new one lies open, with its name, its colours and the way to take it away again.
        QVERIFY(hand.seek(ofType("PlainField")));
        QQuickItem *swatches = hand.seek(ofType("FieldSwatches"));
        QVERIFY(swatches);
        QQuickItem *snip = find(swatches, [](QQuickItem &item) {
            return item.property("accessibleName").toString() == QStringLiteral("teal");
        });
        QVERIFY(snip);
        QMetaObject::invokeMethod(snip, "clicked");
        QCOMPARE(hand.workspace().project().cloths.back().colour, std::string("#27535a"));
        QQuickItem *away = hand.seek(ofType("HoldButton"));
        QVERIFY(away);
        QMetaObject::invokeMethod(away, "held");
        idle(80);
        QCOMPARE(hand.workspace().project().cloths.size(), before);
        QVERIFY(!hand.seek(ofType("FieldSwatches")));
        hand.session().undo();
        idle(40);
        QCOMPARE(hand.workspace().project().cloths.size(), before + 1);
    }

    /// A touch on a layout shows it, a touch on the button takes it, undo brings the piece back.
    void aTouchTakesALayout_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::newRow("10 in") << QSize(1280, 800);
        QTest::newRow("8 in") << QSize(1024, 600);
    }
    void aTouchTakesALayout()
    {
        QFETCH(QSize, size);
        Finger hand;
        QVERIFY(hand.ready(size));
        const auto touch = [&](QQuickItem *item, double down) {
            QVERIFY(item);
            const QPoint at = QPointF(onScreen(item).center().x(), onScreen(item).y() + down).toPoint();
            hand.press(at);
            hand.release(at);
            idle(80);
        };
        const auto button = [&](const char *text) {
            return hand.seek([text](QQuickItem &item) {
                return ofType("CutButton")(item) && item.property("text").toString() == QLatin1String(text);
            });
        };
        const Project before = hand.workspace().project();
        QQuickItem *opens = button("What would fit");
        QVERIFY(opens);
        touch(opens, opens->height() / 2);
        // The second row is in sight, if only its upper edge.
        touch(hand.seek([](QQuickItem &item) {
            return ofType("FitLayoutPiece")(item) && item.property("index").toInt() == 1;
        }),
              3);
        QVERIFY(hand.workspace().previewing());
        const Project shown = hand.workspace().project();
        QVERIFY(!(shown.blocks == before.blocks));
        idle(450); // what decides is deaf for a moment after it could first be pressed
        QQuickItem *take = button("Take this layout");
        QVERIFY(take);
        touch(take, take->height() / 2);
        QVERIFY(!hand.workspace().previewing());
        QVERIFY(hand.workspace().project() == shown);
        hand.session().undo();
        QVERIFY(hand.workspace().project() == before);
    }

    void theDrawingHasTheRoomAndNoKeyRolls_data()
    {
        QTest::addColumn<QSize>("size");
        QTest::newRow("10 in") << QSize(1280, 800);
        QTest::newRow("10 in upright") << QSize(800, 1280);
        QTest::newRow("8 in") << QSize(1024, 600);
    }
    void theDrawingHasTheRoomAndNoKeyRolls()
    {
        QFETCH(QSize, size);
        Finger hand;
        QVERIFY(hand.ready(size));
        QQuickItem *drawing = hand.seek(ofType("TableDrawing"));
        QVERIFY(drawing);
        // A fifth of the screen at least, and no side under 40 mm.
        QVERIFY2(drawing->width() * drawing->height() >= 0.2 * size.width() * size.height(),
                 qPrintable(QStringLiteral("%1 × %2").arg(drawing->width()).arg(drawing->height())));
        QVERIFY(qMin(drawing->width(), drawing->height()) >= 40 * 5.84);
        // The example has a caution; even so a row of groups can be seen without rolling: three, two at 8 in.
        QVERIFY(!hand.workspace().plan().cautions.empty());
        QQuickItem *sheet = hand.seek(ofType("FieldsSheet"));
        QVERIFY(sheet);
        int heads = 0;
        const Wanted count = [&](QQuickItem &item) {
            if (ofType("DrawerFront")(item) && onScreen(sheet).contains(onScreen(&item).center()))
                ++heads;
            return false;
        };
        hand.seek(count);
        QVERIFY2(heads >= (size.height() > 600 ? 3 : 2), qPrintable(QString::number(heads)));
        // Sixteenths: every mark has its key in sight.
        QQuickItem *page = hand.seek(ofType("FitPage"));
        QVERIFY(page);
        QMetaObject::invokeMethod(page, "begin", Q_ARG(QString, QStringLiteral("/blocks/width")),
                                  Q_ARG(QString, QStringLiteral("block")),
                                  Q_ARG(QString, QStringLiteral("length")), Q_ARG(QString, QString()));
        idle(250);
        QQuickItem *keypad = hand.seek(ofType("Keypad"));
        QVERIFY(keypad);
        int keys = 0;
        const QRectF room(QPointF(), size);
        hand.seek([&](QQuickItem &item) {
            if (ofType("KeypadKey")(item))
                keys += room.adjusted(-1, -1, 1, 1).contains(onScreen(&item)) ? 1 : -1000;
            return false;
        });
        QCOMPARE(keys, 10 + 15); // the digits and the fifteen marks within an inch
    }
};

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication app(argc, argv);
    TestFitTouch test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_fittouch.moc"
