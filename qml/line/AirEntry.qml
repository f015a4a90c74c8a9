// SPDX-License-Identifier: Apache-2.0
// What a gauge reads at one bladder. entry is what the guide says of it: {label, known, value, unit, otherUnit, note, message, typed}.
// A read-out over the air can be put into `live` and sets steadyText and trend; typing and stepping always work beside it.
import QtQuick
import Snugline.Parts

NumberEntry {
    id: air

    property var entry: ({})
    property alias live: air.extra

    label: air.entry.label ?? ""
    value: air.entry.known === true ? air.entry.value : ""
    unit: air.entry.unit ?? ""
    otherUnit: air.entry.otherUnit ?? ""
    note: air.entry.note ?? ""
    message: air.entry.message ?? ""
    digits: air.entry.typed ?? ""
}
