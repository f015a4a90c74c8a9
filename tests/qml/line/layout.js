// SPDX-License-Identifier: Apache-2.0
// What is wrong with how a screen of the Line stands: a list of sentences, empty when all is well.
.pragma library

// The ladder in landscape shows all its steps at once, so that its rows are as low as on a phone there, and as wide as the ladder.
const leastStep = 56

function nameOf(item) {
    return (item.objectName || item.text || String(item)).slice(0, 60)
}
function isShown(item) {
    return item.visible && item.opacity > 0 && item.width > 0 && item.height > 0
}
function isControl(item) {
    return item.clicked !== undefined && item.visualFocus !== undefined
}

// Nothing sticks out sideways, nothing is cut off, everything touched is large enough and says its name.
function troubles(screen, leastTouch) {
    const found = []
    walk(screen, screen, leastTouch, found)
    return found.slice(0, 6)
}
// What comes from the disk while a frame is drawn (a timeline) is laid out in a frame after it.
function troublesOnceLaidOut(nextFrame, screen, leastTouch) {
    let found = []
    for (let frame = 0; frame < 10 && (frame === 0 || found.length > 0); ++frame) {
        nextFrame()
        found = troubles(screen, leastTouch)
    }
    return found
}

function walk(item, screen, leastTouch, found) {
    for (let i = 0; i < item.children.length; ++i) {
        const child = item.children[i]
        if (!child.visible || child.opacity === 0 || child.drawScale !== undefined)
            continue                      // a drawing scales itself into its place
        const at = child.mapToItem(screen, 0, 0)
        if (isShown(child) && (at.x < -6 || at.x + child.width > screen.width + 6))
            found.push("sticks out sideways: " + nameOf(child) + " " + Math.round(at.x) + ".." + Math.round(at.x + child.width))
        if (child.truncated === true)
            found.push("cut off: " + nameOf(child))
        if (child.contentWidth !== undefined && child.wrapMode !== undefined && child.text !== undefined && child.text.length > 0 && child.contentWidth > child.width + 2)
            found.push("wider than its place: " + nameOf(child) + " " + Math.round(child.contentWidth) + " in " + Math.round(child.width))
        if (child.implicitHeight > child.height + 1 && child.title !== undefined && child.clicked !== undefined)
            found.push("less high than its words: " + nameOf(child))
        if (isControl(child) && isShown(child)) {
            const least = nameOf(child).startsWith("step-") ? Math.min(leastTouch, leastStep) : leastTouch
            if (child.enabled && (child.height < least - 0.5 || child.width < least - 0.5))
                found.push("too small to touch: " + nameOf(child) + " " + Math.round(child.width) + " x " + Math.round(child.height))
            if (child.spokenName !== undefined && child.spokenName.trim().length === 0)
                found.push("says no name: " + nameOf(child))
            if (child.contentItem && child.contentItem.implicitHeight > child.height + 1)
                found.push("words taller than their button: " + nameOf(child))
        }
        walk(child, screen, leastTouch, found)
    }
}

// Every control that is enabled can be reached by Tab from the start, and Tab comes round.
function controls(item, found) {
    for (let i = 0; i < item.children.length; ++i) {
        const child = item.children[i]
        if (!child.visible)
            continue
        if (isControl(child) && isShown(child) && child.enabled)
            found.push(child)
        else
            controls(child, found)
    }
    return found
}

function glasses() {
    return [
        { tag: "phone", width: 390, height: 844, scale: 1 },
        { tag: "small phone", width: 360, height: 640, scale: 1 },
        { tag: "tablet upright", width: 834, height: 1194, scale: 1 },
        { tag: "tablet lying", width: 1194, height: 834, scale: 1 },
        { tag: "phone, text 200 %", width: 390, height: 844, scale: 2 },
        { tag: "tablet upright, text 200 %", width: 834, height: 1194, scale: 2 },
        { tag: "tablet lying, text 200 %", width: 1194, height: 834, scale: 2 }
    ]
}
