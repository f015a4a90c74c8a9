# SPDX-License-Identifier: Apache-2.0
"""The main flows of the three doors, heard and pressed by name: flows.py FLOW FOLDER-OF-PROGRAMS. After each, what is read out on the board is
what a fresh process says of the same Book."""
import re
import sys

from heard import App, Missing, begin

CODE = "482915"  # invented
# What a mark is answered with when it is snug, mark after mark.
SNUG = ["On the mark", "On the canals", "Covered", "Centred, even", "Even, routed", "Touch both sides", "Even contact", "Even contact", "Holds|Stays"]
LANE = re.compile(r"^(.+), (\d+)\. (?:open|closed|folded)")
ROW = re.compile(r"^(\d+)\. \S+, ")


def expect(is_so, what):
    if not is_so:
        raise Missing(what)


def somebody(rows, reasons):
    """The first on the board of whom just these reasons stand, with a helmet and a number that nobody else wears."""
    numbers = [row["jersey"] for row in rows]
    for row in rows:
        if row["helmet"] and numbers.count(row["jersey"]) == 1 and row["reasons"] == reasons:
            return row
    raise Missing(f"nobody on the board for {reasons} alone")


def row_of(rows, athlete):
    return next(row for row in rows if row["athlete_id"] == athlete["athlete_id"])


def board_is_true(app):
    """On the Line: the lanes with their counts, and the rows as far as they show, are those of a fresh process."""
    app.see("^Jersey number|^Number")
    rows = app.due()
    worst = sum(1 for row in rows if row["lane"] == rows[0]["lane"])

    def untruth():
        texts = app.texts()
        counts = [int(LANE.match(text).group(2)) for text in texts if LANE.match(text)]
        heard = [ROW.match(text).group(1) for text in texts if ROW.match(text)]
        told = iter(row["jersey"] for row in rows)
        if not counts or counts[0] != worst:
            return f"the worst lane is read out as {counts[:1]}, a fresh process counts {worst}"
        if not heard or not all(number in told for number in heard):
            return f"read out are {heard}, a fresh process says {[row['jersey'] for row in rows]}"
        return None
    try:
        app.until(lambda: untruth() is None, "the board")
    except Missing:
        raise Missing(untruth()) from None
    return rows


def to_line(app):
    app.press("^Line")
    app.see("^Jersey number|^Number")


def find_number(app, row):
    app.press("^Jersey number|^Number")
    app.digits(row["jersey"])


def seven_points_and_verdict(app):
    app.press("^All seven sound")
    if app.maybe("^Say who signs"):
        app.press("^MT")
    app.see("^Fits$")
    app.press("^Next")


def first_fit(app):
    row = somebody(app.due(), ["never-fitted"])
    to_line(app)
    find_number(app, row)
    app.press(f"^First fit, {row['jersey']} ")
    app.press("^Wet")
    app.press("^Set as listed|^As listed|^No gauge|^All set")
    for words in SNUG:
        app.press(f"^({words})")
    seven_points_and_verdict(app)
    now = row_of(board_is_true(app), row)
    expect("never-fitted" not in now["reasons"], f"a fresh process still says {now}")
    expect(not app.shows(f"^First fit, {row['jersey']} "), "a first fit is still asked for")


def recheck(app):
    row = somebody(app.due(), ["weekly-look"])
    to_line(app)
    find_number(app, row)
    app.press(f"^(Look|Recheck), {row['jersey']} ")
    for _ in range(3):
        app.press("^All snug")
    seven_points_and_verdict(app)
    now = row_of(board_is_true(app), row)
    expect(now["reasons"] == [], f"a fresh process still says {now}")
    expect(not app.shows(rf"^{row['jersey']}\. .*since the last"), "the row is still read out")


def set_code(app):
    app.press("^MT")
    for _ in range(2):
        app.digits(CODE)
        app.press("^Go on|^Set this code")
    app.until(lambda: app.shows("^MT") and not app.shows("^MT.*no code yet"), "the code that was set")


def report(app):
    row = somebody(app.due(), [])
    app.press("^Say")
    set_code(app)
    app.press("^Back")
    app.press("^Say")
    app.digits(row["jersey"])
    app.maybe("^That is me")
    before = app.pressed
    app.press("^Left cheek")
    app.press("^(Hurts|Tight)")
    expect(app.pressed - before == 2, "a report is two touches after the number")
    app.see("Left cheek|left cheek")
    now = row_of(app.due(), row)
    expect(now["reasons"] and now["lane"] != row["lane"], f"a fresh process has heard of nothing: {now}")
    # From Say staff come back by their code alone, and the board has it.
    app.press("^(Done|Back to the start)")
    app.press("^Staff")
    app.digits(CODE)
    app.press("^Go on|^Open")
    to_line(app)
    board_is_true(app)
    find_number(app, row)
    app.see(rf"^{row['jersey']}\. .*(left|Left)")


def arrival(app):
    app.press("^Dock")
    app.type("HEARD-1")
    app.see("^HEARD-1")
    for words in ("Alder A1", "M$", "2026", "All seven sound", "In service"):
        app.press(f"^{words}")
    app.see("1 in service")
    app.type("HEARD-2")
    app.see("^HEARD-2")
    app.press("^As HEARD-1")
    app.press("^All seven sound, in service")
    app.see("2 in service")
    known = somebody(app.due(), [])
    app.type(known["helmet"])
    app.see(f"^{known['helmet']}")
    app.press("^All seven sound")
    app.maybe("^In service")
    app.see("3 in service")
    app.press("^Back")
    to_line(app)
    board_is_true(app)


def swap(app):
    row = next(row for row in app.due() if "held" in row["reasons"])
    to_line(app)
    find_number(app, row)
    app.press(rf"^{row['jersey']}\. ")
    app.press("^Swap helmet")
    app.maybe("^In our hands")
    spare = app.find(r"good to")
    serial = re.search(r"[A-Z]\w*-?\w*-?\d{4,}", spare.name).group(0)
    app.press(re.escape(serial))
    app.until(lambda: row_of(app.due(), row)["helmet"] == serial, f"{serial} on number {row['jersey']}")
    app.press("^Leave the check open")
    while not app.shows("^Jersey number$|^Start the line"):
        app.press("^Back")
    board_is_true(app)


def line_check(app):
    to_line(app)
    app.press("^Weather")
    for _ in range(9):
        app.press("^5 degrees colder")
    app.press("^Close$")
    board = board_is_true(app)
    cold = [row["jersey"] for row in board if row["reasons"] == ["air-changed"]]
    expect(len(cold) > 8, f"the cold concerns {cold} only")
    app.press("^Line check")
    while app.maybe(r"^(All \d+|These \w+)\b.*(seen|checked)"):
        pass
    app.maybe("^Back to the board|^Back")
    now = {row["jersey"]: row["reasons"] for row in board_is_true(app)}
    expect(not any("air-changed" in now[jersey] for jersey in cold), f"after the line check: {now}")


FLOWS = {flow.__name__: flow for flow in (first_fit, recheck, report, arrival, swap, line_check)}


def run():
    app = App(sys.argv[2])
    try:
        FLOWS[sys.argv[1]](app)
    except Missing as missing:
        print(f"{sys.argv[1]}: {missing}", file=sys.stderr)
        with open(app.log, encoding="utf-8", errors="replace") as log:
            sys.stderr.write(log.read()[-4000:])
        return 1
    finally:
        app.stop()
    print(f"{sys.argv[1]}: {app.pressed} things pressed")
    return 0


if __name__ == "__main__":
    sys.exit(begin(run))
