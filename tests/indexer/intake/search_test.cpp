#include "indexer/intake/search.h"

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

using Names = std::vector<std::string>;

class SearchTest : public ::testing::Test {
  protected:
    PhotoId add(const std::string& name, const Tags& tags, std::vector<Flaw> flaws = {}) {
        Photo photo = example_photo(name);
        photo.flaws = std::move(flaws);
        const PhotoId id = mira.library.photos().add(photo);
        mira.library.history().apply({.said = "tagged", .tags = {{id, tags}}, .shifts = {}});
        return id;
    }

    Names found(const PhotoSearch& search) {
        Names names;
        for (const Photo& photo : search_photos(mira.library, search)) {
            names.push_back(photo.file.name);
        }
        return names;
    }

    static Tags in_sitting(SittingId sitting) {
        Tags tags;
        tags.sitting = sitting;
        return tags;
    }

    ExampleLibrary mira;
};

TEST_F(SearchTest, WithoutWishesFindsAll) {
    add("a.jpg", {});
    add("b.jpg", in_sitting(mira.trial));
    EXPECT_EQ(found({}), (Names{"a.jpg", "b.jpg"}));
}

TEST_F(SearchTest, FindsBySittingByLookAndUnplaced) {
    Tags tagged = in_sitting(mira.trial);
    tagged.look = mira.look;
    add("a.jpg", {});
    add("b.jpg", in_sitting(mira.trial));
    add("c.jpg", tagged);
    EXPECT_EQ(found({.sitting = mira.trial}), (Names{"b.jpg", "c.jpg"}));
    EXPECT_EQ(found({.look = mira.look}), (Names{"c.jpg"}));
    EXPECT_EQ(found({.unplaced = true}), (Names{"a.jpg"}));
}

TEST_F(SearchTest, UntaggedLacksAngleOrStage) {
    Tags half;
    half.angle = Angle::left;
    Tags whole = half;
    whole.stage = Stage::after;
    add("a.jpg", {});
    add("b.jpg", half);
    add("c.jpg", whole);
    EXPECT_EQ(found({.untagged = true}), (Names{"a.jpg", "b.jpg"}));
}

TEST_F(SearchTest, FlawedStaysFlawedWhenAccepted) {
    Tags accepted;
    accepted.accepted_because = "clear enough";
    add("a.jpg", {});
    add("b.jpg", accepted, {Flaw::too_dark});
    EXPECT_EQ(found({.flawed = true}), (Names{"b.jpg"}));
}

TEST_F(SearchTest, ClientsPhotosAreThoseOfHerSittingsAndLooksAndThoseThatShowHer) {
    const ClientId sister = mira.library.clients().add({.id = {}, .name = "Noor Vale", .note = ""});
    Tags shows = in_sitting(mira.trial);
    shows.shown = {sister};
    Tags look_only;
    look_only.look = mira.look;
    add("a.jpg", {});
    add("b.jpg", in_sitting(mira.trial));
    add("c.jpg", shows);
    add("d.jpg", look_only);
    EXPECT_EQ(found({.client = mira.mira}), (Names{"b.jpg", "c.jpg", "d.jpg"}));
    EXPECT_EQ(found({.client = sister}), (Names{"c.jpg"}));
}

}  // namespace
}  // namespace quarterturn
