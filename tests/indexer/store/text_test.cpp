#include "indexer/store/text.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace quarterturn {
namespace {

struct Spelling {
    const char* one;
    const char* other;
};

// The Unicode Standard, CaseFolding.txt (C and F) and chapter 3.13 (NFKC_Casefold).
TEST(Folded, IsOneForTheSpellingsOfAName) {
    for (const Spelling& spelling : {
             Spelling{"ADA", "ada"},
             Spelling{"Straße", "STRASSE"},
             Spelling{"ΣΟΦΟΣ", "σοφος"},
             Spelling{"σοφος", "σοφοσ"},
             Spelling{"ЖАННА", "жанна"},
             Spelling{"Éva", "E\u0301va"},
             Spelling{"Ｍｉｒａ", "mira"},
             Spelling{"ﬁona", "Fiona"},
             Spelling{"Անի", "անի"},
             Spelling{"\u212B", "å"},
             Spelling{"नेहा", "नेहा"},
         }) {
        EXPECT_EQ(folded(spelling.one), folded(spelling.other)) << spelling.one;
    }
}

TEST(Folded, KeepsDifferentNamesApart) {
    for (const Spelling& spelling :
         {Spelling{"Zoe", "Zoë"}, Spelling{"Ada", "Ada "}, Spelling{"美咲", "美桜"},
          Spelling{"и", "й"}, Spelling{"\xff", "\xfe"}, Spelling{"a", ""}}) {
        EXPECT_NE(folded(spelling.one), folded(spelling.other)) << spelling.one;
    }
}

TEST(Folded, KeepsBytesThatAreNoTextButForAsciiCase) {
    EXPECT_EQ(folded("IMG\xff\xc3.JPG"), "img\xff\xc3.jpg");
}

// UTS #10, root order: first the letters, then accents, then case, small letters first.
TEST(NameBefore, PutsNamesInOrder) {
    std::vector<std::string> names{"Ωmega", "Zoë",  "zoe", "Åse",  "Čapek",
                                   "Cora",  "Bela", "Zoe", "Астра"};
    std::stable_sort(names.begin(), names.end(), name_before);
    EXPECT_EQ(names, (std::vector<std::string>{"Åse", "Bela", "Čapek", "Cora", "zoe", "Zoe", "Zoë",
                                               "Ωmega", "Астра"}));
}

}  // namespace
}  // namespace quarterturn
