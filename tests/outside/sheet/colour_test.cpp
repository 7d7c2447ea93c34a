// A photo tagged Display P3, as phones tag theirs, is printed in the colours that it stands for:
// what poppler and the picture files show lands within ΔE00 2 (ISO/CIE 11664-6) of the sRGB truth.

#include "indexer/image/colour.h"

#include <cmath>

#include "indexer/image/profile.h"
#include "indexer/worker/confined.h"
#include "tests/support/command.h"
#include "tests/support/display_p3.h"
#include "tests/ui/painter/painted.h"

namespace quarterturn {
namespace {

// Hair from black to platinum and copper, skin, and a red that no sRGB picture can outdo.
const std::vector<Rgb> patches{{24, 18, 15},  {98, 66, 42},   {190, 150, 100}, {232, 212, 178},
                               {150, 66, 34}, {196, 104, 58}, {230, 190, 170}, {255, 0, 0}};
constexpr double side = 5;  // mm

PhotoItem tagged_photo(const TemporaryFolder& folder) {
    cv::Mat row(100, static_cast<int>(100 * patches.size()), CV_8UC3);
    for (std::size_t i = 0; i < patches.size(); ++i) {
        const Rgb p3 = p3_of_srgb(patches[i]);
        row({static_cast<int>(100 * i), 0, 100, 100}).setTo(cv::Scalar(p3[2], p3[1], p3[0]));
    }
    PhotoItem item;
    item.file = folder / "p3.png";
    item.box = {5, 5, side * static_cast<double>(patches.size()), side};
    write_png(item.file, row);
    // SMPTE EG 432-1 primaries with the white of D65.
    const auto icc = make_profile({0.3127, 0.3290}, {0.680, 0.320}, {0.265, 0.690}, {0.150, 0.060});
    real_file_system().write_new(folder / "p3.icc", icc);
    output_of("exiftool -q -overwrite_original '-ICC_Profile<=" + (folder / "p3.icc").string() +
              "' " + shell_word(item.file.string()));
    return item;
}

void expect_truth(const cv::Mat& page, double pixels_per_mm) {
    for (std::size_t i = 0; i < patches.size(); ++i) {
        const double x = 5 + side * (static_cast<double>(i) + 0.5);
        const auto seen =
            page.at<cv::Vec3b>(cvRound((5 + side / 2) * pixels_per_mm), cvRound(x * pixels_per_mm));
        EXPECT_LT(
            colour_difference(lab_of_srgb({seen[2], seen[1], seen[0]}), lab_of_srgb(patches[i])), 2)
            << "patch " << i;
    }
}

TEST(Colour, ADisplayP3PhotoIsPrintedInItsTrueColours) {
    const TemporaryFolder folder;
    const auto decoder = make_confined_decoder();
    write_pdf(document_of({tagged_photo(folder)}), *decoder, real_file_system(),
              folder / "page.pdf");
    output_of("pdftoppm -singlefile -png -r 254 " + shell_word((folder / "page.pdf").string()) +
              " " + shell_word((folder / "seen").string()));
    expect_truth(cv::imread((folder / "seen.png").string()), 10);
}

TEST(Colour, AndSoItIsInPictureFiles) {
    const TemporaryFolder folder;
    const auto decoder = make_confined_decoder();
    const Document document = document_of({tagged_photo(folder)});
    for (const char* name : {"page.png", "page.jpg"}) {
        SCOPED_TRACE(name);
        write_pictures(document, *decoder, real_file_system(), folder / name);
        expect_truth(cv::imread((folder / name).string()), print_dpi / 25.4);
    }
}

}  // namespace
}  // namespace quarterturn
