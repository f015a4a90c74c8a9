# SPDX-License-Identifier: Apache-2.0
# Writes the painted picture PHOTO as a literal of a C++ file.
file(READ "${PHOTO}" hex HEX)
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "'\\\\x\\1'," bytes "${hex}")
file(WRITE "${OUT}" "// SPDX-License-Identifier: Apache-2.0
// Made from demo/data.
#include \"demo/generator/demo_world.h\"

namespace snugline::demo {

namespace {
constexpr char kPhoto[] = {${bytes}};
}  // namespace

std::string_view builtInPhoto() { return {kPhoto, sizeof kPhoto}; }

}  // namespace snugline::demo
")
