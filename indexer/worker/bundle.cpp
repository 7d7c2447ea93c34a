#include "indexer/worker/bundle.h"

#include <cstdint>
#include <cstring>

namespace quarterturn {

std::vector<std::byte> bundled(std::span<const std::span<const std::byte>> parts) {
    std::vector<std::byte> bundle;
    for (const std::span<const std::byte> part : parts) {
        const std::uint64_t length = part.size();
        const auto* first = reinterpret_cast<const std::byte*>(&length);
        bundle.insert(bundle.end(), first, first + sizeof length);
        bundle.insert(bundle.end(), part.begin(), part.end());
    }
    return bundle;
}

std::optional<std::vector<std::span<const std::byte>>> unbundled(
    std::span<const std::byte> bundle) {
    std::vector<std::span<const std::byte>> parts;
    while (!bundle.empty()) {
        std::uint64_t length = 0;
        if (bundle.size() < sizeof length) return std::nullopt;
        std::memcpy(&length, bundle.data(), sizeof length);
        bundle = bundle.subspan(sizeof length);
        if (length > bundle.size()) return std::nullopt;
        parts.push_back(bundle.first(length));
        bundle = bundle.subspan(length);
    }
    return parts;
}

}  // namespace quarterturn
