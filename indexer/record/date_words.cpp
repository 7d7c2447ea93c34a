#include "indexer/record/date_words.h"

#include <array>

namespace quarterturn {
namespace {

constexpr std::array month_names{"January",   "February", "March",    "April",
                                 "May",       "June",     "July",     "August",
                                 "September", "October",  "November", "December"};

}  // namespace

std::string long_date(Date date) {
    return std::to_string(static_cast<unsigned>(date.day())) + ' ' +
           month_names.at(static_cast<unsigned>(date.month()) - 1) + ' ' +
           std::to_string(static_cast<int>(date.year()));
}

}  // namespace quarterturn
