# SPDX-License-Identifier: Apache-2.0
"""The catalogues: Spanish whole and finished, English whole in its plural forms, every place for a value kept, and words about equipment only."""
import re
import xml.etree.ElementTree as ElementTree

ENGLISH = "qml/i18n/snugline_en.ts"
SPANISH = "qml/i18n/snugline_es.ts"
FORMS = 2  # of both languages, as Qt counts plural forms
PLACES = re.compile(r"%(?:L?\d+|n)")
# Words that say more about a fit than anybody can see, as in wording_rules, in Spanish.
FORBIDDEN = re.compile(r"\b(segur[oa]s?|seguridad|a salvo|proteg\w*|protej\w*|protecci[oó]n|aprobad[oa]s?|habilitad[oa]s?)\b", re.IGNORECASE)


def messages(tree, name):
    root = ElementTree.fromstring(tree.text(name).encode("utf-8"))
    for context in root.findall("context"):
        for message in context.findall("message"):
            yield context.findtext("name") or "", message


def said(message):
    translation = message.find("translation")
    if message.get("numerus"):
        return [form.text or "" for form in translation.findall("numerusform")]
    return [translation.text or ""]


def unfinished(tree):
    for name in (ENGLISH, SPANISH):
        for context, message in messages(tree, name):
            source, forms = message.findtext("source"), said(message)
            place = f"{name}: {context}: \"{source[:60]}\""
            kind = message.find("translation").get("type")
            if kind:
                yield f"{place}: {kind}"
            elif not all(form for form in forms):
                yield f"{place}: empty"
            if message.get("numerus") and len(forms) != FORMS:
                yield f"{place}: {len(forms)} plural forms, {FORMS} wanted"


def places(tree):
    for name in (ENGLISH, SPANISH):
        for context, message in messages(tree, name):
            source = message.findtext("source")
            wanted = set(PLACES.findall(source))
            for form in said(message):
                if form and set(PLACES.findall(form)) != wanted:
                    yield f"{name}: {context}: \"{source[:60]}\": the places of values differ in \"{form[:60]}\""


def words(tree):
    for context, message in messages(tree, SPANISH):
        for form in said(message):
            match = FORBIDDEN.search(form)
            if match:
                yield f"{SPANISH}: {context}: \"{match.group(0)}\" in \"{form[:60]}\""


RULES = {
    "no entry of a catalogue is unfinished": unfinished,
    "catalogues keep the places of values": places,
    "spanish words are about equipment only": words,
}
