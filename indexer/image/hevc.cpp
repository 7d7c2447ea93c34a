#include "indexer/image/hevc.h"

#include <libheif/heif.h>
#include <libheif/heif_plugin.h>

extern "C" {
#include <libavutil/imgutils.h>
#include <libavutil/pixdesc.h>
}

#include <array>
#include <exception>
#include <memory>
#include <mutex>
#include <new>
#include <span>
#include <vector>

#include "indexer/image/hevc_frame.h"

namespace quarterturn {
namespace {

using Image =
    std::unique_ptr<heif_image, decltype([](heif_image* image) { heif_image_release(image); })>;
using Colours =
    std::unique_ptr<heif_color_profile_nclx, decltype([](heif_color_profile_nclx* nclx) {
                        heif_nclx_color_profile_free(nclx);
                    })>;

constexpr heif_error all_is_well{heif_error_Ok, heif_suberror_Unspecified, "done"};
constexpr heif_error memory_is_short{heif_error_Memory_allocation_error, heif_suberror_Unspecified,
                                     "no memory"};
constexpr heif_error is_not_opened{heif_error_Decoder_plugin_error, heif_suberror_Unspecified,
                                   "not opened"};
constexpr heif_error part_is_missing{heif_error_Invalid_input, heif_suberror_Unspecified,
                                     "part of the picture is missing"};

// For libheif, which is written for C's kind of errors.
template <class Work>
heif_error error_of(const Work& work) noexcept try {
    work();
    return all_is_well;
} catch (const std::bad_alloc&) {
    return memory_is_short;
} catch (const PartMissing&) {
    return part_is_missing;
} catch (...) {
    return is_not_opened;
}

// In a unit no three bytes make a number below 3, so that none looks like a mark (ITU-T
// H.265, 7.4.2); where a part of a card could not be read, zeros stand.
void refuse_overwritten(std::span<const std::uint8_t> unit) {
    int zeros = 0;
    for (const std::uint8_t byte : unit) {
        if (zeros >= 2 && byte < 3) throw PartMissing();
        zeros = byte == 0 ? zeros + 1 : 0;
    }
}

// Of units that begin with their length in four bytes, the first byte the highest.
void add_units(HevcStream& stream, std::span<const std::uint8_t> bytes) {
    constexpr std::size_t length_bytes = 4;
    constexpr std::array<std::uint8_t, length_bytes> mark{0, 0, 0, 1};
    while (!bytes.empty()) {
        require_hevc(bytes.size() >= length_bytes);
        std::size_t length = 0;
        for (const std::uint8_t byte : bytes.first<length_bytes>()) length = length << 8 | byte;
        bytes = bytes.subspan<length_bytes>();
        require_hevc(length <= bytes.size());
        refuse_overwritten(bytes.first(length));
        stream.insert(stream.end(), mark.begin(), mark.end());
        stream.insert(stream.end(), bytes.begin(), bytes.begin() + static_cast<long>(length));
        bytes = bytes.subspan(length);
    }
}

heif_chroma chroma_of(const AVPixFmtDescriptor& format) {
    if (format.nb_components == 1) return heif_chroma_monochrome;
    if (format.log2_chroma_h == 1) return heif_chroma_420;
    return format.log2_chroma_w == 1 ? heif_chroma_422 : heif_chroma_444;
}

// What is shown of a side, in samples of luma.
struct Shown {
    int from = 0;
    int length = 0;
};

Shown shown_of(int length, std::size_t cut_before, std::size_t cut_behind) {
    const auto whole = static_cast<std::size_t>(length);
    require_hevc(cut_before < whole && cut_behind < whole - cut_before);
    return {static_cast<int>(cut_before), static_cast<int>(whole - cut_before - cut_behind)};
}

struct ShownPart {
    Shown columns;
    Shown rows;
};

ShownPart shown_of(const AVFrame& frame) {
    return {shown_of(frame.width, frame.crop_left, frame.crop_right),
            shown_of(frame.height, frame.crop_top, frame.crop_bottom)};
}

void add_plane(heif_image* image, const AVFrame& frame, const AVPixFmtDescriptor& format,
               int number) {
    const ShownPart shown = shown_of(frame);
    const int across = number > 0 ? format.log2_chroma_w : 0;
    const int down = number > 0 ? format.log2_chroma_h : 0;
    const int width = AV_CEIL_RSHIFT(shown.columns.length, across);
    const int height = AV_CEIL_RSHIFT(shown.rows.length, down);
    const auto channel = static_cast<heif_channel>(heif_channel_Y + number);
    if (heif_image_add_plane(image, channel, width, height, format.comp[0].depth).code !=
        heif_error_Ok) {
        throw std::bad_alloc();
    }
    int stride = 0;
    std::uint8_t* plane = heif_image_get_plane(image, channel, &stride);
    const std::uint8_t* first = frame.data[number] +
                                std::ptrdiff_t{shown.rows.from >> down} * frame.linesize[number] +
                                (shown.columns.from >> across) * bytes_of_sample(frame);
    av_image_copy_plane(plane, stride, first, frame.linesize[number],
                        width * bytes_of_sample(frame), height);
}

// The numbers by which both sides call colours are those of ITU-T H.273.
void name_colours(heif_image* image, const AVFrame& frame) {
    const Colours nclx(heif_nclx_color_profile_alloc());
    if (!nclx) throw std::bad_alloc();
    const auto number = [](int value) { return static_cast<std::uint16_t>(value); };
    heif_nclx_color_profile_set_color_primaries(nclx.get(), number(frame.color_primaries));
    heif_nclx_color_profile_set_transfer_characteristics(nclx.get(), number(frame.color_trc));
    heif_nclx_color_profile_set_matrix_coefficients(nclx.get(), number(frame.colorspace));
    nclx->full_range_flag = frame.color_range == AVCOL_RANGE_JPEG ? 1 : 0;
    heif_image_set_nclx_color_profile(image, nclx.get());
}

Image image_of(const AVFrame& frame) {
    const auto* format = av_pix_fmt_desc_get(static_cast<AVPixelFormat>(frame.format));
    require_hevc(format != nullptr && (format->nb_components == 1 || format->nb_components == 3));
    const heif_chroma chroma = chroma_of(*format);
    heif_image* made = nullptr;
    const ShownPart shown = shown_of(frame);
    const heif_error error = heif_image_create(
        shown.columns.length, shown.rows.length,
        chroma == heif_chroma_monochrome ? heif_colorspace_monochrome : heif_colorspace_YCbCr,
        chroma, &made);
    if (error.code != heif_error_Ok) throw std::bad_alloc();
    Image image(made);
    for (int i = 0; i < format->nb_components; ++i) add_plane(image.get(), frame, *format, i);
    name_colours(image.get(), frame);
    return image;
}

heif_error begin_hevc(void** decoder) {
    return error_of([&] { *decoder = std::make_unique<HevcStream>().release(); });
}

void end_hevc(void* decoder) {
    const std::unique_ptr<HevcStream> ended(static_cast<HevcStream*>(decoder));
}

heif_error push_hevc(void* decoder, const void* bytes, std::size_t size) {
    return error_of([&] {
        add_units(*static_cast<HevcStream*>(decoder),
                  {static_cast<const std::uint8_t*>(bytes), size});
    });
}

heif_error decode_hevc(void* decoder, heif_image** image) {
    return error_of([&] {
        *image = image_of(*decoded_hevc(*static_cast<const HevcStream*>(decoder))).release();
    });
}

// libheif's own decoder, which says nothing of blocks that are missing, has 100.
int hevc_priority(heif_compression_format format) {
    return format == heif_compression_HEVC ? 1000 : 0;
}

constexpr const char* libavcodec = "libavcodec";

constexpr heif_decoder_plugin plugin{.plugin_api_version = 3,
                                     .get_plugin_name = [] { return libavcodec; },
                                     .init_plugin = nullptr,
                                     .deinit_plugin = nullptr,
                                     .does_support_format = hevc_priority,
                                     .new_decoder = begin_hevc,
                                     .free_decoder = end_hevc,
                                     .push_data = push_hevc,
                                     .decode_image = decode_hevc,
                                     .set_strict_decoding = [](void*, int) {},
                                     .id_name = libavcodec};

}  // namespace

void set_up_hevc() {
    static std::once_flag once;
    std::call_once(once, [] {
        av_log_set_level(AV_LOG_QUIET);
        heif_register_decoder_plugin(&plugin);
    });
}

}  // namespace quarterturn
