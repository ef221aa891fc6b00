// Runs the built program as a person does, through the shell, in a folder of its own.
//
//   scratch dir;                       an empty folder, removed at the end
//   const run_result o = dir.run("--project all", "2>&1");
//   o.status  o.out  o.err
#ifndef TURNCLOTH_TESTS_EXAMPLES_PROGRAM_HPP
#define TURNCLOTH_TESTS_EXAMPLES_PROGRAM_HPP

#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

struct run_result {
    int status = -1;
    std::string out, err;

    bool says(std::string_view text) const { return out.find(text) != std::string::npos; }
    bool complains(std::string_view text) const { return err.find(text) != std::string::npos; }
};

class scratch {
public:
    scratch() {
        std::string name = (std::filesystem::temp_directory_path() / "turncloth-sheets-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr)
            throw std::runtime_error("no folder could be made for a test");
        path_ = name;
    }
    ~scratch() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    scratch(const scratch&) = delete;
    scratch& operator=(const scratch&) = delete;

    std::filesystem::path operator/(const std::string& name) const { return path_ / name; }

    void write(const std::string& name, std::string_view content) const {
        std::ofstream(path_ / name, std::ios::binary) << content;
    }
    std::string read(const std::string& name) const {
        std::ifstream in(path_ / name, std::ios::binary);
        return {std::istreambuf_iterator<char>(in), {}};
    }
    /// Every file under a folder of this one, by its name alone.
    std::vector<std::string> files(const std::string& folder) const {
        std::vector<std::string> names;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(path_ / folder))
            if (entry.is_regular_file())
                names.push_back(entry.path().filename().string());
        return names;
    }

    /// The shell's words for the arguments; `before` comes ahead of the program, for limits and the like.
    run_result run(const std::string& arguments, const std::string& before = "") const {
        const std::string command = "cd '" + path_.string() + "' && " + before + " '" TURNCLOTH_SHEETS_PROGRAM "' " +
                                    "</dev/null >.out 2>.err " + arguments;
        const int ended = std::system(command.c_str());
        return {WIFEXITED(ended) ? WEXITSTATUS(ended) : -1, read(".out"), read(".err")};
    }

private:
    std::filesystem::path path_;
};

#endif
