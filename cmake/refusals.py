"""Writes examples/guide/REFUSALS.md: every sentence that the library refuses with, by header, and what to do about it.

    python3 cmake/refusals.py            writes the page
    python3 cmake/refusals.py --check    ends with 1 where the page is not what would be written

The sentences are read where they stand in include/: what is put together while running is shown as three dots. What to do
follows from the kind of the fault, which a program reads in facts().kind.
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parent.parent
PAGE = ROOT / "examples" / "guide" / "REFUSALS.md"
TO_DO = {"too_small": "Give at least the `least` that it names, or more than zero.",
         "too_large": "Give at most the `most` that it names.",
         "no_room": "Ask for less, or make what it lies on larger: `given` does not go into `most`.",
         "disagree": "Make the two things that it names agree: `given` beside `least` or `most`.",
         "missing": "Give what it names, or write the name as it is written elsewhere.",
         "repeated": "Say it once.",
         "unsuitable": "Give one of the kind that it asks for.",
         "unreadable": "Look at the character `index`, counted from 0, and write it as the sentence shows.",
         "does_not_fit": "The exact result needs more than 64 bits, or a stated limit: use smaller numbers or coarser steps.",
         "undefined": "There is no answer to it: check for zero, or for less than nothing, first."}
# The checks that all share, and how their sentences go on.
SHARED = {"require_at_least": ("must be at least ...", "too_small"), "require_at_most": ("must be at most ...", "too_large"),
          "require_more_than_zero": ("must be more than zero", "too_small"),
          "require_not_negative": ("must be zero or more", "too_small"),
          "require_between": ("must be from ... to ...", "too_small or too_large"),
          "require_index": ("must be one that there is", "too_large"),
          "require_drafted": ("must lie within 1000000 of the origin", "too_large")}
CALL = re.compile(r"\b(refuse|" + "|".join(SHARED) + r")<(?:detail::)?(\w+)>\s*(?=\()")
LITERAL = re.compile(r'"((?:[^"\\]|\\.)*)"')


def arguments(text, at):
    """What stands between a bracket and the one that closes it, split at the commas outside of all others."""
    depth, begin, found, quoted, i = 0, at + 1, [], False, at
    while True:
        c = text[i]
        if quoted:
            i += c == "\\"
            quoted = c != '"'
        elif c == '"':
            quoted = True
        elif c in "({[":
            depth += 1
        elif c in ")}]":
            depth -= 1
            if depth == 0:
                return found + [text[begin:i]]
        elif c == "," and depth == 1:
            found.append(text[begin:i])
            begin = i + 1
        i += 1


def sentence(argument):
    """Its literals, with dots for what stands between them."""
    words, end = "", 0
    for literal in LITERAL.finditer(argument):
        between = re.sub(r"[\s{},+()]|std::string|sentence", "", argument[end:literal.start()])
        words += ("..." if between else "") + literal.group(1)
        end = literal.end()
    rest = re.sub(r"[\s{},+()]", "", argument[end:])
    return words.replace('\\"', '"') + ("..." if rest and words else "")


def refusals(header):
    text = re.sub(r"//[^\n]*", "", header.read_text(encoding="utf-8"))
    for call in CALL.finditer(text):
        verb, kind_of_error = call.groups()
        given = arguments(text, call.end())
        if verb == "refuse":
            said = sentence(given[0])
            kinds = re.findall(r"fault::(\w+)", ",".join(given[1:]))
            kind = " or ".join(dict.fromkeys(kinds))
        else:
            what = [s for s in map(sentence, given) if s]
            said, kind = " ".join([what[0] if what else "...", SHARED[verb][0]]), SHARED[verb][1]
        if kind_of_error.endswith("error") and re.search("[a-z]{2}", said):
            yield said, kind_of_error, kind


def cell(text):
    return text.replace("|", "\\|").replace("<", "&lt;")


def page():
    lines = ["# What the library refuses, and what to do",
             "",
             "Written by `python3 cmake/refusals.py` from the sources. Every refusal is an `error`: `what()` is the sentence, here",
             "with three dots for what it was given, and `facts()` the same as data. What does not even compile stands in",
             "[the table of mistakes](../../tests/misuse/MESSAGES.md), each with what to write instead.",
             "",
             "| `facts().kind` | what to do |",
             "|---|---|"]
    lines += [f"| `{kind}` | {what} |" for kind, what in TO_DO.items()]
    for header in sorted((ROOT / "include" / "turncloth").rglob("*.hpp")):
        found = list(dict.fromkeys(refusals(header)))
        if found:
            lines += ["", f"## `{header.relative_to(ROOT / 'include')}`", "", "| sentence | type | kind |", "|---|---|---|"]
            lines += [f"| {cell(said)} | `{error}` | {kind or 'as it was'} |" for said, error, kind in found]
    return "\n".join(lines) + "\n"


written = page()
if "--check" not in sys.argv:
    PAGE.write_text(written, encoding="utf-8")
elif PAGE.read_text(encoding="utf-8") != written:
    sys.exit(f"{PAGE} is not what the sources say: python3 cmake/refusals.py writes it anew")
