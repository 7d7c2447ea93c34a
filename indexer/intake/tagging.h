#pragma once
// What she says of photos, many at once. Everything here is one action that can be undone.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/disk/refused_file.h"
#include "indexer/store/library.h"

namespace quarterturn {

// Each wish that is set is done to all of the photos; the others leave what is there. A wish that
// holds nothing takes the tag away.
struct TagWishes {
    std::optional<std::optional<Angle>> angle{};
    std::optional<std::optional<Stage>> stage{};
    std::optional<std::optional<LookId>> look{};
    std::optional<bool> mirrored{};
    std::optional<std::vector<ClientId>> shown{};  // besides the sitting's own client
    std::optional<std::string> note{};
    std::optional<std::string> accepted_because{};  // "use it anyway"; empty takes it back
};

// Throws StoreError, and tags nothing, when a photo, look or client is not there, or when the look
// is of a client who is neither the sitting's nor among those shown.
void tag(Library& library, std::span<const PhotoId> photos, const TagWishes& wishes);

// Suggested angles and stages become tags where the photo carries none. Answers how many photos
// were tagged by it.
int confirm_suggestions(Library& library, std::span<const PhotoId> photos);

// Placed by hand, photos stay in the sitting (or in none) whatever their time; their files move to
// its folder. Answers those of the library that the disk did not move.
std::vector<RefusedFile> place_by_hand(Library& library, std::span<const PhotoId> photos,
                                       std::optional<SittingId> sitting);
// Their time decides again.
std::vector<RefusedFile> leave_to_time(Library& library, std::span<const PhotoId> photos);

}  // namespace quarterturn
