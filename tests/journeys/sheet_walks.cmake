# SPDX-License-Identifier: Apache-2.0
# A model sheet is changed while the app is killed, in the room of tests/qml/dock; its walks by touch stand in book_walks.
if(SNUGLINE_APP)
  add_executable(journey_sheet_kill sheet_kill.cpp)
  set_target_properties(journey_sheet_kill PROPERTIES AUTOMOC OFF)
  target_link_libraries(journey_sheet_kill PRIVATE snugline_flags catch_main)
  target_compile_definitions(journey_sheet_kill PRIVATE SNUGLINE_ROOM_PROGRAM="$<TARGET_FILE:qml_room_tests>"
    SNUGLINE_KILL_WALK="${CMAKE_CURRENT_SOURCE_DIR}/sheet_kill")
  add_dependencies(journey_sheet_kill qml_room_tests)
  catch_discover_tests(journey_sheet_kill TEST_PREFIX "journey_sheet_kill: " PROPERTIES TIMEOUT 600)
endif()
