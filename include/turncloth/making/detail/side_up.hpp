// Which side of each work lies up while a maker goes on with it, so that she is told when to turn it over.
//
//   class sides_up(count)     .turn(root, above)      whether it lay with the other side up; so it lies from then on
//                             .of(root)               as it lies now: side_up
//                             .forget()               taken up anew
//
// A stack is named by the part at the root of its layings, and lies as on the workbench where it is seen from above. A
// piece that nothing was done to yet lies neither way: it is taken up as the step wants it.
#ifndef TURNCLOTH_MAKING_DETAIL_SIDE_UP_HPP
#define TURNCLOTH_MAKING_DETAIL_SIDE_UP_HPP

#include <cstddef>
#include <vector>

namespace turncloth::detail {

enum class side_up : unsigned char { not_known, above, beneath };

class sides_up {
public:
    explicit sides_up(std::size_t count) : now_(count, side_up::not_known) {}

    bool turn(std::size_t root, bool above) {
        const side_up before = now_[root];
        now_[root] = above ? side_up::above : side_up::beneath;
        return before != side_up::not_known && before != now_[root];
    }
    side_up of(std::size_t root) const { return now_[root]; }
    void forget() { now_.assign(now_.size(), side_up::not_known); }

private:
    std::vector<side_up> now_;
};

} // namespace turncloth::detail

#endif
