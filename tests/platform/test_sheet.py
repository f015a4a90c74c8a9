# SPDX-License-Identifier: Apache-2.0
"""`snug sheet`: every fault of a sheet's file at once, and what is different between two."""
import json
import unittest

from terminal import SHEETS, Terminal

ALDER, BRANT = (str(SHEETS / f"{name}.json") for name in ("alder-a1", "brant-b2"))


def alder(**changes):
    with open(ALDER, encoding="utf-8") as file:
        sheet = json.load(file)
    sheet.update(changes)
    return sheet


class Check(Terminal):
    def test_the_demo_s_sheets_have_no_fault(self):
        for name in ("alder-a1", "brant-b2", "cedar-c3"):
            with self.subTest(name=name):
                answer = self.ask("sheet", "check", str(SHEETS / f"{name}.json"))
                self.assertEqual(answer, {"ok": True, "id": name, "faults": []})

    def test_every_fault_is_named_at_once_by_its_path(self):
        sheet = alder(strap_points=5, certification_months=61, colour="red")
        sheet["sizes"][1]["low_um"] = -1
        sheet["air"][0]["start_pa"] = 300000
        bad = self.write("bad.json", json.dumps(sheet))
        answer = self.ask("sheet", "check", bad, code=1)
        self.assertIs(answer["ok"], False)
        self.assertEqual(sorted(fault["path"] for fault in answer["faults"]),
                         ["/air/0/start_pa", "/certification_months", "/colour", "/sizes/1/low_um", "/strap_points"])
        for fault in answer["faults"]:
            self.assertIn(f"bad.json#{fault['path']}", fault["why"])
        text = self.snug("sheet", "check", bad)
        self.assertEqual((text.code, text.err), (1, ""))
        self.assertEqual(len(text.out.strip().splitlines()), 5)

    def test_what_is_no_sheet_at_all_is_bad_input(self):
        for name, content in {"empty.json": "", "cut.json": '{"format": 1', "list.json": "[]", "later.json": '{"format": 2}',
                              "large.json": " " * 60000, "binary.json": bytes(range(256))}.items():
            with self.subTest(name=name):
                self.refuse("sheet", "check", self.write(name, content), names=name)
        self.refuse("sheet", "check", str(self.folder), names=str(self.folder))


class Compare(Terminal):
    def test_a_sheet_is_the_same_as_itself_however_it_is_laid_out(self):
        other = self.write("other.json", json.dumps(alder()))
        self.assertEqual(self.ask("sheet", "compare", ALDER, other), {"same": True, "differences": []})
        self.assertEqual(self.ask("sheet", "compare", "alder-a1", ALDER)["same"], True)

    def test_a_changed_band_and_interval_are_two_named_differences(self):
        sheet = alder(certification_months=12)
        band = sheet["sizes"][1]
        before = dict(band)
        band["low_um"] -= 2000
        other = self.write("other.json", json.dumps(sheet))
        answer = self.ask("sheet", "compare", ALDER, other, code=1)
        self.assertEqual(answer["differences"], [
            {"field": "size-low", "item": before["name"], "before": before["low_um"], "after": before["low_um"] - 2000, "unit": "um"},
            {"field": "certification-months", "item": "", "before": alder()["certification_months"], "after": 12, "unit": "months"}])
        text = self.snug("sheet", "compare", ALDER, other)
        self.assertEqual(text.code, 1)
        self.assertIn(f"size-low {before['name']}: {before['low_um'] // 1000} mm -> {before['low_um'] // 1000 - 2} mm", text.out)

    def test_a_sheet_that_is_not_there_is_refused(self):
        self.refuse("sheet", "compare", ALDER, "elm-e9", names="elm-e9")


if __name__ == "__main__":
    unittest.main()
