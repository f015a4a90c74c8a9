# SPDX-License-Identifier: Apache-2.0
# The main flows of the three doors from outside the process, by what a screen reader reads out. Each brings a display and a bus of its own.
if(SNUGLINE_APP AND TARGET snugline-demo)
  foreach(flow first_fit recheck report arrival swap line_check)
    add_test(NAME heard_${flow} COMMAND "${Python3_EXECUTABLE}" "${CMAKE_CURRENT_SOURCE_DIR}/heard/flows.py" ${flow} "${CMAKE_BINARY_DIR}/bin")
    set_tests_properties(heard_${flow} PROPERTIES LABELS heard TIMEOUT 300)
  endforeach()
endif()
