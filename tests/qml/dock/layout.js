// SPDX-License-Identifier: Apache-2.0
// What is wrong with how a screen is laid out: a list of sentences, empty when all is well.
.pragma library

function nameOf(item) {
    return (item.objectName || item.text || String(item)).slice(0, 60)
}

// Everything that shows stands within the glass sideways, no text is cut off, and everything that can be touched is large enough.
function troubles(screen, leastTouch) {
    const found = []
    walk(screen, screen, leastTouch, found)
    return found.slice(0, 5)
}

function walk(item, screen, leastTouch, found) {
    for (let i = 0; i < item.children.length; ++i) {
        const child = item.children[i]
        if (!child.visible || child.opacity === 0 || child.drawScale !== undefined)
            continue                      // a drawing scales itself into its place
        const at = child.mapToItem(screen, 0, 0)
        if (child.width > 0 && child.height > 0 && (at.x < -6 || at.x + child.width > screen.width + 6))
            found.push("sticks out sideways: " + nameOf(child) + " " + Math.round(at.x) + ".." + Math.round(at.x + child.width))
        if (child.truncated === true)
            found.push("cut off: " + nameOf(child))
        if (child.contentWidth !== undefined && child.wrapMode !== undefined && child.text !== undefined && child.text.length > 0 && child.contentWidth > child.width + 2)
            found.push("wider than its place: " + nameOf(child) + " " + Math.round(child.contentWidth) + " in " + Math.round(child.width))
        if (child.clicked !== undefined && child.enabled && child.height > 0 && (child.height < leastTouch - 0.5 || child.width < leastTouch - 0.5))
            found.push("too small to touch: " + nameOf(child) + " " + Math.round(child.width) + " x " + Math.round(child.height))
        walk(child, screen, leastTouch, found)
    }
    overlaps(item, screen, found)
}

// Words and controls that stand one under the other in a column do not stand on each other.
function overlaps(item, screen, found) {
    if (item.spacing === undefined || item.text !== undefined || item.contentY !== undefined)
        return
    const shown = []
    for (let i = 0; i < item.children.length; ++i) {
        const child = item.children[i]
        if (child.visible && child.width > 0 && child.height > 0)
            shown.push(child)
    }
    for (let i = 1; i < shown.length; ++i) {
        const above = shown[i - 1]
        const isBeside = shown[i].x >= above.x + above.width - 1
        if (!isBeside && shown[i].y < above.y + above.height - 1 && shown[i].y > above.y - 1)
            found.push("stands on the one above: " + nameOf(shown[i]))
    }
}

// The glasses to try: width, height, text in percent.
function glasses() {
    return [
        { tag: "phone", width: 390, height: 844, scale: 1 },
        { tag: "small phone", width: 360, height: 640, scale: 1 },
        { tag: "tablet upright", width: 834, height: 1194, scale: 1 },
        { tag: "tablet lying", width: 1194, height: 834, scale: 1 },
        { tag: "small phone, text 200 %", width: 360, height: 640, scale: 2 },
        { tag: "tablet upright, text 200 %", width: 834, height: 1194, scale: 2 }
    ]
}
