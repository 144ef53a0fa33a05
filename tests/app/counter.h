// SPDX-License-Identifier: MIT
#pragma once

#include "app/battingmodel.h"
#include "app/kitsmodel.h"
#include "app/stockmodel.h"
#include "app/takemodel.h"
#include "desk.h"

/// Shop with a topper's three cloths, and all that it asks and tells beside the price.
namespace shopping {

using namespace matside;

inline Project cloths(Project project = desk::topper())
{
    for (const auto &[id, role] : {std::pair("oat", ClothRole::Front), std::pair("blue", ClothRole::Back),
                                   std::pair("wool", ClothRole::Batting)}) {
        Cloth cloth;
        cloth.id = cloth.name = id;
        cloth.role = role;
        cloth.usable = Length::inches(40, 1, 2);
        cloth.soldBy = "1/8 yd";
        cloth.soldStep = usualSoldStep(System::Inch);
        project.cloths.push_back(cloth);
    }
    return project;
}

struct Counter {
    explicit Counter(const Project &project = cloths()) : open(project, Station::Shop)
    {
        open.session.setStation(static_cast<int>(Station::Fit));
        open.session.setStation(static_cast<int>(Station::Shop));
    }
    QString take(int row, int role) const { return list.data(list.index(row), role).toString(); }
    bool ticked(int row) const { return list.data(list.index(row), TakeModel::Ticked).toBool(); }

    desk::Open open;
    ShopModel shop{open.workspace, open.session};
    KitsModel kits{open.workspace, open.session, shop};
    BattingModel batting{open.workspace, open.session, shop};
    StockModel stock{open.workspace, open.session};
    TakeModel list{open.workspace, open.session, shop};
};

} // namespace shopping
