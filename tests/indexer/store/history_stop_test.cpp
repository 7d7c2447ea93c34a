// What can never be undone stands in the way of undo once, and is said.

#include <gtest/gtest.h>

#include "tests/support/example_library.h"
#include "tests/support/records_dump.h"

namespace quarterturn {
namespace {

class HistoryStop : public testing::Test, public ExampleLibrary {
  protected:
    void rename(const std::string& name) {
        library.history().record("renamed her", [&] {
            Client client = *library.clients().find(mira);
            client.name = name;
            library.clients().change(client);
        });
    }
    std::string her_name() { return library.clients().find(mira)->name; }
    bool stops_at(const std::string& said) {
        const auto turned = library.history().undo();
        return turned && turned->stands && *turned == said;
    }
};

TEST_F(HistoryStop, TakesNothingBackOnceAndLetsTheNextUndoGoOn) {
    rename("Mira Vale");
    library.history().stop_at("told somebody");
    reopen();
    const RecordsDump before = dump_of(library.database());
    EXPECT_TRUE(library.history().can_undo());
    EXPECT_TRUE(stops_at("told somebody"));
    EXPECT_EQ(difference(dump_of(library.database()), before), "");
    const auto undone = library.history().undo();
    ASSERT_TRUE(undone);
    EXPECT_EQ(*undone, "renamed her");
    EXPECT_FALSE(undone->stands);
    EXPECT_EQ(her_name(), "Mira Okonjo-Lindqvist");
    EXPECT_EQ(library.history().redo(), "renamed her");
    EXPECT_EQ(library.history().redo(), std::nullopt) << "a stop is never done again";
}

TEST_F(HistoryStop, IsOneHoweverOftenTheSameIsDone) {
    library.history().stop_at("told somebody");
    library.history().stop_at("told somebody");
    library.history().stop_at("signed");
    library.history().stop_at("told somebody");
    EXPECT_TRUE(stops_at("told somebody"));
    EXPECT_TRUE(stops_at("signed"));
    EXPECT_TRUE(stops_at("told somebody"));
    EXPECT_FALSE(library.history().can_undo());
}

TEST_F(HistoryStop, DropsWhatWasUndoneBeforeIt) {
    rename("Mira Vale");
    library.history().undo();
    library.history().stop_at("told somebody");
    EXPECT_EQ(library.history().redo(), std::nullopt);
}

TEST_F(HistoryStop, GoesWithWhatWasToMakeIt) {
    {
        Transaction given_up(library.database());
        library.history().stop_at("told somebody");
    }
    EXPECT_FALSE(library.history().can_undo());
}

TEST_F(HistoryStop, NoActionOfPhotosOrRecordsIsOne) {
    const PhotoId photo = library.photos().add(example_photo("one.jpg"));
    Tags left;
    left.angle = Angle::left;
    library.history().apply({"tagged it", {{photo, left}}, {}});
    rename("Mira Vale");
    EXPECT_FALSE(library.history().undo()->stands);
    EXPECT_FALSE(library.history().undo()->stands);
}

}  // namespace
}  // namespace quarterturn
