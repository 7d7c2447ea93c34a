#include "indexer/sheet/columns.h"

#include "tests/indexer/sheet/plain_ruler.h"

namespace quarterturn {
namespace {

std::string words_of(const std::string& text) {
    std::istringstream stream(text);
    std::string all;
    for (std::string word; stream >> word;) all += word;
    return all;
}

std::deque<Paragraph> some_paragraphs() {
    std::deque<Paragraph> paragraphs;
    const int count = *rc::gen::inRange(1, 12);
    for (int i = 0; i < count; ++i) {
        Paragraph paragraph;
        const bool after_heading = !paragraphs.empty() && paragraphs.back().heading;
        paragraph.heading = !after_heading && *rc::gen::inRange(0, 4) == 0;
        paragraph.text.bold = paragraph.heading;
        const int words = paragraph.heading ? 1 : *rc::gen::inRange(1, 120);
        for (int word = 0; word < words; ++word) {
            const auto letters = static_cast<std::size_t>(*rc::gen::inRange(1, 14));
            paragraph.text.text += std::string(letters, 'a') + " ";
        }
        paragraph.text.points = 8;
        paragraph.gap_before = 1.5;
        paragraphs.push_back(paragraph);
    }
    return paragraphs;
}

RC_GTEST_PROP(Columns, NoWordIsLostAndEveryTextLiesInItsColumn, ()) {
    PlainRuler ruler;
    const Columns columns{10, 20, static_cast<double>(*rc::gen::inRange(8, 120)), 50, 4, 3};
    const auto paragraphs = some_paragraphs();
    std::string before;
    for (const Paragraph& paragraph : paragraphs) before += words_of(paragraph.text.text);

    const FilledColumns filled = fill_columns(ruler, paragraphs, columns);
    std::string after;
    for (const TextItem& text : filled.texts) {
        after += words_of(text.text);
        RC_ASSERT(text.box.y >= columns.y);
        RC_ASSERT(text.box.y + text.box.height <= columns.y + columns.height + 1e-3);
    }
    for (const Paragraph& paragraph : filled.rest) after += words_of(paragraph.text.text);
    RC_ASSERT(after == before);
}

RC_GTEST_PROP(Columns, AHeadingIsNeverTheLastInItsColumn, ()) {
    PlainRuler ruler;
    const Columns columns{0, 0, static_cast<double>(*rc::gen::inRange(20, 120)), 50, 4, 3};
    const FilledColumns filled = fill_columns(ruler, some_paragraphs(), columns);
    for (std::size_t i = 0; i + 1 < filled.texts.size(); ++i) {
        const bool last_in_column = filled.texts[i + 1].box.x > filled.texts[i].box.x;
        RC_ASSERT(!(last_in_column && filled.texts[i].bold));
    }
}

TEST(Columns, BalancedHeightIsTheLeastThatHoldsAll) {
    PlainRuler ruler;
    std::deque<Paragraph> paragraphs;
    for (int i = 0; i < 9; ++i) {
        Paragraph line;
        line.text.text = "one line";
        line.text.points = 10;
        paragraphs.push_back(line);
    }
    const double line_height = ruler.height_mm("one line", 10, false, 60);
    const auto height = balanced_height(ruler, paragraphs, {0, 0, 0, 60, 4, 3}, 200);
    ASSERT_TRUE(height);
    EXPECT_NEAR(*height, 3 * line_height, 0.5);
    EXPECT_FALSE(balanced_height(ruler, paragraphs, {0, 0, 0, 60, 4, 3}, 2 * line_height));
}

TEST(Columns, AWordLongerThanALineIsBrokenBetweenLetters) {
    PlainRuler ruler;
    TextItem text;
    text.points = 10;
    for (int i = 0; i < 100; ++i) text.text += "ნ";  // three bytes in UTF-8
    const auto [first, second] = split_text(ruler, text, 30, 4.7);
    EXPECT_FALSE(first.empty());
    EXPECT_EQ(first.size() % 3, 0U);
    EXPECT_EQ(first + second, text.text);
}

}  // namespace
}  // namespace quarterturn
