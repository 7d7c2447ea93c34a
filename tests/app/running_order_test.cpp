#include "tests/app/boathouse.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class RunningOrderCommand : public BoathouseTest {};

TEST_F(RunningOrderCommand, PlansTheMorningAndTellsWhoCannotBePlanned) {
    EXPECT_NE(said({"running-order", "Boathouse"}, 3).find("Berit Lindqvist has no look"),
              std::string::npos);
    const json plan = answer({"running-order", "Boathouse", "--minutes", "Berit Lindqvist=30",
                              "--last", "Ada Lindqvist", "--arrival", "07:00"});
    EXPECT_EQ(plan["late_in_all"], 0);
    EXPECT_EQ(plan["stylists"][0]["arrives"], "07:00");
    EXPECT_EQ(plan["seats"][0]["begins"], "10:55");  // 12:30 less 22, 30 and 43 minutes
    EXPECT_EQ(plan["seats"].back()["client"], "Ada Lindqvist");
    EXPECT_EQ(plan["seats"].back()["ends"], "12:30");
    EXPECT_EQ(answer({"running-order", "Boathouse"}), plan);  // what was said is kept
}

TEST_F(RunningOrderCommand, WhereNobodyCanBePlannedItSaysWhatIsMissing) {
    said({"wedding", "add", "Orchard", "--date", "2027-06-05", "--ready-by", "12:30", "--party",
          "2=bride"});
    const std::string told = said({"running-order", "Orchard"}, 3);
    EXPECT_TRUE(says(told, "Berit Lindqvist")) << told;
    EXPECT_FALSE(says(told, "Nobody is in the party"));
    complained({"running-order", "Orchard", "--minutes", "Berit Lindqvist=0"}, 2);
}

TEST_F(RunningOrderCommand, WhoComesInAdditionComesWhenTheFirstDoes) {
    said({"running-order", "Boathouse", "--arrival", "06:30"}, 3);
    const nlohmann::json told = answer({"running-order", "Boathouse", "--stylists", "2"}, 3);
    ASSERT_EQ(told["stylists"].size(), 2U) << told;
    EXPECT_EQ(told["stylists"][0]["arrives"], told["stylists"][1]["arrives"]);
}

TEST_F(RunningOrderCommand, SaysWhatFollowsFromAMove) {
    said({"running-order", "Boathouse", "--minutes", "Berit Lindqvist=30"});
    const std::string moved =
        said({"running-order", "Boathouse", "--move", "Berit Lindqvist", "--at", "12:10"}, 3);
    EXPECT_NE(moved.find("Berit Lindqvist is ready at 12:40, 10 minutes late."), std::string::npos);
    EXPECT_TRUE(answer({"running-order", "Boathouse"}, 3)["by_hand"]);
    EXPECT_FALSE(answer({"running-order", "Boathouse", "--again"})["by_hand"]);
    complained({"running-order", "Boathouse", "--move", "Berit Lindqvist"}, 2);
    complained({"running-order", "Boathouse", "--finish"}, 2);
    complained({"running-order", "Boathouse", "--stylists", "5"}, 2);
    complained({"running-order", "Boathouse", "--break", "9 to 10"}, 2);
}

TEST_F(RunningOrderCommand, WhatWasSaidOfAClientIsTakenBack) {
    const json before = answer({"running-order", "Boathouse"}, 3);
    said({"running-order", "Boathouse", "--minutes", "Berit Lindqvist=30", "--ready-by",
          "Ada Lindqvist=11:00", "--comes", "Ada Lindqvist=08:00"});
    EXPECT_NE(answer({"running-order", "Boathouse"}), before);
    said({"running-order", "Boathouse", "--minutes", "Berit Lindqvist=none", "--ready-by",
          "Ada Lindqvist=none", "--comes", "Ada Lindqvist=none"},
         3);
    EXPECT_EQ(answer({"running-order", "Boathouse"}, 3), before);
}

TEST_F(RunningOrderCommand, KeepsNothingThatLeavesNoPlan) {
    const json plan = answer({"running-order", "Boathouse", "--minutes", "Berit Lindqvist=30",
                              "--minutes", "Ada Lindqvist=60"});
    complained(
        {"running-order", "Boathouse", "--first", "Ada Lindqvist", "--last", "Ada Lindqvist"}, 1);
    EXPECT_EQ(answer({"running-order", "Boathouse"}), plan);
}

TEST_F(RunningOrderCommand, SaysWhetherTheBookingIsPossible) {
    said({"running-order", "Boathouse", "--minutes", "Berit Lindqvist=30"});
    EXPECT_NE(said({"running-order", "Boathouse", "--check"}).find("All can be ready in time."),
              std::string::npos);
    const json late = answer({"running-order", "Boathouse", "--check", "--arrival", "11:00"}, 3);
    EXPECT_EQ(late["possible"], false);
    EXPECT_EQ(late["late_in_all"], 5);
}

TEST_F(RunningOrderCommand, IsPrintedWithEveryNameAndTime) {
    said({"running-order", "Boathouse", "--minutes", "Berit Lindqvist=30", "--break",
          "11:10-11:15"});
    const std::filesystem::path file = folder / "morning.pdf";
    const json plan = answer({"running-order", "Boathouse", "--out", file.string()});
    const std::string text = output_of("pdftotext -layout " + shell_word(file.string()) + " -");
    for (const json& seat : plan["seats"]) {
        const std::string times =
            seat["begins"].get<std::string>() + " to " + seat["ends"].get<std::string>();
        EXPECT_NE(text.find(times), std::string::npos) << times << text;
    }
    EXPECT_NE(text.find("Berit Lindqvist"), std::string::npos) << text;
    EXPECT_NE(text.find("mother"), std::string::npos) << text;
    EXPECT_NE(text.find("Ada Lindqvist cools"), std::string::npos) << text;
    complained({"running-order", "Boathouse", "--out", file.string()}, 2);
}

}  // namespace
}  // namespace quarterturn
