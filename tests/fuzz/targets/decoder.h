#pragma once
// One decoder's wrapper, whatever the bytes are: a picture of the size it says, or a sentence.

#include "indexer/image/codec.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace quarterturn {

template <class Decode>
int decode_and_look(const Decode& decode, const std::uint8_t* data, std::size_t size) {
    try {
        const StoredPicture picture = decode(std::as_bytes(std::span(data, size)), 64);
        if (picture.pixels.empty() || picture.full_width < picture.pixels.cols ||
            picture.full_height < picture.pixels.rows) {
            __builtin_trap();
        }
    } catch (const Refusal&) {
        return 0;
    } catch (const std::bad_alloc&) {
        return 0;
    }
    return 0;
}

}  // namespace quarterturn
