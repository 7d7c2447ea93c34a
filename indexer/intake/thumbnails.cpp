#include "indexer/intake/thumbnails.h"

#include "indexer/image/encode.h"
#include "indexer/image/shrink.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/threads.h"
#include "indexer/store/small_picture.h"

namespace quarterturn {
namespace {

constexpr int jpeg_quality = 85;  // common practice for small pictures

Decoded refused(std::string why) {
    Decoded decoded;
    decoded.refused = std::move(why);
    return decoded;
}

Decoded from_cache(Library& library, Decoder& decoder, const Photo& photo) try {
    const Path file = thumbnail_file(library, photo.file.sha256);
    if (!library.disk().exists(file)) return refused("not made yet");
    const Bytes jpeg = library.disk().read(file, any_size);
    return decoder.decode({jpeg, 1, 0});
} catch (const DiskError& error) {
    return refused(error.what());
}

Decoded from_photo(Library& library, Decoder& decoder, const Photo& photo) try {
    const Bytes bytes = library.disk().read(library.photo_file(photo), any_size);
    Decoded decoded = decoder.decode({bytes, photo.file.orientation, thumbnail_long_edge});
    if (decoded.ok()) {
        decoded.bgr = shrink_to(decoded.bgr, thumbnail_long_edge);
        keep_thumbnail(library, photo.file.sha256, as_jpeg(decoded.bgr));
    }
    return decoded;
} catch (const DiskError& error) {
    return refused(error.what());
}

}  // namespace

cv::Mat shrink_to(const cv::Mat& bgr, int long_edge) {
    const int longest = std::max(bgr.cols, bgr.rows);
    if (longest <= long_edge) return bgr;
    const auto scaled = [&](int edge) {
        return std::max(1, static_cast<int>(std::int64_t{edge} * long_edge / longest));
    };
    return shrunk_to(bgr, {scaled(bgr.cols), scaled(bgr.rows)});
}

Bytes as_jpeg(const cv::Mat& small) {
    return jpeg_bytes(small, jpeg_quality);
}

Path thumbnail_file(const Library& library, std::string_view sha256) {
    return small_picture_file(library.folder(), sha256);
}

void keep_thumbnail(Library& library, std::string_view sha256, const Bytes& jpeg) try {
    FileSystem& disk = library.disk();
    const Path file = thumbnail_file(library, sha256);
    const Path part = file.string() + ".part";
    disk.make_folders(file.parent_path());
    if (disk.exists(part)) disk.remove(part);
    disk.write_new(part, jpeg);
    disk.rename_over(part, file);
} catch (const DiskError&) {
    return;
}

Decoded thumbnail(Library& library, Decoder& decoder, const Photo& photo) {
    Decoded small = from_cache(library, decoder, photo);
    if (!small.ok()) small = from_photo(library, decoder, photo);
    small.full_width = photo.file.width;
    small.full_height = photo.file.height;
    return small;
}

CacheReport rebuild_cache(Library& library, Decoder& decoder,
                          const std::function<void(std::int64_t, std::int64_t)>& progress,
                          std::stop_token stop) {
    const OneThreadEach one_thread_each;
    const std::vector<Photo> photos = library.photos().all();
    const auto make = [&](std::size_t i) -> std::optional<Decoded> {
        if (library.disk().exists(thumbnail_file(library, photos[i].file.sha256))) return {};
        return from_photo(library, decoder, photos[i]);
    };
    OrderedWork<std::optional<Decoded>> work{photos.size(), worker_count(), make, stop};
    CacheReport report;
    std::size_t done = 0;
    for (; const auto made = work.next(); ++done) {
        if (*made && (*made)->ok()) ++report.made;
        if (*made && !(*made)->ok()) {
            report.failed.push_back(photos[done].file.name + ": " + (*made)->refused);
        }
        if (progress) progress(static_cast<std::int64_t>(done + 1), std::ssize(photos));
    }
    report.stopped = done < photos.size();
    return report;
}

}  // namespace quarterturn
