// Erasure as a person runs it, and a search of every byte of the library afterwards.

#include "tests/app/card_test.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class ErasureTest : public CardTest {
  protected:
    void SetUp() override {
        CardTest::SetUp();
        said({"settings", "business name", "Pins and Paper"});
        said({"client", "add", "Ada Lindqvist", "--note", "fine hair"});
        said({"client", "add", "Bea Holm", "--note", "sister of Ada Lindqvist"});
        said({"wedding", "add", "Lindqvist at the Boathouse", "--date", "2026-11-21", "--party",
              "1=bride"});
        said({"sitting", "add", "Ada Lindqvist", "--starts", "2026-10-03T10:00", "--ends",
              "2026-10-03T13:00"});
        said({"look", "add", "Ada Lindqvist", "Low bun", "--sitting", "1"});
        said({"look", "add", "Bea Holm", "Plait for Ada Lindqvist"});
        make_photo(card / "DCIM/bun.jpg", 1, "'-DateTimeOriginal=2026:10:03 11:00:00'");
        make_photo(card / "DCIM/both.jpg", 2, "'-DateTimeOriginal=2026:11:30 11:30:00'");
        make_photo(card / "DCIM/bea.jpg", 3, "'-DateTimeOriginal=2026:12:24 11:30:00'");
        said({"import", card});
        said({"tag", "bun.jpg", "--look", "Low bun", "--note", "Ada Lindqvist laughs"});
        said({"tag", "both.jpg", "bea.jpg", "--look", "2"});
        said({"tag", "both.jpg", "--shows", "Ada Lindqvist"});
        write_bytes(folder / "scan.pdf", std::as_bytes(std::span("signed by hand", 14)));
        said({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how",
              "signed form", "--attach", folder / "scan.pdf"});
        said({"photo", "whose", "bun.jpg", "both.jpg", "bea.jpg", "--own"});
        for (const char* to : {"taken", "there"}) {
            said({"portfolio", "export", "bun.jpg", "--for", "website", "--to", folder / to});
        }
        said({"ledger", "taken-down", "1", "--note", "as Ada Lindqvist asked"});
        said({"rebuild-cache"});
        for (const char* name : {"bun.jpg", "both.jpg"}) {
            const auto file = card / "DCIM" / name;
            sums[name] = output_of("sha256sum " + shell_word(file)).substr(0, 64);
            const std::string bytes = text_of(file);
            pieces[name] = bytes.substr(bytes.size() / 2, 48);
        }
    }

    // Whether any file of the library holds the bytes, or is called so.
    std::vector<std::string> holding(const std::string& wanted) {
        std::vector<std::string> found;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(library)) {
            if (entry.path().string().find(wanted) != std::string::npos ||
                (entry.is_regular_file() &&
                 text_of(entry.path()).find(wanted) != std::string::npos)) {
                found.push_back(entry.path());
            }
        }
        return found;
    }

    json erase(int code = 3) {
        return answer({"client", "erase", "Ada Lindqvist", "--yes-erase", "Ada Lindqvist"}, code);
    }

    using Found = std::vector<std::string>;
    std::map<std::string, std::string> sums;
    std::map<std::string, std::string> pieces;
};

TEST_F(ErasureTest, NothingIsErasedUnlessHerNameIsTypedAgain) {
    complained({"client", "erase", "Ada Lindqvist"}, 2);
    complained({"client", "erase", "Ada Lindqvist", "--yes-erase", "ada"}, 2);
    const json plan = answer({"client", "erase", "Ada Lindqvist", "--show-only"});
    EXPECT_TRUE(plan["erasure"].is_null());
    ASSERT_EQ(plan["photos"].size(), 1U);
    EXPECT_EQ(plan["photos"][0]["name"], "bun.jpg");
    ASSERT_EQ(plan["stay"].size(), 1U);
    EXPECT_EQ(plan["stay"][0]["name"], "both.jpg");
    EXPECT_EQ(plan["out_there"].size(), 1U);
    EXPECT_EQ(plan["weddings"], json::array({"Lindqvist at the Boathouse"}));
    EXPECT_EQ(photos().size(), 3U);
    EXPECT_FALSE(holding("Lindqvist").empty()) << "or the search below proves nothing";
    EXPECT_FALSE(holding(sums["bun.jpg"]).empty());
    EXPECT_FALSE(holding(pieces["bun.jpg"]).empty());
    EXPECT_FALSE(holding("signed by hand").empty());
    EXPECT_TRUE(answer({"client", "erasures"})["erasures"].empty());
}

TEST_F(ErasureTest, NoByteOfTheLibraryHoldsHerNameHerPhotosOrTheirChecksums) {
    const json erased = erase();
    EXPECT_EQ(erased["left"], json::array());
    for (const std::string& wanted :
         {std::string("Ada Lindqvist"), std::string("ada lindqvist"), sums["bun.jpg"],
          pieces["bun.jpg"], std::string("signed by hand"), std::string("fine hair")}) {
        EXPECT_EQ(holding(wanted), Found{}) << wanted;
    }
    EXPECT_TRUE(answer({"find", "laughs"})["photos"].empty());
    const json erasures = answer({"client", "erasures"})["erasures"];
    ASSERT_EQ(erasures.size(), 1U);
    EXPECT_EQ(erasures[0]["photos"], 1);
    EXPECT_EQ(erasures[0]["looks"], 1);
    EXPECT_EQ(erasures[0]["finished"], true);
    EXPECT_EQ(output_of("sqlite3 " + shell_word(library + "/records.sqlite") +
                        " 'PRAGMA integrity_check; PRAGMA freelist_count;'"),
              "ok\n0\n");
    complained({"client", "show", "Ada Lindqvist"}, 2);
}

TEST_F(ErasureTest, WhatIsOfOthersStaysWithoutHer) {
    erase();
    EXPECT_EQ(photos().size(), 2U);
    EXPECT_EQ(answer({"client", "show", "Bea Holm"})["client"]["note"], "sister of (erased)");
    const Ran may = run({"may", "both.jpg", "--for", "website", "--json"});
    EXPECT_EQ(may.code, 1);
    EXPECT_EQ(json::parse(may.out)["against"][0]["what"], "strangers");
    const json tasks = answer({"ledger", "tasks"}, 3)["to_take_down"];
    ASSERT_EQ(tasks.size(), 1U) << "what was taken down is gone, what is out there is not";
    EXPECT_EQ(tasks[0]["id"], 2);
    EXPECT_EQ(tasks[0]["photo"], "");
}

TEST_F(ErasureTest, SharedPhotosGoWhenAsked) {
    const json erased = answer(
        {"client", "erase", "Ada Lindqvist", "--with-shared", "--yes-erase", "Ada Lindqvist"}, 3);
    EXPECT_EQ(erased["shown_with_others"].size(), 1U);
    EXPECT_EQ(photos().size(), 1U);
    EXPECT_EQ(holding(sums["both.jpg"]), Found{});
    EXPECT_EQ(holding(pieces["both.jpg"]), Found{});
}

TEST_F(ErasureTest, WhatIsLeftIsSaidUntilItIsGoneOrSheHasLookedAtIt) {
    for (const char* name : {"letter.txt", "notes.txt"}) {
        std::ofstream(std::filesystem::path(library) / name) << "call ADA LINDQVIST";
    }
    const json left = erase()["left"];
    ASSERT_EQ(left.size(), 2U);
    EXPECT_NE(left.dump().find("notes.txt"), std::string::npos);
    EXPECT_EQ(answer({"client", "erasures"}, 3)["left"], left);
    std::filesystem::remove(std::filesystem::path(library) / "letter.txt");
    EXPECT_EQ(answer({"client", "erasures"}, 3)["left"].size(), 1U);
    EXPECT_TRUE(answer({"client", "erasures", "--looked-at"})["left"].empty());
    EXPECT_TRUE(answer({"client", "erasures"})["left"].empty());
}

TEST_F(ErasureTest, WhatWillBeLeftIsSaidBeforehand) {
    std::ofstream(std::filesystem::path(library) / "photos/notes.txt") << "call ADA LINDQVIST";
    const json left = answer({"client", "erase", "Ada Lindqvist", "--show-only"})["left"];
    ASSERT_EQ(left.size(), 1U);
    EXPECT_NE(left[0].get<std::string>().find("photos/notes.txt"), std::string::npos);
}

TEST_F(ErasureTest, WhatStaysThoughItMayBeHersIsNotSimplyToBeBroughtIn) {
    erase();
    std::ofstream(std::filesystem::path(library) / "photos/retouched.jpg") << "whose";
    const Ran verified = run({"verify"});
    EXPECT_NE(verified.out.find("retouched.jpg is in no record: remove it, if it may be of what "
                                "was erased"),
              std::string::npos)
        << verified.out;
}

TEST_F(ErasureTest, AnErasureThatIsKeptFromAFileSaysSoUntilItIsFinished) {
    std::string found = output_of("find " + shell_word(library) + "/photos -name '*bun.jpg'");
    found.pop_back();
    const std::filesystem::path hers = found;
    erase();
    // As it lies there when it could not be removed.
    std::filesystem::create_directories(hers / "in the way");
    ASSERT_EQ(output_of("sqlite3 " + shell_word(library + "/records.sqlite") + " " +
                        shell_word("INSERT INTO erasure_file VALUES ('" +
                                   hers.lexically_relative(library).string() +
                                   "'); UPDATE erasure SET finished = 0")),
              "");
    const Ran listed = run({"client", "erasures"});
    EXPECT_EQ(listed.code, 3);
    EXPECT_NE(listed.error.find(hers.string()), std::string::npos) << listed.error;
    EXPECT_NE(listed.error.find("is not finished"), std::string::npos) << listed.error;
    EXPECT_NE(listed.out.find("still to be removed"), std::string::npos) << listed.out;
    std::filesystem::remove_all(hers);
    EXPECT_NE(run({"client", "list"}).error.find("is finished now"), std::string::npos);
    EXPECT_TRUE(answer({"client", "erasures"})["to_remove"].empty());
}

TEST_F(ErasureTest, ANamesakeKeepsHerName) {
    said({"client", "add", "ADA Lindqvist", "--note", "Ada Lindqvist the other"});
    const json erased = answer({"client", "erase", "1", "--yes-erase", "Ada Lindqvist"}, 3);
    EXPECT_EQ(erased["left"].size(), 3U) << "both notes, and the look of another";
    EXPECT_EQ(answer({"client", "show", "ADA Lindqvist"})["client"]["note"],
              "Ada Lindqvist the other");
}

TEST_F(ErasureTest, ItIsSaidBeforehandFromWhereHerNameGoes) {
    const json plan = answer({"client", "erase", "Ada Lindqvist", "--show-only"});
    std::map<std::string, bool> goes;
    for (const json& named : plan["named"]) goes[named["place"]] = named["goes"].get<bool>();
    EXPECT_EQ(goes, (std::map<std::string, bool>{
                        {"the name of the look Plait for Ada Lindqvist of Bea Holm", true},
                        {"the note of the client Bea Holm", true}}));
    EXPECT_EQ(answer({"client", "show", "Bea Holm"})["client"]["note"], "sister of Ada Lindqvist");
}

TEST_F(ErasureTest, ANameThatIsAnOrdinaryWordIsPointedOutAndNotTakenOut) {
    said({"client", "add", "Low"});
    said({"look", "add", "Bea Holm", "Low twisted bun"});
    said({"recipe", "set", "Low twisted bun", "--step", "Lower the ponytail, 6 pins"});
    said({"settings", "business line", "Low prices"});
    const json erased = answer({"client", "erase", "Low", "--yes-erase", "Low"}, 3);
    const std::vector<std::string> left{
        "The name of the look Low bun of Ada Lindqvist still says Low: look whether she is meant, "
        "and change it.",
        "The name of the look Low twisted bun of Bea Holm still says Low: look whether she is "
        "meant, and change it.",
        "Your business line, in Settings, still says Low: look whether she is meant, and change "
        "it."};
    EXPECT_EQ(erased["left"].get<std::vector<std::string>>(), left);
    EXPECT_EQ(answer({"client", "show", "Bea Holm"})["looks"][1]["name"], "Low twisted bun");
}

TEST_F(ErasureTest, OtherFormsOfHerNameGoAndPartsOfItArePointedOut) {
    said({"client", "add", "Séraphine Vašnovič"});
    said({"client", "add", "Cia Moor", "--note", "Vasnovic, Seraphine and SÉRAPHINE VAŠNOVIČ"});
    said(
        {"photo", "whose", "bea.jpg", "--photographer", "Studio Vašnovič", "--credit", "Vasnovic"});
    const json erased =
        answer({"client", "erase", "Séraphine Vašnovič", "--yes-erase", "Séraphine Vašnovič"}, 3);
    EXPECT_EQ(answer({"client", "show", "Cia Moor"})["client"]["note"], "(erased) and (erased)");
    EXPECT_EQ(erased["left"], json::array());
    EXPECT_EQ(erased["alike"].size(), 2U) << "the photographer, and the line";
}

TEST_F(ErasureTest, RetentionProposesAfterTheYearsSheSets) {
    EXPECT_TRUE(answer({"client", "retention"})["years"].is_null());
    said({"settings", "keep looks years", "5"});
    const auto names_on = [&](const char* day, int code) {
        const json told = answer({"client", "retention", "--on", day}, code);
        std::vector<std::string> names;
        for (const json& each : told["proposed"]) {
            names.push_back(each["client"].get<std::string>() +
                            (each["look"].is_null() ? "" : ", " + each["look"].get<std::string>()));
        }
        return names;
    };
    EXPECT_EQ(names_on("2031-10-03", 0), Found{});
    EXPECT_EQ(names_on("2031-11-21", 3), Found{"Ada Lindqvist, Low bun"});
    EXPECT_EQ(names_on("2031-11-22", 3), Found{"Ada Lindqvist"});
    EXPECT_EQ(names_on("2032-02-29", 3), (Found{"Ada Lindqvist", "Bea Holm"}));
    EXPECT_EQ(photos().size(), 3U) << "nothing is erased by itself";
}

TEST_F(ErasureTest, RetentionProposesTheOldLookOfAClientWhoIsHereAgain) {
    said({"settings", "keep looks years", "5"});
    said({"sitting", "add", "Ada Lindqvist", "--starts", "2031-06-01T10:00", "--ends",
          "2031-06-01T12:00"});
    said({"look", "add", "Ada Lindqvist", "High bun", "--sitting", "2"});
    const json told = answer({"client", "retention", "--on", "2031-11-22"}, 3)["proposed"];
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told[0]["client"], "Ada Lindqvist");
    EXPECT_EQ(told[0]["look"], "Low bun");
    EXPECT_EQ(told[0]["last"], "2026-10-03");
    EXPECT_EQ(told[0]["photos"], 1);
}

TEST_F(ErasureTest, OneLookGoesAndTheRestOfHersStays) {
    said({"look", "add", "Ada Lindqvist", "High bun", "--sitting", "1"});
    said({"recipe", "set", "Low bun", "--step", "coil the ponytail, 6 pins"});
    ASSERT_FALSE(holding("coil the ponytail").empty());
    complained({"look", "erase", "Low bun", "--yes-erase", "Ada Lindqvist"}, 2);
    const json erased = answer({"look", "erase", "Low bun", "--yes-erase", "Low bun"}, 3);
    EXPECT_EQ(erased["look"], "Low bun");
    EXPECT_EQ(erased["photos"].size(), 1U);
    EXPECT_EQ(erased["left"], json::array());
    for (const std::string& wanted : {sums["bun.jpg"], pieces["bun.jpg"],
                                      std::string("coil the ponytail"), std::string("Low bun")}) {
        EXPECT_EQ(holding(wanted), Found{}) << wanted;
    }
    EXPECT_EQ(photos().size(), 2U);
    const json ada = answer({"client", "show", "Ada Lindqvist"});
    ASSERT_EQ(ada["looks"].size(), 1U);
    EXPECT_EQ(ada["looks"][0]["name"], "High bun");
    EXPECT_EQ(ada["sittings"].size(), 1U);
    EXPECT_FALSE(holding("signed by hand").empty()) << "what she allowed stays";
    const json tasks = answer({"ledger", "list"})["exports"];
    ASSERT_EQ(tasks.size(), 1U) << "what is out there stays in the ledger";
    EXPECT_EQ(tasks[0]["photo"], "");
}

TEST_F(ErasureTest, ACopyOfAllThatIsHersLiesInOneFolder) {
    const json copied = answer({"client", "export", "Ada Lindqvist", "--to", folder / "ada"});
    const auto data = folder / "ada/data";
    const json bun = photos({"--look", "Low bun"})[0];
    EXPECT_EQ(text_of(data / "photos" / (bun["id"].dump() + " bun.jpg")),
              text_of(card / "DCIM/bun.jpg"));
    EXPECT_EQ(text_of(data / "consents/1 scan.pdf"), "signed by hand");
    ASSERT_EQ(copied["left_out"].size(), 1U);
    EXPECT_NE(copied["left_out"][0].get<std::string>().find("both.jpg"), std::string::npos);
    EXPECT_EQ(output_of("cd " + shell_word(folder / "ada") +
                        " && sha256sum --quiet -c manifest-sha256.txt && echo whole"),
              "whole\n");
}

}  // namespace
}  // namespace quarterturn
