"""The display strings of turncloth.natvis, read as Visual Studio reads them, and what they say of values.

    python3 natvis.py <turncloth.natvis> <include/turncloth>

Each name with a _ at its end, and over and under, must be a member that the class's header declares; then every string is
worked out, conditions and all, for values with those members. Visual Studio itself is not driven.
"""
import fnmatch
import pathlib
import re
import sys
import xml.etree.ElementTree as tree

NATVIS, INCLUDE = sys.argv[1], pathlib.Path(sys.argv[2])
SPACE = "{http://schemas.microsoft.com/vstudio/debugger/natvis/2010}"
HEADERS = {"fraction": "measure/fraction.hpp", "place": "measure/place.hpp", "finished_size": "panel/size.hpp",
           "cut_size": "panel/size.hpp", "any_length": "measure/any_length.hpp", "term": "measure/working.hpp",
           "figure": "measure/working.hpp"}
TYPES = [(t.get("Name"), t) for t in tree.parse(NATVIS).getroot().findall(SPACE + "Type")]


class Value:
    """Of a type, with its members."""

    def __init__(self, of, **members):
        self.of = of
        self.__dict__.update(members)


def expressions(t):
    for said in t.iter(SPACE + "DisplayString"):
        yield said.get("Condition", "")
        yield from re.findall(r"{([^}]*)}", said.text)
    for tag in ("Size", "ValueNode"):
        for node in t.iter(SPACE + tag):
            yield node.text


def worked_out(expression, value):
    python = expression.replace("&&", " and ").replace("/", "//")
    python = re.sub(r"turncloth::any_unit::(\w+)", r"'\1'", python)
    return eval(python, {}, vars(value))  # of our own file


def shown(value):
    """By the first type whose name fits and the first string whose condition holds."""
    if isinstance(value, int):
        return str(value)
    t = next(t for name, t in TYPES if fnmatch.fnmatchcase(value.of.replace(" ", ""), name.replace(" ", "")))
    for said in t.findall(SPACE + "DisplayString"):
        if not said.get("Condition") or worked_out(said.get("Condition"), value):
            return re.sub(r"{([^}]*)}", lambda m: shown(worked_out(m.group(1), value)), said.text)
    raise AssertionError("no string of " + value.of)


def part(over, under=1):
    return Value("turncloth::fraction", terms_=Value("terms", over=over, under=under))


def measure(unit, over, under=1, power=1):
    """As compilers name the type, which shown.cpp's debuggers print."""
    return Value("boost::units::quantity<boost::units::unit<boost::units::list<boost::units::dim<boost::units::length_base_"
                 f"dimension, boost::units::static_rational<{power}, 1> >, boost::units::dimensionless_type>, boost::units::"
                 f"homogeneous_system<boost::units::list<turncloth::{unit}_base, boost::units::dimensionless_type> >, void>, "
                 "turncloth::fraction>", val_=part(over, under))


def term(times, *parts):
    return Value("turncloth::term<inch>", times_=part(times), parts_=parts, count_=len(parts))


def check(found, wanted):
    if found != wanted:
        sys.exit(f"natvis shows {found!r}, not {wanted!r}")


for name, t in TYPES:
    plain = re.sub("<.*", "", name).split("::")[-1]
    if plain in HEADERS:
        text = (INCLUDE / HEADERS[plain]).read_text() + (INCLUDE / "measure/detail/rational.hpp").read_text()
        for used in {m for e in expressions(t) for m in re.findall(r"\b(\w+_|over|under)\b", e)}:
            if not re.search(rf"^[^/(]*[ ,]{used}(;|,| =|{{}})", text, re.MULTILINE):
                sys.exit(f"{NATVIS}: {name} has no member {used}")
nine, hem = term(1, measure("inch", 9)), term(2, measure("inch", 1, 4), measure("inch", 1, 2))
for value, wanted in (
        (part(-25, 2), "-12 1/2"), (part(3, 4), "3/4"), (part(-3, 4), "-3/4"), (part(7), "7"), (part(0, 0), "not made yet"),
        (measure("inch", 25, 2), "12 1/2 in"), (measure("centimetre", 127, 4), "31 3/4 cm"),
        (measure("inch", 63, 1, 2), "63 sq in"), (measure("yard", 3), "3 yd"),
        (Value("turncloth::place<turncloth::finished_edge, inch>", from_datum_=measure("inch", 9, 2)),
         "4 1/2 in from the finished edge"),
        (Value("turncloth::place<shelf_end, inch>", from_datum_=measure("inch", 1)), "1 in from its datum"),
        (Value("turncloth::cut_size<inch>", width_=measure("inch", 21, 2), height_=measure("inch", 11, 2)),
         "cut 10 1/2 in x 5 1/2 in"),
        (Value("turncloth::any_length", number_=part(60), unit_="centimetres"), "60 cm"),
        (Value("turncloth::figure<inch>", terms_=[nine, hem], count_=2), "1 x 9 in + 2 x (1/4 in + 1/2 in)")):
    check(shown(value), wanted)
