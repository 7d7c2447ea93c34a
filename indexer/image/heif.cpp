#include <libheif/heif.h>

#include <algorithm>
#include <array>
#include <memory>
#include <opencv2/imgproc.hpp>

#include "indexer/image/codec.h"
#include "indexer/image/decode.h"
#include "indexer/image/hevc.h"
#include "indexer/image/profile.h"

namespace quarterturn {
namespace {

template <class T>
using Held = std::unique_ptr<T, void (*)(T*)>;

void release_handle(heif_image_handle* handle) {
    heif_image_handle_release(handle);
}
void release_image(heif_image* image) {
    heif_image_release(image);
}

void refuse_unless_ok(const heif_error& error) {
    if (error.code == heif_error_Ok) return;
    if (error.code == heif_error_Memory_allocation_error) {
        if (error.subcode == heif_suberror_Security_limit_exceeded) throw is_damaged();
        throw std::bad_alloc();
    }
    if (error.subcode == heif_suberror_End_of_data) throw ends_too_early();
    if (error.code == heif_error_Unsupported_filetype ||
        error.code == heif_error_Unsupported_feature) {
        throw Refusal(
            "The picture is stored in a way that is not opened here. Save it as a JPEG and bring "
            "that in.");
    }
    if (error.code == heif_error_Decoder_plugin_error) {
        throw Refusal(
            "The picture inside the file is damaged, or stored in a way that is not opened here. "
            "Copy the photo from the card again; if that does not help, save it as a JPEG and "
            "bring that in.");
    }
    throw is_damaged();
}

Held<heif_context> read_context(std::span<const std::byte> bytes) {
    Held<heif_context> context(heif_context_alloc(), &heif_context_free);
    if (!context) throw std::bad_alloc();
    // Photos are spread over threads by the caller, one photo each.
    heif_context_set_max_decoding_threads(context.get(), 0);
    refuse_unless_ok(heif_context_read_from_memory_without_copy(context.get(), bytes.data(),
                                                                bytes.size(), nullptr));
    return context;
}

Held<heif_image_handle> primary_image(heif_context* context) {
    heif_image_handle* handle = nullptr;
    refuse_unless_ok(heif_context_get_primary_image_handle(context, &handle));
    return {handle, &release_handle};
}

Held<heif_image> decode_image(const heif_image_handle* handle, heif_chroma chroma) {
    const Held<heif_decoding_options> options(heif_decoding_options_alloc(),
                                              &heif_decoding_options_free);
    if (!options) throw std::bad_alloc();
    options->convert_hdr_to_8bit = 1;
    heif_image* image = nullptr;
    refuse_unless_ok(heif_decode_image(handle, &image, heif_colorspace_RGB, chroma, options.get()));
    return {image, &release_image};
}

// Without an ICC profile, the file may name its primaries by number (ISO/IEC 23091-2).
std::vector<std::byte> profile_of_primaries(const heif_image_handle* handle) {
    heif_color_profile_nclx* found = nullptr;
    if (heif_image_handle_get_nclx_color_profile(handle, &found).code != heif_error_Ok) return {};
    const Held<heif_color_profile_nclx> nclx(found, &heif_nclx_color_profile_free);
    if (nclx->color_primaries != heif_color_primaries_SMPTE_EG_432_1 &&
        nclx->color_primaries != heif_color_primaries_ITU_R_BT_2020_2_and_2100_0) {
        return {};
    }
    return make_profile({nclx->color_primary_white_x, nclx->color_primary_white_y},
                        {nclx->color_primary_red_x, nclx->color_primary_red_y},
                        {nclx->color_primary_green_x, nclx->color_primary_green_y},
                        {nclx->color_primary_blue_x, nclx->color_primary_blue_y});
}

std::vector<std::byte> profile(const heif_image_handle* handle) {
    std::vector<std::byte> icc(heif_image_handle_get_raw_color_profile_size(handle));
    if (icc.empty()) return profile_of_primaries(handle);
    if (heif_image_handle_get_raw_color_profile(handle, icc.data()).code != heif_error_Ok)
        return {};
    return icc;
}

// The pixels, still held by `image`.
cv::Mat pixels_of(heif_image* image, heif_channel channel, int type) {
    int stride = 0;
    auto* data = heif_image_get_plane(image, channel, &stride);
    if (data == nullptr) throw is_damaged();
    const cv::Mat pixels{heif_image_get_height(image, channel),
                         heif_image_get_width(image, channel), type, data,
                         static_cast<std::size_t>(stride)};
    check_size(pixels.cols, pixels.rows);
    return pixels;
}

StoredPicture decode_together(const heif_image_handle* handle, int long_edge, bool see_through) {
    const auto image = decode_image(
        handle, see_through ? heif_chroma_interleaved_RGBA : heif_chroma_interleaved_RGB);
    const cv::Mat rgb =
        pixels_of(image.get(), heif_channel_interleaved, see_through ? CV_8UC4 : CV_8UC3);
    cv::Mat bgr;
    cv::cvtColor(shrunk(see_through ? on_white(rgb) : rgb, long_edge), bgr, cv::COLOR_RGB2BGR);
    return {bgr, rgb.cols, rgb.rows, profile(handle)};
}

// Red, green and blue as libheif holds them; to put all of them together before they are shrunk
// took a sixth of the time. For opaque pictures of 8 bits.
StoredPicture decode_apart(const heif_image_handle* handle, int long_edge) {
    const auto image = decode_image(handle, heif_chroma_444);
    StoredPicture picture;
    std::array<cv::Mat, 3> planes;
    std::ranges::transform(std::array{heif_channel_B, heif_channel_G, heif_channel_R},
                           planes.begin(), [&](heif_channel channel) {
                               const cv::Mat plane = pixels_of(image.get(), channel, CV_8UC1);
                               picture.full_width = plane.cols;
                               picture.full_height = plane.rows;
                               return shrunk(plane, long_edge);
                           });
    cv::merge(planes.data(), planes.size(), picture.pixels);
    picture.icc = profile(handle);
    return picture;
}

}  // namespace

void set_up_heif() {
    heif_init(nullptr);
    set_up_hevc();
}

StoredPicture decode_heif(std::span<const std::byte> bytes, int long_edge) {
    set_up_hevc();
    const auto context = read_context(bytes);
    const auto handle = primary_image(context.get());
    check_size(heif_image_handle_get_width(handle.get()),
               heif_image_handle_get_height(handle.get()));
    const bool see_through = heif_image_handle_has_alpha_channel(handle.get()) != 0;
    const bool of_8_bits = heif_image_handle_get_luma_bits_per_pixel(handle.get()) == 8;
    return of_8_bits && !see_through ? decode_apart(handle.get(), long_edge)
                                     : decode_together(handle.get(), long_edge, see_through);
}

}  // namespace quarterturn
