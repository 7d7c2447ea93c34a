#include "indexer/portfolio/candidates.h"

#include <gtest/gtest.h>

#include "indexer/looks/consents.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class NoPictures final : public Decoder {
  public:
    Decoded decode(const DecodeRequest&) override {
        Decoded decoded;
        decoded.refused = "there is no decoder in this test";
        return decoded;
    }
};

struct Candidates : testing::Test, ExampleLibrary {
    Candidates() {
        ConsentEntry entry;
        entry.client = mira;
        entry.said = ConsentSaid::granted;
        entry.said_on = today;
        entry.shown = ShownAs::with_her_face;
        entry.recorded_at = at("2026-11-07T10:00");
        record_consent(library, entry, std::vector{Use::website});
    }

    PhotoId add(const std::string& name, double focus, bool own) {
        Photo photo = example_photo(name);
        photo.tags.look = look;
        photo.tags.stage = Stage::after;
        photo.measures.focus = focus;
        const PhotoId id = library.photos().add(photo);
        if (own) library.credits().set(std::vector{id}, Credit{});
        return id;
    }
    std::vector<PhotoId> in_order() {
        NoPictures decoder;
        std::vector<PhotoId> photos;
        for (const Candidate& candidate : candidates(library, decoder, Use::website, today)) {
            photos.push_back(candidate.photo.id);
        }
        return photos;
    }

    const Date today = parse_date("2026-11-07").value();
};

TEST_F(Candidates, ThoseThatMayGoComeFirstThenTheSharpest) {
    const PhotoId sharpest = add("a.jpg", 900, false);
    const PhotoId soft = add("b.jpg", 300, true);
    const PhotoId sharp = add("c.jpg", 600, true);
    EXPECT_EQ(in_order(), (std::vector{sharp, soft, sharpest}));
}

TEST_F(Candidates, EachSaysInFewWordsWhatIsToBeDone) {
    NoPictures decoder;
    add("a.jpg", 900, false);
    EXPECT_EQ(candidates(library, decoder, Use::website, today).front().next,
              "Say whose photo it is");
    EXPECT_EQ(candidates(library, decoder, Use::social_media, today).front().next,
              "Ask Mira Okonjo-Lindqvist about social media");
    add("b.jpg", 900, true);
    EXPECT_EQ(candidates(library, decoder, Use::website, today).front().next, "");
}

TEST_F(Candidates, OnlyFinishedLooksAreOnes) {
    Photo before = example_photo("before.jpg");
    before.tags.look = look;
    before.tags.stage = Stage::before;
    library.photos().add(before);
    EXPECT_TRUE(in_order().empty());
}

TEST_F(Candidates, CountsWhatASelectionShowsAndWhatItNeverDoes) {
    library.look_facts().say(look, Fact::family, std::vector<std::string>{"low bun", "plait"});
    const std::vector photos{add("a.jpg", 600, true), add("b.jpg", 600, true)};
    const auto counts = balance_of(library, photos, Fact::family);
    ASSERT_EQ(counts.size(), usual_look_families.size());
    EXPECT_EQ(counts[0], (FactCount{"low bun", 2}));
    EXPECT_EQ(counts[1], (FactCount{"plait", 2}));
    for (std::size_t i = 2; i < counts.size(); ++i) EXPECT_EQ(counts[i].photos, 0);
    EXPECT_TRUE(balance_of(library, photos, Fact::texture).empty());
}

}  // namespace
}  // namespace quarterturn
