// SPDX-License-Identifier: Apache-2.0
// Text in one of the four sizes and a tone. Wraps by default; nothing is cut off.
import QtQuick
import Snugline.Tokens

Text {
    property string size: "body"      // "title", "head", "body", "small"
    property string tone: "plain"     // "plain", "quiet", "snug", "see", "stop", "info"
    property bool bold: size === "title" || size === "head"

    color: Theme.tone(tone)
    font.family: Theme.family
    font.bold: bold
    font.pixelSize: size === "title" ? Theme.titleSize : size === "head" ? Theme.headSize : size === "small" ? Theme.smallSize : Theme.bodySize
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
