// Photos through the whole program, against exiftool, sha256sum and the files themselves.

#include <map>

#include "tests/app/card_test.h"
#include "tests/support/child.h"

namespace quarterturn {
namespace {

using nlohmann::json;

std::map<std::string, json> by_name(const json& photos) {
    std::map<std::string, json> named;
    for (const json& photo : photos) named[photo["name"]] = photo;
    return named;
}

using PhotosTest = CardTest;

// exiftool, on another road to the same file, says what stands in it.
TEST_F(PhotosTest, PhotosSayWhatExiftoolSays) {
    make_photo(card / "fraction.jpg", 1,
               "-DateTimeOriginal='2026:11:07 10:12:03' -SubSecTimeOriginal=0610 "
               "-OffsetTimeOriginal=+01:00 -Make=Larkwing -Model='Pocket 4' -Orientation#=6");
    make_photo(card / "plain.jpg", 2, "-DateTimeOriginal='2026:11:07 11:00:00' -Make=Quillmoor");
    make_photo(card / "no clock.jpg", 3, "-DateTimeOriginal#='0000:00:00 00:00:00'");
    answer({"import", card});
    const json told = json::parse(
        output_of("exiftool -json -n -d '%Y-%m-%dT%H:%M:%S' -DateTimeOriginal -SubSecTimeOriginal "
                  "-OffsetTimeOriginal -Make -Model -Orientation -ImageWidth -ImageHeight " +
                  shell_word(card)));
    auto photo = by_name(photos());
    ASSERT_EQ(photo.size(), told.size());
    for (const json& facts : told) {
        const std::string name =
            std::filesystem::path(facts["SourceFile"].get<std::string>()).filename();
        const bool turned = facts.value("Orientation", 1) >= 5;
        EXPECT_EQ(photo[name]["width"], facts[turned ? "ImageHeight" : "ImageWidth"]) << name;
        EXPECT_EQ(photo[name]["height"], facts[turned ? "ImageWidth" : "ImageHeight"]) << name;
    }
    EXPECT_EQ(photo["fraction.jpg"]["taken"], "2026-11-07T10:12:03.0610");
    EXPECT_EQ(photo["fraction.jpg"]["utc_offset"], "+01:00");
    EXPECT_EQ(photo["fraction.jpg"]["device"], "Larkwing Pocket 4");
    EXPECT_EQ(photo["plain.jpg"]["taken"], "2026-11-07T11:00:00");
    EXPECT_TRUE(photo["plain.jpg"]["utc_offset"].is_null());
    EXPECT_TRUE(photo["no clock.jpg"]["taken"].is_null());
    EXPECT_TRUE(photo["no clock.jpg"]["device"].is_null());
}

TEST_F(PhotosTest, ChecksumIsWhatSha256sumSaysOfOriginalAndCopy) {
    make_photo(card / "IMG_1.jpg", 1, "-DateTimeOriginal='2026:11:07 10:12:03'");
    const auto sum = [](const std::filesystem::path& file) {
        return output_of("sha256sum < " + shell_word(file)).substr(0, 64);
    };
    answer({"import", card});
    const json photo = photos()[0];
    EXPECT_EQ(photo["sha256"], sum(card / "IMG_1.jpg"));
    EXPECT_EQ(photo["sha256"], sum(library + '/' + photo["path"].get<std::string>()));
}

TEST_F(PhotosTest, PhotosAreFoundByNameNumberRangeAndChecksum) {
    for (int i = 1; i <= 4; ++i) {
        make_photo(card / ("IMG_" + std::to_string(i) + ".jpg"), i,
                   "-DateTimeOriginal='2026:11:07 10:12:0" + std::to_string(i) + "'");
    }
    answer({"import", card});
    const std::string sha256 = by_name(photos())["IMG_4.jpg"]["sha256"];
    const auto tagged = [&](const std::string& name) {
        return answer({"tag", name, "--angle", "left"})["photos"].size();
    };
    EXPECT_EQ(tagged("img_1.JPG"), 1U);
    EXPECT_EQ(tagged("#2"), 1U);
    EXPECT_EQ(tagged("2-4"), 3U);
    EXPECT_EQ(tagged(sha256.substr(0, 12)), 1U);
    EXPECT_EQ(photos({"--untagged"}).size(), 4U);  // no stage yet
    said({"tag", "1-4", "--stage", "after"});
    EXPECT_EQ(photos({"--untagged"}).size(), 0U);
}

TEST_F(PhotosTest, TwoPhotosOfOneNameAreListedAndNotGuessed) {
    std::filesystem::create_directories(card / "phone");
    make_photo(card / "IMG_1.jpg", 1, "-DateTimeOriginal='2026:11:07 10:12:03'");
    make_photo(card / "phone" / "IMG_1.jpg", 2, "-DateTimeOriginal='2026:11:07 10:30:00'");
    answer({"import", card});
    const std::string sentence = complained({"tag", "IMG_1.jpg", "--angle", "left"}, 2);
    EXPECT_NE(sentence.find("#1  IMG_1.jpg  2026-11-07T10:12:03"), std::string::npos) << sentence;
    EXPECT_NE(sentence.find("#2  IMG_1.jpg  2026-11-07T10:30:00"), std::string::npos) << sentence;
    EXPECT_EQ(photos({"--untagged"}).size(), 2U);
}

TEST_F(PhotosTest, TagsAreUndoneAndDoneAgain) {
    make_photo(card / "IMG_1.jpg", 1, "");
    answer({"import", card});
    said({"tag", "1", "--angle", "left-three-quarter", "--stage", "after", "--mirrored", "--note",
          "comb sits low"});
    EXPECT_EQ(photos()[0]["angle"], "left three-quarter");
    EXPECT_EQ(photos()[0]["mirrored"], true);
    EXPECT_EQ(photos()[0]["note"], "comb sits low");
    said({"undo"});
    EXPECT_TRUE(photos()[0]["angle"].is_null());
    EXPECT_EQ(photos()[0]["note"], "");
    said({"redo"});
    EXPECT_EQ(photos()[0]["angle"], "left three-quarter");
    said({"tag", "1", "--angle", "none"});
    EXPECT_TRUE(photos()[0]["angle"].is_null());
    EXPECT_EQ(photos()[0]["stage"], "after");
}

TEST_F(PhotosTest, SuggestionCountsOnlyOnceConfirmed) {
    make_photo(card / "bun left.jpg", 1, "");
    answer({"import", card});
    EXPECT_EQ(photos()[0]["suggestion"]["angle"], "left");
    EXPECT_TRUE(photos()[0]["angle"].is_null());
    EXPECT_EQ(answer({"confirm", "--all"})["confirmed"], 1);
    EXPECT_EQ(photos()[0]["angle"], "left");
    EXPECT_EQ(answer({"confirm", "--all"})["confirmed"], 0);
}

TEST_F(PhotosTest, PhotosFallToTheSittingOfTheirHoursAndTheRestIsListed) {
    make_photo(card / "in.jpg", 1, "-DateTimeOriginal='2026:11:07 10:12:03'");
    make_photo(card / "out.jpg", 2, "-DateTimeOriginal='2026:11:08 10:12:03'");
    said({"client", "add", "Ada Lindqvist"});
    said({"sitting", "add", "1", "--starts", "2026-11-07T10:00", "--ends", "2026-11-07T13:00"});
    answer({"import", card});
    const json report = answer({"sort"}, 3);
    ASSERT_EQ(report["unplaced"].size(), 1U);
    EXPECT_EQ(report["unplaced"][0]["name"], "out.jpg");
    EXPECT_EQ(photos({"--sitting", "1"})[0]["name"], "in.jpg");
    EXPECT_EQ(photos({"--unplaced"})[0]["name"], "out.jpg");
    said({"place", "out.jpg", "--sitting", "1"});
    EXPECT_EQ(photos({"--client", "Ada Lindqvist"}).size(), 2U);
    const std::string path = by_name(photos())["out.jpg"]["path"];
    EXPECT_TRUE(path.starts_with("photos/2026/2026-11-07 Ada Lindqvist trial/")) << path;
    EXPECT_TRUE(std::filesystem::exists(library + '/' + path));
    said({"place", "out.jpg", "--by-time"});
    EXPECT_EQ(photos({"--unplaced"}).size(), 1U);
}

TEST_F(PhotosTest, PairOfPhotosOfOneMomentSetsAClockRight) {
    make_photo(card / "camera.jpg", 1,
               "-DateTimeOriginal='2026:11:07 09:30:00' -Make=Quillmoor -Model=Field");
    make_photo(card / "phone.jpg", 2,
               "-DateTimeOriginal='2026:11:07 10:17:00' -Make=Larkwing -Model=Pocket");
    answer({"import", card});
    const json report = answer({"clock", "pair", "camera.jpg", "phone.jpg"}, 3);
    EXPECT_EQ(report["applied"]["shift"], "+00:47:00");
    auto photo = by_name(photos());
    EXPECT_EQ(photo["camera.jpg"]["taken"], "2026-11-07T09:30:00");
    EXPECT_EQ(photo["camera.jpg"]["corrected"], "2026-11-07T10:17:00");
    EXPECT_EQ(photo["phone.jpg"]["corrected"], "2026-11-07T10:17:00");
    said({"undo"});
    EXPECT_EQ(by_name(photos())["camera.jpg"]["corrected"], "2026-11-07T09:30:00");
    answer({"clock", "apply", "Field", "--shift", "-00:01:30"}, 3);
    EXPECT_EQ(by_name(photos())["camera.jpg"]["corrected"], "2026-11-07T09:28:30");
}

// A file name may hold any bytes but '/' and NUL.
TEST_F(PhotosTest, FileNamesCannotSpeakToTheTerminal) {
    const std::string name = "a\x1b[2J\xFF.jpg";
    make_photo(card / "plain.jpg", 1, "");
    std::filesystem::rename(card / "plain.jpg", card / name);
    std::ofstream(card / "b\x1b]0;title\x07.txt") << "text";
    const Ran report = run({"import", card});
    const Ran list = run({"photos"});
    const Ran listed_json = run({"photos", "--json"});
    for (const std::string& text : {report.out, report.error, list.out, listed_json.out}) {
        EXPECT_EQ(text.find('\x1b'), std::string::npos) << text;
        EXPECT_EQ(text.find('\x07'), std::string::npos) << text;
        EXPECT_EQ(text.find('\xFF'), std::string::npos) << text;
    }
    EXPECT_EQ(json::parse(listed_json.out)["photos"].size(), 1U);
}

// As on a DVD: what is in it can be listed, found, drawn and checked.
TEST_F(PhotosTest, ALibraryOnADiskThatCanOnlyBeReadIsLookedAt) {
    make_photo(card / "DCIM/front.jpg", 1, "'-DateTimeOriginal=2026:10:03 11:00:00'");
    said({"client", "add", "Ada Lindqvist"});
    said({"look", "add", "Ada Lindqvist", "Low bun"});
    said({"import", card});
    said({"tag", "front.jpg", "--look", "Low bun", "--stage", "after", "--angle", "front"});
    std::filesystem::create_directory(folder / "more");
    make_photo(folder / "more/back.jpg", 2, "'-DateTimeOriginal=2026:10:03 11:30:00'");
    const auto answer = on_read_only_disk(library, [&] {
        std::string told;
        const std::vector<Arguments> looking{{"photos"},
                                             {"client", "list"},
                                             {"look", "show", "Low bun"},
                                             {"coverage", "Low bun"},
                                             {"find", "bun"},
                                             {"pairs", "list"},
                                             {"sheet", "Low bun", "--out", folder / "sheet.pdf"},
                                             {"verify"}};
        for (const Arguments& arguments : looking) {
            const Ran ran = run(arguments);
            const bool told_why = ran.error.find("Only to be looked at: ") != std::string::npos;
            if (ran.code == 1 || !told_why) told += arguments[0] + ": " + ran.out + ran.error;
        }
        const std::vector<Arguments> changing{{"tag", "front.jpg", "--note", "loose"},
                                              {"import", folder / "more"},
                                              {"recipe", "rules", "--write"},
                                              {"consent", "form", "--write-wording"}};
        for (const Arguments& arguments : changing) {
            const Ran ran = run(arguments);
            const std::string last =
                ran.error.substr(ran.error.rfind('\n', ran.error.size() - 2) + 1);
            told += std::to_string(ran.code) + ' ' + arguments[0] + ": " + last;
        }
        return told;
    });
    if (!answer) GTEST_SKIP() << "The system lets us have no disk that can only be read.";
    const std::string why = ": " + library +
                            "/records.sqlite lies on a disk that can only be read: copy the "
                            "library's folder to another disk and open it there.\n";
    EXPECT_EQ(*answer, "1 tag" + why + "1 import" + why + "1 recipe" + why + "1 consent" + why);
    EXPECT_EQ(output_of("pdfimages -list " + shell_word(folder / "sheet.pdf") + " | grep -c image"),
              "1\n");
}

// As a service does that copies folders between computers.
TEST_F(PhotosTest, OlderRecordsThatWerePutInTheLibraryAreSaidUntilSomethingIsAdded) {
    const std::filesystem::path records = library + "/records.sqlite";
    const auto put = [](const std::filesystem::path& from, const std::filesystem::path& to) {
        std::filesystem::copy_file(from, to, std::filesystem::copy_options::overwrite_existing);
    };
    put(records, folder / "older");
    said({"client", "add", "Ada Lindqvist"});
    EXPECT_EQ(run({"client", "list"}).error, "");
    put(folder / "older", records);
    const Ran ran = run({"client", "list"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_TRUE(ran.error.starts_with(records.string() + " is older than it was")) << ran.error;
    EXPECT_NE(ran.error.find("qturn restore"), std::string::npos);
    const json found = answer({"verify"}, 3);
    ASSERT_EQ(found["records"].size(), 1U) << found;
    said({"client", "add", "Bea Holm"});
    EXPECT_EQ(run({"client", "list"}).error, "");
    EXPECT_EQ(answer({"verify"})["records"], json::array());
}

TEST_F(PhotosTest, DeletedCacheIsMadeAgain) {
    make_photo(card / "IMG_1.jpg", 1, "");
    answer({"import", card});
    std::filesystem::remove_all(library + "/cache");
    EXPECT_EQ(answer({"rebuild-cache"})["made"], 1);
    EXPECT_EQ(answer({"rebuild-cache"})["made"], 0);
}

}  // namespace
}  // namespace quarterturn
