#include "indexer/store/sign_off_table.h"

#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class SignOffTableTest : public testing::Test, public ExampleLibrary {
  protected:
    SignOff sign_off_at(const char* iso) {
        SignOff sign_off;
        sign_off.look = look;
        sign_off.signed_at = at(iso);
        sign_off.seal.recipe_sha256 = sha256("recipe");
        sign_off.seal.photos = {{PhotoId{9}, "b.jpg", sha256("b"), "after, left"},
                                {PhotoId{4}, "a.jpg", sha256("a"), "before, front, mirrored"}};
        sign_off.seal.waivers = {{{Stage::after, Angle::back}, "the veil was pinned already"},
                                 {{Stage::before, Angle::crown}, "no ladder"}};
        return sign_off;
    }
};

TEST_F(SignOffTableTest, KeepsTheWholeSeal) {
    SignOff sign_off = sign_off_at("2026-11-07T12:10");
    sign_off.id = library.sign_offs().add(sign_off);
    reopen();
    EXPECT_EQ(library.sign_offs().standing(look), sign_off);
    EXPECT_EQ(library.sign_offs().all(look), std::vector{sign_off});
}

TEST_F(SignOffTableTest, LetsOnlyOneStand) {
    library.sign_offs().add(sign_off_at("2026-11-07T12:10"));
    EXPECT_THROW(library.sign_offs().add(sign_off_at("2026-11-07T12:20")), StoreError);
    EXPECT_EQ(library.sign_offs().all(look).size(), 1U);
}

TEST_F(SignOffTableTest, KeepsWhyALookWasReopened) {
    SignOff first = sign_off_at("2026-11-07T12:10");
    first.id = library.sign_offs().add(first);
    library.sign_offs().reopen(look, "she wants it lower", at("2026-11-08T09:00"));
    first.reopened_at = at("2026-11-08T09:00");
    first.reopened_because = "she wants it lower";
    EXPECT_EQ(library.sign_offs().standing(look), std::nullopt);

    SignOff second = sign_off_at("2026-11-09T12:10");
    second.seal.photos.pop_back();
    second.id = library.sign_offs().add(second);
    EXPECT_EQ(library.sign_offs().all(look), (std::vector{first, second}));
    EXPECT_EQ(library.sign_offs().standing(look), second);
}

TEST_F(SignOffTableTest, ReopensOnlyWhatStandsAndOnlyWithAReason) {
    EXPECT_THROW(library.sign_offs().reopen(look, "a reason", at("2026-11-08T09:00")), StoreError);
    library.sign_offs().add(sign_off_at("2026-11-07T12:10"));
    EXPECT_THROW(library.sign_offs().reopen(look, " ", at("2026-11-08T09:00")), StoreError);
    EXPECT_TRUE(library.sign_offs().standing(look));
}

}  // namespace
}  // namespace quarterturn
