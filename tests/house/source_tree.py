# SPDX-License-Identifier: Apache-2.0
"""The files of the project as the house rules see them, and a reader of string literals that knows what call they stand in."""
import re
import subprocess
from pathlib import Path

# Never part of the project: what builds and demos write.
NOT_OURS = {".git", "build", "gallery", "__pycache__", ".cache"}
CPP = (".cpp", ".h")
TEXT = CPP + (".qml", ".py", ".cmake", ".txt", ".md", ".json", ".sh", ".ini", ".yml", ".ts", ".R", "")


class Tree:
    """Tracked files when the root is a git checkout, all files otherwise (a planted example, an unpacked archive)."""

    def __init__(self, root):
        self.root = Path(root).resolve()
        self.names = sorted(self._tracked() or self._walked())
        self._texts = {}

    def _tracked(self):
        if not (self.root / ".git").exists():
            return []
        listed = subprocess.run(["git", "-c", f"safe.directory={self.root}", "ls-files", "-z"], cwd=self.root, capture_output=True, check=False)
        names = listed.stdout.decode().split("\0")
        return [n for n in names if n and (self.root / n).is_file()]

    def _walked(self):
        files = (p.relative_to(self.root) for p in self.root.rglob("*") if p.is_file())
        return [str(p) for p in files if not NOT_OURS & set(p.parts)]

    def text(self, name):
        if name not in self._texts:
            raw = (self.root / name).read_bytes()
            self._texts[name] = "" if b"\0" in raw else raw.decode("utf-8", "replace")
        return self._texts[name]

    def under(self, *folders, ends=None):
        return [n for n in self.names if any(n.startswith(f + "/") for f in folders) and (ends is None or n.endswith(ends))]

    def ending(self, *ends):
        return [n for n in self.names if n.endswith(ends)]

    def texts(self):
        """Names of all files that are text."""
        return [n for n in self.names if Path(n).suffix in TEXT and self.text(n)]


def line_of(text, offset):
    return text.count("\n", 0, offset) + 1


TOKEN = re.compile(
    r"""(?P<comment>//[^\n]*|/\*.*?\*/)
      |R"(?P<mark>[^\s()\\]{0,16})\((?P<raw>.*?)\)(?P=mark)"
      |"(?P<double>(?:[^"\\\n]|\\.)*)"
      |'(?P<single>(?:[^'\\\n]|\\.)*)'
      |`(?P<back>(?:[^`\\]|\\.)*)`
      |(?P<name>[A-Za-z_][\w.:]*)
      |(?P<open>[({\[])|(?P<close>[)}\]])
      |(?P<other>[^\s])""",
    re.VERBOSE | re.DOTALL,
)


class Literal:
    """One string literal: its text, its line, the calls around it (innermost last) and the two signs before it."""

    def __init__(self, value, line, calls, before):
        self.value, self.line, self.calls, self.before = value, line, calls, before


def literals(text):
    """String literals of C++, QML or JavaScript; comments and preprocessor lines left out. A number's digit marks are not quotes."""
    text = re.sub(r"(?<=[0-9a-fA-F])'(?=[0-9a-fA-F])", "", text)
    text = re.sub(r"^[ \t]*#[^\n]*", lambda m: " " * len(m.group(0)), text, flags=re.MULTILINE)
    found, stack, last, before = [], [], "", ""
    for token in TOKEN.finditer(text):
        kind = token.lastgroup
        if kind == "comment":
            continue
        value = next((token.group(g) for g in ("raw", "double", "single", "back") if token.group(g) is not None), None)
        if value is not None:
            found.append(Literal(value, line_of(text, token.start()), [s for s in stack if s], before[-3:]))
        elif kind == "open":
            stack.append(last if token.group(0) == "(" else "")
        elif kind == "close" and stack:
            stack.pop()
        last = token.group(0) if kind == "name" else ""
        before += token.group(0) if len(token.group(0)) == 1 else " "
    return found


def without_comments(text):
    """C++ or QML with comments and the insides of literals blanked, line numbers kept."""
    def blank(token):
        keeps = token.lastgroup in ("name", "open", "close", "other")
        return token.group(0) if keeps else re.sub(r"[^\n]", " ", token.group(0))
    return TOKEN.sub(blank, text)
