// The published schema is what the library writes, and it and the reader agree about every member of every object.
#include "designs.hpp"
#include <turncloth/design/schema.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <string>
#include <utility>
#include <vector>

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
    for (const json& one : here["oneOf"]) // the last, of what a design names itself, has no name of its own
        if (one["properties"]["is"].value("const", object["is"]) == object["is"])
            return one;
    FAIL("no such form: " << object["is"]);
    return here;
}

/// An object of a file, and the schema that it is to be of.
struct object_there {
    std::string path;
    json own;
    std::size_t depth;
};

struct agreement {
    const json root = design_schema();
    const json file = json::parse(designs::every_member());
    std::vector<object_there> objects{};
    std::size_t members = 0;

    void collect(const json& here, const json& schema_here, const std::string& path, std::size_t depth) {
        const json& schema = resolved(schema_here, root);
        if (here.is_array())
            for (std::size_t i = 0; i < here.size(); ++i)
                collect(here[i], schema["items"], path + "/" + std::to_string(i), depth);
        if (!here.is_object())
            return;
        const json own = schema_for(here, schema, root);
        objects.push_back({path, own, depth});
        for (const auto& member : here.items()) {
            CHECK_MESSAGE(own["properties"].contains(member.key()), path, "/", member.key());
            collect(member.value(), own["properties"][member.key()], path + "/" + member.key(), depth + 1);
        }
    }

    static bool finds(const std::string& faults, const std::string& path) {
        return ("\n" + faults).find("\n" + path + ": ") != std::string::npos;
    }
    static json& at(json& all, const std::string& path) { return all[json::json_pointer(path)]; }

    /// Each object is given a member that it has not, all at once.
    void look_at_unknown_members() const {
        json changed = file;
        for (const object_there& o : objects) {
            REQUIRE(o.own["additionalProperties"] == false);
            at(changed, o.path)["colour"] = "1 in";
        }
        const std::string faults = designs::faults(changed.dump());
        for (const object_there& o : objects)
            CHECK_MESSAGE(finds(faults, o.path + "/colour"), o.path);
    }
    /// The n-th member of each object is taken away, from all that lie so deep at once, since none of them is in another.
    void look_without_members(std::size_t depth, std::size_t n) {
        json changed = file;
        std::vector<std::pair<std::string, bool>> taken;
        for (const object_there& o : objects) {
            if (o.depth != depth || n >= o.own["properties"].size())
                continue;
            const std::string name = std::next(o.own["properties"].begin(), static_cast<std::ptrdiff_t>(n)).key();
            const json required = o.own.value("required", json::array());
            const bool must = std::find(required.begin(), required.end(), name) != required.end();
            if (at(changed, o.path).erase(name) > 0)
                taken.emplace_back(o.path + "/" + name, must);
            else
                CHECK_MESSAGE(!must, o.path, "/", name); // and the whole file is sound
        }
        const std::string faults = taken.empty() ? "" : designs::faults(changed.dump());
        for (const auto& one : taken)
            CHECK_MESSAGE(finds(faults, one.first) == one.second, one.first);
        members += taken.size();
    }
};

} // namespace

TEST_CASE("the schema in the repository is the one that the library writes") {
    CHECK(designs::file("include/turncloth/design/project_design.schema.json") == design_schema().dump(2) + "\n");
}

TEST_CASE("the schema and the reader agree about what must be there and what is unknown") {
    agreement a;
    REQUIRE(designs::faults(a.file.dump()) == "");
    a.collect(a.file, a.root, "", 0);
    CHECK(a.objects.size() > 70);
    a.look_at_unknown_members();
    std::size_t deepest = 0, most = 0;
    for (const object_there& o : a.objects) {
        deepest = std::max(deepest, o.depth);
        most = std::max(most, o.own["properties"].size());
    }
    for (std::size_t depth = 0; depth <= deepest; ++depth)
        for (std::size_t n = 0; n < most; ++n)
            a.look_without_members(depth, n);
    CHECK(a.members > 330);
}
