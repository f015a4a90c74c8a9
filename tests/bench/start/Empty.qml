// SPDX-License-Identifier: Apache-2.0
// The least that a Qt Quick program shows: one ground colour.
import QtQuick

Rectangle { color: "white" }
