// Expressions: values worked by hand, every mistake with its place, and random ones beside GMP.
#include "at_random.hpp"
#include "refused.hpp"
#include <turncloth/design/expression.hpp>
#include <turncloth/measure/write.hpp>

#include <doctest/doctest.h>
#include <gmpxx.h>

#include <string>
#include <utility>

using namespace turncloth;

namespace {

expression_names usual_names() {
    expression_names n;
    n.add("finished width", expression_value::of(20_in));
    n.add("finished height", expression_value::of(15_in));
    n.add("pockets", expression_value::of(fraction(3)));
    n.add("packet", expression_value::of("8.5"_cm));
    n.add("nothing", expression_value::of(0_in));
    return n;
}

std::string shown(const expression_value& v) {
    if (!v.number)
        return std::string(name_of(v.kind));
    switch (v.kind) {
    case value_kind::inches:
        return to_text(v.as_length<inch>());
    case value_kind::centimetres:
        return to_text(v.as_length<centimetre>());
    case value_kind::truth:
        return v.holds() ? "true" : "false";
    case value_kind::number:
        break;
    }
    return to_text(*v.number);
}
std::string worked(const std::string& text) { return shown(value_of(expression(text), usual_names())); }
/// Of no size: the kind alone.
std::string checked(const std::string& text) {
    expression_names names;
    for (const auto& [name, v] : usual_names())
        names.add(name, {v.kind, {}});
    return shown(value_of(expression(text), names));
}
/// "5: why", the characters counted from 1.
std::string fault_in(const std::string& text) {
    try {
        return "(" + worked(text) + ")";
    } catch (const expression_error& e) {
        return std::to_string(e.position() + 1) + ": " + e.reason();
    }
}

} // namespace

TEST_CASE("sums, products and quotients are exact") {
    CHECK(worked("12 1/2 in") == "12 1/2 in");
    CHECK(worked("finished width / 3") == "6 2/3 in");
    CHECK(worked("2 * finished width - 5 ft 3 in + 1 yd") == "13 in");
    CHECK(worked("finished width − 1½ in") == "18 1/2 in");
    CHECK(worked("finished width ÷ pockets × 3") == "20 in");
    CHECK(worked("finished width / finished height") == "1 1/3");
    CHECK(worked("10 in - 4 in - 3 in") == "3 in");
    CHECK(worked("10 in - (4 in - 3 in)") == "9 in");
    CHECK(worked("2 + 3 * 4") == "14");
    CHECK(worked("- 3 in + 5 in") == "2 in");
    CHECK(worked("10 in / (1/2)") == "20 in");
    CHECK(worked("3 * 1/2 in") == "1 1/2 in"); // 1/2 in is one measurement
    CHECK(worked("packet + 15 mm") == "10 cm");
    CHECK(worked("1,5 cm * 2") == "3 cm");
}

TEST_CASE("inches and centimetres meet where a unit is named") {
    CHECK(worked("2.54 cm as inches + 1 in") == "2 in");
    CHECK(worked("1 in + 2.54 cm as inches") == "2 in");
    CHECK(worked("(finished width as centimetres) / 2") == "25.4 cm");
    CHECK(worked("1 in as inches") == "1 in");
}

TEST_CASE("limits and rounding are taken from left to right") {
    CHECK(worked("finished width / 3, at least 7 in") == "7 in");
    CHECK(worked("finished width / 3 at least 4 in, at most 6 in") == "6 in");
    CHECK(worked("finished width / 3 rounded up to 1/8 in") == "6 3/4 in");
    CHECK(worked("finished width / 3, rounded up to one of (9 in, 6 in, 7 in)") == "7 in");
    CHECK(worked("finished width / 3, rounded down to one of (9 in, 6 in, 7 in)") == "6 in");
    CHECK(worked("7 rounded up to one of (7)") == "7");
    CHECK(checked("finished width rounded up to one of (9 in, 30 in)") == "a length in inches");
    CHECK(checked("20 in rounded up to one of (9 in, finished width)") == "a length in inches");
    CHECK(worked("finished width / 3, rounded down to 1/8 in") == "6 5/8 in");
    CHECK(worked("finished width / 3 rounded to 1/8 in") == "6 5/8 in");
    CHECK(worked("5/2 rounded to 1") == "3"); // a half goes up
    CHECK(worked("whole part (finished width / 6 in)") == "3");
    CHECK(worked("whole part (- 1/2)") == "-1");
}

TEST_CASE("conditions choose, and what is not chosen is not worked out") {
    CHECK(worked("finished width is at least 20 in") == "true");
    CHECK(worked("finished width is more than 20 in") == "false");
    CHECK(worked("finished width is less than 21 in and not pockets is 4") == "true");
    CHECK(worked("pockets is not 3 or finished height is at most 14 in") == "false");
    CHECK(worked("where pockets is 3 then 1 in otherwise 2 in") == "1 in");
    CHECK(worked("where pockets is 2, then 1 in, otherwise where pockets is 3 then 5 in otherwise 6 in") == "5 in");
    CHECK(worked("where nothing is 0 in then 0 otherwise finished width / nothing") == "0");
    CHECK(worked("nothing is 0 in or finished width / nothing is 2") == "true");
    CHECK(worked("nothing is not 0 in and finished width / nothing is 2") == "false");
    CHECK(worked("pockets is 4 and pockets is 3 or pockets is 3") == "true"); // "and" binds more
}

TEST_CASE("the library's own figures are known by name") {
    // pi (1/8 + 1/32) / 2 in is 0.2454... in.
    CHECK(worked("turn of cloth (stack: 1/8 in, cloth: 1/32 in, step: 1/16 in)") == "1/4 in");
    // sqrt(4 pi 20 1/4) in is 7.926... in (an area kept, as a circle).
    CHECK(worked("girth of a roll (thickness: 1/4 in, strip: finished width, step: 1/8 in)") == "8 in");
    CHECK(worked("buttonhole for a button (across: 3/4 in, thickness: 1/8 in, ease: 1/16 in, step: 1/8 in)") == "1 in");
    // Of 20 in, 2 in of margins and 3/4 in of rims leave 17 1/4 in: three gaps of at most 8 in.
    CHECK(worked("fewest eyelets (along: finished width, rim: 3/4 in, margin: 1 in, apart: 8 in)") == "4");
    // Sides of 13 in, from ends 10 in apart to a hook 12 in above them; over a rail of 4 in, 4 + 2 x sqrt(144 + 9) = 28.74.
    CHECK(worked("free length of a handle (drop: 12 in, apart: 10 in, over: nothing, step: 1/8 in)") == "26 in");
    CHECK(worked("free length of a handle (step: 1/4 in, drop: 12 in, apart: 10 in, over: 4 in)") == "28 3/4 in");
    // Common practice, for seams of 1/4 in: 7/8 in more than it finishes at for two triangles, 1 1/4 in for four.
    CHECK(worked("square for two triangles (finished: 3 in, seam: 1/4 in, step: 1/8 in)") == "3 7/8 in");
    CHECK(worked("square for four triangles (step: 1/8 in, finished: 3 in, seam: 1/4 in)") == "4 1/4 in");
    // 12.566... in, and 12 3/4 x 12 3/4 x 32 / (4 pi) = 413.96... cubic inches (pi to many digits, by hand).
    CHECK(worked("girth of a tube (across: 4 in, step: 1/4 in)") == "12 3/4 in");
    CHECK(worked("volume of a tube (girth: 12 3/4 in, along: 32 in, step: 1)") == "414");
    CHECK(worked("mark (span: finished height, parts: 4, number: 3)") == "11 1/4 in");
    CHECK(worked("half on the ruler (finished height)") == "7 1/2 in");
    expression_names on_ruler = usual_names();
    on_ruler.graduation = 1;
    CHECK(shown(value_of(expression("half on the ruler (finished height)"), on_ruler)) == "8 in");
}

TEST_CASE("without a size an expression has its kind") {
    CHECK(checked("finished width / 3, at least 4 in") == "a length in inches");
    CHECK(checked("finished width / nothing") == "a number");
    CHECK(checked("where pockets is 3 then packet otherwise 1 cm") == "a length in centimetres");
    CHECK(checked("finished width is 3 in") == "a condition");
    CHECK(checked("turn of cloth (stack: packet, cloth: 1 mm, step: 1 mm)") == "a length in centimetres");
}

TEST_CASE("a mistake is refused with its place and reason") {
    CHECK(fault_in("finished width * finished height") ==
          "18: a length times a length is no length: one of them must be a number");
    CHECK(
        fault_in("finished width + 2 cm") ==
        "18: inches and centimetres do not go together: write \"as inches\" or \"as centimetres\" behind one of them");
    CHECK(fault_in("1 in 2 cm") == "8: inches and centimetres do not make one measurement");
    CHECK(fault_in("finished width + 2") == "18: this is a number, and what it goes with is a length in inches");
    CHECK(fault_in("finished widht") == "1: nothing here is named \"finished widht\"");
    CHECK(fault_in("") == "1: expected a number, a measurement or a name");
    CHECK(fault_in("2 +") == "4: expected a number, a measurement or a name");
    CHECK(fault_in("(2 + 3") == "7: expected an operation or \")\"");
    CHECK(fault_in("2 3") == "3: expected an operation, such as + or \"at least\", or the end");
    CHECK(fault_in("2 pockets") == "3: expected an operation, such as + or \"at least\", or the end");
    CHECK(fault_in("12-1/2 in") == "3: this hyphen may join a mixed number or take one number from another: write a "
                                   "blank instead of it, or one on each side of it");
    CHECK(fault_in("10 in / 1/2") ==
          "9: put the fraction that divides in brackets, so that it is plain what is divided");
    CHECK(fault_in("1,000 in") ==
          "2: a comma before three digits may mean thousands or thousandths: write the number without it");
    CHECK(fault_in("finished width / (pockets - 3)") == "18: division by zero: the divisor must not be zero");
    CHECK(fault_in("finished width is at least 3") ==
          "28: this is a number, and what it goes with is a length in inches");
    CHECK(fault_in("where pockets then 1 otherwise 2") == "7: expected a condition: this is a number");
    CHECK(fault_in("where pockets is 3 then 1 otherwise 2 in") ==
          "37: this is a length in inches, and what it goes with is a number");
    CHECK(fault_in("where pockets is 3 then 1") == "26: expected \"otherwise\"");
    CHECK(fault_in("turn of cloth (stack: 1 in, stack: 1 in)") == "29: expected \"cloth:\" or \"step:\"");
    CHECK(fault_in("turn of cloth (stack: 1 in)") == "27: expected a comma and \"cloth:\" or \"step:\"");
    CHECK(fault_in("whole part (3 in)") == "13: expected a number: this is a length in inches");
    CHECK(fault_in("packet as yards") == "11: expected \"inches\" or \"centimetres\"");
    CHECK(fault_in("finished width rounded up to 0 in").starts_with("30: "));
    CHECK(fault_in("9 in rounded up to one of (7 in, 8 in)") == "27: none of these is large enough");
    CHECK(fault_in("6 in rounded down to one of (7 in, 8 in)") == "29: none of these is small enough");
    CHECK(fault_in("9 in rounded up to one of 7 in") == "27: expected \"(\" and what it is one of");
    CHECK(fault_in("9 in rounded up to one of (7 in, 8)") ==
          "34: this is a number, and what it goes with is a length in inches");
    CHECK(fault_in("(pockets is 3) + 1") == "18: this is a number, and what it goes with is a condition");
    CHECK(fault_in("(pockets is 3) * 2") == "1: a condition is not reckoned with");
    CHECK(fault_in("3 in\n") == "5: a character that cannot be printed");
}

TEST_CASE("what is too large, too long or too deep is refused with its place") {
    CHECK(fault_in("9000000000000000000 in * 2").starts_with("1: "));
    CHECK(refused::facts<expression_error>([] { worked("4000000000 * 4000000000"); }) ==
          "does not fit: an expression, index 0");
    CHECK(fault_in(std::string(1001, ' ')) == "1001: an expression has at most 1000 bytes");
    const auto brackets = [](std::size_t n) { return std::string(n, '(') + "1" + std::string(n, ')'); };
    CHECK(fault_in(brackets(deepest_expression - 1)) == "(1)");
    CHECK(fault_in(brackets(200)).find("too deep") != std::string::npos);
    CHECK(fault_in(std::string(500, '-') + "1").find("too deep") != std::string::npos);
}

TEST_CASE("names are words of letters and digits, in any script") {
    for (const char* good : {"packet width", "Höhe", "幅 2", "top of the flap", "at the foot"})
        CHECK_NOTHROW(require_name(good));
    for (const char* bad : {"", "2 packets", "this and that", "at least", "a-b", "a, b", "½", "is", " (a)"})
        CHECK_THROWS_AS(require_name(bad), expression_error);
}

namespace {

struct written {
    std::string text;
    mpq_class value;
    bool is_length;
};

written anything(at_random::sampler& random, int depth, bool is_length) {
    if (depth == 0 || random.between(0, 5) == 0) {
        const std::int64_t over = random.between(1, 99), under = random.between(2, 9);
        mpq_class value(static_cast<long>(over), static_cast<unsigned long>(under));
        value.canonicalize();
        return {"(" + std::to_string(over) + "/" + std::to_string(under) + (is_length ? " in)" : ")"), value,
                is_length};
    }
    const auto part = [&](bool length) { return anything(random, depth - 1, length); };
    const auto joined = [&](const written& a, const char* by, const written& b, mpq_class value) {
        return written{"(" + a.text + by + b.text + ")", std::move(value), is_length};
    };
    const std::int64_t what = random.between(0, 7);
    if (what == 0) {
        const written a = part(is_length), b = part(false);
        return joined(a, " * ", b, a.value * b.value);
    }
    if (what == 1) {
        const written a = part(is_length), b = part(false);
        if (b.value != 0)
            return joined(a, " / ", b, a.value / b.value);
    }
    const written a = part(is_length), b = part(is_length);
    if (what == 2)
        return joined(a, " at least ", b, a.value > b.value ? a.value : b.value);
    if (what == 3)
        return joined(a, ", at most ", b, a.value < b.value ? a.value : b.value);
    if (what == 4) {
        const written c = part(true), d = part(true);
        return {"(where " + c.text + " is less than " + d.text + " then " + a.text + " otherwise " + b.text + ")",
                c.value < d.value ? a.value : b.value, is_length};
    }
    if (what == 5 && b.value > 0) {
        mpz_class steps;
        const mpq_class quotient = a.value / b.value;
        mpz_fdiv_q(steps.get_mpz_t(), quotient.get_num_mpz_t(), quotient.get_den_mpz_t());
        return joined(a, " rounded down to ", b, steps * b.value);
    }
    return what == 6 ? joined(a, " - ", b, a.value - b.value) : joined(a, " + ", b, a.value + b.value);
}

} // namespace

TEST_CASE("random expressions are what GMP makes of them, or do not fit") {
    at_random::sampler random(77);
    int fitted = 0;
    while (random.another_of(3000)) {
        const written w = anything(random, 3, random.between(0, 1) == 0);
        if (w.text.size() > most_in_an_expression)
            continue;
        CAPTURE(w.text);
        try {
            const expression_value v = value_of(expression(w.text), {});
            CHECK(v.is_length() == w.is_length);
            CHECK(std::to_string(numerator(*v.number)) == w.value.get_num().get_str());
            CHECK(std::to_string(denominator(*v.number)) == w.value.get_den().get_str());
            ++fitted;
        } catch (const expression_error& e) {
            CHECK(e.facts().kind == fault::does_not_fit);
        }
    }
    CHECK(fitted > 2000);
}
