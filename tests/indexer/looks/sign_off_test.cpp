#include "indexer/looks/sign_off.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "tests/indexer/looks/whole_look.h"
#include "tests/support/failing_disk.h"

namespace quarterturn {
namespace {

using Sentences = std::vector<std::string>;

TEST(SignOff, SealsEveryPhotoAndTheRecipe) {
    WholeLook whole;
    EXPECT_EQ(whole.sign(), Sentences{});
    const LookState state = whole.state();
    ASSERT_TRUE(state.sign_off);
    EXPECT_EQ(state.sign_off->signed_at, whole.noon);
    EXPECT_EQ(state.sign_off->seal.photos.size(), 8U);
    EXPECT_EQ(state.sign_off->seal.recipe_sha256, sha256(recipe_json(whole_recipe())));
    EXPECT_EQ(state.changes_since, Sentences{});
}

TEST(SignOff, StandsAfterARestart) {
    WholeLook whole;
    whole.sign();
    whole.reopen();
    EXPECT_TRUE(whole.state().sign_off);
    EXPECT_EQ(whole.state().changes_since, Sentences{});
}

TEST(SignOff, IsRefusedWithReasonsWhileSomethingIsMissing) {
    WholeLook whole;
    whole.tag(whole.photos[7], [](Tags& tags) { tags.angle.reset(); });
    Recipe recipe = whole_recipe();
    recipe.parting.clear();
    whole.library.recipes().save(whole.look, recipe, whole.noon);
    const auto reasons = whole.sign();
    ASSERT_EQ(reasons.size(), 2U);
    EXPECT_EQ(reasons[0], "No after photo of the back.");
    EXPECT_TRUE(holds(reasons[1], "parting"));
    EXPECT_FALSE(whole.state().sign_off);
}

TEST(SignOff, AWaivedLineNoLongerStandsAgainstIt) {
    WholeLook whole;
    whole.tag(whole.photos[7], [](Tags& tags) { tags.angle.reset(); });
    whole.library.looks().waive(whole.look, {{Stage::after, Angle::back}, "she was called away"});
    EXPECT_EQ(whole.sign(), Sentences{});
    EXPECT_EQ(whole.state().sign_off->seal.waivers.size(), 1U);
}

TEST(SignOff, APictureThatIsNoLongerTheSameIsNamed) {
    WholeLook whole;
    const Photo photo = *whole.library.photos().find(whole.photos[2]);
    whole.write_file(photo, "something else");
    const auto reasons = whole.sign();
    ASSERT_EQ(reasons.size(), 1U);
    EXPECT_TRUE(holds(reasons[0], photo.file.path)) << reasons[0];
    EXPECT_FALSE(whole.state().sign_off);
}

TEST(SignOff, AFileThatIsGoneIsNamed) {
    WholeLook whole;
    const Photo photo = *whole.library.photos().find(whole.photos[2]);
    std::filesystem::remove(whole.library.photo_file(photo));
    const auto reasons = whole.sign();
    ASSERT_EQ(reasons.size(), 1U);
    EXPECT_TRUE(holds(reasons[0], photo.file.path)) << reasons[0];
}

// A disk on which something happens while a file is read.
class EventfulDisk : public FailingDisk {
  public:
    std::function<void()> event;

    void read_back(const Path& file,
                   const std::function<void(std::span<const std::byte>)>& take) override {
        if (event) std::exchange(event, nullptr)();
        FailingDisk::read_back(file, take);
    }
};

TEST(SignOff, NothingIsSignedThatChangedWhileItWasRead) {
    WholeLook whole;
    EventfulDisk disk;
    Library watched = Library::open(whole.folder / "library", disk);
    disk.event = [&] { whole.tag(whole.photos[0], [](Tags& tags) { tags.mirrored = true; }); };
    const auto reasons = sign_off(watched, whole.look, whole.noon);
    ASSERT_EQ(reasons.size(), 2U);
    EXPECT_TRUE(holds(reasons[0], "mirrored"));
    EXPECT_FALSE(whole.state().sign_off);
}

TEST(SignOff, ASecondOneAsksForReopeningFirst) {
    WholeLook whole;
    whole.sign();
    ASSERT_EQ(whole.sign().size(), 1U);
    EXPECT_TRUE(holds(whole.sign()[0], "signed off already, since 2026-11-07"));
    reopen(whole.library, whole.look, "the comb moved", whole.noon);
    EXPECT_FALSE(whole.state().sign_off);
    EXPECT_EQ(whole.sign(), Sentences{});
    const auto all = whole.library.sign_offs().all(whole.look);
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].reopened_because, "the comb moved");
}

TEST(Reopen, AsksForAReasonAndForASignOff) {
    WholeLook whole;
    EXPECT_THROW(reopen(whole.library, whole.look, "why not", whole.noon), StoreError);
    whole.sign();
    EXPECT_THROW(reopen(whole.library, whole.look, " ", whole.noon), StoreError);
    EXPECT_TRUE(whole.state().sign_off);
}

TEST(SignOff, UndoStopsAtItAndAtReopening) {
    WholeLook whole;
    whole.sign();
    reopen(whole.library, whole.look, "the comb moved", whole.noon);
    for (const char* said : {"opened low twisted bun again", "signed off low twisted bun"}) {
        const auto turned = whole.library.history().undo();
        ASSERT_TRUE(turned);
        EXPECT_EQ(turned->said, said);
        EXPECT_TRUE(turned->stands);
    }
    EXPECT_EQ(whole.library.sign_offs().all(whole.look).size(), 1U);
    EXPECT_FALSE(whole.library.history().undo()->stands);
}

TEST(ChangesSinceSignOff, WhatWasMadeOnTheDayIsNone) {
    WholeLook whole;
    whole.sign();
    Sitting day;
    day.kind = SittingKind::wedding_day;
    day.client = whole.mira;
    day.wedding = whole.wedding;
    day.starts = at("2026-11-21T09:00");
    day.ends = at("2026-11-21T10:00");
    const SittingId there = whole.library.sittings().add(day);
    const PhotoId made = whole.add_photo("IMG_0600.JPG", {Stage::after, Angle::back});
    EXPECT_EQ(whole.state().changes_since.size(), 1U);
    whole.tag(made, [&](Tags& tags) { tags.sitting = there; });
    EXPECT_EQ(whole.state().changes_since, std::vector<std::string>{});
    // What was sealed stays what was agreed, wherever it is placed.
    whole.tag(whole.photos[0], [&](Tags& tags) {
        tags.sitting = there;
        tags.angle = Angle::detail;
    });
    EXPECT_EQ(whole.state().changes_since.size(), 1U);
}

TEST(ChangesSinceSignOff, NameTheNewPhotoTheRecipeAndTheTag) {
    WholeLook whole;
    whole.sign();
    whole.add_photo("IMG_0600.JPG", {Stage::after, Angle::crown});
    Recipe recipe = whole_recipe();
    recipe.parting = "right";
    whole.library.recipes().save(whole.look, recipe, whole.noon);
    whole.tag(whole.photos[0], [](Tags& tags) { tags.angle = Angle::detail; });
    const auto changes = whole.state().changes_since;
    ASSERT_EQ(changes.size(), 3U);
    EXPECT_TRUE(holds(changes[0], "is now tagged \"before, detail\""));
    EXPECT_EQ(changes[1], "IMG_0600.JPG was added since.");
    EXPECT_EQ(changes[2], "Its recipe was changed.");
}

// What she does after signing off; each can be undone.
void do_something(WholeLook& whole) {
    const PhotoId photo = *rc::gen::elementOf(whole.photos);
    switch (*rc::gen::inRange(0, 5)) {
        case 0:
            return whole.tag(photo, [](Tags& tags) { tags.mirrored = !tags.mirrored; });
        case 1:
            return whole.tag(photo,
                             [](Tags& tags) { tags.angle = *rc::gen::elementOf(all_angles); });
        case 2:
            return whole.tag(photo, [](Tags& tags) { tags.look.reset(); });
        case 3:
            return whole.tag(photo, [](Tags& tags) { tags.accepted_because = "it will do"; });
        default:
            return whole.tag(photo, [](Tags& tags) { tags.note += "a note"; });
    }
}

std::vector<Tags> all_tags(WholeLook& whole) {
    std::vector<Tags> tags;
    for (const Photo& photo : whole.library.photos().all()) tags.push_back(photo.tags);
    return tags;
}

// A note says nothing of what the photo stands for.
std::vector<Tags> without_notes(std::vector<Tags> all) {
    for (Tags& tags : all) tags.note.clear();
    return all;
}

TEST(ChangesSinceSignOff, AreThereWhenATagThatMattersChangedAndGoneWhenAllIsUndone) {
    WholeLook whole;
    whole.sign();
    const auto sealed = all_tags(whole);
    const bool holds_always = rc::check([&] {
        const int count = *rc::gen::inRange(0, 4);
        for (int i = 0; i < count; ++i) do_something(whole);
        const bool same = without_notes(all_tags(whole)) == without_notes(sealed);
        const auto changes = whole.state().changes_since;
        while (all_tags(whole) != sealed) {
            if (!whole.library.history().undo()) RC_FAIL("undo does not lead back");
        }
        RC_ASSERT(changes.empty() == same);
        RC_ASSERT(whole.state().changes_since.empty());
    });
    EXPECT_TRUE(holds_always);
}

}  // namespace
}  // namespace quarterturn
