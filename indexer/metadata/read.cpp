#include "indexer/metadata/read.h"

#include <algorithm>
#include <array>
#include <exception>

#include "indexer/metadata/blocks.h"
#include "indexer/metadata/capture_time.h"

namespace quarterturn {
namespace {

std::string text_of(const Exiv2::ExifData& exif, const char* key) {
    const auto found = exif.findKey(Exiv2::ExifKey(key));
    return found == exif.end() ? std::string{} : std::string{trim_blanks(found->toString())};
}

std::string first_text_of(const Exiv2::ExifData& exif, std::span<const char* const> keys) {
    for (const char* key : keys) {
        if (std::string text = text_of(exif, key); !text.empty()) return text;
    }
    return {};
}

std::optional<CaptureTime> read_taken(const Exiv2::ExifData& exif) {
    const auto original = exif_capture_time(text_of(exif, "Exif.Photo.DateTimeOriginal"),
                                            text_of(exif, "Exif.Photo.SubSecTimeOriginal"),
                                            text_of(exif, "Exif.Photo.OffsetTimeOriginal"));
    if (original) return original;
    return exif_capture_time(text_of(exif, "Exif.Photo.DateTimeDigitized"),
                             text_of(exif, "Exif.Photo.SubSecTimeDigitized"),
                             text_of(exif, "Exif.Photo.OffsetTimeDigitized"));
}

// The body's own number: EXIF's tag first, then where makers put it before EXIF had one.
std::string read_serial(const Exiv2::ExifData& exif) {
    static constexpr std::array keys{
        "Exif.Photo.BodySerialNumber",   "Exif.Canon.SerialNumber",
        "Exif.Nikon3.SerialNumber",      "Exif.Nikon3.SerialNO",
        "Exif.OlympusEq.SerialNumber",   "Exif.Olympus.SerialNumber2",
        "Exif.Pentax.SerialNumber",      "Exif.PentaxDng.SerialNumber",
        "Exif.Sigma.SerialNumber",       "Exif.Fujifilm.SerialNumber",
        "Exif.Image.CameraSerialNumber",
    };
    return first_text_of(exif, keys);
}

int read_orientation(const Exiv2::ExifData& exif) {
    const auto found = exif.findKey(Exiv2::ExifKey("Exif.Image.Orientation"));
    if (found == exif.end() || found->count() == 0) return 1;
    const long value = found->toLong();
    return value >= 1 && value <= 8 ? static_cast<int>(value) : 1;
}

void add_keyword(std::vector<std::string>& keywords, std::string_view text) {
    std::string keyword{trim_blanks(text)};
    if (!keyword.empty() && std::ranges::find(keywords, keyword) == keywords.end()) {
        keywords.push_back(std::move(keyword));
    }
}

std::vector<std::string> read_keywords(const Exiv2::XmpData& xmp, const Exiv2::IptcData& iptc) {
    std::vector<std::string> keywords;
    if (const auto subject = xmp.findKey(Exiv2::XmpKey("Xmp.dc.subject")); subject != xmp.end()) {
        for (long i = 0; i < subject->count(); ++i) add_keyword(keywords, subject->toString(i));
    }
    for (const auto& datum : iptc) {
        if (datum.key() == "Iptc.Application2.Keywords") add_keyword(keywords, datum.toString());
    }
    return keywords;
}

FileMetadata metadata_of(const MetadataBlocks& blocks) {
    const auto& exif = blocks.exif;
    FileMetadata metadata;
    metadata.taken = read_taken(exif);
    metadata.make = text_of(exif, "Exif.Image.Make");
    metadata.model = text_of(exif, "Exif.Image.Model");
    metadata.serial = read_serial(exif);
    metadata.orientation = read_orientation(exif);
    metadata.width = blocks.width;
    metadata.height = blocks.height;
    metadata.keywords = read_keywords(blocks.xmp, blocks.iptc);
    return metadata;
}

FileMetadata unreadable() {
    FileMetadata metadata;
    metadata.unreadable =
        "What the file says of its time and camera is damaged and was left out; enter them by "
        "hand.";
    return metadata;
}

}  // namespace

void set_up_metadata() {
    set_up_exiv2();
}

FileMetadata read_metadata(std::span<const std::byte> bytes) {
    try {
        return metadata_of(read_blocks(bytes));
    } catch (const std::exception&) {
        return unreadable();
    }
}

std::vector<std::byte> raw_preview(std::span<const std::byte> bytes) {
    try {
        const auto image = open_image(bytes);
        Exiv2::PreviewManager previews(*image);
        const auto properties = previews.getPreviewProperties();
        if (properties.empty()) return {};
        const auto largest = std::ranges::max_element(properties, {}, [](const auto& preview) {
            return std::int64_t{preview.width_} * preview.height_;
        });
        const auto preview = previews.getPreviewImage(*largest);
        const auto* data = reinterpret_cast<const std::byte*>(preview.pData());
        return {data, data + preview.size()};
    } catch (const std::exception&) {
        return {};
    }
}

}  // namespace quarterturn
