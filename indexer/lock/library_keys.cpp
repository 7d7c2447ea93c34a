#include "indexer/lock/library_keys.h"

#include <sodium.h>

#include <array>

#include "indexer/lock/hex.h"

namespace quarterturn {
namespace {

// Each number stands for one purpose for ever.
enum class Purpose : std::uint64_t { contents = 1, name_marks, name_stream, records, mark };

constexpr auto context = "Qturnkey";
static_assert(std::string_view(context).size() == crypto_kdf_CONTEXTBYTES);
constexpr std::size_t key_bytes = 32;
constexpr std::size_t mark_bytes = 16;

Secret derived(const Secret& data_key, Purpose purpose, std::size_t bytes = key_bytes) {
    Secret key(bytes);
    crypto_kdf_derive_from_key(key.data(), key.size(), static_cast<std::uint64_t>(purpose), context,
                               data_key.data());
    return key;
}

std::string mark_of(const Secret& data_key) {
    const Secret mark = derived(data_key, Purpose::mark, mark_bytes);
    return to_hex({mark.data(), mark.size()});
}

}  // namespace

LibraryKeys::LibraryKeys(Secret data_key)
    : data_key_(std::move(data_key)),
      contents_(derived(data_key_, Purpose::contents)),
      name_marks_(derived(data_key_, Purpose::name_marks)),
      name_stream_(derived(data_key_, Purpose::name_stream)),
      records_(derived(data_key_, Purpose::records)),
      mark_(mark_of(data_key_)) {}

KeysInHand new_library_keys() {
    Secret data_key(crypto_kdf_KEYBYTES);
    randombytes_buf(data_key.data(), data_key.size());
    return std::make_shared<const LibraryKeys>(std::move(data_key));
}

}  // namespace quarterturn
