# SPDX-License-Identifier: Apache-2.0
"""Writes the roster files of this folder. Run by hand when they must change; the tests read the files and need neither Python nor
LibreOffice. Names are invented.

  python3 write_fixtures.py python        python_*.csv, by Python's csv module, one for each dialect it knows
  python3 write_fixtures.py calc          calc_*.csv, by LibreOffice Calc (7.4 when they were last written) from a flat spreadsheet:
      soffice --headless --convert-to "csv:Text - txt - csv (StarCalc):SEPARATOR,34,CHARSET,1,,0,false,true,false" roster.fods
      with separators 44 (comma), 59 (semicolon), 9 (tab) and character sets 76 (UTF-8), 1 (Windows-1252), 65535 (UTF-16)
"""

import csv
import os
import subprocess
import sys
import tempfile
from xml.sax.saxutils import escape

HERE = os.path.dirname(os.path.abspath(__file__))
HEADER = ["No.", "Last name", "First name", "Birth year", "Head (mm)", "Note"]
ROWS = [
    ["07", "Echevarrieta", "Beñat", "2010", "562", "left handed"],
    ["00", "O'Brindle", "Cian", "2011", "548", 'says "fine"'],
    ["7", "Núñezalde", "Joaquín", "2009", "571", "two lines\nin one cell"],
    ["12", "de la Cantalejos", "Gaël", "2010", "", "comma, semicolon; and\ttab"],
    ["33", "Hirasaki", "Kaito", "2012", "650", "a large head"],
    ["", "Yellandros", "Zoran", "", "", ""],
]


class Semicolons(csv.excel):
    delimiter = ";"


class AllQuoted(csv.excel):
    quoting = csv.QUOTE_ALL


def write_with_python():
    dialects = {"excel": csv.excel, "excel_tab": csv.excel_tab, "unix": csv.unix_dialect, "semicolon": Semicolons, "all_quoted": AllQuoted}
    for name, dialect in dialects.items():
        with open(os.path.join(HERE, f"python_{name}.csv"), "w", newline="", encoding="utf-8") as out:
            csv.writer(out, dialect).writerows([HEADER] + ROWS)
    for name, encoding in {"utf8_mark": "utf-8-sig", "utf16": "utf-16", "utf16be": "utf-16-be", "windows1252": "cp1252"}.items():
        with open(os.path.join(HERE, f"python_{name}.csv"), "w", newline="", encoding=encoding) as out:
            csv.writer(out, csv.excel).writerows([HEADER] + ROWS)


def cell(text, column):
    number = column in (3, 4) and text.isdigit()
    if number:
        return f'<table:table-cell office:value-type="float" office:value="{text}"><text:p>{text}</text:p></table:table-cell>'
    lines = "".join(f"<text:p>{escape(line)}</text:p>" for line in text.replace("\t", " ").split("\n"))
    return f'<table:table-cell office:value-type="string">{lines}</table:table-cell>'


def write_with_calc():
    rows = "".join("<table:table-row>" + "".join(cell(c, i) for i, c in enumerate(row)) + "</table:table-row>" for row in [HEADER] + ROWS)
    flat = (
        '<?xml version="1.0" encoding="UTF-8"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
        'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" '
        'office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>'
        f'<table:table table:name="Roster">{rows}</table:table></office:spreadsheet></office:body></office:document>'
    )
    options = {"comma_utf8": (44, 76), "semicolon_utf8": (59, 76), "tab_utf8": (9, 76), "comma_windows1252": (44, 1), "tab_utf16": (9, 65535)}
    with tempfile.TemporaryDirectory() as folder:
        source = os.path.join(folder, "roster.fods")
        with open(source, "w", encoding="utf-8") as out:
            out.write(flat)
        for name, (separator, charset) in options.items():
            how = f"csv:Text - txt - csv (StarCalc):{separator},34,{charset},1,,0,false,true,false"
            profile = f"-env:UserInstallation=file://{folder}/profile"
            subprocess.run(["soffice", profile, "--headless", "--convert-to", how, "--outdir", folder, source], check=True, timeout=300)
            os.replace(os.path.join(folder, "roster.csv"), os.path.join(HERE, f"calc_{name}.csv"))


if __name__ == "__main__":
    {"python": write_with_python, "calc": write_with_calc}[sys.argv[1]]()
