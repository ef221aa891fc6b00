// Where faults are, so that one more is compared with few of them, however many there are.
//
//   faults_once<>    told(fault)      whether the same was told before; from now on it was
//   fault_places<>   touches(where)   whether that place lies within one of them, or one of them within it
//
// A place is written as in a JSON pointer: "/pieces/0/width" lies within "/pieces/0", not within "/pieces/00".
#ifndef TURNCLOTH_DESIGN_DETAIL_FAULT_PLACES_HPP
#define TURNCLOTH_DESIGN_DETAIL_FAULT_PLACES_HPP

#include <turncloth/design/design_terms.hpp>

#include <cstddef>
#include <functional>
#include <set>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

namespace turncloth::detail {

struct by_place_and_reason {
    bool operator()(const design_fault& a, const design_fault& b) const {
        return std::tie(a.where, a.why, a.character) < std::tie(b.where, b.why, b.character);
    }
};

template <class Less = by_place_and_reason>
class faults_once {
public:
    explicit faults_once(Less less = {}) : told_(less) {}
    bool told(const design_fault& f) { return !told_.insert(f).second; }

private:
    std::set<design_fault, Less> told_;
};

/// Less compares texts, of any type.
template <class Less = std::less<>>
class fault_places {
public:
    explicit fault_places(const std::vector<design_fault>& faults, Less less = {}) : places_(less) {
        for (const design_fault& f : faults)
            places_.insert(f.where);
    }

    bool touches(std::string_view where) const {
        if (places_.contains(where))
            return true;
        for (std::size_t at = where.find('/'); at != std::string_view::npos; at = where.find('/', at + 1))
            if (places_.contains(where.substr(0, at)))
                return true;
        const std::string within = std::string(where) + "/"; // all that lies within it comes next in order
        const auto next = places_.lower_bound(std::string_view(within));
        return next != places_.end() && next->starts_with(within);
    }

private:
    std::set<std::string, Less> places_;
};

} // namespace turncloth::detail

#endif
