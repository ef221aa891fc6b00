// What the compiler says when it refuses code that would spoil cloth.
//
// C++20 has no way to give a deleted function a reason, but every compiler prints the template arguments of the
// function it refuses. So each deleted overload has a first template argument whose name is the sentence to read:
//
//   error: use of deleted function 'void turncloth::operator+(...) [with Please =
//   turncloth::please::bring_both_lengths_to_one_unit_first_for_instance_as_centimetre_x; ...]'
//
// The overloads stay ordinary deleted functions, so `requires` expressions can ask whether an operation exists.
#ifndef TURNCLOTH_MEASURE_DETAIL_PLEASE_HPP
#define TURNCLOTH_MEASURE_DETAIL_PLEASE_HPP

namespace turncloth::please {

struct write_approximate_with_a_graduation_to_make_a_fraction_of_a_double;
struct bring_both_lengths_to_one_unit_first_for_instance_as_centimetre_x;
struct subtract_two_places_or_add_a_length_to_a_place_but_do_not_add_two_places;
struct remeasure_one_place_first_since_the_two_are_measured_from_different_datums;
struct give_the_thing_a_name_first_since_this_view_of_its_parts_would_outlive_it;
struct carry_a_place_over_from_the_piece_that_it_is_measured_on;
struct turn_a_finished_size_into_a_cut_size_with_the_finishes_of_a_panel;
struct turn_a_cut_size_into_a_finished_size_with_the_finishes_of_a_panel;
struct make_a_place_of_the_length_with_at_and_its_datum_before_comparing_it_with_a_place;
struct multiply_or_divide_by_a_whole_number_or_a_fraction_since_a_double_is_not_exact;
struct name_the_unit_of_a_length_for_instance_12_in_or_30_cm;
struct keep_the_name_in_a_table_of_words_that_outlives_it_or_write_a_literal;
struct bring_both_lengths_to_one_unit_first_since_their_ratio_is_a_plain_number;
struct compare_two_finished_or_two_cut_sizes_but_not_one_with_the_other;

} // namespace turncloth::please

#endif
