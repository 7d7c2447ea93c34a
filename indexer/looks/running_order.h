#pragma once
// The running order of a wedding's morning, from the recipes of its looks and what she has said.

#include "indexer/rules/running_order_check.h"
#include "indexer/store/library.h"

namespace quarterturn {

// Minutes in the chair as a recipe tells them; nothing when it tells none.
//
// The hair is left to cool after the step that waits longest; the stylist stays for all other
// waits. Minutes of the whole that no step accounts for come before: washing, drying, prep. What
// is left open: how long the set may be left, then usual_may_be_left minutes; what is done after
// it, then a minute to see to it; and after which step a wait of the whole comes, then she stays.
std::optional<ChairWork> chair_work(const Recipe& recipe);
// What chair_work() takes `may_be_left` from; nothing where the recipe leaves it open.
std::optional<int> may_be_left_in(const Recipe& recipe);

// What is missing to plan a member of the party: her minutes, or when she must be ready.
struct MorningGap {
    ClientId client;
    bool of_minutes = false;
    std::optional<LookId> look;  // whose recipe could tell her minutes

    bool operator==(const MorningGap&) const = default;
};

struct WeddingMorning {
    Wedding wedding;
    Morning morning;
    MorningNeeds needs;               // in the order of the party
    std::vector<std::string> looks;   // of each of them; "" where only minutes were named
    std::vector<std::string> cannot;  // a sentence for each member who cannot be planned yet
    std::vector<MorningGap> gaps;     // what each of those sentences is about
    std::string assumed;  // a sentence on what a set may be left, where nothing says it; or ""
};

// Of each member the look that is worn first counts: ceremony, other, then evening. Minutes, times
// and order that she has named for the morning go before. Throws StoreError when there is no such
// wedding.
WeddingMorning wedding_morning(Library& library, WeddingId wedding);

struct MorningPlan {
    std::vector<Seat> seats;  // in the order of work
    bool by_hand = false;     // as she changed it
    bool proven = true;       // see RunningOrder
    bool lateness_proven = true;
    Consequences consequences;
};

// The plan she keeps, else the best one. Throws std::invalid_argument as plan_morning() does.
MorningPlan plan_of(const WeddingMorning& morning);
MorningPlan best_plan(const WeddingMorning& morning);

// The morning with this plan kept as she changed it.
Morning keeping(Morning morning, const std::vector<Seat>& seats);

// Keeps the plan that stands with a part of the client moved; see moved_part(). Throws StoreError
// when she has no place in it, or when there is no such stylist.
void keep_move(Library& library, const WeddingMorning& morning, ClientId client, int at,
               std::optional<int> stylist, SeatPart part = SeatPart::set);

// Changes what was said of a client; adds her when nothing was.
MorningWish& wish_of(Morning& morning, ClientId client);

// What is done in a seat: "set", "finish", "hair" where all is done in one go.
std::string task_word(const MorningNeeds& needs, const Seat& seat);

// Whether all can be ready in time: a sentence, with how sure that is.
std::string possible_text(const MorningPlan& best);

// How sure it is that no plan is better; nothing when it is proven.
std::optional<std::string> unproven_text(const MorningPlan& plan);

}  // namespace quarterturn
