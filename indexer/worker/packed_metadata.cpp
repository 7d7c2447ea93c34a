#include "indexer/worker/packed_metadata.h"

#include <cstdint>
#include <cstring>

namespace quarterturn {
namespace {

constexpr int most_digits = 9;
constexpr std::int64_t most_offset = 14 * 60;  // minutes; ISO 8601 as parse_offset reads it

class Packer {
  public:
    void number(std::int64_t value) {
        const auto* first = reinterpret_cast<const std::byte*>(&value);
        bytes_.insert(bytes_.end(), first, first + sizeof value);
    }
    void text(const std::string& value) {
        number(std::ssize(value));
        const auto* first = reinterpret_cast<const std::byte*>(value.data());
        bytes_.insert(bytes_.end(), first, first + value.size());
    }
    std::vector<std::byte> bytes() && { return std::move(bytes_); }

  private:
    std::vector<std::byte> bytes_;
};

struct NotPacked {};

class Unpacker {
  public:
    explicit Unpacker(std::span<const std::byte> bytes) : rest_(bytes) {}

    std::int64_t number(std::int64_t least, std::int64_t most) {
        std::int64_t value = 0;
        std::memcpy(&value, take(sizeof value).data(), sizeof value);
        if (value < least || value > most) throw NotPacked{};
        return value;
    }
    std::int64_t any_number() { return number(INT64_MIN, INT64_MAX); }
    std::int64_t length() { return number(0, std::ssize(rest_)); }
    std::string text() {
        const auto part = take(static_cast<std::size_t>(length()));
        return {reinterpret_cast<const char*>(part.data()), part.size()};
    }
    bool done() const { return rest_.empty(); }

  private:
    std::span<const std::byte> take(std::size_t count) {
        if (count > rest_.size()) throw NotPacked{};
        const auto part = rest_.first(count);
        rest_ = rest_.subspan(count);
        return part;
    }

    std::span<const std::byte> rest_;
};

void pack_time(Packer& packer, const std::optional<CaptureTime>& taken) {
    packer.number(taken ? 1 : 0);
    if (!taken) return;
    packer.number(taken->local.time_since_epoch().count());
    packer.number(taken->fraction_digits);
    packer.number(taken->utc_offset ? 1 : 0);
    packer.number(taken->utc_offset.value_or(std::chrono::minutes{0}).count());
}

std::optional<CaptureTime> unpack_time(Unpacker& unpacker) {
    if (unpacker.number(0, 1) == 0) return std::nullopt;
    CaptureTime taken;
    taken.local = LocalTime{std::chrono::nanoseconds{unpacker.any_number()}};
    taken.fraction_digits = static_cast<int>(unpacker.number(0, most_digits));
    const bool has_offset = unpacker.number(0, 1) == 1;
    const std::chrono::minutes offset{unpacker.number(-most_offset, most_offset)};
    if (has_offset) taken.utc_offset = offset;
    return taken;
}

FileMetadata unpack(Unpacker& unpacker) {
    FileMetadata metadata;
    metadata.taken = unpack_time(unpacker);
    metadata.make = unpacker.text();
    metadata.model = unpacker.text();
    metadata.serial = unpacker.text();
    metadata.orientation = static_cast<int>(unpacker.number(1, 8));
    metadata.width = static_cast<int>(unpacker.number(0, INT32_MAX));
    metadata.height = static_cast<int>(unpacker.number(0, INT32_MAX));
    for (auto left = unpacker.length(); left > 0; --left) {
        metadata.keywords.push_back(unpacker.text());
    }
    metadata.unreadable = unpacker.text();
    if (!unpacker.done()) throw NotPacked{};
    return metadata;
}

}  // namespace

std::vector<std::byte> packed(const FileMetadata& metadata) {
    Packer packer;
    pack_time(packer, metadata.taken);
    packer.text(metadata.make);
    packer.text(metadata.model);
    packer.text(metadata.serial);
    packer.number(metadata.orientation);
    packer.number(metadata.width);
    packer.number(metadata.height);
    packer.number(std::ssize(metadata.keywords));
    for (const std::string& keyword : metadata.keywords) packer.text(keyword);
    packer.text(metadata.unreadable);
    return std::move(packer).bytes();
}

std::optional<FileMetadata> unpacked(std::span<const std::byte> bytes) try {
    Unpacker unpacker{bytes};
    return unpack(unpacker);
} catch (const NotPacked&) {
    return std::nullopt;
}

}  // namespace quarterturn
