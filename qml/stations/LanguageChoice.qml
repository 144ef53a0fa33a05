// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core

/** The languages of the program, each by its own name: who cannot read the others finds it all the same. */
ChoiceCells {
    objectName: "languages"
    accessibleName: qsTr("Language")
    choices: Language.choices
    value: Language.code
    onChosen: value => Language.code = value
}
