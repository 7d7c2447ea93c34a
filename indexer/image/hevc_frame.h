#pragma once
// A picture of HEVC, by libavcodec: what is coded, before it is cropped.

extern "C" {
#include <libavcodec/avcodec.h>
}

#include <cstdint>
#include <exception>
#include <memory>
#include <vector>

namespace quarterturn {

// One picture, in units that a mark begins each (ITU-T H.265, annex B).
using HevcStream = std::vector<std::uint8_t>;

struct FreeFrame {
    void operator()(AVFrame* frame) const { av_frame_free(&frame); }
};
using HevcFrame = std::unique_ptr<AVFrame, FreeFrame>;

struct NotOpened : std::exception {};
struct PartMissing : std::exception {};

// Throws NotOpened where `met` is false.
void require_hevc(bool met);

int bytes_of_sample(const AVFrame& frame);

// Throws NotOpened, PartMissing where blocks of the picture are not coded, and std::bad_alloc.
HevcFrame decoded_hevc(const HevcStream& stream);

}  // namespace quarterturn
