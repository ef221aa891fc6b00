// Whole projects, with names of any bytes: sheets, texts and drawings are made or refused with a typed error; every
// drawing is a well-formed document, and figures written as JSON read back the same.
#include "feed.hpp"
#include <turncloth/draw/piece.hpp>
#include <turncloth/sheet/json.hpp>

#include <pugixml.hpp>

#include <string>
#include <vector>

using namespace fuzzing;

namespace {

template <length_unit Unit>
place<finished_edge, Unit> somewhere(feed& bytes) {
    return at<finished_edge>(bytes.length<Unit>());
}

template <length_unit Unit>
void add_piece(feed& bytes, project<Unit>& p) {
    const finished_size<Unit> size = bytes.ConsumeBool() ? p.finished() : bytes.size<Unit>();
    auto& added = p.add({bytes.text(), bytes.text(), panel<Unit>(size, bytes.edges<Unit>())});
    if (bytes.one_in(4))
        added.count(bytes.between(0, 1000));
    if (bytes.one_in(4))
        added.of_film();
    if (bytes.one_in(4))
        added.lies_inside(p.pieces().front());
    for (int marks = bytes.ConsumeIntegralInRange(0, 3); marks > 0; --marks) {
        const edge from = bytes.any_edge();
        switch (bytes.ConsumeIntegralInRange(0, 3)) {
        case 0:
            added.mark(bytes.text(), from, divided<finished_edge>(bytes.length<Unit>(), bytes.between(1, 40)));
            break;
        case 1:
            added.mark(bytes.text(), from, at<stitched_line>(bytes.length<Unit>()));
            break;
        case 2:
            added.mark(bytes.text(), from, at<cut_edge>(bytes.length<Unit>()));
            break;
        default:
            added.mark(bytes.text(40), from, somewhere<Unit>(bytes));
        }
    }
}

template <length_unit Unit>
std::string name_of_a_piece(feed& bytes, const project<Unit>& p) {
    if (bytes.one_in(8))
        return bytes.text();
    return p.pieces()[static_cast<std::size_t>(bytes.between(0, static_cast<std::int64_t>(p.pieces().size()) - 1))]
        .name();
}

template <length_unit Unit>
zipper<Unit> any_zipper(feed& bytes, const project<Unit>& p) {
    zipper<Unit> z{.on = name_of_a_piece(bytes, p),
                   .from = bytes.any_edge(),
                   .centres = {},
                   .opening = {},
                   .rows = {},
                   .slit = {},
                   .supply = {}};
    for (int n = bytes.ConsumeIntegralInRange(0, 3); n > 0; --n)
        z.centres.push_back(somewhere<Unit>(bytes));
    z.opening = {bytes.length<Unit>(), bytes.length<Unit>(), bytes.length<Unit>()};
    z.rows = bytes.length<Unit>();
    z.slit = bytes.ConsumeBool() ? z.rows / 2 : bytes.length<Unit>();
    if (bytes.ConsumeBool())
        z.supply = zipper_supply<Unit>::from_roll(bytes.length<Unit>());
    else
        z.supply = zipper_supply<Unit>::made_up({bytes.length<Unit>(), bytes.length<Unit>()}, bytes.length<Unit>(),
                                                bytes.length<Unit>());
    return z;
}

/// What joins pieces, and what is bought beside them.
template <length_unit Unit>
void add_the_rest(feed& bytes, project<Unit>& p) {
    const auto a = bytes.length<Unit>(), b = bytes.length<Unit>();
    switch (bytes.ConsumeIntegralInRange(0, 7)) {
    case 0:
        p.add(any_zipper(bytes, p));
        break;
    case 1:
        p.add(meeting<Unit>{name_of_a_piece(bytes, p), name_of_a_piece(bytes, p), bytes.any_edge(), a, b,
                            bytes.between(0, 40)});
        break;
    case 2:
        p.add(placing<Unit>{name_of_a_piece(bytes, p), name_of_a_piece(bytes, p), at<finished_edge>(a),
                            at<finished_edge>(b)});
        break;
    case 3:
        p.add(span_list<Unit>{bytes.text(), name_of_a_piece(bytes, p), bytes.any_edge(), {a, b}});
        break;
    case 4:
        p.add(must_reach<Unit>{bytes.text(), a, b});
        break;
    case 5:
        p.add(sewing<Unit>{stitch(301), a, bytes.number(), b});
        break;
    case 6:
        p.add(notion<Unit>(bytes.text()).figure(bytes.text(), a).number(bytes.text(), bytes.between(0, 9)));
        break;
    default:
        p.caution(bytes.text(40), caution::all[static_cast<std::size_t>(bytes.between(0, caution::all.size() - 1))].at);
    }
}

void well_formed(const std::string& drawing) {
    pugi::xml_document document;
    must(bool(document.load_buffer(drawing.data(), drawing.size(), pugi::parse_full, pugi::encoding_utf8)),
         "a drawing is a well-formed document");
}

/// Names of broken bytes are replaced, since JSON cannot hold them; figures must come through whole.
template <length_unit Unit>
void reads_back(const sheet<Unit>& made) {
    using nlohmann::json;
    const json read = json::parse(to_json(made).dump(-1, ' ', false, json::error_handler_t::replace));
    must(read["pieces"].size() == made.pieces.size(), "as many pieces are read as were written");
    for (std::size_t i = 0; i < made.pieces.size(); ++i) {
        const json& width = read["pieces"][i]["cut"]["width"];
        must(read_fraction(width["exact"].get<std::string>()) == made.pieces[i].cut.width().value(),
             "a cut width reads back the same");
    }
}

template <length_unit Unit>
void check(feed& bytes) {
    static constexpr units_shown editions[] = {units_shown::inches, units_shown::centimetres, units_shown::both};
    project<Unit> p(bytes.text(40), bytes.size<Unit>());
    ruler by{.shows = bytes.PickValueInArray(editions)};
    if (bytes.ConsumeBool()) {
        by.inches = bytes.length<inch>();
        by.centimetres = bytes.length<centimetre>();
    }
    for (int pieces = bytes.ConsumeIntegralInRange(0, 4); pieces > 0; --pieces)
        add_piece(bytes, p);
    for (int more = p.pieces().empty() ? 0 : bytes.ConsumeIntegralInRange(0, 3); more > 0; --more)
        add_the_rest(bytes, p);
    const sheet<Unit> made = sheet_of(p);
    must(!to_text(made, by).empty(), "a sheet has a text");
    reads_back(made);
    for (const auto& piece : made.pieces)
        well_formed(
            to_svg(page_of(piece, by, {.project = p.name(), .on = bytes.ConsumeBool() ? paper::a4 : paper::letter})));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    feed bytes(data, size);
    refused([&] { bytes.ConsumeBool() ? check<inch>(bytes) : check<centimetre>(bytes); });
    return 0;
}
