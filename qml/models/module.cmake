# SPDX-License-Identifier: Apache-2.0
# The models wrap core for the screens and turn its codes into translated sentences.
file(GLOB modelSources CONFIGURE_DEPENDS "${CMAKE_CURRENT_SOURCE_DIR}/models/*.cpp" "${CMAKE_CURRENT_SOURCE_DIR}/models/*.h")
snugline_qml_module(qml_models Snugline.Models models SOURCES ${modelSources} RESOURCES ../i18n/warning_en.txt ../i18n/warning_es.txt LINK $<LINK_ONLY:core_book> $<LINK_ONLY:core_report>)
add_library(snugline_models ALIAS qml_models)
