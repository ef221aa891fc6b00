// What drawings are made with: the frame of a page, dimensions, and room for words.
//
//   detail::frame_words  page_frame  best_page     what surrounds a drawing, on the paper that it is wanted on
//   detail::draw_dimension                         a dimension with its words
//   detail::free_room  spread                      words where nothing is drawn or written
//
// The drawings of draw/ are made with it; it knows nothing of cloth.
#ifndef TURNCLOTH_PAGE_DRAWING_HPP
#define TURNCLOTH_PAGE_DRAWING_HPP

#include <turncloth/page/detail/frame.hpp>
#include <turncloth/page/detail/labels.hpp>

#endif
