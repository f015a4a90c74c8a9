// SPDX-License-Identifier: Apache-2.0
// Why an air reason stands on the board: the arithmetic, over the page. why: as WhyLines takes it, with a title.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts

PullSheet {
    id: sheet

    property var why: ({})

    objectName: "why-sheet"
    title: why.title ?? ""

    WhyLines { Layout.fillWidth: true; why: sheet.why }
}
