#pragma once
// HEIC files with a rotation or mirroring of their own, and with any colour profile.

#include <libheif/heif.h>

#include <cstddef>
#include <memory>
#include <opencv2/core.hpp>
#include <span>
#include <stdexcept>
#include <vector>

// libx265, which encodes them, keeps a block that it never gives back; the leak check under the
// sanitizers is about our own code.
extern "C" __attribute__((used)) inline const char* __lsan_default_suppressions() {
    return "leak:libx265";
}

namespace quarterturn {

inline void require_heif(const heif_error& error) {
    if (error.code != heif_error_Ok) throw std::runtime_error(error.message);
}

struct HeicWishes {
    int orientation = 1;                  // counted as EXIF does; written as irot and imir
    std::span<const std::byte> icc = {};  // a profile of its own …
    int colour_primaries = 0;     // … or primaries by number (ISO/IEC 23091-2), with sRGB's curve
    int matrix_coefficients = 6;  // by number as well; counts only with primaries
    bool full_range = true;       // likewise
};

inline std::vector<std::byte> heic_of(const cv::Mat& bgr, const HeicWishes& wishes = {}) {
    const std::unique_ptr<heif_context, decltype(&heif_context_free)> context(heif_context_alloc(),
                                                                              &heif_context_free);
    heif_image* image = nullptr;
    require_heif(heif_image_create(bgr.cols, bgr.rows, heif_colorspace_RGB,
                                   heif_chroma_interleaved_RGB, &image));
    const std::unique_ptr<heif_image, void (*)(heif_image*)> held_image(
        image, [](heif_image* held) { heif_image_release(held); });
    require_heif(heif_image_add_plane(image, heif_channel_interleaved, bgr.cols, bgr.rows, 24));
    int stride = 0;
    auto* data = heif_image_get_plane(image, heif_channel_interleaved, &stride);
    for (int y = 0; y < bgr.rows; ++y) {
        for (int x = 0; x < bgr.cols; ++x) {
            for (int c = 0; c < 3; ++c)
                data[y * stride + x * 3 + c] = bgr.at<cv::Vec3b>(y, x)[2 - c];
        }
    }
    if (!wishes.icc.empty()) {
        require_heif(
            heif_image_set_raw_color_profile(image, "prof", wishes.icc.data(), wishes.icc.size()));
    }
    heif_encoder* encoder = nullptr;
    require_heif(
        heif_context_get_encoder_for_format(context.get(), heif_compression_HEVC, &encoder));
    const std::unique_ptr<heif_encoder, decltype(&heif_encoder_release)> held_encoder(
        encoder, &heif_encoder_release);
    heif_encoder_set_lossy_quality(encoder, 95);
    const std::unique_ptr<heif_encoding_options, decltype(&heif_encoding_options_free)> options(
        heif_encoding_options_alloc(), &heif_encoding_options_free);
    options->image_orientation = static_cast<heif_orientation>(wishes.orientation);
    const std::unique_ptr<heif_color_profile_nclx, decltype(&heif_nclx_color_profile_free)> nclx(
        heif_nclx_color_profile_alloc(), &heif_nclx_color_profile_free);
    if (wishes.colour_primaries != 0) {
        require_heif(heif_nclx_color_profile_set_color_primaries(
            nclx.get(), static_cast<std::uint16_t>(wishes.colour_primaries)));
        require_heif(heif_nclx_color_profile_set_transfer_characteristics(nclx.get(), 13));
        require_heif(heif_nclx_color_profile_set_matrix_coefficients(
            nclx.get(), static_cast<std::uint16_t>(wishes.matrix_coefficients)));
        nclx->full_range_flag = wishes.full_range ? 1 : 0;
        require_heif(heif_image_set_nclx_color_profile(image, nclx.get()));
        options->output_nclx_profile = nclx.get();
        options->macOS_compatibility_workaround_no_nclx_profile = 0;
    }
    require_heif(heif_context_encode_image(context.get(), image, encoder, options.get(), nullptr));
    std::vector<std::byte> file;
    heif_writer writer{1, [](heif_context*, const void* bytes, std::size_t size, void* to) {
                           const auto* first = static_cast<const std::byte*>(bytes);
                           static_cast<std::vector<std::byte>*>(to)->assign(first, first + size);
                           return heif_error{heif_error_Ok, heif_suberror_Unspecified, ""};
                       }};
    require_heif(heif_context_write(context.get(), &writer, &file));
    return file;
}

}  // namespace quarterturn
