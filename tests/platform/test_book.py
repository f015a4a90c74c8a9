# SPDX-License-Identifier: Apache-2.0
"""`snug book`, `roster`, `take-in`, `due`, `demo`: answers, keys, exit codes, and nothing half done."""
import hashlib
import os
import shutil
import sqlite3
import unittest

from terminal import AT, Terminal

LANES = {"do-not-wear", "before-practice", "weekly", "nothing-due"}


class Book(Terminal):
    KEYS = {"facts", "devices", "ok", "faults"}

    def test_a_new_book_verifies_and_tells_what_it_holds(self):
        self.new_book()
        for deed in ("info", "verify", "rebuild"):
            answer = self.ask("book", deed, "--book", str(self.book))
            self.assertTrue(self.KEYS <= set(answer), deed)
            self.assertEqual((answer["ok"], answer["faults"]), (True, []))
            self.assertGreaterEqual(answer["facts"], 1)

    def test_a_file_that_is_there_is_never_written_over(self):
        self.adopted_book()
        before = self.state()
        self.refuse("book", "new", "--book", str(self.book), names="season.book")
        self.assertEqual(self.state(), before)
        plain = self.write("notes.txt", "mine")
        self.refuse("book", "new", "--book", plain, names="notes.txt")
        self.assertEqual((self.folder / "notes.txt").read_text(), "mine")

    def test_a_backup_restores_to_the_same_facts_and_never_overwrites(self):
        self.adopted_book()
        backup = self.path("season.backup")
        self.assertTrue(self.KEYS <= set(self.ask("book", "backup", "--book", str(self.book), "--out", backup)))
        facts = self.facts()
        restored = self.path("restored.book")
        answer = self.ask("book", "restore", "--from", backup, "--book", restored)
        self.assertTrue(self.KEYS <= set(answer))
        self.assertEqual(answer["facts"], facts)
        self.assertEqual(self.ask("book", "verify", "--book", restored)["ok"], True)
        board = self.ask("due", "--book", str(self.book), "--at", AT)
        self.assertEqual(self.ask("due", "--book", restored, "--at", AT)["rows"], board["rows"])
        self.refuse("book", "backup", "--book", str(self.book), "--out", backup, names="season.backup")
        self.refuse("book", "restore", "--from", backup, "--book", restored, names="restored.book")

    def test_a_damaged_backup_restores_nothing(self):
        self.adopted_book()
        backup = self.path("season.backup")
        self.ask("book", "backup", "--book", str(self.book), "--out", backup)
        whole = (self.folder / "season.backup").read_bytes()
        flipped = bytearray(whole)
        flipped[len(whole) // 2] ^= 1
        for name, content in {"cut": whole[:len(whole) // 2], "flipped": bytes(flipped), "empty": b"", "foreign": b"\x89PNG\r\n\x1a\n" + bytes(500)}.items():
            with self.subTest(name=name):
                self.refuse("book", "restore", "--from", self.write(name, content), "--book", self.path(name + ".book"), names=name)
                self.assertFalse((self.folder / (name + ".book")).exists())

    def test_an_altered_fact_is_named_and_exits_1(self):
        self.adopted_book()
        copy = self.path("altered.book")
        shutil.copy(self.book, copy)
        self.assertTrue(alter_one_fact(copy), "no table with the lines of facts was found")
        answer = self.ask("book", "verify", "--book", copy, code=1)
        self.assertIs(answer["ok"], False)
        fault = answer["faults"][0]
        self.assertEqual(set(fault) & {"device", "n", "what"}, {"device", "n", "what"})

    def test_answers_for_people_come_without_json(self):
        self.new_book()
        answer = self.snug("book", "info", "--book", str(self.book))
        self.assertEqual((answer.code, answer.err), (0, ""))
        self.assertIn("facts", answer.out)

    def test_an_identity_lost_becomes_a_new_device_and_nothing_is_lost(self):
        self.adopted_book()
        facts = self.facts()
        shutil.rmtree(self.folder / "keys")
        self.ask("roster", self.write("more.csv", "Jersey,Last,First\n55,Newcomer,Nan\n"), "--book", str(self.book), "--at", AT)
        answer = self.ask("book", "verify", "--book", str(self.book))
        self.assertGreater(answer["facts"], facts)
        self.assertEqual(len(answer["devices"]), 2)


def alter_one_fact(path):
    """Changes one byte of text inside one fact's line, wherever the format keeps it."""
    db = sqlite3.connect(path)
    try:
        for (table,) in db.execute("select name from sqlite_master where type='table'").fetchall():
            columns = [row[1] for row in db.execute(f"pragma table_info({table})")]
            for column in columns:
                rows = db.execute(f"select {column} from {table} where instr({column}, cast('athlete-added' as blob)) > 0 or instr({column}, 'athlete-added') > 0").fetchall()
                for (line,) in rows:
                    word, other = ("Family", "Fabily") if isinstance(line, str) else (b"Family", b"Fabily")
                    if word in line:
                        db.execute(f"update {table} set {column} = ? where {column} = ?", (line.replace(word, other, 1), line))
                        db.commit()
                        return True
        return False
    finally:
        db.close()


class Roster(Terminal):
    KEYS = {"added", "changed", "unchanged", "questioned", "refused"}

    def roster(self, content, name="roster.csv"):
        return self.ask("roster", self.write(name, content), "--book", str(self.book), "--at", AT)

    def test_good_rows_go_in_bad_ones_are_refused_with_their_line(self):
        self.new_book()
        answer = self.roster("Jersey,Last,First,Birth year,Head\n07,Ames,Jo,2010,560mm\nseven,Birch,Al,2010,\n00,Cole,Bo,2011,22in\n")
        self.assertTrue(self.KEYS <= set(answer))
        self.assertEqual((answer["added"], answer["changed"], answer["unchanged"]), (2, 0, 0))
        self.assertEqual([r["line"] for r in answer["refused"]], [3])
        self.assertTrue(answer["refused"][0]["why"])
        rows = self.ask("due", "--book", str(self.book), "--at", AT)["rows"]
        self.assertEqual(sorted(r["jersey"] for r in rows), ["00", "07"])

    def test_running_it_again_changes_nothing(self):
        self.new_book()
        text = "Jersey;Last;First\r\n07;Ames;Jo\r\n12;Åkerlund;Bö\r\n"
        self.assertEqual(self.roster(text)["added"], 2)
        facts = self.facts()
        again = self.roster(text)
        self.assertEqual((again["added"], again["changed"], again["unchanged"]), (0, 0, 2))
        self.assertEqual(self.facts(), facts)

    def test_the_usual_encodings_give_the_same_names(self):
        text = "Jersey\tLast\tFirst\r\n07\tMüller\tZoë\r\n"
        for encoding in ("utf-8", "utf-8-sig", "utf-16", "cp1252"):
            with self.subTest(encoding=encoding):
                self.book = self.folder / f"{encoding}.book"
                self.new_book()
                self.assertEqual(self.roster(text.encode(encoding))["added"], 1)
                row = self.ask("due", "--book", str(self.book), "--at", AT)["rows"][0]
                self.assertEqual(row["athlete"], "Zoë Müller")

    def test_a_head_of_650_mm_at_14_is_questioned_not_swallowed(self):
        self.new_book()
        answer = self.roster("Jersey,Last,First,Birth year,Head\n07,Ames,Jo,2012,650mm\n08,Birch,Al,2012,555mm\n")
        self.assertEqual((answer["added"], [q["line"] for q in answer["questioned"]]), (2, [2]))


class TakeIn(Terminal):
    KEYS = {"known", "new", "held", "refused"}

    def adopt(self):
        """The demo's Book knows its sheets."""
        self.ask("demo", "--out", str(self.book), "--athletes", "4", "--seed", "3")

    def take_in(self, content):
        return self.ask("take-in", "--book", str(self.book), "--tags", self.write("tags.txt", content), "--at", AT)

    def test_new_units_known_ones_and_held_ones_are_told_apart(self):
        self.adopt()
        first = self.take_in("T-1001,alder-a1,M,2026,ok\nT-1002,alder-a1,M,2026,faceguard=bare metal\nT-1003,alder-a1,M,1999,ok\n")
        self.assertEqual(set(first) & self.KEYS, self.KEYS)
        self.assertEqual(first["new"], ["T-1001", "T-1002", "T-1003"])
        self.assertEqual(first["held"], ["T-1002", "T-1003"])
        again = self.take_in("T-1001\nT-1002\n")
        self.assertEqual((again["known"], again["new"]), (["T-1001", "T-1002"], []))

    def test_a_tag_alone_goes_in_on_hold_until_its_model_size_and_label_are_said(self):
        self.adopt()
        bare = self.take_in("T-3001\n")
        self.assertEqual((bare["new"], bare["held"], bare["refused"]), (["T-3001"], ["T-3001"], []))
        said = self.take_in("T-3001,alder-a1,M,2026,ok\n")
        self.assertEqual((said["known"], said["new"], said["held"]), (["T-3001"], [], []))
        self.assertTrue(self.ask("book", "rebuild", "--book", str(self.book))["ok"])

    def test_a_damaged_tag_is_refused_with_its_line_and_the_others_go_in(self):
        self.adopt()
        answer = self.take_in("T-4001\nT-\x0240\nT-4003\n")
        self.assertEqual(answer["new"], ["T-4001", "T-4003"])
        self.assertEqual([r["line"] for r in answer["refused"]], [2])

    def test_a_scan_that_names_nothing_that_exists_is_refused_with_its_line(self):
        self.adopt()
        facts = self.facts()
        answer = self.take_in("T-2001,alder-a1\n" + "x" * 65 + "\nT-2003,elm-e9,M,2026,ok\n")
        self.assertEqual([r["line"] for r in answer["refused"]], [1, 2, 3])
        self.assertEqual(self.facts(), facts)


class Due(Terminal):
    ROW = {"athlete", "jersey", "helmet", "lane", "reasons", "due_from", "due_by"}

    def test_every_lane_of_the_demo_has_somebody_and_every_row_its_reason(self):
        self.assertGreater(self.ask("demo", "--out", str(self.book), "--seed", "7")["facts"], 100)
        answer = self.ask("due", "--book", str(self.book), "--at", AT)
        self.assertEqual(len(answer["rows"]), 64)
        for row in answer["rows"]:
            self.assertTrue(self.ROW <= set(row), row)
            self.assertIn(row["lane"], LANES)
            self.assertEqual(bool(row["reasons"]), row["lane"] != "nothing-due", row)
            self.assertEqual(len(row["reasons"]), len(row["why"]))
        self.assertEqual({row["lane"] for row in answer["rows"]}, LANES)
        order = ["do-not-wear", "before-practice", "weekly", "nothing-due"]
        ranks = [order.index(row["lane"]) for row in answer["rows"]]
        self.assertEqual(ranks, sorted(ranks))

    def test_cold_and_altitude_put_helmets_before_practice_with_the_amount(self):
        self.ask("demo", "--out", str(self.book))
        mild = self.ask("due", "--book", str(self.book), "--at", AT)
        self.assertIsNotNone(mild["weather_at"])  # as the Book noted it
        self.assertFalse(mild["weather"]["old"])
        cold = self.ask("due", "--book", str(self.book), "--at", AT, "--temperature", "-10C", "--elevation", "590ft")
        self.assertIsNone(cold["weather_at"])
        self.assertEqual(cold["weather"]["celsius"], -10)
        due = [row for row in cold["rows"] if "air-changed" in row["reasons"]]
        self.assertGreater(len(due), sum("air-changed" in row["reasons"] for row in mild["rows"]))
        for row in due:
            self.assertIn(row["lane"], ("before-practice", "do-not-wear"))
            self.assertRegex(" ".join(row["why"]), r"Air in \S+ down about [0-9.]+ kPa by cold")
        high = self.ask("due", "--book", str(self.book), "--at", AT, "--temperature", "20C", "--elevation", "3000m")
        self.assertTrue(any("by altitude" in why for row in high["rows"] for why in row["why"]))

    def test_weather_noted_more_than_a_day_ago_counts_and_is_said_to_be_old(self):
        self.ask("demo", "--out", str(self.book))
        later = self.ask("due", "--book", str(self.book), "--at", "2026-10-16T15:00:00-05:00")
        self.assertTrue(later["weather"]["old"])
        self.assertIn("2026-10-14", later["weather_at"])

    def test_weather_that_cannot_be_is_refused_by_its_option(self):
        self.ask("demo", "--out", str(self.book))
        for option, value in (("--temperature", "4"), ("--temperature", "cold"), ("--elevation", "180"), ("--temperature", "400C"),
                              ("--temperature", "-61C"), ("--temperature", "61C"), ("--elevation", "-431m"), ("--elevation", "9001m")):
            with self.subTest(option=option, value=value):
                self.refuse("due", "--book", str(self.book), "--at", AT, option, value, names=option)

    def test_a_time_without_an_offset_is_refused(self):
        self.adopted_book()
        for at in ("2026-10-14T15:00:00", "2026-10-14", "now", "2026-13-14T15:00:00Z", ""):
            with self.subTest(at=at):
                self.refuse("due", "--book", str(self.book), "--at", at, names="--at")

    def test_looking_changes_nothing(self):
        self.adopted_book()
        before = self.state()
        self.ask("due", "--book", str(self.book), "--at", AT)
        self.ask("book", "info", "--book", str(self.book))
        self.ask("book", "verify", "--book", str(self.book))
        self.assertEqual(self.state(), before)


class Demo(Terminal):
    def test_the_same_seed_gives_the_same_world_and_another_one_another(self):
        boards = []
        for name, seed in (("a", "5"), ("b", "5"), ("c", "6")):
            path = self.path(name + ".book")
            self.assertIn("facts", self.ask("demo", "--out", path, "--athletes", "9", "--seed", seed))
            rows = self.ask("due", "--book", path, "--at", AT)["rows"]
            boards.append([(r["athlete"], r["jersey"], r["helmet"], r["lane"], tuple(r["reasons"])) for r in rows])
        self.assertEqual(boards[0], boards[1])
        self.assertNotEqual(boards[0], boards[2])
        self.assertTrue(self.ask("book", "verify", "--book", self.path("a.book"))["ok"])

    def test_sizes_out_of_range_and_files_that_are_there_are_refused(self):
        for athletes in ("0", "-5", "1000000000", "x"):
            self.refuse("demo", "--out", self.path("a.book"), "--athletes", athletes, names="--athletes")
        self.assertFalse(os.path.exists(self.path("a.book")))
        mine = self.write("mine.txt", "mine")
        self.refuse("demo", "--out", mine, names="mine.txt")
        self.assertEqual((self.folder / "mine.txt").read_text(), "mine")


class Photos(Terminal):
    """The demo has one photo, of a painted shell; it lies beside the Book (BOOK_FORMAT.md, Photos)."""
    def setUp(self):
        super().setUp()
        self.demo = self.path("demo.book")
        self.ask("demo", "--out", self.demo)
        self.kept = list((self.folder / "demo.book.photos").iterdir())

    def test_a_photo_lies_under_the_hash_of_its_bytes_and_verifies(self):
        self.assertEqual(len(self.kept), 1)
        self.assertEqual(self.kept[0].name, hashlib.blake2b(self.kept[0].read_bytes(), digest_size=32).hexdigest() + ".jpg")
        answer = self.ask("book", "verify", "--book", self.demo)
        self.assertEqual((answer["ok"], answer["photos"], answer["photo_faults"], answer["photos_left_over"]), (True, 1, [], 0))
        self.assertIn("1 photo as taken", self.snug("book", "verify", "--book", self.demo).out)

    def test_an_altered_and_a_missing_photo_are_named_with_helmet_and_fact_and_exit_1(self):
        whole = self.kept[0].read_bytes()
        self.kept[0].write_bytes(whole[:500] + bytes([whole[500] ^ 1]) + whole[501:])
        for what in ("altered", "missing"):
            with self.subTest(what=what):
                answer = self.ask("book", "verify", "--book", self.demo, code=1)
                self.assertEqual((answer["ok"], answer["photos"], answer["faults"]), (False, 0, []))
                fault = answer["photo_faults"][0]
                self.assertEqual((fault["what"], fault["photo"]), (what, self.kept[0].stem))
                self.assertTrue(fault["helmet"] and fault["helmet_id"] and fault["fact"])
                told = self.snug("book", "verify", "--book", self.demo)
                self.assertEqual(told.code, 1)
                self.assertIn(f"photo of helmet {fault['helmet']}, fact {fault['fact']}: {what}", told.out)
            self.kept[0].unlink(missing_ok=True)

    def test_a_file_that_no_fact_names_is_counted_and_harmless(self):
        (self.kept[0].parent / ("0" * 64 + ".jpg")).write_bytes(b"anything")
        answer = self.ask("book", "verify", "--book", self.demo)
        self.assertEqual((answer["ok"], answer["photos_left_over"]), (True, 1))

    def test_a_backup_takes_the_photo_along_and_restoring_brings_it_back(self):
        backup, restored = self.path("demo.backup"), self.path("restored.book")
        self.assertEqual(self.ask("book", "backup", "--book", self.demo, "--out", backup)["photos"], 1)
        shutil.rmtree(self.kept[0].parent)
        answer = self.ask("book", "restore", "--from", backup, "--book", restored)
        self.assertEqual((answer["photos"], answer["photo_faults"]), (1, []))
        self.assertTrue(self.ask("book", "verify", "--book", restored)["ok"])
        # From the Book that lost it: said, and nothing is stopped by it.
        other = self.ask("book", "backup", "--book", self.demo, "--out", self.path("other.backup"))
        self.assertEqual((other["photos"], other["photo_faults"][0]["what"]), (0, "missing"))
        again = self.ask("book", "restore", "--from", self.path("other.backup"), "--book", self.path("again.book"))
        self.assertEqual((again["photos"], len(again["photo_faults"])), (0, 1))
        self.assertGreater(again["facts"], 0)


class Check(Terminal):
    def test_the_installation_is_sound(self):
        answer = self.ask("check")
        self.assertTrue(answer["ok"])
        self.assertEqual({f["what"] for f in answer["findings"]}, {"rules", "store", "fonts", "locale", "bluetooth", "camera"})
        for finding in answer["findings"]:
            self.assertTrue({"what", "ok", "why"} <= set(finding))
            self.assertNotIn("not built", finding["why"])

    def test_a_store_that_cannot_be_written_is_a_finding_and_exits_1(self):
        answer = self.snug("check", "--json", env={"TMPDIR": "/proc"})
        self.assertEqual(answer.code, 1, answer.err)
        faults = [f["what"] for f in answer.json()["findings"] if not f["ok"]]
        self.assertEqual(faults, ["store"])


if __name__ == "__main__":
    unittest.main()
