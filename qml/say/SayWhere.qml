// SPDX-License-Identifier: Apache-2.0
// Where it is tight or loose, touched on the helmet from the front and from the side, or chosen by words; then which of the two.
import QtQuick
import QtQuick.Layouts
import Snugline.Drawing
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property SayModel say
    readonly property var drawn: say.drawn

    title: say.isShared ? say.jersey + "  " + say.initials : say.jersey
    subtitle: say.ask
    hasBack: !say.isShared
    onBack: say.begin()
    headerRight: BigButton {
        objectName: "say-not-me"
        visible: page.say.isShared
        text: qsTr("Not me")
        spokenName: qsTr("Not me: begin again")
        onClicked: page.say.begin()
    }
    drawingShare: 0.5
    drawing: Item {
        anchors.fill: parent
        HeadFront {
            id: front
            objectName: "say-front"
            width: parent.width / 2 - Theme.grid / 2
            height: parent.height
            namesSides: true
            hasCrownAir: page.drawn.hasCrownAir ?? false
            hasSideAir: page.drawn.hasSideAir ?? false
            hasJawAir: page.drawn.hasJawAir ?? false
            strapPoints: page.drawn.strapPoints ?? 4
            focusPart: page.say.place
            findings: page.say.findings
            touchParts: ["brow", "chin", "straps", "jaw-left", "jaw-right", "ears-left", "ears-right", "sides-left", "sides-right"]
            description: qsTr("The helmet from the front")
            onPartTouched: name => page.say.touchPlace(name)
        }
        HeadProfile {
            id: side
            objectName: "say-side"
            x: parent.width / 2 + Theme.grid / 2
            width: front.width
            height: parent.height
            hasCrownAir: front.hasCrownAir
            hasSideAir: front.hasSideAir
            hasJawAir: front.hasJawAir
            strapPoints: front.strapPoints
            focusPart: page.say.place
            findings: page.say.findings
            touchParts: ["nape", "crown", "hold"]
            description: qsTr("The helmet from the side")
            onPartTouched: name => page.say.touchPlace(name)
        }
        Rectangle {                       // the place by its name, where it was touched
            id: named
            readonly property DrawnView view: front.touchParts.indexOf(page.say.place) >= 0 ? front : side
            readonly property point at: page.say.place.length > 0 ? view.placeAt(page.say.place) : Qt.point(0, 0)
            readonly property real above: at.y - height - Theme.gap
            visible: page.say.place.length > 0
            x: Math.max(0, Math.min(parent.width - width, view.x + at.x - width / 2))
            y: above >= 0 ? above : Math.min(parent.height - height, at.y + Theme.gap)
            width: Math.min(parent.width, words.implicitWidth + 2 * Theme.grid)
            height: words.height + Theme.grid
            radius: Theme.radius
            color: Theme.card
            border.width: Theme.stroke
            border.color: Theme.lake
            Words {
                id: words
                objectName: "say-place"
                x: Theme.grid
                y: Theme.grid / 2
                width: named.width - 2 * Theme.grid
                horizontalAlignment: Text.AlignHCenter
                bold: true
                tone: "info"
                text: page.say.placeText
            }
        }
    }

    Notice { Layout.fillWidth: true; kind: "attention"; text: page.say.trouble }
    Repeater {
        model: page.say.seen
        Notice { required property string modelData; Layout.fillWidth: true; kind: "good"; text: modelData }
    }
    Words {
        Layout.fillWidth: true
        visible: page.say.words.length > 0
        text: qsTr("\"%1\"").arg(page.say.words)
        tone: "quiet"
    }
    ChipGrid {
        objectName: "say-else"
        Layout.fillWidth: true
        mostColumns: 3
        choices: [
            { name: "broke", text: qsTr("Something broke"), enabled: !page.say.isBusy },
            { name: "hair", text: qsTr("Hair changed"), enabled: !page.say.isBusy },
            { name: "words", text: page.say.words.length > 0 ? qsTr("Change words") : qsTr("Add words") }
        ]
        onChosen: name => name === "broke" ? page.say.somethingBroke() : name === "hair" ? page.say.hairChanged() : page.say.openWords()
    }
    ChipGrid {
        objectName: "say-places"
        Layout.fillWidth: true
        mostColumns: 4
        choices: page.say.places
        onChosen: name => page.say.touchPlace(name)
    }
    foot: [
        AnswerBar {
            objectName: "say-feels"
            Layout.fillWidth: true
            readonly property bool isAsked: page.say.place.length > 0 && !page.say.isBusy
            answers: [
                { name: "tight", text: qsTr("Tight or pinches"), detail: page.say.placeText, enabled: isAsked },
                { name: "loose", text: qsTr("Loose or moves"), detail: page.say.placeText, enabled: isAsked }
            ]
            onAnswered: name => page.say.feels(name)
        },
        RedWay { onClicked: page.say.unwell() }
    ]
}
