# SPDX-License-Identifier: Apache-2.0
# Prints element strings as bar codes with zint and reads the pictures back with zxing-cpp. One case a line: zint's number of the
# symbology, and the data in zint's square brackets. Answers with the text as a scanner would type it, character 29 as \x1d.
import subprocess
import sys
import tempfile

import zxingcpp
from PIL import Image

PREFIX = {"71": "]d2", "58": "]Q3", "16": "]C1"}  # Data Matrix, QR, Code 128, each with GS1 data (General Specifications)

for number, line in enumerate(sys.stdin):
    symbology, data = line.rstrip("\n").split(" ", 1)
    with tempfile.TemporaryDirectory() as folder:
        picture = f"{folder}/{number}.png"
        subprocess.run(
            ["zint", "--gs1", "--werror", "--quietzones", "--scale", "4", "-b", symbology, "-o", picture, "-d", data],
            check=True, stdout=subprocess.DEVNULL)
        read = zxingcpp.read_barcodes(Image.open(picture).convert("L"))
    assert len(read) == 1, f"{data}: {len(read)} codes seen"
    assert read[0].content_type == zxingcpp.ContentType.GS1, f"{data}: not seen as GS1"
    text = bytes(read[0].bytes).decode("ascii")
    print(PREFIX[symbology] + text.replace("\x1d", "\\x1d"))
