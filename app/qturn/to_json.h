#pragma once
// Records as the JSON objects that json.md describes. What is unknown or not set is null.

#include <nlohmann/json.hpp>
#include <optional>

#include "app/qturn/names.h"
#include "indexer/rules/coverage.h"

namespace quarterturn {

nlohmann::json to_json(const Client& client);
nlohmann::json to_json(const Wedding& wedding, const Names& names);
nlohmann::json to_json(const Sitting& sitting, const Names& names);
nlohmann::json to_json(const Look& look, const Names& names);
nlohmann::json to_json(const Device& device);
nlohmann::json to_json(const Photo& photo, const Names& names);
nlohmann::json to_json(const CoverageLine& line);
nlohmann::json to_json(const ShotList& list);
nlohmann::json to_json(const std::vector<Flaw>& flaws);

// {"id": 12, "name": "IMG_0012.jpg"}, where no more of a photo is needed.
nlohmann::json short_json(const Photo& photo);
nlohmann::json short_list_json(const std::vector<Photo>& photos);

template <class Row, class... More>
nlohmann::json list_json(const std::vector<Row>& rows, const More&... more) {
    auto list = nlohmann::json::array();
    for (const Row& row : rows) list.push_back(to_json(row, more...));
    return list;
}

}  // namespace quarterturn
