#include "indexer/rules/day_photos.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

namespace quarterturn {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;

const LocalTime day_midnight = parse_local_time("2026-11-21T00:00").value();

DayPhoto photo_at(int number, seconds moment, std::optional<Angle> told = {}) {
    return {PhotoId{number}, day_midnight + moment, told};
}

std::vector<DayClient> any_day_clients(int most) {
    std::vector<Seat> seats;
    const int count = *rc::gen::inRange(0, most + 1);
    for (int i = 0; i < count; ++i) {
        const int begins = *rc::gen::inRange(360, 720);
        seats.push_back(
            {ClientId{i + 1}, SeatPart::set, 0, begins, begins + *rc::gen::inRange(5, 90)});
    }
    return day_clients(seats);
}

std::vector<DayPhoto> any_day_photos(int most) {
    std::vector<int> moments = *rc::gen::container<std::vector<int>>(
        static_cast<std::size_t>(*rc::gen::inRange(0, most + 1)),
        rc::gen::inRange(300 * 60, 900 * 60));
    std::ranges::sort(moments);
    std::vector<DayPhoto> photos;
    for (const int moment : moments) {
        photos.push_back(photo_at(static_cast<int>(photos.size()) + 1, seconds(moment)));
    }
    return photos;
}

double cost_of(int begins, const DayClient* client) {
    return client ? std::abs(begins / 60.0 - client->ends) : furthest_minutes;
}

// Every way to give rounds to clients is tried.
double least_cost(const std::vector<int>& rounds, const std::vector<DayClient>& clients,
                  std::size_t round = 0, std::size_t from = 0) {
    if (round == rounds.size()) return 0;
    double best = cost_of(rounds[round], nullptr) + least_cost(rounds, clients, round + 1, from);
    for (std::size_t i = from; i < clients.size(); ++i) {
        const double cost = cost_of(rounds[round], &clients[i]);
        if (rounds[round] < clients[i].begins * 60 || cost > furthest_minutes) continue;
        best = std::min(best, cost + least_cost(rounds, clients, round + 1, i));
    }
    return best;
}

int second_of(const DayPhoto& photo) {
    return static_cast<int>(
        std::chrono::duration_cast<seconds>(photo.moment - day_midnight).count());
}

RC_GTEST_PROP(DayPhotos, GoToTheClientsNearestInTimeInTheOrderOfWork, ()) {
    const auto clients = any_day_clients(4);
    const auto photos = any_day_photos(6);
    const auto places = propose_places(photos, clients, day_midnight);
    RC_ASSERT(places.size() == photos.size());
    std::vector<int> rounds;
    double cost = 0;
    int last_end = 0;
    for (std::size_t i = 0; i < photos.size(); ++i) {
        RC_ASSERT(places[i].photo == photos[i].photo);
        const auto client = std::ranges::find_if(
            clients, [&](const DayClient& each) { return places[i].client == each.client; });
        if (places[i].client) {
            RC_ASSERT(client->begins * 60 <= second_of(photos[i]));
            RC_ASSERT(client->ends >= last_end);
            last_end = client->ends;
        }
        RC_ASSERT(places[i].angle.has_value() == places[i].client.has_value());
        const bool new_round = i == 0 || photos[i].moment - photos[i - 1].moment > within_a_round;
        if (!new_round) {
            RC_ASSERT(places[i].client == places[i - 1].client);
            continue;
        }
        rounds.push_back(second_of(photos[i]));
        cost += cost_of(rounds.back(), places[i].client ? &*client : nullptr);
    }
    RC_ASSERT(std::abs(cost - least_cost(rounds, clients)) < 1e-6);
}

const std::vector<DayClient> bridesmaid_and_bride{{ClientId{7}, 480, 540}, {ClientId{3}, 540, 660}};

TEST(DayPhotos, TakenAsEachIsDoneGoToHer) {
    const std::vector photos{photo_at(1, minutes(541)), photo_at(2, minutes(541) + seconds(20)),
                             photo_at(3, minutes(662))};
    const auto places = propose_places(photos, bridesmaid_and_bride, day_midnight);
    EXPECT_EQ(places[0].client, ClientId{7});
    EXPECT_EQ(places[1].client, ClientId{7});
    EXPECT_EQ(places[2].client, ClientId{3});
}

TEST(DayPhotos, BeforeAnybodySitsAreNobodys) {
    const auto places =
        propose_places(std::vector{photo_at(1, minutes(420))}, bridesmaid_and_bride, day_midnight);
    EXPECT_FALSE(places[0].client.has_value());
    EXPECT_FALSE(places[0].angle.has_value());
}

TEST(DayPhotos, AnglesFollowTheWalkRoundTheHead) {
    std::vector<DayPhoto> photos;
    for (int i = 0; i < 5; ++i) photos.push_back(photo_at(i, minutes(541) + seconds(20 * i)));
    const auto angles = [&] {
        std::vector<Angle> found;
        for (const DayPlace& place : propose_places(photos, bridesmaid_and_bride, day_midnight)) {
            found.push_back(*place.angle);
        }
        return found;
    };
    using enum Angle;
    EXPECT_EQ(angles(), (std::vector{left, front, right, back, left}));
    photos[1].told = back;
    EXPECT_EQ(angles(), (std::vector{right, back, left, front, right}));
    photos[3].told = crown;
    EXPECT_EQ(angles(), (std::vector{right, back, left, crown, right}));
    photos[3].told.reset();
    photos[2].moment = photos[1].moment + seconds(1);
    EXPECT_EQ(angles()[2], back);
}

TEST(DayPhotos, AClientInTwoPartsIsDoneWithTheSecond) {
    const std::vector<Seat> seats{{ClientId{1}, SeatPart::set, 0, 400, 430},
                                  {ClientId{2}, SeatPart::set, 0, 430, 480},
                                  {ClientId{1}, SeatPart::finish, 0, 490, 520}};
    EXPECT_EQ(day_clients(seats),
              (std::vector<DayClient>{{ClientId{2}, 430, 480}, {ClientId{1}, 400, 520}}));
}

// Of a round that begins in front and goes on to her left, as the faces tell.
TEST(DayPhotos, AreWalkedTheWayThatTheFacesLook) {
    const std::vector<DayClient> clients{{ClientId{1}, 600, 620}};
    std::vector<DayPhoto> round;
    const auto add = [&](std::optional<Angle> told, std::optional<HeadSigns> signs) {
        round.push_back(photo_at(static_cast<int>(round.size()) + 1,
                                 minutes(620) + seconds(15 * round.size()), told));
        round.back().signs = signs;
    };
    add(Angle::front, HeadSigns{true, false, false});
    add({}, HeadSigns{false, true, false});
    add({}, HeadSigns{});
    add({}, HeadSigns{false, false, true});
    const auto angles = [&] {
        std::vector<std::optional<Angle>> found;
        for (const DayPlace& place : propose_places(round, clients, day_midnight)) {
            found.push_back(place.angle);
        }
        return found;
    };
    EXPECT_EQ(angles(), (std::vector<std::optional<Angle>>{Angle::front, Angle::left, Angle::back,
                                                           Angle::right}));
    round[1].signs = round[3].signs = std::nullopt;
    EXPECT_EQ(angles(), (std::vector<std::optional<Angle>>{Angle::front, Angle::right, Angle::back,
                                                           Angle::left}))
        << "nothing says otherwise than the usual";
    round[1].signs = HeadSigns{false, true, false};
    round[3].signs = HeadSigns{false, true, false};
    const auto open = angles();
    EXPECT_TRUE(open[1] != Angle::right && open[3] != Angle::right) << "a wrong side is told";
}

}  // namespace
}  // namespace quarterturn
