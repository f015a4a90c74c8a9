# SPDX-License-Identifier: Apache-2.0
# Days on the shipping screens with the clock running, bad input, and touches counted.
if(TARGET line_field)
  add_executable(journey_fresh line_field/fresh_walks.cpp line_field/bad_input_walks.cpp line_field/touch_counts.cpp)
  set_target_properties(journey_fresh PROPERTIES AUTOMOC OFF)
  target_link_libraries(journey_fresh PRIVATE line_field catch_main)
  snugline_use_composition(journey_fresh)
  catch_discover_tests(journey_fresh TEST_PREFIX "journey_fresh: " PROPERTIES TIMEOUT 300 ENVIRONMENT "QT_QPA_PLATFORM=offscreen;QT_QUICK_BACKEND=software;LC_ALL=C.UTF-8")
endif()
