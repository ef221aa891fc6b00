// What is printed in another language than English: a text for each key that is to be said otherwise.
//
//   struct phrase{key, english}         a sentence with a key of its own, and places in braces: "Turn it out through {what}."
//   phrase_table                        texts by key; a sentence or a label without a key of its own is its own key
//   language(tag, habits, table)        BCP 47 tag; decimal mark, metric first or not; with places as the keys have them
//   l.text_of(key)                      null where the language has none: then the English stands
//
//   const language german("de", {.decimal_mark = ",", .metric_first = true}, {{"cut edge", "Schnittkante"},
//                         {"Cut {1} of {2}.", "{1}-mal aus {2} zuschneiden."}});
//
// English is written where it is said, as the parts of a sentence: `sentence({"Cut ", count, " of ", cloth, "."})`. What
// stands between its words has a number, in order, and the sentence with these numbers is the key. So a translator has
// whole sentences before her and may turn them about, and no word is glued to another.
#ifndef TURNCLOTH_MEASURE_LANGUAGE_HPP
#define TURNCLOTH_MEASURE_LANGUAGE_HPP

#include <turncloth/measure/detail/compiled.hpp>
#include <turncloth/measure/detail/please.hpp>

#include <algorithm>
#include <concepts>
#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace turncloth {

struct phrase {
    std::string_view key, english;
};

/// What is said for a key instead of the English.
struct phrase_text {
    std::string key, text;
};
using phrase_table = std::vector<phrase_text>;

/// How numbers are written, and which units come first.
struct language_habits {
    std::string decimal_mark = ".";
    bool metric_first = false;
};

/// With this before them begin the keys of sentences that a sheet keeps in English: "kept: {1}, pieces". In its text {1} is
/// what stands there, and {=1} the same said again.
inline constexpr std::string_view kept_texts = "kept: ";

class language {
public:
    /// English, which is written where it is said.
    language() = default;
    /// Of texts with one key the last holds. A template, so that sorting is compiled where a language is made.
    template <std::same_as<phrase_table> Table = phrase_table>
    language(std::string tag, language_habits habits, Table table)
        : tag_(std::move(tag)), habits_(std::move(habits)), table_(std::move(table)) {
        std::stable_sort(table_.begin(), table_.end(),
                         [](const phrase_text& a, const phrase_text& b) { return a.key < b.key; });
    }

    const std::string& tag() const { return tag_; }
    const language_habits& habits() const { return habits_; }
    /// In the order of their keys.
    const phrase_table& texts() const& { return table_; }
    template <class Please = please::give_the_thing_a_name_first_since_this_view_of_its_parts_would_outlive_it>
    void texts() const&& = delete;
    const std::string* text_of(std::string_view key) const& {
        std::size_t first = 0,
                    last = table_.size(); // those before first are up to the key, those from last on beyond it
        while (first < last) {
            const std::size_t middle = first + (last - first) / 2;
            if (key < table_[middle].key)
                last = middle;
            else
                first = middle + 1;
        }
        return first > 0 && table_[first - 1].key == key ? &table_[first - 1].text : nullptr;
    }

private:
    std::string tag_ = "en";
    language_habits habits_{};
    phrase_table table_{};
};

namespace detail {

/// What is written by this thread is in it; null for English.
inline constinit thread_local const language* spoken = nullptr;

/// While it lives, `l` is spoken, which outlives it.
class speaking {
public:
    explicit speaking(const language& l) : before_(std::exchange(spoken, l.texts().empty() ? nullptr : &l)) {}
    /// As before, where none is given.
    explicit speaking(const language* l) : before_(spoken) {
        if (l != nullptr)
            spoken = l->texts().empty() ? nullptr : l;
    }
    ~speaking() { spoken = before_; }
    speaking(const speaking&) = delete;
    speaking& operator=(const speaking&) = delete;

private:
    const language* before_;
};

/// A label in the language that is spoken; good as long as the language.
inline std::string_view word(std::string_view english) {
    const std::string* const own = spoken == nullptr ? nullptr : spoken->text_of(english);
    return own == nullptr ? english : std::string_view(*own);
}
inline std::string_view decimal_mark() {
    return spoken == nullptr ? std::string_view(".") : std::string_view(spoken->habits().decimal_mark);
}
/// A number that was written with a point.
inline std::string with_decimal_marks(std::string_view text) {
    const auto digit = [&](std::size_t i) { return i < text.size() && text[i] >= '0' && text[i] <= '9'; };
    std::string all;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (text[i] == '.' && i > 0 && digit(i - 1) && digit(i + 1))
            all.append(decimal_mark());
        else
            all += text[i];
    return all;
}

/// `text` with what stands at each of its places; a place that `at` gives nothing for is left as it stands.
template <class At>
std::string filled(std::string_view text, At at) {
    std::string all;
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t open = text.find('{', from), shut = text.find('}', open);
        all.append(text.substr(from, open - from));
        if (open == std::string_view::npos || shut == std::string_view::npos) {
            if (open != std::string_view::npos)
                all.append(text.substr(open));
            break;
        }
        if (!at(all, text.substr(open + 1, shut - open - 1)))
            all.append(text.substr(open, shut - open + 1));
        from = shut + 1;
    }
    return all;
}

/// Said again in the language that is spoken: what a sheet keeps as a text, in English. Where no key is that text, what
/// stands at the places of a kept key that fits is found in it; of several the one with the most words of its own.
TURNCLOTH_INLINE std::string said_again(std::string_view text);

} // namespace detail

/// A place of a phrase, and what stands there.
struct filled_in {
    std::string_view place;
    std::string text;
};

inline std::string said(const phrase& p, std::initializer_list<filled_in> data, const phrase_table& table = {}) {
    const std::string* const spoken = detail::spoken == nullptr ? nullptr : detail::spoken->text_of(p.key);
    std::string_view text = spoken == nullptr ? p.english : std::string_view(*spoken);
    for (const phrase_text& own : table)
        if (own.key == p.key)
            text = own.text;
    return detail::filled(text, [&](std::string& to, std::string_view place) {
        for (const filled_in& f : data)
            if (f.place == place) {
                to.append(f.text);
                return true;
            }
        return false;
    });
}

} // namespace turncloth

#ifndef TURNCLOTH_COMPILED

namespace turncloth::detail {

/// What stands at the places of `key`, in their order, where it is that text; nothing otherwise.
inline std::vector<std::string_view> places_in(std::string_view key, std::string_view text) {
    std::vector<std::string_view> all;
    std::size_t at = 0;
    for (std::size_t from = 0;;) {
        const std::size_t open = key.find('{', from), shut = key.find('}', open);
        const std::string_view words = key.substr(from, open - from);
        const bool last = open == std::string_view::npos;
        const std::size_t found = from == 0               ? 0
                                  : last && words.empty() ? text.size()
                                  : last                  ? text.rfind(words)
                                                          : text.find(words, at + 1);
        if (found == std::string_view::npos || found < at || (from > 0 && found == at) ||
            text.substr(found, words.size()) != words)
            return {};
        if (from > 0)
            all.push_back(text.substr(at, found - at));
        at = found + words.size();
        if (last)
            return at == text.size() ? all : std::vector<std::string_view>();
        from = shut + 1;
    }
}

TURNCLOTH_INLINE std::string said_again(std::string_view text) {
    if (spoken == nullptr)
        return std::string(text);
    if (const std::string* const own = spoken->text_of(text))
        return *own;
    const phrase_text* best = nullptr;
    std::vector<std::string_view> at, of_best;
    std::size_t most = 0;
    for (const phrase_text& t : spoken->texts()) {
        if (!t.key.starts_with(kept_texts) ||
            (at = places_in(std::string_view(t.key).substr(kept_texts.size()), text)).empty())
            continue;
        std::size_t words = text.size();
        for (const std::string_view place : at)
            words -= place.size();
        if (words > most)
            most = words, best = &t, of_best = at;
    }
    if (best == nullptr)
        return with_decimal_marks(text);
    return filled(best->text, [&](std::string& to, std::string_view place) {
        const bool again = place.starts_with("=");
        place.remove_prefix(again ? 1 : 0);
        const auto which = static_cast<std::size_t>(place.size() == 1 ? place[0] - '1' : 9);
        if (which < of_best.size())
            to.append(again ? said_again(of_best[which]) : with_decimal_marks(of_best[which]));
        return which < of_best.size();
    });
}

} // namespace turncloth::detail

#endif // TURNCLOTH_COMPILED

#endif
