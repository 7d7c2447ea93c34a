#include "indexer/intake/glance.h"

#include "indexer/disk/checksum.h"
#include "indexer/metadata/header.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

// Enough for what most files say of themselves, with a small picture.
constexpr std::int64_t few_bytes = marked_front_bytes;
// EXIF in a JPEG is at most 64 KB and stands at the front (EXIF 2.32 on APP1), behind little else.
constexpr std::int64_t front_bytes = 72 * 1024;

Glimpse glimpse_of(const FileMetadata& says) {
    Glimpse glimpse;
    if (says.taken) glimpse.taken = says.taken->local;
    glimpse.device = {.id = {}, .make = says.make, .model = says.model, .serial = says.serial};
    return glimpse;
}

}  // namespace

std::vector<Glimpsed> Glancer::glance(std::span<const FoundFile> files) const {
    std::vector<Opened> opened;
    for (const FoundFile& found : files) opened.push_back(open(found));
    auto said = said_in_headers(opened);
    std::vector<Glimpsed> seen;
    for (std::size_t i = 0; i < files.size(); ++i) {
        if (const auto* front = std::get_if<Front>(&opened[i])) {
            seen.push_back(look_at(files[i], *front, std::move(said[i])));
        } else if (auto* refused = std::get_if<Refused>(&opened[i])) {
            seen.emplace_back(std::move(*refused));
        } else {
            seen.emplace_back(LeftAlone{});
        }
    }
    return seen;
}

Glimpsed Glancer::with_checksum(const FoundFile& found, Glimpse glimpse) const try {
    glimpse.sha256 = sha256(disk_.read(found.file, largest_photo_file));
    return glimpse;
} catch (const DiskError& error) {
    return Refused{error.what()};
}

Glancer::Opened Glancer::open(const FoundFile& found) const try {
    if (!may_be_photo(disk_, found.file)) return LeftAlone{};
    if (auto why = reason_against_name(library_, found.file); !why.empty()) {
        return Refused{std::move(why)};
    }
    if (found.state.bytes > largest_photo_file) return too_large(found.state.bytes);
    Front front{disk_.read_front(found.file, few_bytes), {}};
    const FileKind kind = sniff(front.bytes);
    if (!is_photo(kind)) {
        return std::visit([](auto what) -> Opened { return what; },
                          no_photo(found.file, kind, front.bytes.empty()));
    }
    front.header = jpeg_header_bytes(front.bytes);
    return front;
} catch (const DiskError& error) {
    return Refused{error.what()};
}

// Nothing where a front holds no header, and nothing of all where a worker died over one of them.
std::vector<std::optional<FileMetadata>> Glancer::said_in_headers(
    const std::vector<Opened>& opened) {
    std::vector<std::optional<FileMetadata>> said(opened.size());
    std::vector<std::span<const std::byte>> headers;
    std::vector<std::size_t> whose;
    for (std::size_t i = 0; i < opened.size(); ++i) {
        const auto* front = std::get_if<Front>(&opened[i]);
        if (front == nullptr || !front->header) continue;
        headers.push_back(std::span(front->bytes).first(*front->header));
        whose.push_back(i);
    }
    if (headers.empty()) return said;
    try {
        auto all = read_metadata_confined(headers);
        for (std::size_t i = 0; i < whose.size(); ++i) said[whose[i]] = std::move(all[i]);
    } catch (const GivenUp&) {
        return said;
    }
    return said;
}

Glimpsed Glancer::look_at(const FoundFile& found, const Front& front,
                          std::optional<FileMetadata> said) const try {
    Glimpse glimpse = glimpse_of(said ? *said : what_is_said(found.file, front));
    glimpse.mark = twins_.mark(found.state.bytes, front.bytes);
    return glimpse;
} catch (const DiskError& error) {
    return Refused{error.what()};
} catch (const GivenUp& reason) {
    return Refused{reason.what()};
}

// Of one file alone; reads on where the front does not hold it.
FileMetadata Glancer::what_is_said(const Path& file, const Front& front) const {
    if (front.header) {
        return read_metadata_confined(std::span(front.bytes).first(*front.header));
    }
    const Bytes more = disk_.read_front(file, front_bytes);
    if (const auto header = jpeg_header_bytes(more)) {
        return read_metadata_confined(std::span(more).first(*header));
    }
    FileMetadata says = read_metadata_confined(more);
    if (says.taken) return says;
    return read_metadata_confined(disk_.read(file, largest_photo_file));
}

}  // namespace quarterturn
