// Consent, the gate, the portfolio and the ledger as a person runs them.

#include "tests/app/card_test.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class ConsentTest : public CardTest {
  protected:
    void SetUp() override {
        CardTest::SetUp();
        said({"settings", "business name", "Pins and Paper"});
        said({"client", "add", "Ada Lindqvist"});
        said({"sitting", "add", "Ada Lindqvist", "--starts", "2026-10-03T10:00", "--ends",
              "2026-10-03T13:00"});
        said({"look", "add", "Ada Lindqvist", "Low bun", "--sitting", "1"});
        make_photo(card / "DCIM/bun.jpg", 1,
                   "'-DateTimeOriginal=2026:10:03 11:00:00' -GPSLatitude=48.1 -GPSLatitudeRef=N "
                   "-SerialNumber=SN-778812 -OwnerName='Ada Lindqvist' -Make=Larkmoor");
        said({"import", card});
        said({"tag", "bun.jpg", "--look", "Low bun", "--angle", "left", "--stage", "after"});
    }

    json grant(Arguments more = {}) {
        Arguments arguments{"consent", "grant",  "Ada Lindqvist", "--for",
                            "website", "--face", "--how",         "signed form"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return answer(arguments);
    }
    json send(int code = 0) {
        return answer({"portfolio", "export", "bun.jpg", "--for", "website", "--to", out}, code);
    }
    std::vector<std::string> against(Arguments more = {}) {
        Arguments arguments{"may", "bun.jpg", "--for", "website"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        arguments.emplace_back("--json");
        const Ran ran = run(arguments);
        const json told = json::parse(ran.out);
        EXPECT_EQ(ran.code, told["may"] == true ? 0 : 1);
        std::vector<std::string> words;
        for (const json& each : told["against"]) words.push_back(each["what"]);
        return words;
    }
    std::size_t files_out() { return std::filesystem::exists(out) ? files_in(out).size() : 0; }

    using Words = std::vector<std::string>;
    std::filesystem::path out = folder / "website";
};

TEST_F(ConsentTest, NothingRecordedMeansNoAndNothingGoesOut) {
    EXPECT_EQ(against(), (Words{"not asked", "whose"}));
    const json sent = send(1);
    EXPECT_EQ(sent["written"], 0);
    EXPECT_EQ(sent["photos"][0]["against"].size(), 2U);
    EXPECT_TRUE(sent["photos"][0]["export"].is_null());
    EXPECT_EQ(files_out(), 0U);
    EXPECT_TRUE(answer({"ledger", "list"})["exports"].empty());
}

TEST_F(ConsentTest, FromGrantedToTakenDown) {
    write_bytes(folder / "scan.pdf", std::as_bytes(std::span("signed", 6)));
    const json granted = grant({"--attach", folder / "scan.pdf"});
    EXPECT_EQ(granted["entries"][0]["papers"][0]["name"], "scan.pdf");
    said({"photo", "whose", "bun.jpg", "--own"});
    EXPECT_EQ(against(), Words{});
    const json sent = send();
    const std::string file = sent["photos"][0]["export"]["file"];
    EXPECT_EQ(std::filesystem::path(file).filename(), "website-0001.jpg");
    EXPECT_EQ(sent["photos"][0]["export"]["sha256"],
              output_of("sha256sum " + shell_word(file)).substr(0, 64));
    EXPECT_EQ(sent["photos"][0]["export"]["under"], json{1});
    said({"ledger", "place", "1", "gallery, third page"});
    EXPECT_TRUE(answer({"ledger", "tasks"})["to_take_down"].empty());

    EXPECT_NE(complained({"consent", "withdraw", "Ada Lindqvist"}, 2).find("--how"),
              std::string::npos);
    const json withdrawn = answer({"consent", "withdraw", "Ada Lindqvist", "--how", "message"}, 3);
    EXPECT_EQ(withdrawn["entries"][0]["how"], "message");
    EXPECT_EQ(withdrawn["entries"].size(), 1U);
    EXPECT_EQ(withdrawn["to_take_down"], json{1});
    EXPECT_EQ(against(), Words{"withdrawn"});
    EXPECT_EQ(send(1)["written"], 0) << "new exports stop at once";
    EXPECT_EQ(files_out(), 1U);
    const json tasks = answer({"ledger", "tasks"}, 3);
    EXPECT_EQ(tasks["to_take_down"][0]["places"], json{"gallery, third page"});
    said({"ledger", "taken-down", "#1", "--note", "off the page"});
    EXPECT_TRUE(answer({"ledger", "tasks"})["to_take_down"].empty());
    EXPECT_TRUE(answer({"ledger", "list", "--out-there"})["exports"].empty());
    EXPECT_EQ(answer({"ledger", "list", "--client", "Ada Lindqvist"})["exports"].size(), 1U);
    said({"ledger", "taken-down", "1"}, 1);
    EXPECT_EQ(answer({"consent", "history", "Ada Lindqvist"})["entries"].size(), 2U);
    said({"consent", "withdraw", "Ada Lindqvist", "--how", "message"}, 1);  // there is nothing left
}

TEST_F(ConsentTest, AFileWithSeveralPhotosIsToBeTakenDownOnce) {
    grant();
    make_photo(card / "DCIM/other.jpg", 2, "'-DateTimeOriginal=2026:10:03 11:10:00'");
    said({"import", card});
    said({"tag", "other.jpg", "--look", "Low bun", "--angle", "right", "--stage", "after"});
    said({"photo", "whose", "bun.jpg", "other.jpg", "--own"});
    const std::string file = folder / "sheet.pdf";
    said({"sheet", "Low bun", "--for", "website", "--out", file});
    const std::string told = said({"consent", "withdraw", "Ada Lindqvist", "--how", "message"}, 3);
    const auto first = told.find("To take down: " + file + " (exports #1 and #2)");
    EXPECT_EQ(first, told.rfind("To take down")) << told;
}

TEST_F(ConsentTest, SeveralAreTickedOffAtOnce) {
    grant({});
    said({"photo", "whose", "bun.jpg", "--own"});
    for (int i = 0; i < 4; ++i) send();
    EXPECT_EQ(answer({"ledger", "taken-down", "1", "3-4"})["exports"].size(), 3U);
    const json there = answer({"ledger", "list", "--out-there"})["exports"];
    ASSERT_EQ(there.size(), 1U);
    EXPECT_EQ(there[0]["id"], 2);
    said({"ledger", "taken-down", "2", "3"}, 1);
    EXPECT_EQ(answer({"ledger", "list", "--out-there"})["exports"].size(), 1U) << "all, or none";
    EXPECT_EQ(answer({"ledger", "taken-down", "1-4"})["exports"].size(), 1U);
    complained({"ledger", "taken-down", "1-9"}, 2);
}

TEST_F(ConsentTest, AnAlteredScanIsToldWhereItMatters) {
    write_bytes(folder / "scan.pdf", std::as_bytes(std::span("signed", 6)));
    const json granted = grant({"--attach", folder / "scan.pdf"});
    said({"photo", "whose", "bun.jpg", "--own"});
    const auto kept = std::filesystem::path(library) / "consents/client 1/scan.pdf";
    write_bytes(kept, std::as_bytes(std::span("forged", 6)));
    const json may = answer({"may", "bun.jpg", "--for", "website"}, 3);
    EXPECT_EQ(may["may"], true);
    ASSERT_EQ(may["doubts"].size(), 1U);
    EXPECT_NE(may["doubts"][0].get<std::string>().find("no longer the file that was attached"),
              std::string::npos);
    EXPECT_EQ(send()["photos"][0]["doubts"], may["doubts"]);
}

TEST_F(ConsentTest, ThatNoFaceShowsDoesNotCountFromASideThatShowsOne) {
    said({"photo", "whose", "bun.jpg", "--own"});
    said({"consent", "grant", "Ada Lindqvist", "--for", "all", "--hair-only", "--how", "message"});
    const json told = answer({"photo", "people", "bun.jpg", "--face", "no"}, 3);
    EXPECT_EQ(told["photos"][0]["face_shows"], true);
    EXPECT_EQ(told["photos"][0]["doubts"].size(), 1U);
    EXPECT_EQ(against(), Words{"face"});
    EXPECT_EQ(send(1)["written"], 0);
    said({"tag", "bun.jpg", "--angle", "back"});
    EXPECT_EQ(against(), Words{}) << "the tag was a slip";
}

TEST_F(ConsentTest, HairOnlyHoldsUntilSheSaysThatNoFaceShows) {
    said({"tag", "bun.jpg", "--angle", "back"});
    said({"photo", "whose", "bun.jpg", "--own"});
    said({"consent", "grant", "Ada Lindqvist", "--for", "all", "--hair-only", "--how", "message"});
    EXPECT_EQ(against(), Words{"face"});
    said({"photo", "people", "bun.jpg", "--face", "no"});
    EXPECT_EQ(against(), Words{});
    said({"photo", "people", "bun.jpg", "--strangers", "yes"});
    EXPECT_EQ(against(), Words{"strangers"});
    said({"photo", "people", "bun.jpg", "--strangers", "no", "--face", "unsaid"});
    EXPECT_EQ(against(), Words{"face"});
}

TEST_F(ConsentTest, APhotographersPhotoNeedsLicenceDateAndLine) {
    grant();
    said({"photo", "whose", "bun.jpg", "--photographer", "Wren Aldous", "--until", "2027-05-31"});
    EXPECT_EQ(against(), (Words{"not licensed", "credit line"}));
    said({"photo", "whose", "bun.jpg", "--photographer", "Wren Aldous", "--licensed", "website",
          "--until", "2027-05-31", "--credit", "Photo: Wren Aldous"});
    EXPECT_EQ(against({"--on", "2027-05-31"}), Words{});
    EXPECT_EQ(against({"--on", "2027-06-01"}), Words{"licence ended"});
    said({"photo", "whose", "bun.jpg", "--somebody-else"});
    EXPECT_EQ(against(), Words{"somebody else's"});
}

TEST_F(ConsentTest, ForAChildAGuardianSpeaks) {
    said({"photo", "whose", "bun.jpg", "--own"});
    grant();
    EXPECT_EQ(against(), Words{});
    said({"consent", "decline", "Ada Lindqvist", "--for", "print", "--how", "message", "--age",
          "15"});  // a no is hers to say
    EXPECT_EQ(against(), Words{"child"});
    const Arguments alone{"consent", "grant",  "Ada Lindqvist", "--for",
                          "website", "--face", "--how",         "message"};
    EXPECT_NE(complained(alone, 1).find("Ada Lindqvist is 15: a parent or guardian decides"),
              std::string::npos);
    said({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how", "signed form",
          "--guardian", "Ines Lindqvist"},
         1);  // without the child's age
    said({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how", "signed form",
          "--guardian", "ada lindqvist", "--age", "15"},
         1);  // herself
    EXPECT_EQ(against(), Words{"child"});
    grant({"--guardian", "Ines Lindqvist", "--age", "15"});
    EXPECT_EQ(against(), Words{});
    EXPECT_EQ(answer({"consent", "show", "Ada Lindqvist"})["child"], true);
}

// exiftool reads what the picture says of itself.
TEST_F(ConsentTest, TheExportSaysWhatItShouldAndNothingElse) {
    grant();
    said({"photo", "whose", "bun.jpg", "--own"});
    said({"portfolio", "export", "bun.jpg", "--for", "website", "--to", out, "--shape", "4:5",
          "--size", "150", "--line", "--caption", "A low bun", "--no-data-mining"});
    const auto file = out / "website-0001.jpg";
    const json says = json::parse(output_of("exiftool -n -json -G1 " + shell_word(file)))[0];
    EXPECT_EQ(says["XMP-dc:Creator"], "Pins and Paper");
    EXPECT_EQ(says["XMP-dc:Rights"], "© 2026 Pins and Paper");
    EXPECT_EQ(says["XMP-dc:Description"], "A low bun");
    EXPECT_EQ(says["XMP-photoshop:Credit"], "Pins and Paper");
    EXPECT_EQ(says["XMP-plus:ModelReleaseStatus"], "MR-LMR");
    EXPECT_EQ(says["XMP-plus:MinorModelAgeDisclosure"], "AG-UNK");
    EXPECT_EQ(says["File:ImageWidth"], 120);
    EXPECT_EQ(says["File:ImageHeight"], 150);
    const std::string whole = text_of(file);
    EXPECT_NE(whole.find("http://ns.useplus.org/ldf/vocab/DMI-PROHIBITED-AIMLTRAINING"),
              std::string::npos);
    for (const char* secret : {"SN-778812", "Lindqvist", "Larkmoor", "2026:10:03", "GPS"}) {
        EXPECT_EQ(whole.find(secret), std::string::npos) << secret;
    }
}

TEST_F(ConsentTest, NeverIntoTheLibraryAndNeverOverAFile) {
    grant();
    said({"photo", "whose", "bun.jpg", "--own"});
    complained({"portfolio", "export", "bun.jpg", "--for", "website", "--to",
                std::filesystem::path(library) / "photos/new"},
               1);
    std::filesystem::create_directory_symlink(library, folder / "way in");
    complained({"portfolio", "export", "bun.jpg", "--for", "website", "--to", folder / "way in"},
               1);
    EXPECT_FALSE(std::filesystem::exists(std::filesystem::path(library) / "photos/new"));
    std::filesystem::create_directory(out);
    write_bytes(out / "website-0001.jpg", std::as_bytes(std::span("hers", 4)));
    const json sent = send(1);
    EXPECT_FALSE(sent["photos"][0]["problem"].is_null());
    EXPECT_EQ(text_of(out / "website-0001.jpg"), "hers");
    EXPECT_EQ(files_out(), 1U);
    EXPECT_TRUE(answer({"ledger", "list", "--out-there"})["exports"].empty());
    EXPECT_EQ(send()["written"], 1) << "under the next number";
}

TEST_F(ConsentTest, WrongUseIsSaidBeforeAnythingIsRecorded) {
    complained({"consent", "grant", "Ada Lindqvist", "--for", "website", "--how", "message"}, 2);
    complained(
        {"consent", "grant", "Ada Lindqvist", "--for", "the moon", "--face", "--how", "message"},
        2);
    complained({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face"}, 2);
    complained({"consent", "grant", "Ada Lindqvist", "--face", "--how", "message"}, 2);
    complained({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how",
                "message", "--attach", folder / "nothing.pdf"},
               1);
    complained({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how",
                "message", "--on", "2999-01-01"},
               1);
    EXPECT_TRUE(answer({"consent", "history", "Ada Lindqvist"})["entries"].empty());
    complained({"photo", "whose", "bun.jpg", "--own", "--somebody-else"}, 2);
    complained({"photo", "whose", "bun.jpg", "--own", "--licensed", "print"}, 2);
    complained({"portfolio", "export", "bun.jpg", "--for", "website", "--to", out, "--size", "0"},
               2);
    complained(
        {"portfolio", "export", "bun.jpg", "--for", "website", "--to", out, "--shape", "3:1"}, 2);
    complained({"ledger", "place", "9", "somewhere"}, 2);
}

TEST_F(ConsentTest, CandidatesSayWhatTheyLackAndASelectionGoesOutAsAWhole) {
    make_photo(card / "DCIM/back.jpg", 2, "'-DateTimeOriginal=2026:10:03 11:30:00'");
    make_photo(card / "DCIM/before.jpg", 3, "'-DateTimeOriginal=2026:10:03 10:30:00'");
    said({"import", card});
    said({"tag", "back.jpg", "--look", "Low bun", "--angle", "back", "--stage", "after"});
    said({"tag", "before.jpg", "--look", "Low bun", "--angle", "back", "--stage", "before"});
    said({"accept", "bun.jpg", "back.jpg", "before.jpg", "--because", "small on purpose"});
    grant();
    said({"photo", "whose", "back.jpg", "--own"});
    said({"pairs", "facts", "Low bun", "--family", "low bun"});
    const json all = answer({"portfolio", "candidates", "--for", "website"});
    ASSERT_EQ(all["photos"].size(), 2U) << "a photo from before is no finished look";
    EXPECT_EQ(all["photos"][0]["name"], "back.jpg");
    EXPECT_TRUE(all["photos"][0]["lacks"].empty());
    EXPECT_EQ(all["photos"][1]["lacks"],
              (json{"It is not recorded whose photo it is: say whether it is your own or a "
                    "photographer's."}));
    EXPECT_EQ(all["families"][0], (json{{"family", "low bun"}, {"photos", 1}}));
    EXPECT_EQ(answer({"portfolio", "candidates", "--for", "website", "--ready"})["photos"].size(),
              1U);

    said({"portfolio", "select", "Spring page", "back.jpg", "bun.jpg"});
    EXPECT_EQ(answer({"portfolio", "selections"})["selections"][0]["photos"][1]["name"], "bun.jpg");
    const json sent = answer(
        {"portfolio", "export", "--selection", "spring page", "--for", "website", "--to", out}, 3);
    EXPECT_EQ(sent["written"], 1);
    EXPECT_FALSE(sent["photos"][0]["export"].is_null());
    EXPECT_FALSE(sent["photos"][1]["against"].empty());
    complained({"portfolio", "export", "--for", "website", "--to", out}, 2);
    complained({"portfolio", "export", "--selection", "none", "--for", "website", "--to", out}, 2);
    said({"portfolio", "select", "Spring page", "--forget"});
    EXPECT_TRUE(answer({"portfolio", "selections"})["selections"].empty());
}

}  // namespace
}  // namespace quarterturn
