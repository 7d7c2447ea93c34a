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
// A sentence where some would have to be made anew, and the library is only to be looked at; else
// empty.
std::string why_pairs_are_old(Library& library);

// All pairs in memory, as they were when they were read, so that a change of the filter asks the
// library for nothing but words, and a change of the records for the looks that it is about.
class PairWall {
  public:
    // Brings them up to date and reads them, with a fixed number of statements. Throws StoreError.
    // `on` is the day on which a use must be allowed to be counted.
    PairWall(Library& library, Date on);
    // Reads what has changed since; `library` is the one that was read. Throws StoreError, and is
    // as before then.
    void bring_up_to_date(Library& library);

    struct Found {
        std::vector<Pair> pairs;  // by the date worn, the newest first
        FactCounts counts;        // each value's under the other filters
    };
    // `library` is the one that was read. Throws StoreError for words that are no text.
    Found find(Library& library, const PairFilter& filter) const;

    const std::vector<Pair>& pairs() const { return pairs_; }

  private:
    using Values = std::vector<std::pair<Fact, std::string>>;
    struct Read {
        std::vector<Pair> pairs;
        std::vector<Values> values;
    };
    Read read_again(Library& library, const std::vector<LookId>& looks) const;
    void forget(const std::vector<LookId>& looks);
    void take_in(Read fresh);
    void note_refused();

    Date on_;
    std::int64_t read_at_ = 0;  // the last change that is in it
    std::vector<Pair> pairs_;
    std::vector<bool> refused_;        // of each, so that a search need not read all pairs
    std::vector<std::size_t> places_;  // of each in the index
    std::vector<std::size_t> free_;    // in the index
    PairIndex index_;
};

// What she says of a pair, with what she said before. Each throws StoreError when the pair is not
// there any more, and for a photo that does not stand for its side of it.
void choose_frames(Library& library, PairId pair, std::optional<PhotoId> first,
                   std::optional<PhotoId> second);  // nothing: the best one
void pin(Library& library, PairId pair, bool pinned);
void refuse(Library& library, PairId pair, bool refused);

}  // namespace quarterturn
