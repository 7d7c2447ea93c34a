#pragma once
// Words on the command line into values. Each throws WrongUse with the words that are known.

#include <chrono>
#include <string>

#include "indexer/record/consent.h"
#include "indexer/record/people.h"
#include "indexer/record/shot_list.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

Angle angle_from(const std::string& text);
Stage stage_from(const std::string& text);
SittingKind sitting_kind_from(const std::string& text);
Worn worn_from(const std::string& text);
Shot shot_from(const std::string& text);  // "after, left three-quarter"
Paper paper_from(const std::string& text);
Use use_from(const std::string& text);
AgeBand age_band_from(const std::string& text);
HowGiven how_given_from(const std::string& text);
Date date_from(const std::string& text);                   // 2026-11-07
LocalTime time_from(const std::string& text);              // 2026-11-07T10:12
std::string clock_from(const std::string& text);           // 12:30
std::chrono::seconds shift_from(const std::string& text);  // ±HH:MM or ±HH:MM:SS

struct Named {
    std::string name;  // before the last "=", or empty
    std::string value;
};
Named named(const std::string& text);  // "CLIENT=07:40"
int jpeg_quality_from(std::optional<int> quality, int usual);
// `whole` is what she wrote.
int number_from(const std::string& text, const std::string& whole);

}  // namespace quarterturn
