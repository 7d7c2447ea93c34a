#pragma once

#include <string>

#include "indexer/record/time.h"

namespace quarterturn {

std::string long_date(Date date);  // "7 November 2026"

}  // namespace quarterturn
