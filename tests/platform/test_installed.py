# SPDX-License-Identifier: Apache-2.0
"""The installed programs, not those of the build tree: installed to a folder of their own, the build's shared files out of sight."""
import os
import shutil
import subprocess
import tempfile
import unittest
from pathlib import Path

from terminal import AT, Terminal

BUILD = os.environ["SNUGLINE_BUILD"]


class Installed(Terminal):
    @classmethod
    def setUpClass(cls):
        cls.prefix = Path(tempfile.mkdtemp(prefix="snugline-installed-"))
        cls.addClassCleanup(shutil.rmtree, cls.prefix, ignore_errors=True)
        done = subprocess.run(["cmake", "--install", BUILD, "--prefix", str(cls.prefix)], capture_output=True, text=True, check=False)
        if done.returncode:
            raise AssertionError(done.stdout + done.stderr)
        cls.program = str(cls.prefix / "bin/snug")

    def installed(self, *arguments, code=0):
        answer = self.snug(*arguments, program=self.program)
        self.assertEqual(answer.code, code, answer.err + answer.out)
        return answer

    def test_the_installed_program_tests_itself_and_finds_nothing(self):
        answer = self.installed("check", "--json").json()
        self.assertTrue(answer["ok"], answer)

    def test_the_installed_program_finds_its_own_sheets_and_makes_a_demo(self):
        self.assertIn('"size":"M"', self.installed("size", "--sheet", "alder-a1", "--tape", "565mm", "--json").out)
        self.installed("demo", "--out", str(self.book), "--athletes", "8")
        self.assertIn("Do not wear", self.installed("due", "--book", str(self.book), "--at", AT).out)

    def test_fonts_and_licences_are_installed_beside_it(self):
        for name in ("share/snugline/fonts/B612-Regular.otf", "share/snugline/fonts/OFL.txt", "share/doc/snugline/LICENSE"):
            self.assertTrue((self.prefix / name).is_file(), name)

    def test_nothing_of_the_build_folder_is_named_in_what_is_installed(self):
        for path in (self.prefix / "bin").iterdir():
            dynamic = subprocess.run(["readelf", "-d", str(path)], capture_output=True, text=True, check=True).stdout
            self.assertNotIn(BUILD, dynamic)


class InstalledApp(Installed):
    """Where the app is built: it starts from where it was installed, on the demo's Book, and draws its screens."""

    def test_the_installed_app_draws_its_screens_without_a_word_of_complaint(self):
        environment = dict(os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software", HOME=str(self.folder),
                           XDG_DATA_HOME=self.path("data"), XDG_CONFIG_HOME=self.path("config"), XDG_RUNTIME_DIR=self.path("runtime"), LC_ALL="C.UTF-8")
        os.mkdir(self.path("runtime"), 0o700)
        done = subprocess.run([str(self.prefix / "bin/snugline-demo"), "--gallery", self.path("gallery")], env=environment,
                              capture_output=True, text=True, timeout=600, check=False)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)
        self.assertEqual(done.stderr, "")
        pictures = list((self.folder / "gallery").glob("*.png"))
        self.assertGreater(len(pictures), 20)
        for picture in pictures:
            self.assertEqual(picture.read_bytes()[:8], b"\x89PNG\r\n\x1a\n", picture.name)
            self.assertGreater(picture.stat().st_size, 4000, picture.name)


if __name__ == "__main__":
    unittest.main()
