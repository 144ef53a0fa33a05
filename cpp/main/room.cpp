// SPDX-License-Identifier: MIT
#include "main/room.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QQmlComponent>

namespace matside {

Room::Room(std::unique_ptr<Store> store, double pxPerMm, const QString &language)
    : m_store(std::move(store)), m_language(*m_store, language), m_workspace(*m_store),
      m_session(m_workspace), m_look(*m_store, pxPerMm), m_shelf(m_workspace, m_session), m_fit(m_workspace),
      m_steps(m_workspace, m_session), m_hoop(m_workspace, m_session, m_steps),
      m_hoops(m_workspace, m_session), m_would(m_workspace, m_session, m_hoops), m_trim(m_workspace, m_steps),
      m_measure(m_workspace, m_session, m_steps), m_join(m_workspace, m_session, m_steps),
      m_edge(m_workspace, m_session, m_steps), m_shop(m_workspace, m_session),
      m_price(m_workspace, m_session, m_shop), m_kits(m_workspace, m_session, m_shop),
      m_batting(m_workspace, m_session, m_shop), m_stock(m_workspace, m_session),
      m_take(m_workspace, m_session, m_shop), m_book(*m_store), m_keeper(m_book),
      m_sharing(m_workspace, m_session, m_keeper), m_backups(m_workspace, m_keeper),
      m_log(m_workspace, m_keeper, m_camera, m_picker), m_gallery(m_workspace, m_keeper),
      m_shade(m_workspace, m_session),
      m_clothColour(m_workspace, m_session, m_keeper, m_clothCamera, m_clothPicker),
      m_aloud(m_workspace, {m_steps, m_trim, m_session, m_language}, m_speech), m_power(m_session)
{
    Single<Session>::hand(&m_session);
    Single<Look>::hand(&m_look);
    Single<Shelf>::hand(&m_shelf);
    Single<FitModel>::hand(&m_fit);
    Single<StepModel>::hand(&m_steps);
    Single<HoopModel>::hand(&m_hoop);
    Single<HoopShelf>::hand(&m_hoops);
    Single<WouldFit>::hand(&m_would);
    Single<TrimModel>::hand(&m_trim);
    Single<BlockMeasure>::hand(&m_measure);
    Single<JoinModel>::hand(&m_join);
    Single<EdgeModel>::hand(&m_edge);
    Single<ShopModel>::hand(&m_shop);
    Single<Backups>::hand(&m_backups);
    Single<Sharing>::hand(&m_sharing);
    Single<PriceModel>::hand(&m_price);
    Single<KitsModel>::hand(&m_kits);
    Single<BattingModel>::hand(&m_batting);
    Single<StockModel>::hand(&m_stock);
    Single<TakeModel>::hand(&m_take);
    Single<BlockLog>::hand(&m_log);
    Single<Gallery>::hand(&m_gallery);
    Single<ShadeModel>::hand(&m_shade);
    Single<ClothColour>::hand(&m_clothColour);
    Single<Aloud>::hand(&m_aloud);
    Single<Power>::hand(&m_power);
    Single<Language>::hand(&m_language);
    QObject::connect(&m_language, &Language::changed, &m_engine, [this] { reword(); });
    m_engine.addImportPath(QStringLiteral(":/qt/qml"));
}

void Room::look(const QString &path)
{
    const QString file = QFileInfo(path).absoluteFilePath();
    m_session.setView(QStringLiteral("shelf"));
    if (file.endsWith(backupEnd, Qt::CaseInsensitive))
        m_backups.look(file);
    else if (file.endsWith(shareEnd, Qt::CaseInsensitive))
        m_sharing.look(file);
    else
        m_fit.files()->look(file);
}

void Room::reword()
{
    m_workspace.reword();
    m_shelf.reload();
    m_engine.retranslate();
}

void Room::watchTablet()
{
    m_power.watch();
    // Without an address Qt would start a bus of its own on some systems.
    const bool bus = qEnvironmentVariableIsSet("DBUS_SESSION_BUS_ADDRESS") ||
                     QFileInfo::exists(qEnvironmentVariable("XDG_RUNTIME_DIR") + QStringLiteral("/bus"));
    if (bus)
        m_awake.emplace(m_steps, m_session, QDBusConnection::sessionBus());
}

bool Room::show()
{
    const QUrl main(QStringLiteral("qrc:/qt/qml/Matside/Stations/Main.qml"));
    // The typeface comes with the theme. Made before the window, and its coming told before, it does not have
    // every text of the page laid out a second time.
    const QQmlComponent known(&m_engine, main);
    const int theme = qmlTypeId("Matside.Theme", 1, 0, "Theme");
    (void)m_engine.singletonInstance<QObject *>(theme);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::ApplicationFontChange);
    m_engine.load(main);
    return !m_engine.rootObjects().isEmpty();
}

} // namespace matside
