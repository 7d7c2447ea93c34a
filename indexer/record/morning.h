#pragma once
// The wedding morning: who works from when on, what each client needs, and who sits when. Times are
// minutes after midnight.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/id.h"

namespace quarterturn {

inline constexpr int most_stylists = 4;
inline constexpr int most_in_the_chair = 12;  // clients of one morning
inline constexpr int usual_arrival = 6 * 60;  // of a stylist who has named no other
inline constexpr int usual_may_be_left = 60;  // minutes, where a recipe leaves it open

std::string minute_text(int minute);                      // "07:40", "00:10 the next day"
std::optional<int> parse_minute(std::string_view clock);  // of "07:40" and nothing else

struct Break {
    int begins = 0;
    int ends = 0;

    bool operator==(const Break&) const = default;
};

struct StylistHours {
    int arrives = usual_arrival;
    std::vector<Break> breaks;

    bool operator==(const StylistHours&) const = default;
};

// Minutes in the chair. With `after`, the hair is set, left to cool for at least `cooling` and at
// most `may_be_left` minutes, and finished afterwards; without, all is done in one go.
struct ChairWork {
    int before = 0;
    int cooling = 0;
    int may_be_left = 0;
    int after = 0;

    bool in_two_parts() const { return after > 0; }
    int hands_on() const { return before + after; }
    bool operator==(const ChairWork&) const = default;
};

enum class SeatPart { set, finish };  // a client who is done in one go has the first only

struct Seat {
    ClientId client;
    SeatPart part = SeatPart::set;
    int stylist = 0;  // from 0
    int begins = 0;
    int ends = 0;

    bool operator==(const Seat&) const = default;
};

// What she has said of one client's morning; nothing where the wedding or the recipe tells it.
struct MorningWish {
    ClientId client;
    std::optional<int> ready_by;
    std::optional<int> arrives;
    bool first = false;
    bool last = false;
    std::optional<ChairWork> work;

    bool operator==(const MorningWish&) const = default;
};

struct KeptSeat {
    ClientId client;
    SeatPart part = SeatPart::set;
    int stylist = 0;
    int begins = 0;

    bool operator==(const KeptSeat&) const = default;
};

struct Morning {
    std::vector<StylistHours> stylists{StylistHours{}};
    std::vector<MorningWish> wishes;
    std::vector<KeptSeat> kept;  // the plan as changed by hand; empty when it was not

    bool operator==(const Morning&) const = default;
};

}  // namespace quarterturn
