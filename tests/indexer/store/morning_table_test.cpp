#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class Mornings : public testing::Test, public ExampleLibrary {};

TEST_F(Mornings, OfWhichNothingWasSaidHaveOneStylistAtTheUsualTime) {
    EXPECT_EQ(library.mornings().of(wedding), Morning{});
    EXPECT_EQ(Morning{}.stylists, std::vector{StylistHours{}});
}

TEST_F(Mornings, AreKeptAndReplacedAsAWhole) {
    const ClientId aunt = library.clients().add(client_called("Aud Vale"));
    Morning morning;
    morning.stylists = {{390, {{540, 555}, {600, 610}}}, {405, {}}};
    morning.wishes = {{mira, 750, {}, false, true, ChairWork{20, 15, 60, 40}},
                      {aunt, {}, 420, true, false, {}}};
    morning.kept = {{aunt, SeatPart::set, 1, 430},
                    {mira, SeatPart::set, 0, 640},
                    {mira, SeatPart::finish, 0, 690}};
    library.mornings().save(wedding, morning);
    reopen();
    EXPECT_EQ(library.mornings().of(wedding), morning);

    morning.stylists.pop_back();
    morning.wishes = {{mira, {}, {}, false, false, {}}, {aunt, 700, {}, false, false, {}}};
    morning.kept.clear();
    library.mornings().save(wedding, morning);
    morning.wishes.erase(morning.wishes.begin());  // it says nothing
    EXPECT_EQ(library.mornings().of(wedding), morning);
}

TEST_F(Mornings, RefuseWhatCannotBe) {
    Morning morning;
    morning.wishes = {{ClientId{99}, 700, {}, false, false, {}}};
    EXPECT_THROW(library.mornings().save(wedding, morning), StoreError);
    EXPECT_THROW(library.mornings().save(WeddingId{99}, Morning{}), StoreError);
    morning = {};
    morning.stylists.resize(5);
    EXPECT_THROW(library.mornings().save(wedding, morning), StoreError);
    EXPECT_EQ(library.mornings().of(wedding), Morning{});
}

}  // namespace
}  // namespace quarterturn
