#pragma once
// What imports, their previews and sorting tell of files.

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "indexer/intake/import.h"

namespace quarterturn {

nlohmann::json paths_json(const std::vector<Path>& paths);
nlohmann::json refused_json(const std::vector<RefusedFile>& refused);
// Of photos that are here already and lie in the bin; nothing for none.
std::vector<std::string> in_bin_lines(std::size_t photos);
std::vector<std::string> refused_lines(const std::vector<RefusedFile>& refused);
// Of files of the library that the disk kept where they were.
std::vector<std::string> not_moved_lines(const std::vector<RefusedFile>& files);

}  // namespace quarterturn
