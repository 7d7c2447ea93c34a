#include <png.h>

#include <csetjmp>
#include <cstring>

#include "indexer/image/codec.h"

namespace quarterturn {
namespace {

class PngReader {
  public:
    explicit PngReader(std::span<const std::byte> bytes) : rest_(bytes) {
        png_ = png_create_read_struct(PNG_LIBPNG_VER_STRING, this, on_error, on_warning);
        if (png_ == nullptr) throw std::bad_alloc();
        info_ = png_create_info_struct(png_);
        if (info_ == nullptr) {
            png_destroy_read_struct(&png_, nullptr, nullptr);
            throw std::bad_alloc();
        }
        png_set_read_fn(png_, this, on_read);
    }
    ~PngReader() { png_destroy_read_struct(&png_, &info_, nullptr); }
    PngReader(const PngReader&) = delete;
    PngReader& operator=(const PngReader&) = delete;

    StoredPicture read(int long_edge) {
        run([&] { png_read_info(png_, info_); });
        StoredPicture picture;
        picture.full_width = static_cast<int>(png_get_image_width(png_, info_));
        picture.full_height = static_cast<int>(png_get_image_height(png_, info_));
        check_size(picture.full_width, picture.full_height);
        picture.icc = profile();
        run([&] { choose_output(); });
        cv::Mat pixels(picture.full_height, picture.full_width,
                       CV_8UC(static_cast<int>(png_get_channels(png_, info_))));
        std::vector<png_bytep> rows;
        for (int y = 0; y < pixels.rows; ++y) rows.push_back(pixels.ptr(y));
        run([&] { png_read_image(png_, rows.data()); });
        picture.pixels = shrunk(pixels.channels() == 4 ? on_white(pixels) : pixels, long_edge);
        return picture;
    }

  private:
    static void on_error(png_structp png, png_const_charp) {
        std::longjmp(static_cast<PngReader*>(png_get_error_ptr(png))->jump_, 1);
    }
    static void on_warning(png_structp, png_const_charp) {}
    static void on_read(png_structp png, png_bytep to, std::size_t length) {
        auto& reader = *static_cast<PngReader*>(png_get_io_ptr(png));
        if (length > reader.rest_.size()) {
            reader.ran_out_ = true;
            png_error(png, "");
        }
        std::memcpy(to, reader.rest_.data(), length);
        reader.rest_ = reader.rest_.subspan(length);
    }

    // libpng leaves by a jump, which must not pass over objects with destructors: a step holds
    // none.
    template <class Step>
    void run(Step step) {
        if (setjmp(jump_) != 0) throw ran_out_ ? ends_too_early() : is_damaged();
        step();
    }

    std::vector<std::byte> profile() {
        png_charp name = nullptr;
        int compression = 0;
        png_bytep data = nullptr;
        png_uint_32 length = 0;
        if (png_get_iCCP(png_, info_, &name, &compression, &data, &length) == 0) return {};
        const auto* first = reinterpret_cast<const std::byte*>(data);
        return {first, first + length};
    }

    // Grey, BGR, or BGRA of 8 bits, whatever the file holds.
    void choose_output() {
        png_set_expand(png_);
        png_set_scale_16(png_);
        png_set_bgr(png_);
        const bool see_through = (png_get_color_type(png_, info_) & PNG_COLOR_MASK_ALPHA) != 0 ||
                                 png_get_valid(png_, info_, PNG_INFO_tRNS) != 0;
        if (see_through) png_set_gray_to_rgb(png_);
        png_set_interlace_handling(png_);
        png_read_update_info(png_, info_);
    }

    std::span<const std::byte> rest_;
    bool ran_out_ = false;
    png_structp png_ = nullptr;
    png_infop info_ = nullptr;
    std::jmp_buf jump_{};
};

}  // namespace

StoredPicture decode_png(std::span<const std::byte> bytes, int long_edge) {
    return PngReader(bytes).read(long_edge);
}

}  // namespace quarterturn
