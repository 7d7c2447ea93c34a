#pragma once
// The gate for what shows several photos at once: sheets, boards, pages for a phone.

#include <span>
#include <string>
#include <vector>

#include "indexer/looks/photo_gate.h"
#include "indexer/looks/wedding_board.h"

namespace quarterturn {

struct AgainstPhoto {
    std::string photo;  // its name
    std::string words;  // a sentence
};

// All that stands against showing these photos for the use on the day. Faces should have been
// looked for before.
std::vector<AgainstPhoto> against_passing_on(Library& library, std::span<const Photo> photos,
                                             Use use, Date on);

// The same for her own work and for the client herself, the use "own record": a sentence each,
// beginning with the photo's name. Whoever was not asked does not stand against it; who declined,
// withdrew, or allowed it until a day that is past, does; and so does a photo that is somebody
// else's.
std::vector<std::string> against_own_work(Library& library, std::span<const Photo> photos, Date on);

// Throws StoreError with these sentences when there are any.
void refuse_against_own_work(Library& library, std::span<const Photo> photos, Date on);

std::vector<Photo> photos_on(const WeddingBoard& board);

}  // namespace quarterturn
