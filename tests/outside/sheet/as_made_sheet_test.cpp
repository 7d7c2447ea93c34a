// pdftotext and pdfinfo are Poppler's.

#include "indexer/sheet/as_made_sheet.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <regex>

#include "indexer/image/decode.h"
#include "indexer/worker/confined.h"
#include "tests/support/command.h"
#include "tests/support/day_with_higher_hair.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

template <class Example>
struct SheetOf : testing::Test {
    std::string written_text() {
        const auto ruler = make_text_ruler();
        const Document document =
            as_made_sheet(example.library, *decoder, *ruler, example.wedding, Paper::a4);
        const Path file = example.folder / "as-made.pdf";
        EXPECT_EQ(write_pdf(document, *decoder, real_file_system(), file).problems,
                  std::vector<std::string>{});
        return output_of("pdftotext -layout " + shell_word(file.string()) + " -");
    }

    Example example;
    std::unique_ptr<Decoder> decoder = make_confined_decoder();
};

using AsMadeSheetTest = SheetOf<AsMadeLibrary>;
using DifferentDaySheetTest = SheetOf<DayWithHigherHair>;

TEST_F(DifferentDaySheetTest, SaysWhatDiffersAsAHintAndWhatPhotosCannotTell) {
    std::string text = written_text();
    std::ranges::replace(text, '\n', ' ');
    text = std::regex_replace(text, std::regex(" +"), " ");
    EXPECT_TRUE(
        std::regex_search(text, std::regex("The hair stands about (2|2.5|3) cm higher than at "
                                           "the trial, as far as the photos can tell.")))
        << text;
    EXPECT_NE(text.find("Where the hair is parted cannot be told from the photos."),
              std::string::npos)
        << text;
}

TEST_F(AsMadeSheetTest, SaysWhichPhotoIsWhichWhenAndWhatIsMissing) {
    const std::string text = written_text();
    for (const char* said : {"As agreed, as made", "Mira Okonjo-Lindqvist", "As agreed", "As made",
                             "7 November 2026, 11:30", "21 November 2026, 10:47",
                             "No photo of the day", "Back", "not signed off"}) {
        EXPECT_NE(text.find(said), std::string::npos) << said << "\n" << text;
    }
    EXPECT_EQ(text.find("Front"), std::string::npos) << "there is no photo of it on either side";
}

TEST_F(AsMadeSheetTest, IsOnePageOfA4) {
    written_text();
    const std::string info =
        output_of("pdfinfo " + shell_word((example.folder / "as-made.pdf").string()));
    EXPECT_NE(info.find("A4"), std::string::npos) << info;
    EXPECT_NE(info.find("Pages:           1"), std::string::npos) << info;
}

}  // namespace
}  // namespace quarterturn
