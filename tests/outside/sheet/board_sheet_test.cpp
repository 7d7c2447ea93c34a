// The board and the take-down card as PDF, read back with poppler.

#include "indexer/sheet/board_sheet.h"

#include "indexer/looks/board_words.h"
#include "indexer/record/recipe_text.h"
#include "indexer/sheet/take_down_card.h"
#include "indexer/worker/confined.h"
#include "tests/support/command.h"
#include "tests/support/party_of_six.h"
#include "tests/ui/painter/painted.h"

namespace quarterturn {
namespace {

std::string without_spaces(const std::string& text) {
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool mark = text.compare(i, 2, "\u200e") == 0;
        if (text.compare(i, 3, "\u202a") == 0 || text.compare(i, 3, "\u202b") == 0 ||
            text.compare(i, 3, "\u202c") == 0 || text.compare(i, 3, "\u200e") == 0) {
            i += 2;
            continue;
        }
        if (!mark && !std::isspace(static_cast<unsigned char>(text[i]))) result += text[i];
    }
    return result;
}

class PaperForTheMirror : public testing::Test {
  protected:
    PaperForTheMirror()
        : party_({QUARTERTURN_DEMO_PHOTOS "/photos/phone/20260822_141003.jpg"}, 6) {}

    std::string text_of(const Document& document) {
        write_pdf(document, *decoder_, real_file_system(), file_);
        return output_of("pdftotext " + shell_word(file_.string()) + " -");
    }

    std::string size_line() {
        const std::string info = output_of("pdfinfo " + shell_word(file_.string()));
        const std::size_t at = info.find("Page size:");
        return info.substr(at, info.find('\n', at) - at);
    }

    PartyOfSix party_;
    Path file_ = party_.folder / "board.pdf";
    std::unique_ptr<TextRuler> ruler_ = make_text_ruler();
    std::unique_ptr<Decoder> decoder_ = make_confined_decoder();
};

TEST_F(PaperForTheMirror, SaysEveryClientStepAndCautionOnA4AndA3) {
    const WeddingBoard board = wedding_board(party_.library, party_.wedding);
    ASSERT_EQ(board.clients.size(), 6U);
    struct {
        Paper paper;
        const char* size;
    } const papers[]{{Paper::a4, "(A4)"}, {Paper::a3, "(A3)"}};
    for (const auto& [paper, size] : papers) {
        const Document document = board_sheet(board, party_.library, *decoder_, *ruler_, paper);
        EXPECT_EQ(document.pages.size(), 12U);  // two for each client
        const std::string text = without_spaces(text_of(document));
        EXPECT_NE(size_line().find(size), std::string::npos) << size_line();
        const auto expect = [&](const std::string& words) {
            EXPECT_NE(text.find(without_spaces(words)), std::string::npos) << words;
        };
        for (const BoardClient& client : board.clients) {
            expect(client.client.name);
            expect(chair_text(board, client));
            for (const std::string& caution : client.cautions) expect(caution);
            for (const BoardStep& step : client.looks.at(0).steps) {
                expect(step.words);
                for (const std::string& caution : step.cautions) expect(caution);
            }
            expect(client.looks.at(0).state.look.name);
        }
        expect("loves it");
        expect("pearl comb above the left ear");
    }
}

TEST_F(PaperForTheMirror, TheTakeDownCardIsOnePageThatSaysEveryStep) {
    const Look look = party_.library.looks().all().front();
    Recipe recipe = party_.library.recipes().current(look.id)->recipe;
    recipe.second_look = SecondLook{"",
                                    "six grips and the comb",
                                    "the two grips above the left ear",
                                    "Ανθή",
                                    "18:30",
                                    {"Take out the comb.", "Find six grips, ليان counts them."}};
    party_.library.recipes().save(look.id, recipe, at("2026-11-07T12:05"));
    for (const Paper paper : {Paper::a4, Paper::a3, Paper::a5}) {
        const TakeDown card = take_down(party_.library, look.id);
        const std::string text = without_spaces(
            text_of(take_down_card(card, party_.library, *decoder_, *ruler_, paper)));
        EXPECT_NE(text.find("Page1of1"), std::string::npos);
        for (const std::string& words :
             {card.taken_out, card.stays, card.done_by, card.at, card.steps[0],
              std::string("Find six grips,"), std::string("Never pull"),
              std::string("There is no photo of what it should look like after.")}) {
            EXPECT_NE(text.find(without_spaces(words)), std::string::npos) << words;
        }
    }
}

}  // namespace
}  // namespace quarterturn
