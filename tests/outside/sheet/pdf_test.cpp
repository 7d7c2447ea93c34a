// What poppler says of the PDFs: paper, text in any script, and where pictures stand.

#include <cmath>

#include "indexer/worker/confined.h"
#include "tests/support/command.h"
#include "tests/ui/painter/painted.h"

namespace quarterturn {
namespace {

Path written_pdf(const TemporaryFolder& folder, const Document& document) {
    const auto decoder = make_confined_decoder();
    write_pdf(document, *decoder, real_file_system(), folder / "sheet.pdf");
    return folder / "sheet.pdf";
}

Document blank_pages(const std::vector<Size>& papers) {
    Document document;
    document.title = "Low twisted bun, Ανθή";
    for (const Size& paper : papers) document.pages.push_back({paper, {}});
    return document;
}

std::string line_with(const std::string& text, const std::string& wanted) {
    const std::size_t at = text.find(wanted);
    if (at == std::string::npos) return {};
    return text.substr(at, text.find('\n', at) - at);
}

// ISO 216: A3 297 × 420 mm, A4 210 × 297, A5 148 × 210; US Letter 8.5 × 11 in. A point is 1/72 in.
TEST(Pdf, PagesAreExactlyAsLargeAsTheirPaper) {
    const TemporaryFolder folder;
    struct {
        Paper paper;
        double width_points, height_points;
    } const cases[]{{Paper::a3, 297 / 25.4 * 72, 420 / 25.4 * 72},
                    {Paper::a4, 210 / 25.4 * 72, 297 / 25.4 * 72},
                    {Paper::a5, 148 / 25.4 * 72, 210 / 25.4 * 72},
                    {Paper::letter, 612, 792}};
    for (const auto& [paper, width, height] : cases) {
        for (const bool across : {false, true}) {
            const Size size = paper_size(paper, across);
            const Path file = written_pdf(folder, blank_pages({size, size}));
            const std::string info = output_of("pdfinfo -l 2 " + shell_word(file.string()));
            for (const char* page : {"Page    1 size:", "Page    2 size:"}) {
                const std::string line = line_with(info, page);
                double seen_width = 0;
                double seen_height = 0;
                ASSERT_EQ(std::sscanf(line.c_str() + std::string(page).size(), " %lf x %lf",
                                      &seen_width, &seen_height),
                          2)
                    << info;
                EXPECT_NEAR(seen_width, across ? height : width, 0.01);
                EXPECT_NEAR(seen_height, across ? width : height, 0.01);
            }
        }
    }
}

TEST(Pdf, CarriesItsTitle) {
    const TemporaryFolder folder;
    const Path file = written_pdf(folder, blank_pages({paper_size(Paper::a4, false)}));
    EXPECT_NE(output_of("pdfinfo " + shell_word(file.string())).find("Low twisted bun, Ανθή"),
              std::string::npos);
}

// Marks of direction, which poppler puts around text that runs to the left (Unicode, UAX 9).
std::string without_direction_marks(std::string text) {
    for (const char* mark : {"\u202a", "\u202b", "\u202c", "\u200e", "\u200f"}) {
        for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark)) {
            text.erase(at, std::string(mark).size());
        }
    }
    return text;
}

TEST(Pdf, TextOfAnyScriptIsReadBackAsItWasWritten) {
    const TemporaryFolder folder;
    const std::vector<std::string> names{"Séraphine Vašnovič",
                                         "office, five, shuffle",
                                         "Ανθή Λευκοπέτρου",
                                         "ნინო ცისფერაძე",
                                         "ليان الياسميني",
                                         "هذا بالضبط ما أردته",
                                         "שרה לוי",
                                         "आरती शर्मा",
                                         "Нина Ћирић",
                                         "Անի Հարութ",
                                         "美咲",
                                         "김지은"};
    std::vector<PageItem> items;
    for (const std::string& name : names) {
        TextItem text;
        text.text = name;
        text.points = 10;
        text.box = {5, 2 + 8.0 * static_cast<double>(items.size()), 100, 7};
        items.push_back(text);
    }
    Document document = document_of(items);
    document.pages.front().size = {120, 110};
    const std::string command =
        "pdftotext " + shell_word(written_pdf(folder, document).string()) + " -";
    const std::string text = without_direction_marks(output_of(command));
    for (const std::string& name : names) {
        EXPECT_NE(text.find(name), std::string::npos) << name << "\nis not in\n" << text;
    }
}

TEST(Pdf, WordsOfALineInTwoDirectionsAreReadBackAsTheyWereWritten) {
    const TemporaryFolder folder;
    const std::vector<std::string> words{"Trial", "ليان", "الياسميني", "comes", "along"};
    for (const bool to_the_left : {false, true}) {
        TextItem text;
        for (std::size_t i = to_the_left ? 1 : 0; i < words.size(); ++i) {
            text.text += words[i] + ' ';
        }
        text.points = 10;
        text.box = {2, 5, 56, 7};
        const std::string read = without_direction_marks(output_of(
            "pdftotext " + shell_word(written_pdf(folder, document_of({text})).string()) + " -"));
        for (std::size_t i = to_the_left ? 1 : 0; i < words.size(); ++i) {
            EXPECT_NE(read.find(words[i]), std::string::npos) << words[i] << "\nis not in\n"
                                                              << read;
        }
    }
}

cv::Mat rendered(const TemporaryFolder& folder, const Path& pdf, int dpi) {
    output_of("pdftoppm -singlefile -png -r " + std::to_string(dpi) + " " +
              shell_word(pdf.string()) + " " + shell_word((folder / "page").string()));
    return cv::imread((folder / "page.png").string());
}

bool is(const cv::Vec3b& seen, const cv::Scalar& bgr) {
    return std::abs(seen[0] - bgr[0]) < 8 && std::abs(seen[1] - bgr[1]) < 8 &&
           std::abs(seen[2] - bgr[2]) < 8;
}

TEST(Pdf, PicturesStandWhereThePageSaysToAQuarterOfAMillimetre) {
    const TemporaryFolder folder;
    const std::vector<std::pair<Box, cv::Scalar>> placed{{{13, 40, 43.3, 54}, {40, 40, 200}},
                                                         {{59.9, 40, 43.3, 54}, {60, 160, 60}},
                                                         {{13, 201.5, 90, 60}, {200, 80, 40}},
                                                         {{150, 270, 47, 14}, {30, 90, 90}}};
    std::vector<PageItem> items;
    for (const auto& [box, colour] : placed) {
        PhotoItem item;
        item.box = box;
        item.file = folder / ("photo" + std::to_string(items.size()) + ".png");
        write_png(item.file, plain({cvRound(box.width * 10), cvRound(box.height * 10)}, colour));
        items.push_back(item);
    }
    Document document = document_of(items);
    document.pages.front().size = paper_size(Paper::a4, false);
    const cv::Mat page = rendered(folder, written_pdf(folder, document), 254);  // 10 px a mm
    const auto at = [&](double x, double y) {
        return page.at<cv::Vec3b>(cvRound(y * 10), cvRound(x * 10));
    };
    constexpr double near = 0.25;
    const cv::Scalar paper(255, 255, 255);
    for (const auto& [box, colour] : placed) {
        const double right = box.x + box.width;
        const double bottom = box.y + box.height;
        const double middle_x = box.x + box.width / 2;
        const double middle_y = box.y + box.height / 2;
        EXPECT_TRUE(is(at(box.x + near, middle_y), colour));
        EXPECT_TRUE(is(at(right - near, middle_y), colour));
        EXPECT_TRUE(is(at(middle_x, box.y + near), colour));
        EXPECT_TRUE(is(at(middle_x, bottom - near), colour));
        EXPECT_TRUE(is(at(box.x - near, middle_y), paper));
        EXPECT_TRUE(is(at(right + near, middle_y), paper));
        EXPECT_TRUE(is(at(middle_x, box.y - near), paper));
        EXPECT_TRUE(is(at(middle_x, bottom + near), paper));
    }
}

TEST(Pdf, PhotosLieInItAsJpegsOfThreeHundredDotsPerInch) {
    const TemporaryFolder folder;
    cv::Mat noise(2400, 3200, CV_8UC3);
    cv::randu(noise, 0, 255);
    PhotoItem item;
    item.box = {10, 10, 40, 30};
    item.file = folder / "photo.png";
    write_png(item.file, noise);
    const Path pdf = written_pdf(folder, document_of({item}));
    const std::string list = output_of("pdfimages -list " + shell_word(pdf.string()));
    int width = 0;
    int height = 0;
    int across = 0;
    char encoding[16];
    const std::string line = list.substr(list.rfind('\n', list.size() - 2) + 1);
    ASSERT_EQ(std::sscanf(line.c_str(), " 1 0 image %d %d rgb 3 8 %15s no %*d %*d %d", &width,
                          &height, encoding, &across),
              4)
        << list;
    EXPECT_EQ(width, 472);
    EXPECT_EQ(height, 354);
    EXPECT_STREQ(encoding, "jpeg");
    EXPECT_NEAR(across, print_dpi, 2);
}

// On both pages, with one between them that cannot be shown. What poppler has to repair, as places
// of objects that are none, it remarks on.
TEST(Pdf, EachPhotoIsTheOneOfItsBoxAndNothingHasToBeRepaired) {
    const TemporaryFolder folder;
    const std::vector<cv::Scalar> colours{{40, 40, 200}, {60, 160, 60}, {200, 80, 40}};
    std::vector<PageItem> items;
    for (const cv::Scalar& colour : colours) {
        PhotoItem item;
        item.box = {5 + 15.0 * static_cast<double>(items.size()), 5, 10, 10};
        item.file = folder / ("photo" + std::to_string(items.size()) + ".png");
        write_png(item.file, plain({200, 200}, colour));
        items.push_back(item);
    }
    Document document = document_of(items);
    std::get<PhotoItem>(items[1]).file = folder / "gone.png";
    std::swap(std::get<PhotoItem>(items[0]).file, std::get<PhotoItem>(items[2]).file);
    document.pages.push_back({small_paper, items});
    const std::string pdf = shell_word(written_pdf(folder, document).string());
    const std::string pages = shell_word((folder / "page").string());
    EXPECT_EQ(output_of("pdftoppm -png -r 254 " + pdf + " " + pages + " 2>&1"), "");
    const auto at = [&](const char* page, double x) {
        return cv::imread((folder / page).string()).at<cv::Vec3b>(100, cvRound(x * 10));
    };
    EXPECT_TRUE(is(at("page-1.png", 10), colours[0]));
    EXPECT_TRUE(is(at("page-1.png", 25), colours[1]));
    EXPECT_TRUE(is(at("page-1.png", 40), colours[2]));
    EXPECT_TRUE(is(at("page-2.png", 10), colours[2]));
    EXPECT_TRUE(is(at("page-2.png", 40), colours[0]));
    EXPECT_FALSE(is(at("page-2.png", 25), colours[1]));
}

// ImageMagick's view of the picture files.
TEST(Pictures, CarryThreeHundredDotsPerInchAndTheSrgbProfile) {
    const TemporaryFolder folder;
    const auto decoder = make_confined_decoder();
    for (const char* name : {"sheet.png", "sheet.jpg"}) {
        const Document document = blank_pages({paper_size(Paper::a5, false)});
        write_pictures(document, *decoder, real_file_system(), folder / name);
        const std::string file = shell_word((folder / name).string());
        const std::string facts = output_of(
            "identify -units PixelsPerInch -format '%w %h %[fx:round(resolution.x)] "
            "%[fx:round(resolution.y)] %[colorspace] %[profile:icc]' " +
            file);
        // 148 × 210 mm at 300 dots per inch
        EXPECT_EQ(facts.substr(0, 22), "1748 2480 300 300 sRGB") << name;
        EXPECT_NE(facts.find("sRGB", 22), std::string::npos) << facts;
    }
}

}  // namespace
}  // namespace quarterturn
