// The base of what notions/ throws: one type to catch for a zipper, a binding, a pleat that cannot be.
//
//   class notion_error                derived from error; zipper_error, binding_error, ... derive from it
//
//   try { add(tape); } catch (const notion_error& refused) { reasons.push_back(refused.facts()); }
#ifndef TURNCLOTH_NOTIONS_ERROR_HPP
#define TURNCLOTH_NOTIONS_ERROR_HPP

#include <turncloth/measure/require.hpp>

namespace turncloth {

/// A notion that cannot be made.
class notion_error : public error {
public:
    using error::error;
};

} // namespace turncloth

#endif
