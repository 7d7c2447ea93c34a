#pragma once
// Photos of the wedding day: whose they are is proposed by the running order, and confirmed they
// stand at the client's wedding-day sitting, with her look, as after photos.

#include <functional>

#include "indexer/image/decode.h"
#include "indexer/rules/day_photos.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct DayProposal {
    Photo photo;
    std::optional<LookId> look;  // of the client; nothing where nobody or no look is proposed
    std::optional<Angle> angle;
    bool angle_told = false;  // by its file or a face, not by the walk round the head
};

// Photos of the wedding's day that carry no look yet, in the order of time; `seats` are those of
// the running order. A client's look of the ceremony goes before others. Clients without seats get
// nothing proposed. Throws StoreError when there is no such wedding.
std::vector<DayProposal> propose_day_photos(Library& library, WeddingId wedding,
                                            std::span<const Seat> seats);

// The same, once those photos were looked at for faces where nobody has yet: some tenths of a
// second each. `progress` is told how many of how many.
std::vector<DayProposal> propose_seen_day_photos(
    Library& library, Decoder& decoder, WeddingId wedding, std::span<const Seat> seats,
    const std::function<void(std::int64_t, std::int64_t)>& progress = {});

// Places all that have a look, and answers how many. A client without a wedding-day sitting gets
// one with the hours of her seats, widened to her photos. One action of the history, with the
// sittings. Throws StoreError, and changes nothing, when a look is not there or its client is not
// of the party.
int place_day_photos(Library& library, WeddingId wedding, std::span<const Seat> seats,
                     std::span<const DayProposal> confirmed);

}  // namespace quarterturn
