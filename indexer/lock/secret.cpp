#include "indexer/lock/secret.h"

#include <sodium.h>

#include <new>
#include <stdexcept>

namespace quarterturn {
namespace {

unsigned char* guarded_memory(std::size_t size) {
    if (sodium_init() < 0) {
        throw std::runtime_error("This computer's libsodium library cannot make random numbers.");
    }
    auto* bytes = static_cast<unsigned char*>(sodium_malloc(size));
    if (bytes == nullptr) throw std::bad_alloc();
    return bytes;
}

}  // namespace

Secret::Secret(std::size_t size) : bytes_(guarded_memory(size)), size_(size) {}

void Secret::Wiped::operator()(unsigned char* bytes) const {
    sodium_free(bytes);
}

}  // namespace quarterturn
