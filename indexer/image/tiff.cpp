#include <tiffio.h>

#include <array>
#include <cstring>
#include <memory>
#include <opencv2/imgproc.hpp>

#include "indexer/image/codec.h"

namespace quarterturn {
namespace {

// What libtiff reads from: the file's bytes and where it stands in them.
struct Source {
    std::span<const std::byte> bytes;
    toff_t position = 0;
    bool ran_out = false;
};

tmsize_t on_read(thandle_t handle, void* to, tmsize_t wanted) {
    auto& source = *static_cast<Source*>(handle);
    const toff_t left =
        source.position < source.bytes.size() ? source.bytes.size() - source.position : 0;
    const auto length = std::min<toff_t>(left, static_cast<toff_t>(wanted));
    if (length < static_cast<toff_t>(wanted)) source.ran_out = true;
    if (length > 0) std::memcpy(to, source.bytes.data() + source.position, length);
    source.position += length;
    return static_cast<tmsize_t>(length);
}

tmsize_t on_write(thandle_t, void*, tmsize_t) {
    return 0;
}

toff_t on_seek(thandle_t handle, toff_t offset, int whence) {
    auto& source = *static_cast<Source*>(handle);
    if (whence == SEEK_SET) source.position = offset;
    if (whence == SEEK_CUR) source.position += offset;
    if (whence == SEEK_END) source.position = source.bytes.size() + offset;
    return source.position;
}

int on_close(thandle_t) {
    return 0;
}
toff_t on_size(thandle_t handle) {
    return static_cast<Source*>(handle)->bytes.size();
}
int on_message(TIFF*, void*, const char*, const char*, va_list) {
    return 1;
}

using Tiff = std::unique_ptr<TIFF, decltype(&TIFFClose)>;

Tiff open_tiff(Source& source) {
    const std::unique_ptr<TIFFOpenOptions, decltype(&TIFFOpenOptionsFree)> options(
        TIFFOpenOptionsAlloc(), &TIFFOpenOptionsFree);
    if (!options) throw std::bad_alloc();
    constexpr tmsize_t most_bytes_at_once = 1'000'000'000;
    TIFFOpenOptionsSetMaxSingleMemAlloc(options.get(), most_bytes_at_once);
    TIFFOpenOptionsSetErrorHandlerExtR(options.get(), on_message, nullptr);
    TIFFOpenOptionsSetWarningHandlerExtR(options.get(), on_message, nullptr);
    // "m": never map the file into memory; it is there already.
    return {TIFFClientOpenExt("", "rm", &source, on_read, on_write, on_seek, on_close, on_size,
                              nullptr, nullptr, options.get()),
            &TIFFClose};
}

std::vector<std::byte> profile(TIFF* tiff) {
    std::uint32_t length = 0;
    const void* data = nullptr;
    if (TIFFGetField(tiff, TIFFTAG_ICCPROFILE, &length, &data) == 0 || data == nullptr) return {};
    const auto* first = static_cast<const std::byte*>(data);
    return {first, first + length};
}

// libtiff's pixels are multiplied by their alpha already; white shows through the rest.
cv::Mat multiplied_on_white(const cv::Mat& rgba) {
    cv::Mat bgr;
    cv::cvtColor(rgba, bgr, cv::COLOR_RGBA2BGR);
    cv::Mat paper;
    cv::extractChannel(rgba, paper, 3);
    if (cv::countNonZero(paper != 255) == 0) return bgr;
    cv::bitwise_not(paper, paper);
    cv::merge(std::array{paper, paper, paper}, paper);
    return bgr + paper;
}

// All of libtiff's own kinds of pixels as RGBA, rows from the top as stored.
class RgbaReader {
  public:
    explicit RgbaReader(TIFF* tiff) {
        std::array<char, 1024> why{};
        if (TIFFRGBAImageBegin(&image_, tiff, /*stop=*/1, why.data()) == 0) {
            throw Refusal(
                "The picture is stored in a way that is not opened here. Save it as a JPEG and "
                "bring "
                "that in.");
        }
        image_.orientation = ORIENTATION_TOPLEFT;
        image_.req_orientation = ORIENTATION_TOPLEFT;
    }
    ~RgbaReader() { TIFFRGBAImageEnd(&image_); }
    RgbaReader(const RgbaReader&) = delete;
    RgbaReader& operator=(const RgbaReader&) = delete;

    // An empty picture when the pixels cannot all be read.
    cv::Mat read() {
        cv::Mat rgba(static_cast<int>(image_.height), static_cast<int>(image_.width), CV_8UC4);
        const int whole = TIFFRGBAImageGet(&image_, reinterpret_cast<std::uint32_t*>(rgba.data),
                                           image_.width, image_.height);
        return whole != 0 ? rgba : cv::Mat{};
    }

  private:
    TIFFRGBAImage image_{};
};

}  // namespace

StoredPicture decode_tiff(std::span<const std::byte> bytes, int long_edge) {
    Source source{bytes};
    const Tiff tiff = open_tiff(source);
    if (!tiff) throw source.ran_out ? ends_too_early() : is_damaged();
    std::uint32_t width = 0;
    std::uint32_t height = 0;
    TIFFGetField(tiff.get(), TIFFTAG_IMAGEWIDTH, &width);
    TIFFGetField(tiff.get(), TIFFTAG_IMAGELENGTH, &height);
    check_size(width, height);
    const cv::Mat rgba = RgbaReader(tiff.get()).read();
    if (rgba.empty()) throw source.ran_out ? ends_too_early() : is_damaged();
    return {shrunk(multiplied_on_white(rgba), long_edge), rgba.cols, rgba.rows,
            profile(tiff.get())};
}

}  // namespace quarterturn
