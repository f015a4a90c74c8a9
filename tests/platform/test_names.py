# SPDX-License-Identifier: Apache-2.0
"""No name of an athlete in anything that a program prints beside its answer, nor in the name of any file it makes."""
import os
import re
import signal
import subprocess
import unittest
from pathlib import Path

from terminal import AT, Terminal

BIN = Path(os.environ["SNUGLINE_BUILD"]) / "bin"
# Everything that Qt and we could say is said.
LOUD = {"QT_LOGGING_RULES": "*=true", "QT_ASSUME_STDERR_HAS_CONSOLE": "1", "QT_FATAL_WARNINGS": "0", "QML_IMPORT_TRACE": "0"}


class Names(Terminal):
    def setUp(self):
        super().setUp()
        self.ask("demo", "--out", str(self.book))
        rows = self.ask("due", "--book", str(self.book), "--at", AT)["rows"]
        self.names = {row["athlete"] for row in rows}
        self.assertEqual(len(self.names), 64)
        words = {word for name in self.names for word in name.split()}
        families = {name.split()[-1] for name in self.names}
        self.assertGreater(len(families), 40)
        # A family name anywhere, also inside a word; a given name as a word of its own, as "Ari" stands inside many.
        self.pattern = re.compile("|".join([re.escape(f) for f in sorted(families)] + [rf"\b{re.escape(w)}\b" for w in sorted(words - families)]),
                                  re.IGNORECASE)

    def find(self, text, where):
        match = self.pattern.search(text)
        self.assertIsNone(match, f"{where}: {match and match.group(0)} in ...{text[max(0, match.start() - 80):match.end() + 80] if match else ''}")

    def find_in_files(self):
        paths = [path.relative_to(self.folder) for path in self.folder.rglob("*")]
        self.assertGreater(len(paths), 1)
        for path in paths:
            self.find(str(path), "the name of a file")

    def app(self, program, *arguments, until=None, **env):
        environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software", HOME=str(self.folder), TMPDIR=str(self.folder),
                           XDG_DATA_HOME=self.path("data"), XDG_CONFIG_HOME=self.path("config"), XDG_RUNTIME_DIR=self.path("runtime"),
                           XDG_DOCUMENTS_DIR=self.path("papers"), SNUGLINE_KEYS=self.path("keys"), LC_ALL="C.UTF-8", **LOUD, **env)
        os.makedirs(self.path("runtime"), 0o700, exist_ok=True)
        log = Path(self.path("log.txt"))
        with open(log, "wb") as out:
            process = subprocess.Popen([str(BIN / program), *arguments], env=environment, cwd=self.folder, stdout=out, stderr=subprocess.STDOUT)
            try:
                process.wait(timeout=until or 900)
            except subprocess.TimeoutExpired:
                process.send_signal(signal.SIGABRT)
                process.wait(timeout=60)
        said = log.read_text(encoding="utf-8", errors="replace")
        log.unlink()
        return process.returncode, said

    def test_the_terminal_says_no_name_beside_its_answers_also_when_it_refuses(self):
        book = str(self.book)
        self.write("roster.csv", "jersey,family,given\n" + "".join(f"{i},{n.split()[-1]},{n.split()[0]}\n" for i, n in enumerate(sorted(self.names)[:20])) + "x,,\n")
        self.write("torn.csv", b"jersey,family\n7,\xff\xfe\xfd")
        commands = [["due", "--book", book, "--at", AT], ["match", "--book", book], ["plan", "--book", book, "--season", "2026"],
                    ["book", "verify", book], ["book", "info", book], ["book", "rebuild", book], ["book", "verify", "--book", book],
                    ["roster", self.path("roster.csv"), "--book", book], ["roster", self.path("torn.csv"), "--book", book],
                    ["roster", self.path("none.csv"), "--book", book], ["due", "--book", book, "--at", "yesterday"],
                    ["due", "--book", book, "--at", AT, "--temperature", "4"], ["match", "--book", self.path("none.book")],
                    ["book", "backup", book, self.path("copy.snugbak")], ["book", "restore", self.path("copy.snugbak"), book]]
        refused = 0
        for command in commands:
            answer = self.snug(*command)
            refused += answer.code != 0
            self.find(answer.err, " ".join(command[:2]))
        self.assertGreater(refused, 4)
        damaged = bytearray(self.book.read_bytes())
        for at in range(4096, len(damaged), 997):
            damaged[at] ^= 0x55
        self.write("damaged.book", bytes(damaged))
        for command in (["book", "verify"], ["due", "--at", AT, "--book"], ["book", "info"]):
            answer = self.snug(*command, self.path("damaged.book"))
            self.find(answer.err, "a damaged Book")
        self.find_in_files()


class NamesApp(Names):
    def test_the_app_says_no_name_on_a_walk_through_its_screens_with_every_log_on(self):
        code, said = self.app("snugline-demo", "--gallery", self.path("gallery"), "--size", "834x1194")
        self.assertEqual(code, 0, said[-2000:])
        self.assertGreater(len(said), 10_000)  # the logs were on
        self.find(said, "the app's log")
        self.find_in_files()

    def test_the_app_says_no_name_when_it_is_aborted_or_cannot_open_its_book(self):
        code, said = self.app("snugline", "--book", str(self.book), until=20)
        self.assertEqual(code, -signal.SIGABRT, said[-2000:])
        self.assertGreater(len(said), 10_000)
        self.find(said, "an aborted app")
        # A forced error: the Book is damaged, the place of its settings cannot be written.
        self.write("damaged.book", self.book.read_bytes()[:60_000] + b"\0" * 4096)
        code, said = self.app("snugline", "--book", self.path("damaged.book"), until=20)
        self.find(said, "a damaged Book")
        self.find_in_files()


if __name__ == "__main__":
    unittest.main()
