// A wall of pairs that was read once and then reads what changed is what a wall read anew is, after
// whatever she does.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "indexer/rules/gate.h"
#include "indexer/store/erasure_table.h"
#include "tests/indexer/looks/hand.h"

namespace quarterturn {
namespace {

const Date wall_read_on = parse_date("2026-11-08").value();

template <class Values>
auto one_of_all(const Values& values) {
    return any_of(std::vector(values.begin(), values.end()));
}

struct LivingLibrary : WholeLook {
    LivingLibrary() {
        for (const Angle angle : {Angle::back, Angle::left, Angle::front}) {
            const std::string name = "IMB_" + std::to_string(photos.size()) + ".JPG";
            const PhotoId photo = add_photo(name, {Stage::before, angle});
            tag(photo, [&](Tags& tags) { tags.sitting = trial; });
        }
        library.credits().set(photos, Credit{});
        consent();
    }

    void consent() {
        ConsentEntry entry;
        entry.client = any_of(library.clients().all()).id;
        entry.use = one_of_all(all_uses);
        entry.said = number(4) == 0 ? ConsentSaid::declined : ConsentSaid::granted;
        entry.said_on = parse_date("2026-11-07").value();
        entry.recorded_at = at("2026-11-07T12:00");
        library.consents().add(entry);
    }

    void tag_otherwise() {
        tag(any_of(library.photos().all()).id, [&](Tags& tags) {
            if (maybe()) tags.look = any_of(library.looks().all()).id;
            if (maybe()) tags.sitting = any_of(library.sittings().all()).id;
            if (maybe()) tags.shown = {any_of(library.clients().all()).id};
            if (maybe()) tags.mirrored = maybe();
        });
    }

    void childs_role() {
        Wedding day = any_of(library.weddings().all());
        day.party = {{any_of(library.clients().all()).id, maybe() ? "flower girl" : "bride"}};
        library.weddings().change(day);
    }

    void keep_as_brought() {
        Inspiration picture;
        picture.client = any_of(library.clients().all()).id;
        picture.name = any_name();
        picture.sha256 = any_of(library.photos().all()).file.sha256;
        picture.path = "inspiration/" + picture.sha256 + any_name();
        library.inspirations().add(picture);
    }

    void bin() {
        Change change;
        change.said = "put a photo into the bin, or took it out";
        change.binned.push_back(
            {any_of(photos), maybe() ? std::optional(wall_read_on) : std::nullopt});
        library.history().apply(change);
    }

    void erase_look() {
        const auto looks = library.looks().all();
        if (looks.size() < 2) return;
        const Look gone = any_of(looks);
        ToErase what;
        what.client = library.clients().find(gone.client).value();
        what.only = gone.id;
        for (const Photo& photo : library.photos().all()) {
            if (photo.tags.look == gone.id) what.photos.push_back(photo.id);
        }
        ErasureTable(library.database()).erase(what);
        std::erase_if(photos, [&](PhotoId id) { return !library.photos().find(id); });
    }

    void go_on() {
        if (photos.empty()) return;
        if (library.photos().all().empty()) return bin();
        try {
            switch (number(11)) {
                case 0:
                    return consent();
                case 1:
                    return tag_otherwise();
                case 2:
                    return childs_role();
                case 3:
                    return keep_as_brought();
                case 4:
                    return bin();
                case 5:
                    return erase_look();
                case 6:
                    library.history().undo();
                    return;
                case 7:
                    library.history().redo();
                    return;
                default:
                    library.history().record("did it", [&] { Hand(library).act(); });
            }
        } catch (const StoreError&) {  // refused: nothing was changed
        }
    }
};

void expect_same(Library& library, const PairWall& kept, const PairWall& anew) {
    RC_ASSERT(kept.pairs() == anew.pairs());
    std::vector<PairFilter> filters{{}, {.refused = true}, {.words = "ada"}};
    for (const Use use : all_uses) {
        filters.push_back({{{Fact::use, {std::string(word(use))}}}});
    }
    for (const PairFilter& filter : filters) {
        const auto found = kept.find(library, filter);
        const auto expected = anew.find(library, filter);
        RC_ASSERT(found.pairs == expected.pairs);
        RC_ASSERT(found.counts == expected.counts);
    }
}

RC_GTEST_PROP(PairWallThatWasReadBefore, IsAsIfItWereReadAnewAfterEachChange, ()) {
    LivingLibrary living;
    PairWall kept(living.library, wall_read_on);
    for (int left = number(12); left >= 0; --left) {
        for (int at_once = number(3); at_once >= 0; --at_once) living.go_on();
        kept.bring_up_to_date(living.library);
        expect_same(living.library, kept, PairWall(living.library, wall_read_on));
    }
}

// What is allowed is judged again for whom it concerns.
TEST(PairWallThatWasReadBefore, HearsOfAConsentAndOfWhatIsWithdrawn) {
    WholeLook whole;
    Library& library = whole.library;
    library.credits().set(whole.photos, Credit{});
    PairWall wall(library, wall_read_on);
    const auto for_website = [&] {
        wall.bring_up_to_date(library);
        return wall.find(library, {{{Fact::use, {"website"}}}}).pairs.size();
    };
    ASSERT_EQ(wall.pairs().size(), 4U);
    const PhotoId before = wall.pairs().front().made.first;
    EXPECT_EQ(for_website(), 0U);
    ConsentEntry said;
    said.client = whole.mira;
    said.use = Use::website;
    said.said = ConsentSaid::granted;
    said.said_on = parse_date("2026-11-07").value();
    said.shown = ShownAs::with_her_face;
    said.recorded_at = at("2026-11-07T12:00");
    library.consents().add(said);
    EXPECT_EQ(for_website(), 4U);
    library.credits().forget(std::array{before});
    EXPECT_EQ(for_website(), 3U) << "nobody says whose the photo is";
    library.credits().set(std::array{before}, Credit{});
    EXPECT_EQ(for_website(), 4U);
    said.said = ConsentSaid::withdrawn;
    library.consents().add(said);
    EXPECT_EQ(for_website(), 0U);
}

}  // namespace
}  // namespace quarterturn
