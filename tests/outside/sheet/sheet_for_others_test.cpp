// What a sheet for others says, read back with poppler and exiftool.

#include "indexer/sheet/contact_sheet.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/looks/whole_look.h"
#include "tests/support/command.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

class SheetForOthers : public testing::Test, public WholeLook {
  protected:
    SheetForOthers() {
        Recipe recipe = whole_recipe();
        recipe.hair_on_the_day.colour = "balayage";
        recipe.cautions = "pregnant";
        recipe.caution_details.sensitivities = {{"latex", parse_date("2026-10-01"), "red"}};
        recipe.caution_details.scalp = "psoriasis";
        recipe.heat_tool = HeatTool{"wand", 25, 160};
        recipe.build.push_back({"coil as MIRA likes it", 5, {}});
        recipe.build.push_back({"tuck the ends", 6, {{"grips", "brown", 4, true}}});
        recipe.finish = "light veil of spray";
        recipe.feedback_details.to_change = "softer fringe";
        recipe.pieces.emplace_back().brought_by = "her grandmother";
        recipe.second_look = SecondLook{};
        recipe.second_look->done_by = "Ottilie";
        recipe.second_look->at = "18:30";
        library.recipes().save(look, recipe, at("2026-11-07T12:05"));
        tag(photos[0], [](Tags& tags) {
            tags.note = "eyes shut";
            tags.accepted_because = "she was tearful";
        });
        library.looks().waive(look, {{Stage::after, Angle::crown}, "she was called away"});
    }

    std::string all_words(const Document& document) {
        write_pdf(document, *decoder, real_file_system(), file);
        const std::string name = shell_word(file.string());
        return document.title + output_of("pdftotext " + name + " -; exiftool -a -u --System:all " + name);
    }
    static void expect_none(const std::string& text, std::initializer_list<const char*> words) {
        for (const char* word : words) {
            EXPECT_EQ(text.find(word), std::string::npos) << word << " is in\n" << text;
        }
    }

    const std::unique_ptr<TextRuler> ruler = make_text_ruler();
    const std::unique_ptr<Decoder> decoder = make_confined_decoder();
    const Path file = folder / "for others.pdf";
    const SheetWishes wishes{.paper = Paper::a4, .during = true, .whom = SheetFor::others};
};

TEST_F(SheetForOthers, CarriesTheLookTheAnglesAndTheCraft) {
    const std::string text = all_words(contact_sheet(library, *decoder, *ruler, look, wishes));
    for (const char* words :
         {"low twisted bun", "Before", "After", "Left", "Front", "crown, two sides, nape", "wand",
          "160 °C", "Keep to the labels", "ask about allergies", "twist into a low bun",
          "14 × hairpins", "tuck the ends", "20 min", "light veil of spray", "60 min hands-on"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << " is not in\n" << text;
    }
}

TEST_F(SheetForOthers, SaysNoWordOfHers) {
    expect_none(
        all_words(contact_sheet(library, *decoder, *ruler, look, wishes)),
        {"Mira",     "MIRA",         "Okonjo",   "Lindqvist",   "Vale",       "Granary",
         "November", "2026-11",      "10:05",    "12:30",       "18:30",      "Ottilie",
         "washed",   "balayage",     "pregnant", "latex",       "psoriasis",  "2026-10",
         "loves it", "in the chair", "softer",   "grandmother", "pearl",      "mousse",
         "IMG_",     "eyes shut",    "tearful",  "called away", "signed off", "Not signed"});
}

TEST_F(SheetForOthers, ALookThatIsCalledByHerNameIsNot) {
    Look named = library.looks().find(look).value();
    named.name = "Mira's bun";
    library.looks().change(named);
    const std::string text = all_words(contact_sheet(library, *decoder, *ruler, look, wishes));
    expect_none(text, {"Mira"});
    EXPECT_NE(text.find("Ceremony look"), std::string::npos) << text;
}

TEST_F(SheetForOthers, EveryFrameOfASittingSaysNeitherWhenNorWhose) {
    for (const PhotoId photo : photos) tag(photo, [&](Tags& tags) { tags.sitting = trial; });
    const std::string text =
        all_words(sitting_sheet(library, *ruler, trial, Paper::a4, SheetFor::others));
    expect_none(text, {"Mira", "Okonjo", "Vale", "Granary", "November", "10:0", "12:0", "tearful"});
    EXPECT_NE(text.find("Trial"), std::string::npos) << text;
    EXPECT_NE(text.find("Front"), std::string::npos) << text;
}

}  // namespace
}  // namespace quarterturn
