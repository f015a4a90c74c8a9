// SPDX-License-Identifier: Apache-2.0
// A large word or two: set smaller, down to small size, where a word would have to be broken.
import QtQuick
import Snugline.Tokens

Words {
    id: heading

    property int most: Theme.titleSize    // px
    readonly property real room: 0.92 * width    // hinting makes words of another size not quite so wide as reckoned
    readonly property real longest: metrics.averageCharacterWidth > 0 ? text.split(" ").reduce((widest, word) => Math.max(widest, metrics.advanceWidth(word)), 0) : 0   // asked anew when the font is there

    size: "title"
    font.pixelSize: room > 0 && longest > room ? Math.max(Math.min(Theme.smallSize, most), Math.floor(most * room / longest)) : most
    Accessible.role: Accessible.Heading
    FontMetrics { id: metrics; font { family: Theme.family; bold: true; pixelSize: heading.most } }
}
