# SPDX-License-Identifier: Apache-2.0
"""Where things stand and which way calls go."""
import re
from pathlib import Path

from source_tree import CPP, line_of

FOLDERS = {"core", "qml", "platform", "tests", "demo", "cmake", ".ci"}
FILES = {"CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "LICENSE", "THIRD_PARTY.md", "CHANGELOG.md", "SECURITY.md"}

# Which folders of core a folder of core may include: quantity <- gear, fit, air <- season <- book <- report; ports stand on quantity.
CORE = {
    "quantity": {"quantity"},
    "ports": {"quantity", "ports"},
    "gear": {"quantity", "gear"},
    "fit": {"quantity", "gear", "fit"},
    "air": {"quantity", "gear", "air"},
    "season": {"quantity", "gear", "fit", "air", "season"},
    "book": {"quantity", "ports", "gear", "fit", "air", "season", "book"},
    "report": {"quantity", "gear", "fit", "air", "season", "book", "report"},
}
INCLUDE = re.compile(r'^[ \t]*#[ \t]*include[ \t]*(?:"([^"]+)"|<([^>]+)>)', re.MULTILINE)
QT = re.compile(r"\b(?:Q_[A-Z]+|Q(?:String|Object|List|Vector|Map|Hash|Variant|Byte|Date|Time|File|Dir|Debug|Json|Qml|Quick)\w*)\b")
VALUES_MARK = "table of values"  # in the first five lines of a file that is nothing but values


def top_level(tree):
    seen_folders = {n.split("/")[0] for n in tree.names if "/" in n}
    seen_files = {n for n in tree.names if "/" not in n and not n.startswith(".")}
    for name in sorted(seen_folders - FOLDERS):
        yield f"{name}/: a folder that has no place at the top"
    for name in sorted(seen_files - FILES):
        yield f"{name}: a file that has no place at the top"
    for name in sorted(FOLDERS - seen_folders) + sorted(FILES - seen_files):
        yield f"{name}: missing at the top"


def target_of(tree, name, included):
    """The file of ours that an include means, or None."""
    if included in tree.names:
        return included
    beside = str(Path(name).parent / included)
    if beside in tree.names:
        return beside
    matches = [n for n in tree.names if n.endswith("/" + included)]
    return matches[0] if len(matches) == 1 else None


def may_include(name, target):
    ours, theirs = name.split("/"), target.split("/")
    if ours[0] in ("tests", "demo"):
        return True
    if ours[0] == "core":
        return theirs[0] == "core" and (len(ours) < 3 or theirs[1] in CORE.get(ours[1], set()))
    if ours[0] == "qml":
        return theirs[0] in ("core", "qml")
    if ours[0] == "platform" and ours[1] == "app":
        return theirs[0] in ("core", "qml", "platform")
    if ours[0] == "platform":
        # platform/system holds the real clock and keys; the terminal also writes the demo's Book.
        is_demo = ours[1] == "cli" and theirs[:2] == ["demo", "generator"]
        return theirs[0] == "core" or theirs[:2] == ours[:2] or theirs[:2] == ["platform", "system"] or is_demo
    return True


def include_direction(tree):
    for name in tree.ending(*CPP):
        for match in INCLUDE.finditer(tree.text(name)):
            target = target_of(tree, name, match.group(1) or match.group(2))
            if target and not may_include(name, target):
                yield f"{name}:{line_of(tree.text(name), match.start(0))}: must not include {target}"


def qt_in_core(tree):
    for name in tree.under("core", ends=CPP):
        text = tree.text(name)
        for match in INCLUDE.finditer(text):
            if re.match(r"Q[A-Z]|Qt", match.group(2) or match.group(1)):
                yield f"{name}:{line_of(text, match.start(0))}: Qt in core, {match.group(0).strip()}"
        for match in QT.finditer(text):
            yield f"{name}:{line_of(text, match.start(0))}: Qt in core, {match.group(0)}"


def lengths(tree):
    for name in tree.ending(*CPP, ".qml"):
        text = tree.text(name)
        limit = 250 if name.endswith(".qml") else 400
        lines = text.count("\n") + (not text.endswith("\n"))
        is_table = not name.endswith(".qml") and any(VALUES_MARK in line for line in text.split("\n")[:5])
        if lines >= limit and not is_table:
            yield f"{name}: {lines} lines, expected under {limit}"


def licence_line(tree):
    for name in tree.names:
        is_script = "." not in Path(name).name and tree.text(name).startswith("#!")
        if not (name.endswith(CPP + (".qml", ".py", ".cmake", ".sh", ".js", "CMakeLists.txt")) or is_script):
            continue
        if not any("SPDX-License-Identifier: Apache-2.0" in line for line in tree.text(name).split("\n")[:3]):
            yield f"{name}: no SPDX line in the first three lines"


def documents_named(tree):
    """A document that is referred to stands in the tree."""
    known = {Path(n).name for n in tree.names}
    for name in tree.texts():
        for match in re.finditer(r"\b[A-Z][A-Z_]{3,}\.md\b", tree.text(name)):
            if match.group(0) not in known:
                yield f"{name}:{line_of(tree.text(name), match.start(0))}: refers to {match.group(0)}, which is not here"


RULES = {
    "only the agreed folders and files stand at the top": top_level,
    "includes go only in the stated direction": include_direction,
    "core knows no Qt": qt_in_core,
    "files stay short": lengths,
    "every source file names its licence": licence_line,
    "every document that is named exists": documents_named,
}
