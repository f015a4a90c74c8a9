# SPDX-License-Identifier: Apache-2.0
"""Every rule of the house finds a small planted example, and leaves a sound one alone."""
import os
import shutil
import sys
import tempfile
import unittest
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

import contrast_rules
import house
import wording_rules
from source_tree import Tree

LICENCE = "// SPDX-License-Identifier: Apache-2.0\n"
ROOT = Path(__file__).resolve().parents[2]


class Planted(unittest.TestCase):
    def setUp(self):
        self.root = Path(tempfile.mkdtemp(prefix="snugline-house-"))
        self.addCleanup(shutil.rmtree, self.root)

    def plant(self, name, text):
        path = self.root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")

    def found(self, rule, build=None):
        return house.findings(self.root, rule, build)

    def assert_found(self, rule, *places, build=None):
        found = "\n".join(self.found(rule, build))
        for place in places:
            self.assertIn(place, found)

    def assert_clean(self, rule, build=None):
        self.assertEqual(self.found(rule, build), [])


class Catalogues(Planted):
    def catalogue(self, message, other=""):
        head = '<?xml version="1.0"?><TS version="2.1"><context><name>Any</name>'
        self.plant("qml/i18n/snugline_es.ts", head + message + "</context></TS>")
        self.plant("qml/i18n/snugline_en.ts", head + other + "</context></TS>")

    def test_an_entry_that_is_unfinished_or_empty_is_found(self):
        rule = "no entry of a catalogue is unfinished"
        self.catalogue('<message><source>Head</source><translation type="unfinished"/></message>'
                       "<message><source>Helmet</source><translation></translation></message>"
                       '<message numerus="yes"><source>%n days</source><translation><numerusform>%n dias</numerusform></translation></message>')
        self.assert_found(rule, '"Head": unfinished', '"Helmet": empty', '"%n days": 1 plural forms')
        self.catalogue("<message><source>Head</source><translation>Cabeza</translation></message>")
        self.assert_clean(rule)

    def test_a_value_that_lost_its_place_is_found(self):
        rule = "catalogues keep the places of values"
        self.catalogue("<message><source>%1 of %2</source><translation>%1 de todo</translation></message>")
        self.assert_found(rule, '"%1 of %2"')
        self.catalogue("<message><source>%1 of %2</source><translation>de %2, %1</translation></message>")
        self.assert_clean(rule)

    def test_a_word_about_more_than_equipment_is_found(self):
        rule = "spanish words are about equipment only"
        self.catalogue("<message><source>Fits</source><translation>Casco seguro</translation></message>")
        self.assert_found(rule, '"seguro"')
        self.catalogue("<message><source>Fits</source><translation>Queda bien</translation></message>")
        self.assert_clean(rule)


class Structure(Planted):
    def test_a_stray_folder_and_a_missing_readme_are_found(self):
        self.plant("scripts/x.py", "")
        self.plant("notes.md", "")
        self.assert_found("only the agreed folders and files stand at the top", "scripts/", "notes.md", "README.md: missing")

    def test_an_include_against_the_direction_is_found(self):
        for name in ("core/fit/size.h", "core/book/book.h", "qml/models/desk.h", "platform/app/app.h", "platform/hub/hub.h", "core/ports/ports.h"):
            self.plant(name, LICENCE)
        self.plant("core/fit/a.cpp", '#include "core/book/book.h"\n')
        self.plant("core/ports/b.cpp", '#include "core/fit/size.h"\n')
        self.plant("core/book/c.cpp", '#include "desk.h"\n')
        self.plant("qml/models/d.cpp", "#include <platform/app/app.h>\n")
        self.plant("platform/cli/e.cpp", '#include "qml/models/desk.h"\n#include "platform/hub/hub.h"\n')
        rule = "includes go only in the stated direction"
        self.assert_found(rule, "core/fit/a.cpp:1", "core/ports/b.cpp:1", "core/book/c.cpp:1", "qml/models/d.cpp:1", "e.cpp:1", "e.cpp:2")

    def test_includes_down_the_direction_are_left_alone(self):
        for name in ("core/quantity/q.h", "core/fit/size.h", "core/ports/ports.h", "qml/models/desk.h", "platform/system/keys.h"):
            self.plant(name, LICENCE)
        self.plant("core/book/a.cpp", '#include "core/fit/size.h"\n#include "core/ports/ports.h"\n')
        self.plant("platform/cli/b.cpp", '#include "platform/system/keys.h"\n#include "core/quantity/q.h"\n')
        self.plant("platform/app/c.cpp", '#include "qml/models/desk.h"\n')
        self.assert_clean("includes go only in the stated direction")

    def test_qt_in_core_is_found_and_words_in_comments_are_too(self):
        self.plant("core/fit/a.h", "#include <QString>\nQString name();\n")
        self.plant("core/fit/b.h", "// plain\nint quiet();\n")
        found = self.found("core knows no Qt")
        self.assertEqual(len(found), 3)
        self.assertTrue(all("a.h" in f for f in found))

    def test_long_files_are_found_and_tables_are_let_be(self):
        self.plant("core/a.cpp", "int x;\n" * 400)
        self.plant("core/b.cpp", "int x;\n" * 399)
        self.plant("core/c.cpp", "// A table of values.\n" + "int x;\n" * 500)
        self.plant("qml/D.qml", "\n" * 250)
        self.assertEqual([f.split(":")[0] for f in self.found("files stay short")], ["core/a.cpp", "qml/D.qml"])

    def test_a_file_without_its_licence_line_is_found(self):
        self.plant("core/a.cpp", "int x;\n")
        self.plant("demo/run", "#!/bin/bash\n")
        self.plant("core/b.cpp", LICENCE)
        self.assertEqual([f.split(":")[0] for f in self.found("every source file names its licence")], ["core/a.cpp", "demo/run"])

    def test_a_document_that_is_not_here_is_found(self):
        self.plant("core/a.h", "// see THERE" + ".md and NOWHERE" + ".md\n")
        self.plant("core/THERE" + ".md", "")
        self.assertEqual(len(self.found("every document that is named exists")), 1)


class Wording(Planted):
    def test_text_outside_translation_is_found_on_screens(self):
        self.plant("qml/line/A.qml", 'Item {\n  text: "Start"\n  property var a: ["See before practice"]\n  title: on ? "Hold" : qsTr("Off")\n}\n')
        self.assert_found("no text of the screens stands outside translation", "A.qml:2", "A.qml:3", "A.qml:4")

    def test_translated_text_and_codes_are_left_alone_on_screens(self):
        self.plant("qml/line/A.qml", 'Item {\n  text: qsTr("See before practice")  // "a plain remark"\n  objectName: "start"\n'
                                     '  Accessible.name: kind === "first" ? qsTr("First fit") : model.words\n  label: "mm"[0] + ""\n}\n'.replace('"mm"[0] + ""', 'qsTr("mm")'))
        self.assert_clean("no text of the screens stands outside translation")

    def test_text_outside_translation_is_found_in_models(self):
        self.plant("qml/models/a.cpp", 'QString a() { return QStringLiteral("See before practice"); }\nQString b() { return tr("Nothing due today"); }\n'
                                       'void c() { qWarning("the file is gone"); }\nauto d = "front pad gone";  // recorded in the Book\n'
                                       '// What is recorded.\nauto e() {\n  return "rear pad gone";\n}\n')
        self.assertEqual([f.split(": ")[0] for f in self.found("no text of the models stands outside translation")], ["qml/models/a.cpp:1"])

    def test_a_word_that_says_too_much_is_found(self):
        word = "sa" + "fe"
        self.plant("qml/line/A.qml", f'Item {{ text: qsTr("The helmet is {word}") }}\n')
        self.plant("platform/cli/words.cpp", f'auto a = "{word.upper()} now";\nauto b = "unsaved";\n')
        self.plant("README.md", f"It keeps you {word}.\n")
        self.assert_found("no word says more than equipment can", "A.qml:1", "words.cpp:1", "README.md:1")
        self.assertEqual(len(self.found("no word says more than equipment can")), 3)

    def test_a_name_on_the_list_is_found_alone_and_in_a_pair(self):
        self.plant("demo/a.md", "The Quux team\nwears Plugh  Xyzzy helmets\n")
        hashes = {wording_rules.digest("quux"), wording_rules.digest("plugh xyzzy")}
        found = list(wording_rules.real_names(Tree(self.root), hashes))
        self.assertEqual([f.split(": ")[0] for f in found], ["demo/a.md:1", "demo/a.md:2"])
        self.assertGreater(len(wording_rules.NAMES_FILE.read_text().split()), 10)


class Contrast(Planted):
    RULE = "every pair of text and ground has a contrast of at least 7 to 1"

    def test_the_formula_agrees_with_the_ends_and_a_published_pair(self):
        # WCAG 2.1: black on white is 21:1. #767676 on white is 4.54:1 (the least grey that reaches level AA, W3C technique G18).
        self.assertAlmostEqual(contrast_rules.ratio("#000000", "#FFFFFF"), 21.0, places=6)
        self.assertAlmostEqual(contrast_rules.ratio("#767676", "#FFFFFF"), 4.54, places=2)

    def test_a_weak_pair_and_a_missing_token_are_found(self):
        theme = (ROOT / contrast_rules.THEME).read_text()
        self.plant(contrast_rules.THEME, theme)
        self.assert_clean(self.RULE)
        weak = theme.replace('slate: "#425159"', 'slate: "#8A969C"')
        self.assertNotEqual(weak, theme)
        self.plant(contrast_rules.THEME, weak)
        self.assert_found(self.RULE, "day, slate on paper")
        self.plant(contrast_rules.THEME, theme.replace("ochre:", "umber:"))
        self.assert_found(self.RULE, "night has no ochre")

    def test_a_colour_outside_the_tokens_is_found(self):
        self.plant("qml/parts/A.qml", 'Item {\n  color: "#FF0000"\n}\n')
        self.assert_found("colours stand in the tokens only", "A.qml:2")


class Habits(Planted):
    def test_tests_that_are_turned_off_are_found(self):
        off = "DIS" + "ABLED"
        self.plant("tests/core/a.cpp", f'TEST_CASE("a b c", "[.]") {{}}\nTEST_CASE("a b c", "[!may' + 'fail]") {}\n#if 0\n#endif\n')
        self.plant("tests/qml/tst_a.qml", 'function test_a() {\n    sk' + 'ip("later")\n}\n')
        self.plant("tests/CMakeLists.txt", f"set_tests_properties(a PROPERTIES {off} TRUE)\n")
        self.plant("tests/platform/b.py", "@unittest." + "skip('x')\n")
        self.assert_found("no test is turned off", "a.cpp:1", "a.cpp:2", "a.cpp:3", "tst_a.qml:2", "CMakeLists.txt:1", "b.py:1")

    def test_the_long_counts_may_be_hidden(self):
        self.plant("tests/core/a.cpp", 'TEST_CASE("a b c", "[.full]") {}\n')
        self.assert_clean("no test is turned off")

    def test_a_text_that_takes_markup_is_found(self):
        self.plant("qml/parts/A.qml", "Item {\n    Text { text: name; Item { } }\n    Text {\n        textFormat: Text.PlainText\n    }\n}\n")
        self.plant("qml/parts/B.qml", "T.Label { text: name }\n")
        self.plant("qml/parts/C.qml", "Words { textFormat: Text.Rich" + "Text }\nTextField { text: name }\n")
        self.assert_found("every text of the screens is shown as plain text", "A.qml:2", "B.qml:1", "C.qml:1")

    def test_a_sleeping_test_is_found(self):
        self.plant("tests/core/a.cpp", "std::this_thread::sleep" + "_for(1s);\n// no sleep" + "_for here\n")
        self.plant("tests/platform/b.py", "import time\ntime.sl" + "eep(1)\n")
        self.assertEqual(len(self.found("no test sleeps")), 2)

    def test_a_registry_host_is_found_under_any_name_before_it(self):
        self.plant("README.md", "fetch it from files.quux.example or quux.example/x, never from example.org\n")
        registries = {wording_rules.digest("quux.example")}
        self.assertEqual(len(list(house.habit_rules.registry_hosts(Tree(self.root), registries))), 2)
        self.assertGreater(len(house.habit_rules.REGISTRIES), 10)

    def test_a_path_of_somebodys_machine_is_found(self):
        self.plant("core/a.h", "// see /wo" + "rk/x and /ho" + "me/somebody\n")
        self.plant("core/b.h", "// homework/x is a word\n")
        self.assertEqual(len(self.found("no path of somebody's machine stands anywhere")), 2)

    def test_a_default_is_found_unless_the_switch_says_why(self):
        self.plant("core/a.cpp", "switch (x) {\n  default: break;\n}\nA() = default;\n// default: a remark\n")
        self.plant("core/b.cpp", "switch (c) {\n  default: break;  // not an enum\n}\n")
        self.plant("qml/models/c.cpp", "switch (role) {\n  default: break;\n}\n")
        self.assertEqual([f.split(": ")[0] for f in self.found("switches over enums name every case")], ["core/a.cpp:2"])

    def test_core_asking_the_machine_is_found(self):
        self.plant("core/a.cpp", "auto t = std::chrono::system_clock::now();\n// getenv(\n")
        self.assertEqual(len(self.found("core asks the machine for nothing")), 1)

    def test_a_title_that_is_no_sentence_is_found(self):
        self.plant("tests/core/a.cpp", 'TEST_CASE("size") {}\nTEST_CASE("a size between two bands is said to be so") {}\n')
        self.assertEqual(len(self.found("test titles are sentences")), 1)


class Tools(Planted):
    def test_ill_formatted_code_is_found(self):
        shutil.copy(ROOT / ".clang-format", self.root)
        self.plant("core/a.cpp", LICENCE + "int  f( ){return 1 ;}\n")
        self.plant("core/b.cpp", LICENCE + "int f() { return 1; }\n")
        self.assertEqual([f.split(":")[0] for f in self.found("C++ is formatted")], ["core/a.cpp"])

    def test_clang_tidy_finds_a_planted_fault_and_remembers_only_clean_files(self):
        shutil.copy(ROOT / ".clang-tidy", self.root)
        bad = LICENCE + "#include <string>\n#include <utility>\nint f(std::string a) {\n  std::string b = std::move(a);\n  return static_cast<int>(a.size() + b.size());\n}\n"
        self.plant("core/a.cpp", bad)
        build = self.root / "build"
        self.plant("build/compile_commands.json", f'[{{"directory":"{self.root}","command":"c++ -std=c++20 -c core/a.cpp","file":"{self.root}/core/a.cpp"}}]')
        os.environ.pop("SNUGLINE_TIDY_CACHE", None)
        rule = "clang-tidy finds nothing in core and terminal"
        self.assert_found(rule, "core/a.cpp:6", build=build)
        self.assert_found(rule, "core/a.cpp:6", build=build)
        self.plant("core/a.cpp", bad.replace("(a.size() + b.size())", "(b.size())"))
        self.assert_clean(rule, build=build)
        self.assertEqual(len(list((build / "tidy_cache").iterdir())), 1)


class Linted(Planted):
    def test_qmllint_finds_an_unqualified_and_an_unknown_name(self):
        shutil.copy(ROOT / ".qmllint.ini", self.root)
        self.plant("qml/A.qml", LICENCE + "import QtQuick\nItem {\n    id: root\n    property int a: nowhere\n}\n")
        self.plant("qml/B.qml", LICENCE + "import QtQuick\nItem {\n    id: root\n    property int a: root.width\n}\n")
        self.plant("qml/C.qml", LICENCE + "import QtQuick\nItem {\n    id: root\n    Repeater {\n        model: 2\n        Item { width: root.width }\n    }\n}\n")
        found = self.found("qmllint finds nothing")
        self.assertTrue(found)
        self.assertTrue(all("A.qml" in f for f in found), found)


if __name__ == "__main__":
    unittest.main()
