# An overlay port that installs the sources it lies in: vcpkg install turncloth --overlay-ports=<clone>/cmake/vcpkg
set(SOURCE_PATH "${CURRENT_PORT_DIR}/../..")
vcpkg_cmake_configure(
    SOURCE_PATH "${SOURCE_PATH}"
    OPTIONS -DTURNCLOTH_TESTS=OFF -DTURNCLOTH_EXAMPLES=OFF -DTURNCLOTH_BENCH=OFF)
vcpkg_cmake_install()
vcpkg_cmake_config_fixup(CONFIG_PATH share/cmake/turncloth)
# Headers only: there is nothing that debug and release could differ in.
file(REMOVE_RECURSE "${CURRENT_PACKAGES_DIR}/debug" "${CURRENT_PACKAGES_DIR}/lib")
vcpkg_install_copyright(FILE_LIST "${SOURCE_PATH}/LICENSE")
