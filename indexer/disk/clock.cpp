#include "indexer/disk/clock.h"

#include <ctime>

namespace quarterturn {

LocalTime local_now() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    localtime_r(&now, &local);
    return LocalTime{std::chrono::seconds{timegm(&local)}};
}

std::chrono::sys_seconds utc_now() {
    return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

}  // namespace quarterturn
