#pragma once
// What the command line says of a wedding morning, into what the library keeps of it.

#include "app/qturn/command.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct MorningOptions {
    std::optional<int> stylists;
    Texts arrivals;  // "06:30", or "2=06:30" for one stylist
    Texts breaks;    // "09:00-09:15", or "2=09:00-09:15"
    bool no_breaks = false;
    Text first;
    Text last;
    bool any_order = false;
    Texts ready_by;  // "CLIENT=11:30"; with "CLIENT=none" each of the three is taken back
    Texts comes;     // "CLIENT=07:30"
    Texts minutes;   // "CLIENT=45", or "CLIENT=20+15+40": before, cooling, after

    bool says_nothing() const;
};

// Throws WrongUse for what cannot be.
Morning with_options(Library& library, Morning morning, const MorningOptions& options);

// "07:40" as minutes after midnight. Throws WrongUse.
int minute_from(const std::string& text);

}  // namespace quarterturn
