#pragma once
// What a client allows and what went out, as the JSON objects that app/qturn/json.md describes.

#include <nlohmann/json.hpp>

#include "indexer/record/ledger.h"

namespace quarterturn {

nlohmann::json to_json(const ConsentEntry& entry);
nlohmann::json to_json(const ConsentPaper& paper);
nlohmann::json to_json(const Exported& exported);

template <class Record>
nlohmann::json json_of_each(const std::vector<Record>& records) {
    auto list = nlohmann::json::array();
    for (const Record& record : records) list.push_back(to_json(record));
    return list;
}

}  // namespace quarterturn
