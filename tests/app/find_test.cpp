#include "tests/app/program.h"

namespace quarterturn {
namespace {

using nlohmann::json;

// Ada's trial with one photo, made by tools outside of the program, and one photo of nothing.
class FindTest : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        const std::filesystem::path card = folder / "card";
        std::filesystem::create_directories(card);
        make(card / "IMG_1.jpg", "red", "2026:11:07 10:12:03");
        make(card / "IMG_2.jpg", "blue", "2026:11:09 18:00:00");
        said({"client", "add", "Zo\u00eb Lindqvist"});
        said({"sitting", "add", "1", "--starts", "2026-11-07T10:00", "--ends", "2026-11-07T13:00"});
        said({"look", "add", "1", "Low twisted bun", "--sitting", "1"});
        said({"recipe", "set", "1", "--part", "parting=side, with 三股辮 behind"});
        answer({"import", card});
        said({"sort"}, 3);
        said({"tag", "IMG_1.jpg", "--angle", "left", "--stage", "after", "--look", "1", "--note",
              "the leaf comb sits low"});
    }

    static void make(const std::filesystem::path& file, const std::string& colour,
                     const std::string& taken) {
        output_of("convert -size 160x200 xc:" + colour + ' ' + shell_word(file));
        output_of("exiftool -q -overwrite_original -DateTimeOriginal=" + shell_word(taken) + ' ' +
                  shell_word(file));
    }

    std::vector<std::string> found(Arguments arguments) {
        arguments.insert(arguments.begin(), "find");
        const json told = answer(arguments);
        std::vector<std::string> names;
        for (const json& photo : told["photos"]) names.push_back(photo["name"]);
        return names;
    }
};

using Found = std::vector<std::string>;

TEST_F(FindTest, FindsByWordsInNamesNotesAndRecipes) {
    for (const char* words : {"leaf", "zoe", "TWIST", "股辮", "img_1", "trial"}) {
        EXPECT_EQ(found({words}), Found{"IMG_1.jpg"}) << words;
    }
    EXPECT_EQ(found({"comb", "zoe"}), Found{"IMG_1.jpg"});
    EXPECT_EQ(found({"img"}), (Found{"IMG_1.jpg", "IMG_2.jpg"}));
}

TEST_F(FindTest, EveryConditionHolds) {
    EXPECT_EQ(found({"--client", "1"}), Found{"IMG_1.jpg"});
    EXPECT_EQ(found({"--look", "Low twisted bun"}), Found{"IMG_1.jpg"});
    EXPECT_EQ(found({"--sitting", "1", "--angle", "left", "--stage", "after"}), Found{"IMG_1.jpg"});
    EXPECT_EQ(found({"--sitting", "1", "--angle", "right"}), Found{});
    EXPECT_EQ(found({"--from", "2026-11-08"}), Found{"IMG_2.jpg"});
    EXPECT_EQ(found({"--from", "2026-11-07", "--to", "2026-11-08"}), Found{"IMG_1.jpg"});
    EXPECT_EQ(found({"--not-placed"}), Found{"IMG_2.jpg"});
}

TEST_F(FindTest, SaysWhereTheWordsStand) {
    const json photo = answer({"find", "leaf"})["photos"][0];
    EXPECT_EQ(photo["found_in"],
              json::parse(R"([{"where": "photo", "pieces": [{"text": "the ", "found": false},
                  {"text": "leaf", "found": true}, {"text": " comb sits low", "found": false}]}])"));
    EXPECT_NE(said({"find", "leaf"}).find("photo: the *leaf* comb sits low"), std::string::npos);
}

TEST_F(FindTest, NothingFoundIsNoFailure) {
    EXPECT_NE(said({"find", "veil"}).find("Nothing was found"), std::string::npos);
    EXPECT_EQ(answer({"find", "\"*(veil", "OR"})["photos"], json::array());
}

TEST_F(FindTest, WrongUseIsNamed) {
    EXPECT_NE(complained({"find", "leaf", "--client", ""}, 2).find("--client"), std::string::npos);
    complained({"find"}, 2);
    complained({"find", "--stage", "later"}, 2);
    complained({"find", "--from", "2026-11-31"}, 2);
    complained({"find", "--from", "2026-11-09", "--to", "2026-11-07"}, 2);
    complained({"find", "--client", "Nobody"}, 2);
}

}  // namespace
}  // namespace quarterturn
