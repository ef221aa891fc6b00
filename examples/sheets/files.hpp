// Files that are either whole or not there.
//
//   read_file(path)              its content
//   write_file(path, content)    under a name of its own first, renamed when every byte is on its way to the disk
//   in_short(text)               in quotation marks, and of a long one only the beginning
//   slug(words)                  "For the school!" as "for-the-school", for a file's name
//   unused_names                 never the same name twice
//   file_error                   the path, and the system's reason
#ifndef TURNCLOTH_EXAMPLES_SHEETS_FILES_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_FILES_HPP

#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <map>
#include <memory>
#include <set>
#include <stdexcept>
#include <string>
#include <string_view>
#include <system_error>

namespace allotment {

namespace fs = std::filesystem;

class file_error : public std::runtime_error {
public:
    file_error(const char* what, const fs::path& path, const std::error_code& why)
        : std::runtime_error(std::string("cannot ") + what + " " + path.string() + ": " + why.message()) {}
};

inline std::error_code last_error() { return {errno, std::generic_category()}; }

struct file_closer {
    void operator()(std::FILE* f) const noexcept { std::fclose(f); }
};
using open_file = std::unique_ptr<std::FILE, file_closer>;

inline std::string read_file(const fs::path& path) {
    const open_file in(std::fopen(path.c_str(), "rb"));
    if (!in)
        throw file_error("read", path, last_error());
    std::string content;
    char part[1 << 16];
    while (const std::size_t n = std::fread(part, 1, sizeof part, in.get()))
        content.append(part, n);
    if (std::ferror(in.get()))
        throw file_error("read", path, last_error());
    return content;
}

inline void write_file(const fs::path& path, std::string_view content) {
    fs::path unfinished = path;
    unfinished += ".unfinished-" + std::to_string(::getpid());
    const auto give_up = [&](const std::error_code& why) {
        std::error_code ignored;
        fs::remove(unfinished, ignored);
        throw file_error("write", path, why);
    };
    open_file out(std::fopen(unfinished.c_str(), "wb"));
    if (!out)
        throw file_error("write", path, last_error());
    if (std::fwrite(content.data(), 1, content.size(), out.get()) != content.size() || std::fflush(out.get()) != 0)
        give_up(last_error());
    if (std::fclose(out.release()) != 0)
        give_up(last_error());
    std::error_code why;
    fs::rename(unfinished, path, why);
    if (why)
        give_up(why);
}

/// At most 60 bytes, cut before a character of UTF-8.
inline std::string in_short(std::string_view text) {
    std::size_t end = text.size();
    if (end > 60)
        for (end = 60; end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U;)
            --end;
    return '"' + std::string(text.substr(0, end)) + (end < text.size() ? "...\"" : "\"");
}

/// Letters and digits of ASCII in lower case, all else as single hyphens; at most 60 characters.
inline std::string slug(std::string_view words) {
    std::string name;
    for (const char c : words) {
        if (name.size() == 60)
            break;
        if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))
            name += c;
        else if (c >= 'A' && c <= 'Z')
            name += static_cast<char>(c - 'A' + 'a');
        else if (!name.empty() && name.back() != '-')
            name += '-';
    }
    while (!name.empty() && name.back() == '-')
        name.pop_back();
    return name;
}

class unused_names {
public:
    /// `wanted`, or "wanted-2", "wanted-3", ... where that is given out already.
    std::string next(const std::string& wanted) {
        std::string name = wanted;
        while (!given_.insert(name).second)
            name = wanted + "-" + std::to_string(++last_number_.try_emplace(wanted, 1).first->second);
        return name;
    }

private:
    std::set<std::string> given_;
    std::map<std::string, int> last_number_; // so that a thousand alike take a thousand steps
};

} // namespace allotment

#endif
