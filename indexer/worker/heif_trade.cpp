#include <opencv2/core.hpp>

#include "indexer/worker/picture_answer.h"

namespace quarterturn {
namespace {

void open_files_of_libheif() {
    cv::setNumThreads(1);
    set_up_heif();
}

Answer answer_heif(const Request& request, std::span<const std::byte> photo) {
    static const std::unique_ptr<Decoder> pictures = make_heif_decoder();
    return picture_answer(*pictures, request, photo);
}

}  // namespace

Trade heif_trade() {
    return {answer_heif, open_files_of_libheif};
}

}  // namespace quarterturn
