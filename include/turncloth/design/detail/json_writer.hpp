// A design as JSON: members that say what holds anyway are left out.
#ifndef TURNCLOTH_DESIGN_DETAIL_JSON_WRITER_HPP
#define TURNCLOTH_DESIGN_DETAIL_JSON_WRITER_HPP

#include <turncloth/design/detail/json_reader.hpp>
#include <turncloth/design/detail/members.hpp>
#include <turncloth/design/project_design.hpp>
#include <turncloth/sheet/json_lengths.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace turncloth::detail {

class design_writer {
public:
    template <design_record Record>
    static json written(const Record& r) {
        design_writer w;
        if constexpr (std::is_same_v<Record, project_design>)
            w.made_[std::string(design_format)] = design_version;
        members(w, r);
        return w.made_;
    }

    template <class T>
    void must(std::string_view name, const T& member, std::string_view) {
        made_[std::string(name)] = written(member);
    }
    template <class T>
    void may(std::string_view name, const T& member, std::string_view) {
        if (!(member == T{}))
            made_[std::string(name)] = written(member);
    }

private:
    static json written(const std::string& text) { return sound_text(text); }
    static json written(const design_words& w) { return sound_text(w.text); }
    static json written(const design_part& p) { return sound_text(p.text); }
    static json written(bool so) { return so; }
    template <wanted W>
    static json written(const expression_for<W>& e) {
        return sound_text(e.text());
    }
    template <class Choice>
        requires std::is_enum_v<Choice>
    static json written(Choice c) { return words_of(c)[static_cast<std::size_t>(c)]; }
    template <form_kind Kind>
    static json written(const filled_form<Kind>& f) {
        json j = {{"is", sound_text(f.is)}};
        for (const auto& [name, given] : f.with)
            j[sound_text(name)] = sound_text(given.text());
        return j;
    }
    template <class T>
    static json written(const std::optional<T>& member) {
        return written(*member);
    }
    template <class T>
    static json written(const std::vector<T>& all) {
        json j = json::array();
        for (const T& item : all)
            j.push_back(written(item));
        return j;
    }

    json made_ = json::object();
};

} // namespace turncloth::detail

#endif
