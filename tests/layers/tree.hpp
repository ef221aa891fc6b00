// The tree of sources as the layer tests see it: the order of the folders, and where a header lies.
#ifndef TURNCLOTH_TESTS_LAYERS_TREE_HPP
#define TURNCLOTH_TESTS_LAYERS_TREE_HPP

#include "sources.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

namespace layers {

// Each folder uses only those before it.
inline const std::vector<std::string> order{"measure", "page",  "marks",  "panel", "notions", "cloth",
                                            "making",  "sheet", "design", "draw",  "handout", "testing"};

inline std::string read(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// The files below a folder whose names end so, by their paths from `base`.
inline std::vector<source> files_in(const std::filesystem::path& folder, const std::string& ending,
                                    const std::filesystem::path& base) {
    std::vector<source> found;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
        if (entry.path().string().ends_with(ending))
            found.push_back({entry.path().lexically_relative(base).generic_string(), read(entry.path())});
    std::sort(found.begin(), found.end(), [](const source& a, const source& b) { return a.path < b.path; });
    return found;
}

inline std::vector<source> headers() { return files_in("include", ".hpp", "include"); }

/// "turncloth/cloth/lay/check.hpp" lies in the folder "cloth"; "turncloth/version.hpp" in none.
inline std::string folder_of(const std::string& header) {
    const std::string library = "turncloth/";
    if (!header.starts_with(library))
        return "";
    const auto end = header.find('/', library.size());
    return end == std::string::npos ? "" : header.substr(library.size(), end - library.size());
}

inline bool in_sub_folder(const std::string& header) { return std::count(header.begin(), header.end(), '/') > 2; }

inline std::string stem_of(const std::string& header) { return std::filesystem::path(header).stem().string(); }

} // namespace layers

#endif
