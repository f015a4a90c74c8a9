#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""The rules of the house, each on its own: house.py ROOT RULE [BUILD FOLDER]; house.py --list; house.py --hash NAME."""
import inspect
import sys

import catalogue_rules
import contrast_rules
import habit_rules
import structure_rules
import tool_rules
import wording_rules
from source_tree import Tree

RULES = {**structure_rules.RULES, **wording_rules.RULES, **contrast_rules.RULES, **habit_rules.RULES, **tool_rules.RULES, **catalogue_rules.RULES}


def findings(root, rule, build=None):
    check = RULES[rule]
    takes_build = "build" in inspect.signature(check).parameters
    return list(check(Tree(root), build) if takes_build else check(Tree(root)))


def main(arguments):
    if arguments == ["--list"]:
        print("\n".join(RULES))
        return 0
    if len(arguments) == 2 and arguments[0] == "--hash":
        print(wording_rules.digest(arguments[1]))
        return 0
    if len(arguments) not in (2, 3) or arguments[1] not in RULES:
        print(__doc__, file=sys.stderr)
        return 2
    found = findings(*arguments)
    for finding in found:
        print(finding)
    print(f"{arguments[1]}: " + (f"{len(found)} to put right" if found else "so it is"))
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
