#include "indexer/intake/take.h"

#include <cctype>

#include "indexer/disk/checksum.h"
#include "indexer/intake/thumbnails.h"

namespace quarterturn {
namespace {

constexpr std::int64_t megabyte = 1'000'000;
// The three together keep an import below 500 MB; chosen by measurement, see tests/bench.
constexpr std::int64_t largest_file = 200 * megabyte;
constexpr std::int64_t files_in_memory = 160 * megabyte;
constexpr std::int64_t decoding_memory = 160 * megabyte;
// Enough for the boxes at the front that tell a video from a photo.
constexpr std::int64_t front_bytes = 4096;

bool named_like_a_photo(const Path& file) {
    static constexpr std::array endings{".jpg",  ".jpeg", ".jpe", ".heic", ".heif", ".hif",
                                        ".avif", ".png",  ".tif", ".tiff", ".webp", ".dng",
                                        ".cr2",  ".cr3",  ".nef", ".nrw",  ".arw",  ".raf",
                                        ".orf",  ".rw2",  ".pef", ".srw"};
    std::string ending = file.extension().native();
    std::ranges::transform(ending, ending.begin(), [](unsigned char c) { return std::tolower(c); });
    return std::ranges::find(endings, ending) != endings.end();
}

bool photo(FileKind kind) {
    return kind != FileKind::video && kind != FileKind::other;
}

std::string in_megabytes(std::int64_t bytes) {
    return std::to_string(bytes / megabyte) + " MB";
}

Refused too_large(const FoundFile& found) {
    return {"It is larger than a photo can be here (" + in_megabytes(found.state.bytes) +
            ", at most " + in_megabytes(largest_file) +
            "): save it smaller, as a JPEG, and bring that in."};
}

Refused no_photo(const Bytes& bytes) {
    const std::string what =
        bytes.empty() ? "The file is empty" : "It is named like a photo and holds none";
    return {what + ": keep the card, and try to open the photo on the camera or phone."};
}

}  // namespace

Taker::Taker(Library& library, Decoder& decoder, ContentClaims& claims, Incoming& incoming)
    : library_(library),
      claims_(claims),
      incoming_(incoming),
      examiner_(decoder, decoding_memory),
      file_budget_(files_in_memory) {}

bool Taker::may_be_photo(const Path& file) {
    return named_like_a_photo(file) || photo(sniff(library_.disk().read_front(file, front_bytes)));
}

Taken Taker::take(const FoundFile& found) try {
    if (!may_be_photo(found.file)) return LeftAlone{};
    if (found.state.bytes > largest_file) return too_large(found);
    const auto hold = file_budget_.hold(2 * found.state.bytes);  // the bytes, and as read back
    return take_bytes(found.file, library_.disk().read(found.file, largest_file));
} catch (const DiskError& error) {
    return Refused{error.what()};
} catch (const std::bad_alloc&) {
    return Refused{
        "This computer's memory is too small for it: close other programs and try again."};
}

Taken Taker::take_bytes(const Path& file, const Bytes& bytes) {
    const FileKind kind = sniff(bytes);
    if (!photo(kind)) {
        if (kind == FileKind::video || !named_like_a_photo(file)) return LeftAlone{};
        return no_photo(bytes);
    }
    std::string checksum = sha256(bytes);
    ContentClaims::Claim claim = claims_.claim(checksum);
    if (!claim.result.valid()) return AlreadyHere{std::move(checksum)};
    if (claim.mine) keep(*claim.mine, bytes, kind, checksum);
    return Content{std::move(checksum), std::move(claim.result)};
}

void Taker::keep(std::promise<Examined>& promise, const Bytes& bytes, FileKind kind,
                 const std::string& sha256) try {
    Examined examined = examiner_.examine(bytes, kind, sha256);
    if (examined.refused.empty()) {
        incoming_.put(sha256, bytes);
        keep_thumbnail(library_, sha256, std::exchange(examined.thumbnail, {}));
    }
    promise.set_value(std::move(examined));
} catch (...) {
    promise.set_exception(std::current_exception());
}

}  // namespace quarterturn
