// SPDX-License-Identifier: Apache-2.0
// The weather where the helmets are, every part by one touch: temperature, elevation, where they have been, the place; and the places that
// the team travels to. Each touch ranks the board anew behind it.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PullSheet {
    id: sheet

    required property WeatherModel weather
    property bool adding: false

    objectName: "weather-sheet"
    title: qsTr("Weather where the helmets are")
    onEnded: adding = false
    onClosed: weather.flush()

    Notice { Layout.fillWidth: true; kind: "attention"; text: sheet.weather.age }
    Notice { objectName: "unjudged"; Layout.fillWidth: true; kind: "inform"; text: sheet.weather.unjudged }
    FigureStepper {
        objectName: "temperature"
        Layout.fillWidth: true
        label: qsTr("Temperature")
        text: sheet.weather.temperature
        steps: sheet.weather.temperatureSteps
        typedLabel: sheet.weather.temperatureLabel
        message: sheet.weather.temperatureTrouble
        onStepped: name => sheet.weather.stepTemperature(name)
        onTyped: text => { if (sheet.weather.typeTemperature(text)) endTyping() }
    }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.grid / 2
        Words { Layout.fillWidth: true; text: qsTr("Where have the helmets been? The truck counts, not the field."); size: "small"; tone: "quiet" }
        ChipGrid {
            objectName: "whereabouts"
            Layout.fillWidth: true
            choices: sheet.weather.whereabouts
            onChosen: name => sheet.weather.chooseWhereabouts(name)
        }
    }
    FigureStepper {
        objectName: "elevation"
        Layout.fillWidth: true
        label: qsTr("Elevation")
        text: sheet.weather.elevation
        steps: sheet.weather.elevationSteps
        typedLabel: sheet.weather.elevationLabel
        message: sheet.weather.elevationTrouble
        onStepped: name => sheet.weather.stepElevation(name)
        onTyped: text => { if (sheet.weather.typeElevation(text)) endTyping() }
    }
    Words { Layout.fillWidth: true; visible: text.length > 0; text: sheet.weather.ambient; size: "small"; tone: "quiet" }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.grid / 2
        Words { Layout.fillWidth: true; text: sheet.weather.places.length > 0 ? qsTr("Place") : qsTr("Places that you travel to stand here, with their elevation."); size: "small"; tone: "quiet" }
        ChipGrid {
            objectName: "places"
            Layout.fillWidth: true
            mostColumns: 3
            choices: sheet.weather.places
            onChosen: name => sheet.weather.choosePlace(name)
        }
    }
    BigButton {
        objectName: "add-place"
        Layout.fillWidth: true
        visible: !sheet.adding
        sign: "plus"
        text: qsTr("Add or remove a place")
        onClicked: sheet.adding = true
    }
    Card {
        Layout.fillWidth: true
        visible: sheet.adding
        ColumnLayout {
            width: parent.width
            spacing: Theme.grid
            TextEntry { id: placeName; objectName: "place-name"; Layout.fillWidth: true; label: qsTr("Name of the place"); maximumLength: 80; message: sheet.weather.placeTrouble }
            TextEntry { id: placeHeight; objectName: "place-elevation"; Layout.fillWidth: true; label: sheet.weather.elevationLabel; maximumLength: 12; inputMethodHints: Qt.ImhFormattedNumbersOnly }
            BigButton {
                objectName: "keep-place"
                Layout.fillWidth: true
                kind: "primary"
                text: qsTr("Keep this place")
                enabled: placeName.text.trim().length > 0 && placeHeight.text.length > 0
                onClicked: {
                    if (sheet.weather.addPlace(placeName.text, placeHeight.text)) {
                        placeName.clear()
                        placeHeight.clear()
                    }
                }
            }
            Repeater {
                model: sheet.weather.places.filter(place => place.isPreset)
                BigButton {
                    required property var modelData
                    objectName: "remove-" + modelData.name
                    Layout.fillWidth: true
                    sign: "erase"
                    text: qsTr("Remove %1").arg(modelData.text)
                    onClicked: sheet.weather.removePlace(modelData.name)
                }
            }
        }
    }
}
