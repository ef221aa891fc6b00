# Headers, a CMake package and a pkg-config file. All of it is text, so all of it goes under share/ and fits any machine.
include(CMakePackageConfigHelpers)
include(GNUInstallDirs)
set(package_dir "${CMAKE_INSTALL_DATADIR}/cmake/turncloth")

install(TARGETS turncloth EXPORT turncloth_targets FILE_SET HEADERS DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}")
install(EXPORT turncloth_targets NAMESPACE turncloth:: FILE turncloth-targets.cmake DESTINATION "${package_dir}")

# Before 1.0 a new minor version may break its users.
write_basic_package_version_file("${PROJECT_BINARY_DIR}/turncloth-config-version.cmake"
    COMPATIBILITY SameMinorVersion ARCH_INDEPENDENT)
install(FILES cmake/turncloth-config.cmake "${PROJECT_BINARY_DIR}/turncloth-config-version.cmake"
    DESTINATION "${package_dir}")
# The sources of turncloth::compiled go along, as they are compiled with their user's options.
install(FILES cmake/compiled.cmake DESTINATION "${package_dir}")
install(FILES cmake/compiled/to_sheets.hpp cmake/compiled/sheets.cpp cmake/compiled/drawings.cpp
    DESTINATION "${package_dir}/compiled")

# The prefix is worked out from where the file lies, so that an installed tree may be moved.
file(RELATIVE_PATH pc_to_prefix "/prefix/${CMAKE_INSTALL_DATADIR}/pkgconfig" "/prefix")
configure_file(cmake/turncloth.pc.in turncloth.pc @ONLY)
install(FILES "${PROJECT_BINARY_DIR}/turncloth.pc" DESTINATION "${CMAKE_INSTALL_DATADIR}/pkgconfig")
# In the Common Package Specification, for tools that read neither; when asked for, as a CMake from 4.3 on may find it
# first, and it knows nothing of turncloth::compiled. It is written here and not by install(PACKAGE_INFO), which refuses
# Boost::headers: Boost's own package has it from a package within, boost_headers.
if(TURNCLOTH_CPS)
    set(cps_prefix "@prefix@")
    set(cps_dir "${CMAKE_INSTALL_DATADIR}/cps/turncloth")
    configure_file(cmake/turncloth.cps.in turncloth.cps @ONLY)
    install(FILES "${PROJECT_BINARY_DIR}/turncloth.cps" DESTINATION "${cps_dir}")
endif()
install(FILES include/turncloth/design/project_design.schema.json include/turncloth/sheet/sheet.schema.json
    DESTINATION "${CMAKE_INSTALL_DATADIR}/turncloth")
# GDB loads what lies there by itself where the prefix is its own, /usr.
install(FILES cmake/debuggers/turncloth.py DESTINATION "${CMAKE_INSTALL_DATADIR}/gdb/python/gdb/printer")
install(FILES cmake/debuggers/turncloth.natvis DESTINATION "${CMAKE_INSTALL_DATADIR}/turncloth")
install(FILES LICENSE DESTINATION "${CMAKE_INSTALL_DATADIR}/licenses/turncloth")

# Last, as it lists what the lines above have installed.
install(SCRIPT cmake/installed_files.cmake)
