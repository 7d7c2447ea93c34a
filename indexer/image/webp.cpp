#include <webp/decode.h>
#include <webp/demux.h>

#include <memory>

#include "indexer/image/codec.h"

namespace quarterturn {
namespace {

const std::uint8_t* data_of(std::span<const std::byte> bytes) {
    return reinterpret_cast<const std::uint8_t*>(bytes.data());
}

void refuse_unless_ok(VP8StatusCode status) {
    switch (status) {
        case VP8_STATUS_OK:
            return;
        case VP8_STATUS_OUT_OF_MEMORY:
            throw std::bad_alloc();
        case VP8_STATUS_NOT_ENOUGH_DATA:
            throw ends_too_early();
        case VP8_STATUS_UNSUPPORTED_FEATURE:
            throw Refusal(
                "The file holds a moving picture, and only still ones are opened. Save one frame "
                "of "
                "it as a JPEG and bring that in.");
        default:
            throw is_damaged();
    }
}

std::vector<std::byte> profile(std::span<const std::byte> bytes) {
    const WebPData file{data_of(bytes), bytes.size()};
    const std::unique_ptr<WebPDemuxer, decltype(&WebPDemuxDelete)> demuxer(WebPDemux(&file),
                                                                           &WebPDemuxDelete);
    WebPChunkIterator chunk{};
    if (!demuxer || WebPDemuxGetChunk(demuxer.get(), "ICCP", 1, &chunk) == 0) return {};
    const auto* first = reinterpret_cast<const std::byte*>(chunk.chunk.bytes);
    std::vector<std::byte> icc(first, first + chunk.chunk.size);
    WebPDemuxReleaseChunkIterator(&chunk);
    return icc;
}

}  // namespace

StoredPicture decode_webp(std::span<const std::byte> bytes, int long_edge) {
    WebPDecoderConfig config;
    if (WebPInitDecoderConfig(&config) == 0) throw is_damaged();
    refuse_unless_ok(WebPGetFeatures(data_of(bytes), bytes.size(), &config.input));
    check_size(config.input.width, config.input.height);
    cv::Mat pixels(config.input.height, config.input.width,
                   config.input.has_alpha != 0 ? CV_8UC4 : CV_8UC3);
    config.output.colorspace = config.input.has_alpha != 0 ? MODE_BGRA : MODE_BGR;
    config.output.is_external_memory = 1;
    config.output.u.RGBA.rgba = pixels.data;
    config.output.u.RGBA.stride = static_cast<int>(pixels.step);
    config.output.u.RGBA.size = pixels.step * static_cast<std::size_t>(pixels.rows);
    refuse_unless_ok(WebPDecode(data_of(bytes), bytes.size(), &config));
    return {shrunk(pixels.channels() == 4 ? on_white(pixels) : pixels, long_edge), pixels.cols,
            pixels.rows, profile(bytes)};
}

}  // namespace quarterturn
