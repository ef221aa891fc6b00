// Tables of sizes: any bytes are read as rows; rows written as RFC 4180 describes read back the same; and a row is a
// job, or refused with a typed error.
#include "../../examples/sheets/jobs.hpp"
#include "feed.hpp"

#include <string>
#include <variant>
#include <vector>

using namespace fuzzing;

namespace {

std::string written(const std::vector<allotment::table_row>& rows) {
    std::string text;
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.fields.size(); ++i) {
            text += i == 0 ? "\"" : ",\"";
            for (const char c : row.fields[i])
                text += c == '"' ? "\"\"" : std::string(1, c);
            text += '"';
        }
        text += "\r\n";
    }
    return text;
}

template <length_unit Unit>
void make(const allotment::job& j, const finished_size<Unit>& finished) {
    allotment::sheet_for(j.project->which, finished, j.thickness, allotment::cloth_sold<Unit>{});
}

void make(const allotment::job& j) {
    std::visit([&](const auto& finished) { make(j, finished); }, j.size);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(data), size);
    const auto rows = allotment::read_table(text);
    auto sound = rows;
    std::erase_if(sound, [](const auto& row) { return !row.wrong.empty(); });
    const auto again = allotment::read_table(written(sound));
    must(sound.size() == again.size(), "as many rows are read as were written");
    for (std::size_t i = 0; i < sound.size(); ++i)
        must(sound[i].fields == again[i].fields && again[i].wrong.empty(), "a row reads back the same");
    refused([&] {
        allotment::job_table table(rows, true, [](const std::string&) -> project_design {
            throw range_error("there is no file here", {.kind = fault::missing, .what = "a file"});
        });
        for (const auto& row : table.rows())
            refused([&] { make(table.job_of(row)); });
    });
    return 0;
}
