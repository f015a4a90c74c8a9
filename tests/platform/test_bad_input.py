# SPDX-License-Identifier: Apache-2.0
"""Files that are not what they should be, folders that may not be written, disks that are full: one sentence, nothing lost."""
import os
import resource
import shutil
import signal
import sqlite3
import subprocess
import unittest

from terminal import AT, SNUG, Terminal, as_nobody

PNG = (b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR\x00\x00\x00\x01\x00\x00\x00\x01\x08\x06\x00\x00\x00\x1f\x15\xc4\x89"
       b"\x00\x00\x00\rIDATx\x9cc\xfa\xcf\x00\x00\x02\x07\x01\x02\x9a\x1c1q\x00\x00\x00\x00IEND\xaeB`\x82")
ROSTER = "Jersey,Last,First\n" + "".join(f"{n},Kin{n},{'Given' * 12}\n" for n in range(1, 900))


class NotABook(Terminal):
    def commands(self, path):
        csv = self.write("roster.csv", "Jersey,Last,First\n07,Ames,Jo\n")
        tags = self.write("tags.txt", "T-1\n")
        return [["due", "--book", path, "--at", AT], ["roster", csv, "--book", path], ["take-in", "--book", path, "--tags", tags],
                ["book", "info", "--book", path], ["book", "verify", "--book", path], ["book", "rebuild", "--book", path],
                ["book", "backup", "--book", path, "--out", self.path("out.backup")]]

    def assert_refused_and_left_alone(self, name):
        path = self.path(name)
        before = self.state(path)
        for command in self.commands(path):
            with self.subTest(command=command[:2]):
                self.refuse(*command, names=name)
                self.assertEqual(self.state(path), before)
        self.assertFalse(os.path.exists(self.path("out.backup")))

    def test_a_picture_a_text_and_an_empty_file_are_no_books(self):
        for name, content in {"photo.png": PNG, "notes.txt": "07 Ames\n", "empty.book": b""}.items():
            self.write(name, content)
            self.assert_refused_and_left_alone(name)

    def test_a_database_of_another_program_is_refused_and_left_alone(self):
        foreign = sqlite3.connect(self.path("foreign.db"))
        foreign.execute("create table songs(title text)")
        foreign.execute("insert into songs values('one')")
        foreign.commit()
        foreign.close()
        self.assert_refused_and_left_alone("foreign.db")

    def test_a_book_cut_short_is_refused_and_left_alone(self):
        self.adopted_book(rows=200)
        whole = self.book.read_bytes()
        for share in (2, 3, 10):
            name = f"cut{share}.book"
            self.write(name, whole[:len(whole) * (share - 1) // share // 4096 * 4096 + 100])
            self.assert_refused_and_left_alone(name)

    def test_a_book_of_a_newer_format_is_refused_and_left_alone(self):
        self.adopted_book()
        newer = sqlite3.connect(self.book)
        version = newer.execute("pragma user_version").fetchone()[0]
        newer.execute(f"pragma user_version = {version + 1000}")
        newer.commit()
        newer.close()
        self.assert_refused_and_left_alone("season.book")

    def test_a_book_that_is_not_there_is_not_made(self):
        for command in self.commands(self.path("none.book")):
            self.refuse(*command, names="none.book")
        self.assertFalse(os.path.exists(self.path("none.book")))

    def test_a_folder_is_no_book(self):
        os.mkdir(self.path("folder"))
        for command in self.commands(self.path("folder")):
            self.refuse(*command, names="folder")


class NotARoster(Terminal):
    def test_a_picture_and_other_files_that_are_no_text_are_refused(self):
        self.adopted_book()
        before = self.state()
        for name, content in {"photo.csv": PNG, "random.csv": bytes(range(256)) * 40, "empty.csv": b"", "nohead.csv": "1,2\n3,4\n"}.items():
            with self.subTest(name=name):
                self.refuse("roster", self.write(name, content), "--book", str(self.book), "--at", AT, names=name)
        self.refuse("roster", self.path("none.csv"), "--book", str(self.book), names="none.csv")
        self.refuse("roster", str(self.folder), "--book", str(self.book), names=str(self.folder))
        self.assertEqual(self.state(), before)

    def test_a_list_of_scans_that_is_a_picture_is_refused(self):
        self.adopted_book()
        before = self.state()
        self.refuse("take-in", "--book", str(self.book), "--tags", self.write("photo.png", PNG), names="photo.png")
        self.assertEqual(self.state(), before)


class NoPlace(Terminal):
    def setUp(self):
        super().setUp()
        # Anybody must be able to run the program from here, whatever the build folder lies in.
        self.program = shutil.copy(SNUG, self.path("snug"))
        os.chmod(self.folder, 0o755)

    def open_to_nobody(self, *names):
        for name in names:
            os.chmod(self.path(name), 0o777 if os.path.isdir(self.path(name)) else 0o666)

    def test_a_folder_that_may_only_be_read_is_named_and_nothing_is_made_in_it(self):
        os.mkdir(self.path("locked"))
        os.mkdir(self.path("keys"))
        self.open_to_nobody("keys")
        os.chmod(self.path("locked"), 0o555)
        how = {"before": as_nobody, "program": self.program}
        self.refuse("book", "new", "--book", self.path("locked/season.book"), names="locked/season.book", **how)
        self.refuse("demo", "--out", self.path("locked/demo.book"), "--athletes", "4", names="locked/demo.book", **how)
        self.assertEqual(os.listdir(self.path("locked")), [])

    def test_a_book_in_a_folder_that_may_only_be_read_takes_nothing_in_and_keeps_what_it_has(self):
        os.mkdir(self.path("locked"))
        self.book = self.folder / "locked" / "season.book"
        self.adopted_book()
        for path in (self.folder / "keys").rglob("*"):
            os.chmod(path, 0o666)
        self.open_to_nobody("keys")
        os.chmod(self.book, 0o444)
        os.chmod(self.path("locked"), 0o555)
        before = self.state()
        how = {"before": as_nobody, "program": self.program}
        self.refuse("roster", self.write("more.csv", "Jersey,Last,First\n55,New,Nan\n"), "--book", str(self.book), "--at", AT, names="season.book", **how)
        self.refuse("book", "backup", "--book", str(self.book), "--out", self.path("locked/b"), names="locked", **how)
        self.assertEqual(self.state(), before)
        self.assertEqual([n for n in os.listdir(self.path("locked")) if n == "b"], [])

    def test_identities_that_cannot_be_kept_are_named(self):
        self.refuse("book", "new", "--book", str(self.book), names="/proc", env={"SNUGLINE_KEYS": "/proc/keys"})
        self.assertFalse(self.book.exists())

    def test_a_file_where_a_folder_should_be_is_named(self):
        plain = self.write("plain", "x")
        self.refuse("book", "new", "--book", plain + "/season.book", names="plain/season.book")

    def test_a_second_opener_is_told_that_the_book_is_in_use(self):
        self.adopted_book()
        holder = sqlite3.connect(self.book, isolation_level=None)
        holder.execute("begin immediate")
        self.refuse("roster", self.write("more.csv", "Jersey,Last,First\n55,New,Nan\n"), "--book", str(self.book), "--at", AT, names="season.book")
        holder.execute("rollback")
        holder.close()
        self.assertTrue(self.ask("book", "verify", "--book", str(self.book))["ok"])


class FullDisk(Terminal):
    """A limit on the size of files stands for a full disk everywhere; a small disk of memory is used beside it where one may be mounted."""

    def limited(self, size):
        def limit():
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
            resource.setrlimit(resource.RLIMIT_FSIZE, (size, size))
        return limit

    def test_a_roster_that_does_not_fit_leaves_the_book_as_it_was(self):
        self.adopted_book()
        facts, size = self.facts(), os.path.getsize(self.book)
        roster = self.write("many.csv", ROSTER)
        for room in (0, 4096, 65536, 131072):
            with self.subTest(room=room):
                self.refuse("roster", roster, "--book", str(self.book), "--at", AT, names="season.book", before=self.limited(room))
                answer = self.ask("book", "verify", "--book", str(self.book))
                self.assertEqual((answer["ok"], answer["facts"]), (True, facts))
        self.assertLess(size, 10 ** 7)
        self.assertEqual(self.ask("roster", roster, "--book", str(self.book), "--at", AT)["added"], 899)

    def test_a_new_book_that_does_not_fit_leaves_nothing_behind(self):
        for room in (0, 1024, 8192):
            with self.subTest(room=room):
                self.refuse("book", "new", "--book", str(self.book), names="", before=self.limited(room))
                left = [n for n in os.listdir(self.folder) if n.startswith("season.book")]
                self.assertEqual(left, [])

    def test_a_backup_that_does_not_fit_leaves_nothing_behind(self):
        self.adopted_book(rows=300)
        self.refuse("book", "backup", "--book", str(self.book), "--out", self.path("b.backup"), names="b.backup", before=self.limited(1000))
        self.assertEqual([n for n in os.listdir(self.folder) if n.startswith("b.backup")], [])
        self.assertTrue(self.ask("book", "verify", "--book", str(self.book))["ok"])

    def test_a_small_disk_that_fills_up_loses_nothing(self):
        self.adopted_book()
        facts = self.facts()
        roster = self.write("many.csv", ROSTER)
        os.mkdir(self.path("disk"))
        script = ('mount -t tmpfs -o size=256k none disk && cp season.book disk/ && "$1" roster "$2" --book disk/season.book --at "$3"; '
                  'echo "code $?" >&2; "$1" book verify --book disk/season.book --json')
        spaces = ["unshare", "--mount"] + ([] if os.getuid() == 0 else ["--map-root-user"])
        environment = dict(os.environ, SNUGLINE_KEYS=self.path("keys"), LC_ALL="C.UTF-8")
        done = subprocess.run([*spaces, "sh", "-c", script, "sh", SNUG, roster, AT], cwd=self.folder, env=environment,
                              capture_output=True, text=True, timeout=120, check=False)
        if "code 2" not in done.stderr:
            # No disk may be mounted here; the limit on file size asks the same of the program.
            self.assertNotEqual(done.returncode, 0, done.stderr)
            self.refuse("roster", roster, "--book", str(self.book), "--at", AT, names="season.book", before=self.limited(65536))
            self.assertEqual(self.facts(), facts)
            return
        said = done.stderr.strip().split("\n")
        self.assertEqual(len(said), 2, done.stderr)
        self.assertIn("disk/season.book: the disk is full", said[0])
        self.assertIn(f'"facts":{facts},', done.stdout)
        self.assertIn('"ok":true', done.stdout)


if __name__ == "__main__":
    unittest.main()
