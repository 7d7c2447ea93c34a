#include "indexer/sheet/take_down_card.h"

#include "indexer/sheet/sheet_style.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/looks/whole_look.h"
#include "tests/indexer/sheet/page_boxes.h"
#include "tests/indexer/sheet/page_text.h"
#include "tests/indexer/sheet/plain_ruler.h"

namespace quarterturn {
namespace {

class CardOnPaper : public testing::Test, public WholeLook {
  protected:
    CardOnPaper() {
        card.client.name = "Mira Okonjo-Lindqvist";
        card.from = "low twisted bun";
        card.to = "let down in waves";
        card.at = "18:30";
        card.done_by = "Aud";
        card.taken_out = "the comb, 14 pins";
        card.stays = "two grips";
        card.cautions = {"left ear is tender", "Never pull."};
        card.steps = {"Take out the comb.", "Take out 14 pins."};
        card.before = wedding_board(library, wedding).clients[0].looks[0].shots;
        card.after = {card.before[3]};
    }

    Document page(Paper paper = Paper::a4) {
        return take_down_card(card, library, *decoder, ruler, paper);
    }

    static void expect_one_legible_page(const Document& document) {
        ASSERT_EQ(document.pages.size(), 1U);
        EXPECT_EQ(problem_of_boxes(document, 13 * document.pages[0].size.width / 210), "");
        for (const TextItem& text : items_of<TextItem>(document)) {
            EXPECT_GE(text.points, least_card_points) << text.text;
        }
    }

    TakeDown card;
    PlainRuler ruler;
    std::unique_ptr<Decoder> decoder = make_confined_decoder();
};

TEST_F(CardOnPaper, SaysAllInOrderWithNumberedPhotosAndSteps) {
    for (const Paper paper : {Paper::a4, Paper::a3, Paper::letter}) {
        const Document document = page(paper);
        expect_one_legible_page(document);
        const std::string text = text_of(document);
        std::size_t last = 0;
        for (const char* words :
             {"Mira Okonjo-Lindqvist", "At 18:30, done by Aud", "left ear is tender",
              "How it is now", "1. Left", "4. Back", "How it should look after", "5. Back",
              "Take out", "the comb, 14 pins", "Leave alone", "two grips", "Take out the comb."}) {
            const std::size_t found = text.find(words, last);
            EXPECT_NE(found, std::string::npos) << words << " is not in its place in\n" << text;
            if (found != std::string::npos) last = found;
        }
        EXPECT_EQ(items_of<PhotoItem>(document).size(), 5U);
        EXPECT_EQ(items_of<TickItem>(document).size(), 2U);
        EXPECT_FALSE(holds(text, "Not all of it found room"));
    }
}

TEST_F(CardOnPaper, ShrinksToFitBeforeAnythingIsCut) {
    const double usual = items_of<TextItem>(page()).front().points;
    for (int i = 0; i < 5; ++i) card.steps.push_back(repeated("Lift the next pin out. ", 4));
    const Document document = page();
    expect_one_legible_page(document);
    EXPECT_LT(items_of<TextItem>(document).front().points, usual);
    EXPECT_EQ(items_of<TickItem>(document).size(), 7U);
    EXPECT_FALSE(holds(text_of(document), "Not all of it found room"));
}

TEST_F(CardOnPaper, TellsWhatFoundNoRoomHoweverLongItIs) {
    const std::string longest = repeated("very long words without an end ", 400);
    const auto expect_told = [&](const char* what) {
        SCOPED_TRACE(what);
        for (const Paper paper : {Paper::a4, Paper::a5}) {
            const Document document = page(paper);
            expect_one_legible_page(document);
            EXPECT_TRUE(holds(text_of(document), "Not all of it found room on one page"));
        }
    };
    card.steps.assign(60, repeated("Lift the next pin out. ", 6));
    expect_told("steps");
    card.steps = {longest};
    expect_told("one step");
    card.taken_out = card.stays = longest;
    expect_told("pins");
    card.cautions = {longest};
    expect_told("cautions");
    card.client.name = card.from = card.done_by = longest;
    card.during = {*card.before[0].photo, *card.before[1].photo};
    card.lacks = {longest, longest};
    expect_told("everything");
}

TEST_F(CardOnPaper, DrawsAndNumbersWherePinsSit) {
    EXPECT_TRUE(items_of<HeadItem>(page()).empty());
    card.places.marks = {{1, {0, 0.7}, "bun"}, {2, {-0.4, 0}, "comb"}};
    for (const Paper paper : {Paper::a4, Paper::a5}) {
        const Document document = page(paper);
        expect_one_legible_page(document);
        ASSERT_EQ(items_of<HeadItem>(document).size(), 1U);
        EXPECT_EQ(items_of<HeadItem>(document)[0].drawing.marks.size(), 2U);
        const std::string text = text_of(document);
        EXPECT_TRUE(holds(text, "Where they sit"));
        EXPECT_TRUE(holds(text, "1. bun\n2. comb"));
    }
}

TEST_F(CardOnPaper, SaysWhatTheRecipeLacks) {
    card.steps.clear();
    card.after.clear();
    card.lacks = {"Write the steps under \"Second look\"."};
    const Document document = page();
    expect_one_legible_page(document);
    EXPECT_TRUE(holds(text_of(document), "! Write the steps under \"Second look\"."));
}

}  // namespace
}  // namespace quarterturn
