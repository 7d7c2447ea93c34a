// The search against a plain model: all photos and records in memory, texts put together and split
// into words here, dates compared as text. Any sequence of changes, undoing, doing again and
// restarts comes before.
#include "tests/indexer/store/search_story.h"

namespace quarterturn {
namespace {

RC_GTEST_PROP(SearchProperty, FindsWhatAPlainModelFindsAfterAnyChanges, ()) {
    SearchStory story;
    for (int left = *rc::gen::inRange(1, 40); left > 0; --left) story.go_on();
    story.compare_index();
    story.compare(5);
    story.library().search().rebuild();
    story.compare_index();
    story.compare(2);
}

RC_GTEST_PROP(SearchProperty, RawWordsAreNeverAMistake, ()) {
    static ExampleLibrary example;
    static const std::vector<std::string> hard{
        "\"",  "\"\"",  "*",  "a*", "AND", "OR NOT", "NEAR(a, b)", "^a", "text:a",
        "{a}", "a + b", "-a", "(",  ")",   "'",      "''",         "%",  "_",
        "\\",  "a\"b",  "--", ";",  ":",   "\x02",   "\x03",       "́",   "NULL"};
    std::string words = *arbitrary_text();
    for (int left = *rc::gen::inRange(0, 4); left > 0; --left) {
        words += ' ' + *rc::gen::elementOf(hard);
    }
    Photo photo = example_photo("a.jpg");
    static const PhotoId id = example.library.photos().add(photo);
    Tags tags;
    tags.note = words;
    example.library.history().apply({"noted", {{id, tags}}, {}});
    PhotoSearch search;
    search.words = words;
    example.library.search().find(search);
    const auto texts = example.library.search().found_texts(std::vector{id}, words);
    for (const FoundText& text : texts.at(0)) {
        for (const TextPiece& piece : text.pieces) RC_ASSERT(!piece.text.empty());
    }
}

}  // namespace
}  // namespace quarterturn
