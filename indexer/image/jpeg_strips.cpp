// A JPEG may be cut by restart markers, each of which begins anew (ITU-T T.81, B.2.1 and
// F.1.1.5.3). Strips that are as long as from one to the next stand one after the other as they
// are.

#include <stdexcept>

#include "indexer/image/encode.h"
#include "indexer/image/strips.h"

namespace quarterturn {
namespace {

constexpr std::byte baseline_frame{0xC0};
constexpr std::byte scan{0xDA};
constexpr std::size_t marker = 2;  // bytes

struct Parts {
    std::size_t height = 0;  // where it stands
    std::size_t data = 0;    // where what is coded begins
};

std::size_t number_at(std::span<const std::byte> bytes, std::size_t at) {
    return std::to_integer<std::size_t>(bytes[at]) << 8 |
           std::to_integer<std::size_t>(bytes[at + 1]);
}

// Of what libjpeg has written itself.
Parts parts_of(std::span<const std::byte> jpeg) {
    Parts parts;
    for (std::size_t at = marker; at + 2 * marker < jpeg.size();) {
        const std::byte kind = jpeg[at + 1];
        if (kind == baseline_frame) parts.height = at + marker + 3;
        at += marker + number_at(jpeg, at + marker);
        if (kind != scan) continue;
        parts.data = at;
        return parts;
    }
    throw std::logic_error("a strip without a scan");
}

void append(std::vector<std::byte>& all, std::span<const std::byte> more) {
    all.insert(all.end(), more.begin(), more.end());
}

}  // namespace

std::vector<std::byte> jpeg_strip(const cv::Mat& bgrx, int quality, const PictureTag& tag) {
    return jpeg_bytes(
        bgrx, {.quality = quality, .dpi = tag.dpi, .icc = tag.icc, .restart_rows = strip_rows});
}

std::vector<std::byte> jpeg_of(std::span<const std::vector<std::byte>> strips, int height) {
    const Parts first = parts_of(strips.front());
    std::vector<std::byte> whole(strips.front().begin(),
                                 strips.front().begin() + static_cast<std::ptrdiff_t>(first.data));
    std::size_t length = 0;
    for (const auto& strip : strips) length += strip.size();
    whole.reserve(length);
    whole[first.height] = static_cast<std::byte>(height >> 8);
    whole[first.height + 1] = static_cast<std::byte>(height & 0xFF);
    for (std::size_t i = 0; i < strips.size(); ++i) {
        if (i > 0)
            append(whole, std::array{std::byte{0xFF}, static_cast<std::byte>(0xD0 + (i - 1) % 8)});
        const std::span<const std::byte> strip(strips[i]);
        const std::size_t data = parts_of(strip).data;
        append(whole, strip.subspan(data, strip.size() - data - marker));
    }
    append(whole, std::array{std::byte{0xFF}, std::byte{0xD9}});
    return whole;
}

}  // namespace quarterturn
