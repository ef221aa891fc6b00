// Boost.Geometry, with which the tests of this room compare, without the warnings of its own headers.
#ifndef TURNCLOTH_TESTS_PANEL_BOOST_GEOMETRY_HPP
#define TURNCLOTH_TESTS_PANEL_BOOST_GEOMETRY_HPP

#define BOOST_ALLOW_DEPRECATED_HEADERS // it includes one itself
#define BOOST_GEOMETRY_NO_ROBUSTNESS   // coordinates as they are, not moved to a grid of 1e-7 of the figure
#pragma GCC diagnostic push
#ifndef __clang__
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized" // of boxes whose state says that they are unset
#endif
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <boost/geometry/geometries/segment.hpp>
#pragma GCC diagnostic pop

#endif
