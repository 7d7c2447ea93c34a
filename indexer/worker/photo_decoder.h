#pragma once
// A decoder for everything the library holds: RAW files by the preview inside them, the rest by
// another decoder.

#include "indexer/image/decode.h"

namespace quarterturn {

class PhotoDecoder final : public Decoder {
  public:
    // `pictures` must outlive this object, and is used from every thread that uses it.
    explicit PhotoDecoder(Decoder& pictures) : pictures_(pictures) {}

    Decoded decode(const DecodeRequest& request) override;

  private:
    Decoder& pictures_;
};

}  // namespace quarterturn
