# A room is one folder of indexer/ or ui/, built as a static library. It sees only the rooms and
# libraries named here, so a dependency that runs up the house does not link.
set(QUARTERTURN_COMMON_HEADERS
    <algorithm> <array> <chrono> <cstdint> <filesystem> <functional> <map> <memory> <optional>
    <span> <stdexcept> <string> <string_view> <utility> <vector>)

# quarterturn_room(NAME [USES rooms…] [LIBRARIES targets…] [HEADERS precompiled headers…])
# The sources are all *.cpp below the calling folder's NAME/.
function(quarterturn_room NAME)
  cmake_parse_arguments(ROOM "" "" "USES;LIBRARIES;HEADERS" ${ARGN})
  file(GLOB_RECURSE ROOM_SOURCES CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/${NAME}/*.cpp
                                                   ${CMAKE_CURRENT_SOURCE_DIR}/${NAME}/*.h)
  add_library(quarterturn_${NAME} STATIC ${ROOM_SOURCES})
  set_target_properties(quarterturn_${NAME} PROPERTIES LINKER_LANGUAGE CXX)
  target_include_directories(quarterturn_${NAME} PUBLIC ${PROJECT_SOURCE_DIR})
  list(TRANSFORM ROOM_USES PREPEND quarterturn_)
  target_link_libraries(quarterturn_${NAME} PUBLIC ${ROOM_USES} ${ROOM_LIBRARIES})
  target_precompile_headers(quarterturn_${NAME} PRIVATE ${QUARTERTURN_COMMON_HEADERS}
                                                        ${ROOM_HEADERS})
endfunction()
