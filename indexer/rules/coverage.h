#pragma once
// The shot list of a look against its photos, line by line.
//
// A photo tagged with the look counts for its stage and angle. A before photo that carries no look
// counts for every look its sitting worked on: hair is brushed out once, before the first look.
// The tagged angle is the truth also for a mirrored photo: mirroring only changes how it is shown.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/record/people.h"
#include "indexer/record/photo.h"
#include "indexer/record/shot_list.h"

namespace quarterturn {

struct CoverageLine {
    ShotLine wanted;
    Coverage verdict = Coverage::missing;
    std::optional<PhotoId> photo;  // the best there is: usable first, then sharpest
    std::vector<Flaw> flaws;       // of that photo, when it is not usable
    std::string waived_because;    // when the verdict is waived

    bool operator==(const CoverageLine&) const = default;
};

struct CoverageReport {
    std::vector<CoverageLine> lines;  // in the order of the shot list
    bool complete = false;            // every required line is covered or waived
    std::string next_shot;            // one sentence: what to shoot next; what to say when complete

    bool operator==(const CoverageReport&) const = default;
};

// Whether a photo can stand for a line: no flaw, or accepted by the stylist with a reason.
bool usable(const Photo& photo);

// Whether the photo counts for this look at all (see the head of this file).
bool counts_for(const Photo& photo, const Look& look);

// Whether something is still to be said before the photo lies round the head of a look: its angle,
// its stage, or, after the first brushing out, whose look it shows.
bool waits_for_its_place(const Photo& photo);

// The photos that count for the look and stand for this shot, the best first: usable, then
// sharpest.
std::vector<Photo> photos_of_shot(const Look& look, const Shot& shot,
                                  std::span<const Photo> photos);

// `photos` may hold photos of other looks; they are passed over. A waiver only matters for a line
// that is not covered.
CoverageReport judge_coverage(const Look& look, const ShotList& shot_list,
                              std::span<const Photo> photos, std::span<const Waiver> waivers);

// A required line that is missing or weak.
bool open_gap(const CoverageLine& line);

// What is wrong with a line that is missing or weak, as the rest of a sentence: "no after photo of
// the back", "the best after photo of the back is out of focus".
std::string gap_text(const CoverageLine& line);

}  // namespace quarterturn
