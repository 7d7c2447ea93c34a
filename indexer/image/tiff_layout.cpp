#include "indexer/image/tiff_layout.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace quarterturn {
namespace {

enum Tag : unsigned { photometric = 0x0106, sub_directories = 0x014A, dng_version = 0xC612 };
enum Photometric : unsigned { colour_filter_array = 32803, linear_raw = 34892 };

// Reads numbers in the file's own byte order; beyond the end all are nothing.
class TiffNumbers {
  public:
    explicit TiffNumbers(std::span<const std::byte> bytes)
        : bytes_(bytes), big_endian_(!bytes.empty() && bytes[0] == std::byte{'M'}) {}

    std::optional<std::uint32_t> at(std::size_t offset, std::size_t length) const {
        if (offset > bytes_.size() || length > bytes_.size() - offset) return std::nullopt;
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < length; ++i) {
            const std::size_t place = big_endian_ ? i : length - 1 - i;
            value = value << 8 | std::to_integer<std::uint32_t>(bytes_[offset + place]);
        }
        return value;
    }

  private:
    std::span<const std::byte> bytes_;
    bool big_endian_;
};

struct Entry {
    std::uint32_t tag = 0;
    std::uint32_t count = 0;
    std::size_t value_at = 0;  // of the four bytes that hold the value, or where it lies
};

constexpr std::size_t entry_length = 12;

std::optional<Entry> read_entry(const TiffNumbers& numbers, std::size_t offset) {
    const auto tag = numbers.at(offset, 2);
    const auto count = numbers.at(offset + 4, 4);
    if (!tag || !count) return std::nullopt;
    return Entry{*tag, *count, offset + 8};
}

void add_sub_directories(const TiffNumbers& numbers, const Entry& entry,
                         std::vector<std::uint32_t>& to_visit) {
    constexpr std::uint32_t most = 16;
    const auto list_at =
        entry.count == 1 ? std::optional<std::uint32_t>{} : numbers.at(entry.value_at, 4);
    for (std::uint32_t i = 0; i < std::min(entry.count, most); ++i) {
        const auto offset = numbers.at(list_at ? *list_at + std::size_t{4} * i : entry.value_at, 4);
        if (offset) to_visit.push_back(*offset);
    }
}

bool says_sensor(const TiffNumbers& numbers, const Entry& entry) {
    if (entry.tag == dng_version) return true;
    if (entry.tag != photometric) return false;
    const auto value = numbers.at(entry.value_at, 2);
    return value == colour_filter_array || value == linear_raw;
}

// Whether this directory says so; those below and the one after it are noted for a visit.
bool visit(const TiffNumbers& numbers, std::uint32_t directory,
           std::vector<std::uint32_t>& to_visit) {
    const auto count = numbers.at(directory, 2);
    if (!count) return false;
    const std::size_t first = std::size_t{directory} + 2;
    for (std::uint32_t i = 0; i < *count; ++i) {
        const auto entry = read_entry(numbers, first + i * entry_length);
        if (!entry) return false;
        if (says_sensor(numbers, *entry)) return true;
        if (entry->tag == sub_directories) add_sub_directories(numbers, *entry, to_visit);
    }
    if (const auto next = numbers.at(first + *count * entry_length, 4); next && *next != 0) {
        to_visit.push_back(*next);
    }
    return false;
}

}  // namespace

bool holds_sensor_data(std::span<const std::byte> tiff) {
    constexpr std::size_t most_directories = 32;  // a hostile file may lead in circles
    const TiffNumbers numbers(tiff);
    const auto first = numbers.at(4, 4);
    if (!first) return false;
    std::vector<std::uint32_t> to_visit{*first};
    for (std::size_t i = 0; i < to_visit.size() && i < most_directories; ++i) {
        const std::uint32_t directory = to_visit[i];
        if (visit(numbers, directory, to_visit)) return true;
    }
    return false;
}

}  // namespace quarterturn
