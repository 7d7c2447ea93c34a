#pragma once
// The index of pairs: made from the records, found by facts and words.

#include <string>
#include <vector>

#include "indexer/rules/pair_index.h"
#include "indexer/store/library.h"

namespace quarterturn {

// Makes pairs and facts anew for the looks that changed; quick when none did. Takes a fixed number
// of statements to read each few hundred looks. Throws StoreError.
void bring_pairs_up_to_date(Library& library);

// All pairs in memory, as they were when they were read, so that a change of the filter asks the
// library for nothing but words.
class PairWall {
  public:
    // Brings them up to date and reads them, with a fixed number of statements. Throws StoreError.
    // `on` is the day on which a use must be allowed to be counted.
    PairWall(Library& library, Date on);

    struct Found {
        std::vector<Pair> pairs;  // by the date worn, the newest first
        FactCounts counts;        // each value's under the other filters
    };
    // `library` is the one that was read. Throws StoreError for words that are no text.
    Found find(Library& library, const PairFilter& filter) const;

    const std::vector<Pair>& pairs() const { return pairs_; }

  private:
    std::vector<Pair> pairs_;
    PairIndex index_;
};

// What she says of a pair, with what she said before. Each throws StoreError when the pair is not
// there any more, and for a photo that does not stand for its side of it.
void choose_frames(Library& library, PairId pair, std::optional<PhotoId> first,
                   std::optional<PhotoId> second);  // nothing: the best one
void pin(Library& library, PairId pair, bool pinned);
void refuse(Library& library, PairId pair, bool refused);

}  // namespace quarterturn
