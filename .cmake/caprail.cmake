# SPDX-License-Identifier: GPL-3.0-or-later
# One CMake target per folder. Each target sees only its own headers and those of the targets it names in LINK,
# by way of a private include root that holds one link, <folder>, to the source folder. So `#include <ledger/x.h>`
# from a folder that does not link the ledger fails to build, and the arrows of DEVELOPERS.md cannot be broken quietly.
#
#   caprail_library(units SOURCES length.cpp LINK tl::expected)        -> target caprail_units, headers <units/…>
#   caprail_library(girdle AS stations/girdle …)                       -> target caprail_girdle, headers <stations/girdle/…>
function(caprail_library name)
  cmake_parse_arguments(ARG "QT" "AS" "SOURCES;LINK" ${ARGN})
  set(target caprail_${name})
  set(root ${CMAKE_BINARY_DIR}/include/${name})
  if(NOT ARG_AS)
    set(ARG_AS ${name})
  endif()
  cmake_path(GET ARG_AS PARENT_PATH above)
  file(MAKE_DIRECTORY ${root}/${above})
  file(CREATE_LINK ${CMAKE_CURRENT_SOURCE_DIR} ${root}/${ARG_AS} SYMBOLIC)
  if(ARG_SOURCES)
    add_library(${target} STATIC ${ARG_SOURCES})
    target_include_directories(${target} PUBLIC ${root})
    target_link_libraries(${target} PUBLIC ${ARG_LINK})
    if(ARG_QT)
      set_target_properties(${target} PROPERTIES AUTOMOC ON)
    endif()
  else()
    add_library(${target} INTERFACE)
    target_include_directories(${target} INTERFACE ${root})
    target_link_libraries(${target} INTERFACE ${ARG_LINK})
  endif()
endfunction()

# A GoogleTest program, registered with CTest test by test: caprail_test(units_test SOURCES … LINK …)
function(caprail_test name)
  cmake_parse_arguments(ARG "QT" "" "SOURCES;LINK;ENVIRONMENT;PROPERTIES" ${ARGN})
  add_executable(${name} ${ARG_SOURCES})
  target_link_libraries(${name} PRIVATE ${ARG_LINK} GTest::gmock GTest::gtest)
  target_compile_definitions(${name} PRIVATE TEST_DATA="${CMAKE_SOURCE_DIR}/tests/data"
                                             SAMPLE_BUILDS="${CMAKE_SOURCE_DIR}/sample-builds")
  if(ARG_QT)
    set_target_properties(${name} PROPERTIES AUTOMOC ON UNITY_BUILD OFF) # fixtures in unnamed namespaces
  else()
    target_link_libraries(${name} PRIVATE GTest::gtest_main)
  endif()
  # Those of the window's tests that need not run under sanitizers too are not labelled (tests/ui/CMakeLists.txt).
  set(labels)
  if(NOT CAPRAIL_NOT_SANITIZED)
    set(labels LABELS sanitized)
    add_dependencies(sanitized ${name})
  endif()
  # gtest_discover_tests parts a list in a property and takes its second member for the name of another property (CMake
  # 3.25), so the one variable that a test may ask for has a property of its own.
  set(more)
  if(ARG_ENVIRONMENT)
    string(REGEX REPLACE "^([^=]+)=" "\\1=set:" variable "${ARG_ENVIRONMENT}")
    set(more ENVIRONMENT_MODIFICATION "${variable}")
  endif()
  gtest_discover_tests(${name} DISCOVERY_TIMEOUT 60 PROPERTIES ENVIRONMENT QT_QPA_PLATFORM=offscreen ${more} TIMEOUT 300
                       ${labels} ${ARG_PROPERTIES})
endfunction()
