#pragma once

#include "app/qturn/reply.h"
#include "indexer/intake/preview.h"

namespace quarterturn {

// What bringing photos in would do, for `qturn import --preview`.
Reply preview_reply(Library& library, const ImportPreview& preview);

nlohmann::json paths_json(const std::vector<Path>& paths);
nlohmann::json refused_json(const std::vector<RefusedFile>& refused);
std::vector<std::string> refused_lines(const std::vector<RefusedFile>& refused);

}  // namespace quarterturn
