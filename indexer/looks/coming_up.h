#pragma once
// What's coming up: weddings and sittings by date, with what each look still lacks and what to
// do next. Everything is read in a fixed number of queries, however many there are.

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/record/people.h"
#include "indexer/record/shot_list.h"
#include "indexer/store/library.h"
#include "indexer/store/some_records.h"

namespace quarterturn {

enum class NextStep { bring_photos_in, go_round_the_head, write_recipe, sign_off, nothing };

// One thing that stands between a look and its sign-off.
struct Lack {
    std::string sentence;  // "No after photo of the back."
    NextStep mended_by = NextStep::go_round_the_head;
    std::optional<Shot> shot;  // for a gap on the shot list

    bool operator==(const Lack&) const = default;
};

// How a look stands.
struct LookStanding {
    Ring ring{};
    int photos = 0;   // that count for the look
    int waiting = 0;  // of its sittings, whose place round the head is still to be said
    std::optional<LocalTime> signed_at;
    std::vector<Lack> lacks;  // the most pressing first; empty when signed off
    NextStep next = NextStep::nothing;

    bool operator==(const LookStanding&) const = default;
};

struct LookAhead {
    Look look;
    std::optional<LookStanding> standing;  // nothing until judged

    bool operator==(const LookAhead&) const = default;
};

struct ClientAhead {
    Client client;
    std::string role;  // in the party; empty outside one
    std::vector<LookAhead> looks;

    bool operator==(const ClientAhead&) const = default;
};

// A wedding on its day, or one sitting. A wedding-day sitting on the day of its wedding
// belongs to the wedding's occasion.
struct Occasion {
    Date date{};
    std::optional<Wedding> wedding{};  // also the one that a sitting is for
    std::vector<Sitting> sittings{};   // in the order of starts; those of the day for a wedding
    std::vector<ClientAhead> clients{};
    bool is_wedding = false;

    bool operator==(const Occasion&) const = default;
};

// By day and hour, today's first; looks are not judged. All of these throw StoreError.
std::vector<Occasion> occasions_ahead(Library& library, Date today);

// How much there was in each month before today, the newest first.
std::vector<MonthCount> past_months(Library& library, Date today);

// The newest first; looks are not judged.
std::vector<Occasion> past_occasions(Library& library, const DaysFrom& days);

// Judges the looks of these occasions, such as those that are in view.
void judge(Library& library, std::span<Occasion> occasions);

}  // namespace quarterturn
