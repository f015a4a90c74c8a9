# SPDX-License-Identifier: Apache-2.0
"""`snug match` and `snug plan`: answers, keys, exit codes, and nothing half done."""
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
        self.assertEqual({"held", "lapses"}, {unit["code"] for unit in answer["left_out"]})

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


if __name__ == "__main__":
    unittest.main()
