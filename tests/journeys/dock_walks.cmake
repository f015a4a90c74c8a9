# SPDX-License-Identifier: Apache-2.0
# Whole jobs at the Dock and in the Book, by touch, in the room of tests/qml/dock.
if(SNUGLINE_APP)
  foreach(walk dock_walks book_walks)
    add_test(NAME journey_${walk} COMMAND qml_room_tests -platform offscreen -input "${CMAKE_CURRENT_SOURCE_DIR}/${walk}")
    set_tests_properties(journey_${walk} PROPERTIES TIMEOUT 300 ENVIRONMENT "QT_QUICK_BACKEND=software;LC_ALL=C.UTF-8")
  endforeach()
endif()
if(SNUGLINE_APP)
  add_executable(journey_dock_kill dock_kill.cpp)
  set_target_properties(journey_dock_kill PROPERTIES AUTOMOC OFF)
  target_link_libraries(journey_dock_kill PRIVATE snugline_flags catch_main)
  target_compile_definitions(journey_dock_kill PRIVATE SNUGLINE_ROOM_PROGRAM="$<TARGET_FILE:qml_room_tests>"
    SNUGLINE_KILL_WALK="${CMAKE_CURRENT_SOURCE_DIR}/dock_kill")
  add_dependencies(journey_dock_kill qml_room_tests)
  catch_discover_tests(journey_dock_kill TEST_PREFIX "journey_dock_kill: " PROPERTIES TIMEOUT 600)
endif()
