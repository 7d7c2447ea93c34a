#include "indexer/image/encode.h"

#include <csetjmp>
#include <cstdio>
#include <cstdlib>
#include <stdexcept>
// <cstdio> must come before this.
#include <jpeglib.h>

namespace quarterturn {
namespace {

constexpr int rows_of_blocks = 16;  // colour is kept at half the size

struct EncodeErrors {
    jpeg_error_mgr manager{};  // first, so that libjpeg's pointer to it is a pointer to all of this
    std::jmp_buf jump{};
};

[[noreturn]] void on_encode_error(j_common_ptr jpeg) {
    std::longjmp(reinterpret_cast<EncodeErrors*>(jpeg->err)->jump, 1);
}

void say_nothing(j_common_ptr) {}

class JpegWriter {
  public:
    JpegWriter() {
        jpeg_.err = jpeg_std_error(&errors_.manager);
        errors_.manager.error_exit = on_encode_error;
        errors_.manager.output_message = say_nothing;
        run([&] {
            jpeg_create_compress(&jpeg_);
            jpeg_mem_dest(&jpeg_, &data_, &length_);
        });
    }
    ~JpegWriter() {
        jpeg_destroy_compress(&jpeg_);
        std::free(data_);
    }
    JpegWriter(const JpegWriter&) = delete;
    JpegWriter& operator=(const JpegWriter&) = delete;

    std::vector<std::byte> write(const cv::Mat& picture, const JpegWish& wish) {
        run([&] {
            jpeg_.image_width = static_cast<JDIMENSION>(picture.cols);
            jpeg_.image_height = static_cast<JDIMENSION>(picture.rows);
            jpeg_.input_components = picture.channels();
            jpeg_.in_color_space = picture.channels() == 4 ? JCS_EXT_BGRX : JCS_EXT_BGR;
            jpeg_set_defaults(&jpeg_);
            jpeg_set_quality(&jpeg_, wish.quality, TRUE);
            if (wish.dpi > 0) {
                jpeg_.density_unit = 1;  // dots per inch
                jpeg_.X_density = jpeg_.Y_density = static_cast<UINT16>(wish.dpi);
            }
            jpeg_.restart_in_rows = wish.restart_rows / rows_of_blocks;
            jpeg_start_compress(&jpeg_, TRUE);
            if (!wish.icc.empty()) {
                jpeg_write_icc_profile(&jpeg_, reinterpret_cast<const JOCTET*>(wish.icc.data()),
                                       static_cast<unsigned>(wish.icc.size()));
            }
            while (jpeg_.next_scanline < jpeg_.image_height) {
                auto* row =
                    const_cast<JSAMPROW>(picture.ptr(static_cast<int>(jpeg_.next_scanline)));
                jpeg_write_scanlines(&jpeg_, &row, 1);
            }
            jpeg_finish_compress(&jpeg_);
        });
        const auto* first = reinterpret_cast<const std::byte*>(data_);
        return {first, first + length_};
    }

  private:
    // libjpeg leaves by a jump, which must not pass over objects with destructors: a step holds
    // none.
    template <class Step>
    void run(Step step) {
        if (setjmp(errors_.jump) != 0) throw std::runtime_error("A JPEG cannot hold this picture.");
        step();
    }

    EncodeErrors errors_;
    jpeg_compress_struct jpeg_{};
    unsigned char* data_ = nullptr;
    unsigned long length_ = 0;
};

}  // namespace

std::vector<std::byte> jpeg_bytes(const cv::Mat& picture, const JpegWish& wish) {
    return JpegWriter().write(picture, wish);
}

std::vector<std::byte> jpeg_bytes(const cv::Mat& picture, int quality, int dpi) {
    return jpeg_bytes(picture, {.quality = quality, .dpi = dpi, .icc = {}, .restart_rows = 0});
}

}  // namespace quarterturn
