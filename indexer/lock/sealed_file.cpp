#include <algorithm>
#include <array>
#include <cstring>

#include "indexer/lock/locked_records_file.h"

namespace quarterturn {
namespace {

using PageBytes = std::array<unsigned char, page_bytes>;

// https://sqlite.org/fileformat2.html#walformat
constexpr sqlite3_int64 log_header_bytes = 32;
constexpr int frame_header_bytes = 24;
constexpr int frame_bytes = frame_header_bytes + page_bytes;
// https://sqlite.org/fileformat2.html#database_header: "The database page size in bytes", its high
// byte first, and "Bytes of unused reserved space"
constexpr std::size_t page_size_at = 16;
constexpr std::size_t reserved_at = 20;

SealedFile& of(sqlite3_file* file) {
    return *static_cast<SealedFile*>(file);
}

template <auto Method, class... Values>
auto forward(sqlite3_file* file, Values... values) {
    sqlite3_file* const real = of(file).real();
    return (real->pMethods->*Method)(real, values...);
}

constexpr auto read_real = forward<&sqlite3_io_methods::xRead, void*, int, sqlite3_int64>;
constexpr auto write_real = forward<&sqlite3_io_methods::xWrite, const void*, int, sqlite3_int64>;

bool all_zero(const PageBytes& page) {
    return std::ranges::all_of(page, [](unsigned char byte) { return byte == 0; });
}

// What SQLite has to know before it looks into the log, which may hold the first page whole when
// the power tore it here. It asks for all of that page before it believes anything else of it.
PageBytes front_of_torn_page() {
    PageBytes page{};
    page[page_size_at] = page_bytes >> 8U;
    page[reserved_at] = reserved_bytes;
    return page;
}

// SQLite asks for whole pages, and for the front of the first before it knows their size. A page of
// zeroes was never written: SQLite leaves it out, as the one for its locks at one gigabyte.
int read_records(sqlite3_file* file, void* to, int amount, sqlite3_int64 at) {
    const sqlite3_int64 page = at / page_bytes;
    const auto within = static_cast<std::size_t>(at % page_bytes);
    if (within + static_cast<std::size_t>(amount) > page_bytes) return SQLITE_IOERR_READ;
    PageBytes bytes{};
    const int result = read_real(file, bytes.data(), page_bytes, page * page_bytes);
    if (result == SQLITE_IOERR_SHORT_READ) std::memset(to, 0, static_cast<std::size_t>(amount));
    if (result != SQLITE_OK) return result;
    const auto number = static_cast<std::uint64_t>(page) + 1;
    if (!all_zero(bytes) && !open_page(*of(file).keys, PageOf::records, number, bytes)) {
        if (page != 0 || amount == page_bytes) return SQLITE_CORRUPT;
        bytes = front_of_torn_page();
    }
    std::memcpy(to, bytes.data() + within, static_cast<std::size_t>(amount));
    return SQLITE_OK;
}

int write_page(sqlite3_file* file, std::uint64_t number, const void* from, sqlite3_int64 at) {
    PageBytes page{};
    PageBytes sealed{};
    std::memcpy(page.data(), from, page.size());
    seal_page(*of(file).keys, of(file).kind, number, page, sealed);
    return write_real(file, sealed.data(), page_bytes, at);
}

// Without room for the seal, the end of each page would be lost.
bool leaves_room(const void* first_page) {
    return static_cast<const unsigned char*>(first_page)[reserved_at] == reserved_bytes;
}

int write_records(sqlite3_file* file, const void* from, int amount, sqlite3_int64 at) {
    if (amount != page_bytes || at % page_bytes != 0) return SQLITE_IOERR_WRITE;
    if (at == 0 && !leaves_room(from)) return SQLITE_IOERR_WRITE;
    return write_page(file, static_cast<std::uint64_t>(at / page_bytes) + 1, from, at);
}

struct InLog {
    std::uint64_t frame = 0;
    int within = 0;

    bool in_header(int amount) const { return within + amount <= frame_header_bytes; }
    bool is_page(int amount) const { return within == frame_header_bytes && amount == page_bytes; }
    bool is_frame(int amount) const { return within == 0 && amount == frame_bytes; }
};

InLog place_in_log(sqlite3_int64 at) {
    const sqlite3_int64 in_frames = at - log_header_bytes;
    return {static_cast<std::uint64_t>(in_frames / frame_bytes),
            static_cast<int>(in_frames % frame_bytes)};
}

int read_log(sqlite3_file* file, void* to, int amount, sqlite3_int64 at) {
    if (at + amount <= log_header_bytes) return read_real(file, to, amount, at);
    if (at < log_header_bytes) return SQLITE_IOERR_READ;
    const InLog place = place_in_log(at);
    const bool page = place.is_page(amount);
    const bool frame = place.is_frame(amount);  // SQLite judges it by its checksum
    if (!page && !frame && !place.in_header(amount)) return SQLITE_IOERR_READ;
    const int result = read_real(file, to, amount, at);
    if (result != SQLITE_OK || (!page && !frame)) return result;
    auto* const bytes = static_cast<unsigned char*>(to) + (frame ? frame_header_bytes : 0);
    const bool sound = open_page(*of(file).keys, PageOf::log, place.frame, Page(bytes, page_bytes));
    return sound || frame ? SQLITE_OK : SQLITE_CORRUPT;
}

int write_log(sqlite3_file* file, const void* from, int amount, sqlite3_int64 at) {
    if (at + amount <= log_header_bytes) return write_real(file, from, amount, at);
    if (at < log_header_bytes) return SQLITE_IOERR_WRITE;
    const InLog place = place_in_log(at);
    if (place.in_header(amount)) return write_real(file, from, amount, at);
    return place.is_page(amount) ? write_page(file, place.frame, from, at) : SQLITE_IOERR_WRITE;
}

int read(sqlite3_file* file, void* to, int amount, sqlite3_int64 at) {
    return of(file).kind == PageOf::records ? read_records(file, to, amount, at)
                                            : read_log(file, to, amount, at);
}

int write(sqlite3_file* file, const void* from, int amount, sqlite3_int64 at) {
    return of(file).kind == PageOf::records ? write_records(file, from, amount, at)
                                            : write_log(file, from, amount, at);
}

int close(sqlite3_file* file) {
    const int result = forward<&sqlite3_io_methods::xClose>(file);
    of(file).~SealedFile();
    return result;
}

}  // namespace

SealedFile::SealedFile(PageOf kind_of_file, KeysInHand keys_of_file, int bytes_of_real)
    : sqlite3_file{},
      kind(kind_of_file),
      keys(std::move(keys_of_file)),
      room(std::make_unique<std::max_align_t[]>(
          static_cast<std::size_t>(bytes_of_real) / sizeof(std::max_align_t) + 1)) {}

const sqlite3_io_methods* sealed_file_methods() {
    using Io = sqlite3_io_methods;
    // Version 2: without memory maps, through which pages would be seen sealed.
    static const Io methods{2,
                            close,
                            read,
                            write,
                            forward<&Io::xTruncate, sqlite3_int64>,
                            forward<&Io::xSync, int>,
                            forward<&Io::xFileSize, sqlite3_int64*>,
                            forward<&Io::xLock, int>,
                            forward<&Io::xUnlock, int>,
                            forward<&Io::xCheckReservedLock, int*>,
                            forward<&Io::xFileControl, int, void*>,
                            forward<&Io::xSectorSize>,
                            forward<&Io::xDeviceCharacteristics>,
                            forward<&Io::xShmMap, int, int, int, void volatile**>,
                            forward<&Io::xShmLock, int, int, int>,
                            forward<&Io::xShmBarrier>,
                            forward<&Io::xShmUnmap, int>,
                            nullptr,
                            nullptr};
    return &methods;
}

}  // namespace quarterturn
