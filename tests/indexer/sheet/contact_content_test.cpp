#include "indexer/sheet/contact_content.h"

#include "tests/indexer/sheet/example_look.h"

namespace quarterturn {
namespace {

SheetContent content_of(ExampleLook& look, bool during = false) {
    return contact_content(look.state(), {.paper = Paper::a4, .during = during}, "/library");
}

std::vector<std::string> titles(const SheetBand& band) {
    std::vector<std::string> result;
    for (const SheetCell& cell : band.cells) result.push_back(cell.title);
    return result;
}

std::vector<std::string> names(const std::vector<SheetBand>& bands) {
    std::vector<std::string> result;
    for (const SheetBand& band : bands) result.push_back(band.name);
    return result;
}

std::map<std::string, int> files(const SheetContent& content) {
    std::map<std::string, int> count;
    for (const auto* bands : {&content.bands, &content.more}) {
        for (const SheetBand& band : *bands) {
            for (const SheetCell& cell : band.cells) {
                if (cell.photo) ++count[cell.photo->item.file.filename().string()];
            }
        }
    }
    return count;
}

using Strings = std::vector<std::string>;

TEST(ContactContent, ColumnsReadLeftFrontRightBackAndRowsBeforeAfter) {
    ExampleLook look;
    for (const Angle angle : {Angle::back, Angle::right, Angle::front, Angle::left}) {
        look.add(Stage::after, angle);
        look.add(Stage::before, angle);
    }
    const SheetContent content = content_of(look);
    ASSERT_EQ(names(content.bands), (Strings{"Before", "After"}));
    for (const SheetBand& band : content.bands) {
        EXPECT_EQ(titles(band), (Strings{"Left", "Front", "Right", "Back"}));
    }
    EXPECT_EQ(content.bands[1].cells[0].photo->item.file, Path("/library/photos/shot7.jpg"));
    EXPECT_EQ(content.bands[1].cells[0].time, "10:07");
}

TEST(ContactContent, DuringHasARowOnlyWhenAskedFor) {
    ExampleLook look;
    look.add_all_quarters(Stage::before);
    look.add_all_quarters(Stage::during);
    look.add_all_quarters(Stage::after);
    EXPECT_EQ(names(content_of(look, true).bands), (Strings{"Before", "During", "After"}));
    const SheetContent without = content_of(look, false);
    EXPECT_EQ(names(without.bands), (Strings{"Before", "After"}));
    EXPECT_EQ(names(without.more), (Strings{"More frames"}));
}

TEST(ContactContent, AMissingShotIsAnEmptyFrameThatSaysSo) {
    ExampleLook look;
    look.add_all_quarters(Stage::before);
    look.add(Stage::after, Angle::left);
    const SheetCell right = content_of(look).bands.at(1).cells.at(2);
    EXPECT_FALSE(right.photo);
    EXPECT_EQ(right.title, "Right");
    EXPECT_EQ(right.empty, "missing\nafter, right");
}

TEST(ContactContent, AWaivedShotSaysWhy) {
    ExampleLook look;
    look.add_all_quarters(Stage::before);
    look.waivers = {{{Stage::after, Angle::front}, "her veil was on"}};
    const SheetCell front = content_of(look).bands.at(1).cells.at(1);
    EXPECT_FALSE(front.photo);
    EXPECT_EQ(front.empty, "waived\nafter, front\nher veil was on");
}

TEST(ContactContent, AFlawedPhotoStandsForItsLineOnlyWhenThereIsNoBetter) {
    ExampleLook look;
    look.add(Stage::after, Angle::left, {Flaw::out_of_focus});
    look.add(Stage::after, Angle::back, {Flaw::too_dark});
    look.add(Stage::after, Angle::back);
    const SheetContent content = content_of(look);
    const SheetBand& after = content.bands.at(1);
    EXPECT_EQ(after.cells.at(0).note, "out of focus");
    EXPECT_EQ(after.cells.at(3).note, "");
    EXPECT_EQ(files(content).count("shot2.jpg"), 0U);
}

TEST(ContactContent, CaptionsSayWhyAFlawedPhotoIsUsedAndThatAMirroredOneIsTurned) {
    ExampleLook look;
    Photo& photo = look.add(Stage::after, Angle::left, {Flaw::too_dark, Flaw::moved});
    photo.tags.accepted_because = "candles only";
    photo.tags.mirrored = true;
    const SheetCell cell = content_of(look).bands.at(1).cells.at(0);
    EXPECT_EQ(cell.note, "too dark, moved · accepted: candles only · mirrored, turned");
    EXPECT_TRUE(cell.photo->item.mirrored);
}

TEST(ContactContent, APhotoWithoutATimeSaysSo) {
    ExampleLook look;
    look.add(Stage::after, Angle::left).moment.reset();
    EXPECT_EQ(content_of(look).bands.at(1).cells.at(0).note, "time unknown");
}

TEST(ContactContent, FurtherAnglesFollowInTheirOrderAndOnlyRequiredOnesAreMissed) {
    ExampleLook look;
    look.add_all_quarters(Stage::after);
    look.add(Stage::after, Angle::detail);
    look.add(Stage::after, Angle::crown);
    look.add(Stage::before, Angle::crown);
    look.shot_list.push_back({{Stage::before, Angle::detail}, Need::required});
    const SheetContent content = content_of(look);
    ASSERT_EQ(content.bands.back().name, "Further angles");
    EXPECT_EQ(titles(content.bands.back()),
              (Strings{"Crown", "Detail", "Crown, before", "Detail, before"}));
    EXPECT_EQ(content.bands.back().cells.back().empty, "missing\nbefore, detail");
}

TEST(ContactContent, HeaderSaysWhoWhenWhatAndHowComplete) {
    ExampleLook look;
    look.add_all_quarters(Stage::after);
    LookState& state = look.state();
    SheetHeader header = contact_content(state, {}, "/library").header;
    EXPECT_EQ(header.client, "Mira Okonjo-Lindqvist");
    EXPECT_EQ(header.lines,
              (Strings{"Low twisted bun, worn for the ceremony", "Okonjo-Lindqvist and Vale",
                       "21 November 2026, The Old Granary"}));
    EXPECT_EQ(header.state, "Not signed off");
    EXPECT_EQ(header.ring.value(),
              (Ring{Quarter::partly, Quarter::partly, Quarter::partly, Quarter::partly}));
    EXPECT_EQ(header.sentence, state.coverage.next_shot);

    state.sign_off = SignOff{};
    state.sign_off->signed_at = moment("2026-11-07T12:30");
    EXPECT_EQ(contact_content(state, {}, "/").header.state, "Signed off 7 November 2026");
    state.changes_since = {"the recipe has changed"};
    EXPECT_EQ(contact_content(state, {}, "/").header.state,
              "Signed off 7 November 2026, changed since");
}

TEST(ContactContent, CautionsStandAtTheHeadOfTheRecipeAndOnlyThere) {
    ExampleLook look;
    RecipeRevision revision;
    revision.number = 2;
    revision.recipe.cautions = "No latex.";
    revision.recipe.heat_tool = HeatTool{"curling iron", 25, 160};
    revision.recipe.parting = "centre";
    look.state().recipe = revision;
    const SheetRecipe recipe = content_of(look).recipe.value();
    EXPECT_EQ(recipe.heading, "Recipe, revision 2");
    ASSERT_EQ(recipe.cautions.size(), 2U);
    EXPECT_EQ(recipe.cautions[0], "Caution: No latex.");
    EXPECT_NE(recipe.cautions[1].find("curling iron, 25 mm, 160 °C"), std::string::npos);
    for (const RecipePart& part : recipe.parts) EXPECT_NE(part.lines.front(), "No latex.");
    look.state().recipe->recipe.cautions.clear();
    EXPECT_NE(content_of(look).recipe->cautions[0].find("Ask before starting"), std::string::npos);
}

TEST(ContactContent, WhatIsDrawnOnTheHeadStandsAsADrawingAndNotOnceMoreInWords) {
    ExampleLook look;
    RecipeRevision revision;
    revision.recipe.parting = "centre";
    look.state().recipe = revision;
    EXPECT_FALSE(content_of(look).recipe->drawing);
    look.state().recipe->recipe.head_plan.marks = {{1, {0, 0}, "comb"}};
    const SheetRecipe recipe = content_of(look).recipe.value();
    ASSERT_TRUE(recipe.drawing);
    EXPECT_EQ(recipe.drawing->lines, (std::vector<std::string>{"Mark 1: comb"}));
    for (const RecipePart& part : recipe.parts) EXPECT_NE(part.heading, "Head plan");
}

// Whatever the photos and tags: each usable photo of the look once, none twice, and of the others
// at most one for each line.
RC_GTEST_PROP(ContactContent, EveryUsablePhotoStandsOnTheSheetOnce, (bool during)) {
    ExampleLook look;
    const int count = *rc::gen::inRange(0, 40);
    for (int i = 0; i < count; ++i) {
        const auto stage = *rc::gen::maybe(rc::gen::elementOf(all_stages));
        const auto angle = *rc::gen::maybe(rc::gen::elementOf(all_angles));
        Photo& photo = look.add(stage ? std::optional(*stage) : std::nullopt,
                                angle ? std::optional(*angle) : std::nullopt);
        if (*rc::gen::inRange(0, 4) == 0) photo.flaws = {Flaw::moved};
        photo.measures.focus = *rc::gen::inRange(0, 5);
    }
    const auto count_of = files(content_of(look, during));
    for (const Photo& photo : look.state().photos) {
        const auto found = count_of.find(photo.file.name);
        const int times = found == count_of.end() ? 0 : found->second;
        RC_ASSERT(times <= 1);
        RC_ASSERT(times == 1 || !usable(photo));
    }
}

TEST(SittingContent, EveryFrameStandsInTheOrderOfTimeWithItsName) {
    ExampleLook look;
    look.add(Stage::before, Angle::left);
    look.add(std::nullopt, std::nullopt, {Flaw::moved});
    SittingState state;
    state.client.name = "Mira Okonjo-Lindqvist";
    state.sitting.starts = moment("2026-11-07T10:00");
    state.sitting.ends = moment("2026-11-07T12:30");
    state.photos = look.state().photos;
    const SheetContent content = sitting_content(state, "/library");
    EXPECT_EQ(content.header.lines, (Strings{"Trial, 7 November 2026, 10:00 to 12:30"}));
    ASSERT_EQ(content.more.size(), 1U);
    ASSERT_EQ(content.more[0].cells.size(), 2U);
    EXPECT_EQ(content.more[0].cells[0].title, "Left");
    EXPECT_EQ(content.more[0].cells[0].note, "10:01 · before\nshot1.jpg");
    EXPECT_EQ(content.more[0].cells[1].title, "Angle not tagged");
    EXPECT_EQ(content.more[0].cells[1].note, "10:02 · no stage yet\nshot2.jpg\nmoved");
}

// As a sitting that was made of one photo.
TEST(SittingContent, ASittingOfOneMomentNamesItOnce) {
    SittingState state;
    state.sitting.starts = moment("2026-11-07T10:00");
    state.sitting.ends = state.sitting.starts;
    const SheetContent content = sitting_content(state, "/library");
    EXPECT_EQ(content.header.lines, (Strings{"Trial, 7 November 2026, 10:00"}));
}

}  // namespace
}  // namespace quarterturn
