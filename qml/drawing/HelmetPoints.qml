// SPDX-License-Identifier: Apache-2.0
// The unit by itself with the seven points as places that can be touched, by their codes.
import QtQuick
import Snugline.Drawing

DrawnView {
    id: unit

    touchParts: PartWords.points
    crop: Qt.rect(58, 44, 532, 520)
    places: ({
        "certification": [486, 438], "warning-label": [436, 228], "shell": [250, 118], "hardware": [294, 370],
        "faceguard": [88, 404], "liner": [540, 290], "chin-strap": [204, 516],
        "port-crown": [378, 118], "port-sides": [526, 352], "port-jaw-left": [326, 462]
    })

    ProfileHelmet { view: unit }
}
