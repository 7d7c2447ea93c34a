#include "indexer/image/hevc_frame.h"

extern "C" {
#include <libavutil/pixdesc.h>
}

#include <algorithm>
#include <array>
#include <limits>
#include <new>
#include <random>

#include "indexer/image/codec.h"

namespace quarterturn {
namespace {

using Codec =
    std::unique_ptr<AVCodecContext,
                    decltype([](AVCodecContext* codec) { avcodec_free_context(&codec); })>;
using Packet =
    std::unique_ptr<AVPacket, decltype([](AVPacket* packet) { av_packet_free(&packet); })>;

// libavcodec says nothing of blocks that a damaged picture leaves out. So what is to be written
// into is noise before, and where it still is, nothing was written.
class Noise {
  public:
    static constexpr int period = 64;  // bytes

    Noise() {
        std::minstd_rand random;  // NOLINT: the same each time
        for (int i = 0; i < period; ++i) {
            bytes_[i] = bytes_[i + period] = static_cast<std::uint8_t>(random() >> 8);
        }
    }

    void fill(AVFrame& frame) const {
        const int row_bytes = frame.width * bytes_of_sample(frame);
        for (int y = 0; y < frame.height; ++y) {
            std::uint8_t* row = frame.data[0] + std::ptrdiff_t{y} * frame.linesize[0];
            for (int at = 0; at < row_bytes; at += period) {
                std::copy_n(from(y), std::min(period, row_bytes - at), row + at);
            }
        }
    }

    // Looks at the middle of each of the smallest blocks there are.
    bool is_left_in(const AVFrame& frame) const {
        constexpr int cell = 16;
        constexpr int margin = (cell - edge) / 2;
        for (int y = margin; y + edge <= frame.height; y += cell) {
            for (int x = margin; x + edge <= frame.width; x += cell) {
                if (is_left_at(frame, x, y)) return true;
            }
        }
        return false;
    }

  private:
    static constexpr int edge = 8;  // of what is looked at, in samples

    const std::uint8_t* from(int y) const { return bytes_.data() + y * 7 % period; }

    bool is_left_at(const AVFrame& frame, int x, int y) const {
        const int sample = bytes_of_sample(frame);
        for (int row = y; row < y + edge; ++row) {
            const std::uint8_t* found =
                frame.data[0] + std::ptrdiff_t{row} * frame.linesize[0] + x * sample;
            const std::uint8_t* left = from(row) + x * sample % period;
            if (!std::equal(found, found + edge * sample, left)) return false;
        }
        return true;
    }

    std::array<std::uint8_t, std::size_t{2} * period> bytes_{};  // twice, to begin anywhere
};

const Noise& noise() {
    static const Noise made;
    return made;
}

int noisy_buffer(AVCodecContext* codec, AVFrame* frame, int flags) {
    const int error = avcodec_default_get_buffer2(codec, frame, flags);
    if (error == 0) noise().fill(*frame);
    return error;
}

Codec open_codec() {
    Codec codec(avcodec_alloc_context3(nullptr));
    if (!codec) throw std::bad_alloc();
    codec->thread_count = 1;  // photos are spread over threads by the caller
    codec->max_pixels = most_pixels;
    codec->apply_cropping = 0;  // it would crop to what is quick for it
    codec->get_buffer2 = noisy_buffer;
    require_hevc(avcodec_open2(codec.get(), avcodec_find_decoder(AV_CODEC_ID_HEVC), nullptr) == 0);
    return codec;
}

Packet packet_of(const HevcStream& stream) {
    require_hevc(stream.size() < std::numeric_limits<int>::max() - AV_INPUT_BUFFER_PADDING_SIZE);
    Packet packet(av_packet_alloc());
    if (!packet || av_new_packet(packet.get(), static_cast<int>(stream.size())) != 0) {
        throw std::bad_alloc();
    }
    std::ranges::copy(stream, packet->data);
    return packet;
}

}  // namespace

void require_hevc(bool met) {
    if (!met) throw NotOpened();
}

int bytes_of_sample(const AVFrame& frame) {
    const auto* format = av_pix_fmt_desc_get(static_cast<AVPixelFormat>(frame.format));
    return format->comp[0].step;
}

HevcFrame decoded_hevc(const HevcStream& stream) {
    const Codec codec = open_codec();
    HevcFrame frame(av_frame_alloc());
    if (!frame) throw std::bad_alloc();
    require_hevc(avcodec_send_packet(codec.get(), packet_of(stream).get()) == 0);
    require_hevc(avcodec_send_packet(codec.get(), nullptr) == 0);  // nothing comes after it
    require_hevc(avcodec_receive_frame(codec.get(), frame.get()) == 0);
    if (frame->decode_error_flags != 0 || noise().is_left_in(*frame)) throw PartMissing();
    return frame;
}

}  // namespace quarterturn
