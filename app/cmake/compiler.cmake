# Warnings are errors; ccache and precompiled headers keep two cores bearable.
add_compile_options(-Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor -Werror
                    -Wno-error=deprecated-declarations)

if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  # GCC 12 reports false overflows from inside its own <string> and <vector> when optimising.
  add_compile_options(-Wno-restrict -Wno-array-bounds -Wno-stringop-overflow
                      -Wno-stringop-overread -Wno-maybe-uninitialized -Wno-dangling-pointer)
endif()

if(QUARTERTURN_SANITIZE)
  # Reports name functions; lines as well would take a third of the compiler's time, and to optimise
  # the checks takes three times as long as to compile the rest. Rooms of arithmetic say OPTIMISED.
  add_compile_options(-fsanitize=address,undefined -fno-sanitize-recover=all
                      -fno-omit-frame-pointer -O0 -g0)
  add_compile_definitions(QUARTERTURN_SANITIZED)
  # To move a program of this size, as position-independent ones are when they start, takes as long as
  # most of the commands that the tests run.
  add_link_options(-fsanitize=address,undefined -no-pie)
endif()

if(QUARTERTURN_SANITIZE_THREADS)
  add_compile_options(-fsanitize=thread -fno-omit-frame-pointer -O1 -g1)
  add_compile_definitions(QUARTERTURN_SANITIZED)
  add_link_options(-fsanitize=thread)
endif()

if(QUARTERTURN_SANITIZE OR QUARTERTURN_SANITIZE_THREADS)
  # So many files of a room are compiled as one, where the build asks for that: a third less for the
  # compiler than with the usual eight. They see each other's names, which Clang calls shadowing.
  set(CMAKE_UNITY_BUILD_BATCH_SIZE 24)
  add_compile_options($<$<CXX_COMPILER_ID:Clang>:-Wno-shadow>)
endif()

if(QUARTERTURN_FUZZ)
  # Clang's own opinion of code that GCC compiles without a warning stops nobody from fuzzing it.
  add_compile_options(-fsanitize=fuzzer-no-link,address,undefined -fno-sanitize-recover=all
                      -fno-omit-frame-pointer -O1 -g1 -Wno-error)
  add_compile_definitions(QUARTERTURN_SANITIZED)
  add_link_options(-fsanitize=address,undefined)
endif()

# Sixty programs of tests are linked, each eight times as fast as by the usual linker.
find_program(MOLD mold)
if(MOLD AND CMAKE_CXX_COMPILER_VERSION VERSION_GREATER 12.1)
  add_link_options(-fuse-ld=mold)
endif()

find_program(CCACHE ccache)
if(CCACHE)
  # Without these, ccache refuses every file that includes a precompiled header.
  set(CMAKE_CXX_COMPILER_LAUNCHER
      ${CMAKE_COMMAND} -E env
      CCACHE_SLOPPINESS=pch_defines,time_macros,include_file_mtime,include_file_ctime ${CCACHE})
  add_compile_options($<$<CXX_COMPILER_ID:GNU>:-fpch-preprocess>
                      "$<$<CXX_COMPILER_ID:Clang>:SHELL:-Xclang -fno-pch-timestamp>")
endif()
