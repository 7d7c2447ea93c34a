// libjpeg-turbo, shrinking while it decodes: at 1/4 and 1/8 most of the cosine transform and all of
// the large picture are never made, and reading the entropy-coded bytes is what remains.

#include <csetjmp>
#include <cstdio>
#include <cstdlib>
// <cstdio> must come before these.
#include <jerror.h>
#include <jpeglib.h>

#include "indexer/image/codec.h"

namespace quarterturn {
namespace {

struct Errors {
    jpeg_error_mgr manager{};  // first, so that libjpeg's pointer to it is a pointer to all of this
    std::jmp_buf jump{};
    bool ran_out = false;  // the bytes ended before the picture did
    bool damaged = false;
};

Errors& errors_of(j_common_ptr jpeg) {
    return *reinterpret_cast<Errors*>(jpeg->err);
}

[[noreturn]] void on_error(j_common_ptr jpeg) {
    std::longjmp(errors_of(jpeg).jump, 1);
}

void on_message(j_common_ptr jpeg, int level) {
    if (level >= 0) return;
    auto& errors = errors_of(jpeg);
    switch (errors.manager.msg_code) {
        case JWRN_JPEG_EOF:
            errors.ran_out = true;
            break;
        case JWRN_HIT_MARKER:
        case JWRN_HUFF_BAD_CODE:
        case JWRN_MUST_RESYNC:
            errors.damaged = true;
            break;
        default:
            break;  // oddities of real cameras that cost no pixel
    }
}

void on_print(j_common_ptr) {}

// A hostile progressive file repeats its scans for ever; each costs time in proportion to the size.
void on_progress(j_common_ptr jpeg) {
    constexpr double most_pixels_of_all_scans = 4e9;
    const auto* decoder = reinterpret_cast<j_decompress_ptr>(jpeg);
    const double pixels = double(decoder->image_width) * decoder->image_height;
    if (decoder->input_scan_number * pixels > most_pixels_of_all_scans) on_error(jpeg);
}

// Gives its memory back also when the reader's constructor finds the header damaged.
struct Decompressor : jpeg_decompress_struct {
    Decompressor() : jpeg_decompress_struct{} {}
    ~Decompressor() { jpeg_destroy_decompress(this); }
    Decompressor(const Decompressor&) = delete;
    Decompressor& operator=(const Decompressor&) = delete;
};

class JpegReader {
  public:
    explicit JpegReader(std::span<const std::byte> bytes) {
        jpeg_.err = jpeg_std_error(&errors_.manager);
        errors_.manager.error_exit = on_error;
        errors_.manager.emit_message = on_message;
        errors_.manager.output_message = on_print;
        progress_.progress_monitor = on_progress;
        run([&] {
            jpeg_create_decompress(&jpeg_);
            jpeg_.progress = &progress_;
            jpeg_mem_src(&jpeg_, reinterpret_cast<const unsigned char*>(bytes.data()),
                         bytes.size());
            jpeg_save_markers(&jpeg_, JPEG_APP0 + 2, 0xFFFF);
            jpeg_read_header(&jpeg_, TRUE);
        });
    }
    StoredPicture read(int long_edge) {
        StoredPicture picture;
        picture.full_width = static_cast<int>(jpeg_.image_width);
        picture.full_height = static_cast<int>(jpeg_.image_height);
        check_size(picture.full_width, picture.full_height);
        picture.icc = profile();
        const int type =
            choose_output(shrink_factor(picture.full_width, picture.full_height, long_edge));
        run([&] { jpeg_start_decompress(&jpeg_); });
        picture.pixels.create(static_cast<int>(jpeg_.output_height),
                              static_cast<int>(jpeg_.output_width), type);
        read_rows(picture.pixels);
        refuse_unless_whole();
        // Adobe's programs write ink upside down, and say so by their marker (Adobe TN 5116).
        if (type == CV_8UC4 && jpeg_.saw_Adobe_marker)
            cv::bitwise_not(picture.pixels, picture.pixels);
        return picture;
    }

  private:
    // libjpeg leaves by a jump, which must not pass over objects with destructors: a step holds
    // none.
    template <class Step>
    void run(Step step) {
        if (setjmp(errors_.jump) != 0) throw errors_.ran_out ? ends_too_early() : is_damaged();
        step();
    }

    std::vector<std::byte> profile() {
        JOCTET* data = nullptr;
        unsigned length = 0;
        run([&] { jpeg_read_icc_profile(&jpeg_, &data, &length); });
        if (data == nullptr) return {};
        const auto* first = reinterpret_cast<const std::byte*>(data);
        std::vector<std::byte> icc(first, first + length);
        std::free(data);
        return icc;
    }

    // Answers the type of the pixels that will come out.
    int choose_output(int factor) {
        jpeg_.scale_num = 1;
        jpeg_.scale_denom = static_cast<unsigned>(factor);
        switch (jpeg_.jpeg_color_space) {
            case JCS_GRAYSCALE:
                jpeg_.out_color_space = JCS_GRAYSCALE;
                return CV_8UC1;
            case JCS_CMYK:
            case JCS_YCCK:
                jpeg_.out_color_space = JCS_CMYK;
                return CV_8UC4;
            default:
                jpeg_.out_color_space = JCS_EXT_BGR;
                return CV_8UC3;
        }
    }

    void read_rows(cv::Mat& pixels) {
        run([&] {
            while (jpeg_.output_scanline < jpeg_.output_height) {
                JSAMPROW row = pixels.ptr(static_cast<int>(jpeg_.output_scanline));
                jpeg_read_scanlines(&jpeg_, &row, 1);
            }
        });
    }

    // A missing end marker after all of the pixels costs nothing; cut scans of a progressive file
    // do.
    void refuse_unless_whole() const {
        if (errors_.damaged) throw errors_.ran_out ? ends_too_early() : is_damaged();
        if (errors_.ran_out && jpeg_.progressive_mode && !all_scans_read()) throw ends_too_early();
    }

    bool all_scans_read() const {
        for (int component = 0; component < jpeg_.num_components; ++component) {
            for (const int bits_to_come : jpeg_.coef_bits[component]) {
                if (bits_to_come != 0) return false;
            }
        }
        return true;
    }

    Errors errors_;
    jpeg_progress_mgr progress_{};
    Decompressor jpeg_;
};

}  // namespace

StoredPicture decode_jpeg(std::span<const std::byte> bytes, int long_edge) {
    return JpegReader(bytes).read(long_edge);
}

}  // namespace quarterturn
