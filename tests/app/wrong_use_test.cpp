// Wrong use first: each ends with its exit code and a sentence that says what to do next, and
// changes nothing.

#include "tests/app/program.h"

namespace quarterturn {
namespace {

class WrongUseTest : public QturnTest {
  protected:
    void SetUp() override { said({"init"}); }

    void expect_complaint(const Arguments& arguments, int code, const std::string& part) {
        const std::string sentence = complained(arguments, code);
        EXPECT_NE(sentence.find(part), std::string::npos) << sentence;
    }

    void add_client_with_two_looks_of_one_name() {
        said({"client", "add", "Ada Lindqvist"});
        said({"look", "add", "1", "Low bun"});
        said({"look", "add", "1", "Low bun", "--worn", "evening"});
    }
};

TEST_F(WrongUseTest, NoCommand) {
    expect_complaint({}, 2, "qturn --help");
}

TEST_F(WrongUseTest, UnknownCommandOrOption) {
    expect_complaint({"brush"}, 2, "qturn --help");
    expect_complaint({"photos", "--sharp"}, 2, "qturn photos --help");
    expect_complaint({"wedding", "change", "1", "--notes", "invoice 12"}, 2,
                     "not expected: --notes invoice 12\n");
    expect_complaint({"photos", "--sharp"}, 2, "argument was not expected: --sharp\n");
    expect_complaint({"client"}, 2, "qturn client --help");
}

TEST_F(WrongUseTest, AWayToWithdrawThatIsNone) {
    said({"client", "add", "Ada Lindqvist"});
    expect_complaint({"consent", "withdraw", "Ada Lindqvist", "--how", "by phone"}, 2,
                     "'by phone' is no way to give or withdraw consent. Known are signed form");
}

TEST_F(WrongUseTest, MissingArgument) {
    expect_complaint({"tag"}, 2, "PHOTO");
    expect_complaint({"sheet", "1"}, 2, "--out");
}

TEST_F(WrongUseTest, NoLibraryThere) {
    library = folder / "nowhere";
    expect_complaint({"photos"}, 1, "qturn init");
    EXPECT_FALSE(std::filesystem::exists(library));
}

TEST_F(WrongUseTest, FolderThatIsNoLibrary) {
    library = folder / "other";
    std::filesystem::create_directory(library);
    expect_complaint({"photos"}, 1, library);
    EXPECT_TRUE(std::filesystem::is_empty(library));
}

TEST_F(WrongUseTest, InitWhereALibraryIsAlready) {
    expect_complaint({"init"}, 1, library + " is a library already");
}

TEST_F(WrongUseTest, IsAnsweredAsJsonWhereverTheCommandLineBreaksOff) {
    const Ran ran = run({"--json", "look", "list", "--library"});
    EXPECT_EQ(ran.code, 2);
    EXPECT_TRUE(nlohmann::json::parse(ran.out).contains("error")) << ran.out;
}

// The sqlite3 shell plays the newer version: it raises the number that SQLite keeps for an
// application's own schema (PRAGMA user_version).
TEST_F(WrongUseTest, LibraryFromANewerVersion) {
    output_of("sqlite3 " + shell_word(library + "/records.sqlite") +
              " 'PRAGMA user_version = 9999'");
    expect_complaint({"photos"}, 1, "newer version");
}

TEST_F(WrongUseTest, UnknownNamesSayWhereToLook) {
    expect_complaint({"tag", "IMG_0001.jpg", "--angle", "left"}, 2, "qturn photos");
    expect_complaint({"coverage", "Low bun"}, 2, "qturn look list");
    expect_complaint({"client", "show", "Ada"}, 2, "qturn client list");
    expect_complaint({"wedding", "show", "77"}, 2, "qturn wedding list");
    expect_complaint({"sitting", "show", "77"}, 2, "qturn sitting list");
    expect_complaint({"clock", "apply", "Pocket"}, 2, "qturn devices");
}

TEST_F(WrongUseTest, AmbiguousLookIsListedWithNumbersAndNotGuessed) {
    add_client_with_two_looks_of_one_name();
    expect_complaint({"coverage", "Low bun"}, 2, "#1  Low bun, Ada Lindqvist");
    expect_complaint({"coverage", "Low bun"}, 2, "#2  Low bun, Ada Lindqvist");
    said({"coverage", "2"}, 3);
    said({"coverage", "#2"}, 3);
}

TEST_F(WrongUseTest, WordsThatAreNoneOfTheKnown) {
    add_client_with_two_looks_of_one_name();
    expect_complaint({"waive", "1", "after", "--because", "x"}, 2, "as in 'after, left'");
    expect_complaint({"waive", "1", "after, side", "--because", "x"}, 2, "left three-quarter");
    expect_complaint({"waive", "1", "later, left", "--because", "x"}, 2,
                     "before, during and after");
    expect_complaint({"waive", "1", "after, left"}, 2, "--because");
    expect_complaint({"look", "add", "1", "Braid", "--worn", "noon"}, 2, "ceremony, evening");
    expect_complaint({"wedding", "add", "W", "--date", "7 November"}, 2, "2026-11-07");
    expect_complaint({"wedding", "add", "W", "--date", "2026-02-30"}, 2, "'2026-02-30'");
    expect_complaint({"wedding", "add", "W", "--date", "2026-11-07", "--ready-by", "noon"}, 2,
                     "12:30");
    expect_complaint({"wedding", "add", "W", "--date", "2026-11-07", "--party", "1"}, 2, "role");
    expect_complaint({"sitting", "add", "1", "--starts", "ten", "--ends", "noon"}, 2,
                     "2026-11-07T10:12");
}

TEST_F(WrongUseTest, SittingThatEndsBeforeItStarts) {
    said({"client", "add", "Ada Lindqvist"});
    complained(
        {"sitting", "add", "1", "--starts", "2026-11-07T12:00", "--ends", "2026-11-07T10:00"}, 1);
    EXPECT_TRUE(answer({"sitting", "list"})["sittings"].empty());
}

TEST_F(WrongUseTest, SheetOfAnUnknownPaperOrKind) {
    add_client_with_two_looks_of_one_name();
    expect_complaint({"sheet", "1", "--out", folder / "a.pdf", "--paper", "b4"}, 2, "a4");
    expect_complaint({"sheet", "1", "--out", folder / "a.txt"}, 2, ".pdf");
    expect_complaint({"sheet", "--out", folder / "a.pdf"}, 2, "--sitting");
    EXPECT_FALSE(std::filesystem::exists(folder / "a.pdf"));
}

TEST_F(WrongUseTest, SettingThatIsNotThereOrCannotBeSo) {
    expect_complaint({"settings", "colour"}, 2,
                     "'business contact', 'keep looks years' and 'backup days'");
    expect_complaint({"settings", "colour", "red"}, 2, "'colour' is no setting");
    expect_complaint({"settings", "paper", "b4"}, 2, "a4, a3, a5 and letter");
    expect_complaint({"settings", "keep looks years", "some"}, 2, "from 1 to 100");
    EXPECT_TRUE(answer({"settings", "paper"})["value"].is_null());
}

TEST_F(WrongUseTest, SheetIntoAFolderThatIsNotThere) {
    add_client_with_two_looks_of_one_name();
    expect_complaint({"sheet", "1", "--out", folder / "none" / "a.pdf"}, 2, folder / "none");
}

TEST_F(WrongUseTest, SheetOverAFileOnlyWhenToldTo) {
    add_client_with_two_looks_of_one_name();
    const auto file = folder / "a.pdf";
    std::ofstream(file) << "hers";
    expect_complaint({"sheet", "1", "--out", file}, 2, "--replace");
    EXPECT_EQ(text_of(file), "hers");
    said({"sheet", "1", "--out", file, "--replace"});
    EXPECT_TRUE(text_of(file).starts_with("%PDF-"));
}

TEST_F(WrongUseTest, ImportFromAFolderThatIsNotThere) {
    expect_complaint({"import", folder / "card"}, 2, folder / "card");
}

TEST_F(WrongUseTest, SignOffIsRefusedWithReasons) {
    add_client_with_two_looks_of_one_name();
    const auto refused = answer({"sign-off", "1"}, 1);
    EXPECT_EQ(refused["signed"], false);
    EXPECT_GE(refused["reasons"].size(), 8U);  // a reason for each required shot, and the recipe
    EXPECT_TRUE(answer({"look", "show", "1"})["sign_off"].is_null());
}

TEST_F(WrongUseTest, RecordOfALookThatIsNotSignedOff) {
    add_client_with_two_looks_of_one_name();
    complained({"export-record", "1", "--to", folder / "record"}, 1);
    EXPECT_FALSE(std::filesystem::exists(folder / "record"));
}

TEST_F(WrongUseTest, RecipeThatIsNoneSavesNothing) {
    add_client_with_two_looks_of_one_name();
    expect_complaint({"recipe", "set", "1"}, 2, "--part");
    expect_complaint({"recipe", "set", "1", "--part", "colour=red"}, 2, "parting");
    expect_complaint({"recipe", "set", "1", "--part", "prep=foam"}, 2, "JSON");
    expect_complaint({"recipe", "set", "1", "--file", folder / "none.json"}, 2, "none.json");
    std::ofstream(folder / "bad.json") << "{\"parting\": 3}";
    expect_complaint({"recipe", "set", "1", "--file", folder / "bad.json"}, 1, "parting");
    EXPECT_TRUE(answer({"recipe", "revisions", "1"})["revisions"].empty());
}

TEST_F(WrongUseTest, ErrorsAreAnsweredAsJsonToo) {
    const Ran ran = run({"coverage", "Low bun", "--json"});
    EXPECT_EQ(ran.code, 2);
    EXPECT_EQ(nlohmann::json::parse(ran.out)["error"].get<std::string>() + '\n', ran.error);
}

// A full disk, played by the system's own device for it.
TEST_F(WrongUseTest, AnswerThatCannotBeWrittenIsAFailure) {
    const int status =
        std::system((shell_word(QTURN_PROGRAM) + " version >/dev/full 2>/dev/null").c_str());
    EXPECT_EQ(WEXITSTATUS(status), 1);
}

}  // namespace
}  // namespace quarterturn
