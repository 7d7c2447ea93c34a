#include "indexer/metadata/blocks.h"

#include <mutex>

namespace quarterturn {
namespace {

void lock_xmp(void* mutex, bool lock) {
    auto& held = *static_cast<std::recursive_mutex*>(mutex);
    lock ? held.lock() : held.unlock();
}

}  // namespace

void set_up_exiv2() {
    // The XMP parser lives as long as the process, and so does its lock.
    static std::recursive_mutex xmp_mutex;
    static const bool done = [] {
        Exiv2::LogMsg::setLevel(Exiv2::LogMsg::mute);
        Exiv2::enableBMFF(true);
        return Exiv2::XmpParser::initialize(lock_xmp, &xmp_mutex);
    }();
    static_cast<void>(done);
}

std::unique_ptr<Exiv2::Image> open_image(std::span<const std::byte> bytes) {
    set_up_exiv2();
    const auto* data = reinterpret_cast<const Exiv2::byte*>(bytes.data());
    std::unique_ptr<Exiv2::Image> image(
        Exiv2::ImageFactory::open(data, static_cast<long>(bytes.size())).release());
    // Nothing here is in a video, and what reads those ends the program over a damaged one.
    if (image->mimeType().starts_with("video/")) {
        throw Exiv2::Error(Exiv2::kerMemoryContainsUnknownImageType);
    }
    image->readMetadata();
    return image;
}

}  // namespace quarterturn
