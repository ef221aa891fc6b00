// The version of the library, once for everybody: CMake reads it from these three lines.
//
//     TURNCLOTH_VERSION_MAJOR, TURNCLOTH_VERSION_MINOR, TURNCLOTH_VERSION_PATCH     for #if
//     constexpr library_version version                                            for code
//
//     static_assert(turncloth::version.major_number == TURNCLOTH_VERSION_MAJOR);
#ifndef TURNCLOTH_VERSION_HPP
#define TURNCLOTH_VERSION_HPP

#define TURNCLOTH_VERSION_MAJOR 0
#define TURNCLOTH_VERSION_MINOR 1
#define TURNCLOTH_VERSION_PATCH 0

namespace turncloth {

/// Three numbers, compared as semantic versions are. (`major` and `minor` alone are macros in some C libraries.)
struct library_version {
    int major_number;
    int minor_number;
    int patch_number;
};

inline constexpr library_version version{TURNCLOTH_VERSION_MAJOR, TURNCLOTH_VERSION_MINOR, TURNCLOTH_VERSION_PATCH};

} // namespace turncloth

#endif
