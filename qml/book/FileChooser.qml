// SPDX-License-Identifier: Apache-2.0
// The system's way to choose a file, made when it is first asked for, so that no page waits for it.
import QtQuick
import QtQuick.Dialogs
import Snugline.Parts

FileDialog {
    id: dialog

    signal chosen(string file)

    onAccepted: dialog.chosen(dialog.selectedFile.toString())

    // It stands in a window of its own: nobody is shown the files of this device over a lock.
    readonly property bool isCovered: Glass.isCovered
    onIsCoveredChanged: if (isCovered) close()
}
