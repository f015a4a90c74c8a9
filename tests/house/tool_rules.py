# SPDX-License-Identifier: Apache-2.0
"""Rules that other tools know: clang-format, qmllint, clang-tidy. A missing tool is a finding, never a pass."""
import hashlib
import json
import os
import re
import shutil
import subprocess
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from source_tree import CPP


def tool(*names):
    for name in names:
        path = shutil.which(name) or (name if os.path.isabs(name) and os.access(name, os.X_OK) else None)
        if path:
            return path
    return None


def run(arguments, cwd):
    done = subprocess.run(arguments, cwd=cwd, capture_output=True, text=True, check=False)
    return done.returncode, done.stdout + done.stderr


def formatted(tree, build=None):
    path = tool("clang-format-14", "clang-format")
    if not path:
        yield "clang-format is not installed"
        return
    names = tree.ending(*CPP)
    for at in range(0, len(names), 40):
        code, said = run([path, "--dry-run", "-Werror", "--style=file", *names[at:at + 40]], tree.root)
        if code:
            yield from sorted({f"{m}: not formatted, run clang-format -i" for m in re.findall(r"^(\S+?):\d+:\d+: error", said, re.M)}) or [said]


# What qmllint of Qt 6.4 does not know yet: that a delegate sees the ids of its file, that a list has the methods of a JavaScript array, that
# a map's keys can be read like properties, that a url turns to a string, what a Loader has loaded, and Qt.callLater.
UNQUALIFIED = re.compile(r":(\d+):(\d+): Unqualified access")
KNOWN_GAPS = re.compile(r'Property "(?:filter|map|every|some|find|findIndex|indexOf|includes|reduce|slice|concat|join)" not found on type "(?:QVariantList|QStringList)"'
                        r'|not found on type "(?:QVariantMap|QObject)"|Property "toString" not found on type "QUrl"|Property "callLater" is a QJSValue property'
                        r'|Type warnings occurred while evaluating file:$')


def is_known_gap(text, finding):
    if KNOWN_GAPS.search(finding):
        return True
    place = UNQUALIFIED.search(finding)
    if not place:
        return False
    line = text.split("\n")[int(place.group(1)) - 1]
    name = re.match(r"\w+", line[int(place.group(2)) - 1:])
    return bool(name) and re.search(rf"\bid:\s*{name.group(0)}\b", text) is not None


def qml_linted(tree, build):
    path = tool("/usr/lib/qt6/bin/qmllint", "qmllint6", "qmllint")
    if not path:
        yield "qmllint is not installed"
        return
    imports = []
    for folder in ("qml_modules", "qml"):
        if build and (Path(build) / folder).is_dir():
            imports += ["-I", str(Path(build) / folder)]

    def lint(name):
        code, said = run([path, *imports, name], tree.root)
        found = [f"{name}: {line}" for line in said.strip().split("\n") if re.match(r"(Warning|Error)", line)]
        judged = [finding for finding in found if not is_known_gap(tree.text(name), finding)]
        if found:
            return judged
        return [f"{name}: qmllint failed, {said.strip()[:300]}"] if code else []

    with ThreadPoolExecutor(os.cpu_count()) as pool:
        for findings in pool.map(lint, tree.under("qml", ends=".qml")):
            yield from findings


def include_closure(tree, name, known):
    """Names of our files that a file includes, itself among them, so that the cache knows what its result stands on."""
    if name in known:
        return known[name]
    known[name] = {name}
    closure = {name}
    for included in re.findall(r'^[ \t]*#[ \t]*include[ \t]*"([^"]+)"', tree.text(name), re.M):
        beside = str(Path(name).parent / included)
        for candidate in (included, beside):
            if candidate in tree.names:
                closure |= include_closure(tree, candidate, known)
    known[name] = closure
    return closure


def changed_since_mark(tree):
    """Names that differ from the commit at which all of core was found clean (.ci/tidy_mark); nothing where git does not know it."""
    mark = tree.root / ".ci" / "tidy_mark"
    code, said = run(["git", "diff", "--name-only", mark.read_text().strip() if mark.is_file() else "no-mark"], tree.root)
    return set(said.split("\n")) | set(run(["git", "ls-files", "--others", "--exclude-standard"], tree.root)[1].split("\n")) if code == 0 else None


def worth_tidying(tree, names):
    """Files that changed since the mark and, for each header that did, one file that includes it; all of them with SNUGLINE_TIDY=all."""
    changed = None if os.environ.get("SNUGLINE_TIDY") == "all" else changed_since_mark(tree)
    if changed is None:
        return names
    chosen = {name for name in names if name in changed}
    for header in (name for name in changed if name.endswith(".h")):
        including = [name for name in names if f'"{header}"' in tree.text(name)]
        if including and not chosen & set(including):
            chosen.add(min(including, key=lambda name: (Path(name).stem != Path(header).stem, name)))
    return sorted(chosen)


def tidied(tree, build):
    """core and the terminal through clang-tidy, each file once for each state of what it includes."""
    path = tool("clang-tidy-14", "clang-tidy")
    if not path:
        yield "clang-tidy is not installed"
        return
    # A folder of its own, configured without precompiled headers and unity, so that each file is compiled for itself.
    each = Path(build or tree.root / "build")
    if (tree.root / "CMakeLists.txt").is_file():
        each = each / "tidy"
    code, said = (0, "") if not (tree.root / "CMakeLists.txt").is_file() else run(["cmake", "-G", "Ninja", "-S", str(tree.root), "-B", str(each), "-DSNUGLINE_FAST=OFF", "-DSNUGLINE_APP=OFF", "-DSNUGLINE_TESTS=OFF",
                      "-DSNUGLINE_BENCH=OFF"], tree.root)
    if code:
        yield f"the folder for clang-tidy could not be configured: {said.strip()[-300:]}"
        return
    compiled = {str(Path(c["file"]).resolve().relative_to(tree.root)) for c in json.loads((each / "compile_commands.json").read_text())
                if Path(c["file"]).resolve().is_relative_to(tree.root)}
    names = [n for n in tree.under("core", "platform/cli", "platform/system", ends=".cpp") if n in compiled]
    if not names:
        yield "no file of core is compiled in this build"
        return
    names = worth_tidying(tree, names)
    # The cache may be kept between builds; it holds one empty file for each state that was found clean.
    cache = Path(os.environ.get("SNUGLINE_TIDY_CACHE") or Path(build) / "tidy_cache")
    cache.mkdir(parents=True, exist_ok=True)
    config = tree.root / ".clang-tidy"
    base = hashlib.sha256(run([path, "--version"], tree.root)[1].encode() + config.read_bytes())
    known = {}

    def tidy(name):
        key = base.copy()
        for included in sorted(include_closure(tree, name, known)):
            key.update(included.encode() + b"\0" + tree.text(included).encode())
        clean = cache / key.hexdigest()
        if clean.exists():
            return []
        code, said = run([path, "-p", str(each), "--quiet", "--extra-arg=-Wno-unknown-warning-option", name], tree.root)
        found = [line.replace(str(tree.root) + "/", "") for line in said.split("\n") if re.search(r": (error|warning): ", line)]
        if code == 0 and not found:
            clean.touch()
            return []
        return sorted(set(found)) or [f"{name}: clang-tidy failed, {said.strip()[-300:]}"]

    with ThreadPoolExecutor(os.cpu_count()) as pool:
        for findings in pool.map(tidy, names):
            yield from findings


RULES = {
    "C++ is formatted": formatted,
    "qmllint finds nothing": qml_linted,
    "clang-tidy finds nothing in core and terminal": tidied,
}
