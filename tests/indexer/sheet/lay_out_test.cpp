#include "indexer/sheet/lay_out.h"

#include <cmath>

#include "tests/indexer/sheet/page_boxes.h"
#include "tests/indexer/sheet/plain_ruler.h"

namespace quarterturn {
namespace {

std::string some_words(int most) {
    std::string text;
    const int count = *rc::gen::inRange(0, most);
    for (int i = 0; i < count; ++i) {
        text += std::string(static_cast<std::size_t>(*rc::gen::inRange(1, 25)), 'x') + " ";
    }
    return text;
}

SheetPhoto some_photo(int number) {
    SheetPhoto photo;
    photo.item.file = "photo" + std::to_string(number);
    photo.upright = {static_cast<double>(*rc::gen::inRange(100, 4000)),
                     static_cast<double>(*rc::gen::inRange(100, 4000))};
    if (*rc::gen::inRange(0, 2) == 0) photo.head = Part{0.3, 0.2, 0.3, 0.4};
    return photo;
}

std::vector<SheetBand> some_bands(int most_bands, int most_cells, int& photos) {
    std::vector<SheetBand> bands;
    const int count = *rc::gen::inRange(0, most_bands + 1);
    for (int i = 0; i < count; ++i) {
        SheetBand band{"Band", {}};
        const int cells = *rc::gen::inRange(1, most_cells + 1);
        for (int k = 0; k < cells; ++k) {
            SheetCell cell;
            if (*rc::gen::inRange(0, 4) > 0) cell.photo = some_photo(++photos);
            cell.empty = "missing";
            cell.title = "Left three-quarter";
            cell.time = "10:12";
            cell.note = some_words(30);
            band.cells.push_back(cell);
        }
        bands.push_back(band);
    }
    return bands;
}

SheetRecipe some_recipe() {
    SheetRecipe recipe;
    recipe.heading = "Recipe";
    recipe.cautions = {"Caution: " + some_words(40)};
    if (*rc::gen::inRange(0, 2) == 0) {
        recipe.drawing = SheetDrawing{{{}, {{1, {0, 0}, "comb"}}}, {"x " + some_words(40), "x"}};
    }
    const int parts = *rc::gen::inRange(0, 10);
    for (int i = 0; i < parts; ++i) {
        RecipePart part{"Part", {}};
        const int lines = *rc::gen::inRange(1, 12);
        for (int k = 0; k < lines; ++k) part.lines.push_back("x " + some_words(80));
        recipe.parts.push_back(part);
    }
    return recipe;
}

SheetContent some_content(int& photos) {
    SheetContent content;
    content.header.client = "Mira " + some_words(30);
    content.header.lines = {some_words(20), some_words(20)};
    if (*rc::gen::inRange(0, 2) == 0) content.header.ring.emplace();
    content.header.state = "Not signed off";
    content.header.sentence = some_words(40);
    content.header.again = "Mira " + some_words(40);
    content.business_line = some_words(30);
    content.bands = some_bands(4, 9, photos);
    if (*rc::gen::inRange(0, 3) > 0) content.recipe = some_recipe();
    content.more = some_bands(2, 30, photos);
    return content;
}

SheetStyle some_style() {
    const Paper paper = *rc::gen::element(Paper::a3, Paper::a4, Paper::a5, Paper::letter);
    return sheet_style(paper);
}

RC_GTEST_PROP(LayOut, NothingOverlapsAndAllLiesInsideTheMargins, ()) {
    PlainRuler ruler;
    int photos = 0;
    const SheetStyle style = some_style();
    const Document document = lay_out(some_content(photos), style, ruler);
    RC_ASSERT(problem_of_boxes(document, style.margin) == "");
}

RC_GTEST_PROP(LayOut, EveryPhotoStandsOnceInItsOrderAndIsNotStretched, ()) {
    PlainRuler ruler;
    int photos = 0;
    const SheetContent content = some_content(photos);
    const Document document = lay_out(content, some_style(), ruler);
    std::vector<SheetPhoto> given;
    for (const auto* bands : {&content.bands, &content.more}) {
        for (const SheetBand& band : *bands) {
            for (const SheetCell& cell : band.cells) {
                if (cell.photo) given.push_back(*cell.photo);
            }
        }
    }
    std::size_t next = 0;
    for (const Page& page : document.pages) {
        for (const PageItem& item : page.items) {
            const auto* photo = std::get_if<PhotoItem>(&item);
            if (photo == nullptr) continue;
            RC_ASSERT(next < given.size());
            const SheetPhoto& source = given[next++];
            RC_ASSERT(photo->file == source.item.file);
            const double shown = photo->part.width * source.upright.width /
                                 (photo->part.height * source.upright.height);
            RC_ASSERT(std::abs(shown / (photo->box.width / photo->box.height) - 1) < 1e-6);
        }
    }
    RC_ASSERT(next == given.size());
}

SheetContent plain_look(int bands) {
    SheetContent content;
    content.header.client = "Mira";
    for (int i = 0; i < bands; ++i) {
        SheetBand band{"After", {}};
        for (int k = 0; k < 4; ++k) {
            SheetCell cell;
            cell.photo = SheetPhoto{};
            cell.photo->upright = {1500, 2000};
            cell.title = "Left";
            band.cells.push_back(cell);
        }
        content.bands.push_back(band);
    }
    return content;
}

TEST(LayOut, ColumnsStandUnderEachOtherInTheOrderOfTheCells) {
    PlainRuler ruler;
    const Document document = lay_out(plain_look(2), sheet_style(Paper::a4), ruler);
    std::vector<Box> boxes;
    for (const PageItem& item : document.pages.at(0).items) {
        if (const auto* photo = std::get_if<PhotoItem>(&item)) boxes.push_back(photo->box);
    }
    ASSERT_EQ(boxes.size(), 8U);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_DOUBLE_EQ(boxes[i].x, boxes[i + 4].x);
        EXPECT_LT(boxes[i].y, boxes[i + 4].y);
    }
    for (std::size_t i = 1; i < 4; ++i) EXPECT_LT(boxes[i - 1].x, boxes[i].x);
}

TEST(LayOut, ALookWithItsRecipeStandsOnOnePage) {
    PlainRuler ruler;
    SheetContent content = plain_look(3);
    content.recipe = SheetRecipe{"Recipe, revision 1", {"Caution: none noted."}, {}};
    for (const char* part : {"Hair", "Prep", "Sections", "Parting", "Build", "Finish"}) {
        content.recipe->parts.push_back({part, {"A sentence of the usual length in a recipe."}});
    }
    for (const Paper paper : {Paper::a3, Paper::a4, Paper::letter}) {
        EXPECT_EQ(lay_out(content, sheet_style(paper), ruler).pages.size(), 1U);
    }
}

TEST(LayOut, AVeryLongRecipeGoesOnToFurtherPagesAndLosesNothing) {
    PlainRuler ruler;
    SheetContent content = plain_look(2);
    content.recipe = SheetRecipe{"Recipe", {}, {{"Build", {}}}};
    for (int i = 0; i < 400; ++i) {
        content.recipe->parts[0].lines.push_back("step " + std::to_string(i) + " of the build");
    }
    const Document document = lay_out(content, sheet_style(Paper::a5), ruler);
    EXPECT_GT(document.pages.size(), 2U);
    int next = 0;
    for (const Page& page : document.pages) {
        for (const PageItem& item : page.items) {
            const auto* text = std::get_if<TextItem>(&item);
            if (text != nullptr && text->text.starts_with("step ")) {
                EXPECT_EQ(text->text, "step " + std::to_string(next++) + " of the build");
            }
        }
    }
    EXPECT_EQ(next, 400);
}

TEST(LayOut, NoTypeIsSmallerThanSixPoints) {
    PlainRuler ruler;
    SheetContent content = plain_look(2);
    content.more = content.bands;
    for (const Paper paper : {Paper::a3, Paper::a4, Paper::a5, Paper::letter}) {
        const Document document = lay_out(content, sheet_style(paper), ruler);
        for (const Page& page : document.pages) {
            for (const PageItem& item : page.items) {
                const auto* text = std::get_if<TextItem>(&item);
                if (text != nullptr) {
                    EXPECT_GE(text->points, 6);
                }
            }
        }
    }
}

}  // namespace
}  // namespace quarterturn
