// SPDX-License-Identifier: MIT
#pragma once

#include "app/aloud.h"
#include "app/awake.h"
#include "app/backups.h"
#include "app/battingmodel.h"
#include "app/blocklog.h"
#include "app/blockmeasure.h"
#include "app/clothcolour.h"
#include "app/edgemodel.h"
#include "app/fitmodel.h"
#include "app/gallery.h"
#include "app/hoopmodel.h"
#include "app/hoopshelf.h"
#include "app/joinmodel.h"
#include "app/kitsmodel.h"
#include "app/language.h"
#include "app/power.h"
#include "app/pricemodel.h"
#include "app/session.h"
#include "app/shademodel.h"
#include "app/sharing.h"
#include "app/shelf.h"
#include "app/shopmodel.h"
#include "app/speech.h"
#include "app/stepmodel.h"
#include "app/stockmodel.h"
#include "app/takemodel.h"
#include "app/trimmodel.h"
#include "app/wouldfit.h"

#include <QQmlApplicationEngine>

#include <optional>

namespace matside {

/// Everything the window stands on, made in order and handed to QML. Only wires.
class Room {
public:
    /// `language` is the one asked for by name, if any.
    Room(std::unique_ptr<Store> store, double pxPerMm, const QString &language = {});
    Room(const Room &) = delete;
    Room &operator=(const Room &) = delete;

    /// Shows the shelf with a file looked into; before show().
    void look(const QString &path);
    /// Loads the window; false when it cannot be.
    bool show();
    /// From now on the screen stays awake while a step is shown, and the battery is watched.
    void watchTablet();
    [[nodiscard]] Session &session() { return m_session; }
    [[nodiscard]] Language &language() { return m_language; }
    [[nodiscard]] Look &look() { return m_look; }
    [[nodiscard]] StepModel &steps() { return m_steps; }
    [[nodiscard]] FitModel &fit() { return m_fit; }
    [[nodiscard]] TrimModel &trim() { return m_trim; }
    [[nodiscard]] BlockMeasure &measure() { return m_measure; }
    [[nodiscard]] BlockLog &log() { return m_log; }
    [[nodiscard]] CameraSource &camera() { return m_camera; }
    [[nodiscard]] Backups &backups() { return m_backups; }
    [[nodiscard]] Sharing &sharing() { return m_sharing; }
    [[nodiscard]] WouldFit &wouldFit() { return m_would; }
    [[nodiscard]] ClothColour &clothColour() { return m_clothColour; }
    [[nodiscard]] Workspace &workspace() { return m_workspace; }
    [[nodiscard]] Aloud &aloud() { return m_aloud; }
    [[nodiscard]] PriceModel &price() { return m_price; }
    [[nodiscard]] KitsModel &kits() { return m_kits; }
    [[nodiscard]] BattingModel &batting() { return m_batting; }
    [[nodiscard]] StockModel &stock() { return m_stock; }
    [[nodiscard]] Power &power() { return m_power; }
    [[nodiscard]] QQmlApplicationEngine &engine() { return m_engine; }

private:
    /// Tells everything anew, in another language.
    void reword();

    std::unique_ptr<Store> m_store;
    Language m_language;
    Workspace m_workspace;
    Session m_session;
    Look m_look;
    Shelf m_shelf;
    FitModel m_fit;
    StepModel m_steps;
    HoopModel m_hoop;
    HoopShelf m_hoops;
    WouldFit m_would;
    TrimModel m_trim;
    BlockMeasure m_measure;
    JoinModel m_join;
    EdgeModel m_edge;
    ShopModel m_shop;
    PriceModel m_price;
    KitsModel m_kits;
    BattingModel m_batting;
    StockModel m_stock;
    TakeModel m_take;
    NoteBook m_book;
    PhotoKeeper m_keeper;
    CameraSource m_camera;
    PicturePicker m_picker;
    Sharing m_sharing;
    Backups m_backups;
    BlockLog m_log;
    Gallery m_gallery;
    ShadeModel m_shade;
    CameraSource m_clothCamera;
    PicturePicker m_clothPicker;
    ClothColour m_clothColour;
    Speech m_speech;
    Aloud m_aloud;
    Power m_power;
    std::optional<Awake> m_awake;
    QQmlApplicationEngine m_engine;
};

} // namespace matside
