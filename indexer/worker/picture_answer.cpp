#include "indexer/worker/picture_answer.h"

namespace quarterturn {
namespace {

std::vector<std::byte> bytes_of(std::string_view text) {
    const auto bytes = std::as_bytes(std::span(text));
    return {bytes.begin(), bytes.end()};
}

}  // namespace

Answer picture_answer(Decoder& decoder, const Request& request, std::span<const std::byte> photo) {
    const Decoded decoded = decoder.decode({photo, request.orientation, request.long_edge});
    if (!decoded.ok()) return {{.said = Said::refused}, bytes_of(decoded.refused)};
    const cv::Mat whole = decoded.bgr.isContinuous() ? decoded.bgr : decoded.bgr.clone();
    return {{.said = Said::picture,
             .rows = whole.rows,
             .columns = whole.cols,
             .full_width = decoded.full_width,
             .full_height = decoded.full_height,
             .orientation_applied = decoded.orientation_applied},
            {},
            whole};
}

}  // namespace quarterturn
