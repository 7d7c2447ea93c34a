#pragma once
// What to look for among the photos of a library, and what is found.

#include <optional>
#include <string>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/record/time.h"
#include "indexer/record/words.h"

namespace quarterturn {

// Everything that is set must hold.
struct PhotoSearch {
    // Each word stands somewhere: in the photo's file name, note or reason, or in what its client,
    // wedding, sitting, look and recipe say. See search_words.h for when a word is found.
    std::string words{};
    std::optional<ClientId> client{};  // her sitting, her look, or shown in the picture
    std::optional<LookId> look{};      // tagged with it
    std::optional<SittingId> sitting{};
    std::optional<Stage> stage{};
    std::optional<Angle> angle{};
    std::optional<DeviceId> device{};
    std::optional<Date> from{};  // by the photo's moment; both days belong to it
    std::optional<Date> to{};
    bool unplaced = false;  // in no sitting
    bool untagged = false;  // no angle or no stage yet
    bool flawed = false;    // a flaw was found, accepted or not
    bool binned = false;    // in the bin; else only what is not in it

    bool operator==(const PhotoSearch&) const = default;
};

// Little enough that all photos of a large library are held in memory.
struct FoundPhoto {
    PhotoId id;
    std::optional<SittingId> sitting;
    std::optional<LocalTime> moment;

    bool operator==(const FoundPhoto&) const = default;
};

// The records whose words a photo is found by.
enum class WordsOf { photo, client, wedding, sitting, look, recipe };

struct TextPiece {
    std::string text;
    bool marked = false;  // it is what was looked for

    bool operator==(const TextPiece&) const = default;
};

// The line of a record in which words were found, cut where it is long.
struct FoundText {
    WordsOf where = WordsOf::photo;
    std::vector<TextPiece> pieces;

    bool operator==(const FoundText&) const = default;
};

}  // namespace quarterturn
