// Runs the built program as a person does, in a folder of its own.
//
//   scratch dir;                       an empty folder, removed at the end
//   const run_result o = dir.run("--project all", "2>&1");
#ifndef TURNCLOTH_TESTS_EXAMPLES_PROGRAM_HPP
#define TURNCLOTH_TESTS_EXAMPLES_PROGRAM_HPP

#include "../folder.hpp"

#include <filesystem>
#include <string>
#include <vector>

class scratch : public test_folder {
public:
    /// Every file under a folder of this one, by its name alone.
    std::vector<std::string> files(const std::string& folder) const {
        std::vector<std::string> names;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(*this / folder))
            if (entry.is_regular_file())
                names.push_back(entry.path().filename().string());
        return names;
    }
    run_result run(const std::string& arguments, const std::string& before = "") const {
        return run_of(TURNCLOTH_SHEETS_PROGRAM, arguments, before);
    }
};

#endif
