// SPDX-License-Identifier: MIT
#include "app/blocklog.h"
#include "app/clothcolour.h"
#include "app/desk.h"
#include "app/fakesource.h"
#include "app/gallery.h"
#include "store/photohelp.h"

#include <QPainter>
#include <QQmlEngine>
#include <QtQuickTest>

using namespace matside;

/// A store, one project of nine blocks and a camera, for each file of tests anew.
class Desk : public QObject {
    Q_OBJECT
    Q_PROPERTY(QString left READ left CONSTANT FINAL)
    Q_PROPERTY(QString right READ right CONSTANT FINAL)
public:
    explicit Desk(QObject *parent) : QObject(parent), m_store(std::move(openStore(m_folder.path()).value()))
    {
        Project project = desk::topper();
        Cloth ground;
        ground.id = ground.name = "ground";
        ground.soldBy = "1/8 yd";
        ground.soldStep = usualSoldStep(System::Inch);
        project.cloths.push_back(ground);
        const std::string document = writeProject(project);
        m_session.openProject(m_store->create(QString::fromStdString(document)).value());
        m_camera.setPatience(80);
        for (quint32 seed = 1; seed <= 3; ++seed) {
            QFile file(m_pictures.filePath(QStringLiteral("%1.jpg").arg(seed)));
            if (file.open(QIODevice::WriteOnly))
                file.write(photohelp::encoded(photohelp::picture(seed, {300, 200})));
        }
        QFile cut(m_folder.filePath(QStringLiteral("cut.jpg")));
        if (cut.open(QIODevice::WriteOnly))
            cut.write(photohelp::encoded(photohelp::picture(4, {300, 200})).left(900));
        QImage two(300, 200, QImage::Format_RGB32);
        two.fill(QColor(left()));
        QPainter(&two).fillRect(150, 0, 150, 200, QColor(right()));
        two.save(m_folder.filePath(QStringLiteral("two.png")));
        Single<ClothColour>::hand(&m_colour);
        Single<Session>::hand(&m_session);
        Single<BlockLog>::hand(&m_log);
        Single<Gallery>::hand(&m_gallery);
    }
    /// The cloths of a picture of two, half and half.
    QString left() const { return QStringLiteral("#c9bda2"); }
    QString right() const { return QStringLiteral("#27535a"); }
    /// "serves", "stalls", "refuses", "vanishes", "cut" (serves half a picture) or "two" (serves one of two
    /// cloths).
    Q_INVOKABLE void camera(const QString &manner)
    {
        m_camera.plug(true);
        if (manner == QStringLiteral("stalls"))
            m_camera.be(FakeSource::Manner::Stalls);
        else if (manner == QStringLiteral("refuses"))
            m_camera.be(FakeSource::Manner::Refuses);
        else if (manner == QStringLiteral("vanishes"))
            m_camera.be(FakeSource::Manner::Vanishes);
        else
            m_camera.be(FakeSource::Manner::Serves,
                        manner == QStringLiteral("cut")   ? m_folder.filePath(QStringLiteral("cut.jpg"))
                        : manner == QStringLiteral("two") ? m_folder.filePath(QStringLiteral("two.png"))
                                                          : m_pictures.filePath(QStringLiteral("1.jpg")));
    }
    Q_INVOKABLE void unplug() { m_camera.plug(false); }
    Q_INVOKABLE int notes(const QString &block) const
    {
        return static_cast<int>(m_book.notes(m_workspace.id(), block).value().size());
    }
    Q_INVOKABLE QString nextBlock() const
    {
        return QLatin1Char('A') + QString::number(m_workspace.project().made.blocks.size() + 1);
    }
    Q_INVOKABLE void startAgain()
    {
        while (m_session.canUndo())
            m_session.undo();
    }

private:
    QTemporaryDir m_folder;
    QTemporaryDir m_pictures;
    std::unique_ptr<Store> m_store;
    Workspace m_workspace{*m_store};
    Session m_session{m_workspace};
    NoteBook m_book{*m_store};
    PhotoKeeper m_keeper{m_book};
    FakeSource m_camera;
    PicturePicker m_picker{m_pictures.path()};
    BlockLog m_log{m_workspace, m_keeper, m_camera, m_picker};
    Gallery m_gallery{m_workspace, m_keeper};
    ClothColour m_colour{m_workspace, m_session, m_keeper, m_camera, m_picker};
};

class Setup : public QObject {
    Q_OBJECT

public slots:
    void qmlEngineAvailable(QQmlEngine *engine)
    {
        qmlRegisterSingletonInstance("Matside.Desk", 1, 0, "Desk", new Desk(engine));
    }
};

QUICK_TEST_MAIN_WITH_SETUP(photos, Setup)

#include "main.moc"
