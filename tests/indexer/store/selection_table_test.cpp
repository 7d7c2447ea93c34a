#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

struct Selections : testing::Test, ExampleLibrary {
    PhotoId a = library.photos().add(example_photo("a.jpg"));
    PhotoId b = library.photos().add(example_photo("b.jpg"));
    PhotoId c = library.photos().add(example_photo("c.jpg"));
};

TEST_F(Selections, KeepTheirOrderAndStandInTheOrderOfNames) {
    library.selections().keep({"Spring page", {c, a, c, b}});
    library.selections().keep({"Buns", {b}});
    library.selections().keep({"Nothing yet", {}});
    reopen();
    const std::vector<PhotoSelection> expected{
        {"Buns", {b}}, {"Nothing yet", {}}, {"Spring page", {c, a, b}}};
    EXPECT_EQ(library.selections().all(), expected);
    EXPECT_EQ(library.selections().find("spring PAGE")->photos, (std::vector{c, a, b}));
    EXPECT_EQ(library.selections().find("autumn"), std::nullopt);
}

TEST_F(Selections, AreKeptAnewUnderTheirNameAndForgotten) {
    library.selections().keep({"Buns", {a, b}});
    library.selections().keep({"BUNS", {c}});
    const std::vector<PhotoSelection> expected{{"BUNS", {c}}};
    EXPECT_EQ(library.selections().all(), expected);
    library.selections().remove("buns");
    EXPECT_TRUE(library.selections().all().empty());
    EXPECT_THROW(library.selections().remove("buns"), StoreError);
    EXPECT_THROW(library.selections().keep({" ", {a}}), StoreError);
    EXPECT_THROW(library.selections().keep({"Buns", {PhotoId{99}}}), StoreError);
    EXPECT_TRUE(library.selections().all().empty());
}

}  // namespace
}  // namespace quarterturn
