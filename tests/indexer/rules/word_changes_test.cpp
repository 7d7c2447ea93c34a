#include "indexer/rules/word_changes.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <sstream>

namespace quarterturn {
namespace {

using Runs = std::vector<WordRun>;
using Words = std::vector<std::string>;

TEST(WordChanges, TellsWhatLeftAndWhatCame) {
    const auto changes = word_changes("Twist the tail into a low bun", "Twist it into a high bun");
    EXPECT_EQ(changes.was, (Runs{{"Twist", false},
                                 {"the tail", true},
                                 {"into a", false},
                                 {"low", true},
                                 {"bun", false}}));
    EXPECT_EQ(
        changes.is,
        (Runs{{"Twist", false}, {"it", true}, {"into a", false}, {"high", true}, {"bun", false}}));
}

TEST(WordChanges, OfNothingAllIsNew) {
    EXPECT_EQ(word_changes("", "two pins").is, (Runs{{"two pins", true}}));
    EXPECT_TRUE(word_changes("", "two pins").was.empty());
    EXPECT_EQ(word_changes("two pins", "two pins").is, (Runs{{"two pins", false}}));
}

TEST(WordChanges, LinesThatStayAreLeftAloneWhereverTheyStand) {
    const auto changes = line_changes({"foam, roots", "spray, lengths"},
                                      {"oil, ends", "foam, roots", "spray, ends"});
    EXPECT_EQ(changes.was[0], (Runs{{"foam, roots", false}}));
    EXPECT_EQ(changes.was[1], (Runs{{"spray, lengths", true}}));
    EXPECT_EQ(changes.is[0], (Runs{{"oil, ends", true}}));
    EXPECT_EQ(changes.is[1], (Runs{{"foam, roots", false}}));
    EXPECT_EQ(changes.is[2], (Runs{{"spray, ends", true}}));
}

Words few_words() {
    return *rc::gen::resize(
        9, rc::gen::container<Words>(rc::gen::element<std::string>("pin", "curl", "twist")));
}

std::string joined(const Words& words) {
    std::string text;
    for (const std::string& word : words) text += (text.empty() ? "" : " ") + word;
    return text;
}

Words all_words(const Runs& runs, bool staying_only) {
    Words words;
    for (const WordRun& run : runs) {
        if (staying_only && run.changed) continue;
        std::istringstream text(run.words);
        for (std::string next; text >> next;) words.push_back(next);
    }
    return words;
}

bool in_their_order(const Words& some, const Words& all) {
    auto place = all.begin();
    for (const std::string& word : some) {
        place = std::find(place, all.end(), word);
        if (place == all.end()) return false;
        ++place;
    }
    return true;
}

// Tries every choice of the old words.
std::size_t most_that_can_stay(const Words& was, const Words& is) {
    std::size_t most = 0;
    for (unsigned chosen = 0; chosen < (1U << was.size()); ++chosen) {
        Words some;
        for (std::size_t i = 0; i < was.size(); ++i) {
            if (chosen >> i & 1U) some.push_back(was[i]);
        }
        if (in_their_order(some, is)) most = std::max(most, some.size());
    }
    return most;
}

RC_GTEST_PROP(WordChanges, KeepsEveryWordAndAsManyInPlaceAsCanBe, ()) {
    const Words was = few_words();
    const Words is = few_words();
    const auto changes = word_changes(joined(was), joined(is));
    RC_ASSERT(all_words(changes.was, false) == was);
    RC_ASSERT(all_words(changes.is, false) == is);
    RC_ASSERT(all_words(changes.was, true) == all_words(changes.is, true));
    RC_ASSERT(all_words(changes.is, true).size() == most_that_can_stay(was, is));
}

}  // namespace
}  // namespace quarterturn
