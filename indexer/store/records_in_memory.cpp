#include "indexer/store/records_in_memory.h"

#include <sqlite3.h>

#include "indexer/store/records_watch.h"

namespace quarterturn {
namespace {

// https://sqlite.org/fileformat2.html#file_format_version_numbers: 1 is without a log.
void leave_log_out(Bytes& records) {
    constexpr std::size_t write_version = 18;
    constexpr std::size_t read_version = 19;
    if (records.size() <= read_version) return;
    records[write_version] = records[read_version] = std::byte{1};
}

}  // namespace

RecordsInMemory::RecordsInMemory(const Path& file)
    : bytes_(raw_records(file)), handle_(":memory:", SQLite::OPEN_READWRITE) {
    leave_log_out(bytes_);
    const auto size = static_cast<sqlite3_int64>(bytes_.size());
    sqlite3_deserialize(handle_.getHandle(), "main",
                        reinterpret_cast<unsigned char*>(bytes_.data()), size, size,
                        SQLITE_DESERIALIZE_READONLY);
}

}  // namespace quarterturn
