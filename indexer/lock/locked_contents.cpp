#include "indexer/lock/locked_contents.h"

#include <algorithm>
#include <array>

namespace quarterturn {
namespace {

constexpr std::array<unsigned char, 4> kind{'Q', 'T', 'L', 1};
constexpr std::size_t front_bytes = kind.size() + crypto_secretstream_xchacha20poly1305_HEADERBYTES;
constexpr std::size_t piece_bytes = std::size_t{1} << 16U;
constexpr std::size_t seal_bytes = crypto_secretstream_xchacha20poly1305_ABYTES;
constexpr std::size_t sealed_bytes = piece_bytes + seal_bytes;

const unsigned char* raw(const std::byte* bytes) {
    return reinterpret_cast<const unsigned char*>(bytes);
}

unsigned char* raw(std::byte* bytes) {
    return reinterpret_cast<unsigned char*>(bytes);
}

// An empty file has one empty piece.
std::int64_t pieces_of(std::int64_t bytes) {
    constexpr std::int64_t piece = piece_bytes;
    return std::max<std::int64_t>(1, (bytes + piece - 1) / piece);
}

}  // namespace

std::int64_t locked_size(std::int64_t bytes) {
    constexpr std::int64_t front = front_bytes;
    constexpr std::int64_t seal = seal_bytes;
    return front + bytes + seal * pieces_of(bytes);
}

std::optional<std::int64_t> unlocked_size(std::int64_t locked_bytes) {
    constexpr std::int64_t sealed = sealed_bytes;
    constexpr std::int64_t seal = seal_bytes;
    const std::int64_t body = locked_bytes - std::int64_t{front_bytes};
    const std::int64_t bytes = body - seal * ((body + sealed - 1) / sealed);
    if (bytes < 0 || locked_size(bytes) != locked_bytes) return std::nullopt;
    return bytes;
}

std::int64_t front_to_read(std::int64_t bytes) {
    return std::int64_t{front_bytes} + pieces_of(bytes) * std::int64_t{sealed_bytes};
}

Bytes locked_contents(const LibraryKeys& keys, std::span<const std::byte> bytes) {
    Bytes locked(static_cast<std::size_t>(locked_size(std::ssize(bytes))));
    std::ranges::copy(std::as_bytes(std::span(kind)), locked.begin());
    crypto_secretstream_xchacha20poly1305_state state{};
    crypto_secretstream_xchacha20poly1305_init_push(&state, raw(locked.data() + kind.size()),
                                                    keys.contents().data());
    std::byte* to = locked.data() + front_bytes;
    bool last = false;
    while (!last) {
        const auto piece = bytes.first(std::min(piece_bytes, bytes.size()));
        bytes = bytes.subspan(piece.size());
        last = bytes.empty();
        crypto_secretstream_xchacha20poly1305_push(
            &state, raw(to), nullptr, raw(piece.data()), piece.size(), kind.data(), kind.size(),
            last ? crypto_secretstream_xchacha20poly1305_TAG_FINAL : 0);
        to += piece.size() + seal_bytes;
    }
    sodium_memzero(&state, sizeof state);
    return locked;
}

bool begin_as_locked(std::span<const std::byte> bytes) {
    return bytes.size() >= front_bytes && std::equal(kind.begin(), kind.end(), raw(bytes.data()));
}

std::optional<Bytes> opened_but_for_kind(const LibraryKeys& keys,
                                         std::span<const std::byte> file) try {
    if (file.size() < front_bytes || begin_as_locked(file)) return std::nullopt;
    Bytes held;
    ContentsReader reader(keys, [&](std::span<const std::byte> piece) {
        held.insert(held.end(), piece.begin(), piece.end());
    });
    reader.feed(std::as_bytes(std::span(kind)));
    reader.feed(file.subspan(kind.size()));
    reader.end();
    return held;
} catch (const DamagedContents&) {
    return std::nullopt;
}

ContentsReader::ContentsReader(const LibraryKeys& keys, Take take)
    : keys_(keys), take_(std::move(take)), opened_(piece_bytes) {}

void ContentsReader::feed(std::span<const std::byte> piece) {
    while (!piece.empty()) {
        const std::size_t wanted = (begun_ ? sealed_bytes : front_bytes) - waiting_.size();
        const auto part = piece.first(std::min(wanted, piece.size()));
        waiting_.insert(waiting_.end(), part.begin(), part.end());
        piece = piece.subspan(part.size());
        if (part.size() < wanted) return;
        begun_ ? open_piece(waiting_.size()) : begin();
        waiting_.clear();
    }
}

void ContentsReader::end() {
    if (begun_ && !waiting_.empty()) open_piece(waiting_.size());
    sodium_memzero(&state_, sizeof state_);
    if (!ended_) throw DamagedContents();
}

void ContentsReader::begin() {
    const bool ours = std::equal(kind.begin(), kind.end(), raw(waiting_.data()));
    if (!ours || crypto_secretstream_xchacha20poly1305_init_pull(
                     &state_, raw(waiting_.data() + kind.size()), keys_.contents().data()) != 0) {
        throw DamagedContents();
    }
    begun_ = true;
}

void ContentsReader::open_piece(std::size_t bytes) {
    unsigned long long length = 0;
    unsigned char tag = 0;
    if (ended_ || bytes < seal_bytes ||
        crypto_secretstream_xchacha20poly1305_pull(&state_, raw(opened_.data()), &length, &tag,
                                                   raw(waiting_.data()), bytes, kind.data(),
                                                   kind.size()) != 0) {
        throw DamagedContents();
    }
    ended_ = tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL;
    take_(std::span(opened_).first(static_cast<std::size_t>(length)));
}

}  // namespace quarterturn
