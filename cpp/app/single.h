// SPDX-License-Identifier: MIT
#pragma once

#include <QJSEngine>
#include <QQmlEngine>

namespace matside {

/// A QML singleton that main makes as a plain local and hands over: create() gives QML that very object and
/// leaves it in C++ hands.
template <class Model> class Single {
public:
    static void hand(Model *model) { handed() = model; }
    static Model *create(QQmlEngine *, QJSEngine *)
    {
        QJSEngine::setObjectOwnership(handed(), QJSEngine::CppOwnership);
        return handed();
    }

private:
    static Model *&handed()
    {
        static Model *model = nullptr;
        return model;
    }
};

} // namespace matside
