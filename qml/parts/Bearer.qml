// SPDX-License-Identifier: Apache-2.0
// Who holds the glass, for the corner of every page: whoever builds the window says so, and hears when somebody else wants it.
pragma Singleton
import QtQuick

QtObject {
    property string initials: ""          // "" where nobody has to be asked: the corner stays empty
    signal wanted()
}
