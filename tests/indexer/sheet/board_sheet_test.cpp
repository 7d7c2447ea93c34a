#include "indexer/sheet/board_sheet.h"

#include "indexer/sheet/sheet_style.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/looks/whole_look.h"
#include "tests/indexer/sheet/page_boxes.h"
#include "tests/indexer/sheet/page_text.h"
#include "tests/indexer/sheet/plain_ruler.h"

namespace quarterturn {
namespace {

class BoardOnPaper : public testing::Test, public WholeLook {
  protected:
    Document pages(Paper paper = Paper::a4) {
        return board_sheet(wedding_board(library, wedding), library, *decoder, ruler, paper);
    }

    template <class Change>
    void save(Change change) {
        Recipe recipe = library.recipes().current(look)->recipe;
        change(recipe);
        library.recipes().save(look, recipe, at("2026-11-07T12:05"));
    }

    void set_cautions(const std::string& cautions) {
        save([&](Recipe& recipe) { recipe.cautions = cautions; });
    }

    PlainRuler ruler;
    std::unique_ptr<Decoder> decoder = make_confined_decoder();
};

TEST_F(BoardOnPaper, TakesTwoPagesForALookAndSaysWhatTheBoardSays) {
    library.boards().tick(wedding, look,
                          {0,
                           "twist into a low bun (14 × hairpins, bronze, "
                           "crossed; 20 min)"});
    for (const Paper paper : {Paper::a4, Paper::a3, Paper::letter}) {
        const Document document = pages(paper);
        ASSERT_EQ(document.pages.size(), 2U);
        EXPECT_EQ(document.pages[0].size.height, paper_size(paper, false).height);
        EXPECT_EQ(problem_of_boxes(document, document.pages[0].size.width * 0.048), "");
        const std::string front = text_of(document.pages[0]);
        for (const char* words : {"Mira Okonjo-Lindqvist", "12:30", "Bride · low twisted bun",
                                  "none known", "Not signed off.", "Left", "Back", "Accessory"}) {
            EXPECT_TRUE(holds(front, words)) << words << " is not in\n" << front;
        }
        EXPECT_LT(front.find("none known"), front.find("Not signed off."));  // cautions first
        const std::string recipe = text_of(document.pages[1]);
        for (const char* words : {"1. twist into a low bun", "14 pins", "Pins:", "loves it, yes",
                                  "pearl comb above the left ear", "Feedback"}) {
            EXPECT_TRUE(holds(recipe, words)) << words << " is not in\n" << recipe;
        }
    }
}

TEST_F(BoardOnPaper, BoxesAreTickedForWhatIsSignedAndDone) {
    const auto ticked = [&] {
        std::vector<bool> ticks;
        for (const TickItem& tick : items_of<TickItem>(pages())) ticks.push_back(tick.ticked);
        return ticks;
    };
    EXPECT_EQ(ticked(), (std::vector<bool>{false, false}));
    const WeddingBoard board = wedding_board(library, wedding);
    library.boards().tick(wedding, look, {0, board.clients[0].looks[0].steps[0].words});
    ASSERT_TRUE(sign().empty());
    EXPECT_EQ(ticked(), (std::vector<bool>{true, true}));
    set_cautions("tender nape");
    const std::string front = text_of(pages().pages[0]);
    EXPECT_TRUE(holds(front, "Changed since:")) << front;
}

TEST_F(BoardOnPaper, NothingStandsCloseToTheFoot) {
    save([](Recipe& recipe) {
        for (int i = 0; i < 40; ++i) recipe.build.push_back({"Twist and pin it.", 5, {}});
    });
    const Document document = pages();
    double rule = 0;  // the lowest is that of the foot
    for (const PageItem& item : document.pages[1].items) {
        if (const auto* line = std::get_if<RuleItem>(&item)) rule = std::max(rule, line->y1);
    }
    for (const PageItem& item : document.pages[1].items) {
        const auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr || text->box.y >= rule) continue;
        EXPECT_LE(text->box.y + text->box.height, rule - 3) << text->text;
    }
}

TEST_F(BoardOnPaper, AnEveningLookHasItsOwnTimeAndNotTheMornings) {
    Look evening = *library.looks().find(look);
    evening.worn = Worn::evening;
    evening.name = "let down";
    const LookId id = library.looks().add(evening);
    Recipe recipe;
    recipe.second_look = SecondLook{};
    recipe.second_look->at = "18:30";
    recipe.build = {{"Take out the pins.", 3, {}}};
    library.recipes().save(id, recipe, at("2026-11-07T12:05"));
    const Document document = pages();
    ASSERT_EQ(document.pages.size(), 4U);
    for (const std::size_t page : {2U, 3U}) {
        const std::string text = text_of(document.pages[page]);
        EXPECT_TRUE(holds(text, "18:30")) << text;
        EXPECT_FALSE(holds(text, "12:30")) << text;
        EXPECT_FALSE(holds(text, "In the chair")) << text;
    }
}

TEST_F(BoardOnPaper, SeveralCautionsStandUnderOneMark) {
    save([](Recipe& recipe) {
        Step step{"Curl and fix it with spray.", 5, {}};
        step.heat_tool = HeatTool{"tongs", 25, 170};
        recipe.build = {step};
    });
    int marks = 0;
    for (const TextItem& text : items_of<TextItem>(pages())) {
        if (text.text.starts_with("! ")) {
            ++marks;
            EXPECT_EQ(text.text.find("! ", 1), std::string::npos) << text.text;
        }
    }
    EXPECT_GE(marks, 1);
}

TEST_F(BoardOnPaper, LosesNoWordOfALongRecipe) {
    set_cautions(repeated("Beware of the left ear. ", 60) + "Caution ends here.");
    save([](Recipe& recipe) {
        recipe.build.clear();
        for (int i = 0; i < 40; ++i) {
            recipe.build.push_back({repeated("Twist and pin. ", 12) + "Ends " + std::to_string(i),
                                    5,
                                    {{"grip", "", 2, false}}});
        }
        recipe.build.push_back(
            {repeated("A step longer than a page. ", 600) + "Ends at last", 5, {}});
    });
    const Document document = pages();
    EXPECT_EQ(problem_of_boxes(document, document.pages[0].size.width * 0.048), "");
    const std::string text = text_of(document);
    EXPECT_TRUE(holds(text, "Caution ends here."));
    for (int i = 0; i < 40; ++i) EXPECT_TRUE(holds(text, "Ends " + std::to_string(i)));
    EXPECT_TRUE(holds(text, "Ends at last"));
    EXPECT_EQ(items_of<TickItem>(document).size(), 42U);
}

TEST_F(BoardOnPaper, ClientsWithoutALookShareAPage) {
    Wedding day = *library.weddings().find(wedding);
    for (const char* name : {"Aud Vale", "Ines Vale"}) {
        day.party.push_back({library.clients().add(client_called(name)), "guest"});
    }
    library.weddings().change(day);
    const Document document = pages();
    ASSERT_EQ(document.pages.size(), 3U);
    const std::string last = text_of(document.pages[2]);
    for (const char* words :
         {"Aud Vale", "Ines Vale", "No look of hers is recorded", "Not in the running order"}) {
        EXPECT_TRUE(holds(last, words)) << words;
    }
}

}  // namespace
}  // namespace quarterturn
