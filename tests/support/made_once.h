#pragma once

#include <functional>
#include <map>
#include <string>

#include "tests/support/files.h"

namespace quarterturn {

// A file that other programs take long to make, made once for all tests of a process: `what` tells
// it from others that are made so.
inline void make_once(const std::filesystem::path& file, const std::string& what,
                      const std::function<void()>& make) {
    static std::map<std::string, std::vector<std::byte>> made;
    const auto known = made.find(what);
    if (known != made.end()) return write_bytes(file, known->second);
    make();
    made[what] = read_bytes(file);
}

}  // namespace quarterturn
