#pragma once

#include "indexer/image/decode.h"
#include "indexer/worker/serve.h"

namespace quarterturn {

Answer picture_answer(Decoder& decoder, const Request& request, std::span<const std::byte> photo);

}  // namespace quarterturn
