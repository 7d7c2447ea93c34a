// Invented devices and sittings; how clocks come to be wrong is common practice.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "indexer/rules/sorting.h"
#include "tests/indexer/rules/photos.h"

namespace quarterturn {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

constexpr DeviceId phone{1};
constexpr DeviceId camera{2};

Sitting sitting(std::int64_t id, std::string_view starts, std::string_view ends) {
    Sitting result;
    result.id = SittingId{id};
    result.starts = at(starts);
    result.ends = at(ends);
    return result;
}

const std::vector<Sitting> trial{sitting(1, "2026-05-02T10:00", "2026-05-02T13:00")};

// A device's photos by a clock that shows true time plus `wrong`.
DevicePhotos taken_by(DeviceId device, const std::vector<std::string>& true_clocks,
                      seconds wrong = seconds{0}) {
    DevicePhotos photos{device, {}, seconds{0}};
    for (const std::string& clock : true_clocks) {
        const auto id = device.value * 1000 + static_cast<std::int64_t>(photos.photos.size());
        photos.photos.push_back({PhotoId{id}, at("2026-05-02T" + clock) + wrong});
    }
    return photos;
}

const std::vector<std::string> by_phone{"10:08", "10:09",    "10:10",    "10:11", "11:05",
                                        "11:06", "12:20:10", "12:21",    "12:22", "12:23",
                                        "12:24", "12:50",    "12:51:30", "12:53"};
const std::vector<std::string> by_camera{"10:08:30", "10:09:20", "10:10:40", "11:05:30",
                                         "12:20:40", "12:21:30", "12:23:10", "12:51"};

std::vector<ClockShift> propose(const std::vector<DevicePhotos>& devices,
                                const std::vector<Sitting>& sittings = trial) {
    return propose_clock_shifts(devices, sittings);
}

// She raises one device half a minute after the other, so it is told to a minute.
void expect_near(seconds shift, seconds wanted) {
    EXPECT_LE(std::chrono::abs(shift - wanted), minutes{1}) << shift_size_text(shift);
}

TEST(ClockShifts, NothingIsProposedWhereAllPhotosFit) {
    EXPECT_TRUE(propose({taken_by(phone, by_phone), taken_by(camera, by_camera)}).empty());
    EXPECT_TRUE(propose({}).empty());
    EXPECT_TRUE(propose({taken_by(phone, {})}).empty());
}

// Most of its photos still fall in the sitting, so only the other device can tell.
TEST(ClockShifts, ACameraPartlyOutsideIsToldFromThePhone) {
    const auto shifts =
        propose({taken_by(phone, by_phone), taken_by(camera, by_camera, minutes{-47})});
    ASSERT_EQ(shifts.size(), 1U);
    EXPECT_EQ(shifts[0].device, camera);
    expect_near(shifts[0].shift, minutes{47});
    EXPECT_EQ(shifts[0].photos, 8);
    EXPECT_EQ(shifts[0].fit_now, 5);
    EXPECT_EQ(shifts[0].fit_then, 8);
    EXPECT_EQ(shifts[0].because,
              "As it is, only 5 of 8 photos fall in a sitting; with " +
                  shift_size_text(shifts[0].shift) +
                  " added, all 8 do, and 8 then stand within 5 minutes of another device's photos. "
                  "Two photos of one moment by two devices would tell it exactly.");
}

// The camera's clock is wrong by a number of whole minutes, and both devices are raised together.
TEST(ClockShifts, PhotosOfTheSameMomentsTellItToTheMinute) {
    auto photos = taken_by(camera, by_phone, minutes{-47});
    for (TimedPhoto& photo : photos.photos) photo.moment += seconds{17};
    const auto shifts = propose({taken_by(phone, by_phone), photos});
    ASSERT_EQ(shifts.size(), 1U);
    EXPECT_EQ(shifts[0].shift, minutes{47});
}

TEST(ClockShifts, AFastClockIsTakenBack) {
    const auto shifts = propose({taken_by(phone, by_phone), taken_by(camera, by_camera, hours{1})});
    ASSERT_EQ(shifts.size(), 1U);
    EXPECT_EQ(shifts[0].shift, hours{-1});
    EXPECT_NE(shifts[0].because.find("with 1 hour taken off"), std::string::npos);
}

// Private photos of the same phone do not make its clock wrong.
TEST(ClockShifts, StraysDoNotAccuseADeviceThatStandsRight) {
    auto clocks = by_phone;
    clocks.insert(clocks.begin(), {"09:30", "09:40"});
    EXPECT_TRUE(propose({taken_by(phone, clocks), taken_by(camera, by_camera)}).empty());
    EXPECT_TRUE(propose({taken_by(phone, clocks)}).empty());
}

TEST(ClockShifts, PartlyOutsideAndAloneMayBeTheHoursNotTheClock) {
    EXPECT_TRUE(propose({taken_by(camera, by_camera, minutes{-47})}).empty());
}

TEST(ClockShifts, AloneAndWhollyOutsideAWholeHourIsProposed) {
    const auto shifts = propose({taken_by(camera, {"10:20", "10:30"}, hours{-1})});
    ASSERT_EQ(shifts.size(), 1U);
    EXPECT_EQ(shifts[0].shift, hours{1});
    EXPECT_EQ(shifts[0].fit_now, 0);
    EXPECT_EQ(shifts[0].because,
              "As it is, none of its 2 photos falls in a sitting; with 1 hour added, all 2 do. Two "
              "photos of one moment by two devices would tell it exactly.");
}

TEST(ClockShifts, AloneAndWithoutAFittingHourTheSmallestShiftIsProposed) {
    // By its clock 10:27 and 10:43, in hours from 12:00 to 12:20: 93 to 97 minutes fit.
    const auto late = sitting(1, "2026-05-02T12:00", "2026-05-02T12:20");
    const auto shifts = propose({taken_by(camera, {"12:02", "12:18"}, minutes{-95})}, {late});
    ASSERT_EQ(shifts.size(), 1U);
    EXPECT_EQ(shifts[0].shift, minutes{93});
}

TEST(ClockShifts, TwoSittingsThatFitLeaveItOpen) {
    const std::vector sittings{sitting(1, "2026-05-02T09:00", "2026-05-02T10:00"),
                               sitting(2, "2026-05-02T14:00", "2026-05-02T15:00")};
    EXPECT_TRUE(propose({taken_by(camera, {"12:10", "12:20"})}, sittings).empty());
}

TEST(ClockShifts, TwoMomentsThatLookAlikeLeaveItOpen) {
    // The phone's before and after are the same size and the camera took only one of them.
    const auto both = taken_by(phone, {"10:20", "10:21", "10:22", "12:20", "12:21", "12:22"});
    const auto one = taken_by(camera, {"09:20", "09:21", "09:22"});
    EXPECT_TRUE(propose({both, one}).empty());
}

TEST(ClockShifts, ADayTooFarAwayIsNoWrongClock) {
    EXPECT_TRUE(propose({taken_by(camera, {"10:20", "10:30"}, hours{-48})}).empty());
}

TEST(ClockShifts, AShiftThatIsAlreadyRightIsNotProposedAgain) {
    auto shifted = taken_by(camera, by_camera, minutes{-47});
    shifted.shift = minutes{47};
    EXPECT_TRUE(propose({taken_by(phone, by_phone), shifted}).empty());
}

TEST(ClockShifts, AShiftThatWasWrongIsReplacedByTheWholeOne) {
    auto shifted = taken_by(camera, by_camera, minutes{-47});
    shifted.shift = hours{3};
    const auto shifts = propose({taken_by(phone, by_phone), shifted});
    ASSERT_EQ(shifts.size(), 1U);
    expect_near(shifts[0].shift, minutes{47});
}

TEST(ClockShifts, OneStrayInTenMayStayOutside) {
    auto clocks = by_camera;
    clocks.insert(clocks.end(), {"12:22", "18:00"});
    const auto shifts =
        propose({taken_by(phone, by_phone), taken_by(camera, clocks, minutes{-47})});
    ASSERT_EQ(shifts.size(), 1U);
    EXPECT_EQ(shifts[0].fit_then, 9);
}

// A trial as she works: a few photos of each stage by the phone, some of the same by the camera
// within the next half minute.
struct Trial {
    DevicePhotos phone_photos{phone, {}, seconds{0}};
    DevicePhotos camera_photos{camera, {}, seconds{0}};
};

Trial random_trial(seconds wrong) {
    Trial result;
    std::int64_t id = 0;
    for (const auto* stage : {"10:04", "11:10", "12:28", "12:50"}) {
        const auto start =
            at("2026-05-02T" + std::string(stage)) + seconds{*rc::gen::inRange(0, 240)};
        for (int i = 0; i < 4; ++i) {
            const auto moment = start + seconds{25 * i};
            result.phone_photos.photos.push_back({PhotoId{++id}, moment});
            result.camera_photos.photos.push_back(
                {PhotoId{++id}, moment + seconds{*rc::gen::inRange(3, 30)} + wrong});
        }
    }
    return result;
}

RC_GTEST_PROP(ClockShifts, AClockWrongByUpToADayIsFound, ()) {
    const auto off = minutes{*rc::gen::inRange(60, 24 * 60) * *rc::gen::element(-1, 1)};
    const Trial photos = random_trial(off);
    const auto shifts = propose({photos.phone_photos, photos.camera_photos});
    RC_ASSERT(shifts.size() == 1U);
    RC_ASSERT(shifts[0].device == camera);
    const bool on_an_hour = shifts[0].shift.count() % 3600 == 0;
    RC_ASSERT(std::chrono::abs(shifts[0].shift + off) <= minutes{on_an_hour ? 5 : 1});
}

// Whatever is proposed, more photos fit with it than without, and the counts are true.
RC_GTEST_PROP(ClockShifts, AProposalAlwaysHelps, ()) {
    DevicePhotos one{phone, {}, seconds{0}};
    DevicePhotos other{camera, {}, seconds{0}};
    for (std::int64_t id = 1; id <= 12; ++id) {
        auto& device = *rc::gen::arbitrary<bool>() ? one : other;
        device.photos.push_back(
            {PhotoId{id}, at("2026-05-02T00:00") + seconds{*rc::gen::inRange(0, 86'400)}});
    }
    const std::vector sittings{
        sitting(1, "2026-05-02T10:00", "2026-05-02T13:00"),
        sitting(2, "2026-05-02T15:00", "2026-05-02T19:00"),
    };
    const SittingsByTime by_time(sittings);
    for (const ClockShift& shift : propose({one, other}, sittings)) {
        const auto& device = shift.device == phone ? one : other;
        int now = 0;
        int then = 0;
        for (const TimedPhoto& photo : device.photos) {
            now += by_time.at(photo.moment).empty() ? 0 : 1;
            then += by_time.at(photo.moment + shift.shift).empty() ? 0 : 1;
        }
        RC_ASSERT(shift.fit_now == now);
        RC_ASSERT(shift.fit_then == then);
        RC_ASSERT(then > now);
    }
}

}  // namespace
}  // namespace quarterturn
