// A folder of its own for a test, in which programs are run as a person does, through the shell.
//
//   test_folder dir;                       empty, removed at the end
//   dir.write("table.csv", text);
//   const run_result o = dir.run_of(TURNCLOTH_SHEETS_PROGRAM, "--project all", "ulimit -f 8;");
//   o.status  o.out  o.err  o.says(text)  o.complains(text)
#ifndef TURNCLOTH_TESTS_FOLDER_HPP
#define TURNCLOTH_TESTS_FOLDER_HPP

#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <string_view>
#include <system_error>

struct run_result {
    int status = -1;
    std::string out, err;

    bool says(std::string_view text) const { return out.find(text) != std::string::npos; }
    bool complains(std::string_view text) const { return err.find(text) != std::string::npos; }
};

class test_folder {
public:
    test_folder() {
        std::string name = (std::filesystem::temp_directory_path() / "turncloth-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr)
            throw std::runtime_error("no folder could be made for a test");
        path_ = name;
    }
    ~test_folder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    test_folder(const test_folder&) = delete;
    test_folder& operator=(const test_folder&) = delete;

    const std::filesystem::path& path() const { return path_; }
    std::filesystem::path operator/(const std::string& name) const { return path_ / name; }

    void write(const std::string& name, std::string_view content) const {
        std::ofstream(path_ / name, std::ios::binary) << content;
    }
    std::string read(const std::string& name) const {
        std::ifstream in(path_ / name, std::ios::binary);
        return {std::istreambuf_iterator<char>(in), {}};
    }

    /// How the command ended, or -1 where a signal ended it.
    int shell(const std::string& command) const {
        const int ended = std::system(("cd '" + path_.string() + "' && " + command).c_str());
        return WIFEXITED(ended) ? WEXITSTATUS(ended) : -1;
    }
    /// The shell's words for the arguments; `before` comes ahead of the program, for limits and the like.
    run_result run_of(const std::string& program, const std::string& arguments, const std::string& before = "") const {
        const int status = shell(before + " '" + program + "' </dev/null >.out 2>.err " + arguments);
        run_result o{status, read(".out"), read(".err")};
        std::filesystem::remove(path_ / ".out");
        std::filesystem::remove(path_ / ".err");
        return o;
    }

private:
    std::filesystem::path path_;
};

#endif
