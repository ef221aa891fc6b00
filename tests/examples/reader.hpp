// A reader of handouts, read(project, size, units): from what is printed alone, its words and tables as HTML, every sum is added again, every cut
// size and mark is found from the sums, and what is bought is held against what shops sell. The arithmetic is GMP's; an
// inch is 2.54 cm (NIST SP 811, 2008, Appendix B), a yard 36 in; that cloth is sold by the eighth of a yard and by ten
// centimetres is common practice.
#ifndef TURNCLOTH_TESTS_EXAMPLES_READER_HPP
#define TURNCLOTH_TESTS_EXAMPLES_READER_HPP

#include "../../examples/sheets/worked_out.hpp"

#include <doctest/doctest.h>
#include <gmpxx.h>
#include <pugixml.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace reader {

using std::string;
using turncloth::units_shown;

inline string plain(string text) {
    for (std::size_t at; (at = text.find("\xC2\xA0")) != string::npos;)
        text.replace(at, 2, " ");
    return text;
}

/// "12 1/2", "31.75", "7"
inline mpq_class number(const string& text) {
    static const std::regex mixed(R"((?:(\d+) )?(\d+)/(\d+))"), decimal(R"((\d+)(?:\.(\d+))?)");
    std::smatch m;
    if (std::regex_match(text, m, mixed))
        return mpq_class(m[1].matched ? m[1].str() : "0", 10) + mpq_class(m[2].str() + "/" + m[3].str(), 10);
    REQUIRE_MESSAGE(std::regex_match(text, m, decimal), text);
    mpq_class value(m[1].str() + m[2].str() + "/1" + string(static_cast<std::size_t>(m[2].length()), '0'), 10);
    value.canonicalize();
    return value;
}
inline const string a_number = R"((\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?))";

using row = std::vector<string>;

/// What is printed, and no more of it.
class printed {
public:
    explicit printed(const string& html) {
        const auto parsed = document_.load_string(html.c_str(), pugi::parse_full);
        REQUIRE_MESSAGE(parsed, parsed.description());
    }

    std::vector<string> texts(const char* path) const {
        std::vector<string> all;
        auto nodes = document_.select_nodes(path);
        nodes.sort(); // as they are printed
        for (const auto& found : nodes)
            all.push_back(text_of(found.node()));
        return all;
    }
    /// The rows of each table whose caption begins so, by its caption.
    std::map<string, std::vector<row>> tables(const string& begins) const {
        std::map<string, std::vector<row>> all;
        for (const auto& found : document_.select_nodes("//table")) {
            const string caption = text_of(found.node().child("caption"));
            if (caption.rfind(begins, 0) != 0)
                continue;
            auto& rows = all[caption];
            for (const auto& r : found.node().select_nodes("tbody/tr")) {
                rows.emplace_back();
                for (const auto& cell : r.node().children())
                    rows.back().push_back(text_of(cell));
            }
        }
        return all;
    }
    std::vector<row> table(const string& begins) const {
        const auto all = tables(begins);
        REQUIRE_MESSAGE(all.size() == 1, begins);
        return all.begin()->second;
    }

private:
    static string text_of(const pugi::xml_node& n) {
        string all;
        struct walker : pugi::xml_tree_walker {
            string* to = nullptr;
            bool for_each(pugi::xml_node& child) override {
                *to += child.value();
                return true;
            }
        } w;
        w.to = &all;
        pugi::xml_node(n).traverse(w);
        return plain(all);
    }
    pugi::xml_document document_;
};

/// "32 in = 29 in finished + 2 x (5/8 + 5/8 + 1/4) in self-binding": both sides.
inline std::pair<mpq_class, mpq_class> both_sides(const string& sum) {
    static const std::regex term("([+-]|=) (?:" + a_number + " x )?(?:\\(([^)]*)\\)|" + a_number +
                                 ") ?(?:in\\b|cm\\b|(?=[+=]))");
    static const std::regex part(a_number);
    std::smatch first;
    REQUIRE_MESSAGE(std::regex_search(sum, first, part), sum);
    mpq_class right;
    for (std::sregex_iterator t(sum.begin(), sum.end(), term), end; t != end; ++t) {
        mpq_class inside;
        const string parts = (*t)[3].matched ? (*t)[3].str() : (*t)[4].str();
        for (std::sregex_iterator p(parts.begin(), parts.end(), part); p != end; ++p)
            inside += number((*p)[1]);
        const mpq_class times = (*t)[2].matched ? number((*t)[2]) : mpq_class(1);
        right += ((*t)[1] == "-" ? -1 : 1) * times * inside;
    }
    return {number(first[1]), right};
}

struct printed_size {
    mpq_class width, height;
    friend bool operator==(const printed_size&, const printed_size&) = default;
};
/// The first "29 x 21 in" of a text.
inline printed_size size_in(const string& text) {
    static const std::regex size(a_number + " x " + a_number + " (in|cm)");
    std::smatch m;
    REQUIRE_MESSAGE(std::regex_search(text, m, size), text);
    return {number(m[1]), number(m[2])};
}
inline mpq_class first_in(const string& text) {
    static const std::regex one(a_number);
    std::smatch m;
    REQUIRE_MESSAGE(std::regex_search(text, m, one), text);
    return number(m[1]);
}

/// Every "12 1/2 in (31.8 cm)" is one length twice.
inline void check_both_units(const printed& p) {
    static const std::regex twice(a_number + R"( in \()" + a_number + R"( cm\))");
    std::size_t found = 0;
    for (const string& text : p.texts("//p|//td|//th|//li|//*[local-name()='text']"))
        for (std::sregex_iterator t(text.begin(), text.end(), twice), end; t != end; ++t, ++found) {
            const mpq_class off = abs(number((*t)[1]) * mpq_class("254/100") - number((*t)[2]));
            CHECK_MESSAGE(off <= mpq_class("129/1000"), t->str()); // half of 1/16 in, and half of 0.1 cm
        }
    CHECK(found > 10);
}

/// Where one unit is read no word is of the other: in titles, tables, drawings and what is said of those.
inline void check_one_unit(const printed& p, units_shown shows) {
    if (shows == units_shown::both)
        return;
    static const std::regex inches(R"([0-9] (in|ft|yd)\b|[0-9]["']|\binch|\byard)"),
        metric(R"([0-9] (mm|cm|m)\b|centimetre|metre)");
    const std::regex& other = shows == units_shown::centimetres ? inches : metric;
    const auto all = p.texts("//title|//body//*[text()]");
    CHECK(all.size() > 100);
    for (const string& text : all)
        CHECK_MESSAGE(!std::regex_search(text, other), text);
}

/// Of workings, by what they are of; a row of marks has several.
using sums_by_name = std::multimap<string, mpq_class>;

inline sums_by_name checked_sums(const printed& p) {
    sums_by_name sums;
    for (const row& r : p.table("Each figure and the sum that it is")) {
        const auto [left, right] = both_sides(r[1]);
        CHECK_MESSAGE(left == right, r[1]);
        sums.emplace(r[0], left);
    }
    return sums;
}

/// A piece is cut at what it finishes at, and all that its working adds.
inline std::map<string, printed_size> checked_cuts(const printed& p, const sums_by_name& sums) {
    const auto said = p.texts("//h3|//h3/following-sibling::p[1]");
    std::map<string, printed_size> cut;
    for (const row& r : p.table("Every piece")) {
        const string name = r[0] + ": " + r[1];
        const printed_size size = cut[name] = size_in(r[4]);
        const auto at = std::find(said.begin(), said.end(), name); // its letter again
        REQUIRE_MESSAGE(at != said.end(), name);
        const string facts = *(at + 1);
        CHECK(size_in(facts) == size);
        const printed_size finished = size_in(facts.substr(facts.find("finishes")));
        const auto width = sums.find(name + ", cut width"), height = sums.find(name + ", cut height");
        CHECK_MESSAGE((width == sums.end() ? finished.width : width->second) == size.width, name);
        CHECK_MESSAGE((height == sums.end() ? finished.height : height->second) == size.height, name);
    }
    return cut;
}

/// "11 3/8 in (28.9 cm), 17 3/8 in (44.1 cm)": in the unit that is printed first.
inline std::vector<mpq_class> distances(const string& text) {
    static const std::regex one("(?:^|, )" + a_number + " (?:in|cm)");
    std::vector<mpq_class> all;
    for (std::sregex_iterator d(text.begin(), text.end(), one), end; d != end; ++d)
        all.push_back(number((*d)[1]));
    return all;
}

/// What is marked is what its working gives, and what lies between the marks adds up to the piece.
inline void check_marks(const printed& p, const sums_by_name& sums, const std::map<string, printed_size>& cut) {
    std::size_t from_sums = 0, whole = 0;
    for (const auto& piece : cut) { // no bindings: Clang 14 cannot take them into a message
        const string& name = piece.first;
        const printed_size& size = piece.second;
        const auto lines = p.tables("Lines on " + name + ","), rows = p.tables("The whole of " + name + ",");
        std::map<string, std::vector<mpq_class>> marked; // by edge and what, as "top edge, foot of a film strip"
        for (const auto& [caption, table] : lines)
            for (const row& r : table)
                for (const char* verb : {"mark ", "stitch ", "fold ", ""})
                    if (r[1].rfind(verb, 0) == 0) {
                        const string what = r[1].substr(string(verb).size());
                        auto& all = marked[r[0] + ", " + what.substr(0, what.find(", "))];
                        const auto more = distances(r[2]);
                        all.insert(all.end(), more.begin(), more.end());
                        break;
                    }
        for (const auto& marks : marked) {
            const string& what = marks.first;
            const std::vector<mpq_class>& places = marks.second;
            for (auto [sum, end] = sums.equal_range(name + ", " + what); sum != end; ++sum, ++from_sums)
                CHECK_MESSAGE(std::count(places.begin(), places.end(), sum->second) > 0, name << ", " << what);
        }
        for (const auto& [caption, table] : rows)
            for (const row& r : table) {
                ++whole;
                const auto comma = r[0].rfind(", from the "), equals = r[1].find(" = ");
                const string edge = r[0].substr(comma + 11), what = r[0].substr(0, comma);
                const mpq_class all = first_in(r[1].substr(equals + 3));
                CHECK_MESSAGE(
                    all == (edge.rfind("top", 0) == 0 || edge.rfind("bottom", 0) == 0 ? size.height : size.width),
                    r[1]);
                mpq_class so_far;
                static const std::regex part(a_number);
                const string parts = r[1].substr(0, equals);
                for (std::sregex_iterator t(parts.begin(), parts.end(), part), end; t != end; ++t) {
                    so_far += number((*t)[1]);
                    const auto& places = marked[edge + ", " + what];
                    CHECK_MESSAGE(
                        (so_far == all || what == "eyelets" || std::count(places.begin(), places.end(), so_far) > 0),
                        r[0] << ": " << r[1]);
                }
                CHECK_MESSAGE(so_far == all, r[1]);
            }
    }
    CHECK(from_sums + whole > 0);
}

inline mpq_class least_multiple(const mpq_class& x, const mpq_class& step) {
    mpz_class n;
    const mpq_class steps = x / step;
    mpz_cdiv_q(n.get_mpz_t(), steps.get_num_mpz_t(), steps.get_den_mpz_t());
    return n * step;
}

/// "7/8 yd (80 cm)", "1.1 m", "90 cm": in inches and in centimetres.
inline void check_amount(const string& amount, mpq_class needed, bool metric) {
    const mpq_class inches = metric ? needed / mpq_class("254/100") : needed,
                    centimetres = inches * mpq_class("254/100");
    std::smatch m;
    if (std::regex_search(amount, m, std::regex(a_number + " yd")))
        CHECK_MESSAGE(number(m[1]) * 36 == least_multiple(inches, mpq_class("9/2")), amount);
    if (std::regex_search(amount, m, std::regex(a_number + " (cm|m)\\b"))) {
        const mpq_class bought = number(m[1]) * (m[2] == "m" ? 100 : 1);
        CHECK_MESSAGE(bought == least_multiple(centimetres, 10), amount);
    }
}

inline void check_purchases(const printed& p, bool metric) {
    std::map<string, mpq_class> needed; // laid, and straightened at both ends
    std::smatch m;
    static const std::regex sum("= " + a_number + " (?:in|cm) laid \\+ 2 x " + a_number);
    for (const row& r : p.table("Each figure and the sum that it is"))
        if (std::regex_search(r[1], m, sum))
            needed[r[0].substr(0, r[0].find(": length to buy"))] = number(m[1]) + 2 * number(m[2]);
    const auto figures = p.tables("For the ");
    std::size_t cloths = 0, threads = 0;
    for (const row& r : p.table("What to buy")) {
        if (needed.count(r[1]) == 1) {
            ++cloths;
            check_amount(r[2], needed[r[1]], metric);
            continue;
        }
        const auto found = figures.find("For the " + r[1]);
        if (found == figures.end())
            continue;
        std::map<string, string> says;
        for (const row& f : found->second)
            says[f[0]] = f[1];
        if (says.count("ribbon, cut") == 1)
            check_amount(r[2], first_in(says["ribbon, cut"]), metric);
        if (says.count("spools") == 1) {
            ++threads;
            const mpq_class each = first_in(says["thread on a spool"]), all = first_in(says["thread, with waste"]);
            const mpq_class spools = number(says["spools"]);
            CHECK(spools * each >= all);
            CHECK((spools - 1) * each < all);
            CHECK(r[2] == "spools: " + says["spools"]);
        }
    }
    CHECK(cloths == needed.size());
    CHECK(threads == 1);
}

/// The size that the title states is what is measured at the end, and its diagonal is square.
inline void check_inspection(const printed& p) {
    const printed_size size = size_in(p.texts("//p[@class='subtitle']")[0]);
    const auto rows = p.table("Measure and look");
    CHECK(first_in(rows[0][1]) == size.width);
    CHECK(first_in(rows[1][1]) == size.height);
    const double d = first_in(rows[2][1]).get_d(), exact = std::hypot(size.width.get_d(), size.height.get_d());
    CHECK(std::fabs(d - exact) <= 0.0501); // half of 0.1 cm, or of 1/16 in
}

/// The same letter on the cut table and, where its cloth is laid, on the lay.
inline void check_letters(const printed& p) {
    const auto drawn = p.texts("//*[local-name()='text']"), headings = p.texts("//h3");
    const auto begins = [](const std::vector<string>& all, const string& words) {
        return std::any_of(all.begin(), all.end(), [&](const string& d) { return d.rfind(words, 0) == 0; });
    };
    const auto listed = p.texts("//li");
    const auto holds = [](const std::vector<string>& all, const string& words) {
        return std::any_of(all.begin(), all.end(), [&](const string& d) { return d.find(words) != string::npos; });
    };
    std::set<string> letters;
    for (const row& r : p.table("Every piece")) {
        CHECK_MESSAGE(letters.insert(r[0]).second, r[0]);
        if (begins(headings, "Cutting out the " + r[3]))
            CHECK_MESSAGE((begins(drawn, r[0]) || holds(listed, "takes off " + r[0] + ": " + r[1])), r[0]);
    }
}

inline void check_structure(const printed& p) {
    CHECK(p.texts("//h1").size() == 1);
    CHECK(p.texts("//script").empty());
    const auto ids = p.texts("//*[local-name()='svg']/*[@id]");
    CHECK(ids.size() == 2 * p.texts("//*[local-name()='svg']").size());
    CHECK(p.texts("//ol[@class='steps']/li").size() > 4);
    for (const string& step : p.texts("//ol[@class='steps']/li"))
        CHECK(step.size() > 20);
}

inline void read(const string& project, const string& size, units_shown shows) {
    CAPTURE(project + ", " + size);
    allotment::orders o;
    o.out = "nowhere"; // so that files are made, in memory
    o.handout = true;
    o.by.shows = shows;
    const auto typed = turncloth::read_size(size);
    const auto made = allotment::work_out(
        {.where = "", .made_of = allotment::job{allotment::find_project(project), typed, {}, {}, project}}, o);
    REQUIRE_MESSAGE(made.refusal.empty(), made.refusal);
    string html;
    for (const auto& f : made.files)
        if (f.ending == ".html")
            html = f.content;
    const printed p(html);
    const bool metric = size.find("cm") != string::npos;
    if (shows == units_shown::both)
        check_both_units(p);
    check_one_unit(p, shows);
    check_structure(p);
    check_letters(p);
    check_inspection(p);
    const sums_by_name sums = checked_sums(p);
    check_marks(p, sums, checked_cuts(p, sums));
    check_purchases(p, metric);
}

} // namespace reader

#endif
