#include "indexer/intake/examine.h"

#include <algorithm>

#include "indexer/image/codec.h"
#include "indexer/image/measure.h"
#include "indexer/intake/thumbnails.h"
#include "indexer/metadata/header.h"
#include "indexer/rules/flaws.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

constexpr std::int64_t unknown_pixels = 48'000'000;

// JPEG is shrunk while it is decoded, so only the sizes that are kept whole count: coefficients of
// a progressive file, or half of the edge lengths as BGR. The others are decoded whole, turned, and
// shrunk then. Chosen by measurement, see tests/bench.
std::int64_t decode_bytes(FileKind kind, const FileMetadata& metadata) {
    const std::int64_t stored = std::int64_t{metadata.width} * metadata.height;
    const std::int64_t pixels = stored > 0 ? std::min(stored, most_pixels) : unknown_pixels;
    const bool shrinks = kind == FileKind::jpeg || kind == FileKind::raw;
    return shrinks ? pixels : pixels * 6;
}

Examined refusal(const std::string& sentence, const char* next) {
    Examined examined;
    examined.refused = sentence + " It was not taken in: keep the card" + next;
    return examined;
}

Examined refusal(const std::string& sentence) {
    return refusal(sentence, ", and see whether the photo opens elsewhere.");
}

Device device_in(const FileMetadata& metadata) {
    return {.id = {}, .make = metadata.make, .model = metadata.model, .serial = metadata.serial};
}

FileFacts facts(const Decoded& decoded, const FileMetadata& metadata, const std::string& sha256,
                std::size_t bytes) {
    FileFacts file;
    file.sha256 = sha256;
    file.bytes = static_cast<std::int64_t>(bytes);
    file.width = decoded.full_width;
    file.height = decoded.full_height;
    file.orientation = decoded.orientation_applied;
    file.taken = metadata.taken;
    return file;
}

}  // namespace

Examined Examiner::examine(std::span<const std::byte> bytes, FileKind kind,
                           const std::string& sha256) try {
    const FileMetadata metadata = read_metadata_confined(metadata_part(bytes));
    const auto hold = budget_.hold(decode_bytes(kind, metadata));
    Decoded decoded = decoder_.decode({bytes, metadata.orientation, measuring_edge});
    if (decoded.nothing_opens) return refusal(decoded.refused, " until then.");
    if (!decoded.ok()) return refusal(decoded.refused);

    Examined examined;
    examined.photo.file = facts(decoded, metadata, sha256, bytes.size());
    examined.device = device_in(metadata);
    examined.keywords = metadata.keywords;
    examined.photo.measures = measure(decoded.bgr);
    const cv::Mat small = shrink_to(std::exchange(decoded.bgr, {}), thumbnail_long_edge);
    examined.photo.fingerprint = fingerprint(small);
    examined.photo.flaws =
        judge_flaws(examined.photo.measures, decoded.full_width, decoded.full_height);
    examined.thumbnail = as_jpeg(small);
    return examined;
} catch (const GivenUp& reason) {
    return refusal(reason.what());
} catch (const std::bad_alloc&) {
    return refusal("This computer's memory is too small for it.");
} catch (const cv::Exception&) {
    return refusal("Its pixels cannot be measured.");
}

}  // namespace quarterturn
