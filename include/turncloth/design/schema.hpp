// The JSON Schema of designs as files (JSON Schema, draft 2020-12), written from the members that the reader reads.
//
//   design_schema()      nlohmann::ordered_json; include/turncloth/design/project_design.schema.json is what it writes
//
// A file that it finds sound may still be refused: it does not read expressions.
//
// Included by itself; it needs the header of JSON for Modern C++ (Debian: nlohmann-json3-dev), the library does not.
#ifndef TURNCLOTH_DESIGN_SCHEMA_HPP
#define TURNCLOTH_DESIGN_SCHEMA_HPP

#include <turncloth/measure/write.hpp>
#ifndef TURNCLOTH_COMPILED
#include <turncloth/design/detail/schema_writer.hpp>
#endif

#include <nlohmann/json.hpp>

namespace turncloth {

TURNCLOTH_INLINE nlohmann::ordered_json design_schema();

#ifndef TURNCLOTH_COMPILED
TURNCLOTH_INLINE nlohmann::ordered_json design_schema() {
    using detail::schema_writer;
    detail::json text = schema_writer::text(), words = schema_writer::text();
    words["description"] = "A text in which expressions may stand in braces";
    detail::json part = words;
    part["description"] =
        "A part by its name, with its number where several are cut alike; expressions may stand in braces";
    detail::json j = {{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                      {"title", "A design of a sewn project, for any finished size"}};
    j.update(schema_writer::object_of(project_design{}));
    j["anyOf"] = {{{"required", {"pieces"}}}, {{"required", {"outlines"}}}};
    j["$defs"] = {{"text", text},
                  {"words", words},
                  {"part", part},
                  {"line", schema_writer::object_of(design_line{})},
                  {"expression",
                   {{"description", "A length, a number or a condition, as design/expression.hpp has it"},
                    {"type", {"string", "integer"}},
                    {"minLength", 1},
                    {"maxLength", most_in_an_expression}}},
                  {"finish", schema_writer::forms<form_kind::finish>()},
                  {"places", schema_writer::forms<form_kind::row>()},
                  {"notion", schema_writer::forms<form_kind::notion>()},
                  {"curve", schema_writer::forms<form_kind::curve>()}};
    return j;
}
#endif

} // namespace turncloth

#endif
