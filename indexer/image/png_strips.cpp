// The rows of a PNG are one deflated stream (W3C PNG, 10), and such a stream may be made of parts
// that are deflated each for itself (RFC 1951; zlib's Z_FULL_FLUSH).

#include <png.h>
#include <zlib.h>

#include <csetjmp>
#include <memory>
#include <stdexcept>

#include "indexer/image/strips.h"

namespace quarterturn {
namespace {

// Chosen by measurement on an A4 sheet of 24 photos: each row is written as the difference from the
// one above it, which takes half of the time of trying all filters and is no longer.
constexpr std::byte from_left{1};
constexpr std::byte from_above{2};
constexpr int compression = 1;
constexpr int bytes_of_pixel = 3;

// RGB of a row, after the byte that says how it is filtered.
void unfiltered(const cv::Vec4b* bgrx, std::span<std::uint8_t> row) {
    for (std::size_t x = 0, at = 1; at < row.size(); ++x, at += bytes_of_pixel) {
        row[at] = bgrx[x][2];
        row[at + 1] = bgrx[x][1];
        row[at + 2] = bgrx[x][0];
    }
}

// Each byte as its difference from the one above it; in the first row from the one to its left.
void filter(std::span<const std::uint8_t> row, const std::vector<std::uint8_t>* above,
            std::span<std::uint8_t> filtered) {
    filtered[0] = std::to_integer<std::uint8_t>(above == nullptr ? from_left : from_above);
    if (above == nullptr) std::copy_n(row.begin() + 1, bytes_of_pixel, filtered.begin() + 1);
    const std::size_t first = above == nullptr ? 1 + bytes_of_pixel : 1;
    const std::uint8_t* const beside =
        above == nullptr ? row.data() + first - bytes_of_pixel : above->data() + first;
    for (std::size_t i = first; i < row.size(); ++i) {
        filtered[i] = static_cast<std::uint8_t>(row[i] - beside[i - first]);
    }
}

// Raw deflate into memory that holds whatever comes out of so many bytes.
class Deflater {
  public:
    explicit Deflater(std::size_t most_bytes) {
        constexpr int raw_window = -15;
        constexpr int most_memory = 9;
        if (deflateInit2(&stream_, compression, Z_DEFLATED, raw_window, most_memory,
                         Z_DEFAULT_STRATEGY) != Z_OK) {
            throw std::bad_alloc();
        }
        room_ = deflateBound(&stream_, most_bytes) + 16;
        out_ = std::make_unique_for_overwrite<std::uint8_t[]>(room_);
        stream_.next_out = out_.get();
        stream_.avail_out = static_cast<uInt>(room_);
    }
    ~Deflater() { deflateEnd(&stream_); }
    Deflater(const Deflater&) = delete;
    Deflater& operator=(const Deflater&) = delete;

    void add(std::span<std::uint8_t> bytes, int flush) {
        stream_.next_in = bytes.data();
        stream_.avail_in = static_cast<uInt>(bytes.size());
        deflate(&stream_, flush);
    }
    std::vector<std::byte> bytes() const {
        const auto* first = reinterpret_cast<const std::byte*>(out_.get());
        return {first, first + (room_ - stream_.avail_out)};
    }

  private:
    z_stream stream_{};
    std::size_t room_ = 0;
    std::unique_ptr<std::uint8_t[]> out_;
};

// Writes the chunks of a file into memory.
class PngFile {
  public:
    explicit PngFile(std::size_t about_bytes) {
        bytes_.reserve(about_bytes + 4096);
        png_ = png_create_write_struct(PNG_LIBPNG_VER_STRING, this, on_failure, nullptr);
        if (png_ == nullptr) throw std::bad_alloc();
        info_ = png_create_info_struct(png_);
        png_set_write_fn(png_, &bytes_, on_bytes, nullptr);
    }
    ~PngFile() { png_destroy_write_struct(&png_, &info_); }
    PngFile(const PngFile&) = delete;
    PngFile& operator=(const PngFile&) = delete;

    void head(cv::Size size, const PictureTag& tag) {
        run([&] {
            png_set_IHDR(png_, info_, static_cast<png_uint_32>(size.width),
                         static_cast<png_uint_32>(size.height), 8, PNG_COLOR_TYPE_RGB,
                         PNG_INTERLACE_NONE, PNG_COMPRESSION_TYPE_BASE, PNG_FILTER_TYPE_BASE);
            const auto per_metre = static_cast<png_uint_32>(cvRound(tag.dpi / 0.0254));
            png_set_pHYs(png_, info_, per_metre, per_metre, PNG_RESOLUTION_METER);
            if (!tag.icc.empty()) {
                png_set_iCCP(png_, info_, "sRGB", PNG_COMPRESSION_TYPE_BASE,
                             reinterpret_cast<png_const_bytep>(tag.icc.data()),
                             static_cast<png_uint_32>(tag.icc.size()));
            }
            png_write_info(png_, info_);
        });
    }
    void chunk(const char* name, std::span<const std::byte> data) {
        run([&] {
            png_write_chunk(png_, reinterpret_cast<png_const_bytep>(name),
                            reinterpret_cast<png_const_bytep>(data.data()), data.size());
        });
    }
    std::vector<std::byte> bytes() && { return std::move(bytes_); }

  private:
    static void on_failure(png_structp png, png_const_charp) {
        std::longjmp(static_cast<PngFile*>(png_get_error_ptr(png))->jump_, 1);
    }
    static void on_bytes(png_structp png, png_bytep data, std::size_t length) {
        auto& bytes = *static_cast<std::vector<std::byte>*>(png_get_io_ptr(png));
        const auto* first = reinterpret_cast<const std::byte*>(data);
        bytes.insert(bytes.end(), first, first + length);
    }

    // libpng leaves by a jump, which must not pass over objects with destructors: a step holds
    // none.
    template <class Step>
    void run(Step step) {
        if (setjmp(jump_) != 0) throw std::runtime_error("A PNG cannot hold this picture.");
        step();
    }

    png_structp png_ = nullptr;
    png_infop info_ = nullptr;
    std::vector<std::byte> bytes_;
    std::jmp_buf jump_{};
};

std::array<std::byte, 4> in_four_bytes(std::uint32_t number) {
    return {static_cast<std::byte>(number >> 24), static_cast<std::byte>(number >> 16),
            static_cast<std::byte>(number >> 8), static_cast<std::byte>(number)};
}

}  // namespace

PngStrip png_strip(const cv::Mat& bgrx, bool last) {
    const std::size_t length = 1 + static_cast<std::size_t>(bgrx.cols) * bytes_of_pixel;
    std::vector<std::uint8_t> row(length);
    std::vector<std::uint8_t> above(length);
    std::vector<std::uint8_t> filtered(length);
    PngStrip strip{{},
                   static_cast<std::uint32_t>(adler32(0, nullptr, 0)),
                   length * static_cast<std::size_t>(bgrx.rows)};
    Deflater deflater(strip.length);
    for (int y = 0; y < bgrx.rows; ++y, row.swap(above)) {
        unfiltered(bgrx.ptr<cv::Vec4b>(y), row);
        filter(row, y == 0 ? nullptr : &above, filtered);
        strip.checksum = static_cast<std::uint32_t>(
            adler32(strip.checksum, filtered.data(), static_cast<uInt>(length)));
        const bool ends = y + 1 == bgrx.rows;
        deflater.add(filtered, !ends ? Z_NO_FLUSH : last ? Z_FINISH : Z_FULL_FLUSH);
    }
    strip.deflated = deflater.bytes();
    return strip;
}

std::vector<std::byte> png_of(std::span<const PngStrip> strips, cv::Size size,
                              const PictureTag& tag) {
    constexpr std::array zlib_head{std::byte{0x78}, std::byte{0x01}};  // RFC 1950, the fastest
    std::size_t length = 0;
    for (const PngStrip& strip : strips) length += strip.deflated.size();
    PngFile file(length);
    file.head(size, tag);
    file.chunk("IDAT", zlib_head);
    std::uint32_t checksum = strips.front().checksum;
    for (std::size_t i = 0; i < strips.size(); ++i) {
        file.chunk("IDAT", strips[i].deflated);
        if (i == 0) continue;
        checksum = static_cast<std::uint32_t>(
            adler32_combine(checksum, strips[i].checksum, static_cast<z_off_t>(strips[i].length)));
    }
    file.chunk("IDAT", in_four_bytes(checksum));
    file.chunk("IEND", {});
    return std::move(file).bytes();
}

}  // namespace quarterturn
