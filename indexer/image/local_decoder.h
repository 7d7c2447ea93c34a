#pragma once
// A decoder of this process from what reads the pixels as they are stored.

#include "indexer/image/codec.h"
#include "indexer/image/decode.h"

namespace quarterturn {

// May throw what the functions of codec.h throw.
using DecodeStored = StoredPicture (*)(FileKind kind, std::span<const std::byte> bytes,
                                       int long_edge);

// Turns upright, brings into sRGB, and makes a result of every refusal.
std::unique_ptr<Decoder> decoder_by(DecodeStored decode_stored);

}  // namespace quarterturn
