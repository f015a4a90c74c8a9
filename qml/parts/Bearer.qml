// SPDX-License-Identifier: Apache-2.0
// Who holds the glass, for the corner of every page, and who may do what they may not: whoever builds the window says so, and hears when
// somebody else wants it.
pragma Singleton
import QtQuick

QtObject {
    property string initials: ""          // "" where nobody has to be asked: the corner stays empty
    property string staffOnly: ""         // "Staff do this: SK"; "" where the holder may
    property string adminOnly: ""
    readonly property bool isStaff: staffOnly.length === 0
    readonly property bool isAdmin: adminOnly.length === 0
    signal wanted()
}
