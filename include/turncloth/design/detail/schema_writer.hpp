// The JSON Schema of designs, record by record, written from the members that the reader reads.
//
//   schema_writer::object_of(record)      the schema of a record
//   schema_writer::forms<Kind>()          that of the forms of a kind
//
//   schema_writer::object_of(project_design{}).at("properties").contains("pieces");      // true
#ifndef TURNCLOTH_DESIGN_DETAIL_SCHEMA_WRITER_HPP
#define TURNCLOTH_DESIGN_DETAIL_SCHEMA_WRITER_HPP

#include <turncloth/design/detail/forms.hpp>
#include <turncloth/design/detail/json_reader.hpp>
#include <turncloth/design/detail/members.hpp>
#include <turncloth/design/faults.hpp>
#include <turncloth/design/project_design.hpp>
#include <turncloth/sheet/json_lengths.hpp>

#include <nlohmann/json.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace turncloth::detail {

class schema_writer {
public:
    template <design_record Record>
    static json object_of(Record record) {
        schema_writer w;
        if constexpr (std::is_same_v<Record, project_design>) {
            w.properties_["$schema"] = {{"type", "string"}};
            w.properties_[std::string(design_format)] = {{"const", design_version}};
            w.required_.push_back(design_format);
        }
        members(w, record);
        json j = {{"type", "object"}, {"properties", w.properties_}};
        if (!w.required_.empty())
            j["required"] = w.required_;
        j["additionalProperties"] = false;
        return j;
    }

    template <class T>
    void must(std::string_view name, T& member, std::string_view about) {
        required_.push_back(name);
        may(name, member, about);
    }
    template <class T>
    void may(std::string_view name, T& member, std::string_view about) {
        json said = {{"description", about}};
        said.update(of(member));
        properties_[std::string(name)] = std::move(said);
    }

    static json reference_to(const char* what) { return {{"$ref", std::string("#/$defs/") + what}}; }
    template <form_kind Kind>
    static json forms() {
        json all = json::array();
        for (const auto& maker : makers_of<inch>(filled_form<Kind>{})) {
            json properties = {{"is", {{"const", maker.is.is}}}}, required = {"is"};
            for (std::size_t i = 0; i < maker.is.size(); ++i) {
                properties[std::string(maker.is.parts[i].name)] = reference_to("expression");
                if (maker.is.parts[i].must)
                    required.push_back(maker.is.parts[i].name);
            }
            all.push_back({{"type", "object"},
                           {"properties", properties},
                           {"required", required},
                           {"additionalProperties", false}});
        }
        if constexpr (Kind == form_kind::finish)
            all.push_back(own_finish());
        return {{"oneOf", all}};
    }
    /// A finish of the design's own, by what it is called.
    static json own_finish() {
        json forms = json::array();
        for (const auto& maker : finish_forms<inch>)
            forms.push_back(maker.is.is);
        return {{"type", "object"},
                {"properties", {{"is", {{"type", "string"}, {"not", {{"enum", forms}}}}}}},
                {"required", {"is"}},
                {"additionalProperties", false}};
    }
    static json text() { return {{"type", "string"}, {"minLength", 1}, {"maxLength", most_in_a_design}}; }

private:
    template <design_record Record>
    static json of(const Record& record) {
        return object_of(record);
    }
    static json of(const std::string&) { return reference_to("text"); }
    static json of(const design_words&) { return reference_to("words"); }
    static json of(const design_part&) { return reference_to("part"); }
    static json of(const design_line&) { return reference_to("line"); }
    static json of(bool) { return {{"type", "boolean"}}; }
    template <wanted W>
    static json of(const expression_for<W>&) {
        return reference_to("expression");
    }
    template <class Choice>
        requires std::is_enum_v<Choice>
    static json of(Choice c) { return {{"enum", words_of(c)}}; }
    static json of(const design_finish&) { return reference_to("finish"); }
    static json of(const design_row&) { return reference_to("places"); }
    static json of(const notion_form&) { return reference_to("notion"); }
    static json of(const design_curve&) { return reference_to("curve"); }
    template <class T>
    static json of(const std::optional<T>&) {
        return of(T{});
    }
    template <class T>
    static json of(const std::vector<T>&) {
        return {{"type", "array"}, {"maxItems", most_in_a_design}, {"items", of(T{})}};
    }

    json properties_ = json::object(), required_ = json::array();
};

} // namespace turncloth::detail

#endif
