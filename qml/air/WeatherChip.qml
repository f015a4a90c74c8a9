// SPDX-License-Identifier: Apache-2.0
// The weather on the board: minus and plus move the temperature by one touch, the middle opens the rest. All words come in. Kept light,
// because it stands in the first frame: rectangles and two lines of text.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

FocusScope {
    id: chip

    property string figures: ""           // "4 °C, 180 m"; empty: not noted
    property string words: ""             // "Outside, home field, noted yesterday"
    property bool old: false              // noted long ago: said in words, framed as a question
    readonly property bool asks: old || figures.length === 0
    readonly property color frame: asks ? Theme.ochre : Theme.lake

    signal opened()
    signal stepped(int by)

    component Sign: Touchable {
        id: sign
        property bool plus: false
        width: Theme.touch
        height: chip.height
        autoRepeat: true
        Accessible.role: Accessible.Button
        Accessible.name: text
        Accessible.onPressAction: clicked()
        Rectangle { visible: sign.down; anchors.fill: parent; anchors.margins: Theme.grid / 2; radius: Theme.radius; color: Theme.wash }
        Rectangle { anchors.centerIn: parent; width: 22; height: Theme.stroke + 1; color: chip.frame }
        Rectangle { anchors.centerIn: parent; visible: sign.plus; width: Theme.stroke + 1; height: 22; color: chip.frame }
        FocusFrame { shown: sign.visualFocus }
    }

    implicitWidth: 320
    implicitHeight: Math.max(Theme.touch, middle.implicitHeight + 2 * Theme.grid)
    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("Weather where the helmets are")

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius
        color: Theme.card
        border.width: Theme.stroke
        border.color: chip.frame
    }
    Sign { id: minus; objectName: "colder"; text: qsTr("Colder"); onClicked: chip.stepped(-1) }
    Touchable {
        id: open
        objectName: "weather"
        anchors { left: minus.right; right: plus.left; top: parent.top; bottom: parent.bottom }
        Accessible.role: Accessible.Button
        Accessible.name: qsTr("Weather") + ". " + [chip.figures, chip.words].filter(w => w.length > 0).join(". ")
        Accessible.onPressAction: clicked()
        onClicked: chip.opened()
        Rectangle { visible: open.down; anchors.fill: parent; anchors.margins: Theme.grid / 2; color: Theme.wash }
        Rectangle { y: Theme.grid; width: Theme.hairlineWidth; height: parent.height - 2 * y; color: Theme.hairline }
        Rectangle { y: Theme.grid; x: parent.width - width; width: Theme.hairlineWidth; height: parent.height - 2 * y; color: Theme.hairline }
        FocusFrame { shown: open.visualFocus }
        Column {
            id: middle
            anchors.verticalCenter: parent.verticalCenter
            x: Theme.grid
            width: parent.width - 2 * Theme.grid
            Words { width: parent.width; visible: text.length > 0; horizontalAlignment: Text.AlignHCenter; text: chip.figures; bold: true; tone: "info"; Accessible.ignored: true }
            Words { width: parent.width; visible: text.length > 0; horizontalAlignment: Text.AlignHCenter; text: chip.words; size: "small"; tone: chip.asks ? "see" : "quiet"; Accessible.ignored: true }
        }
    }
    Sign { id: plus; objectName: "warmer"; plus: true; x: chip.width - width; text: qsTr("Warmer"); onClicked: chip.stepped(1) }
}
