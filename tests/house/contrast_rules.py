# SPDX-License-Identifier: Apache-2.0
"""Contrast of the tokens. Source: WCAG 2.1, definitions of relative luminance and contrast ratio; 7:1 is its level AAA for text."""
import re

LEAST = 7.0
THEME = "qml/tokens/Theme.qml"
THEMES = ("day", "sun", "night")
GROUNDS = ("paper", "card")
TEXTS = ("ink", "slate", "turf", "ochre", "brick", "lake")


def channel(value):
    c = value / 255
    return c / 12.92 if c <= 0.03928 else ((c + 0.055) / 1.055) ** 2.4


def luminance(colour):
    r, g, b = (int(colour[i:i + 2], 16) for i in (1, 3, 5))
    return 0.2126 * channel(r) + 0.7152 * channel(g) + 0.0722 * channel(b)


def ratio(a, b):
    low, high = sorted((luminance(a), luminance(b)))
    return (high + 0.05) / (low + 0.05)


def tokens(text, theme):
    block = re.search(rf"property var {theme}: \(\{{(.*?)\}}\)", text, re.DOTALL)
    return dict(re.findall(r"(\w+):\s*\"(#[0-9A-Fa-f]{6})\"", block.group(1))) if block else {}


def contrast(tree):
    if THEME not in tree.names:
        yield f"{THEME}: missing, the tokens stand there"
        return
    for theme in THEMES:
        colours = tokens(tree.text(THEME), theme)
        pairs = [(t, g) for t in TEXTS for g in GROUNDS]
        # A filled button carries onFill on a text colour.
        pairs += [("onFill", fill) for fill in TEXTS]
        for front, ground in pairs:
            if front not in colours or ground not in colours:
                yield f"{THEME}: {theme} has no {front} or {ground}"
            elif ratio(colours[front], colours[ground]) < LEAST:
                yield f"{THEME}: {theme}, {front} on {ground} is {ratio(colours[front], colours[ground]):.2f}:1, expected at least {LEAST}:1"


def loose_colours(tree):
    """Colours stand in the tokens only; a hex colour elsewhere would escape the check above. A shade of black behind a sheet carries no text."""
    for name in tree.under("qml", ends=".qml"):
        if name == THEME:
            continue
        for number, line in enumerate(tree.text(name).split("\n"), 1):
            if re.search(r"\"#(?![0-9A-Fa-f]{2}0{6}\")[0-9A-Fa-f]{3,8}\"", line.split("//")[0]):
                yield f"{name}:{number}: a colour outside the tokens"


RULES = {"every pair of text and ground has a contrast of at least 7 to 1": contrast, "colours stand in the tokens only": loose_colours}
