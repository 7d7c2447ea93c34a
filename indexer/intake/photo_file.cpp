#include "indexer/intake/photo_file.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cerrno>

#include "indexer/intake/file_names.h"

namespace quarterturn {
namespace {

constexpr std::int64_t megabyte = 1'000'000;
// Enough for the boxes at the front that tell a video from a photo.
constexpr std::int64_t sniffed_bytes = 4096;

std::string in_megabytes(std::int64_t bytes) {
    return std::to_string(bytes / megabyte) + " MB";
}

}  // namespace

bool named_like_a_photo(const Path& file) {
    static constexpr std::array endings{".jpg",  ".jpeg", ".jpe", ".heic", ".heif", ".hif",
                                        ".avif", ".png",  ".tif", ".tiff", ".webp", ".dng",
                                        ".cr2",  ".cr3",  ".nef", ".nrw",  ".arw",  ".raf",
                                        ".orf",  ".rw2",  ".pef", ".srw"};
    std::string ending = file.extension().native();
    std::ranges::transform(ending, ending.begin(), [](unsigned char c) { return std::tolower(c); });
    return std::ranges::find(endings, ending) != endings.end();
}

bool is_photo(FileKind kind) {
    return kind != FileKind::video && kind != FileKind::other;
}

bool may_be_photo(FileSystem& disk, const Path& file) {
    return named_like_a_photo(file) || is_photo(sniff(disk.read_front(file, sniffed_bytes)));
}

std::variant<LeftAlone, Refused> no_photo(const Path& file, FileKind kind, bool empty) {
    if (!named_like_a_photo(file)) return LeftAlone{};
    const std::string what = empty ? "The file is empty"
                             : kind == FileKind::video
                                 ? "It is named like a photo and begins like a video"
                                 : "It is named like a photo and holds none";
    return Refused{what + ": keep the card, and try to open the photo on the camera or phone."};
}

std::string reason_against_name(Library& library, const Path& file) try {
    (void)library.disk().exists(library.folder() / "photos" / as_text(file.filename().native()));
    return {};
} catch (const DiskError& error) {
    // What else is wrong there shows when it is written.
    return error.error_number() == ENAMETOOLONG ? error.what() : std::string{};
}

Refused too_large(std::int64_t bytes) {
    return {"It is larger than a photo can be here (" + in_megabytes(bytes) + ", at most " +
            in_megabytes(largest_photo_file) + "): save it smaller, as a JPEG, and bring that in."};
}

}  // namespace quarterturn
