"""The published JSON Schema, by a general validator (Debian: python3-jsonschema): it is a sound schema, it finds the
files given sound, and refuses each of them once any object of it has a member that is unknown or lacks all."""
import copy
import json
import sys

import jsonschema


def objects(value, path=()):
    if isinstance(value, dict):
        yield path
    for key, member in value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ():
        yield from objects(member, path + (key,))


def at(value, path):
    for key in path:
        value = value[key]
    return value


with open(sys.argv[1], encoding="utf-8") as file:
    schema = json.load(file)
validator = jsonschema.validators.validator_for(schema)
assert validator is jsonschema.Draft202012Validator, "the schema does not say which draft it is of"
validator.check_schema(schema)
checked = validator(schema)
changes = 0
for name in sys.argv[2:]:
    with open(name, encoding="utf-8") as file:
        design = json.load(file)
    for mistake in checked.iter_errors(design):
        sys.exit(f"{name}: {list(mistake.absolute_path)}: {mistake.message}")
    for path in objects(design):
        unknown = copy.deepcopy(design)
        at(unknown, path)["colour"] = "green"
        if checked.is_valid(unknown):
            sys.exit(f"{name}: an unknown member in {list(path)} is not found")
        changes += 1
    for keys in (("name",), ("pieces", "outlines"), ("turncloth_design",)):
        lacking = {k: v for k, v in design.items() if k not in keys}
        if checked.is_valid(lacking):
            sys.exit(f"{name}: that {' and '.join(keys)} is missing is not found")
        changes += 1
print(f"{changes} changed files refused, {len(sys.argv) - 2} files sound")
