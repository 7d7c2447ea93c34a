#pragma once
// Whose photo of the wedding day this is, and from which angle: a proposal from the running order
// and the clock, for her to confirm or correct.

#include <chrono>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/record/morning.h"
#include "indexer/record/photo.h"

namespace quarterturn {

struct DayPhoto {
    PhotoId photo;
    LocalTime moment{};
    std::optional<Angle> told;         // by its file or a face; see suggest_angle()
    std::optional<HeadSigns> signs{};  // of a face, where one was looked for
};

// When a client's seats begin and end, in minutes after midnight of the wedding day.
struct DayClient {
    ClientId client;
    int begins = 0;
    int ends = 0;

    bool operator==(const DayClient&) const = default;
};

struct DayPlace {
    PhotoId photo;
    std::optional<ClientId> client;  // nothing: too far from everybody's seat
    std::optional<Angle> angle;      // nothing where there is no client, or where it is open
    bool angle_told = false;         // else it follows from the walk round the head
};

// Photos that follow each other within this time are one round of the head, and go together (the
// demo's rounds take 80 seconds, with 26 between two photos at most).
inline constexpr std::chrono::seconds within_a_round{90};
// From the end of a client's seat: further away, a round is nobody's (common practice: photos are
// taken when she is done, or once more before she leaves).
inline constexpr int furthest_minutes = 180;
// Photos that follow each other faster are of one angle.
inline constexpr std::chrono::seconds of_one_angle{4};

// One entry for each client, in the order of the ends of their seats.
std::vector<DayClient> day_clients(std::span<const Seat> seats);

// `photos` in the order of time, all of the day that begins at `midnight`; `clients` as
// day_clients() answers them. No round goes to a client whose seat has not begun, and a later round
// never to a client who is done earlier; of all ways that leaves, the one whose rounds begin
// nearest to the ends of the seats, added up, where one that is nobody's counts as
// furthest_minutes.
//
// An angle that is not told follows the one before it as she walks round: left, front, right, back;
// or the other way round, or from another side, where the faces that were seen say so. Where a face
// looks the other way than its place in that round, the angle is left open.
std::vector<DayPlace> propose_places(std::span<const DayPhoto> photos,
                                     std::span<const DayClient> clients, LocalTime midnight);

}  // namespace quarterturn
