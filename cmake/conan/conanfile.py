"""conan create cmake/conan: packages the sources that this recipe lies in."""

import os
import re

from conan import ConanFile
from conan.tools.cmake import CMake, CMakeToolchain
from conan.tools.files import copy, load


class TurnclothConan(ConanFile):
    name = "turncloth"
    description = "Exact sizes for sewn rectangles: cut, fold, mark, buy"
    license = "BSL-1.0"
    package_type = "header-library"
    settings = "os", "arch", "compiler", "build_type"
    no_copy_source = True

    def _root(self):
        return os.path.join(self.recipe_folder, "..", "..")

    def set_version(self):
        header = load(self, os.path.join(self._root(), "include", "turncloth", "version.hpp"))
        parts = [re.search(rf"TURNCLOTH_VERSION_{part}\s+(\d+)", header).group(1) for part in ("MAJOR", "MINOR", "PATCH")]
        self.version = ".".join(parts)

    def export_sources(self):
        for pattern in ("CMakeLists.txt", "LICENSE", "include/*", "cmake/*"):
            copy(self, pattern, self._root(), self.export_sources_folder)

    def requirements(self):
        self.requires("boost/[>=1.74]", options={"header_only": True})

    def package_id(self):
        self.info.clear()

    def generate(self):
        toolchain = CMakeToolchain(self)
        for part in ("TESTS", "EXAMPLES", "BENCH"):
            toolchain.cache_variables[f"TURNCLOTH_{part}"] = False
        toolchain.generate()

    def build(self):
        CMake(self).configure()

    def package(self):
        CMake(self).install()

    def package_info(self):
        self.cpp_info.bindirs = []
        self.cpp_info.libdirs = []
        self.cpp_info.set_property("cmake_file_name", "turncloth")
        self.cpp_info.set_property("cmake_target_name", "turncloth::turncloth")
        self.cpp_info.set_property("pkg_config_name", "turncloth")
