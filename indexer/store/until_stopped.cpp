#include "indexer/store/until_stopped.h"

#include <SQLiteCpp/Database.h>
#include <sqlite3.h>

namespace quarterturn {
namespace {

constexpr int steps_between_looks = 1000;  // of SQLite's machine, some microseconds

int is_stopped(void* stop) {
    return static_cast<std::stop_token*>(stop)->stop_requested() ? 1 : 0;
}

}  // namespace

UntilStopped::UntilStopped(Database& database, std::stop_token stop)
    : database_(database), stop_(std::move(stop)) {
    sqlite3_progress_handler(database_.handle().getHandle(), steps_between_looks, is_stopped,
                             &stop_);
}

UntilStopped::~UntilStopped() {
    sqlite3_progress_handler(database_.handle().getHandle(), 0, nullptr, nullptr);
}

}  // namespace quarterturn
