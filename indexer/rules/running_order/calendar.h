#pragma once
// One stylist's hours: where a part fits between the breaks.

#include "indexer/record/morning.h"

namespace quarterturn {

class Calendar {
  public:
    explicit Calendar(const StylistHours& hours);

    int arrives() const { return arrives_; }
    // The first minute from `from` on at which a part of `minutes` meets no break.
    int place(int from, int minutes) const;
    // When `minutes` of work are done at the earliest, breaks left out.
    int after_work(int from, int minutes) const;
    const std::vector<Break>& breaks() const { return breaks_; }  // in order, none meets another

    bool operator==(const Calendar&) const = default;

  private:
    int arrives_;
    std::vector<Break> breaks_;
};

}  // namespace quarterturn
