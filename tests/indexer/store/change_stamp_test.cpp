// A stamp that stays the same means that nothing changed, whoever might have changed it.

#include "indexer/store/change_stamp.h"

#include <utility>

#include "tests/support/command.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

struct ChangeStampTest : testing::Test, ExampleLibrary {
    ChangeStamp now() { return change_stamp(library.database()); }
    Path place = folder / "library";
};

TEST_F(ChangeStampTest, LookingChangesNothing) {
    const ChangeStamp before = now();
    (void)library.clients().all();
    (void)Library::open(place).looks().all();
    EXPECT_EQ(now(), before);
}

TEST_F(ChangeStampTest, EachChangeOfOursIsTold) {
    ChangeStamp before = now();
    const auto differs = [&] { return std::exchange(before, now()) != before; };
    const ClientId ada = library.clients().add(client_called("Ada Vale"));
    EXPECT_TRUE(differs());
    Client client = library.clients().find(ada).value();
    client.note = "tender left ear";
    library.clients().change(client);
    EXPECT_TRUE(differs());
    client.note = "tender right ear";
    library.history().record("changed", [&] { library.clients().change(client); });
    EXPECT_TRUE(differs());
    (void)library.history().undo();
    EXPECT_TRUE(differs());
    EXPECT_FALSE(differs()) << "and then no more";
}

TEST_F(ChangeStampTest, ASecondWindowAndAnotherProgramAreTold) {
    ChangeStamp before = now();
    const auto differs = [&] { return std::exchange(before, now()) != before; };
    Library::open(place).clients().add(client_called("Ada Vale"));
    EXPECT_TRUE(differs());
    output_of("sqlite3 " + shell_word(place / "records.sqlite") +
              " \"UPDATE client SET note = 'tender left ear'\"");
    EXPECT_TRUE(differs());
    EXPECT_FALSE(differs());
}

}  // namespace
}  // namespace quarterturn
