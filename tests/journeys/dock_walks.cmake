# SPDX-License-Identifier: Apache-2.0
# Whole jobs at the Dock and in the Book, by touch, in the room of tests/qml/dock.
if(SNUGLINE_APP)
  foreach(walk dock_walks book_walks)
    add_test(NAME journey_${walk} COMMAND qml_room_tests -platform offscreen -input "${CMAKE_CURRENT_SOURCE_DIR}/${walk}")
    set_tests_properties(journey_${walk} PROPERTIES TIMEOUT 300 ENVIRONMENT "QT_QUICK_BACKEND=software;LC_ALL=C.UTF-8")
  endforeach()
endif()
