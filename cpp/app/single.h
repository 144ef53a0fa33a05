// SPDX-License-Identifier: MIT
#pragma once

#include <QJSEngine>
#include <QQmlEngine>

namespace matside {

/// A QML singleton that main makes as a plain local and hands over: create() gives QML that very object and
/// leaves it in C++ hands.
template <class Model> class Single {
public:
    static void hand(Model *model) { held() = model; }
    static Model *create(QQmlEngine *, QJSEngine *)
    {
        QJSEngine::setObjectOwnership(held(), QJSEngine::CppOwnership);
        return held();
    }

private:
    static Model *&held()
    {
        static Model *model = nullptr;
        return model;
    }
};

} // namespace matside
