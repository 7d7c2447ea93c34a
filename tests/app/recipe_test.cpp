
#include "tests/app/program.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class RecipeCommands : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        said({"client", "add", "Séraphine Vašnovič"});
        said({"wedding", "add", "Boathouse", "--date", "2027-05-15", "--party", "1=bride"});
        said({"look", "add", "1", "Low bun", "--wedding", "Boathouse"});
    }
    void set(const Arguments& more) {
        Arguments arguments{"recipe", "set", "Low bun"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        said(arguments);
    }
    json recipe() { return answer({"recipe", "show", "Low bun"})["recipe"]; }
};

TEST_F(RecipeCommands, FieldsWithinAPartAreSetByName) {
    set({"--part", "heat_tool.kind=tongs", "--part", "heat_tool.barrel_mm=25", "--part",
         "parting_line.side=left", "--part", "build.1.words=twist", "--part", "build.2.words=pin",
         "--part", "build.2.pins.1.count=8", "--part", "feedback_details.yes_on=2026-11-07"});
    const json saved = recipe();
    EXPECT_EQ(saved["heat_tool"]["barrel_mm"], 25.0);
    EXPECT_EQ(saved["parting_line"]["side"], "left");
    EXPECT_EQ(saved["build"][1]["pins"][0]["count"], 8);
    EXPECT_EQ(saved["feedback_details"]["yes_on"], "2026-11-07");
    set({"--part", "heat_tool=null", "--part", "parting=25"});
    EXPECT_EQ(recipe()["heat_tool"], nullptr);
    EXPECT_EQ(recipe()["parting"], "25");
}

TEST_F(RecipeCommands, WhatIsNoValueOfAFieldSaysWhatIs) {
    const auto refused = [&](const char* part) {
        return complained({"recipe", "set", "Low bun", "--part", part}, 2);
    };
    EXPECT_NE(refused("parting_line.side=north").find("\"left\", \"middle\""), std::string::npos);
    EXPECT_NE(refused("build.5.words=twist").find("the next number is 1"), std::string::npos);
    EXPECT_NE(refused("parting.side=left").find("has no parts"), std::string::npos);
}

TEST_F(RecipeCommands, NumbersThatNoRecipeCanMeanAreNotSaved) {
    for (const char* part : {"build.1.pins.1.count=-5", "hands_on_minutes=-3",
                             "heat_tool.barrel_mm=1e300", "build.1.minutes=2147483647"}) {
        const std::string why = complained({"recipe", "set", "Low bun", "--part", part}, 1);
        EXPECT_NE(why.find("a number from 0 to"), std::string::npos) << why;
        complained({"recipe", "set", "Low bun", "--draft", "--part", part}, 1);
    }
    EXPECT_TRUE(answer({"recipe", "revisions", "Low bun"})["revisions"].empty());
}

TEST_F(RecipeCommands, TwoProgramsAtOnceLoseNoStep) {
    std::string at_once;
    for (const char* step : {"one", "two", "three", "four"}) {
        at_once += shell_word(QTURN_PROGRAM) + " recipe set 'Low bun' --step " + step +
                   " --library " + shell_word(library) + " >/dev/null & ";
    }
    output_of(at_once + "wait");
    EXPECT_EQ(recipe()["build"].size(), 4U);
}

TEST_F(RecipeCommands, WithRulesThatCannotBeReadNothingIsSaved) {
    std::filesystem::create_directory(library + "/recipe-rules.txt");
    complained({"recipe", "set", "Low bun", "--step", "3 pins"}, 1);
    EXPECT_TRUE(answer({"recipe", "revisions", "Low bun"})["revisions"].empty());
}

TEST_F(RecipeCommands, HerRemarksInTheRulesAreKeptBeside) {
    std::ofstream(library + "/recipe-rules.txt") << "\xEF\xBB\xBF# mine\nclient’s yes = off\n";
    EXPECT_TRUE(answer({"recipe", "rules", "--write"})["problems"].empty());
    EXPECT_NE(text_of(library + "/recipe-rules.txt").find("client's yes = off"), std::string::npos);
    EXPECT_NE(text_of(library + "/recipe-rules-before.txt").find("# mine"), std::string::npos);
}

TEST_F(RecipeCommands, AStepIsSpokenAsShorthand) {
    set({"--step", "25mm tongs away, 4 pins crossed", "--step", "brush out, 5 min"});
    const json build = recipe()["build"];
    ASSERT_EQ(build.size(), 2U);
    EXPECT_EQ(build[0]["heat_tool"]["barrel_mm"], 25.0);
    EXPECT_EQ(build[0]["pins"][0]["crossed"], true);
    EXPECT_EQ(build[1]["words"], "brush out");
    const json read = answer({"recipe", "step", "low pony, 4 grips somehow"});
    EXPECT_EQ(read["not_understood"], (json{"low", "pony", "somehow"}));
    EXPECT_EQ(read["step"]["words"], "low pony, somehow");
}

TEST_F(RecipeCommands, ADraftIsNoRevision) {
    set({"--part", "parting=left"});
    said({"recipe", "set", "Low bun", "--part", "parting=right", "--draft"});
    EXPECT_EQ(recipe()["parting"], "left");
    EXPECT_EQ(answer({"recipe", "show", "Low bun", "--draft"})["recipe"]["parting"], "right");
    EXPECT_NE(said({"recipe", "show", "Low bun"}).find("There is a draft"), std::string::npos);
    set({"--part", "finish=light spray"});  // goes on from the draft
    EXPECT_EQ(recipe()["parting"], "right");
    complained({"recipe", "show", "Low bun", "--draft"}, 2);
    EXPECT_EQ(answer({"recipe", "revisions", "Low bun"})["revisions"].size(), 2U);
}

TEST_F(RecipeCommands, DifferencesAreToldByFieldAndStep) {
    complained({"recipe", "diff", "Low bun"}, 2);
    set({"--part", "parting=left", "--step", "twist to the nape, 4 min"});
    complained({"recipe", "diff", "Low bun"}, 2);
    set({"--part", "parting=right", "--part", "build.1.minutes=6"});
    const json told = answer({"recipe", "diff", "Low bun"});
    EXPECT_EQ(told["from"], 1);
    EXPECT_EQ(told["to"], 2);
    ASSERT_EQ(told["changes"].size(), 2U);
    EXPECT_EQ(told["changes"][0],
              (json{{"what", "Parting"}, {"was", {"left"}}, {"is", {"right"}}}));
    EXPECT_EQ(told["changes"][1]["what"], "Step 1");
    EXPECT_EQ(told["photos"], json::array());
    said({"look", "add", "1", "Other"});
    said({"recipe", "from", "Other", "Low bun"});
    EXPECT_TRUE(answer({"recipe", "diff", "Other", "--with", "Low bun"})["changes"].empty());
}

TEST_F(RecipeCommands, StartsFromAnotherLookOrATemplate) {
    set({"--part", "cautions=latex", "--part", "parting=left", "--part", "feedback=loves it"});
    said({"client", "add", "Ysolde"});
    said({"look", "add", "Ysolde", "Hers"});
    said({"recipe", "from", "Hers", "Low bun"});
    json started = answer({"recipe", "show", "Hers"})["recipe"];
    EXPECT_EQ(started["parting"], "left");
    EXPECT_EQ(started["cautions"], "");
    EXPECT_EQ(started["feedback"], "");
    said({"recipe", "save-template", "Low bun", "Buns"});
    EXPECT_EQ(answer({"recipe", "templates"})["templates"][0]["name"], "Buns");
    said({"look", "add", "Ysolde", "Second"});
    said({"recipe", "from", "Second", "--template", "buns"});
    EXPECT_EQ(answer({"recipe", "show", "Second"})["recipe"], started);
    said({"recipe", "remove-template", "Buns"});
    EXPECT_TRUE(answer({"recipe", "templates"})["templates"].empty());
    complained({"recipe", "from", "Second", "--template", "Buns"}, 2);
    complained({"recipe", "from", "Second"}, 2);
}

TEST_F(RecipeCommands, RulesAreWeighedInAPlainFile) {
    set({"--part", "parting=left"});
    const auto bars = [&](const char* rule) {
        const json told = answer({"recipe", "check", "Low bun"}, 3);
        for (const json& finding : told["findings"]) {
            if (finding["rule"] == rule) return finding["bars_sign_off"].get<bool>() ? 2 : 1;
        }
        return 0;
    };
    EXPECT_EQ(bars("prep"), 2);
    EXPECT_EQ(bars("cautions"), 1);
    said({"recipe", "rules", "--write"});
    const std::string file = library + "/recipe-rules.txt";
    std::string text = text_of(file);
    const std::string usual = "prep = bar";
    ASSERT_NE(text.find(usual), std::string::npos);
    text.replace(text.find(usual), usual.size(), "prep = warning");
    std::ofstream(file) << text << "hairspray = bar\ncautions = off\n";
    EXPECT_EQ(bars("prep"), 1);
    EXPECT_EQ(bars("cautions"), 0);
    EXPECT_EQ(bars(""), 1);  // the line that is not understood is told
    EXPECT_EQ(answer({"recipe", "rules"}, 3)["problems"].size(), 1U);
    EXPECT_NE(said({"recipe", "check", "Low bun"}, 3).find("no medical advice"), std::string::npos);
}

TEST_F(RecipeCommands, CompletesFromHerOwnWords) {
    set({"--part", R"(prep=[{"name":"setting lotion"},{"name":"smoothing cream"}])"});
    EXPECT_EQ(answer({"recipe", "complete", "product", "SE"})["words"], json{"setting lotion"});
    EXPECT_EQ(answer({"recipe", "complete", "product"})["words"].size(), 2U);
    complained({"recipe", "complete", "colours", "b"}, 2);
}

TEST_F(RecipeCommands, KitAddsUpTheWeddingsRecipes) {
    set({"--step", "10 brown grips crossed", "--step", "5 brown grips"});
    const json kit = answer({"kit", "Boathouse"});
    EXPECT_EQ(kit["pins"][0]["needed"], 15);
    EXPECT_EQ(kit["pins"][0]["with_spare"], 18);
    EXPECT_EQ(answer({"kit", "Boathouse", "--spare", "0"})["pins"][0]["with_spare"], 15);
    EXPECT_EQ(answer({"kit", "Boathouse"})["spare_percent"], 0);  // it is remembered
    said({"look", "add", "1", "Empty", "--wedding", "Boathouse"});
    EXPECT_EQ(answer({"kit", "Boathouse"}, 3)["without_recipe"], json{"Empty"});
}

TEST_F(RecipeCommands, KitIsTickedOffAndTheTicksAreKept) {
    set({"--step", "10 brown grips crossed", "--step", "5 black hair pins"});
    said({"kit", "Boathouse", "--tick", "grip, brown", "--tick", "#2"});
    json kit = answer({"kit", "Boathouse"});
    EXPECT_EQ(kit["packed"], 2);
    EXPECT_EQ(kit["lines"], 2);
    EXPECT_EQ(kit["pins"][0]["ticked_count"], 12);
    set({"--step", "5 brown grips"});
    EXPECT_NE(said({"kit", "Boathouse"}).find("6 more than when it was ticked."),
              std::string::npos);
    said({"kit", "Boathouse", "--untick", "grip"});
    kit = answer({"kit", "Boathouse"});
    EXPECT_EQ(kit["packed"], 1);
    EXPECT_EQ(kit["pins"][0]["ticked"], false);
}

TEST_F(RecipeCommands, KitTicksNothingWhenOneOfTheItemsIsNotThere) {
    set({"--step", "10 brown grips", "--step", "5 brown hair pins"});
    EXPECT_NE(complained({"kit", "Boathouse", "--tick", "grip", "--tick", "tongs"}, 2)
                  .find("Nothing in the kit list is called 'tongs'"),
              std::string::npos);
    EXPECT_NE(complained({"kit", "Boathouse", "--tick", "brown"}, 2).find("#1"), std::string::npos);
    complained({"kit", "Boathouse", "--spare", "33", "--tick", "tongs"}, 2);
    complained({"kit", "Boathouse", "--spare", ""}, 2);
    complained({"kit", "Boathouse", "--tick", "#1", "--out", folder / "kit.pdf", "--paper", "a9"},
               2);
    EXPECT_EQ(answer({"kit", "Boathouse"})["packed"], 0);
    EXPECT_EQ(answer({"kit", "Boathouse"})["spare_percent"], 20);
}

TEST_F(RecipeCommands, KitIsWrittenAsAPdf) {
    set({"--step", "10 brown grips"});
    const std::string file = folder / "kit.pdf";
    said({"kit", "Boathouse", "--tick", "grip", "--out", file, "--paper", "a5"});
    EXPECT_NE(output_of("pdftotext -layout " + shell_word(file) + " -").find("1 of 1 packed."),
              std::string::npos);
    EXPECT_NE(complained({"kit", "Boathouse", "--out", file}, 2).find("--replace"),
              std::string::npos);
    said({"kit", "Boathouse", "--out", file, "--replace"});
    complained({"kit", "Boathouse", "--out", folder / "kit.png"}, 2);
}

TEST_F(RecipeCommands, ClientExportHoldsHerRecipes) {
    set({"--part", "parting=left"});
    said({"client", "export", "1", "--to", folder / "hers"});
    const json record = json::parse(text_of(folder / "hers/data/client.json"));
    EXPECT_EQ(record["looks"][0]["recipes"][0]["recipe"]["parting"], "left");
    EXPECT_NE(output_of("pdftotext " + shell_word(folder / "hers/data/record.pdf") + " -")
                  .find(record["client"]["name"].get<std::string>()),
              std::string::npos);
    complained({"client", "export", "1", "--to", folder / "hers"}, 1);
}

}  // namespace
}  // namespace quarterturn
