"""How GDB and LLDB show what turncloth measures: 12 1/2 in, and not two integers.

    (gdb) print pocket.cut()                 (lldb) v depth
    $1 = cut 10 1/2 x 5 1/2 in               (turncloth::length<turncloth::inch>) depth = 1 1/4 in

GDB loads every file of its folder python/gdb/printer as it starts, which is where this one is installed under the prefix
/usr; from any other prefix, and from the sources, a line in ~/.gdbinit does it: source <prefix>/share/gdb/python/gdb/printer/turncloth.py
LLDB is told by a line in ~/.lldbinit: command script import <prefix>/share/gdb/python/gdb/printer/turncloth.py

What is said of a value is the same for both, and is worked out below from a Seen: its type's name, its members, its
whole number. Each debugger has one of its own at the end of the file.
"""
import fractions
import re

UNITS = {"inch": "in", "foot": "ft", "yard": "yd", "millimetre": "mm", "centimetre": "cm", "metre": "m"}
DATUMS = {"cut_edge": "the cut edge", "finished_edge": "the finished edge", "stitched_line": "the stitching",
          "long_piece": "the start of the long piece", "short_piece": "the start of the short piece"}
METRIC = ("mm", "cm", "m")


def number_of(fraction):
    """A turncloth::fraction; None where its memory holds none, as before it is made."""
    terms = fraction.member("terms_")
    over, under = terms.member("over").whole(), terms.member("under").whole()
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


def fraction_text(value):
    return bare(number_of(value), "in")


def length_text(value):
    unit, squared = unit_of(value.type_name())
    return f"{bare(number_of(value.member('val_')), unit)} {'sq ' if squared else ''}{unit}"


def place_text(value):
    datum = re.match(r"turncloth::place<(?:\w+::)*(\w+)", value.type_name())
    where = DATUMS.get(datum.group(1), datum.group(1)) if datum else "its datum"
    return f"{length_text(value.member('from_datum_'))} from {where}"


def size_text(value):
    which = "finished" if "finished_size" in value.type_name() else "cut"
    width = value.member("width_")
    unit, _ = unit_of(width.type_name())
    return f"{which} {bare(number_of(width.member('val_')), unit)} x {length_text(value.member('height_'))}"


def any_length_text(value):
    unit = list(UNITS.values())[value.member("unit_").whole()]
    return f"{bare(number_of(value.member('number_')), unit)} {unit}"


def terms_of(figure):
    for i in range(figure.member("count_").whole()):
        term = figure.member("terms_").element(i)
        parts = [number_of(term.member("parts_").element(k).member("val_"))
                 for k in range(term.member("count_").whole())]
        yield number_of(term.member("times_")), parts


def figure_text(value):
    """The sum, and the terms that it is of."""
    unit, _ = unit_of(value.type_name())
    total, said = fractions.Fraction(0), []
    for times, parts in terms_of(value):
        total += times * sum(parts, fractions.Fraction(0))
        written = " + ".join(bare(p, unit) for p in parts)
        written = f"({written})" if len(parts) > 1 else written
        said.append(written if times == 1 else f"{bare(times, 'in')} x {written}")
    return f"{bare(total, unit)} {unit}" + (" = " + " + ".join(said) if said else "")


# The types that are shown, and what is said of each.
SHOWN = (("fraction", r"^turncloth::fraction$", fraction_text),
         ("length", r"^boost::units::quantity<.*turncloth::[a-z]+_base.*turncloth::fraction ?>$", length_text),
         ("place", r"^turncloth::place<", place_text),
         ("size", r"^turncloth::(finished|cut)_size<", size_text),
         ("any_length", r"^turncloth::any_length$", any_length_text),
         ("figure", r"^turncloth::figure<", figure_text))


def add_to_gdb(gdb):
    import gdb.printing

    class Seen:
        def __init__(self, value):
            self.value = value

        def type_name(self):
            return str(self.value.type.strip_typedefs().unqualified())

        def member(self, name):
            return Seen(self.value[name])

        def element(self, i):
            """Of a std::array."""
            return Seen(self.value["_M_elems"][i])

        def whole(self):
            return int(self.value)

    def printer_of(text):
        class Printer:
            def __init__(self, value):
                self.value = value

            def to_string(self):
                try:
                    return text(Seen(self.value))
                except (gdb.MemoryError, gdb.error):
                    return "unreadable"
        return Printer

    found = gdb.printing.RegexpCollectionPrettyPrinter("turncloth")
    for name, pattern, text in SHOWN:
        found.add_printer(name, pattern, printer_of(text))
    gdb.printing.register_pretty_printer(gdb.current_objfile(), found, replace=True)


class SeenByLldb:
    def __init__(self, value):
        self.value = value.GetNonSyntheticValue()

    def type_name(self):
        return self.value.GetType().GetCanonicalType().GetUnqualifiedType().GetName()

    def member(self, name):
        """Of the class itself or of one that it is derived from."""
        found = self.value.GetChildMemberWithName(name)
        for i in range(0 if found.IsValid() else self.value.GetType().GetNumberOfDirectBaseClasses()):
            found = self.value.GetChildAtIndex(i).GetChildMemberWithName(name)
            if found.IsValid():
                break
        return SeenByLldb(found)

    def element(self, i):
        """Of a std::array, in either standard library."""
        for name in ("_M_elems", "__elems_"):
            elements = self.value.GetChildMemberWithName(name)
            if elements.IsValid():
                return SeenByLldb(elements.GetChildAtIndex(i))
        raise ValueError("no array")

    def whole(self):
        if not self.value.IsValid():
            raise ValueError("no such member")
        return self.value.GetValueAsSigned()


def lldb_text(value, _internals):
    """What LLDB calls for each value of a type that is shown."""
    seen = SeenByLldb(value)
    try:
        name = seen.type_name()
        return next(text(seen) for _, pattern, text in SHOWN if re.search(pattern, name))
    except (StopIteration, ValueError, TypeError):
        return "unreadable"


def __lldb_init_module(debugger, _internals):
    for _, pattern, _ in SHOWN:
        debugger.HandleCommand(f"type summary add --category turncloth --python-function {__name__}.lldb_text "
                               f"--regex '{pattern}'")
    debugger.HandleCommand("type category enable turncloth")


try:
    import gdb
except ImportError:
    pass  # read by LLDB, which calls __lldb_init_module
else:
    add_to_gdb(gdb)
