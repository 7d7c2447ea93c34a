#include "indexer/intake/take.h"

#include "indexer/disk/checksum.h"
#include "indexer/intake/thumbnails.h"

namespace quarterturn {
namespace {

// These and largest_photo_file keep an import below 500 MB; chosen by measurement, see tests/bench.
constexpr std::int64_t files_in_memory = 160'000'000;
constexpr std::int64_t decoding_memory = 160'000'000;

std::string linked(const Path& copy) {
    return "The library has no copy of its own: " + copy.string() +
           " is a link to this very file. Remove the link, and bring the photo in again.";
}

}  // namespace

Taker::Taker(Library& library, Decoder& decoder, const StoredCopies& copies, ContentClaims& claims,
             Incoming& incoming)
    : library_(library),
      copies_(copies),
      claims_(claims),
      incoming_(incoming),
      examiner_(decoder, decoding_memory),
      file_budget_(files_in_memory) {}

Taken Taker::take(const FoundFile& found) try {
    if (!may_be_photo(library_.disk(), found.file)) return LeftAlone{};
    if (auto why = reason_against_name(library_, found.file); !why.empty()) {
        return Refused{std::move(why)};
    }
    if (found.state.bytes > largest_photo_file) return too_large(found.state.bytes);
    const auto hold = file_budget_.hold(found.state.bytes);
    return take_bytes(found.file, library_.disk().read(found.file, largest_photo_file));
} catch (const DiskError& error) {
    return Refused{error.what()};
} catch (const std::bad_alloc&) {
    return Refused{
        "This computer's memory is too small for it: close other programs and try again."};
}

Taken Taker::take_bytes(const Path& file, const Bytes& bytes) {
    const FileKind kind = sniff(bytes);
    if (!is_photo(kind)) {
        return std::visit([](auto what) -> Taken { return what; },
                          no_photo(file, kind, bytes.empty()));
    }
    std::string checksum = sha256(bytes);
    if (auto copy = copies_.whole_copy(checksum)) {
        if (one_file(copy->file, file)) return Refused{linked(copy->file)};
        return AlreadyHere{std::move(checksum), std::move(copy)};
    }
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
