# SPDX-License-Identifier: Apache-2.0
# People, codes, the yearly warning and privacy on the shipping screens, by touch. Uses the field of the Line's journeys.
if(TARGET line_field)
  add_executable(journey_people line_field/people_walks.cpp line_field/privacy_walks.cpp)
  set_target_properties(journey_people PROPERTIES AUTOMOC OFF)
  target_link_libraries(journey_people PRIVATE line_field catch_main core_report)
  snugline_use_composition(journey_people)
  catch_discover_tests(journey_people TEST_PREFIX "journey_people: " PROPERTIES TIMEOUT 300 ENVIRONMENT "QT_QPA_PLATFORM=offscreen;QT_QUICK_BACKEND=software;LC_ALL=C.UTF-8")
endif()
