#include "indexer/store/sought_names.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

std::string without(const char* name, std::string_view text) {
    return SoughtNames({name}).without(text, "(erased)");
}

bool says(const char* name, std::string_view text) {
    return !SoughtNames({name}).said_in(text).empty();
}

TEST(SoughtNames, AreTakenOutAsWholeWordsAlone) {
    EXPECT_EQ(without("Ada Vale", "sister of Ada Vale, as ADA  VALE's mother"),
              "sister of (erased), as (erased)'s mother");
    EXPECT_EQ(without("Ann Low", "Ann Lower, Joann Low, Annual lowering"),
              "Ann Lower, Joann Low, Annual lowering");
    EXPECT_EQ(without("Zoë Æbel", "Zoë Æbelø"), "Zoë Æbelø");
    EXPECT_EQ(without("Ada Vale", ""), "");
}

TEST(SoughtNames, AreKnownWithoutAccentsAndInEitherOrder) {
    const char* name = "Séraphine Vašnovič";
    for (const char* form :
         {"Séraphine Vašnovič", "SÉRAPHINE VAŠNOVIČ", "Seraphine Vasnovic", "Vašnovič, Séraphine",
          "vasnovic seraphine", "Se\u0301raphine Vas\u030Cnovic\u030C", "seraphine_vasnovic"}) {
        EXPECT_EQ(without(name, std::string("with ") + form + " today"), "with (erased) today")
            << form;
    }
    EXPECT_EQ(without("Łucja Ørsted", "LUCJA ORSTED"), "(erased)");
    EXPECT_EQ(without("Ada Maria Vale", "Vale, Ada Maria"), "(erased)");
}

// Each may be an ordinary word.
TEST(SoughtNames, OfOneWordAreSaidAndNotTakenOut) {
    for (const char* text : {"Low twisted bun", "for Low", "Low's mother"}) {
        EXPECT_EQ(without("Low", text), text);
        EXPECT_TRUE(says("Low", text)) << text;
        EXPECT_EQ(SoughtNames({"Low"}).first_said_in(text), "Low");
    }
    EXPECT_FALSE(says("Low", "a low bun, Lowe, Lower"));
    EXPECT_EQ(without("Anne-Marie", "Anne-Marie Holm"), "Anne-Marie Holm");
}

TEST(SoughtNames, StayWhereTheyMayBelongToSomebodyElse) {
    for (const char* text : {"Anne-Ada Vale", "Ada Vale-Holm", "O'Ada Vale", "Ada. Vale is late"}) {
        EXPECT_EQ(without("Ada Vale", text), text);
        EXPECT_TRUE(says("Ada Vale", text)) << text;
    }
    EXPECT_FALSE(says("Ada Vale", "Ada and Vale"));
}

TEST(SoughtNames, AreSaidWhereWordsRunOn) {
    EXPECT_TRUE(says("王小明", "今天王小明的妹妹"));
    EXPECT_TRUE(says("山田 花子", "山田花子さんの妹"));
    EXPECT_TRUE(says("김 민수", "김민수는"));
    EXPECT_FALSE(says("王小明", "王小"));
}

TEST(SoughtNames, OfSeveralEachIsFound) {
    EXPECT_EQ(SoughtNames({"Ada Vale", "Bea Holm"}).without("Ada Vale and Bea Holm", "x"),
              "x and x");
}

TEST(TextWords, SayWhereANameGoesOn) {
    const auto words = words_in("Anne-Marie O'Neill, été");
    ASSERT_EQ(words.size(), 5U);
    EXPECT_TRUE(words[0].joined_behind);
    EXPECT_TRUE(words[1].joined_before);
    EXPECT_TRUE(words[3].joined_before);
    EXPECT_FALSE(words[4].joined_before);
    EXPECT_EQ(words[4].plain, "ete");
}

TEST(WordsInCommon, AreWholeWordsOfThreeLettersWhateverTheirCase) {
    EXPECT_TRUE(share_a_word("Okonjo-Lindqvist and Vale", "mira OKONJO"));
    EXPECT_TRUE(share_a_word("VAŠNOVIČ at the boathouse", "Séraphine Vašnovič"));
    EXPECT_FALSE(share_a_word("Lowbun", "Ada Low"));
    EXPECT_FALSE(share_a_word("To be or not", "Bo Be"));
    EXPECT_FALSE(share_a_word("", ""));
}

TEST(WordsInCommon, AreFoundWithoutAccents) {
    EXPECT_TRUE(share_a_word("Vasnovic and daughter", "Séraphine Vašnovič"));
}

}  // namespace
}  // namespace quarterturn
