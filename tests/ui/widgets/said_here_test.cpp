#include "ui/widgets/said_here.h"

#include "tests/ui/support/print.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

TEST(SaidHere, NamesWhereTheWindowDoesWhatACommandDoes) {
    EXPECT_EQ(said_here("one.jpg is damaged: check the library (qturn verify)."),
              QStringLiteral("one.jpg is damaged: check the library (“Check everything” in Keeping "
                             "it safe)."));
    for (const char* command :
         {"verify", "verify without --look-only", "restore", "lock remove", "client erasures"}) {
        const QString said = said_here(std::string("Run qturn ") + command + " again.");
        EXPECT_FALSE(said.contains(QLatin1String("qturn"))) << to_utf8(said);
        EXPECT_FALSE(said.contains(QLatin1String("--"))) << to_utf8(said);
        EXPECT_TRUE(said.startsWith(QStringLiteral("Run “"))) << to_utf8(said);
        EXPECT_TRUE(said.endsWith(QLatin1String(" again."))) << to_utf8(said);
    }
}

TEST(SaidHere, LeavesEverythingElseAsItIs) {
    EXPECT_EQ(said_here("Über 3 Fotos: free some room."),
              QStringLiteral("Über 3 Fotos: free some room."));
}

TEST(SaidHere, TellsOfManyTheFirstOnesAndTheirNumber) {
    EXPECT_EQ(said_with(QStringLiteral("Done."), {}), QStringLiteral("Done."));
    EXPECT_EQ(said_with({}, {"One.", "Two."}), QStringLiteral("One.\nTwo."));
    const QString said = said_with(QStringLiteral("Done."), std::vector<std::string>(41, "Left."));
    EXPECT_EQ(said.count(u'\n'), 6);
    EXPECT_TRUE(said.endsWith(QStringLiteral("And 36 more like these."))) << to_utf8(said);
}

}  // namespace
}  // namespace quarterturn
