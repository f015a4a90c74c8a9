# SPDX-License-Identifier: Apache-2.0
"""Habits that a reader cannot keep an eye on everywhere."""
import re

from source_tree import CPP, line_of, literals, without_comments
from wording_rules import digest

# Package registries, as SHA-256, so that no such host stands here either.
REGISTRIES = set("""
0dc11026ac75c015aaa1deafff4a7a54ef6d0cf6b3c7f9b1d2c8f3502929aa9e
3ca29e55be4befa48f875d24c27f9bed32fe06588819ed6264084b6670a1ebb0
a4aa2ac280bb8d1a0ce7a1be5a7bfb10292b49fe9435ad5cff19f421f3c70e41
8b5bb5eb9d758455b8635855cf8aaf05b68775e3f83f0291e800ef338fb9783c
789e46d79514e28093cabe2bb4a0798266f584b0e508ef269ebabb6e57859290
71741fe2460a615058687c4585f665af5e825968e51a512ffb14c6f2684a397d
e680c440a2e92079ab1bf7a927e8d3920f1bcd173c0487e28e020110b2e59efc
00a7dc5a0cc388586b8665846e7d8ae94a6dd096f2aa1aa3b4aab4ac484f998a
ce330a5b8c7b9722db25ad62e32b02d17947c3cb52e05b1078b21b8679369e17
c3db8466ffcd858989be3a43536c07568731e95124fb23850abac30074fac4f3
e0fdcc94a2080e5e3da6e1544afce0ba1d89c5f4b82c62abc7b77590e2d529ff
2c77714df232b07f0e8ff768526d166e1a94e606d989d4608c3f1713a0712ae5
f65219c547f9c032a914ee1f7c955347b58b47d17eb867c6fe148595947e5a5a
51c6b9f69c48a75b146d2785c3d70d336d5fdce24868f2e22db377d736f2ef24
e7fbfb5eb8b891d51d67f690d0ae486f670e82b9ced96c91b5091bc532e812ab
a0f007d863a0ed19c5bd996ef6eaab194af2f1ac685c0f71a75270a0366f8983
1ba4e37997a2e986efa6cd844e43fd25b9e816359d31612baa9c18b71e3b5294
75adac515f0bd3db64beb3cdd657340ff9f5443675a8cea41731a4d5d57d0c45
87d14f070cb9686970d008f9f94e668075fd37620381409858bf040ae1271d51
""".split())
HOST = re.compile(r"\b(?:[a-z0-9-]+\.)+[a-z]{2,}\b")
# Written in two halves, so that this file does not find itself.
PLACES = re.compile("(?:" + "|".join(("/wo" + "rk/", "/ho" + r"me/\w", "/ro" + r"ot/", "/Us" + r"ers/\w")) + ")")
TEST_FILES = CPP + (".qml", ".py", "CMakeLists.txt", ".cmake")

OFF = [
    # [.full] is the one hidden tag: the long counts of tests/run --full.
    (re.compile(r"\[\.(?!full\])[^\]\"]*\]|\[!(?:hide|mayfail|shouldfail)\]"), "a test that is hidden or may fail"),
    (re.compile(r"\bDISABLED\b|\bQSKIP\b|\bGTEST_SKIP\b|\bWILL_FAIL\b"), "a test that is turned off"),
    (re.compile(r"@unittest\.(?:skip|expectedFailure)|\bskipTest\(|\bpytest\.skip|\bxfail\b"), "a test that is skipped"),
    (re.compile(r"^[ \t]*skip\(|\bQEXPECT_FAIL\b|\bexpectFail\w*\(", re.MULTILINE), "a test that is skipped or may fail"),
    (re.compile(r"^[ \t]*#[ \t]*if[ \t]+0\b", re.MULTILINE), "code that is turned off"),
]
SLEEP = re.compile(r"\bsleep_(?:for|until)\b|\bu?sleep\(|\bnanosleep\(|\bqSleep\(|\bmsleep\(|\btime\.sleep\(")


def tests_turned_off(tree):
    for name in [n for n in tree.under("tests") if n.endswith(TEST_FILES) and not n.startswith("tests/house/")]:
        text = tree.text(name)
        for pattern, why in OFF:
            for match in pattern.finditer(text):
                yield f"{name}:{line_of(text, match.start())}: {why}, {match.group(0).strip()}"


def sleeping_tests(tree):
    for name in [n for n in tree.under("tests") if n.endswith(TEST_FILES) and not n.startswith("tests/house/")]:
        text = tree.text(name)
        for match in SLEEP.finditer(without_comments(text) if name.endswith(CPP + (".qml",)) else text):
            yield f"{name}:{line_of(text, match.start())}: a test that sleeps; wait for what is meant"


def registry_hosts(tree, registries=None):
    registries = REGISTRIES if registries is None else registries
    for name in tree.texts():
        text = tree.text(name)
        for match in HOST.finditer(text):
            labels = match.group(0).split(".")
            if any(digest(".".join(labels[i:])) in registries for i in range(len(labels) - 1)):
                yield f"{name}:{line_of(text, match.start())}: the host of a package registry"


def machine_paths(tree):
    for name in tree.texts():
        text = tree.text(name)
        for match in PLACES.finditer(text):
            yield f"{name}:{line_of(text, match.start())}: a path of somebody's machine, {match.group(0)}"


def defaults_in_switches(tree):
    """A switch over an enum names every case. A role of a Qt model is an int; elsewhere say so: default:  // not an enum."""
    for name in tree.under("core", "qml", "platform", ends=CPP):
        text = tree.text(name)
        code = without_comments(text)
        for match in re.finditer(r"\bdefault[ \t]*:(?!:)", code):
            line = text.split("\n")[line_of(text, match.start()) - 1]
            subjects = re.findall(r"\bswitch \(([^)]*)\)", code[:match.start()])
            if "not an enum" not in line and subjects[-1:] != ["role"]:
                yield f"{name}:{line_of(text, match.start())}: default in a switch; name every case"


def singletons(tree):
    """Time, randomness, identity and place are handed in: core asks the machine for none of them."""
    asks = re.compile(r"\bsystem_clock::now\b|\bsteady_clock::now\b|\bstd::time\(|\brandom_device\b|\bgetenv\(|\bgettimeofday\(|\blocaltime\w*\(")
    for name in tree.under("core", ends=CPP):
        text = without_comments(tree.text(name))
        for match in asks.finditer(text):
            yield f"{name}:{line_of(text, match.start())}: core asks the machine, {match.group(0)}; hand it in"


def titles(tree):
    """Test titles are sentences: at least three words, a capital first."""
    for name in tree.under("tests", ends=".cpp"):
        text = tree.text(name)
        for match in re.finditer(r"\b(?:TEST_CASE|SCENARIO)\(\s*\"((?:[^\"\\]|\\.)*)\"", text):
            title = match.group(1)
            if len(title.split()) < 3:
                yield f"{name}:{line_of(text, match.start())}: a title that is no sentence, \"{title}\""


# Elements that show what they are given; their parts of the house (Words, ButtonFace) say how, and whoever uses those inherits it.
SHOWING = re.compile(r"(?<![\w.])(?:[A-Z]\w*\.)?(Text|TextEdit|TextArea|TextInput|Label)\s*\{")
PLAIN = re.compile(r"\btextFormat:\s*Text(?:Edit)?\.PlainText\b")
MARKED_UP = re.compile(r"\b(?:Text|TextEdit)\.(?:RichText|StyledText|MarkdownText|AutoText)\b")


def element_at(text, opening):
    depth = 0
    for at in range(opening, len(text)):
        depth += {"{": 1, "}": -1}.get(text[at], 0)
        if depth == 0:
            return text[opening:at + 1]
    return text[opening:]


def texts_not_plain(tree):
    """What others wrote is shown as text: no element takes it for a markup."""
    for name in tree.under("qml", ends=".qml"):
        text = without_comments(tree.text(name))
        for match in SHOWING.finditer(text):
            # An input of one line knows no markup.
            if match.group(1) != "TextInput" and not PLAIN.search(element_at(text, match.end() - 1)):
                yield f"{name}:{line_of(text, match.start())}: {match.group(1)} without textFormat: Text.PlainText"
        for match in MARKED_UP.finditer(text):
            yield f"{name}:{line_of(text, match.start())}: {match.group(0)}"


RULES = {
    "every text of the screens is shown as plain text": texts_not_plain,
    "no test is turned off": tests_turned_off,
    "no test sleeps": sleeping_tests,
    "no host of a package registry stands anywhere": registry_hosts,
    "no path of somebody's machine stands anywhere": machine_paths,
    "switches over enums name every case": defaults_in_switches,
    "core asks the machine for nothing": singletons,
    "test titles are sentences": titles,
}
