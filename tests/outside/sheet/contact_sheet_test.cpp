// A whole contact sheet from a library, read back with poppler.

#include "indexer/sheet/contact_sheet.h"

#include <opencv2/imgproc.hpp>

#include "indexer/disk/checksum.h"
#include "indexer/worker/confined.h"
#include "tests/support/command.h"
#include "tests/support/example_library.h"
#include "tests/ui/painter/painted.h"

namespace quarterturn {
namespace {

struct Tagged {
    Stage stage;
    Angle angle;
    cv::Scalar bgr;
};

class ContactSheet : public testing::Test {
  protected:
    void add(const Tagged& tagged, bool mirrored = false) {
        const std::string name = "shot" + std::to_string(++count_) + ".png";
        Photo photo = example_photo(name, taken_at("2026-11-07T10:12:03"));
        photo.file.device = example_.phone;
        photo.file.width = 300;
        photo.file.height = 400;
        const Path file = example_.library.folder() / photo.file.path;
        std::filesystem::create_directories(file.parent_path());
        cv::Mat picture = plain({300, 400}, tagged.bgr);
        picture.at<cv::Vec3b>(0, 0) += cv::Vec3b(static_cast<uchar>(count_), 0, 0);  // no twins
        write_png(file, picture);
        photo.file.sha256 = sha256(real_file_system().read(file, 1'000'000));
        const PhotoId id = example_.library.photos().add(photo);
        Tags tags;
        tags.sitting = example_.trial;
        tags.look = example_.look;
        tags.stage = tagged.stage;
        tags.angle = tagged.angle;
        tags.mirrored = mirrored;
        example_.library.history().apply({.said = "tagged", .tags = {{id, tags}}, .shifts = {}});
    }

    Path sheet(const SheetWishes& wishes = {}) {
        const auto ruler = make_text_ruler();
        const auto decoder = make_confined_decoder();
        const Document document =
            contact_sheet(example_.library, *decoder, *ruler, example_.look, wishes);
        return written(document);
    }

    Path written(const Document& document) {
        const auto decoder = make_confined_decoder();
        write_pdf(document, *decoder, real_file_system(), folder_ / "sheet.pdf");
        return folder_ / "sheet.pdf";
    }

    static std::string text_of(const Path& pdf) {
        return output_of("pdftotext -layout " + shell_word(pdf.string()) + " -");
    }

    cv::Mat page_of(const Path& pdf) {
        output_of("pdftoppm -singlefile -png -r 72 " + shell_word(pdf.string()) + " " +
                  shell_word((folder_ / "page").string()));
        return cv::imread((folder_ / "page.png").string());
    }

    // The middle of all pixels of about this colour; nothing when there are none.
    static std::optional<cv::Point2d> place_of(const cv::Mat& page, const cv::Scalar& bgr) {
        cv::Mat found;
        cv::inRange(page, bgr - cv::Scalar(8, 8, 8), bgr + cv::Scalar(8, 8, 8), found);
        const cv::Moments moments = cv::moments(found, true);
        if (moments.m00 < 50) return std::nullopt;
        return cv::Point2d(moments.m10 / moments.m00, moments.m01 / moments.m00);
    }

    TemporaryFolder folder_;
    ExampleLibrary example_;
    int count_ = 0;
};

TEST_F(ContactSheet, ColumnsAreLeftFrontRightBackAndBeforeStandsAboveAfter) {
    const std::vector<Tagged> photos{{Stage::after, Angle::back, {20, 200, 20}},
                                     {Stage::before, Angle::right, {200, 20, 20}},
                                     {Stage::after, Angle::left, {20, 20, 200}},
                                     {Stage::before, Angle::front, {20, 180, 180}},
                                     {Stage::after, Angle::crown, {180, 20, 180}}};
    for (const Tagged& photo : photos) add(photo);
    const cv::Mat page = page_of(sheet());
    const auto place = [&](std::size_t i) { return place_of(page, photos[i].bgr).value(); };
    const auto back = place(0), right = place(1), left = place(2), front = place(3),
               crown = place(4);
    EXPECT_LT(left.x, front.x);
    EXPECT_LT(front.x, right.x);
    EXPECT_LT(right.x, back.x);
    EXPECT_NEAR(left.y, back.y, 1);
    EXPECT_NEAR(front.y, right.y, 1);
    EXPECT_LT(front.y, left.y);
    EXPECT_GT(crown.y, left.y);
}

TEST_F(ContactSheet, SaysWhoseItIsHowCompleteAndWhatIsMissing) {
    add({Stage::after, Angle::left, {20, 20, 200}}, true);
    example_.library.settings().set(business_name_setting, "Thistle Quay Bridal Hair");
    Recipe recipe;
    recipe.cautions = "No latex near her neck.";
    recipe.parting = "centre, to the crown";
    example_.library.recipes().save(example_.look, recipe, at("2026-11-07T12:00"));
    const std::string text = text_of(sheet());
    for (const char* words :
         {"Mira Okonjo-Lindqvist", "low twisted bun, worn for the ceremony", "21 November 2026",
          "Not signed off", "missing", "before, front", "10:12", "mirrored, turned",
          "Caution: No latex near her neck.", "centre, to the crown", "Recipe, revision 1",
          "Thistle Quay Bridal Hair", "Page 1 of 1", "as she has allowed"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << "\nis not in\n" << text;
    }
}

TEST_F(ContactSheet, APhotoFileThatIsGoneIsNamedAndTheRestIsThere) {
    add({Stage::after, Angle::left, {20, 20, 200}});
    add({Stage::after, Angle::right, {20, 200, 20}});
    std::filesystem::remove(example_.library.folder() / "photos/2026/shot1.png");
    const Path pdf = sheet();
    EXPECT_NE(text_of(pdf).find("shot1.png"), std::string::npos);
    EXPECT_TRUE(place_of(page_of(pdf), {20, 200, 20}));
}

TEST_F(ContactSheet, NoSuchLookAndNoSuchSittingAreErrors) {
    const auto ruler = make_text_ruler();
    const auto decoder = make_confined_decoder();
    EXPECT_THROW(contact_sheet(example_.library, *decoder, *ruler, LookId{999}, {}), StoreError);
    EXPECT_THROW(sitting_sheet(example_.library, *ruler, SittingId{999}, Paper::a4), StoreError);
}

TEST_F(ContactSheet, ASittingSheetShowsEveryFrameOnAsManyPagesAsItTakes) {
    for (int i = 0; i < 70; ++i) add({Stage::during, Angle::left, {20, 20, 200}});
    const auto ruler = make_text_ruler();
    const Path pdf = written(sitting_sheet(example_.library, *ruler, example_.trial, Paper::a4));
    const std::string text = text_of(pdf);
    for (int i = 1; i <= 70; ++i) {
        EXPECT_NE(text.find("shot" + std::to_string(i) + ".png"), std::string::npos) << i;
    }
    EXPECT_NE(text.find("70 photos"), std::string::npos);
    EXPECT_NE(text.find("Page 2 of"), std::string::npos);
}

}  // namespace
}  // namespace quarterturn
