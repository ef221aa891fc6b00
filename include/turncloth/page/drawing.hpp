// What drawings are made with: the frame of a page, a picture with its dimensions and labels, and room for words.
//
//   detail::frame_words  page_frame  best_page     what surrounds a drawing, on the paper that it is wanted on
//   detail::picture  picture_page                  what is drawn of a thing, and its page
//   detail::free_room  spread                      words where nothing is drawn or written
//
// The drawings of draw/ are made with it; it knows nothing of cloth.
#ifndef TURNCLOTH_PAGE_DRAWING_HPP
#define TURNCLOTH_PAGE_DRAWING_HPP

#include <turncloth/page/detail/picture.hpp>

#endif
