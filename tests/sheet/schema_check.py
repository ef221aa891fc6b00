"""The sheets that the sheets program writes, by the published JSON Schema and a general validator (Debian:
python3-jsonschema): each is sound, and is refused once an object of any kind in it has a member that is unknown, or
it lacks one that must be there. And every measurement of the sheet as text is a length of the sheet as JSON."""
import copy
import json
import pathlib
import re
import subprocess
import sys
import tempfile
from fractions import Fraction

import jsonschema

SHEETS = [("organiser", "20 x 24 in"), ("organiser", "52 x 60 cm"), ("tool-roll", "29 x 21 in"),
          ("tool-roll", "75 x 54 cm"), ("kneeling-pad", "17 1/2 x 10 1/2 in"), ("kneeling-pad", "44 x 27 cm")]


def one_of_each_kind(value, path=(), kind=(), found=None):
    """The place of an object for every kind of place: one of the list's items that have the same members."""
    found = {} if found is None else found
    if isinstance(value, dict):
        found.setdefault((kind, tuple(sorted(value))), path)
        for key, member in value.items():
            one_of_each_kind(member, path + (key,), kind + (key,), found)
    elif isinstance(value, list):
        for index, member in enumerate(value):
            one_of_each_kind(member, path + (index,), kind, found)
    return found


def at(value, path):
    for key in path:
        value = value[key]
    return value


def number(text):
    return sum(Fraction(part) for part in text.split())


def lengths(value):
    if isinstance(value, dict):
        if "exact" in value:
            yield number(value["exact"]), value["unit"]
        if "times" in value:  # "2 x 1/2 in hem"
            yield number(value["times"]), value["value"]["unit"]
        for member in value.values():
            yield from lengths(member)
    elif isinstance(value, list):
        for member in value:
            yield from lengths(member)


NUMBER = r"\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?"


def measurements(text, unit):
    """Of a text in one unit: "1 1/2 in", "14 x 12 in", "2 x (1/4 + 1/2) in", "1 in, 2 in"."""
    run_of = rf"(?<![\w/.])((?:{NUMBER})(?: x (?:{NUMBER}))?|\((?:{NUMBER})(?: \+ (?:{NUMBER}))+\)) {unit}\b"
    for run in re.finditer(run_of, text):
        for one in re.findall(NUMBER, run.group(1)):
            yield number(one), unit


def main(schema_file, program):
    with open(schema_file, encoding="utf-8") as file:
        schema = json.load(file)
    validator = jsonschema.validators.validator_for(schema)
    assert validator is jsonschema.Draft202012Validator, "the schema does not say which draft it is of"
    validator.check_schema(schema)
    checked = validator(schema)
    changes, measured, kinds = 0, 0, {}
    with tempfile.TemporaryDirectory() as folder:
        for project, size in SHEETS:
            out = pathlib.Path(folder) / (project + size)
            unit = size.rsplit(" ", 1)[1]
            subprocess.run([program, "--project", project, "--size", size, "--json", "--out", str(out), "--quiet",
                            "--units", "inches" if unit == "in" else "centimetres"], check=True)
            (written,) = out.rglob("*.json")
            sheet = json.loads(written.read_text(encoding="utf-8"))
            for mistake in checked.iter_errors(sheet):
                sys.exit(f"{written.name}: {list(mistake.absolute_path)}: {mistake.message}")
            there = set(lengths(sheet))  # what is bought by the spool or by thickness stays exact, and is printed rounded
            step = Fraction(1, 16) if unit == "in" else Fraction(1, 10)
            there |= {(round(one / step) * step, its) for one, its in there}
            text = written.with_suffix(".txt").read_text(encoding="utf-8")
            for measurement in measurements(text, unit):
                measured += 1
                if measurement not in there:
                    sys.exit(f"{written.name}: {measurement[0]} {unit} of its text is not in it")
            for kind, path in one_of_each_kind(sheet).items():
                if kind not in kinds:
                    kinds[kind] = (sheet, path)
    for sheet, path in kinds.values():
        changed = copy.deepcopy(sheet)
        at(changed, path)["colour"] = "green"
        if checked.is_valid(changed):
            sys.exit(f"an unknown member in {list(path)} is not found")
        changes += 1
    for key in schema["required"]:
        if checked.is_valid({k: v for k, v in sheet.items() if k != key}):
            sys.exit(f"that {key} is missing is not found")
        changes += 1
    print(f"{changes} changed sheets refused, {measured} measurements of {len(SHEETS)} texts found")


main(*sys.argv[1:])
