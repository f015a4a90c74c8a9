# SPDX-License-Identifier: Apache-2.0
# Writes the sheets named in SHEETS as string literals of a C++ file.
set(rows "")
foreach(sheet IN LISTS SHEETS)
  get_filename_component(name "${sheet}" NAME)
  file(READ "${sheet}" hex HEX)
  string(REGEX REPLACE "([0-9a-f][0-9a-f])" "'\\\\x\\1'," bytes "${hex}")
  string(REGEX REPLACE "[^a-z0-9]" "_" id "${name}")
  string(APPEND arrays "constexpr char k_${id}[] = {${bytes}};\n")
  string(APPEND rows "      {\"${name}\", {k_${id}, sizeof k_${id}}},\n")
endforeach()
file(WRITE "${OUT}" "// SPDX-License-Identifier: Apache-2.0
// Made from demo/data/sheets.
#include \"demo/generator/demo_world.h\"

namespace snugline::demo {

namespace {
${arrays}}  // namespace

const std::vector<BuiltInSheet>& builtInSheets() {
  static const std::vector<BuiltInSheet> sheets{
${rows}  };
  return sheets;
}

}  // namespace snugline::demo
")
