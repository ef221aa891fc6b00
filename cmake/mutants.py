#!/usr/bin/env python3
"""python3 cmake/mutants.py [--sample N] [header ...]

Changes one operator or constant at a time in the arithmetic, the finishes and notions, in a copy of include/, and sees
whether the tests notice: the compiler first, as most of them are static_asserts, then the program. Names the survivors, and
fails if one of them is not among those that change nothing (cmake/mutants_alike.txt). A sample is drawn by the commit:
another one with every commit, and the same one for the same commit.
"""
import argparse
import concurrent.futures
import os
import pathlib
import random
import re
import shutil
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parent.parent
TESTS = {
    "measure/detail/rational.hpp": ["measure/narrow_fraction_test.cpp", "measure/fraction_test.cpp"],
    "measure/fraction.hpp": ["measure/fraction_test.cpp", "measure/irrational_test.cpp"],
    "measure/rounding.hpp": ["measure/rounding_test.cpp", "measure/irrational_test.cpp"],
    "measure/total.hpp": ["measure/total_test.cpp"],
    "notions/border.hpp": ["notions/patchwork_test.cpp"],
    "notions/darn.hpp": ["notions/darn_test.cpp"],
    "notions/drawstring.hpp": ["notions/drawstring_test.cpp"],
    "notions/filling.hpp": ["notions/filling_test.cpp"],
    "notions/lining.hpp": ["notions/lining_test.cpp"],
    "notions/patchwork.hpp": ["notions/patchwork_test.cpp"],
    "notions/strap.hpp": ["notions/strap_test.cpp"],
    "notions/triangles.hpp": ["notions/patchwork_test.cpp"],
    "notions/webbing.hpp": ["notions/webbing_test.cpp"],
    "panel/corner_ways.hpp": ["panel/corner_ways_test.cpp"],
    "panel/finish.hpp": ["panel/finish_test.cpp"],
    "panel/panel.hpp": ["panel/panel_test.cpp"],
}
# Operators with a blank on both sides: so the formatter writes those that compute, and no others.
OPERATORS = {
    "+": ["-"], "-": ["+"], "*": ["/"], "/": ["*"], "%": ["/"], "&": ["|"], "|": ["&"], "^": ["&"],
    "<": ["<=", ">"], ">": [">=", "<"], "<=": ["<"], ">=": [">"], "==": ["!="], "!=": ["=="], "&&": ["||"], "||": ["&&"],
    "<<": [">>"], ">>": ["<<"], "+=": ["-="], "-=": ["+="], "*=": ["/="], "/=": ["*="],
}
FOUND = re.compile(
    r"(?<= )(?P<operator>" + "|".join(re.escape(o) for o in sorted(OPERATORS, key=len, reverse=True)) + r")(?= )"
    r"|(?<![\w.])(?P<number>\d+)(?=[Uu]?(?![\w.]))|(?<!\w)(?P<truth>true|false)(?!\w)|(?<=[(\s])(?P<minus>-)(?=[\w(])")


def blanked(source):
    """The source with comments, texts and preprocessor lines blanked out, everything else where it was."""
    gone = re.compile(r'//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\\n])*"|^[ \t]*#[^\n]*|template <[^\n]*', re.S | re.M)
    return gone.sub(lambda found: re.sub(r"[^\n]", " ", found.group()), source)


def joins_text(source, found):
    """A plus between texts has no other operator in its place."""
    before, after = source[:found.start()].rstrip(), source[found.end():].lstrip()
    return before.endswith('"') or re.match(r'"|to_text|number_text|std::to_string|std::string|described', after)


HEAD = re.compile(r"^(?:    )?(?!return |else |throw |delete )(?:[\w:<>,&*]+ )+(operator\S+?|\w+)\(")


def function_around(code, at):
    """The name in the last line before it that begins as a function does: words, a name, a bracket."""
    for line in reversed(code[:code.find("\n", at)].splitlines()):
        if head := HEAD.match(line):
            return head.group(1)
    return "-"


def expression_around(code, start, end):
    """From the bracket, comma or statement that encloses it to the one that ends it: the part that the change is about."""
    depth, first = 0, start
    while not (depth == 0 and code[first - 1] in "([{;,}?:"):
        depth += {")": 1, "]": 1, "(": -1, "[": -1}.get(code[first - 1], 0)
        first -= 1
    depth, last = 0, end
    while not (depth == 0 and code[last] in ")]};,{?:"):
        depth += {"(": 1, "[": 1, ")": -1, "]": -1}.get(code[last], 0)
        last += 1
    return first, last


def mutants(header):
    """(line number, the name of the change, the whole source changed)"""
    source = (ROOT / "include/turncloth" / header).read_text()
    code = blanked(source)
    for found in FOUND.finditer(code):
        text = found.group()
        if text == "+" and joins_text(source, found):
            continue
        if found["operator"]:
            changes = OPERATORS[text]
        elif found["number"]:
            changes = [str(int(text) + 1)]
        elif found["truth"]:
            changes = ["false" if text == "true" else "true"]
        else:
            changes = [""]
        first, last = expression_around(code, found.start(), found.end())
        one_line = lambda text: " ".join(text.split())
        old = one_line(source[first:last])
        for change in changes:
            new = one_line(source[first:found.start()] + change + source[found.end():last])
            yield (source.count("\n", 0, found.start()) + 1,
                   f"{header} {function_around(code, found.start())}: {old} => {new}",
                   source[:found.start()] + change + source[found.end():])


def survives(header, changed, main):
    """`main` is the tests' main, compiled."""
    with tempfile.TemporaryDirectory() as folder:
        scratch = pathlib.Path(folder)
        shutil.copytree(ROOT / "include", scratch / "include")
        (scratch / "include/turncloth" / header).write_text(changed)
        flags = ["-std=c++20", "-w", f"-I{scratch}/include", f"-I{ROOT}/tests"]
        for test in TESTS[header]:
            source, program = str(ROOT / "tests" / test), str(scratch / "test")
            steps = [["g++", *flags, "-fsyntax-only", source],
                     ["g++", *flags, "-O1", source, main, "-lgmpxx", "-lgmp", "-o", program],
                     [program]]
            for step, seconds in zip(steps, (300, 300, 60)):
                try:
                    if subprocess.run(step, cwd=ROOT, capture_output=True, timeout=seconds).returncode != 0:
                        return False
                except subprocess.TimeoutExpired:
                    return False  # a loop without an end is noticed too
    return True


def known_alike():
    """Lines "header function: expression => expression changed", below comments on why nothing can tell them apart."""
    text = (ROOT / "cmake/mutants_alike.txt").read_text()
    return {line for line in text.splitlines() if line and not line.startswith("#")}


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("--sample", type=int, default=0, help="how many to try; all where none is given")
    options.add_argument("headers", nargs="*", default=list(TESTS), help="as measure/fraction.hpp")
    chosen = options.parse_args()

    alike = known_alike()
    every = [(header, *mutant) for header in chosen.headers for mutant in mutants(header)]
    named = [name for _, _, name, _ in every]
    stale = [] if chosen.headers != list(TESTS) else sorted(alike - set(named))
    todo = [mutant for mutant, name in zip(every, named) if name not in alike]
    if 0 < chosen.sample < len(todo):
        commit = subprocess.run(["git", "rev-parse", "HEAD"], cwd=ROOT, capture_output=True, text=True).stdout.strip()
        print(f"a sample drawn by {commit}")
        todo = random.Random(commit).sample(todo, chosen.sample)
    # The tests as they are must pass, or every change would seem to be noticed.
    with tempfile.TemporaryDirectory() as folder, \
            concurrent.futures.ThreadPoolExecutor(len(os.sched_getaffinity(0))) as pool:
        main_object = f"{folder}/main.o"
        subprocess.run(["g++", "-std=c++20", "-O1", "-c", str(ROOT / "tests/main.cpp"), "-o", main_object], check=True)
        unchanged = [(header, (ROOT / "include/turncloth" / header).read_text()) for header in chosen.headers]
        for (header, _), passes in zip(unchanged, pool.map(lambda each: survives(*each, main_object), unchanged)):
            if not passes:
                sys.exit(f"the tests of {header} fail without any change")
        alive = list(pool.map(lambda mutant: survives(mutant[0], mutant[3], main_object), todo))
    survivors = [mutant for mutant, is_alive in zip(todo, alive) if is_alive]
    for header, number, name, _ in survivors:
        print(f"SURVIVED at {header}:{number}\n  {name}")
    for line in stale:
        print(f"no such change any more: {line}")
    print(f"{len(every)} changes, {len(named) - len([n for n in named if n not in alike])} known to change nothing; "
          f"{len(todo)} tried, {len(todo) - len(survivors)} noticed, {len(survivors)} survived")
    sys.exit(1 if survivors or stale else 0)


if __name__ == "__main__":
    main()
