// The published schema is what the library writes, and it and the reader agree about every member of every object.
#include "designs.hpp"
#include <turncloth/design/schema.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace turncloth;
using json = nlohmann::ordered_json;

namespace {

const json& resolved(const json& schema, const json& root) {
    return schema.contains("$ref") ? root.at(json::json_pointer(schema.at("$ref").get<std::string>().substr(1)))
                                   : schema;
}
/// Of a form, the one that an object names.
const json& schema_for(const json& object, const json& schema, const json& root) {
    const json& here = resolved(schema, root);
    if (!here.contains("oneOf"))
        return here;
    for (const json& one : here["oneOf"])
        if (one["properties"]["is"]["const"] == object["is"])
            return one;
    FAIL("no such form: " << object["is"]);
    return here;
}

struct agreement {
    const json root = design_schema();
    json file;
    int objects = 0, members = 0;

    bool reader_finds(const std::string& path) const {
        const std::string all = "\n" + designs::faults(file.dump());
        return all.find("\n" + path + ": ") != std::string::npos;
    }

    void look(json& here, const json& schema_here, const std::string& path) {
        const json& schema = resolved(schema_here, root);
        if (here.is_array())
            for (std::size_t i = 0; i < here.size(); ++i)
                look(here[i], schema["items"], path + "/" + std::to_string(i));
        if (!here.is_object())
            return;
        ++objects;
        const json own = schema_for(here, schema, root);
        REQUIRE(own["additionalProperties"] == false);
        here["colour"] = "1 in";
        CHECK_MESSAGE(reader_finds(path + "/colour"), path);
        here.erase("colour");
        const json required = own.value("required", json::array());
        for (const auto& property : own["properties"].items()) {
            const std::string& name = property.key();
            const json& member = property.value();
            const bool must = std::find(required.begin(), required.end(), name) != required.end();
            if (!here.contains(name)) { // and the whole file is sound
                CHECK_MESSAGE(!must, path, "/", name);
                continue;
            }
            ++members;
            const json before = here;
            here.erase(name);
            CHECK_MESSAGE(reader_finds(path + "/" + name) == must, path, "/", name);
            here = before;
            look(here[name], member, path + "/" + name);
        }
        for (const auto& member : here.items())
            CHECK_MESSAGE(own["properties"].contains(member.key()), path, "/", member.key());
    }
};

} // namespace

TEST_CASE("the schema in the repository is the one that the library writes") {
    CHECK(designs::file("include/turncloth/design/project_design.schema.json") == design_schema().dump(2) + "\n");
}

TEST_CASE("the schema and the reader agree about what must be there and what is unknown") {
    agreement a{.file = json::parse(designs::every_member())};
    REQUIRE(designs::faults(a.file.dump()) == "");
    a.look(a.file, a.root, "");
    CHECK(a.objects > 35);
    CHECK(a.members > 120);
}
