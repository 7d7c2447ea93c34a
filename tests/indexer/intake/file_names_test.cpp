#include "indexer/intake/file_names.h"

#include <rapidcheck/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

TEST(FileNames, AClientsNameBecomesAFolderAnyDiskTakes) {
    EXPECT_EQ(as_folder_part("Mira Okonjo-Lindqvist"), "Mira Okonjo-Lindqvist");
    EXPECT_EQ(as_folder_part("ሳባ ተስፋዬ"), "ሳባ ተስፋዬ");
    EXPECT_EQ(as_folder_part("  a/b\\c:d*e?f\"g<h>i|j\nk\t "), "a b c d e f g h i j k");
    EXPECT_EQ(as_folder_part("St. Just..."), "St. Just");
    EXPECT_EQ(as_folder_part(".."), "unnamed");
    EXPECT_EQ(as_folder_part(""), "unnamed");
}

TEST(FileNames, ALongNameIsCutBetweenCharacters) {
    std::string name;
    for (int i = 0; i < 60; ++i) name += "ö";
    EXPECT_EQ(as_folder_part(name, 81).size(), 80U);
    EXPECT_EQ(as_text(as_folder_part(name, 81)), as_folder_part(name, 81));
}

TEST(FileNames, BytesThatAreNoTextAreReplaced) {
    EXPECT_EQ(as_text("IMG_0001.jpg"), "IMG_0001.jpg");
    EXPECT_EQ(as_text("na\xEFve.jpg"), "na_ve.jpg");
    EXPECT_EQ(as_text("\xC0\xAF"), "__");            // overlong (RFC 3629)
    EXPECT_EQ(as_text("\xED\xA0\x80"), "___");       // half of a surrogate pair
    EXPECT_EQ(as_text("\xF4\x90\x80\x80"), "____");  // beyond U+10FFFF
    EXPECT_EQ(as_text("\xF0\x9F\x92\x90"), "\xF0\x9F\x92\x90");
}

TEST(FileNames, ANumberStandsBeforeTheEnding) {
    EXPECT_EQ(numbered_name("IMG_0001.jpg", 1), "IMG_0001.jpg");
    EXPECT_EQ(numbered_name("IMG_0001.jpg", 2), "IMG_0001 (2).jpg");
    EXPECT_EQ(numbered_name("IMG", 3), "IMG (3)");
    EXPECT_EQ(numbered_name(".jpg", 2), ".jpg (2)");
    const std::string longest = std::string(251, 'x') + ".jpg";
    EXPECT_EQ(numbered_name(longest, 12).size(), 255U);
    EXPECT_TRUE(numbered_name(longest, 12).ends_with(" (12).jpg"));
}

TEST(FileNames, FoldersAreByYearDateClientAndKind) {
    Sitting sitting;
    sitting.kind = SittingKind::wedding_day;
    sitting.starts = at("2026-11-21T07:00");
    EXPECT_EQ(sitting_folder(sitting, client_called("Noor Achterberg")),
              "photos/2026/2026-11-21 Noor Achterberg wedding day");
    EXPECT_EQ(waiting_folder(at("2026-11-21T23:59:59")), "photos/2026/2026-11-21 not yet placed");
    EXPECT_EQ(waiting_folder(std::nullopt), "photos/undated");
}

RC_GTEST_PROP(FileNames, WhateverTheNameThePartIsOnePlainFolder, ()) {
    const auto text = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
    const std::string part = as_folder_part(text);
    RC_ASSERT(!part.empty());
    RC_ASSERT(part.size() <= 80U);
    RC_ASSERT(part.find_first_of(std::string{"/\\:*?\"<>|\0", 10}) == std::string::npos);
    RC_ASSERT(as_text(part) == part);
    RC_ASSERT(as_folder_part(part) == part);
    RC_ASSERT(Path{part}.filename() == part && part != "." && part != "..");
}

}  // namespace
}  // namespace quarterturn
