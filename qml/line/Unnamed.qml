// SPDX-License-Identifier: Apache-2.0
// A hit or feeling bad said at a tablet without a number: nobody's page, only what can be done about it.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property Shell shell
    property string what: ""

    title: qsTr("See athlete now")
    subtitle: shell.unwell.who
    hasBack: true
    Component.onCompleted: shell.unwell.open(what)

    UnwellCard {
        Layout.fillWidth: true
        words: page.shell.unwell.words
        acts: page.shell.unwell.acts
        trouble: page.shell.unwell.trouble
        onActed: name => page.shell.unwell.act(name)
    }
    Words {
        Layout.fillWidth: true
        text: page.shell.unwell.words.length > 0 ? qsTr("No number was typed. Ask who was at the tablet then.") : qsTr("This is closed.")
    }
}
