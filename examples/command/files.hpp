// Files that are either whole or not there, and never written over what was not meant.
//
//   read_file(path)                      its content, of at most largest_input bytes
//   write_file(path, content, {.replace = told, .input = from})
//   write_files({{path, content}, ...}, over)   several, brought to the disk together
//   require_writable(path, over)         refuses what write_file would, before the work is done
//   remove_leftovers(folder)             what killed runs left unfinished there
//   file_error                           the path, and the system's reason or ours
//
// A file is written under a random name that did not exist before (so that nobody can lay a link there), brought to
// the disk, and only then given its own name. While it is unfinished it is locked; the lock ends with the process, so
// that what a killed run left is told from what another run, on another machine even, is writing now. Of several threads
// only one writes files: the names of what is unfinished are in one list, which a signal removes. A disk is as long about
// one file as about many, so what belongs together waits for it once: see bench/files_bench.cpp.
#ifndef TURNCLOTH_EXAMPLES_COMMAND_FILES_HPP
#define TURNCLOTH_EXAMPLES_COMMAND_FILES_HPP

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <cerrno>
#include <csignal>
#include <cstddef>
#include <cstring>
#include <deque>
#include <filesystem>
#include <optional>
#include <random>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <system_error>
#include <utility>
#include <vector>

namespace allotment {

namespace fs = std::filesystem;

class file_error : public std::runtime_error {
public:
    file_error(const char* what, const fs::path& path, const std::string& why)
        : std::runtime_error(std::string("cannot ") + what + " " + path.string() + ": " + why) {}
    file_error(const char* what, const fs::path& path, const std::error_code& why)
        : file_error(what, path, why.message()) {}
};

inline std::error_code last_error() { return {errno, std::generic_category()}; }

/// What is there already, and may be written over or not.
struct over_what {
    bool replace = false; ///< an ordinary file of that name
    fs::path input = {};  ///< never: what is read, by whatever name; empty for none
};

inline constexpr std::size_t largest_input = 100'000'000;

namespace detail {

/// Of an open file, closed at the end.
class descriptor {
public:
    explicit descriptor(int number) : number_(number) {}
    ~descriptor() {
        if (number_ >= 0)
            ::close(number_);
    }
    descriptor(const descriptor&) = delete;
    descriptor& operator=(const descriptor&) = delete;
    operator int() const { return number_; }

    /// False where the system says only now that not all could be written.
    bool close() { return ::close(std::exchange(number_, -1)) == 0; }

private:
    int number_;
};

inline constexpr std::string_view unfinished_prefix = ".turncloth-unfinished-";

inline constexpr std::size_t most_unfinished = 64; ///< at one time

/// Of an unfinished file, for a signal to remove: written before the file is there, and before the flag is set.
struct unfinished_name {
    std::atomic<bool> is_there = false;
    std::array<char, 4096> name{};
};
inline std::array<unfinished_name, most_unfinished> unfinished_names;
static_assert(std::atomic<bool>::is_always_lock_free, "what a signal's handler reads");

extern "C" inline void remove_unfinished_and_end(int signal) {
    for (const unfinished_name& u : unfinished_names)
        if (u.is_there)
            ::unlink(u.name.data());
    ::raise(signal); // which ends the program when this returns, as the handler was for one signal
}

/// At most `most_unfinished` of them are there at one time.
class unfinished_file {
public:
    unfinished_file(const fs::path& path, mode_t mode)
        : path_(path),
          name_(path),
          told_(*std::find_if(unfinished_names.begin(), unfinished_names.end(),
                              [](const unfinished_name& u) { return !u.is_there; })) {
        do {
            std::random_device random;
            name_.replace_filename(std::string(unfinished_prefix) + std::to_string(random()) + "-" +
                                   std::to_string(random()));
            open(mode);
        } while (was_removed());
    }
    ~unfinished_file() {
        if (told_.is_there.exchange(false))
            ::unlink(name_.c_str());
    }
    unfinished_file(const unfinished_file&) = delete;
    unfinished_file& operator=(const unfinished_file&) = delete;

    void write(std::string_view content) {
        while (!content.empty()) {
            const ssize_t n = ::write(*to_, content.data(), content.size());
            if (n < 0 && errno != EINTR)
                give_up();
            content.remove_prefix(n < 0 ? 0 : static_cast<std::size_t>(n));
        }
    }

    void bring_to_disk() const {
        if (::fsync(*to_) != 0 && errno != EINVAL) // which says that there is no disk beneath
            give_up();
    }
    /// With all else that is not on its disk yet; false where the system has no way to.
    bool bring_all_to_disk() const {
#ifdef __linux__
        if (::syncfs(*to_) != 0)
            give_up();
        return true;
#else
        return false;
#endif
    }

    /// As it was of the file that is replaced. Its owner only where the system lets us.
    void belongs_as(const struct stat& before) {
        if (::fchown(*to_, before.st_uid, before.st_gid) != 0 && errno != EPERM)
            give_up();
        if (::fchmod(*to_, before.st_mode & 0777U) != 0)
            give_up();
    }

    /// Under its own name; where nothing may be replaced, that fails for what has come there since.
    void take_its_name(bool replace) {
        const bool linked = !replace && ::link(name_.c_str(), path_.c_str()) == 0;
        if (!replace && !linked && errno != EPERM && errno != ENOTSUP) // of file systems without links
            give_up();
        if (!linked && ::rename(name_.c_str(), path_.c_str()) != 0)
            give_up();
        if (linked)
            ::unlink(name_.c_str());
        told_.is_there = false;
        if (!to_->close())
            give_up();
    }

private:
    void open(mode_t mode) {
        if (name_.native().size() >= told_.name.size())
            throw file_error("write", path_, std::make_error_code(std::errc::filename_too_long));
        std::memcpy(told_.name.data(), name_.c_str(), name_.native().size() + 1);
        told_.is_there = true;
        to_.emplace(::open(name_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, mode));
        if (*to_ < 0) {
            const std::error_code why = last_error();
            told_.is_there = false;
            throw file_error("write", path_, why);
        }
        ::flock(*to_, LOCK_EX); // without locks it is not told from a leftover, which is then left alone too
    }
    /// By another run, which looked for leftovers before it was locked.
    bool was_removed() const {
        struct stat now {};
        return ::fstat(*to_, &now) == 0 && now.st_nlink == 0;
    }
    [[noreturn]] void give_up() const { throw file_error("write", path_, last_error()); }

    fs::path path_, name_;
    unfinished_name& told_;
    std::optional<descriptor> to_;
};

} // namespace detail

inline std::string read_file(const fs::path& path) {
    const detail::descriptor in(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (in < 0)
        throw file_error("read", path, last_error());
    std::string content;
    char part[1 << 16];
    while (const ssize_t n = ::read(in, part, sizeof part)) {
        if (n < 0 && errno != EINTR)
            throw file_error("read", path, last_error());
        content.append(part, n < 0 ? 0 : static_cast<std::size_t>(n));
        if (content.size() > largest_input)
            throw file_error("read", path, "it has more than 100 MB");
    }
    return content;
}

/// What is there and will be replaced; none where nothing is. Throws file_error for what is not to be written over.
inline std::optional<struct stat> require_writable(const fs::path& path, const over_what& over) {
    struct stat there {
    }, input{};
    if (::lstat(path.c_str(), &there) != 0) {
        if (errno != ENOENT)
            throw file_error("write", path, last_error());
        return std::nullopt;
    }
    if (S_ISDIR(there.st_mode))
        throw file_error("write", path, std::make_error_code(std::errc::is_a_directory));
    if (!S_ISREG(there.st_mode))
        throw file_error("write", path, "a device, a pipe or a link is there, and none of them is replaced by a file");
    if (!over.input.empty() && ::stat(over.input.c_str(), &input) == 0 && input.st_dev == there.st_dev &&
        input.st_ino == there.st_ino)
        throw file_error("write", path, "it is the file that is read");
    if (!over.replace)
        throw file_error("write", path, "a file is there already: --replace writes over such files");
    return there;
}

struct file_to_write {
    fs::path path;
    std::string_view content;
};

namespace detail {

/// At most `most_unfinished`.
inline void write_together(std::span<const file_to_write> files, const over_what& over) {
    std::deque<unfinished_file> made; // which stay where they are
    std::vector<bool> replaces;
    for (const file_to_write& f : files) {
        const auto before = require_writable(f.path, over);
        unfinished_file& file = made.emplace_back(f.path, before ? 0600 : 0666); // less what the user's mask takes
        if (before)
            file.belongs_as(*before);
        file.write(f.content);
        replaces.push_back(before.has_value());
    }
    if (made.size() == 1 || !made.front().bring_all_to_disk())
        for (const unfinished_file& file : made)
            file.bring_to_disk();
    for (std::size_t i = 0; i < made.size(); ++i)
        made[i].take_its_name(replaces[i]);
}

} // namespace detail

/// To one file system. Each is whole or not there, and none of some 60 in a row is there before all of them are on the disk.
/// The mode of one that is replaced stays as it was.
inline void write_files(std::span<const file_to_write> files, const over_what& over = {}) {
    for (std::size_t done = 0; done < files.size(); done += detail::most_unfinished)
        detail::write_together(files.subspan(done, std::min(files.size() - done, detail::most_unfinished)), over);
}

inline void write_file(const fs::path& path, std::string_view content, const over_what& over = {}) {
    const file_to_write one{path, content};
    write_files({&one, 1}, over);
}

/// What cannot be looked at or removed stays.
inline void remove_leftovers(const fs::path& folder) {
    std::error_code ignored;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder.empty() ? fs::path(".") : folder, ignored)) {
        if (!entry.path().filename().native().starts_with(detail::unfinished_prefix))
            continue;
        const detail::descriptor left(::open(entry.path().c_str(), O_RDWR | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC));
        struct stat what {};
        if (left >= 0 && ::fstat(left, &what) == 0 && S_ISREG(what.st_mode) && ::flock(left, LOCK_EX | LOCK_NB) == 0)
            ::unlink(entry.path().c_str());
    }
}

/// A run that is told to stop leaves nothing unfinished; one that the system kills outright does, for the next to remove.
inline void remove_unfinished_on_signals() {
    for (const int signal : {SIGHUP, SIGINT, SIGTERM, SIGQUIT}) {
        struct sigaction now {
        }, asked{};
        asked.sa_handler = detail::remove_unfinished_and_end;
        asked.sa_flags = static_cast<int>(SA_RESETHAND);
        if (::sigaction(signal, nullptr, &now) == 0 && now.sa_handler != SIG_IGN)
            ::sigaction(signal, &asked, nullptr);
    }
}

} // namespace allotment

#endif
