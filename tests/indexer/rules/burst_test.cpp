#include "indexer/rules/burst.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

#include "tests/indexer/rules/photos.h"

namespace quarterturn {
namespace {

using Groups = std::vector<std::vector<PhotoId>>;
using std::chrono::milliseconds;

constexpr Fingerprint some_picture = 0x9a3c5f0172e8b4d6;

Photo taken(std::int64_t id, milliseconds after_ten, Fingerprint fingerprint = some_picture,
            double focus = 100) {
    Photo photo;
    photo.id = PhotoId{id};
    photo.file.device = DeviceId{1};
    photo.moment = at("2026-05-02T10:00") + after_ten;
    photo.fingerprint = fingerprint;
    photo.measures.focus = focus;
    return photo;
}

Fingerprint with_bits_flipped(Fingerprint fingerprint, int count) {
    for (int bit = 0; bit < count; ++bit) fingerprint ^= Fingerprint{1} << (5 * bit % 64);
    return fingerprint;
}

TEST(BitsApart, CountsTheBitsThatDiffer) {
    EXPECT_EQ(bits_apart(some_picture, some_picture), 0);
    EXPECT_EQ(bits_apart(0, ~Fingerprint{0}), 64);
    EXPECT_EQ(bits_apart(0b1010, 0b0110), 2);
}

TEST(Bursts, TheSharpestComesFirst) {
    const std::vector photos{taken(1, milliseconds{0}, some_picture, 50),
                             taken(2, milliseconds{300}, some_picture, 90),
                             taken(3, milliseconds{600}, some_picture, 70)};
    EXPECT_EQ(find_bursts(photos), (Groups{{PhotoId{2}, PhotoId{3}, PhotoId{1}}}));
}

TEST(Bursts, AFlawedPhotoComesAfterTheUnflawed) {
    std::vector photos{taken(1, milliseconds{0}, some_picture, 500), taken(2, milliseconds{300})};
    photos[0].flaws = {Flaw::blown_out};
    EXPECT_EQ(find_bursts(photos), (Groups{{PhotoId{2}, PhotoId{1}}}));
}

TEST(Bursts, EndWithALongerPause) {
    const std::vector within{taken(1, milliseconds{0}), taken(2, milliseconds{2000})};
    const std::vector beyond{taken(1, milliseconds{0}), taken(2, milliseconds{2001})};
    EXPECT_EQ(find_bursts(within).size(), 1U);
    EXPECT_TRUE(find_bursts(beyond).empty());
}

TEST(Bursts, AnotherPictureIsNoMemberNorIsAnotherDevice) {
    const auto far = with_bits_flipped(some_picture, burst_bits + 1);
    const std::vector another{taken(1, milliseconds{0}), taken(2, milliseconds{100}, far)};
    EXPECT_TRUE(find_bursts(another).empty());
    std::vector devices{taken(1, milliseconds{0}), taken(2, milliseconds{100})};
    devices[1].file.device = DeviceId{2};
    EXPECT_TRUE(find_bursts(devices).empty());
}

TEST(Bursts, PhotosOfUnknownMomentOrDeviceAreInNone) {
    std::vector photos{taken(1, milliseconds{0}), taken(2, milliseconds{100}),
                       taken(3, milliseconds{200})};
    photos[0].moment.reset();
    photos[1].file.device.reset();
    EXPECT_TRUE(find_bursts(photos).empty());
}

TEST(NearDuplicates, AreFoundWheneverTheyWereTaken) {
    auto without_time = taken(2, milliseconds{0}, with_bits_flipped(some_picture, 3), 200);
    without_time.moment.reset();
    const std::vector photos{
        taken(1, milliseconds{0}), without_time,
        taken(3, milliseconds{9'000'000}, with_bits_flipped(some_picture, 30))};
    EXPECT_EQ(find_near_duplicates(photos), (Groups{{PhotoId{2}, PhotoId{1}}}));
}

TEST(NearDuplicates, PhotosNeverMeasuredAreLikeNoOther) {
    const std::vector photos{taken(1, milliseconds{0}, 0), taken(2, milliseconds{0}, 0)};
    EXPECT_TRUE(find_near_duplicates(photos).empty());
}

// Photos whose fingerprints lie near a few others, so that groups touch and nearly touch.
std::vector<Photo> random_photos() {
    const auto count = *rc::gen::inRange(0, 40);
    std::vector<Photo> photos;
    for (int id = 1; id <= count; ++id) {
        Fingerprint fingerprint =
            *rc::gen::elementOf(std::vector<Fingerprint>{some_picture, ~some_picture, 1, 0});
        const int flips = *rc::gen::inRange(0, 8);
        for (int i = 0; i < flips; ++i) fingerprint ^= Fingerprint{1} << *rc::gen::inRange(0, 64);
        auto photo = taken(id, milliseconds{*rc::gen::inRange(0, 30'000)}, fingerprint,
                           *rc::gen::inRange(0, 4));
        photo.file.device = DeviceId{*rc::gen::inRange<std::int64_t>(1, 3)};
        if (*rc::gen::inRange(0, 5) == 0) photo.flaws = {Flaw::moved};
        photos.push_back(photo);
    }
    return photos;
}

using Groupings = std::set<std::set<PhotoId>>;

Groupings as_sets(const Groups& groups) {
    Groupings sets;
    for (const auto& group : groups) sets.emplace(group.begin(), group.end());
    return sets;
}

// By spreading from each photo to all that it is joined with, until nothing is added.
template <class Joined>
Groupings by_spreading(const std::vector<Photo>& photos, Joined joined) {
    Groupings sets;
    for (const Photo& start : photos) {
        std::set<PhotoId> reached{start.id};
        for (std::size_t size = 0; size != reached.size();) {
            size = reached.size();
            for (const Photo& one : photos) {
                for (const Photo& other : photos) {
                    if (reached.contains(one.id) && joined(one, other)) reached.insert(other.id);
                }
            }
        }
        if (reached.size() > 1) sets.insert(reached);
    }
    return sets;
}

RC_GTEST_PROP(NearDuplicates, AgreeWithComparingEveryPair, ()) {
    const auto photos = random_photos();
    const auto alike = [](const Photo& one, const Photo& other) {
        return one.fingerprint != 0 && other.fingerprint != 0 &&
               bits_apart(one.fingerprint, other.fingerprint) <= near_duplicate_bits;
    };
    RC_ASSERT(as_sets(find_near_duplicates(photos)) == by_spreading(photos, alike));
}

// Nothing of the same device lies between the two.
bool neighbours(const std::vector<Photo>& photos, const Photo& one, const Photo& other) {
    const auto key = [](const Photo& photo) { return std::pair(*photo.moment, photo.id); };
    const auto [first, last] = std::minmax({key(one), key(other)});
    return one.id != other.id && one.file.device == other.file.device &&
           std::none_of(photos.begin(), photos.end(), [&](const Photo& photo) {
               return photo.file.device == one.file.device && first < key(photo) &&
                      key(photo) < last;
           });
}

RC_GTEST_PROP(Bursts, AgreeWithComparingEveryPair, ()) {
    const auto photos = random_photos();
    const auto in_a_row = [&](const Photo& one, const Photo& other) {
        return neighbours(photos, one, other) &&
               std::chrono::abs(*one.moment - *other.moment) <= burst_gap &&
               bits_apart(one.fingerprint, other.fingerprint) <= burst_bits;
    };
    RC_ASSERT(as_sets(find_bursts(photos)) == by_spreading(photos, in_a_row));
}

RC_GTEST_PROP(NearDuplicates, NoPhotoIsBetterThanTheFirstOfItsGroup, ()) {
    const auto photos = random_photos();
    const auto find = [&](PhotoId id) { return photos[static_cast<std::size_t>(id.value - 1)]; };
    for (const auto& group : find_near_duplicates(photos)) {
        const Photo first = find(group.front());
        for (const PhotoId id : group) {
            const Photo photo = find(id);
            if (!first.flaws.empty()) RC_ASSERT(!photo.flaws.empty());
            if (first.flaws.empty() == photo.flaws.empty()) {
                RC_ASSERT(photo.measures.focus <= first.measures.focus);
            }
        }
    }
}

}  // namespace
}  // namespace quarterturn
