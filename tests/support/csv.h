#pragma once
// Tables of comma-separated values (RFC 4180), read by the names in their first line.

#include <fstream>
#include <map>
#include <string>
#include <vector>

namespace quarterturn {

using CsvRow = std::map<std::string, std::string>;

inline std::vector<std::string> csv_fields(const std::string& line) {
    std::vector<std::string> fields(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"') {
            quoted = !quoted;
        } else if (c == ',' && !quoted) {
            fields.emplace_back();
        } else if (c != '\r') {
            fields.back() += c;
        }
    }
    return fields;
}

inline std::vector<CsvRow> read_csv(const std::string& file) {
    std::ifstream stream(file);
    std::string line;
    std::getline(stream, line);
    const auto names = csv_fields(line);
    std::vector<CsvRow> rows;
    while (std::getline(stream, line)) {
        const auto fields = csv_fields(line);
        CsvRow row;
        for (std::size_t i = 0; i < names.size() && i < fields.size(); ++i)
            row[names[i]] = fields[i];
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace quarterturn
