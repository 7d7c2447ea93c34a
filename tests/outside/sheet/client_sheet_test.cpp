// A client's record as PDF, read back with poppler and set against the record.

#include "indexer/sheet/client_sheet.h"

#include <set>
#include <sstream>

#include "indexer/record/recipe_text.h"
#include "indexer/sheet/kit_sheet.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/looks/whole_look.h"
#include "tests/support/command.h"
#include "tests/ui/painter/painted.h"

namespace quarterturn {
namespace {

// Marks of direction, which poppler puts around text that runs to the left (Unicode, UAX 9).
std::string unmarked(std::string text) {
    for (const char* mark : {"\u202a", "\u202b", "\u202c", "\u200e", "\u200f"}) {
        for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark)) {
            text.erase(at, std::string(mark).size());
        }
    }
    return text;
}

// Without the marks that stand between the record's parts.
std::set<std::string> words_in(const std::string& text) {
    constexpr const char* marks = ".,:;()";
    std::istringstream stream(text);
    std::set<std::string> words;
    for (std::string word; stream >> word;) {
        const std::size_t from = word.find_first_not_of(marks);
        if (from == std::string::npos) continue;
        words.insert(word.substr(from, word.find_last_not_of(marks) - from + 1));
    }
    return words;
}

class ClientSheet : public testing::Test, public WholeLook {
  protected:
    std::string pdf_text(Paper paper = Paper::a4) {
        const auto ruler = make_text_ruler();
        const ClientRecord record = client_record(library, mira);
        const Document document = client_sheet(
            record, *ruler, {paper, date_of(noon), library.folder(), "Pins and Paper"});
        const auto decoder = make_confined_decoder();
        write_pdf(document, *decoder, real_file_system(), file);
        return unmarked(output_of("pdftotext " + shell_word(file.string()) + " -"));
    }

    // Where two directions meet poppler may leave out the space between, so a long word need not
    // stand alone.
    static void expect_words(const std::string& line, const std::string& text) {
        const std::set<std::string> seen = words_in(text);
        for (const std::string& word : words_in(line)) {
            const bool within = word.size() > 3 && text.find(word) != std::string::npos;
            EXPECT_TRUE(within || seen.contains(word)) << word << " of: " << line;
        }
    }

    const Path file = folder / "record.pdf";
};

TEST_F(ClientSheet, SaysEveryWordOfTheRecordInAnyScript) {
    Client client = *library.clients().find(mira);
    client.name = "Ανθή Λευκοπέτρου";
    client.note = "Prefers mornings; phones before.";
    library.clients().change(client);
    Sitting sitting = *library.sittings().find(trial);
    sitting.note = "Her mother ليان الياسميني comes along";
    library.sittings().change(sitting);
    Recipe recipe = whole_recipe();
    recipe.caution_details.tender = "left ear";
    recipe.feedback = "आरती शर्मा נראה נהדר";
    library.recipes().save(look, recipe, at("2026-11-08T09:00"));
    sign();

    const std::string text = pdf_text();
    const ClientRecord record = client_record(library, mira);
    expect_words(record.client.name + ' ' + record.client.note, text);
    for (const Wedding& day : record.weddings) expect_words(day.venue, text);
    for (const Sitting& each : record.sittings) expect_words(each.note, text);
    ASSERT_EQ(record.looks.size(), 1U);
    expect_words(record.looks[0].look.name, text);
    for (const RecipePart& part : recipe_parts(record.looks[0].recipes.back().recipe)) {
        expect_words(part.heading == "Cautions" ? "" : part.heading, text);
        for (const std::string& line : part.lines) expect_words(line, text);
    }
    for (const Photo& photo : record.photos) expect_words(photo.file.name, text);
    for (const char* words :
         {"No consent recorded.", "Signed off 7 November 2026, 12:10, 8 photos sealed.",
          "Changed by revision 2, saved 8 November 2026, 09:00", "Private data of a person",
          "Pins and Paper", "7 November 2026, 10:00 to 12:00"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << " is not in\n" << text;
    }
}

TEST_F(ClientSheet, GoesOnOverAsManyPagesAsItTakesAndCountsThem) {
    for (int i = 0; i < 120; ++i) {
        add_photo("MORE_" + std::to_string(i) + ".JPG", {Stage::during, Angle::left});
    }
    for (const Paper paper : {Paper::a4, Paper::a5, Paper::letter}) {
        const std::string text = pdf_text(paper);
        const std::string info = output_of("pdfinfo " + shell_word(file.string()));
        const int pages = std::stoi(info.substr(info.find("Pages:") + 6));
        EXPECT_GT(pages, 2);
        const std::string last = "Page " + std::to_string(pages) + " of " + std::to_string(pages);
        EXPECT_NE(text.find(last), std::string::npos) << text;
        std::size_t private_lines = 0;
        for (std::size_t at = text.find("Private data"); at != std::string::npos;
             at = text.find("Private data", at + 1)) {
            ++private_lines;
        }
        EXPECT_EQ(private_lines, static_cast<std::size_t>(pages));
        EXPECT_NE(text.find("MORE_119.JPG"), std::string::npos);
    }
}

TEST_F(ClientSheet, TheKitListOnPaperSaysWhatTheListSays) {
    const auto ruler = make_text_ruler();
    const KitList list = kit_list(library, wedding);
    library.kit_ticks().set(wedding, list.lines.front().item, 1);
    const auto decoder = make_confined_decoder();
    write_pdf(kit_sheet(library, *ruler, wedding, Paper::a5), *decoder, real_file_system(), file);
    const std::string text = output_of("pdftotext -layout " + shell_word(file.string()) + " -");
    EXPECT_NE(text.find("1 of 3 packed."), std::string::npos) << text;
    for (const KitLine& line : list.lines) {
        EXPECT_NE(text.find(counted_text(line)), std::string::npos) << counted_text(line);
    }
}

}  // namespace
}  // namespace quarterturn
