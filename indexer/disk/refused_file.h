#pragma once

#include <string>

#include "indexer/disk/file_system.h"

namespace quarterturn {

struct RefusedFile {
    Path file;
    std::string reason;  // a sentence: what is wrong and what to do next

    bool operator==(const RefusedFile&) const = default;
};

}  // namespace quarterturn
