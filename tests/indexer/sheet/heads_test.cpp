#include "indexer/sheet/heads.h"

#include <gtest/gtest.h>

#include "indexer/image/head.h"
#include "indexer/sheet/photo_cell.h"
#include "indexer/store/found_head_table.h"
#include "tests/support/demo_truth.h"
#include "tests/support/example_library.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

class CountedOpenings : public Decoder {
  public:
    Decoded decode(const DecodeRequest& request) override {
        ++calls;
        return real_->decode(request);
    }

    std::atomic<int> calls = 0;

  private:
    std::unique_ptr<Decoder> real_ = make_local_decoder();
};

// Two photos of the demo from the front, whose heads' places are known since they were made.
class HeadsOfPhotos : public testing::Test, public ExampleLibrary {
  protected:
    void SetUp() override {
        for (const CsvRow& row : demo_truth()) {
            if (photos.size() == 2) break;
            if (row.at("angle") == "front" && row.at("mirrored") != "1") add(row);
        }
        ASSERT_EQ(photos.size(), 2U);
    }

    void add(const CsvRow& row) {
        const Path source = Path(QUARTERTURN_DEMO_PHOTOS) / "photos" / row.at("file");
        Photo photo = example_photo(source.filename().string());
        const Bytes bytes = read_bytes(source);
        photo.file.sha256 = sha256(bytes);
        photo.file.orientation = std::stoi(row.at("orientation"));
        photo.file.width = std::stoi(row.at("width"));
        photo.file.height = std::stoi(row.at("height"));
        photo.tags.angle = Angle::front;
        photo.id = library.photos().add(photo);
        std::filesystem::create_directories(library.photo_file(photo).parent_path());
        write_bytes(library.photo_file(photo), bytes);
        const auto share = [&](const char* column, const char* of) {
            return std::stod(row.at(column)) / std::stod(row.at(of));
        };
        truth.push_back({share("head_box_x", "width"), share("head_box_y", "height"),
                         share("head_box_w", "width"), share("head_box_h", "height")});
        photos.push_back(photo);
    }

    std::vector<SheetPhoto> looked_at() {
        std::vector<SheetPhoto> seen;
        for (const Photo& photo : photos) {
            seen.push_back(*photo_cell(photo, library.folder()).photo);
        }
        find_heads(seen, library, decoder);
        return seen;
    }

    SheetContent on_a_sheet() {
        SheetContent content;
        content.bands.emplace_back();
        for (const Photo& photo : photos) {
            content.bands.front().cells.push_back(photo_cell(photo, library.folder()));
        }
        find_heads(content, sheet_style(Paper::a4), library, decoder);
        return content;
    }

    static void expect_near(const std::optional<Part>& head, const Part& place) {
        ASSERT_TRUE(head);
        EXPECT_NEAR(head->x + head->width / 2, place.x + place.width / 2, 0.05);
        EXPECT_NEAR(head->y, place.y, 0.06);
        EXPECT_NEAR(head->width, place.width, 0.12);
    }

    std::vector<Photo> photos;
    std::vector<Part> truth;
    CountedOpenings decoder;
};

TEST_F(HeadsOfPhotos, AreLookedForOnceAndStandWhereTheyAre) {
    const auto first = looked_at();
    EXPECT_EQ(decoder.calls, 2);
    reopen();
    const auto again = looked_at();
    EXPECT_EQ(decoder.calls, 2) << "heads that are known open no photo";
    for (std::size_t i = 0; i < photos.size(); ++i) {
        expect_near(first[i].head, truth[i]);
        ASSERT_TRUE(again[i].head);
        EXPECT_DOUBLE_EQ(again[i].head->x, first[i].head->x);
        EXPECT_DOUBLE_EQ(again[i].head->height, first[i].head->height);
    }
}

TEST_F(HeadsOfPhotos, AreKnownToEverySheetOnceTheyWereFoundForOne) {
    const SheetContent sheet = on_a_sheet();
    EXPECT_FALSE(sheet.bands[0].cells[0].photo->item.picture.empty());
    const int calls = decoder.calls;
    const auto alone = looked_at();
    EXPECT_EQ(decoder.calls, calls);
    EXPECT_DOUBLE_EQ(alone[0].head->y, sheet.bands[0].cells[0].photo->head->y);
    EXPECT_FALSE(on_a_sheet().bands[0].cells[1].photo->item.picture.empty())
        << "what is drawn is opened all the same";
}

TEST_F(HeadsOfPhotos, StandOnTheOtherSideOfAPhotoThatIsTurnedRound) {
    looked_at();
    photos[0].tags.mirrored = true;
    Part turned = truth[0];
    turned.x = 1 - turned.x - turned.width;
    expect_near(looked_at()[0].head, turned);
}

TEST_F(HeadsOfPhotos, ThatWereNotFoundAreNotLookedForAgainAndDetailsNever) {
    FoundHeadTable(library.database(), head_search_version).keep({{photos[0].id, std::nullopt}});
    photos[1].tags.angle = Angle::detail;
    const auto seen = looked_at();
    EXPECT_EQ(decoder.calls, 0);
    EXPECT_FALSE(seen[0].head);
    EXPECT_FALSE(seen[1].head);
}

TEST_F(HeadsOfPhotos, OfAnOlderSearchAreLookedForAnew) {
    FoundHeadTable(library.database(), head_search_version - 1)
        .keep({{photos[0].id, HeadBox{0.9, 0.9, 0.05, 0.05}}});
    expect_near(looked_at()[0].head, truth[0]);
}

}  // namespace
}  // namespace quarterturn
