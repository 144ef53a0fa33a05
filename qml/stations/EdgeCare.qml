// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** What to mind with the finished piece, and what may be sewn to it. */
SpreadActs {
    id: root
    heading: qsTr("Care, label, sleeve, pillow")
    acts: EdgeModel.careActs
    drawings: ({ "pillow-in": pillow })

    Component {
        id: pillow
        PillowDrawing {
            view: EdgeModel.view
            accessibleName: qsTr("As a pillow, from the back")
        }
    }
}
