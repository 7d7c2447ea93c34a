#include "indexer/looks/wedding_board.h"

#include "indexer/looks/board_words.h"
#include "indexer/record/caution.h"
#include "tests/indexer/looks/whole_look.h"

namespace quarterturn {
namespace {

using Sentences = std::vector<std::string>;

class BoardOfAWedding : public testing::Test, public WholeLook {
  protected:
    BoardOfAWedding() {
        aunt = library.clients().add(client_called("Aud Vale"));
        Wedding day = *library.weddings().find(wedding);
        day.party.push_back({aunt, "aunt"});
        library.weddings().change(day);
        save([](Recipe& recipe) {
            recipe.build[0].setting.cooling_minutes = 15;
            recipe.build[0].waiting_minutes = 20;
            recipe.build.push_back({"wind the ends on the tongs", 5, {}, 10});
            recipe.finish_details.spray = Hold::light;
        });
    }

    template <class Change>
    void save(Change change) {
        Recipe recipe = library.recipes().current(look)->recipe;
        change(recipe);
        library.recipes().save(look, recipe, at("2026-11-07T12:05"));
    }

    LookId evening_look() {
        Look waves;
        waves.client = mira;
        waves.wedding = wedding;
        waves.name = "let down in waves";
        waves.worn = Worn::evening;
        waves.sittings = {trial};
        return library.looks().add(waves);
    }

    WeddingBoard board() { return wedding_board(library, wedding); }
    BoardLook only_look() { return board().clients.at(0).looks.at(0); }

    ClientId aunt;
};

TEST_F(BoardOfAWedding, IsInTheOrderOfWork) {
    EXPECT_EQ(board().clients.at(0).client.id, mira);  // the aunt has no place yet
    EXPECT_EQ(board().clients.at(1).seats.size(), 0U);
    ASSERT_EQ(board().remarks.size(), 1U);
    EXPECT_TRUE(holds(board().remarks[0], "Aud Vale has no look"));

    Morning morning = library.mornings().of(wedding);
    wish_of(morning, aunt).work = ChairWork{.before = 30};
    wish_of(morning, aunt).first = true;
    wish_of(morning, aunt).ready_by = 700;
    library.mornings().save(wedding, morning);
    const WeddingBoard planned = board();
    ASSERT_EQ(planned.clients.size(), 2U);
    EXPECT_EQ(planned.clients[0].client.name, "Aud Vale");
    EXPECT_EQ(planned.clients[0].role, "aunt");
    EXPECT_EQ(planned.clients[0].ready_by, "11:40");
    EXPECT_EQ(planned.clients[1].ready_by, "12:30");
    EXPECT_EQ(planned.clients[1].seats.size(), 2U);
    EXPECT_TRUE(planned.remarks.empty());
    EXPECT_TRUE(holds(chair_text(planned, planned.clients[1]), " and 12:2")) << "set, then finish";
}

TEST_F(BoardOfAWedding, ClipsComeOutAgainAndAreCountedApartFromPins) {
    save([](Recipe& recipe) {
        recipe.build[0].pins.push_back({"section clip", "steel", 22, false});
    });
    EXPECT_EQ(pins_count_text(only_look().steps[0]), "14 pins, 22 clips");
    EXPECT_EQ(only_look().pins(), 14);
}

TEST_F(BoardOfAWedding, StepsSayPinsCautionsAndWhatWaits) {
    const BoardLook shown = only_look();
    ASSERT_EQ(shown.steps.size(), 2U);
    EXPECT_EQ(shown.steps[0].pins, 14);
    EXPECT_EQ(shown.steps[0].waiting_minutes, 15);  // cooling goes before other waits
    EXPECT_EQ(shown.steps[0].waits_for, "cooling");
    EXPECT_EQ(shown.steps[0].cautions, Sentences{});
    EXPECT_EQ(wait_text(shown.steps[1]), "10 min waiting");
    EXPECT_EQ(shown.steps[1].cautions, Sentences{heat_caution});
    EXPECT_EQ(shown.after_build_cautions, Sentences{flammable_spray_caution});
    EXPECT_EQ(shown.before_build.front().heading, "Hair on the day");
    EXPECT_EQ(shown.before_build.back().heading, "Parting");
    EXPECT_EQ(shown.after_build.front().heading, "Accessory");
    EXPECT_EQ(shown.after_build.back().heading, "Time");
    EXPECT_EQ(board().clients[0].cautions, Sentences{"none known"});
    EXPECT_EQ(board().clients[1].cautions,
              Sentences{"No allergies or tender spots are noted. Ask before starting."});
}

TEST_F(BoardOfAWedding, ATickHoldsWhileTheStepSaysTheSame) {
    library.boards().tick(wedding, look, {0, only_look().steps[0].words});
    reopen();
    EXPECT_TRUE(only_look().steps[0].done);
    EXPECT_EQ(all_pins_text(only_look()), "Pins: 14 of 14 in.");
    save([](Recipe& recipe) { recipe.build[0].pins[0].count = 16; });
    EXPECT_FALSE(only_look().steps[0].done);
    EXPECT_EQ(only_look().pins_in(), 0);
    EXPECT_EQ(only_look().pins(), 16);
}

TEST_F(BoardOfAWedding, SaysHowTheLookStandsAndWhatChanged) {
    EXPECT_EQ(only_look().standing, "Not signed off.");
    ASSERT_EQ(sign(), Sentences{});
    EXPECT_EQ(only_look().standing, "Signed off on 7 November 2026.");
    EXPECT_EQ(only_look().changes, Sentences{});
    save([](Recipe& recipe) { recipe.parting = "right"; });
    EXPECT_EQ(only_look().changes.size(), 1U);
    Recipe written = library.recipes().current(look)->recipe;
    written.parting = "none";
    library.recipes().keep_draft(look, written, at("2026-11-08T09:00"));
    EXPECT_EQ(only_look().changes.size(), 2U);
    EXPECT_EQ(only_look().recipe()->parting, "right");  // what is saved stands
}

TEST_F(BoardOfAWedding, ShowsTheTrialAlsoWhenSharperPhotosOfTheDayAreThere) {
    Sitting day;
    day.client = mira;
    day.wedding = wedding;
    day.kind = SittingKind::wedding_day;
    day.starts = at("2026-11-21T09:00");
    day.ends = at("2026-11-21T12:00");
    const SittingId today = library.sittings().add(day);
    const auto of_the_day = [&](const char* name, Angle angle) {
        const PhotoId id = add_photo(name, {Stage::after, angle});
        tag(id, [&](Tags& tags) { tags.sitting = today; });
        library.photos().set_measured(id, {.focus = 1e6}, 0, {}, {});
        return id;
    };
    of_the_day("DAY_1.JPG", Angle::back);
    const PhotoId crown = of_the_day("DAY_2.JPG", Angle::crown);
    const BoardLook shown = only_look();
    ASSERT_EQ(shown.shots.size(), 5U);
    const std::vector<Angle> order{Angle::left, Angle::front, Angle::right, Angle::back,
                                   Angle::crown};
    for (std::size_t i = 0; i < order.size(); ++i) EXPECT_EQ(shown.shots[i].angle, order[i]);
    EXPECT_NE(shown.shots[3].photo->tags.sitting, today);
    EXPECT_EQ(shown.shots[4].photo->id, crown);  // there is no other of the crown
}

TEST_F(BoardOfAWedding, AFlawedPhotoLeavesAnEmptyFrameThatSaysWhy) {
    for (const PhotoId id : photos) {
        if (library.photos().find(id)->tags.angle != Angle::back) continue;
        library.photos().set_measured(id, {}, 0, {}, {Flaw::out_of_focus});
    }
    const BoardShot back = only_look().shots.at(3);
    EXPECT_FALSE(back.photo);
    EXPECT_EQ(back.empty, "The best after photo of the back is out of focus.");
}

TEST_F(BoardOfAWedding, LooksComeInTheOrderTheyAreWorn) {
    const LookId waves = evening_look();
    const auto looks = board().clients.at(0).looks;
    ASSERT_EQ(looks.size(), 2U);
    EXPECT_EQ(looks[0].state.look.id, look);
    EXPECT_EQ(looks[1].state.look.id, waves);
    EXPECT_EQ(looks[1].recipe(), nullptr);
    EXPECT_THROW(wedding_board(library, WeddingId{99}), StoreError);
}

TEST_F(BoardOfAWedding, TheWeddingOfADayIsTheOneThatMustBeReadyFirst) {
    Wedding other;
    other.name = "Early";
    other.date = parse_date("2026-11-21").value();
    other.ready_by = "09:15";
    const WeddingId early = library.weddings().add(other);
    other.name = "Without a time";
    other.ready_by = "";
    library.weddings().add(other);
    EXPECT_EQ(wedding_of(library, parse_date("2026-11-21").value()), early);
    EXPECT_EQ(wedding_of(library, parse_date("2026-11-22").value()), std::nullopt);
}

TEST(DrawingOfTheBoard, MarksAnAccessoryOnce) {
    Recipe recipe;
    recipe.head_plan.marks = {{3, {-0.6, 0.3}, "comb"}};
    Piece comb;
    comb.what = "comb";
    comb.at = PlanPoint{-0.61, 0.3};
    Piece flower = comb;
    flower.what = "flower";
    flower.at = PlanPoint{0.5, 0};
    Piece padding = flower;
    padding.kind = PieceKind::padding;
    padding.at = PlanPoint{0, 0.9};
    recipe.pieces = {comb, flower, padding};
    const HeadDrawing drawing = drawing_with_accessories(recipe);
    ASSERT_EQ(drawing.marks.size(), 2U);
    EXPECT_EQ(drawing.marks[1], (PlanMark{4, {0.5, 0}, "flower"}));
}

}  // namespace
}  // namespace quarterturn
