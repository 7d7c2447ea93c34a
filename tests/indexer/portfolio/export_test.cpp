#include "indexer/portfolio/export.h"

#include <gtest/gtest.h>

#include "indexer/image/colour.h"
#include "indexer/image/head.h"
#include "indexer/image/profile.h"
#include "indexer/intake/tagging.h"
#include "indexer/looks/consents.h"
#include "indexer/portfolio/pass_on.h"
#include "indexer/worker/confined.h"
#include "tests/support/command.h"
#include "tests/support/display_p3.h"
#include "tests/support/example_library.h"
#include "tests/support/failing_disk.h"
#include "tests/support/files.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

struct PortfolioExport : testing::Test, ExampleLibrary {
    PortfolioExport() {
        library.settings().set(business_name_setting, "Pins and Paper");
        ConsentEntry entry;
        entry.client = mira;
        entry.said = ConsentSaid::granted;
        entry.said_on = date_of(now);
        entry.shown = ShownAs::with_her_face;
        entry.recorded_at = now;
        record_consent(library, entry, std::vector{Use::website});
        wishes.folder = folder / "out";
        wishes.quality = 95;
    }

    Photo add(const std::string& name, std::span<const std::byte> bytes, bool mirrored = false) {
        Photo photo = example_photo(name, taken_at("2026-11-07T11:00:00"));
        photo.file.sha256 = sha256(bytes);
        photo.tags.look = look;
        photo.tags.mirrored = mirrored;
        const Path to = library.photo_file(photo);
        std::filesystem::create_directories(to.parent_path());
        write_bytes(to, bytes);
        const PhotoId id = library.photos().add(photo);
        library.credits().set(std::vector{id}, Credit{});
        return library.photos().find(id).value();
    }
    PhotoGone send(const Photo& photo) {
        return export_photos(library, *decoder, draw, std::vector{photo}, wishes, now).front();
    }
    cv::Mat sent_picture(const Photo& photo) {
        const PhotoGone gone = send(photo);
        EXPECT_EQ(gone.against, std::vector<std::string>{});
        EXPECT_EQ(gone.problem, "");
        return decoder->decode({read_bytes(gone.exported.value().file), 1, 0}).bgr;
    }

    LocalTime now = at("2026-11-08T09:00");
    ExportWishes wishes;
    std::vector<std::string> drawn;
    DrawLine draw = [this](cv::Mat&, const std::string& words) { drawn.push_back(words); };
    std::unique_ptr<Decoder> decoder = make_confined_decoder();
};

// Hair from black to platinum and copper, skin, and greys.
const std::vector<Rgb> patches{{24, 18, 15},  {59, 40, 28},    {98, 66, 42},
                               {141, 98, 60}, {190, 150, 100}, {232, 212, 178},
                               {150, 66, 34}, {196, 104, 58},  {230, 190, 170}};

// Display P3 by the published formulas (tests/support/display_p3.h), ΔE00 of ISO/CIE 11664-6.
TEST_F(PortfolioExport, DisplayP3ComesOutAsTheSameColourInSrgb) {
    constexpr int patch = 64;
    cv::Mat sheet(3 * patch, 3 * patch, CV_8UC3);
    for (int i = 0; i < 9; ++i) {
        const Rgb p3 = p3_of_srgb(patches[static_cast<std::size_t>(i)]);
        sheet({i % 3 * patch, i / 3 * patch, patch, patch}).setTo(cv::Scalar(p3[2], p3[1], p3[0]));
    }
    const Path file = folder / "p3.jpg";
    write_bytes(file, encoded(sheet, ".jpg", {cv::IMWRITE_JPEG_QUALITY, 98}));
    write_bytes(folder / "p3.icc",
                make_profile({0.3127, 0.3290}, {0.680, 0.320}, {0.265, 0.690}, {0.150, 0.060}));
    output_of("exiftool -q -overwrite_original '-ICC_Profile<=" + (folder / "p3.icc").string() +
              "' " + shell_word(file.string()));
    const cv::Mat out = sent_picture(add("p3.jpg", read_bytes(file)));
    double worst = 0;
    for (int i = 0; i < 9; ++i) {
        const auto found = out.at<cv::Vec3b>(i / 3 * patch + patch / 2, i % 3 * patch + patch / 2);
        worst =
            std::max(worst, colour_difference(lab_of_srgb({found[2], found[1], found[0]}),
                                              lab_of_srgb(patches[static_cast<std::size_t>(i)])));
    }
    EXPECT_LT(worst, 2);
    RecordProperty("worst_de00", std::to_string(worst));
}

TEST_F(PortfolioExport, MirroredPhotosGoOutTheRightWayRound) {
    const cv::Mat quarters = four_quarters(200, 100);
    const cv::Mat out = sent_picture(add("m.png", encoded(quarters, ".png"), true));
    const auto colour = out.at<cv::Vec3b>(20, 180);
    EXPECT_GT(colour[2], 200) << "red was at the left";
    EXPECT_LT(colour[1], 60);
}

TEST_F(PortfolioExport, AFlawThatWasNotAcceptedIsSaidOfWhatWent) {
    const Photo photo = add("a.jpg", encoded(four_quarters(64, 48), ".jpg"));
    const auto set_flaws = [&](const std::vector<Flaw>& flaws) {
        library.photos().set_measured(photo.id, photo.measures, photo.fingerprint, HeadSigns{},
                                      flaws);
    };
    const auto send_as_it_is = [&] { return send(library.photos().find(photo.id).value()); };
    set_flaws({});
    EXPECT_EQ(send_as_it_is().flawed, "");
    set_flaws({Flaw::out_of_focus, Flaw::too_dark});
    const PhotoGone gone = send_as_it_is();
    EXPECT_TRUE(gone.exported.has_value());
    EXPECT_EQ(gone.flawed, "Look at it again before it is shown: out of focus, too dark.");
    tag(library, std::array{photo.id}, {.accepted_because = "the veil only shows here"});
    EXPECT_EQ(send_as_it_is().flawed, "");
}

TEST_F(PortfolioExport, ShapesAndSizesAreKept) {
    const Photo photo = add("wide.png", encoded(four_quarters(400, 200), ".png"));
    const auto size_of = [&](ExportShape shape, std::optional<int> long_edge) {
        wishes.shape = shape;
        wishes.long_edge = long_edge;
        return sent_picture(photo).size();
    };
    EXPECT_EQ(size_of(ExportShape::whole, {}), cv::Size(400, 200));
    EXPECT_EQ(size_of(ExportShape::whole, 100), cv::Size(100, 50));
    EXPECT_EQ(size_of(ExportShape::whole, 4000), cv::Size(400, 200)) << "never made larger";
    EXPECT_EQ(size_of(ExportShape::square, {}), cv::Size(200, 200));
    EXPECT_EQ(size_of(ExportShape::four_to_five, {}), cv::Size(160, 200));
    EXPECT_EQ(size_of(ExportShape::nine_to_sixteen, 160), cv::Size(90, 160));
}

TEST_F(PortfolioExport, TheLineIsDrawnOnlyWhereItIsWanted) {
    const Photo photo = add("a.png", encoded(four_quarters(40, 20), ".png"));
    send(photo);
    EXPECT_TRUE(drawn.empty());
    wishes.line = "Pins and Paper";
    send(photo);
    EXPECT_EQ(drawn, std::vector<std::string>{"Pins and Paper"});
}

TEST_F(PortfolioExport, AChangedFileStaysHere) {
    const Photo photo = add("a.png", encoded(four_quarters(40, 20), ".png"));
    write_bytes(library.photo_file(photo), encoded(four_quarters(20, 40), ".png"));
    const PhotoGone gone = send(photo);
    EXPECT_FALSE(gone.exported);
    EXPECT_NE(gone.problem, "");
    EXPECT_TRUE(library.ledger().all().empty());
}

TEST_F(PortfolioExport, WithoutHerNameNothingOfHersGoesOut) {
    library.settings().clear(business_name_setting);
    const PhotoGone gone = send(add("a.png", encoded(four_quarters(40, 20), ".png")));
    EXPECT_NE(gone.problem.find("business name"), std::string::npos);
    EXPECT_FALSE(gone.exported);
}

// Whatever fails, no file is out there that the ledger calls taken down, and none is half.
TEST_F(PortfolioExport, AFailingDiskLeavesLedgerAndFolderInAgreement) {
    const Photo photo = add("a.png", encoded(four_quarters(40, 20), ".png"));
    FailingDisk disk;
    library = Library::open(folder / "library", disk);
    std::filesystem::create_directories(wishes.folder);
    disk.heal();
    send(photo);
    const int calls = disk.calls();
    for (int call = 1; call <= calls; ++call) {
        disk.fail_call(call);
        try {
            send(photo);
        } catch (const DiskError&) {
        }
        disk.heal();
    }
    std::vector<std::string> known;
    for (const Exported& exported : library.ledger().all()) {
        if (!exported.taken_down) {
            known.push_back(exported.file);
            EXPECT_EQ(sha256(read_bytes(exported.file)), exported.sha256);
        }
    }
    std::vector<std::string> there;
    for (const auto& file : files_in(wishes.folder)) there.push_back(file.string());
    EXPECT_EQ(there, known);
    library = Library::create(folder / "elsewhere");  // before its disk goes
}

TEST_F(PortfolioExport, ASheetThatCouldNotBeWrittenIsNotOutThere) {
    const cv::Mat grey(64, 64, CV_8UC3, cv::Scalar::all(120));
    const Photo photo = add("bun.jpg", encoded(grey, ".jpg"));
    PhotoItem item;
    item.file = library.photo_file(photo);
    item.sha256 = photo.file.sha256;
    Document sheet;
    sheet.pages.emplace_back().items.emplace_back(item);
    const auto draw_it = [] { return std::vector<std::byte>(8); };
    const auto pass = [&](const Path& file) {
        return pass_on(library, *decoder, sheet, draw_it, {Use::website, file}, now);
    };
    EXPECT_THROW(pass(folder / "no such folder" / "sheet.pdf"), DiskError);
    ASSERT_EQ(library.ledger().all().size(), 1U);
    EXPECT_TRUE(library.ledger().all().front().taken_down) << "it was never written";

    EXPECT_EQ(pass(folder / "sheet.pdf").exports.size(), 1U);
    EXPECT_EQ(read_bytes(folder / "sheet.pdf"), draw_it());
    EXPECT_FALSE(library.ledger().all().back().taken_down);
    EXPECT_EQ(library.ledger().all().back().sha256, sha256(draw_it()));
}

}  // namespace
}  // namespace quarterturn
