# A room is one folder of indexer/ or ui/, built as a static library. It sees only the rooms and
# libraries named here, so a dependency that runs up the house does not link.
set(QUARTERTURN_COMMON_HEADERS
    <algorithm> <array> <chrono> <cstdint> <filesystem> <functional> <map> <memory> <optional>
    <span> <stdexcept> <string> <string_view> <utility> <vector>)

# quarterturn_precompile(TARGET [LIKE target] [HEADERS headers…]): with the precompiled headers of
# another target that is compiled with the same options, or with headers of its own.
function(quarterturn_precompile TARGET)
  cmake_parse_arguments(ARG "" "LIKE" "HEADERS" ${ARGN})
  if(ARG_LIKE AND NOT ARG_LIKE STREQUAL TARGET)
    target_precompile_headers(${TARGET} REUSE_FROM ${ARG_LIKE})
  else()
    target_precompile_headers(${TARGET} PRIVATE ${QUARTERTURN_COMMON_HEADERS} ${ARG_HEADERS})
  endif()
endfunction()

# quarterturn_room(NAME [USES rooms…] [LIBRARIES targets…] [HEADERS precompiled headers…]
#                  [HEADERS_LIKE room] [OPTIMISED] [APART])
# The sources are all *.cpp below the calling folder's NAME/. The precompiled headers are those of
# HEADERS_LIKE where that is given. OPTIMISED: also under the sanitizers. APART: in what is shipped,
# never several files compiled as one, so that a program is linked with what it calls alone, and
# starts without the libraries of the rest.
function(quarterturn_room NAME)
  cmake_parse_arguments(ROOM "OPTIMISED;APART" "HEADERS_LIKE" "USES;LIBRARIES;HEADERS" ${ARGN})
  file(GLOB_RECURSE ROOM_SOURCES CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/${NAME}/*.cpp
                                                   ${CMAKE_CURRENT_SOURCE_DIR}/${NAME}/*.h)
  add_library(quarterturn_${NAME} STATIC ${ROOM_SOURCES})
  set_target_properties(quarterturn_${NAME} PROPERTIES LINKER_LANGUAGE CXX)
  target_include_directories(quarterturn_${NAME} PUBLIC ${PROJECT_SOURCE_DIR})
  if(ROOM_APART AND NOT QUARTERTURN_SANITIZE AND NOT QUARTERTURN_SANITIZE_THREADS)
    set_target_properties(quarterturn_${NAME} PROPERTIES UNITY_BUILD OFF)
  endif()
  if(ROOM_OPTIMISED AND QUARTERTURN_SANITIZE)
    target_compile_options(quarterturn_${NAME} PRIVATE -O1)
  endif()
  list(TRANSFORM ROOM_USES PREPEND quarterturn_)
  target_link_libraries(quarterturn_${NAME} PUBLIC ${ROOM_USES} ${ROOM_LIBRARIES})
  list(TRANSFORM ROOM_HEADERS_LIKE PREPEND quarterturn_)
  quarterturn_precompile(quarterturn_${NAME} LIKE ${ROOM_HEADERS_LIKE} HEADERS ${ROOM_HEADERS})
endfunction()

# Where the programs find what they start or load, from the build folder as from where they are
# installed.
set(QUARTERTURN_LIBEXEC libexec/quarterturn)

# quarterturn_part(NAME SOURCES files… LIBRARIES targets…): a part of the program that is loaded when
# it is first called (indexer/parts). Without the sanitizers: programs without them load it too.
function(quarterturn_part NAME)
  cmake_parse_arguments(PART "" "" "SOURCES;LIBRARIES" ${ARGN})
  add_library(${NAME} MODULE ${PART_SOURCES})
  set_target_properties(${NAME} PROPERTIES PREFIX "" UNITY_BUILD OFF LINK_OPTIONS -Wl,--as-needed
                        LIBRARY_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/${QUARTERTURN_LIBEXEC})
  target_include_directories(${NAME} PRIVATE ${PROJECT_SOURCE_DIR})
  target_compile_options(${NAME} PRIVATE -fno-sanitize=all)
  target_link_libraries(${NAME} PRIVATE ${PART_LIBRARIES})
  install(TARGETS ${NAME} DESTINATION ${QUARTERTURN_LIBEXEC})
endfunction()
