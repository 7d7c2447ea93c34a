#include "tests/fuzz/targets/decoder.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    return quarterturn::decode_and_look(quarterturn::decode_jpeg, data, size);
}
