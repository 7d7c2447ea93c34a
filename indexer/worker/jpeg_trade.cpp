#include "indexer/worker/picture_answer.h"

namespace quarterturn {
namespace {

Answer answer_jpeg(const Request& request, std::span<const std::byte> photo) {
    static const std::unique_ptr<Decoder> pictures = make_jpeg_decoder();
    return picture_answer(*pictures, request, photo);
}

}  // namespace

Trade jpeg_trade() {
    return {.answering = answer_jpeg};
}

}  // namespace quarterturn
