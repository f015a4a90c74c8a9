# SPDX-License-Identifier: Apache-2.0
"""`snug air`, `snug leak`, `snug gauge`: answers, keys, exit codes, refusals."""
import random
import unittest
from datetime import datetime, timedelta, timezone

from terminal import SHEETS, Terminal

ALDER, CEDAR = str(SHEETS / "alder-a1.json"), str(SHEETS / "cedar-c3.json")
HEAD = "time,kpa,celsius,elevation_m"
START = datetime(2026, 9, 1, 15, 0, tzinfo=timezone(timedelta(hours=-5)))


def at(days):
    return (START + timedelta(days=days)).isoformat()


def losing(per_week, weeks=8, start=20.0):
    return [f"{at(7 * i)},{start + per_week * i:.3f},20,0" for i in range(weeks)]


class Air(Terminal):
    # Wells/Exponent report 2015, p. 113: 12.5 psi at 71 F is 11.32 psi at 48 F.
    def test_cold_takes_gauge_pressure_and_every_documented_key_is_there(self):
        answer = self.ask("air", "--set", "12.5psi", "--at", "71F", "--now", "48F")
        self.assertTrue({"now_kpa", "now_psi", "change_kpa", "ambient_set_kpa", "ambient_now_kpa", "volume_ratio", "why"} <= set(answer))
        self.assertAlmostEqual(answer["now_psi"], 11.321289, delta=0.0005)
        self.assertAlmostEqual(answer["now_kpa"] - answer["change_kpa"], 86.184, places=3)
        self.assertEqual((answer["ambient_set_kpa"], answer["ambient_now_kpa"]), (101.325, 101.325))
        self.assertAlmostEqual(answer["volume_ratio"], (48 + 459.67) / (71 + 459.67), places=4)
        self.assertIn("truth lies between", answer["why"])

    def test_the_mountain_adds_what_the_air_around_lacks(self):
        answer = self.ask("air", "--set", "20kPa", "--at", "22C", "--now", "22C", "--set-elevation", "0m", "--now-elevation", "1609m")
        self.assertAlmostEqual(answer["ambient_now_kpa"], 83.4353, delta=0.001)
        self.assertAlmostEqual(answer["change_kpa"], 101.325 - 83.4353, delta=0.001)
        self.assertEqual(answer["by_temperature_kpa"], 0)
        by_barometer = self.ask("air", "--set", "20kPa", "--at", "22C", "--now", "22C", "--now-ambient", "83.435kPa")
        self.assertAlmostEqual(by_barometer["now_kpa"], answer["now_kpa"], delta=0.001)

    def test_below_zero_is_said_in_words(self):
        answer = self.ask("air", "--set", "1psi", "--at", "70F", "--now", "30F")
        self.assertAlmostEqual(answer["now_psi"], -0.185, delta=0.0005)
        self.assertIs(answer["below_zero"], True)
        text = self.snug("air", "--set", "1psi", "--at", "70F", "--now", "30F").out
        self.assertIn("no air left to hold it", text)

    def test_text_for_people_has_both_units_the_bounds_and_the_cautions(self):
        text = self.snug("air", "--set", "20kPa", "--at", "22C", "--now", "-5C").out
        for part in ("between 8.90 kPa (1.29 psi) and 20.00 kPa (2.90 psi)", "22 °C (72 °F)", "121.33 x 268.15 / 295.15",
                     "The truth lies between", "room temperature", "maker's instructions"):
            self.assertIn(part, text)

    def test_what_cannot_be_is_refused_by_its_option(self):
        good = {"--set": "20kPa", "--at": "22C", "--now": "2C"}
        for option, value in (("--set", "20"), ("--set", "20C"), ("--set", "-90kPa"), ("--set", "700kPa"), ("--set", "20psia"), ("--at", "22"),
                              ("--at", "61C"), ("--at", "142F"), ("--now", "-61C"), ("--now", "-77F"), ("--now", "cold"), ("--now", ""),
                              ("--now-elevation", "9001m"), ("--now-elevation", "-431m"), ("--set-elevation", "100"), ("--set-elevation", "1e3m"),
                              ("--now-ambient", "20kPa"), ("--now-ambient", "200kPa"), ("--set-ambient", "98kPag"), ("--set-ambient", "14psig")):
            with self.subTest(option=option, value=value):
                words = [w for pair in {**good, option: value}.items() for w in pair]
                self.refuse("air", *words, names=option)
        self.refuse("air", "--set", "20kPa", "--at", "22C", "--now", "2C", "--now-elevation", "0m", "--now-ambient", "98kPa", names="--now-")
        for ends in (("-60C", "60C", "-430m", "9000m"), ("60C", "-60C", "9000m", "-430m")):
            self.ask("air", "--set", "20kPa", "--at", ends[0], "--now", ends[1], "--set-elevation", ends[2], "--now-elevation", ends[3])


class Leak(Terminal):
    def leak(self, lines, *extra, head=HEAD, name="readings.csv"):
        content = "\n".join([head, *lines]) + "\n"
        return self.ask("leak", "--readings", self.write(name, content), *extra)

    def refuse_lines(self, lines, names, head=HEAD):
        content = lines if isinstance(lines, bytes) else "\n".join([head, *lines]) + "\n"
        return self.refuse("leak", "--readings", self.write("readings.csv", content), names=names)

    def test_a_loss_is_leaking_beyond_the_allowance_only(self):
        answer = self.leak(losing(-1.0))
        self.assertTrue({"kpa_per_week", "low", "high", "leaking", "used", "left_out"} <= set(answer))
        self.assertAlmostEqual(answer["kpa_per_week"], -1.0, places=6)
        self.assertEqual((answer["leaking"], answer["used"], answer["left_out"], answer["allowance_kpa"]), (True, 8, 0, 0.5))
        self.assertEqual(self.leak(losing(-1.0), "--sheet", ALDER)["leaking"], False)  # 2 kPa a week
        self.assertEqual(self.leak(losing(-2.5), "--sheet", "alder-a1")["leaking"], True)

    def test_slope_and_interval_are_scipys(self):
        from scipy.stats import theilslopes
        dice = random.Random(5)
        for _ in range(5):
            rows = [(7.0 * i + dice.random(), round(20 - 0.8 * i + dice.gauss(0, 1), 3), dice.randint(-10, 30)) for i in range(dice.randint(5, 12))]
            answer = self.leak([f"{at(d)},{kpa},{c},0" for d, kpa, c in rows])
            weeks = [(START + timedelta(days=d)).replace(microsecond=(START + timedelta(days=d)).microsecond // 1000 * 1000) for d, _, _ in rows]
            weeks = [(w - START).total_seconds() / 604800 for w in weeks]
            carried = [(kpa + 101.325) * 293.15 / (c + 273.15) - 101.325 for _, kpa, c in rows]
            slope, _, low, high = theilslopes(carried, weeks)
            for key, value in (("kpa_per_week", slope), ("low", low), ("high", high)):
                self.assertAlmostEqual(answer[key], float(value), delta=1e-4 + 1e-5 * abs(value))

    def test_cold_alone_is_no_leak(self):
        lines = [f"{at(7 * i)},{121.325 * (293.15 - 3 * i) / 293.15 - 101.325:.3f},{20 - 3 * i},0" for i in range(8)]
        answer = self.leak(lines)
        self.assertAlmostEqual(answer["kpa_per_week"], 0, delta=0.001)
        self.assertIs(answer["leaking"], False)

    def test_a_refill_starts_a_new_run_and_is_never_guessed(self):
        lines = [f"{at(7 * i)},{20 - i % 4},20,0,{1 if i % 4 == 0 else 0}" for i in range(12)]
        answer = self.leak(lines, head=HEAD + ",refill")
        self.assertAlmostEqual(answer["kpa_per_week"], -1.0, places=6)
        self.assertEqual((answer["runs"], answer["leaking"]), (3, True))
        unsaid = self.leak([line[:-2] for line in lines])
        self.assertEqual((unsaid["runs"], unsaid["leaking"]), (1, False))

    def test_a_reading_out_of_order_is_left_out_and_said(self):
        lines = losing(-1.0)
        lines.insert(5, f"{at(2)},99,20,0")
        answer = self.leak(lines)
        self.assertEqual((answer["used"], answer["left_out"]), (8, 1))
        self.assertEqual((answer["left_out_why"][0]["line"], answer["left_out_why"][0]["code"]), (7, "not-in-order"))
        text = self.snug("leak", "--readings", self.path("readings.csv")).out
        self.assertIn("readings.csv:7", text)
        refilled = [f"{line},{1 if i == 4 else 0}" for i, line in enumerate(lines)]
        self.assertEqual(self.leak(refilled, head=HEAD + ",refill")["left_out_why"][0]["code"], "before-refill")

    def test_few_readings_say_so_and_never_leak(self):
        for n in (0, 1):
            answer = self.leak(losing(-3.0, n))
            self.assertEqual((answer["kpa_per_week"], answer["low"], answer["high"], answer["leaking"]), (None, None, None, False))
        answer = self.leak(losing(-3.0, 4))
        self.assertEqual((answer["interval"], answer["leaking"]), (False, False))
        self.assertIn("too few", answer["why"])

    def test_columns_in_any_order_and_ways_of_writing_give_one_answer(self):
        plain = self.leak(losing(-1.0))
        rows = [line.split(",") for line in losing(-1.0)]
        semicolon = "\ufeffElevation_m; KPA;note;Celsius;time\r\n" + "".join(f"0;{k.replace('.', ',')};x;{c};{t}\r\n" for t, k, c, _ in rows)
        tab = "time\tkpa\tcelsius\televation_m\n" + "".join("\t".join(r) + "\n" for r in rows)
        quoted = HEAD + "\n\n" + "".join(f'{t},"{k.replace(".", ",")}",{c},{e}\n' for t, k, c, e in rows)
        other = "time,kpa,fahrenheit,elevation_ft\n" + "".join(f"{t},{k},68,0\n" for t, k, _, _ in rows)
        barometer = "time,kpa,celsius,ambient_kpa\n" + "".join(f"{t},{k},{c},101.325\n" for t, k, c, _ in rows)
        contents = {"semicolon.csv": semicolon.encode(), "utf16.csv": semicolon.encode("utf-16-le"), "tab.csv": tab.encode(), "quoted.csv": quoted.encode(),
                    "other.csv": other.encode(), "barometer.csv": barometer.encode()}
        for name, content in contents.items():
            with self.subTest(name=name):
                answer = self.ask("leak", "--readings", self.write(name, content))
                self.assertEqual(answer, plain)

    def test_on_head_and_off_are_runs_of_their_own(self):
        lines = [f"{at(7 * i)},{20 if i % 2 else 30},20,0,{i % 2}" for i in range(8)]
        answer = self.leak(lines, head=HEAD + ",on_head")
        self.assertEqual((answer["runs"], answer["kpa_per_week"]), (2, 0))

    def test_a_cell_that_cannot_be_read_or_believed_refuses_the_file_with_its_line(self):
        for cells, column in ((f"{at(7)},19,-61,0", "celsius"), (f"{at(7)},19,61,0", "celsius"), (f"{at(7)},19,20,9001", "elevation_m"),
                              (f"{at(7)},19,20,-431", "elevation_m"), (f"{at(7)},x,20,0", "kpa"), (f"{at(7)},,20,0", "kpa"), (f"{at(7)},19 kPa,20,0", "kpa"),
                              (f"{at(7)},4294967295,20,0", "kpa"), (f"{at(7)},-95,20,0", "kpa"), (f"{at(7)},1e1,20,0", "kpa"), (f"{at(7)},19,,0", "celsius"),
                              (f"{at(7)},19,20,", "elevation_m"), ("2026-09-08T15:00:00,19,20,0", "time"), ("2026-02-30T15:00:00Z,19,20,0", "time"),
                              ("yesterday,19,20,0", "time"), (",19,20,0", "time"), (f"{at(7)},19", "celsius"), (f"{at(7)},19,20,0,1,2", "cells")):
            with self.subTest(cells=cells):
                self.refuse_lines([losing(-1)[0], cells], ["readings.csv:3", column])
        self.refuse_lines([f"{at(0)},19,20,0,yes"], ["readings.csv:2", "refill"], head=HEAD + ",refill")
        self.refuse_lines([f'{at(0)},"19,20,0'], "readings.csv:2")

    def test_headings_that_are_missing_or_twice_are_refused_by_name(self):
        for head, name in (("time,kpa,celsius", "elevation_m"), ("kpa,celsius,elevation_m", "time"), ("time,celsius,elevation_m", "kpa"),
                           ("time,kpa,elevation_m", "celsius"), ("time,kpa,kpa,celsius,elevation_m", "kpa"), ("time,kpa,psi,celsius,elevation_m", "psi")):
            with self.subTest(head=head):
                self.refuse_lines([], ["readings.csv:1", name], head=head)

    def test_what_is_no_list_of_readings_is_refused(self):
        png = b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR"
        for content in (b"", png, bytes(range(256)) * 40, b"\xff\xfe\x00"):
            self.refuse_lines(content, "readings.csv")
        self.refuse("leak", "--readings", self.path("none.csv"), names="none.csv")
        self.refuse("leak", "--readings", str(self.folder), names=str(self.folder))
        self.refuse_lines(losing(0, 1) * 10001, "readings.csv")

    def test_a_sheet_without_air_has_no_allowance(self):
        self.refuse("leak", "--readings", self.write("r.csv", HEAD + "\n"), "--sheet", CEDAR, names="--sheet")
        self.refuse("leak", "--readings", self.write("r.csv", HEAD + "\n"), "--sheet", "elm-e9", names="--sheet")

    def test_any_damage_to_a_file_is_answered_or_refused_on_one_line(self):
        dice = random.Random(9)
        whole = ("\n".join([HEAD, *losing(-1.0)]) + "\n").encode()
        for _ in range(60):
            bytes_ = bytearray(whole)
            for _ in range(dice.randint(1, 6)):
                bytes_[dice.randrange(len(bytes_))] = dice.choice(b'",;\n\r\t\x00\xff0-.') if dice.random() < 0.7 else dice.randrange(256)
            answer = self.snug("leak", "--readings", self.write("damaged.csv", bytes(bytes_)), "--json")
            self.assertIn(answer.code, (0, 2), bytes(bytes_))
            if answer.code == 2:
                self.assertEqual((answer.out, answer.err.count("\n")), ("", 1), bytes(bytes_))
                self.assertIn("damaged.csv", answer.err)
            else:
                answer.json()


class Gauge(Terminal):
    def gauge(self, text, characteristic="2A6D"):
        return self.ask("gauge", text, "--characteristic", characteristic)

    def test_pressure_temperature_and_battery_are_told_with_their_units(self):
        answer = self.gauge("FD9D1200")
        self.assertEqual((answer["kind"], answer["pascal"], answer["known"]), ("pressure", 122009.3, True))
        self.assertEqual(self.gauge("0xfd 9d:12-00"), answer)
        answer = self.gauge("A708", "2a6e")
        self.assertEqual((answer["kind"], answer["celsius"], answer["known"]), ("temperature", 22.15, True))
        self.assertEqual(self.gauge("00FE", "0x2A6E")["celsius"], -5.12)
        answer = self.gauge("64", "00002a19-0000-1000-8000-00805f9b34fb")
        self.assertEqual((answer["kind"], answer["percent"], answer["known"]), ("battery", 100, True))
        self.assertEqual(self.gauge("4733", "2A24")["text"], "G3")

    def test_codes_for_not_known_are_not_known(self):
        for text, characteristic, key in (("FFFFFFFF", "2A6D", "pascal"), ("0080", "2A6E", "celsius"), ("65", "2A19", "percent"), ("FF", "2A19", "percent")):
            answer = self.gauge(text, characteristic)
            self.assertEqual((answer["known"], answer[key]), (False, None))

    def test_absurd_values_are_questioned(self):
        for text, characteristic in (("00000000", "2A6D"), ("FEFFFFFF", "2A6D"), ("FF7F", "2A6E")):
            answer = self.gauge(text, characteristic)
            self.assertEqual((answer["known"], answer["questioned"]), (True, True))
            self.assertIn("read it again", answer["why"])

    def test_wrong_lengths_and_other_slips_are_refused_saying_what_came(self):
        self.refuse("gauge", "FD9D12", "--characteristic", "2A6D", names=["HEX", "4 bytes, and 3 came"])
        self.refuse("gauge", "00" * 40, "--characteristic", "2A6D", names=["HEX", "4 bytes, and 40 came"])
        self.refuse("gauge", "", "--characteristic", "2A6D", names="HEX")
        for text in ("F", "GG", "FD9D120", "FD,9D"):
            self.refuse("gauge", text, "--characteristic", "2A6D", names="HEX")
        self.refuse("gauge", "00" * 2000, "--characteristic", "2A6D", names="HEX")
        for characteristic in ("2A6F", "6D", "pressure", ""):
            self.refuse("gauge", "FD9D1200", "--characteristic", characteristic, names="--characteristic")
        self.refuse("gauge", "0A", "--characteristic", "2A29", names="HEX")
        self.refuse("gauge", "FFFE", "--characteristic", "2A29", names="HEX")


if __name__ == "__main__":
    unittest.main()
