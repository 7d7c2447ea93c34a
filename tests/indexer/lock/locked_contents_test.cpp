#include "indexer/lock/locked_contents.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "indexer/lock/locked_name.h"

namespace quarterturn {
namespace {

const LibraryKeys& keys() {
    static const KeysInHand made = new_library_keys();
    return *made;
}

// As long as it is; none of its pieces are alike.
Bytes numbered_bytes(std::size_t length) {
    Bytes bytes(length);
    for (std::size_t i = 0; i < length; ++i) bytes[i] = std::byte(i * 7 + i / 251);
    return bytes;
}

// Nothing where damage was noticed.
std::optional<Bytes> unlocked(const LibraryKeys& with, const Bytes& locked,
                              std::size_t piece = 1000) try {
    Bytes bytes;
    ContentsReader reader(with, [&](std::span<const std::byte> part) {
        bytes.insert(bytes.end(), part.begin(), part.end());
    });
    for (std::span<const std::byte> rest = locked; !rest.empty();) {
        const auto part = rest.first(std::min(piece, rest.size()));
        reader.feed(part);
        rest = rest.subspan(part.size());
    }
    reader.end();
    return bytes;
} catch (const DamagedContents&) {
    return std::nullopt;
}

constexpr std::size_t piece = 65536;

TEST(LockedContents, ComeBackWhateverTheirLength) {
    for (const std::size_t length :
         {std::size_t{0}, std::size_t{1}, piece - 1, piece, piece + 1, 2 * piece, 3 * piece + 17}) {
        const Bytes bytes = numbered_bytes(length);
        const Bytes locked = locked_contents(keys(), bytes);
        EXPECT_EQ(std::ssize(locked), locked_size(std::ssize(bytes)));
        EXPECT_EQ(unlocked_size(std::ssize(locked)), std::ssize(bytes));
        EXPECT_EQ(unlocked(keys(), locked), bytes);
        EXPECT_EQ(unlocked(keys(), locked, locked.size()), bytes);
    }
}

TEST(LockedContents, AreNeverTwiceTheSame) {
    const Bytes bytes = numbered_bytes(100);
    EXPECT_NE(locked_contents(keys(), bytes), locked_contents(keys(), bytes));
}

TEST(LockedContents, OpenWithNoOtherKey) {
    const Bytes locked = locked_contents(keys(), numbered_bytes(100));
    EXPECT_FALSE(unlocked(*new_library_keys(), locked));
}

RC_GTEST_PROP(LockedContents, ShowAnyChange, ()) {
    const Bytes bytes = numbered_bytes(*rc::gen::elementOf(
        std::vector<std::size_t>{0, 5, piece - 1, piece, 2 * piece, 2 * piece + 9}));
    Bytes locked = locked_contents(keys(), bytes);
    const auto at = *rc::gen::inRange<std::size_t>(0, locked.size());
    switch (*rc::gen::inRange(0, 3)) {
        case 0:
            locked[at] ^= std::byte(1U << *rc::gen::inRange(0U, 8U));
            break;
        case 1:
            locked.resize(at);
            break;
        default:
            locked.insert(locked.begin() + static_cast<std::ptrdiff_t>(at), locked.begin(),
                          locked.begin() + 17);
    }
    RC_ASSERT(!unlocked(keys(), locked).has_value());
}

TEST(LockedContents, ShowPiecesThatChangedPlaces) {
    Bytes locked = locked_contents(keys(), numbered_bytes(3 * piece));
    const auto first = locked.begin() + 28;
    std::swap_ranges(first, first + piece + 17, first + piece + 17);
    EXPECT_FALSE(unlocked(keys(), locked));
}

RC_GTEST_PROP(LockedName, ComesBackInItsFolderAlone, ()) {
    const auto name = *rc::gen::suchThat(
        rc::gen::container<std::string>(rc::gen::arbitrary<char>()), [](const std::string& text) {
            return !text.empty() && text.size() <= 255 && text.find('\0') == std::string::npos;
        });
    const std::string locked = lock_name(keys(), "photos/2026", name);
    RC_ASSERT(locked.find_first_not_of("abcdefghijklmnopqrstuvwxyz234567") == std::string::npos);
    RC_ASSERT(locked == lock_name(keys(), "photos/2026", name));
    RC_ASSERT(unlock_name(keys(), "photos/2026", locked) == name);
    RC_ASSERT(!unlock_name(keys(), "photos/2025", locked).has_value());
    RC_ASSERT(!unlock_name(*new_library_keys(), "photos/2026", locked).has_value());
}

TEST(LockedName, TakesTwoWhereOneWouldBeTooLong) {
    for (std::size_t length = 1; length <= 255; ++length) {
        const std::string name(length, 'n');
        const std::string locked = lock_name(keys(), "a", name);
        const Path place = place_of_locked_name(locked);
        for (const Path& part : place) EXPECT_LE(part.native().size(), 255U) << length;
        // As libraries were locked before there were two.
        EXPECT_EQ(place.has_parent_path(), length > 143) << length;
        const std::string front = place.parent_path().native();
        EXPECT_EQ(is_front_of_locked_name(front), length > 143) << length;
        EXPECT_FALSE(is_front_of_locked_name(place.filename().native())) << length;
        if (length <= 143) continue;
        const std::string joined = joined_locked_name(front, place.filename().native());
        EXPECT_EQ(unlock_name(keys(), "a", joined), name) << length;
        EXPECT_FALSE(looks_locked(front)) << length;
    }
}

}  // namespace
}  // namespace quarterturn
