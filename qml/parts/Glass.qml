// SPDX-License-Identifier: Apache-2.0
// Whether something lies over the page: a lock, another person's code. Whoever builds the window says so. What does not go with the page
// by itself (a pull sheet, a system dialog, a camera) looks here.
pragma Singleton
import QtQuick

QtObject {
    property bool isCovered: false
}
