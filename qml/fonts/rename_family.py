#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Gives the bundled cuts a family name of their own, so that an installed Mono cut that also calls itself B612 is never mixed in.

Usage: rename_family.py SOURCE_FOLDER   (the folder of B612-Regular.otf and B612-Bold.otf as published, SIL OFL 1.1, no reserved font name)
Writes both files beside this script. Only names change; outlines, metrics and the licence entries stay.
"""
import pathlib
import sys

from fontTools.ttLib import TTFont

FAMILY = "B612 Snugline"

for style in ("Regular", "Bold"):
    font = TTFont(pathlib.Path(sys.argv[1]) / f"B612-{style}.otf")
    names = {1: FAMILY, 3: f"{FAMILY} {style}", 4: f"{FAMILY} {style}", 6: f"B612Snugline-{style}"}
    for record in font["name"].names:
        if record.nameID in names:
            record.string = names[record.nameID]
    for number in (16, 17, 21, 22):
        font["name"].removeNames(nameID=number)
    cff = font["CFF "].cff
    cff.fontNames = [f"B612Snugline-{style}"]
    cff.topDictIndex[0].FamilyName = FAMILY
    cff.topDictIndex[0].FullName = f"{FAMILY} {style}"
    font.save(pathlib.Path(__file__).parent / f"B612-{style}.otf")
