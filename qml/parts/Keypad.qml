// SPDX-License-Identifier: Apache-2.0
// A large number pad with a read-out. Keeps what is typed as text, so that "07" and "00" stay what they are.
// Works with fingers, a hardware keyboard and a hand scanner. units adds a unit switch; fractions adds keys such as "1/8".
// No key moves, whatever is typed or said: what is wrong takes the label's place, in room that is kept for it.
import QtQuick
import Snugline.Tokens

FocusScope {
    id: pad

    property string text: ""
    property string label: ""
    property int maximumLength: 6
    property bool allowDecimal: false
    property var fractions: []            // "1/8": one of them behind the whole number
    property var units: []                // [{ name, text }]
    property string unit: ""
    property string enterText: qsTr("Enter")
    property bool showsEnter: true
    property bool showsReadout: true      // false: what is typed stands elsewhere
    property bool isSecret: false         // neither shown nor spoken: a dot for each digit
    property string message: ""           // what is wrong, said in the label's place
    property bool keepsNote: true         // false: neither a label nor a message here, ever

    signal edited(string text)
    signal entered(string text)
    signal unitChosen(string name)

    readonly property int columns: 3
    readonly property real head: showsReadout ? column.implicitHeight : 0
    readonly property real keysTop: wide || !showsReadout ? 0 : head + Theme.grid
    readonly property string shownText: isSecret ? "\u2022".repeat(text.length) : text
    readonly property real keyHeight: Math.max(Theme.touch, Math.round(Theme.headSize * 2.2))
    implicitWidth: 3 * keyHeight * 1.35 + 2 * Theme.grid
    implicitHeight: wide ? Math.max(head + (enterKey.visible ? Theme.grid + enterKey.implicitHeight : 0), keys.implicitHeight) : keysTop + keys.implicitHeight + (enterKey.visible ? Theme.grid + enterKey.implicitHeight : 0)
    readonly property bool wide: showsReadout && width >= 640       // read-out left, keys right
    readonly property real keyRoom: wide ? (width - Theme.margin) / 2 : width

    function press(key: string): void {
        const isFraction = key.indexOf("/") > 0
        if (key === "erase")
            text = text.replace(/ ?(.\/.|.)$/, "")
        else if (isFraction && text.indexOf(".") < 0)
            text = text.replace(/ ?.\/.$/, "") + (text.length > 0 && text.indexOf("/") !== 1 ? " " : "") + key
        else if (isFraction || text.indexOf("/") > 0 || key === "." && text.indexOf(".") >= 0)
            return
        else if (text.length + key.length <= maximumLength)
            text += key
        edited(text)
    }
    function clear(): void {
        text = ""
        edited(text)
    }
    function enter(): void {
        if (text.length > 0)
            entered(text)
    }

    Keys.onPressed: event => {
        if (event.text >= "0" && event.text <= "9" && event.text.length === 1)
            press(event.text)
        else if (allowDecimal && (event.text === "." || event.text === ","))
            press(".")
        else if (event.key === Qt.Key_Backspace)
            press("erase")
        else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
            enter()
        else
            return
        event.accepted = true
    }

    Column {
        id: column
        width: pad.wide ? pad.keyRoom : pad.width
        visible: pad.showsReadout
        spacing: Theme.grid

        Words {
            id: note
            objectName: "pad-note"
            width: parent.width
            height: Math.ceil(2 * line.height)
            visible: pad.keepsNote
            verticalAlignment: Text.AlignBottom
            text: pad.message.length > 0 ? pad.message : pad.label
            size: "small"
            tone: pad.message.length > 0 ? "stop" : "quiet"
            fontSizeMode: Text.Fit
            minimumPixelSize: Math.round(Theme.smallSize * 0.6)
        }
        FontMetrics { id: line; font: note.font }
        Rectangle {
            width: parent.width
            height: Math.max(Theme.touch, readout.implicitHeight + Theme.grid)
            radius: Theme.radius
            color: Theme.card
            border.width: Theme.stroke
            border.color: pad.message.length > 0 ? Theme.brick : Theme.ink
            Accessible.role: Accessible.EditableText
            Accessible.readOnly: true
            Accessible.name: pad.label + " " + pad.shownText
            Words {
                id: readout
                anchors.centerIn: parent
                width: parent.width - 2 * Theme.gap
                horizontalAlignment: Text.AlignHCenter
                size: "title"
                text: pad.text.length > 0 ? pad.shownText : "\u2013"
                tone: pad.text.length > 0 ? "plain" : "quiet"
                Accessible.ignored: true
            }
        }
        ChoiceRow {
            width: parent.width
            visible: pad.units.length > 0
            choices: pad.units
            current: pad.unit
            onChosen: name => pad.unitChosen(name)
        }
        Grid {
            id: fractions
            width: parent.width
            columns: 4
            spacing: Theme.grid
            visible: pad.fractions.length > 0
            Repeater {
                model: pad.fractions
                BigButton {
                    required property string modelData
                    objectName: "key-" + modelData
                    text: modelData
                    leftPadding: Theme.grid / 2
                    rightPadding: Theme.grid / 2
                    width: Math.floor((fractions.width - 3 * Theme.grid) / 4)
                    onClicked: pad.press(modelData)
                }
            }
        }
    }
    Grid {
        id: keys
        x: pad.wide ? pad.width - width : 0
        y: pad.keysTop
        width: pad.keyRoom
        columns: pad.columns
        spacing: Theme.grid
        Repeater {
            model: ["1", "2", "3", "4", "5", "6", "7", "8", "9", pad.allowDecimal ? "." : "clear", "0", "erase"]
            BigButton {
                required property string modelData
                objectName: "key-" + modelData
                width: (keys.width - 2 * keys.spacing) / 3
                height: pad.keyHeight
                large: true
                text: modelData === "erase" ? "" : modelData === "clear" ? qsTr("Clear") : modelData
                font.pixelSize: modelData === "clear" ? Theme.bodySize : Theme.headSize
                leftPadding: Theme.grid / 2
                rightPadding: Theme.grid / 2
                sign: modelData === "erase" ? "erase" : ""
                spokenName: modelData === "erase" ? qsTr("Erase last") : modelData === "." ? qsTr("Decimal point") : text
                enabled: modelData !== "erase" && modelData !== "clear" || pad.text.length > 0
                onClicked: modelData === "clear" ? pad.clear() : pad.press(modelData)
            }
        }
    }
    BigButton {
        id: enterKey
        objectName: "key-enter"
        y: pad.wide ? Math.max(pad.head + Theme.grid, keys.implicitHeight - height) : keys.y + keys.implicitHeight + Theme.grid
        width: pad.keyRoom
        height: implicitHeight
        visible: pad.showsEnter
        kind: "primary"
        large: true
        text: pad.enterText
        enabled: pad.text.length > 0
        onClicked: pad.enter()
    }
}
