// Layers under a seam, of both pieces as they lie when it is sewn.
//
//   layers_of_seam(model, bench, seam, k)      at its k-th pair of lines, right sides together
#ifndef TURNCLOTH_MAKING_DETAIL_SEAM_LAYERS_HPP
#define TURNCLOTH_MAKING_DETAIL_SEAM_LAYERS_HPP

#include <turncloth/making/detail/model.hpp>
#include <turncloth/making/detail/sight.hpp>

#include <cstddef>

namespace turncloth::detail {

template <length_unit Unit, class Bench>
flat_work::layers layers_at(const flat_model<Unit>& model, const Bench& bench, const chalk_line<Unit>& l) {
    const flat_work::flat_line line = model.line(l, l.in);
    const flat_work::lie& how = bench.body_of(line.part)->how;
    return layers_along(bench.stack_of(line.part), carried(line.at, how),
                        carried(stretch_of(line, model.flat().parts[line.part]), line.at, how));
}

template <length_unit Unit, class Bench>
flat_work::layers layers_of_seam(const flat_model<Unit>& model, const Bench& bench, const seam_of<Unit>& s,
                                 std::size_t k) {
    const flat_work::layers one = layers_at(model, bench, s.one[k]), other = layers_at(model, bench, s.other[k]);
    return {one.least + other.least, one.most + other.most};
}

} // namespace turncloth::detail

#endif
