#include <algorithm>
#include <cstring>

#include "indexer/lock/locked_records_file.h"

namespace quarterturn {
namespace {

std::string& bytes_of(sqlite3_file* file) {
    return static_cast<MemoryFile*>(file)->bytes;
}

int close_memory(sqlite3_file* file) {
    static_cast<MemoryFile*>(file)->~MemoryFile();
    return SQLITE_OK;
}

int read_memory(sqlite3_file* file, void* to, int amount, sqlite3_int64 at) {
    const std::string& bytes = bytes_of(file);
    const auto wanted = static_cast<std::size_t>(amount);
    const std::size_t from = std::min(static_cast<std::size_t>(at), bytes.size());
    const std::size_t there = std::min(wanted, bytes.size() - from);
    std::memcpy(to, bytes.data() + from, there);
    std::memset(static_cast<char*>(to) + there, 0, wanted - there);
    return there == wanted ? SQLITE_OK : SQLITE_IOERR_SHORT_READ;
}

int write_memory(sqlite3_file* file, const void* from, int amount, sqlite3_int64 at) try {
    std::string& bytes = bytes_of(file);
    const auto begin = static_cast<std::size_t>(at);
    const std::size_t end = begin + static_cast<std::size_t>(amount);
    if (bytes.size() < end) bytes.resize(end);
    std::memcpy(bytes.data() + begin, from, static_cast<std::size_t>(amount));
    return SQLITE_OK;
} catch (const std::bad_alloc&) {
    return SQLITE_IOERR_NOMEM;
}

int truncate_memory(sqlite3_file* file, sqlite3_int64 length) try {
    bytes_of(file).resize(static_cast<std::size_t>(length));
    return SQLITE_OK;
} catch (const std::bad_alloc&) {
    return SQLITE_IOERR_NOMEM;
}

int size_of_memory(sqlite3_file* file, sqlite3_int64* size) {
    *size = static_cast<sqlite3_int64>(bytes_of(file).size());
    return SQLITE_OK;
}

int not_reserved(sqlite3_file*, int* reserved) {
    *reserved = 0;
    return SQLITE_OK;
}

int no_such_control(sqlite3_file*, int, void*) {
    return SQLITE_NOTFOUND;
}

// Syncing and locking what nobody else can see.
template <class... Values>
int nothing_to_do(sqlite3_file*, Values...) {
    return 0;
}

}  // namespace

const sqlite3_io_methods* memory_file_methods() {
    static const sqlite3_io_methods methods{1,
                                            close_memory,
                                            read_memory,
                                            write_memory,
                                            truncate_memory,
                                            nothing_to_do<int>,
                                            size_of_memory,
                                            nothing_to_do<int>,
                                            nothing_to_do<int>,
                                            not_reserved,
                                            no_such_control,
                                            nothing_to_do<>,
                                            nothing_to_do<>,
                                            nullptr,
                                            nullptr,
                                            nullptr,
                                            nullptr,
                                            nullptr,
                                            nullptr};
    return &methods;
}

}  // namespace quarterturn
