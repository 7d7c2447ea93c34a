#include "demo_photos/device/exif_facts.h"

#include <stdexcept>

#include <libheif/heif.h>
#include <opencv2/imgproc.hpp>

namespace quarterturn::demo {

namespace {

template <auto Release>
struct Releaser {
    template <typename T>
    void operator()(T* held) const {
        Release(held);
    }
};
using Context = std::unique_ptr<heif_context, Releaser<heif_context_free>>;
using Image = std::unique_ptr<heif_image, Releaser<heif_image_release>>;
using Encoder = std::unique_ptr<heif_encoder, Releaser<heif_encoder_release>>;
using Handle = std::unique_ptr<heif_image_handle, Releaser<heif_image_handle_release>>;
using Options = std::unique_ptr<heif_encoding_options, Releaser<heif_encoding_options_free>>;

void check(heif_error error, const std::filesystem::path& file) {
    if (error.code != heif_error_Ok) {
        throw std::runtime_error(file.string() + " cannot be written: " + error.message);
    }
}

Image image_from(const cv::Mat& stored, const std::filesystem::path& file) {
    heif_image* made = nullptr;
    check(heif_image_create(stored.cols, stored.rows, heif_colorspace_RGB,
                            heif_chroma_interleaved_RGB, &made),
          file);
    Image image(made);
    check(heif_image_add_plane(made, heif_channel_interleaved, stored.cols, stored.rows, 8), file);
    int stride = 0;
    std::uint8_t* plane = heif_image_get_plane(made, heif_channel_interleaved, &stride);
    cv::Mat target(stored.rows, stored.cols, CV_8UC3, plane, static_cast<std::size_t>(stride));
    cv::cvtColor(stored, target, cv::COLOR_BGR2RGB);
    return image;
}

}  // namespace

void write_heic(const std::filesystem::path& file, const cv::Mat& upright, const PhotoFacts& facts,
                bool turned_in_file, int most_bytes) {
    // The encoder's orientation option only writes the property; the pixels
    // must be handed over turned already.
    const cv::Mat stored = turned_in_file ? stored_for(upright, facts.orientation) : upright;
    const Image image = image_from(stored, file);
    const Exiv2::ExifData exif = exif_of(facts, stored.size());
    Exiv2::Blob tiff;
    Exiv2::ExifParser::encode(tiff, Exiv2::littleEndian, exif);
    for (int quality = 66; quality >= 30; quality -= 6) {
        const Context context(heif_context_alloc());
        heif_encoder* found = nullptr;
        check(heif_context_get_encoder_for_format(context.get(), heif_compression_HEVC, &found),
              file);
        const Encoder encoder(found);
        heif_encoder_set_lossy_quality(found, quality);
        const Options options(heif_encoding_options_alloc());
        options->image_orientation = turned_in_file
                                         ? static_cast<heif_orientation>(facts.orientation)
                                         : heif_orientation_normal;
        heif_image_handle* made = nullptr;
        check(heif_context_encode_image(context.get(), image.get(), found, options.get(), &made),
              file);
        const Handle handle(made);
        check(heif_context_add_exif_metadata(context.get(), made, tiff.data(),
                                             static_cast<int>(tiff.size())),
              file);
        check(heif_context_write_to_file(context.get(), file.c_str()), file);
        if (static_cast<int>(std::filesystem::file_size(file)) <= most_bytes) {
            break;
        }
    }
}

}  // namespace quarterturn::demo
