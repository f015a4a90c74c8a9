# SPDX-License-Identifier: Apache-2.0
"""Runs the built `snug` as anybody would, in a folder of its own with identities of its own."""
import hashlib
import json
import os
import shutil
import subprocess
import tempfile
import unittest
from pathlib import Path

SNUG = os.environ["SNUG"]
ROOT = Path(__file__).resolve().parents[2]
SHEETS = ROOT / "demo/data/sheets"
AT = "2026-10-14T15:00:00-05:00"
NOBODY = 65534


class Answer:
    def __init__(self, done):
        self.code, self.out, self.err = done.returncode, done.stdout.decode("utf-8", "replace"), done.stderr.decode("utf-8", "replace")

    def json(self):
        return json.loads(self.out)


class Terminal(unittest.TestCase):
    def setUp(self):
        self.folder = Path(tempfile.mkdtemp(prefix="snugline-terminal-"))
        self.addCleanup(shutil.rmtree, self.folder, ignore_errors=True)
        self.book = self.folder / "season.book"

    def path(self, name):
        return str(self.folder / name)

    def write(self, name, content):
        data = content if isinstance(content, bytes) else content.encode("utf-8")
        (self.folder / name).write_bytes(data)
        return self.path(name)

    def snug(self, *arguments, before=None, program=SNUG, stdout=subprocess.PIPE, env=None):
        environment = {"PATH": os.environ.get("PATH", ""), "LC_ALL": "C.UTF-8", "SNUGLINE_KEYS": self.path("keys"), "TMPDIR": str(self.folder)}
        # Sanitizers say how to report through the environment.
        environment.update({k: v for k, v in os.environ.items() if k.endswith("SAN_OPTIONS")})
        environment.update(env or {})
        done = subprocess.run([program, *arguments], stdout=stdout, stderr=subprocess.PIPE, env=environment, cwd=self.folder,
                              preexec_fn=before, restore_signals=before is None, timeout=300, check=False)
        if stdout != subprocess.PIPE:
            done.stdout = b""
        return Answer(done)

    def ask(self, *arguments, code=0):
        """One JSON object and nothing else."""
        answer = self.snug(*arguments, "--json")
        self.assertEqual(answer.code, code, answer.err + answer.out)
        self.assertEqual(answer.err, "")
        self.assertEqual(answer.out.count("\n"), 1, answer.out)
        value = answer.json()
        self.assertIsInstance(value, dict)
        return value

    def refuse(self, *arguments, names, **how):
        """Exit 2, one line on standard error that names the place, nothing on standard output."""
        answer = self.snug(*arguments, **how)
        self.assertEqual(answer.code, 2, answer.err + answer.out)
        self.assertEqual(answer.out, "")
        self.assertEqual(answer.err.count("\n"), 1, answer.err)
        self.assertTrue(answer.err.endswith("\n"))
        self.assertTrue(answer.err.startswith("snug: "), answer.err)
        for name in [names] if isinstance(names, str) else names:
            self.assertIn(name, answer.err)
        return answer.err

    def new_book(self):
        self.ask("book", "new", "--book", str(self.book), "--team", "Harrow Creek High", "--season", "2026")

    def adopted_book(self, rows=3):
        """A Book with a roster and one helmet of Alder A1."""
        self.new_book()
        lines = ["Jersey,Last,First,Birth year"] + [f"{n:02d},Family{n},Given,2010" for n in range(rows)]
        self.ask("roster", self.write("roster.csv", "\n".join(lines) + "\n"), "--book", str(self.book), "--at", AT)
        return self.book

    def state(self, path=None):
        """Every byte of a Book as other programs would see it: the file, and what is still beside it."""
        path = Path(path or self.book)
        digest = hashlib.sha256()
        for part in (path, Path(str(path) + "-wal")):
            digest.update(part.read_bytes() if part.exists() else b"none")
        return digest.hexdigest()

    def facts(self):
        return self.ask("book", "info", "--book", str(self.book))["facts"]


def as_nobody():
    """In the child: leave root behind, so that permissions bind; for anybody else they bind already."""
    if os.getuid() == 0:
        os.setgroups([])
        os.setgid(NOBODY)
        os.setuid(NOBODY)
