# SPDX-License-Identifier: Apache-2.0
"""The demo driven from outside its process, as a screen reader drives it: things are found and pressed by the names that are read out, and what
is shown is what is read. Each flow has a display, a session bus, an accessibility bus and a Book of its own."""
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
import time

PATIENCE = 60  # seconds until something that does not come is given up
SIZE = "834x1194"
PRESSED = "button|list item|toggle|check|radio"


def begin(flow):
    """Runs this program again inside a display and a bus of its own; there, the flow."""
    if "HEARD_FOLDER" in os.environ:
        return flow()
    with tempfile.TemporaryDirectory(prefix="heard-") as folder:
        for name in ("data", "home", "runtime", "copies"):
            os.mkdir(os.path.join(folder, name), 0o700)
        ready, told = os.pipe()
        display = subprocess.Popen(["Xvfb", "-displayfd", str(told), "-screen", "0", SIZE + "x24", "-nolisten", "tcp", "-noreset"], pass_fds=(told,),
                                   stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        os.close(told)
        try:
            number = os.read(ready, 16).decode().strip()
            surroundings = dict(os.environ, HEARD_FOLDER=folder, DISPLAY=":" + number, XDG_RUNTIME_DIR=os.path.join(folder, "runtime"))
            surroundings.pop("WAYLAND_DISPLAY", None)
            return subprocess.run(["dbus-run-session", "--", sys.executable, *sys.argv], env=surroundings).returncode
        finally:
            display.terminate()
            display.wait()


class Missing(Exception):
    pass


class App:
    """The demo on a Book of its own. bin: where the programs of the build lie."""

    def __init__(self, programs):
        import pyatspi
        from gi.repository import GLib
        self.ax, self.glib = pyatspi, GLib
        self.folder = os.environ["HEARD_FOLDER"]
        self.programs = programs
        self.book = os.path.join(self.folder, "data", "snugline-demo", "harrow-creek.snugbook")
        self.pressed = 0
        self.copies = 0
        self.start()

    def start(self):
        surroundings = dict(os.environ, QT_QPA_PLATFORM="xcb", QT_QUICK_BACKEND="software", QT_LINUX_ACCESSIBILITY_ALWAYS_ON="1", LC_ALL="C.UTF-8",
                            XDG_DATA_HOME=os.path.join(self.folder, "data"), HOME=os.path.join(self.folder, "home"))
        self.log = os.path.join(self.folder, "log")
        with open(self.log, "ab") as log:
            self.process = subprocess.Popen([os.path.join(self.programs, "snugline-demo")], env=surroundings, stdout=log, stderr=log)
        self.since = time.monotonic()
        self.until(lambda: len(self.texts()) > 3, "the first screen")
        # There is no window manager to give it the keys.
        subprocess.run(["xdotool", "search", "--onlyvisible", "--name", "^Snugline$", "windowfocus"], check=True, stdout=subprocess.DEVNULL)

    def stop(self):
        self.process.terminate()
        self.process.wait()

    def kill(self):
        """As a flat battery does."""
        self.process.kill()
        self.process.wait()

    def until(self, is_so, what):
        """Waits in the loop that hears the app, until what is meant is so."""
        end = time.monotonic() + PATIENCE
        context = self.glib.MainContext.default()
        while True:
            answer = is_so()
            if answer:
                return answer
            if time.monotonic() > end or self.process.poll() is not None:
                raise Missing(f"{what} did not come; shown: {self.texts()}")
            is_due = []
            source = self.glib.timeout_add(100, lambda: is_due.append(True))
            while not is_due:
                context.iteration(True)
            del source

    def root(self):
        desktop = self.ax.Registry.getDesktop(0)
        for i in range(desktop.childCount):
            child = desktop.getChildAtIndex(i)
            if child is not None and "snugline" in (child.name or ""):
                return child
        return None

    def nodes(self):
        """Everything that shows, in the order in which it is read: (role, name, the thing itself)."""
        found = []

        def walk(thing, depth):
            try:
                if depth > 1 and not thing.getState().contains(self.ax.STATE_SHOWING):
                    return
                found.append((thing.getRoleName(), thing.name or "", thing))
                for i in range(thing.childCount):
                    child = thing.getChildAtIndex(i)
                    if child is not None:
                        walk(child, depth + 1)
            except Exception as gone:  # a thing that went away while it was looked at shows no more
                if "process" in str(gone):
                    raise
        root = self.root()
        if root is not None:
            root.clear_cache()
            walk(root, 0)
        return found

    def texts(self):
        return [name for _, name, _ in self.nodes() if name]

    def shows(self, pattern):
        return any(re.search(pattern, name) for name in self.texts())

    def see(self, pattern):
        self.until(lambda: self.shows(pattern), pattern)

    def find(self, pattern, role=PRESSED, nth=0):
        hits = [thing for r, name, thing in self.nodes()
                if re.search(role, r) and re.search(pattern, name) and thing.getState().contains(self.ax.STATE_ENABLED)]
        return hits[nth] if len(hits) > nth else None

    def press(self, pattern, role=PRESSED, nth=0):
        """Presses what has that name, and waits for what comes of it."""
        thing = self.until(lambda: self.find(pattern, role, nth), f"something to press named {pattern}")
        before = self.texts()
        action = thing.queryAction()
        names = [action.getName(i).lower() for i in range(action.nActions)]
        for name in ("press", "toggle"):
            if name in names:
                action.doAction(names.index(name))
                self.pressed += 1
                self.until(lambda: self.texts() != before, f"an answer to {pattern}")
                return
        raise Missing(f"{pattern} can do only {names}")

    def maybe(self, pattern):
        """Presses it where there is one."""
        if self.find(pattern) is None:
            return False
        self.press(pattern)
        return True

    def type(self, text, end="Return"):
        """As a hand scanner does."""
        subprocess.run(["xdotool", "type", "--delay", "4", "--", text], check=True)
        subprocess.run(["xdotool", "key", end], check=True)

    def digits(self, number):
        for digit in number:
            self.press(f"^{digit}$", "button")

    # What a fresh process says.
    def snug(self, *arguments):
        surroundings = dict(os.environ, SNUGLINE_KEYS=os.path.join(self.folder, "copies", "keys"))
        told = subprocess.run([os.path.join(self.programs, "snug"), *arguments, "--json"], env=surroundings, capture_output=True, text=True)
        if told.returncode != 0:
            raise Missing(f"snug {arguments}: {told.stderr}")
        return json.loads(told.stdout)

    def copy(self):
        """The Book as a flat battery would leave it at this moment, through its own backup."""
        self.copies += 1
        taken, backup, restored = (os.path.join(self.folder, "copies", f"{self.copies}.{end}") for end in ("taken", "backup", "snugbook"))
        for end in ("", "-wal"):
            if os.path.exists(self.book + end):
                shutil.copyfile(self.book + end, taken + end)
        self.snug("book", "backup", "--book", taken, "--out", backup)
        self.snug("book", "restore", "--book", restored, "--from", backup)
        return restored

    def now(self):
        """Of the demo, to the second; its day begins at two in the afternoon."""
        minutes, seconds = divmod(int(time.monotonic() - self.since), 60)
        return f"2026-10-14T14:{minutes:02}:{seconds:02}-05:00"

    def due(self):
        return self.snug("due", "--book", self.copy(), "--at", self.now())["rows"]
