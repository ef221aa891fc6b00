// Prints with the built program as a person does, and measures what lies on the pages with poppler's tools.
//
//   workshop w;                        a folder of its own, removed at the end
//   w.run("pad.json --out pad.pdf")    status, out, err of the program; run_of(program, arguments) of another
//   w.page_sizes("pad.pdf")            of every page, in points, as pdfinfo tells them
//   w.pages("pad.pdf")                 for each page its words and its lines, in millimetres from the upper left corner
//
//   for (const drawn_line& l : w.pages("pad.pdf")[0].lines) l.weight, l.dash, l.points
#ifndef TURNCLOTH_TESTS_DRAFTING_PRINTED_HPP
#define TURNCLOTH_TESTS_DRAFTING_PRINTED_HPP

#include "../folder.hpp"
#include "pages.hpp"
#include <turncloth/draw/detail/outline_picture.hpp>

#include <pugixml.hpp>

#include <cmath>
#include <cstddef>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

using turncloth::page_point;
using turncloth::pen;
using namespace drafting;

inline constexpr pen cut_pen = turncloth::detail::cut_line_kind.with,
                     seam_pen = turncloth::detail::finished_line_kind.with,
                     notch_pen = turncloth::detail::notch_line.with, grain_pen = turncloth::detail::grain_pen,
                     foot_pen = turncloth::detail::scale_pen;

struct drawn_line {
    double weight = 0, dash = 0;
    std::vector<page_point> points;
    bool closed = false;

    /// By its pen: every kind has one of its own.
    bool is(const pen& with) const {
        return std::abs(weight - with.weight) < 0.01 && std::abs(dash - with.dashes[0]) < 0.01;
    }
};

struct printed_page {
    std::string words;
    std::vector<drawn_line> lines;

    std::vector<drawn_line> of(const pen& with) const {
        std::vector<drawn_line> found;
        for (const drawn_line& l : lines)
            if (l.is(with))
                found.push_back(l);
        return found;
    }
    bool says(std::string_view text) const { return words.find(text) != std::string::npos; }
};

class workshop : public test_folder {
public:
    std::size_t files() const {
        const auto all = std::filesystem::directory_iterator(path());
        return static_cast<std::size_t>(std::distance(begin(all), end(all)));
    }

    run_result run(const std::string& arguments, const std::string& before = "") const {
        return run_of(TURNCLOTH_DRAFTING_PROGRAM, arguments, before);
    }
    run_result run_of(const std::string& program, const std::string& arguments, const std::string& before = "") const {
        static const std::string leaks =
            " LSAN_OPTIONS=print_suppressions=0:suppressions='" TURNCLOTH_DRAFTING_LEAKS "'";
        return test_folder::run_of(program, arguments, before + leaks);
    }

    std::vector<std::pair<double, double>> page_sizes(const std::string& pdf) const {
        std::istringstream told(of_tool("pdfinfo -f 1 -l 9999 " + pdf));
        std::vector<std::pair<double, double>> sizes;
        for (std::string line; std::getline(told, line);)
            if (const auto at = line.find(" size:"); line.starts_with("Page ") && at != std::string::npos) {
                std::istringstream numbers(line.substr(at + 6));
                std::string x;
                sizes.emplace_back();
                numbers >> sizes.back().first >> x >> sizes.back().second;
            }
        return sizes;
    }

    std::vector<printed_page> pages(const std::string& pdf) const {
        std::vector<printed_page> all;
        const std::size_t n = page_sizes(pdf).size();
        for (std::size_t i = 1; i <= n; ++i) {
            const std::string which = " -f " + std::to_string(i) + " -l " + std::to_string(i) + " " + pdf + " -";
            // Without these two options the page is fitted to a paper of whole points.
            all.push_back({of_tool("pdftotext -layout" + which),
                           lines_of_svg(of_tool("pdftocairo -svg -nocenter -noshrink" + which))});
        }
        return all;
    }

    std::string of_tool(const std::string& command) const {
        if (shell(command + " </dev/null >.tool") != 0)
            throw std::runtime_error("this failed (Debian: poppler-utils): " + command);
        std::string told = read(".tool");
        std::filesystem::remove(*this / ".tool");
        return told;
    }

private:
    static constexpr double millimetre = 25.4 / 72; // of a point

    static double number_after(const std::string& style, const std::string& key) {
        const std::size_t at = style.find(key);
        return at == std::string::npos ? 0 : std::strtod(style.c_str() + at + key.size(), nullptr);
    }

    static std::vector<drawn_line> lines_of_svg(const std::string& svg) {
        pugi::xml_document document;
        if (!document.load_string(svg.c_str()))
            throw std::runtime_error("pdftocairo wrote no SVG");
        std::vector<drawn_line> lines;
        for (const auto& found : document.select_nodes("//path[contains(@style, 'stroke-width')]")) {
            const std::string style = found.node().attribute("style").value();
            if (found.node().attribute("transform"))
                throw std::runtime_error("a line is scaled or moved");
            drawn_line line;
            line.weight = number_after(style, "stroke-width:") * millimetre;
            line.dash = number_after(style, "stroke-dasharray:") * millimetre;
            std::istringstream words(found.node().attribute("d").value());
            for (std::string word; words >> word;) {
                if (word == "Z") {
                    line.closed = true;
                    break; // after it the path begins again with nothing
                }
                if (word != "M" && word != "L")
                    throw std::runtime_error("a line has a part " + word);
                page_point p{};
                words >> p.x >> p.y;
                line.points.push_back({p.x * millimetre, p.y * millimetre});
            }
            lines.push_back(std::move(line));
        }
        return lines;
    }
};

#endif
