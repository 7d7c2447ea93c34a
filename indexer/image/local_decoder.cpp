#include "indexer/image/local_decoder.h"

#include "indexer/image/profile.h"
#include "indexer/image/upright.h"

namespace quarterturn {
namespace {

Decoded decode_upright(DecodeStored decode_stored, const DecodeRequest& request) {
    const FileKind kind = sniff(request.bytes);
    const StoredPicture stored = decode_stored(kind, request.bytes, request.long_edge);
    Decoded decoded;
    decoded.orientation_applied =
        kind == FileKind::heif ? 1 : known_orientation(request.orientation);
    decoded.full_width = stored.full_width;
    decoded.full_height = stored.full_height;
    if (turns_sideways(decoded.orientation_applied)) {
        std::swap(decoded.full_width, decoded.full_height);
    }
    decoded.bgr = upright(to_srgb(stored.pixels, stored.icc), decoded.orientation_applied);
    return decoded;
}

Decoded refusal(std::string sentence) {
    Decoded decoded;
    decoded.refused = std::move(sentence);
    return decoded;
}

class LocalDecoder : public Decoder {
  public:
    explicit LocalDecoder(DecodeStored decode_stored) : decode_stored_(decode_stored) {}

    Decoded decode(const DecodeRequest& request) override {
        try {
            return decode_upright(decode_stored_, request);
        } catch (const Refusal& reason) {
            return refusal(reason.what());
        } catch (const std::bad_alloc&) {
            return refusal(
                "The picture needs more memory than this computer has free. Close other programs, "
                "or "
                "save a smaller copy and bring that in.");
        } catch (const std::exception&) {
            return refusal(is_damaged().what());
        }
    }

  private:
    DecodeStored decode_stored_;
};

}  // namespace

std::unique_ptr<Decoder> decoder_by(DecodeStored decode_stored) {
    return std::make_unique<LocalDecoder>(decode_stored);
}

}  // namespace quarterturn
