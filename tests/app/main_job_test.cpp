// The whole job on the demo photos, as app/demo.sh does it, against the truth they were made with
// and against other programs.

#include <map>

#include "tests/app/program.h"
#include "tests/support/csv.h"

namespace quarterturn {
namespace {

using nlohmann::json;

const std::filesystem::path demo = QUARTERTURN_DEMO_PHOTOS;
constexpr const char* ceremony = "Low twisted bun, leaf comb";
constexpr const char* evening = "Let down in waves, leaf comb";

class MainJobTest : public QturnTest {
  protected:
    // The demo is brought in once; each test works on a copy of that library.
    void SetUp() override {
        if (brought_in.is_null()) {
            library = made_once() / "library";
            said({"init"});
            said({"scenario", demo / "scenario.json"});
            brought_in = answer({"import", demo / "photos"});
            library = folder / "library";
        }
        std::filesystem::copy(made_once() / "library", library,
                              std::filesystem::copy_options::recursive);
    }

    std::map<std::string, json> photos() {
        std::map<std::string, json> named;
        const json told = answer({"photos"});
        for (const json& photo : told["photos"]) named[photo["name"]] = photo;
        return named;
    }

    void set_the_camera_right() {
        const json proposals = answer({"clock", "propose"}, 3)["proposals"];
        ASSERT_EQ(proposals.size(), 1U);
        run({"clock", "apply", std::to_string(proposals[0]["device_id"].get<int>())});
    }

    static const std::filesystem::path& made_once() {
        static const TemporaryFolder place;
        return place.path();
    }
    inline static json brought_in;
};

std::string name_in(const CsvRow& row) {
    return std::filesystem::path(row.at("file")).filename();
}

TEST_F(MainJobTest, EveryDemoPhotoIsBroughtInOnce) {
    const std::size_t count = read_csv(demo / "truth.csv").size();
    EXPECT_EQ(brought_in["imported"], count);
    EXPECT_TRUE(brought_in["refused"].empty());
    const json again = answer({"import", demo / "photos"});
    EXPECT_EQ(again["imported"], 0);
    EXPECT_EQ(again["already_here"], count);
    EXPECT_EQ(photos().size(), count);
}

// exiftool reads the same files on another road.
TEST_F(MainJobTest, PhotosSayWhatExiftoolSays) {
    const json told = json::parse(
        output_of("exiftool -json -r -d '%Y-%m-%dT%H:%M:%S' -DateTimeOriginal -SubSecTimeOriginal "
                  "-OffsetTimeOriginal -Model " +
                  shell_word(demo / "photos")));
    const auto photo = photos();
    ASSERT_EQ(told.size(), photo.size());
    for (const json& facts : told) {
        const std::string name =
            std::filesystem::path(facts["SourceFile"].get<std::string>()).filename();
        const json fraction = facts["SubSecTimeOriginal"];
        const std::string digits =
            fraction.is_string() ? fraction.get<std::string>() : fraction.dump();
        EXPECT_TRUE(photo.at(name)["taken"].get<std::string>().starts_with(
            facts["DateTimeOriginal"].get<std::string>() + '.'))
            << name;
        EXPECT_TRUE(photo.at(name)["taken"].get<std::string>().ends_with(digits)) << name;
        EXPECT_EQ(photo.at(name)["utc_offset"], facts.value("OffsetTimeOriginal", json())) << name;
        EXPECT_EQ(
            photo.at(name)["device"].get<std::string>().find(facts["Model"]) == std::string::npos,
            false)
            << name;
    }
}

// truth.csv is written by the program that renders the photos, not by the one that reads them.
TEST_F(MainJobTest, SlowClockIsNoticedAndSetRight) {
    const json proposals = answer({"clock", "propose"}, 3)["proposals"];
    ASSERT_EQ(proposals.size(), 1U);
    EXPECT_NEAR(proposals[0]["shift_seconds"].get<int>(), 47 * 60, 5 * 60);
    run({"clock", "apply", std::to_string(proposals[0]["device_id"].get<int>()), "--shift",
         "+00:47"});
    const auto photo = photos();
    for (const CsvRow& row : read_csv(demo / "truth.csv")) {
        const json& read = photo.at(name_in(row));
        EXPECT_EQ(read["taken"].get<std::string>().substr(0, 19),
                  row.at("file_time").substr(0, 19));
        EXPECT_EQ(read["corrected"].get<std::string>().substr(0, 19),
                  row.at("true_time").substr(0, 19));
        EXPECT_EQ(read["width"], std::stoi(row.at("width"))) << row.at("file");
        EXPECT_EQ(read["height"], std::stoi(row.at("height"))) << row.at("file");
        EXPECT_EQ(read["sitting"].is_null(), row.at("sitting").empty()) << row.at("file");
    }
}

TEST_F(MainJobTest, GoesFromPhotosToASealedLookAndAPrintedSheet) {
    set_the_camera_right();
    said({"scenario", demo / "tags.json", "--tags"});

    EXPECT_EQ(answer({"coverage", ceremony})["complete"], true);
    const json gaps = answer({"coverage", evening}, 3);
    EXPECT_EQ(gaps["complete"], false);
    EXPECT_NE(gaps["next_shot"].get<std::string>().find("back"), std::string::npos) << gaps;

    EXPECT_EQ(answer({"sign-off", evening}, 1)["signed"], false);
    EXPECT_EQ(answer({"sign-off", ceremony})["signed"], true);
    EXPECT_TRUE(answer({"look", "show", ceremony})["sign_off"]["changes_since"].empty());
    said({"sign-off", ceremony}, 1);  // it stands already

    const auto sheet = folder / "sheet.pdf";
    EXPECT_EQ(answer({"sheet", ceremony, "--out", sheet})["files"], json{sheet.string()});
    EXPECT_NE(output_of("pdfinfo " + shell_word(sheet)).find("(A4)"), std::string::npos);
    const std::string text = output_of("pdftotext " + shell_word(sheet) + " -");
    for (const char* part : {"Séraphine Vašnovič", ceremony, "Signed off"}) {
        EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
    }

    said({"export-record", ceremony, "--to", folder / "record"});
    EXPECT_EQ(std::system(("cd " + shell_word(folder / "record") +
                           " && sha256sum --quiet -c manifest-sha256.txt")
                              .c_str()),
              0);

    said({"recipe", "set", ceremony, "--part", "finish=strong hold spray"});
    EXPECT_EQ(answer({"look", "show", ceremony})["sign_off"]["changes_since"].size(), 1U);
    said({"reopen", ceremony, "--because", "She wants it firmer."});
    EXPECT_TRUE(answer({"look", "show", ceremony})["sign_off"].is_null());
}

TEST_F(MainJobTest, SheetOfASittingShowsEveryFrame) {
    set_the_camera_right();
    const json sittings = answer({"sitting", "list"})["sittings"];
    std::string trial;
    for (const json& sitting : sittings) {
        if (sitting["starts"] == "2026-11-07T10:00:00")
            trial = std::to_string(sitting["id"].get<int>());
    }
    const std::size_t frames = answer({"photos", "--sitting", trial})["photos"].size();
    const auto sheet = folder / "frames.pdf";
    const json written = answer({"sheet", "--sitting", trial, "--out", sheet, "--paper", "a3"});
    EXPECT_TRUE(written["problems"].empty());
    // pdfimages lists one line for each picture after two lines of heading.
    const std::string images = output_of("pdfimages -list " + shell_word(sheet));
    EXPECT_GE(std::count(images.begin(), images.end(), '\n'), static_cast<long>(frames) + 2);
}

TEST_F(MainJobTest, FileThatChangedAfterSignOffShowsOnTheLookAndTheSheet) {
    said({"scenario", demo / "tags.json", "--tags"});
    said({"sign-off", ceremony});
    const json id = answer({"coverage", ceremony})["lines"][0]["photo_id"];
    const json told = answer({"photos"});
    std::string path;
    for (const json& photo : told["photos"]) {
        if (photo["id"] == id) path = photo["path"];
    }
    std::ofstream(std::filesystem::path(library) / path, std::ios::app) << "changed";
    const json changes = answer({"look", "show", ceremony})["sign_off"]["changes_since"];
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_NE(changes[0].get<std::string>().find(path), std::string::npos) << changes;
    const json problems = answer({"sheet", ceremony, "--out", folder / "s.pdf"}, 3)["problems"];
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_NE(problems[0].get<std::string>().find(path + " is not shown"), std::string::npos)
        << problems;
}

TEST_F(MainJobTest, FlawedPhotoStandsForItsShotOnceAcceptedWithAReason) {
    set_the_camera_right();
    said({"scenario", demo / "tags.json", "--tags"});
    std::string weak;
    const json told = answer({"coverage", evening}, 3);
    for (const json& line : told["lines"]) {
        if (line["verdict"] == "weak" && line["need"] == "required") weak = line["photo_id"].dump();
    }
    ASSERT_FALSE(weak.empty());
    said({"accept", weak, "--because", "The comb and the wave are clear enough."});
    EXPECT_EQ(answer({"coverage", evening})["complete"], true);
    said({"undo"});
    EXPECT_EQ(answer({"coverage", evening}, 3)["complete"], false);
}

}  // namespace
}  // namespace quarterturn
