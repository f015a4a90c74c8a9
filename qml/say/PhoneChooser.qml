// SPDX-License-Identifier: Apache-2.0
// The system's way to choose a file, made when it is first asked for.
import QtQuick
import QtQuick.Dialogs

FileDialog {
    id: dialog

    signal chosen(string file)

    onAccepted: dialog.chosen(dialog.selectedFile.toString())
}
