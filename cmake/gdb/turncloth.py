"""How GDB shows what turncloth measures: 12 1/2 in, and not two integers.

    (gdb) print pocket.cut()
    $1 = cut 10 1/2 x 5 1/2 in
    (gdb) print depth
    $2 = 1 1/4 in

GDB loads every file of its folder python/gdb/printer as it starts, which is where this one is installed under the prefix
/usr; from any other prefix, and from the sources, a line in ~/.gdbinit does it: source <prefix>/share/gdb/python/gdb/printer/turncloth.py
"""
import fractions
import re

import gdb
import gdb.printing

UNITS = {"inch": "in", "foot": "ft", "yard": "yd", "millimetre": "mm", "centimetre": "cm", "metre": "m"}
DATUMS = {"cut_edge": "the cut edge", "finished_edge": "the finished edge", "stitched_line": "the stitching",
          "long_piece": "the start of the long piece", "short_piece": "the start of the short piece"}
METRIC = ("mm", "cm", "m")


def number_of(fraction):
    """A turncloth::fraction; None where its memory holds none, as before it is made."""
    over, under = int(fraction["terms_"]["over"]), int(fraction["terms_"]["under"])
    return fractions.Fraction(over, under) if under > 0 else None


def mixed(x):
    """12 1/2, -3/4, 7"""
    sign, size = ("-" if x < 0 else ""), abs(x)
    whole, rest = divmod(size.numerator, size.denominator)
    parts = ([str(whole)] if whole or not rest else []) + ([f"{rest}/{size.denominator}"] if rest else [])
    return sign + " ".join(parts)


def decimal(x):
    """31.75, or a mixed number where no decimal of up to 18 digits is exact."""
    for digits in range(19):
        scaled = abs(x) * 10 ** digits
        if scaled.denominator == 1:
            text = str(scaled.numerator).rjust(digits + 1, "0")
            return ("-" if x < 0 else "") + (text[:-digits] + "." + text[-digits:] if digits else text)
    return mixed(x)


def unit_of(type_name):
    """The unit in the name of a quantity's type, and whether it is of areas."""
    found = re.search(r"turncloth::(\w+)_base\b", type_name)
    power = re.search(r"length_base_dimension\s*,\s*boost::units::static_rational<(\d+)", type_name)
    return (UNITS.get(found.group(1), "?") if found else "?"), bool(power) and power.group(1) == "2"


def bare(x, unit):
    if x is None:
        return "not made yet"
    return decimal(x) if unit in METRIC else mixed(x)


def type_name(value):
    return str(value.type.strip_typedefs().unqualified())


class Measured:
    """What is shown as one text."""

    def __init__(self, value):
        self.value = value

    def to_string(self):
        try:
            return self.text()
        except (gdb.MemoryError, gdb.error):
            return "unreadable"


class Fraction(Measured):
    def text(self):
        return bare(number_of(self.value), "in")


def length_text(value):
    unit, squared = unit_of(type_name(value))
    return f"{bare(number_of(value['val_']), unit)} {'sq ' if squared else ''}{unit}"


class Length(Measured):
    def text(self):
        return length_text(self.value)


class Place(Measured):
    def text(self):
        datum = re.match(r"turncloth::place<(?:\w+::)*(\w+)", type_name(self.value))
        where = DATUMS.get(datum.group(1), datum.group(1)) if datum else "its datum"
        return f"{length_text(self.value['from_datum_'])} from {where}"


class Size(Measured):
    def text(self):
        which = "finished" if "finished_size" in type_name(self.value) else "cut"
        unit, _ = unit_of(type_name(self.value["width_"]))
        return f"{which} {bare(number_of(self.value['width_']['val_']), unit)} x {length_text(self.value['height_'])}"


class AnyLength(Measured):
    def text(self):
        unit = list(UNITS.values())[int(self.value["unit_"])]
        return f"{bare(number_of(self.value['number_']), unit)} {unit}"


class Figure(Measured):
    """The sum, and the terms that it is of."""

    def terms(self):
        for i in range(int(self.value["count_"])):
            term = self.value["terms_"]["_M_elems"][i]
            parts = [number_of(term["parts_"]["_M_elems"][k]["val_"]) for k in range(int(term["count_"]))]
            yield number_of(term["times_"]), parts

    def text(self):
        unit, _ = unit_of(type_name(self.value))
        total, said = fractions.Fraction(0), []
        for times, parts in self.terms():
            total += times * sum(parts, fractions.Fraction(0))
            written = " + ".join(bare(p, unit) for p in parts)
            written = f"({written})" if len(parts) > 1 else written
            said.append(written if times == 1 else f"{bare(times, 'in')} x {written}")
        return f"{bare(total, unit)} {unit}" + (" = " + " + ".join(said) if said else "")


def printers():
    found = gdb.printing.RegexpCollectionPrettyPrinter("turncloth")
    found.add_printer("fraction", r"^turncloth::fraction$", Fraction)
    found.add_printer("length", r"^boost::units::quantity<.*turncloth::\w+_base.*turncloth::fraction>$", Length)
    found.add_printer("place", r"^turncloth::place<", Place)
    found.add_printer("size", r"^turncloth::(finished|cut)_size<", Size)
    found.add_printer("any_length", r"^turncloth::any_length$", AnyLength)
    found.add_printer("figure", r"^turncloth::figure<", Figure)
    return found


gdb.printing.register_pretty_printer(gdb.current_objfile(), printers(), replace=True)
