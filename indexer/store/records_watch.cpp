#include "indexer/store/records_watch.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>
#include <sys/stat.h>

#include <algorithm>

#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

// https://sqlite.org/walformat.html#the_wal_index_file_format: where the numbers of 32 bits stand.
constexpr std::array<std::size_t, 4> salts_tried_and_done{32 / 4, 36 / 4, 128 / 4, 96 / 4};
constexpr int index_block_bytes = 32'768;
constexpr int lock_of_carrying = 1;  // WAL_CKPT_LOCK

sqlite3_file* open_file_of(SQLite::Database& records) {
    sqlite3_file* file = nullptr;
    sqlite3_file_control(records.getHandle(), "main", SQLITE_FCNTL_FILE_POINTER, &file);
    return file;
}

bool has_log_index(const sqlite3_file* file) {
    return file != nullptr && file->pMethods != nullptr && file->pMethods->iVersion >= 2;
}

// SQLite opens the log with the first reading; an index that is asked for before that, or of records
// without a log, is never closed.
bool has_log(SQLite::Database& records) {
    records.execAndGet("SELECT count(*) FROM sqlite_schema");
    return records.execAndGet("PRAGMA journal_mode").getString() == "wal";
}

// While it is held, nobody carries changes over.
class NobodyCarries {
  public:
    explicit NobodyCarries(sqlite3_file* file) : file_(file), held_(ask(SQLITE_SHM_LOCK)) {}
    ~NobodyCarries() {
        if (held_) ask(SQLITE_SHM_UNLOCK);
    }
    NobodyCarries(const NobodyCarries&) = delete;
    NobodyCarries& operator=(const NobodyCarries&) = delete;

    bool held() const { return held_; }

  private:
    bool ask(int what) {
        return has_log_index(file_) &&
               file_->pMethods->xShmLock(file_, lock_of_carrying, 1, what | SQLITE_SHM_EXCLUSIVE) ==
                   SQLITE_OK;
    }

    sqlite3_file* file_;
    bool held_;
};

}  // namespace

RecordsWatch::RecordsWatch(Path file, SQLite::Database& records)
    : file_(std::move(file)),
      records_(records),
      has_log_(has_log(records)),
      carried_(carried()),
      left_(on_disk()) {}

RecordsWatch::OnDisk RecordsWatch::on_disk() const {
    struct stat there {};
    if (::stat(file_.c_str(), &there) != 0) return {};
    constexpr std::int64_t ns_in_second = 1'000'000'000;
    return {there.st_ino, there.st_size,
            there.st_mtim.tv_sec * ns_in_second + there.st_mtim.tv_nsec};
}

RecordsWatch::Carried RecordsWatch::carried() const {
    Carried numbers{};
    if (!has_log_) return numbers;
    sqlite3_file* const file = open_file_of(records_);
    volatile void* index = nullptr;
    if (!has_log_index(file) ||
        file->pMethods->xShmMap(file, 0, index_block_bytes, 0, &index) != SQLITE_OK ||
        index == nullptr) {
        return numbers;
    }
    const auto* const words = static_cast<const volatile std::uint32_t*>(index);
    for (std::size_t i = 0; i < numbers.size(); ++i) numbers[i] = words[salts_tried_and_done[i]];
    return numbers;
}

RecordsWatch::Found RecordsWatch::look() {
    if (overwritten_) return Found::overwritten;
    const Carried carried_now = carried();
    const OnDisk now = on_disk();
    if (now == left_) carried_ = carried_now;
    if (now == left_ || now.number == 0) return Found::as_left;
    if (now.number != left_.number) return Found::replaced;
    return has_log_ ? look_closely() : Found::as_left;
}

RecordsWatch::Found RecordsWatch::look_closely() {
    const NobodyCarries alone(open_file_of(records_));
    if (!alone.held())
        return Found::as_left;  // they are carried over just now: the next look tells
    const Carried carried_now = carried();
    overwritten_ = carried_now == carried_;
    if (overwritten_) return Found::overwritten;
    carried_ = carried_now;
    left_ = on_disk();
    return Found::as_left;
}

Bytes raw_front(const Path& file, std::int64_t most_bytes) {
    return in_words([&] {
        // SQLite keeps a file that it closes open as long as this process has locks on it.
        SQLite::Database opened(std::filesystem::absolute(file).native(), SQLite::OPEN_READONLY, 0,
                                sqlite3_vfs_find(nullptr)->zName);
        sqlite3_file* const raw = open_file_of(opened);
        sqlite3_int64 size = 0;
        int result = raw->pMethods->xFileSize(raw, &size);
        size = std::min<sqlite3_int64>(size, most_bytes);
        Bytes bytes(static_cast<std::size_t>(size));
        constexpr sqlite3_int64 piece_bytes = 1 << 20;
        for (sqlite3_int64 at = 0; result == SQLITE_OK && at < size; at += piece_bytes) {
            const auto amount = static_cast<int>(std::min(piece_bytes, size - at));
            result = raw->pMethods->xRead(raw, bytes.data() + at, amount, at);
        }
        if (result != SQLITE_OK) throw SQLite::Exception(opened.getHandle(), result);
        return bytes;
    });
}

Bytes raw_records(const Path& file) {
    return raw_front(file, any_size);
}

}  // namespace quarterturn
