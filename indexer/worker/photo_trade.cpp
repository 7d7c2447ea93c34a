#include <iconv.h>

#include <ctime>

#include "indexer/worker/bundle.h"
#include "indexer/worker/packed_metadata.h"
#include "indexer/worker/photo_decoder.h"
#include "indexer/worker/picture_answer.h"

namespace quarterturn {
namespace {

void open_all_files() {
    cv::setNumThreads(1);
    set_up_metadata();
    ::tzset();
    const iconv_t converter = ::iconv_open("UTF-8", "UCS-2LE");
    if (converter != reinterpret_cast<iconv_t>(-1)) ::iconv_close(converter);
}

std::vector<std::byte> all_metadata(std::span<const std::byte> bundle) {
    std::vector<std::vector<std::byte>> said;
    const auto photos = unbundled(bundle).value();
    for (const auto photo : photos) said.push_back(packed(read_metadata(photo)));
    const std::vector<std::span<const std::byte>> parts(said.begin(), said.end());
    return bundled(parts);
}

Answer answer(const Request& request, std::span<const std::byte> photo) {
    static const std::unique_ptr<Decoder> pictures = make_decoder_of_all_but_heif();
    if (request.asked == Asked::metadata) {
        return {{.said = Said::metadata}, packed(read_metadata(photo))};
    }
    if (request.asked == Asked::all_metadata) {
        return {{.said = Said::metadata}, all_metadata(photo)};
    }
    PhotoDecoder decoder{*pictures};
    return picture_answer(decoder, request, photo);
}

}  // namespace

Trade photo_trade() {
    return {answer, open_all_files};
}

}  // namespace quarterturn
