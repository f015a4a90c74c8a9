# SPDX-License-Identifier: Apache-2.0
"""`snug size`, `snug guide`, `snug tag`: answers, keys, exit codes, refusals."""
import json
import unittest

from terminal import SHEETS, Terminal

ALDER, BRANT, CEDAR = (str(SHEETS / f"{name}.json") for name in ("alder-a1", "brant-b2", "cedar-c3"))
POINTS = {name: "ok" for name in ("certification", "warning-label", "shell", "hardware", "faceguard", "liner", "chin-strap")}
MARKS = ["brow", "ears", "nape", "chin", "straps", "jaw", "crown", "sides", "hold"]


def sheet_of(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file)


SNUG_STEPS = [{"mark": "brow", "found": "snug", "mm": 25}] + [{"mark": m, "found": "snug"} for m in MARKS[1:]]


class Size(Terminal):
    def test_a_size_comes_with_its_odds_and_every_documented_key(self):
        answer = self.ask("size", "--sheet", ALDER, "--tape", "575mm,577mm")
        self.assertTrue({"size", "circumference_mm", "uncertainty_mm", "odds", "bands", "between", "retake", "why"} <= set(answer))
        self.assertAlmostEqual(answer["circumference_mm"], 576.0, places=3)
        self.assertAlmostEqual(answer["uncertainty_mm"], 3 / 2 ** 0.5, places=2)
        self.assertAlmostEqual(sum(answer["odds"].values()), 1.0, places=6)
        self.assertIn("none", answer["odds"])
        self.assertIs(answer["retake"], False)
        sizes = [b["name"] for b in sheet_of(ALDER)["sizes"]]
        self.assertEqual(sorted(answer["bands"]), sorted(sizes))
        for low, high in answer["bands"].values():
            self.assertLess(low, high)
        self.assertEqual(answer["size"], max((s for s in answer["odds"]), key=lambda s: answer["odds"][s]))

    def test_a_sheet_is_found_by_its_id_and_readings_may_be_in_inches(self):
        by_id = self.ask("size", "--sheet", "alder-a1", "--tape", "22.5in")
        by_file = self.ask("size", "--sheet", ALDER, "--tape", "571.5mm")
        self.assertEqual(by_id, by_file)

    def test_readings_apart_ask_for_another(self):
        self.assertIs(self.ask("size", "--sheet", ALDER, "--tape", "575mm,581mm")["retake"], True)
        self.assertAlmostEqual(self.ask("size", "--sheet", ALDER, "--tape", "575mm,581mm,576mm")["circumference_mm"], 576.0)

    def test_text_for_people_is_not_json(self):
        answer = self.snug("size", "--sheet", ALDER, "--tape", "575mm")
        self.assertEqual((answer.code, answer.err), (0, ""))
        self.assertFalse(answer.out.startswith("{"))
        self.assertIn("maker's instructions", answer.out)

    def test_bare_numbers_and_other_slips_are_refused_by_the_option(self):
        for tape in ("575", "575mm,", "575kg", "", "575mm,x", "57,5cm", "90mm", "9m", "1e3mm", "nan mm", "575mm;577mm"):
            with self.subTest(tape=tape):
                self.refuse("size", "--sheet", ALDER, "--tape", tape, names="--tape")

    def test_an_unknown_sheet_is_refused(self):
        self.refuse("size", "--sheet", "elm-e9", "--tape", "575mm", names="--sheet")
        self.refuse("size", "--sheet", "../alder-a1.json", "--tape", "575mm", names="alder-a1.json")
        self.refuse("size", "--sheet", str(self.folder), "--tape", "575mm", names=str(self.folder))

    def test_a_sheet_with_a_negative_size_is_refused_with_the_path_inside_it(self):
        sheet = sheet_of(ALDER)
        band = sheet["sizes"][1]
        key = next(k for k in band if k.startswith("low"))
        band[key] = -band[key]
        bad = self.write("bad.json", json.dumps(sheet))
        self.refuse("size", "--sheet", bad, "--tape", "575mm", names=["bad.json", f"sizes/1/{key}"])

    def test_a_sheet_that_is_no_sheet_is_refused(self):
        for name, content in {"empty.json": "", "list.json": "[]", "cut.json": '{"id":"x"', "deep.json": "[" * 100000,
                              "binary.json": bytes(range(256)), "twice.json": '{"id":"a","id":"b"}'}.items():
            with self.subTest(name=name):
                self.refuse("size", "--sheet", self.write(name, content), "--tape", "575mm", names=name)


class Guide(Terminal):
    def answers(self, **changes):
        whole = {"today": "2026-10-14", "season_end": "2026-11-30", "certified_until": "2027-02-01", "hair_wet": True,
                 "points": dict(POINTS), "kind": "first", "steps": list(SNUG_STEPS)}
        whole.update(changes)
        return self.write("answers.json", json.dumps({k: v for k, v in whole.items() if v is not None}))

    def guide(self, sheet=ALDER, code=0, extra=(), **changes):
        return self.ask("guide", "--sheet", sheet, "--answers", self.answers(**changes), *extra, code=code)

    def test_nine_snug_marks_and_seven_sound_points_fit_on_every_sheet(self):
        for sheet in (ALDER, BRANT, CEDAR):
            answer = self.guide(sheet)
            self.assertEqual(answer["verdict"], "fits", answer)
            self.assertTrue({"verdict", "reasons", "open", "next", "advice", "strip"} <= set(answer))
            self.assertEqual((answer["reasons"], answer["open"], answer["advice"]), ([], [], []))
            self.assertEqual(answer["strip"], ["snug"] * 9)

    def test_a_high_brow_is_to_adjust_and_the_advice_names_what_it_reopens(self):
        steps = [{"mark": "brow", "found": "over", "mm": 38}] + SNUG_STEPS[1:]
        answer = self.guide(steps=steps, extra=["--expect-fits"], code=1)
        self.assertEqual(answer["verdict"], "adjust")
        self.assertEqual(answer["strip"][0], "over")
        self.assertTrue(answer["advice"])
        for advice in answer["advice"]:
            self.assertTrue({"do", "reopens"} <= set(advice), advice)
            self.assertTrue(set(advice["reopens"]) <= set(MARKS))

    def test_a_change_reopens_marks_that_then_stand_open(self):
        steps = [{"mark": "brow", "found": "over", "mm": 38}, {"did": "release", "port": "crown", "pumps": 1}, {"mark": "brow", "found": "snug", "mm": 25}]
        answer = self.guide(steps=SNUG_STEPS + steps)
        self.assertEqual(answer["verdict"], "unfinished")
        self.assertEqual(answer["open"], ["ears", "nape", "chin", "straps", "jaw", "crown", "hold"])
        self.assertEqual(answer["next"], "ears")

    def test_a_fault_of_the_unit_is_do_not_wear_whatever_else_is_open(self):
        points = dict(POINTS, faceguard={"state": "fault", "what": "bare metal"})
        answer = self.guide(points=points, steps=[{"mark": "brow", "found": "low"}])
        self.assertEqual(answer["verdict"], "do-not-wear")

    def test_a_lapsed_label_is_do_not_wear_and_due_by_never_passes_it(self):
        self.assertEqual(self.guide(certified_until="2026-10-13")["verdict"], "do-not-wear")
        self.assertEqual(self.guide(certified_until="2026-10-14")["verdict"], "fits")
        self.assertEqual(self.guide(certified_until="2026-10-15")["due_by"], "2026-10-15")

    def test_dry_hair_matters_for_a_fit_and_not_for_a_look(self):
        dry = self.guide(hair_wet=False)
        self.assertEqual((dry["verdict"], dry["reasons"]), ("adjust", ["dry-hair"]))
        self.assertEqual(self.guide(hair_wet=False, kind="look")["verdict"], "fits")

    def test_unwell_stops_the_check(self):
        answer = self.guide(unwell=True)
        self.assertEqual((answer["verdict"], answer["next"]), ("unfinished", "stop"))

    def test_what_the_athlete_says_counts_as_later_than_every_step(self):
        self.assertNotEqual(self.guide(says=[{"where": "jaw-left", "feels": "tight"}])["verdict"], "fits")

    def test_a_port_that_the_sheet_lacks_is_refused(self):
        path = self.answers(steps=[{"did": "add", "port": "crown", "pumps": 1}])
        self.refuse("guide", "--sheet", CEDAR, "--answers", path, names="answers.json")

    def test_bad_answers_are_refused_with_their_path(self):
        for changes, place in (({"today": "2026-02-30"}, "today"), ({"steps": [{"mark": "chest", "found": "snug"}]}, "steps/0"),
                               ({"steps": [{"mark": "brow", "found": "fine"}]}, "steps/0"), ({"points": {"shell": "maybe"}}, "shell"),
                               ({"kind": "third"}, "kind"), ({"surprise": 1}, "surprise"), ({"today": None}, "today"),
                               ({"steps": [{"did": "add", "port": "crown", "pumps": -1}]}, "steps/0")):
            with self.subTest(changes=changes):
                self.refuse("guide", "--sheet", ALDER, "--answers", self.answers(**changes), names=["answers.json", place])
        self.refuse("guide", "--sheet", ALDER, "--answers", self.path("none.json"), names="none.json")


class Tag(Terminal):
    # Check digits: GS1 General Specifications, weights 3 and 1 from the right.
    def test_gs1_text_is_taken_apart(self):
        for text in (r"010890400021003721SN-07\x1d11240115", "]d2010890400021003721SN-07\x1d11240115"):
            answer = self.ask("tag", text, "--at", "2026-10-14T15:00:00-05:00")
            self.assertTrue({"form", "ai", "serial", "made", "check_digit_ok"} <= set(answer))
            self.assertEqual((answer["form"], answer["serial"], answer["made"], answer["check_digit_ok"]), ("gs1", "SN-07", "2024-01-15", True))
            self.assertEqual(answer["ai"], {"01": "08904000210037", "11": "240115", "21": "SN-07"})

    def test_a_day_of_00_leaves_only_the_month(self):
        self.assertEqual(self.ask("tag", r"010890400021003711240100" + "21A1", "--at", "2026-10-14T15:00:00Z")["made"], "2024-01")

    def test_a_wrong_check_digit_exits_1_and_says_so(self):
        self.assertIs(self.ask("tag", "010890400021003821SN-07", code=1)["check_digit_ok"], False)

    def test_a_plain_serial_is_kept_as_read_even_when_it_is_the_name_of_a_command(self):
        for text in ("HC-0042", "check", "a b", "x" * 64):
            answer = self.ask("tag", text)
            self.assertEqual((answer["form"], answer["serial"]), ("plain", text))

    def test_a_web_address_of_gs1_is_read(self):
        answer = self.ask("tag", "https://example.org/01/08904000210037/21/SN-07")
        self.assertEqual((answer["form"], answer["serial"]), ("digital-link", "SN-07"))

    def test_what_is_no_tag_is_refused_on_one_line(self):
        for text in ("", "x" * 65, "tab\there", "line\nbreak", "bell\a", "del\x7f", "]d221SN", "]d2"):
            with self.subTest(text=text):
                self.refuse("tag", text, names="TEXT")


class Words(Terminal):
    def test_help_and_version_go_to_standard_output(self):
        for arguments in (["--help"], ["size", "--help"], ["book", "verify", "--help"], ["--version"]):
            answer = self.snug(*arguments)
            self.assertEqual((answer.code, answer.err), (0, ""), arguments)
            self.assertIn("snug", answer.out)
        self.assertIn("--tape", self.snug("size", "--help").out)

    def test_a_slip_on_the_command_line_is_one_line_and_exit_2(self):
        for arguments in ([], ["fit"], ["size"], ["size", "--sheet"], ["size", "--sheet", "a", "--tape", "575mm", "--color"], ["book"],
                          ["book", "burn"], ["due", "--book", "x"], ["--json"], ["size\nline"], ["demo", "--out", "x", "--athletes", "many"]):
            with self.subTest(arguments=arguments):
                answer = self.snug(*arguments)
                self.assertEqual((answer.code, answer.out, answer.err.count("\n")), (2, "", 1), answer.err)

    def test_an_answer_that_cannot_be_written_is_an_error(self):
        with open("/dev/full", "wb") as full:
            answer = self.snug("size", "--sheet", ALDER, "--tape", "575mm", stdout=full)
        self.assertEqual((answer.code, answer.err.count("\n")), (2, 1))


if __name__ == "__main__":
    unittest.main()
