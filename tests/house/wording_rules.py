# SPDX-License-Identifier: Apache-2.0
"""What people read: translated, never a word that says more than equipment can, no name of anything real."""
import hashlib
import re
from pathlib import Path

from source_tree import Literal, line_of, literals

# Calls whose text is translated, or is for developers only and never shown.
TRANSLATED = {"qsTr", "qsTranslate", "qsTrId", "tr", "translate", "QT_TR_NOOP", "QT_TRANSLATE_NOOP", "QT_TR_N_NOOP", "QT_TRANSLATE_N_NOOP"}
FOR_DEVELOPERS = {"qWarning", "qDebug", "qCritical", "qFatal", "qInfo", "console.log", "console.warn", "console.error", "Q_ASSERT_X",
                  "static_assert", "assert", "QML_UNCREATABLE", "Q_CLASSINFO", "qCWarning", "fail", "failOnWarning"}
SHOWN = re.compile(
    r"^[ \t]*(?:readonly[ \t]+)?(?:property[ \t]+string[ \t]+)?"
    r"(text|title|label|placeholderText|placeholder|hint|caption|heading|help|Accessible\.name|Accessible\.description)[ \t]*:([^\n]*)",
    re.MULTILINE)
WORDS = re.compile(r"[A-Za-zÀ-ÿ]{2,}[,.;:]? +[A-Za-zÀ-ÿ]{2,}")
LETTERS = re.compile(r"[A-Za-zÀ-ÿ]{2,}")

# Words that say more about a fit than anybody can see.
FORBIDDEN = re.compile(r"\b(safe|safely|safety|cleared|passed|approved|protected|protects|protection)\b", re.IGNORECASE)


def is_translated(literal: Literal):
    # tr may hang on a class: Words::tr, QCoreApplication::translate.
    return any(re.split(r"[.:]+", call)[-1] in TRANSLATED or call in FOR_DEVELOPERS or call.split("::")[-1] in FOR_DEVELOPERS
               for call in literal.calls)


def text_in_qml(tree):
    for name in tree.under("qml", "platform", "demo", ends=".qml"):
        text = tree.text(name)
        for literal in literals(text):
            if WORDS.search(literal.value) and not is_translated(literal):
                yield f"{name}:{literal.line}: text outside translation, \"{literal.value[:60]}\""
        for match in SHOWN.finditer(text):
            line = line_of(text, match.start(1))
            for literal in literals(match.group(2)):
                is_compared = literal.before.endswith("==")
                if LETTERS.search(literal.value) and not is_translated(literal) and not is_compared and not WORDS.search(literal.value):
                    yield f"{name}:{line}: text outside translation, {match.group(1)}: \"{literal.value[:60]}\""


# A pattern of QLocale is no text; and what is written into the Book in plain words stands as it is, marked so on its line or above its function.
DATE_PATTERN = re.compile(r"[dMyhHmszAPapt :.,/'-]+")
RECORDED = re.compile(r"//.*\brecorded\b", re.IGNORECASE)


def is_recorded(lines, number):
    """The word stands on the line, or in a remark between here and the end of the function before."""
    if RECORDED.search(lines[number - 1]):
        return True
    for line in reversed(lines[:number - 1]):
        if line.startswith("}"):
            return False
        if RECORDED.search(line):
            return True
    return False


def text_in_models(tree):
    for name in tree.under("qml", "platform/app", ends=(".cpp", ".h")):
        lines = tree.text(name).split("\n")
        for literal in literals(tree.text(name)):
            is_text = WORDS.search(literal.value) and not DATE_PATTERN.fullmatch(literal.value)
            if is_text and not is_translated(literal) and not is_recorded(lines, literal.line):
                yield f"{name}:{literal.line}: text outside translation, \"{literal.value[:60]}\""


def shown_strings(tree):
    for name in tree.under("qml", "platform", ends=(".qml", ".cpp", ".h")):
        for literal in literals(tree.text(name)):
            yield name, literal.line, literal.value
    for name in tree.under("core", ends=(".cpp", ".h")):
        for literal in literals(tree.text(name)):
            yield name, literal.line, literal.value
    for name in tree.ending(".ts", "README.md", "demo/run"):
        for number, line in enumerate(tree.text(name).split("\n"), 1):
            yield name, number, line


def forbidden_words(tree):
    for name, line, value in shown_strings(tree):
        for match in FORBIDDEN.finditer(value):
            yield f"{name}:{line}: the word \"{match.group(0)}\" says more than equipment can"


# Names of real makers, teams and shops, as SHA-256 of the lower-case name, so that no such name stands in this project.
# Add one with: python3 tests/house/house.py --hash 'name'
NAMES_FILE = Path(__file__).with_name("real_names.sha256")


def digest(words):
    return hashlib.sha256(words.lower().encode()).hexdigest()


def real_names(tree, hashes=None):
    if hashes is None:
        hashes = {line.strip() for line in NAMES_FILE.read_text().split("\n") if re.fullmatch(r"[0-9a-f]{64}", line.strip())}
    seen = {}
    for name in tree.texts():
        text = tree.text(name)
        words = list(re.finditer(r"[A-Za-z0-9]+", text))
        for i, word in enumerate(words):
            pair = word.group(0) + " " + words[i + 1].group(0) if i + 1 < len(words) else ""
            for phrase in (word.group(0), pair):
                if phrase and seen.setdefault(phrase, digest(phrase) in hashes):
                    yield f"{name}:{line_of(text, word.start())}: a name from the list of real names stands here"


RULES = {
    "no text of the screens stands outside translation": text_in_qml,
    "no text of the models stands outside translation": text_in_models,
    "no word says more than equipment can": forbidden_words,
    "no name of a real maker or team stands anywhere": real_names,
}
