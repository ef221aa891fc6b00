// Lists of a design gone through for one size: what is there, every fault with its place.
//
//   design_walk<U>      .each(list, path, work)  .attempt(path, work)  .length(expression, member)  .text(words, member)
#ifndef TURNCLOTH_DESIGN_DETAIL_WALKING_HPP
#define TURNCLOTH_DESIGN_DETAIL_WALKING_HPP

#include <turncloth/design/detail/evaluating.hpp>
#include <turncloth/design/project_design.hpp>

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
class design_walk {
public:
    explicit design_walk(design_values<Unit> values) : values_(std::move(values)) {}

protected:
    using length_type = turncloth::length<Unit>;

    void throw_faults() {
        if (!faults_.empty())
            refuse<design_error>(std::move(faults_));
    }

    /// What is refused in there is one fault, and the rest goes on.
    template <class Work>
    void attempt(const std::string& path, const Work& work) {
#ifdef BOOST_NO_EXCEPTIONS
        static_cast<void>(path);
        work();
#else
        try {
            work();
        } catch (const design_error& refused) {
            faults_.insert(faults_.end(), refused.faults().begin(), refused.faults().end());
        } catch (const error& refused) {
            faults_.push_back({path, refused.what(), {}});
        }
#endif
    }
    /// Those that are there at this size.
    template <class Record, class Work>
    void each(const std::vector<Record>& all, const std::string& path, const Work& work) {
        for (std::size_t i = 0; i < all.size(); ++i) {
            const std::string before = std::exchange(path_, path + "/" + std::to_string(i));
            attempt(path_, [&] {
                if (values_.holds(all[i].where, path_ + "/where"))
                    work(all[i]);
            });
            path_ = before;
        }
    }
    length_type length(const length_expression& e, const char* member) const {
        return values_.length(e, path_ + member);
    }
    std::string text(const design_words& w, const char* member) const { return values_.text(w, path_ + member); }

    design_values<Unit> values_;
    std::vector<design_fault> faults_;
    std::string path_;
};

} // namespace turncloth::detail

#endif
