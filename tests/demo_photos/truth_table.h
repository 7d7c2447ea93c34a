#pragma once
// truth.csv as rows of named cells.

#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace quarterturn::demo {

using TruthRow = std::map<std::string, std::string>;

inline std::filesystem::path demo_folder() {
    return QUARTERTURN_DEMO_PHOTOS;
}

inline std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells;
    std::istringstream in(line + ",");
    for (std::string cell; std::getline(in, cell, ',');) cells.push_back(cell);
    return cells;
}

inline std::vector<TruthRow> read_truth() {
    std::ifstream in(demo_folder() / "truth.csv");
    std::string line;
    std::getline(in, line);
    const std::vector<std::string> names = cells_of(line);
    std::vector<TruthRow> rows;
    while (std::getline(in, line)) {
        const std::vector<std::string> cells = cells_of(line);
        TruthRow row;
        for (std::size_t i = 0; i < names.size() && i < cells.size(); ++i) row[names[i]] = cells[i];
        rows.push_back(row);
    }
    return rows;
}

}  // namespace quarterturn::demo
