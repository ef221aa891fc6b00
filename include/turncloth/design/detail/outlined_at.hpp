// A drafted piece of a design worked out, with the place in the design of what it is refused for.
//
//   outlined_at(piece, path, corners)     the outlined piece; `corners` are the paths of its corners
#ifndef TURNCLOTH_DESIGN_DETAIL_OUTLINED_AT_HPP
#define TURNCLOTH_DESIGN_DETAIL_OUTLINED_AT_HPP

#include <turncloth/design/detail/evaluating.hpp>
#include <turncloth/sheet/outlined.hpp>

#include <string>
#include <vector>

namespace turncloth::detail {

template <length_unit Unit>
outlined_piece<Unit> outlined_at(const drafted_piece<Unit>& piece, [[maybe_unused]] const std::string& path,
                                 [[maybe_unused]] const std::vector<std::string>& corners) {
#ifdef BOOST_NO_EXCEPTIONS
    return outlined(piece);
#else
    try {
        return outlined(piece);
    } catch (const outline_error& refused) {
        const auto corner = refused.facts().index;
        refuse_at(corner && *corner < corners.size() ? corners[*corner] : path, refused.what());
    }
#endif
}

} // namespace turncloth::detail

#endif
