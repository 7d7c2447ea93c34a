#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

constexpr LocalTime ten{std::chrono::hours(10)};

class TakeBack : public testing::Test {
  protected:
    ExampleLibrary example;
    Library& library = example.library;
    ClientId ada = library.clients().add({{}, "Ada", "fine hair"});
};

TEST_F(TakeBack, AClientIsGoneAndComesBackUnderHerNumber) {
    const Client before = *library.clients().find(ada);
    library.clients().remove(ada);
    EXPECT_EQ(library.clients().find(ada), std::nullopt);
    library.clients().put_back(before);
    EXPECT_EQ(library.clients().find(ada), before);
    EXPECT_EQ(library.clients().named("ADA").size(), 1u);
}

TEST_F(TakeBack, AWeddingComesBackWithItsParty) {
    Wedding wedding{{},     "Ada and Bo", Date{std::chrono::year(2027) / 5 / 8},
                    "Mill", "12:30",      {{ada, "bride"}}};
    wedding.id = library.weddings().add(wedding);
    library.weddings().remove(wedding.id);
    EXPECT_EQ(library.weddings().find(wedding.id), std::nullopt);
    library.weddings().put_back(wedding);
    EXPECT_EQ(library.weddings().find(wedding.id), wedding);
}

TEST_F(TakeBack, ALookAndItsSittingComeBack) {
    Sitting sitting{{}, ada, {}, SittingKind::trial, ten, ten, ""};
    sitting.id = library.sittings().add(sitting);
    Look look{{}, ada, {}, "Bun", Worn::evening, {sitting.id}};
    look.id = library.looks().add(look);
    EXPECT_THROW(library.sittings().remove(sitting.id), StoreError);
    library.looks().remove(look.id);
    library.sittings().remove(sitting.id);
    library.sittings().put_back(sitting);
    library.looks().put_back(look);
    EXPECT_EQ(library.sittings().find(sitting.id), sitting);
    EXPECT_EQ(library.looks().find(look.id), look);
}

TEST_F(TakeBack, WhatOthersHangOnStays) {
    const LookId look = library.looks().add({{}, ada, {}, "Bun", Worn::evening, {}});
    EXPECT_THROW(library.clients().remove(ada), StoreError);
    library.recipes().save(look, {}, ten);
    EXPECT_THROW(library.looks().remove(look), StoreError);
    EXPECT_NE(library.looks().find(look), std::nullopt);
    EXPECT_NE(library.clients().find(ada), std::nullopt);
}

TEST_F(TakeBack, WhatIsNotThereCannotBeTakenBack) {
    EXPECT_THROW(library.weddings().remove(WeddingId{99}), StoreError);
}

}  // namespace
}  // namespace quarterturn
