// Names from people, as parts of files' names.
//
//   slug(words)         "For the school!" as "for-the-school", for a file's name
//   unused_names        never the same name twice
#ifndef TURNCLOTH_EXAMPLES_SHEETS_NAMES_HPP
#define TURNCLOTH_EXAMPLES_SHEETS_NAMES_HPP

#include <map>
#include <set>
#include <string>
#include <string_view>

namespace allotment {

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
