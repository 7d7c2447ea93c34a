#include "tests/app/program.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class RecordsTest : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        said({"client", "add", "Séraphine Vašnovič", "--note", "fine hair"});
        said({"client", "add", "ليان الياسميني"});
    }

    void add_look() {
        said({"sitting", "add", "1", "--starts", "2026-11-07T10:00", "--ends", "2026-11-07T13:00"});
        said({"look", "add", "1", "Low bun", "--sitting", "1"});
    }
};

TEST_F(RecordsTest, ClientIsAddedChangedListedAndShown) {
    said({"client", "change", "séraphine VAŠNOVIČ", "--note", "left ear is tender"});
    const json shown = answer({"client", "show", "1"})["client"];
    EXPECT_EQ(shown,
              (json{{"id", 1}, {"name", "Séraphine Vašnovič"}, {"note", "left ear is tender"}}));
    EXPECT_EQ(answer({"client", "list"})["clients"].size(), 2U);
}

TEST_F(RecordsTest, WeddingKeepsItsPartyUntilANewOneIsNamed) {
    said({"wedding", "add", "Boathouse", "--date", "2027-05-15", "--ready-by", "12:30", "--party",
          "1=bride", "--party", "ليان الياسميني=mother of the bride"});
    said({"wedding", "change", "Boathouse", "--venue", "The Old Boathouse"});
    const json wedding = answer({"wedding", "show", "Boathouse"})["wedding"];
    EXPECT_EQ(wedding["date"], "2027-05-15");
    EXPECT_EQ(wedding["ready_by"], "12:30");
    EXPECT_EQ(wedding["venue"], "The Old Boathouse");
    ASSERT_EQ(wedding["party"].size(), 2U);
    EXPECT_EQ(wedding["party"][1]["client"], "ليان الياسميني");
    EXPECT_EQ(wedding["party"][1]["role"], "mother of the bride");
    said({"wedding", "change", "Boathouse", "--party", "1=bride"});
    EXPECT_EQ(answer({"wedding", "show", "Boathouse"})["wedding"]["party"].size(), 1U);
}

TEST_F(RecordsTest, SittingIsATrialUnlessSaidOtherwise) {
    said({"sitting", "add", "1", "--starts", "2026-11-07T10:00", "--ends", "2026-11-07T13:00"});
    said({"sitting", "add", "1", "--starts", "2027-05-15T09:30", "--ends", "2027-05-15T12:00",
          "--kind", "wedding-day"});
    const json sittings = answer({"sitting", "list"})["sittings"];
    EXPECT_EQ(sittings[0]["kind"], "trial");
    EXPECT_EQ(sittings[0]["starts"], "2026-11-07T10:00:00");
    EXPECT_EQ(sittings[1]["kind"], "wedding day");
    said({"sitting", "change", "1", "--ends", "2026-11-07T13:30"});
    EXPECT_EQ(answer({"sitting", "show", "1"})["sitting"]["ends"], "2026-11-07T13:30:00");
}

TEST_F(RecordsTest, LookKnowsItsClientAndSittings) {
    add_look();
    said({"look", "change", "Low bun", "--worn", "evening"});
    const json look = answer({"look", "show", "Low bun"})["look"];
    EXPECT_EQ(look["client"], "Séraphine Vašnovič");
    EXPECT_EQ(look["worn"], "evening");
    EXPECT_EQ(look["sittings"], json{1});
}

TEST_F(RecordsTest, EverySavedChangeOfARecipeIsARevision) {
    add_look();
    said({"recipe", "set", "1", "--part", "parting=side, on her left", "--part",
          "prep=[{\"name\":\"setting lotion\",\"amount\":\"two walnuts\",\"where\":\"lengths\"}]"});
    said({"recipe", "set", "1", "--part", "parting=in the middle"});
    said({"recipe", "set", "1", "--part", "parting=in the middle"});  // nothing new
    EXPECT_EQ(answer({"recipe", "revisions", "1"})["revisions"].size(), 2U);
    const json first = answer({"recipe", "show", "1", "--revision", "1"})["recipe"];
    EXPECT_EQ(first["parting"], "side, on her left");
    const json current = answer({"recipe", "show", "1"})["recipe"];
    EXPECT_EQ(current["parting"], "in the middle");
    EXPECT_EQ(current["prep"][0]["amount"], "two walnuts");
    EXPECT_NE(said({"recipe", "show", "1"}).find("Parting: in the middle"), std::string::npos);
}

TEST_F(RecordsTest, RecipeIsTakenBackJustAsItWasGivenOut) {
    add_look();
    said({"recipe", "set", "1", "--part", "finish=hold spray", "--part", "waiting_minutes=15"});
    const json recipe = answer({"recipe", "show", "1"})["recipe"];
    std::ofstream(folder / "recipe.json") << recipe;
    said({"look", "add", "1", "Another"});
    said({"recipe", "set", "Another", "--file", folder / "recipe.json"});
    EXPECT_EQ(answer({"recipe", "show", "Another"})["recipe"], recipe);
}

TEST_F(RecordsTest, ShotListIsTheLooksOwnUntilItIsSavedAsDefault) {
    add_look();
    said({"look", "add", "1", "Another"});
    said({"shot-list", "Low bun", "--require", "after, crown", "--drop", "before, back"});
    const auto needs = [&](const Arguments& of) {
        json needed;
        const json told = answer(of);
        for (const json& line : told["lines"]) {
            needed[line["stage"].get<std::string>() + ", " + line["angle"].get<std::string>()] =
                line["need"];
        }
        return needed;
    };
    EXPECT_EQ(needs({"shot-list", "Low bun"})["after, crown"], "required");
    EXPECT_FALSE(needs({"shot-list", "Low bun"}).contains("before, back"));
    EXPECT_EQ(needs({"shot-list", "Another"})["after, crown"], "nice to have");
    said({"shot-list", "Low bun", "--save-as-default"});
    EXPECT_EQ(needs({"shot-list", "Another"}), needs({"shot-list", "Low bun"}));
    EXPECT_EQ(needs({"shot-list"}), needs({"shot-list", "Low bun"}));
    said({"shot-list", "--offer", "during, back"});
    EXPECT_EQ(needs({"shot-list"})["during, back"], "nice to have");
}

TEST_F(RecordsTest, WaivedLinesMakeCoverageCompleteUntilTakenBack) {
    add_look();
    EXPECT_EQ(answer({"coverage", "1"}, 3)["complete"], false);
    for (const char* stage : {"before, ", "after, "}) {
        for (const char* angle : {"left", "front", "right", "back"}) {
            said({"waive", "1", std::string(stage) + angle, "--because", "She had to leave."});
        }
    }
    const json coverage = answer({"coverage", "1"});
    EXPECT_EQ(coverage["complete"], true);
    EXPECT_EQ(coverage["lines"][0]["verdict"], "waived");
    EXPECT_EQ(coverage["lines"][0]["waived_because"], "She had to leave.");
    said({"waive", "1", "after, left", "--take-back"});
    EXPECT_EQ(answer({"coverage", "1"}, 3)["complete"], false);
}

TEST_F(RecordsTest, SettingIsKept) {
    EXPECT_TRUE(answer({"settings", "business line"})["value"].is_null());
    said({"settings", "business line", "Studio Fluss"});
    EXPECT_EQ(answer({"settings", "business line"})["value"], "Studio Fluss");
}

TEST_F(RecordsTest, AllSettingsAreShownWithWhatTheyAreFor) {
    said({"settings", "paper", "letter"});
    const json settings = answer({"settings"})["settings"];
    ASSERT_EQ(settings.size(), 8U);
    EXPECT_EQ(settings[2]["name"], "paper");
    EXPECT_EQ(settings[2]["value"], "letter");
    EXPECT_FALSE(settings[2]["meaning"].get<std::string>().empty());
    EXPECT_NE(said({"settings"}).find("business line"), std::string::npos);
}

TEST_F(RecordsTest, LibraryIsFoundByTheEnvironmentAndInTheHomeFolder) {
    const auto list = [&](const std::string& environment) {
        return output_of("env -u QUARTERTURN_LIBRARY " + environment + ' ' +
                         shell_word(QTURN_PROGRAM) + " client list");
    };
    EXPECT_NE(list("QUARTERTURN_LIBRARY=" + shell_word(library)).find("Séraphine"),
              std::string::npos);
    std::filesystem::rename(library, folder / "Quarterturn");
    EXPECT_NE(list("HOME=" + shell_word(folder.path())).find("Séraphine"), std::string::npos);
}

}  // namespace
}  // namespace quarterturn
