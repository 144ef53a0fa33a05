// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The window: the band of stations at the holding hand's edge, and one page beside it. */
Window {
    id: root

    width: 1280
    height: 800
    minimumWidth: 480
    minimumHeight: 360
    visible: true
    title: Session.projectName.length > 0 ? qsTr("%1: Matside").arg(Session.projectName) : "Matside"
    color: Theme.colors.paper

    readonly property bool working: Session.view === "station"
    /** An 8 in screen: the band folds into one button and targets take their least size. */
    readonly property bool small: Math.max(width, height) / Theme.pxPerMm < 190

    /** In `language`, which is named so that another one makes another list. */
    function stationList(language: string): var {
        const list = [];
        for (let station = 0; station < 7; ++station)
            list.push({ name: Session.stationName(station), station: station });
        return list;
    }

    onClosing: Session.helper = false

    // A second window: made only when it is wanted.
    Loader {
        id: helper
        active: Session.helper
        source: "HelperWindow.qml"
        onLoaded: (item as HelperWindow)?.place(Qt.application, Screen.name)
    }
    FocusScope {
        id: sheet
        // Not anchored: what holds it has no size before the window is shown, and all would be laid out twice.
        width: root.width
        height: root.height
        focus: true

        Keys.onEscapePressed: page.item?.leave()
        // The pedal turns the steps wherever the keyboard's focus is.
        Keys.onPressed: event => {
            if (root.working && (event.key === Qt.Key_PageDown || event.key === Qt.Key_PageUp))
                page.item?.turn?.(event);
        }

        Loader {
            id: page
            x: band.visible && !Theme.left ? band.width : 0
            width: parent.width - (band.visible ? band.width : 0)
            height: parent.height - notice.height
            focus: true
            source: Session.view === "shelf" ? "ShelfPage.qml"
                    : Session.view === "settings" ? "SettingsPage.qml"
                    : Session.station === 0 ? "FitPage.qml"
                    : Session.station === 1 ? "ShopPage.qml" : Session.station === 2 ? "CutPage.qml"
                    : Session.station === 3 ? "HoopPage.qml"
                    : Session.station === 4 ? "TrimPage.qml" : Session.station === 5 ? "JoinPage.qml" : "EdgePage.qml"
        }

        NoticeLine {
            id: notice
            x: page.x
            width: page.width
            y: parent.height - height
            text: Session.notice
            onDismissed: Session.dismissNotice()
        }

        PassingLine {
            id: passing
            objectName: "passing"
            // Beside undo, over the drawing; upright the targets lie there.
            x: Theme.left ? page.x + page.width - width : page.x
            y: root.width > root.height ? parent.height - height : 0
        }
        Connections {
            target: Session
            function onUndone(what) {
                passing.say(qsTr("Undone: %1").arg(what));
            }
        }

        Band {
            id: band
            visible: root.working
            x: Theme.left ? parent.width - width : 0
            width: Theme.band
            height: parent.height
            folded: root.small
            current: Session.station
            canUndo: Session.canUndo
            undoText: Session.undoText
            stations: root.stationList(Language.code)
            onChosen: station => Session.station = station
            onUndo: Session.undo()
            onShelf: Session.showShelf()
            reads: Session.station > 1 && !StepModel.finished && Aloud.offered
            onRead: Aloud.say()
        }
    }

    // Last here, for what stands last is completed first: every page is made in the size and colours it is to
    // have, and not laid out a second time.
    Binding { target: Theme; property: "set"; value: Look.colourSet }
    Binding { target: Theme; property: "pxPerMm"; value: Look.pxPerMm }
    Binding { target: Theme; property: "cloths"; value: FitModel.cloths }
    Binding { target: Theme; property: "left"; value: Session.leftHanded }
    Binding { target: Theme; property: "reducedMotion"; value: Look.reducedMotion }
    Binding { target: Theme; property: "small"; value: root.small }
}
