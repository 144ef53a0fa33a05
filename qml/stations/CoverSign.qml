// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** What lies below is covered by cloth, one of its corners lifted; or the cloth is folded back from it. */
Pictogram {
    property bool open: false

    width: Theme.mm(7.4)
    name: open ? "uncovered" : "covered"
}
