#include "indexer/sheet/kit_sheet.h"

#include <gtest/gtest.h>

#include "indexer/sheet/sheet_style.h"
#include "tests/indexer/sheet/page_boxes.h"
#include "tests/indexer/sheet/plain_ruler.h"
#include "tests/support/arbitrary_text.h"

namespace quarterturn {
namespace {

std::string words_of_a_kit(int most) {
    std::string text;
    for (int left = *rc::gen::inRange(1, most); left > 0; --left) {
        text += std::string(static_cast<std::size_t>(*rc::gen::inRange(1, 25)), 'x') + " ";
    }
    return text;
}

KitList some_list() {
    KitList list;
    list.kit.wedding.name = words_of_a_kit(12);
    list.kit.wedding.date = Date{std::chrono::year{2026} / 11 / 21};
    for (const KitGroup group : all_kit_groups) {
        for (int left = *rc::gen::inRange(0, 30); left > 0; --left) {
            KitLine& line = list.lines.emplace_back();
            line.group = group;
            line.what = words_of_a_kit(20);
            line.about = words_of_a_kit(30);
            line.count = *rc::gen::inRange(0, 60);
            line.looks = {words_of_a_kit(10)};
            if (*rc::gen::inRange(0, 2) == 0) line.ticked = *rc::gen::inRange(0, 60);
        }
    }
    list.kit.without_recipe = {words_of_a_kit(10)};
    return list;
}

RC_GTEST_PROP(KitSheet, EveryLineHasItsBoxAndNothingOverlaps, ()) {
    PlainRuler ruler;
    const KitList list = some_list();
    const Paper paper = *rc::gen::element(Paper::a4, Paper::a5, Paper::letter);
    const Document document = kit_sheet(list, "Pins and Paper", ruler, paper);
    RC_ASSERT(problem_of_boxes(document, sheet_style(paper).margin) == "");
    std::vector<bool> ticks;
    for (const Page& page : document.pages) {
        for (const PageItem& item : page.items) {
            if (const auto* tick = std::get_if<TickItem>(&item)) ticks.push_back(tick->ticked);
        }
    }
    std::vector<bool> wanted;
    for (const KitLine& line : list.lines) wanted.push_back(line.ticked.has_value());
    RC_ASSERT(ticks == wanted);
}

std::string all_text(const Document& document) {
    std::string text;
    for (const Page& page : document.pages) {
        for (const PageItem& item : page.items) {
            if (const auto* words = std::get_if<TextItem>(&item)) text += words->text + '\n';
        }
    }
    return text;
}

TEST(KitSheetWords, SayHowManyWhatForAndWhatIsNotKnown) {
    PlainRuler ruler;
    KitList list;
    list.kit.wedding.name = "Boathouse";
    list.kit.wedding.venue = "The Old Granary";
    list.kit.wedding.date = Date{std::chrono::year{2026} / 11 / 21};
    list.kit.without_recipe = {"Evening"};
    KitLine grip;
    grip.group = KitGroup::pins;
    grip.what = "grip, brown";
    grip.about = "10 needed, 2 to spare";
    grip.count = 12;
    grip.ticked = 9;
    grip.looks = {"Low bun", "Evening plait"};
    list.lines = {grip};
    const std::string text = all_text(kit_sheet(list, "", ruler, Paper::a4));
    for (const char* words :
         {"Boathouse", "21 November 2026, The Old Granary", "12 × grip, brown",
          "10 needed, 2 to spare · for Low bun and Evening plait", "3 more than when it was ticked.",
          "1 of 1 packed, 1 of them needs more.", "Evening has no recipe yet", "Page 1 of 1"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << " is not in\n" << text;
    }
}

}  // namespace
}  // namespace quarterturn
