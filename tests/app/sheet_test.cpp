#include <opencv2/core.hpp>

#include "tests/app/program.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

// A sitting with more frames than one A5 page holds.
class SheetTest : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        said({"client", "add", "Ada Lindqvist"});
        said({"sitting", "add", "1", "--starts", "2026-11-07T10:00", "--ends", "2026-11-07T13:00"});
        std::filesystem::create_directory(folder / "card");
        for (int i = 0; i < frames; ++i) {
            cv::Mat picture(96, 64, CV_8UC3, cv::Scalar::all(60 + i));
            write_bytes(folder / "card" / ("IMG_" + std::to_string(100 + i) + ".jpg"),
                        encoded(picture, ".jpg"));
        }
        output_of("exiftool -q -overwrite_original -DateTimeOriginal='2026:11:07 11:00:00' " +
                  shell_word(folder / "card"));
        answer({"import", folder / "card"});
    }

    static constexpr int frames = 120;
};

TEST_F(SheetTest, PicturesOfSeveralPagesAreNumberedAndNoneIsWrittenOver) {
    const Arguments command{"sheet",   "--sitting", "1", "--out", folder / "frames.png",
                            "--paper", "a5"};
    std::ofstream(folder / "frames-2.png") << "hers";
    const std::string sentence = complained(command, 2);
    EXPECT_NE(sentence.find("frames-2.png"), std::string::npos) << sentence;
    EXPECT_EQ(text_of(folder / "frames-2.png"), "hers");
    EXPECT_FALSE(std::filesystem::exists(folder / "frames.png"));

    std::filesystem::remove(folder / "frames-2.png");
    const nlohmann::json written = answer(command);
    ASSERT_GE(written["pages"], 2);
    EXPECT_NE(written["caution"].get<std::string>().find("only as she has allowed"),
              std::string::npos);
    EXPECT_EQ(written["files"].size(), written["pages"]);
    EXPECT_EQ(written["files"][1], (folder / "frames-2.png").string());
    // A5 at 300 dots per inch: 148 × 210 mm (ISO 216).
    EXPECT_EQ(output_of("identify -format '%wx%h' " + shell_word(folder / "frames-2.png")),
              "1748x2480");
}

TEST_F(SheetTest, ARangeThatEndsBeyondThePhotosIsTakenForASlip) {
    const std::string sentence = complained({"tag", "118-1188", "--angle", "left"}, 2);
    EXPECT_NE(sentence.find("no photo with number 1188"), std::string::npos) << sentence;
    EXPECT_TRUE(answer({"photos"})["photos"][119]["angle"].is_null());
    said({"tag", "118-120", "--angle", "left"});
}

// pdfinfo gives the page in points: 8.5 × 11 in is 612 × 792.
TEST_F(SheetTest, PaperIsTheOneAskedFor) {
    answer({"sheet", "--sitting", "1", "--out", folder / "frames.pdf", "--paper", "letter"});
    const std::string info = output_of("pdfinfo " + shell_word(folder / "frames.pdf"));
    EXPECT_NE(info.find("612 x 792 pts (letter)"), std::string::npos) << info;
}

// A file of hers may have such a name: it is named, and stays as it is.
TEST_F(SheetTest, PagesOfALongerSheetBeforeAreNamedAndStay) {
    const auto write = [&] {
        return answer(
            {"sheet", "--sitting", "1", "--out", folder / "y.jpg", "--paper", "a3", "--replace"});
    };
    const std::size_t pages = write()["files"].size();
    EXPECT_EQ(write()["older_pages"], nlohmann::json::array());
    const auto older = folder / ("y-" + std::to_string(pages + 1) + ".jpg");
    write_bytes(older, encoded(four_quarters(64, 48), ".jpg"));
    const auto kept = text_of(older);
    EXPECT_EQ(write()["older_pages"], nlohmann::json::array({older.string()}));
    EXPECT_EQ(text_of(older), kept);
    const std::string words =
        said({"sheet", "--sitting", "1", "--out", folder / "y.jpg", "--paper", "a3", "--replace"});
    EXPECT_NE(words.find(older.filename().string()), std::string::npos) << words;
}

// A5 is 148 × 210 mm (ISO 216), 419.5 × 595.3 points.
TEST_F(SheetTest, PaperIsTheUsualOneWhenNoneIsNamed) {
    const auto info = [&] {
        answer({"sheet", "--sitting", "1", "--out", folder / "frames.pdf", "--replace"});
        return output_of("pdfinfo " + shell_word(folder / "frames.pdf"));
    };
    EXPECT_NE(info().find("(A4)"), std::string::npos);
    said({"settings", "paper", "A5"});
    EXPECT_NE(info().find("419."), std::string::npos) << info();
}

}  // namespace
}  // namespace quarterturn
