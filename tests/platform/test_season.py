# SPDX-License-Identifier: Apache-2.0
"""`snug match`, `plan`, `swap` and `notice`: answers, keys, exit codes, and nothing half done."""
import datetime
import unittest

from terminal import AT, Terminal


class Match(Terminal):
    KEYS = {"pairs", "unmatched", "cost", "short", "spare"}

    def setUp(self):
        super().setUp()
        self.ask("demo", "--out", str(self.book), "--seed", "7")

    def match(self, *options):
        answer = self.ask("match", "--book", str(self.book), "--at", AT, *options)
        self.assertTrue(self.KEYS <= set(answer))
        return answer

    def test_everybody_is_accounted_for_and_every_pair_explains_its_cost(self):
        answer = self.match()
        self.assertEqual(len(answer["pairs"]) + len(answer["unmatched"]), 64)
        self.assertEqual(len({pair["helmet_id"] for pair in answer["pairs"]}), len(answer["pairs"]))
        for pair in answer["pairs"]:
            self.assertAlmostEqual(sum(term["cost"] for term in pair["terms"]), pair["cost"], places=7)
            self.assertGreaterEqual(pair["odds"], 0.2)
            self.assertEqual(pair["try_on"], pair["odds"] < 0.4)
            self.assertIn("cost", pair["why"])
        self.assertAlmostEqual(sum(pair["cost"] for pair in answer["pairs"]), answer["cost"], places=6)
        self.assertEqual(sum(answer["spare"].values()), len(answer["spare_helmets"]))

    def test_no_helmet_is_given_that_lapses_before_the_season_ends_or_is_held(self):
        answer = self.match()
        lapsing = {unit["helmet_id"] for unit in self.ask("plan", "--book", str(self.book), "--season", "2026", "--at", AT)["lapsing"]
                   if unit["last_good_day"] < answer["through"]}
        self.assertTrue(lapsing)
        self.assertFalse(lapsing & {pair["helmet_id"] for pair in answer["pairs"]})
        self.assertEqual({"held", "label-lapsed", "broke-said", "points-after-report"}, {unit["code"] for unit in answer["left_out"]})

    def test_a_pin_holds_an_exclusion_keeps_apart_and_keep_moves_nobody(self):
        free = self.match()["pairs"]
        first, second = free[0], next(p for p in free[1:] if (p["size"], p["sheet"]) == (free[0]["size"], free[0]["sheet"]))
        pinned = self.match("--pin", f"{first['jersey']}={second['helmet']}")["pairs"]
        mine = next(p for p in pinned if p["athlete_id"] == first["athlete_id"])
        self.assertEqual((mine["helmet_id"], mine["pinned"]), (second["helmet_id"], True))
        apart = self.match("--not", f"{first['jersey']}={first['helmet']}")["pairs"]
        self.assertNotIn((first["athlete_id"], first["helmet_id"]), {(p["athlete_id"], p["helmet_id"]) for p in apart})
        self.assertTrue(any(pair["pinned"] for pair in self.match("--keep")["pairs"]))

    def test_a_day_far_ahead_leaves_every_helmet_out(self):
        answer = self.match("--through", "2035-01-01")
        self.assertEqual(answer["pairs"], [])
        self.assertEqual(answer["spare"], {})
        self.assertEqual(sum(answer["short"].values()), 64 - sum(head["code"] == "never-taped" for head in answer["unmatched"]))

    def test_text_for_people_says_the_same(self):
        text = self.snug("match", "--book", str(self.book), "--at", AT).out
        self.assertIn("heads have a helmet", text)
        self.assertIn("Spare:", text)

    def test_bad_input_is_named_in_one_line(self):
        book = str(self.book)
        self.refuse("match", "--book", self.path("none.book"), names="none.book")
        self.refuse("match", names="--book")
        self.refuse("match", "--book", book, "--pin", "07", names="--pin")
        self.refuse("match", "--book", book, "--pin", "xyz=A1-M-00001", names=["--pin", "xyz"])
        self.refuse("match", "--book", book, "--not", "07=nothing-such", names=["--not", "nothing-such"])
        self.refuse("match", "--book", book, "--through", "soon", names="--through")
        self.refuse("match", "--book", book, "--at", "2026-10-14", names="--at")
        pair = self.match()["pairs"][0]
        both = f"{pair['jersey']}={pair['helmet']}"
        self.refuse("match", "--book", book, "--pin", both, "--not", both, names="--pin")


class Plan(Terminal):
    KEYS = {"batches", "orders", "lapsing"}

    def setUp(self):
        super().setUp()
        self.ask("demo", "--out", str(self.book), "--seed", "7")

    def plan(self, *options, season="2026"):
        answer = self.ask("plan", "--book", str(self.book), "--season", season, "--at", AT, *options)
        self.assertTrue(self.KEYS <= set(answer))
        return answer

    def test_a_batch_is_away_for_the_turnaround_and_holds_only_what_lapses(self):
        for days in (14, 42):
            answer = self.plan("--turnaround", f"{days}d")
            lapsing = {unit["helmet"] for unit in answer["lapsing"] if unit["renewable"]}
            self.assertTrue(answer["batches"])
            for batch in answer["batches"]:
                away = datetime.date.fromisoformat(batch["back"]) - datetime.date.fromisoformat(batch["send"])
                self.assertEqual(away.days, days)
                self.assertTrue(set(batch["helmets"]) <= lapsing)
                self.assertEqual(sum(size["count"] for size in batch["sizes"]), len(batch["helmets"]))
        self.assertEqual(self.plan("--turnaround", "6w")["turnaround_days"], 42)

    def test_orders_fill_what_is_enough_and_grow_with_the_cover(self):
        totals = []
        for cover in ("50%", "0.9", "99%"):
            answer = self.plan("--cover", cover)
            for order in answer["orders"]:
                self.assertEqual(order["order"], max(0, order["enough"] - order["good"]))
                self.assertGreaterEqual(order["covered"], answer["cover"] - 1e-9)
                self.assertIn("expected", order["why"])
            totals.append(sum(order["enough"] for order in answer["orders"]))
        self.assertEqual(totals, sorted(totals))
        self.assertLess(totals[0], totals[-1])

    def test_newcomers_go_by_the_model_asked_for(self):
        answer = self.plan("--sheet", "cedar-c3", "--newcomers", "30")
        self.assertEqual({order["sheet"] for order in answer["orders"] if order["newcomers"] > 0}, {"cedar-c3"})
        self.assertAlmostEqual(answer["expected_newcomers"], 30)

    def test_looking_changes_nothing_and_says_what_it_assumes(self):
        before = self.state()
        answer = self.plan()
        self.ask("match", "--book", str(self.book), "--at", AT)
        self.assertEqual(self.state(), before)
        self.assertTrue(any("chance" in line for line in answer["why"]))
        text = self.snug("plan", "--book", str(self.book), "--season", "2026", "--at", AT).out
        self.assertIn("Order for 2027", text)

    def test_a_book_without_helmets_has_a_plan(self):
        self.book = self.folder / "other.book"
        self.adopted_book()
        answer = self.plan()
        self.assertEqual((answer["batches"], answer["lapsing"]), ([], []))

    def test_bad_input_is_named_in_one_line(self):
        base = ("plan", "--book", str(self.book), "--at", AT, "--season")
        self.refuse("plan", "--book", str(self.book), names="--season")
        self.refuse(*base, "next", names="--season")
        self.refuse(*base, "2050", names="--season")
        for option, values in {"--turnaround": ("42", "0d", "two weeks", "500d"), "--cover": ("1.5", "much", "40%", "nan"), "--returning": ("-1", "120%"),
                               "--newcomers": ("-3", "few"), "--last-age": ("2",), "--newcomer-age": ("200",), "--sheet": ("no-such",)}.items():
            for value in values:
                with self.subTest(option=option, value=value):
                    self.refuse(*base, "2026", f"{option}={value}", names=option)


class Swap(Terminal):
    KEYS = {"athlete", "jersey", "tape", "sheet", "size", "offers", "not_offered", "worn", "shelves", "given", "held", "why"}

    def setUp(self):
        super().setUp()
        self.ask("demo", "--out", str(self.book), "--seed", "7")

    def swap(self, jersey, *options, code=0):
        answer = self.ask("swap", "--book", str(self.book), "--jersey", jersey, "--at", AT, *options, code=code)
        self.assertTrue(self.KEYS <= set(answer))
        return answer

    def rows(self):
        return {row["jersey"]: row for row in self.ask("due", "--book", str(self.book), "--at", AT)["rows"]}

    def somebody(self):
        """An athlete in a helmet that is not held, with spares."""
        for jersey, row in self.rows().items():
            held = any(reason in row["reasons"] for reason in ("held", "unit-held", "point-fault"))
            if row["helmet"] and row["lane"] != "do-not-wear" and not held:
                answer = self.snug("swap", "--book", str(self.book), "--jersey", jersey, "--at", AT, "--json")
                if answer.code == 0:
                    return jersey, row, answer.json()
        self.fail("nobody has a spare")

    def test_spares_come_surest_first_with_their_reasons_and_the_rest_is_counted(self):
        jersey, row, answer = self.somebody()
        odds = [offer["odds"] for offer in answer["offers"]]
        self.assertEqual(odds, sorted(odds, reverse=True))
        for offer in answer["offers"]:
            self.assertGreaterEqual(offer["odds"], 0.2)
            self.assertEqual(offer["try_on"], offer["odds"] < 0.4)
            self.assertGreaterEqual(offer["last_good_day"], AT[:10])
            self.assertIn("certified through", offer["why"])
            self.assertNotEqual(offer["helmet"], row["helmet"])
        info = self.ask("match", "--book", str(self.book), "--at", AT)
        units = len(answer["offers"]) + sum(answer["not_offered"].values()) + answer["worn"]
        self.assertGreater(units, len(info["pairs"]) - 1)
        self.assertIsNone(answer["given"])

    def test_looking_changes_nothing(self):
        jersey, _, answer = self.somebody()
        before = self.state()
        self.swap(jersey)
        text = self.snug("swap", "--book", str(self.book), "--jersey", jersey, "--at", AT).out
        self.assertEqual(self.state(), before)
        self.assertIn(answer["offers"][0]["helmet"], text)
        self.assertIn("come first", text)

    def test_a_swap_gives_the_spare_holds_the_old_one_and_is_in_the_book_afterwards(self):
        jersey, row, answer = self.somebody()
        spare = answer["offers"][0]["helmet"]
        done = self.swap(jersey, "--give", spare, "--reason", "shell", "--what", "crack over the left ear", "--old-with-athlete")
        self.assertEqual((done["given"], done["held"]), (spare, [row["helmet"]]))
        after = self.rows()[jersey]
        self.assertEqual(after["helmet"], spare)
        self.assertTrue(self.ask("book", "verify", "--book", str(self.book))["ok"])
        # Gone from the shelf, and the old one is kept back for everybody.
        again = self.swap(jersey)
        self.assertNotIn(spare, [offer["helmet"] for offer in again["offers"]])
        self.assertEqual(again["not_offered"]["away"], answer["not_offered"]["away"] + 1)  # on hold, and still with the athlete

    def test_what_is_no_spare_is_not_given_and_nothing_is_written(self):
        jersey, row, answer = self.somebody()
        others = next(r["helmet"] for j, r in self.rows().items() if j != jersey and r["helmet"])
        before = self.state()
        for helmet in (others, row["helmet"]):
            refused = self.swap(jersey, "--give", helmet, "--reason", "fit", code=1)
            self.assertIsNone(refused["given"])
            self.assertTrue(any("Not given" in line for line in refused["why"]))
        self.assertEqual(self.state(), before)

    def test_no_spare_at_all_is_a_no_with_the_causes(self):
        self.book = self.folder / "other.book"
        self.adopted_book()
        answer = self.swap("01", code=1)
        self.assertEqual((answer["offers"], answer["size"]), ([], "none"))
        self.assertIn("not taped", " ".join(answer["why"]))

    def test_bad_input_is_named_in_one_line(self):
        jersey, _, answer = self.somebody()
        base = ("swap", "--book", str(self.book), "--at", AT)
        spare = answer["offers"][0]["helmet"]
        before = self.facts()
        self.refuse(*base, names="--jersey")
        self.refuse(*base, "--jersey", "999", names=["--jersey", "999"])
        self.refuse(*base, "--jersey", jersey, "--give", "no-such", names=["--give", "no-such"])
        self.refuse(*base, "--jersey", jersey, "--reason", "fit", names="--give")
        self.refuse(*base, "--jersey", jersey, "--give", spare, "--reason", "whim", names="whim")
        self.refuse(*base, "--jersey", jersey, "--give", spare, names="reason")
        self.refuse("swap", "--book", self.path("none.book"), "--jersey", jersey, names="none.book")
        self.assertEqual(self.facts(), before)


class Show(Terminal):
    KEYS = {"standing", "reasons", "where", "with", "acts", "strip", "points"}

    def setUp(self):
        super().setUp()
        self.ask("demo", "--out", str(self.book), "--seed", "7")

    def show(self, *options):
        answer = self.ask("show", "--book", str(self.book), "--at", AT, *options)
        self.assertTrue(self.KEYS <= set(answer), answer)
        self.assertEqual((len(answer["strip"]), len(answer["points"])), (9, 7))
        return answer

    def test_an_athlete_stands_as_the_board_has_them(self):
        for row in self.ask("due", "--book", str(self.book), "--at", AT)["rows"]:
            answer = self.show("--jersey", row["jersey"])
            self.assertEqual((answer["standing"], answer["reasons"], answer["helmet"]), (row["lane"], row["reasons"], row["helmet"]))
            self.assertEqual(answer["strip"], row["strip"])
            if row["helmet"]:
                helmet = self.show("--helmet", row["helmet"])
                self.assertEqual(answer["helmet_standing"], helmet["standing"])
                self.assertEqual(answer["points"], helmet["points"])
                if set(helmet["reasons"]) - {"points-after-report"}:
                    self.assertEqual(row["lane"], "do-not-wear", row)

    def test_a_helmet_swapped_and_still_with_its_athlete_names_them(self):
        rows = [row for row in self.ask("due", "--book", str(self.book), "--at", AT)["rows"] if row["helmet"] and row["lane"] != "do-not-wear"]
        for row in rows:
            spares = self.snug("swap", "--book", str(self.book), "--jersey", row["jersey"], "--at", AT, "--json")
            if spares.code == 0:
                break
        old, jersey = row["helmet"], row["jersey"]
        before = self.show("--helmet", old)
        self.assertEqual((before["standing"], before["where"], [w["jersey"] for w in before["with"]]), ("in-service", "with-athlete", [jersey]))
        self.assertIn("to-shelf", before["acts"])
        self.ask("swap", "--book", str(self.book), "--jersey", jersey, "--at", AT, "--give", spares.json()["offers"][0]["helmet"],
                 "--reason", "shell", "--what", "crack", "--old-with-athlete")
        after = self.show("--helmet", old)
        self.assertEqual((after["standing"], after["where"], [w["jersey"] for w in after["with"]]), ("on-hold", "with-athlete", [jersey]))
        self.assertEqual(after["points"]["shell"], "fault")
        self.assertIn("where-now", after["acts"])
        self.assertNotIn("release", after["acts"])  # a crack
        self.assertEqual(self.show("--jersey", jersey)["kept"], [old])

    def test_what_is_asked_for_wrongly_is_refused(self):
        self.refuse("show", "--book", str(self.book), "--at", AT, names="--jersey")
        self.refuse("show", "--book", str(self.book), "--at", AT, "--jersey", "1", "--helmet", "x", names="--jersey")
        self.refuse("show", "--book", str(self.book), "--at", AT, "--helmet", "nothing-such", names="--helmet")
        self.refuse("show", "--book", str(self.book), "--at", "now", "--jersey", "1", names="--at")


class Notice(Terminal):
    def setUp(self):
        super().setUp()
        self.ask("demo", "--out", str(self.book), "--seed", "7")
        self.before = self.listed()

    def listed(self):
        return self.ask("notice", "list", "--book", str(self.book))["notices"]

    def issue(self, *options):
        return self.ask("notice", "issue", "--book", str(self.book), "--at", AT, "--text", "Replace the chin strap clip.", *options)

    def test_a_notice_holds_what_it_means_and_a_look_only_says_so(self):
        state = self.state()
        look = self.issue("--sheet", "alder-a1", "--look")
        self.assertIsNone(look["notice"])
        self.assertEqual(self.state(), state)
        self.assertEqual(self.listed(), self.before)
        done = self.issue("--sheet", "alder-a1")
        self.assertEqual(done["held"], look["held"])
        self.assertTrue(done["held"] and done["worn"])
        notice = self.listed()[-1]
        self.assertEqual((notice["notice"], notice["held"], notice["worn"]), (done["notice"], len(done["held"]), len(done["worn"])))
        self.assertEqual((notice["sheet"], notice["day"], notice["text"]), ("alder-a1", AT[:10], "Replace the chin strap clip."))
        self.assertEqual(sorted(notice["helmets"]), sorted(done["held"]))
        lanes = {row["helmet"]: row["lane"] for row in self.ask("due", "--book", str(self.book), "--at", AT)["rows"]}
        self.assertEqual({lanes[helmet] for helmet in done["worn"]}, {"do-not-wear"})

    def test_helmets_are_let_go_one_by_one_all_or_none_and_the_rest_stays_held(self):
        done = self.issue("--sheet", "brant-b2", "--day", "2026-10-01")
        one, two, *rest = done["held"]
        base = ("--book", str(self.book), "--notice", done["notice"])
        facts = self.facts()
        self.refuse("notice", "release", *base, "--helmet", one, "--helmet", "no-such", "--reason", "done", names=["--helmet", "no-such"])
        self.assertEqual(self.facts(), facts)
        answer = self.ask("notice", "release", *base, "--helmet", one, "--helmet", two, "--helmet", one, "--reason", "clip replaced")
        self.assertEqual((answer["released"], answer["helmets"]), (sorted([one, two]), sorted(rest)))
        progress = self.ask("notice", "progress", *base)["notices"]
        self.assertEqual([(n["notice"], n["held"]) for n in progress], [(done["notice"], len(rest))])
        self.refuse("notice", "release", *base, "--helmet", one, "--reason", "again", names=["--helmet", one])
        self.assertTrue(self.ask("book", "verify", "--book", str(self.book))["ok"])

    def test_serials_and_years_narrow_a_notice_and_what_is_not_known_is_counted(self):
        everything = self.issue("--sheet", "alder-a1", "--look")["held"]
        some = self.issue("--serials", f"{everything[0]}..{everything[3]}", "--look")["held"]
        self.assertIn(everything[0], some)
        self.assertIn(everything[3], some)
        self.assertLess(len(some), len(everything))
        by_year = self.issue("--sheet", "alder-a1", "--made", "2150..", "--look")
        self.assertEqual(by_year["held"], [])
        unknown = self.issue("--sheet", "alder-a1", "--made", "2150..", "--take-unknown", "--look")
        self.assertEqual(unknown["held"], by_year["not_known"])
        lot = self.issue("--lot", "no lot has this name", "--look")
        self.assertEqual(lot["held"], [])

    def test_text_for_people_says_the_same(self):
        done = self.issue("--sheet", "cedar-c3")
        text = self.snug("notice", "list", "--book", str(self.book)).out
        self.assertIn(done["notice"], text)
        self.assertIn(f"{len(done['held'])} helmet", text)
        self.book = self.folder / "other.book"
        self.new_book()
        self.assertIn("No maker's notice", self.snug("notice", "list", "--book", str(self.book)).out)

    def test_bad_input_is_named_in_one_line_and_nothing_is_written(self):
        book = ("--book", str(self.book))
        facts = self.facts()
        issue = ("notice", "issue", *book, "--at", AT, "--text", "x")
        self.refuse("notice", *book, names="subcommand")
        self.refuse("notice", "issue", *book, "--sheet", "alder-a1", names="--text")
        self.refuse(*issue, names="notice")
        self.refuse(*issue, "--sheet", "no-such", names=["--sheet", "no-such"])
        self.refuse(*issue, "--sheet", "alder-a1", "--day", "2027-01-01", names="day")
        self.refuse(*issue, "--sheet", "alder-a1", "--day", "soon", names="--day")
        for made in ("late", "..", "2021..2019", "20", "1889", "2019..x"):
            with self.subTest(made=made):
                self.refuse(*issue, "--made", made, names=["--made", "year"] if made in ("late", "..", "20", "2019..x") else "year")
        self.refuse(*issue, "--serials", "..", names="--serials")
        self.refuse(*issue, "--serials", "KX-9..KX-1", names="KX")
        self.refuse("notice", "progress", *book, "--notice", "x:1", names=["--notice", "x:1"])
        self.refuse("notice", "release", *book, "--notice", "x:1", "--helmet", "y", "--reason", "z", names=["--notice", "x:1"])
        self.assertEqual(self.facts(), facts)


class Seasons(Terminal):
    KEYS = {"season", "start", "end", "closed", "missing"}

    def test_past_seasons_are_closed_and_name_what_was_missing(self):
        self.ask("demo", "--out", str(self.book), "--seed", "7", "--athletes", "24", "--seasons", "3")
        answer = self.ask("season", "--book", str(self.book))
        self.assertEqual([s["season"] for s in answer["seasons"]], ["2024", "2025", "2026"])
        self.assertEqual(answer["now"], "2026")
        self.assertFalse(answer["between"])
        for season in answer["seasons"]:
            self.assertTrue(self.KEYS <= set(season))
            self.assertLess(season["start"], season["end"])
            self.assertGreaterEqual(season["athletes"], 24)
            self.assertGreater(sum(season["checks"].values()), 0)
        for season in answer["seasons"][:-1]:
            self.assertGreater(season["closed"], season["end"])
            self.assertFalse(season["open"])
            self.assertEqual(len(season["missing"]), 2)
            self.assertTrue(all(helmet["athlete_id"] for helmet in season["missing"]))
            self.assertEqual(sorted(helmet["turned_up"] is None for helmet in season["missing"]), [False, True])
            self.assertGreater(season["handed_in"], 22)
        last = answer["seasons"][-1]
        self.assertTrue(last["open"])
        self.assertIsNone(last["closed"])
        self.assertEqual((last["missing"], last["handed_in"]), ([], 0))
        text = self.snug("season", "--book", str(self.book)).out
        self.assertIn("2024: ", text)
        self.assertIn("missing: ", text)

    def test_a_new_book_has_one_open_season_without_days(self):
        self.new_book()
        answer = self.ask("season", "--book", str(self.book))
        self.assertEqual([(s["season"], s["start"], s["closed"], s["open"]) for s in answer["seasons"]], [("2026", None, None, True)])

    def test_bad_input_is_named_in_one_line(self):
        self.refuse("season", names="--book")
        self.refuse("season", "--book", self.path("none.book"), names="none.book")
        self.refuse("season", "--book", self.write("no.book", "not a Book"), names="no.book")


if __name__ == "__main__":
    unittest.main()
