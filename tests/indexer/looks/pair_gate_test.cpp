// Pairs before the gate: what is judged for thousands at once is what the gate says of each photo.

#include "indexer/looks/pair_gate.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "indexer/looks/pairs.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

struct GatedLibrary : ExampleLibrary {
    PhotoId add_side(const std::string& name, Stage stage, LookId whose, Angle angle,
                     const std::vector<ClientId>& shown = {},
                     const std::optional<HeadSigns>& signs = {}) {
        Photo photo = example_photo(name, taken_at("2026-11-07T10:30:00"));
        photo.measures = {5, 0, 0.5, 0, 0};
        photo.tags.sitting = trial;
        photo.tags.look = whose;
        photo.tags.stage = stage;
        photo.tags.angle = angle;
        photo.tags.shown = shown;
        photo.head_signs = signs;
        return library.photos().add(photo);
    }

    void say(ClientId client, Use use, ConsentSaid what, ShownAs shown = ShownAs::with_her_face) {
        ConsentEntry entry;
        entry.client = client;
        entry.use = use;
        entry.said = what;
        entry.said_on = parse_date("2026-11-07").value();
        entry.shown = shown;
        entry.recorded_at = at("2026-11-07T12:00");
        library.consents().add(entry);
    }

    void own(PhotoId photo) { library.credits().set(std::array{photo}, Credit{}); }

    std::vector<Pair> pairs_for(Use use) {
        PairFilter filter;
        filter.values[Fact::use] = {std::string(word(use))};
        return PairWall(library, on).find(library, filter).pairs;
    }

    Date on = parse_date("2026-11-08").value();
};

class PairsAtTheGate : public testing::Test, public GatedLibrary {
  protected:
    PhotoId before = add_side("QTA_0001.jpg", Stage::before, look, Angle::back);
    PhotoId after = add_side("QTA_0002.jpg", Stage::after, look, Angle::back);
    Photo photo(PhotoId id) { return library.photos().find(id).value(); }
};

TEST_F(PairsAtTheGate, NeedBothPhotosToPass) {
    say(mira, Use::website, ConsentSaid::granted);
    own(before);
    EXPECT_TRUE(pairs_for(Use::website).empty()) << "nobody said whose the second photo is";
    own(after);
    EXPECT_EQ(pairs_for(Use::website).size(), 1U);
    EXPECT_TRUE(pairs_for(Use::print).empty());
    const auto counts = PairWall(library, on).find(library, {}).counts;
    EXPECT_EQ(counts.at(Fact::use), (std::map<std::string, int>{{"website", 1}}));
    Seen seen;
    seen.strangers = true;
    library.credits().set_seen(before, seen);
    EXPECT_TRUE(pairs_for(Use::website).empty()) << "somebody else is in the first photo";
    library.credits().set_seen(before, {});
    say(mira, Use::website, ConsentSaid::withdrawn);
    EXPECT_TRUE(pairs_for(Use::website).empty());
}

TEST_F(PairsAtTheGate, SayOnceWhatIsTheSameOfBothAndWhichPhotoElse) {
    own(before);
    PhotoGate gate(library);
    const auto words = against_both(gate, photo(before), photo(after), Use::print, on);
    ASSERT_EQ(words.size(), 2U);
    EXPECT_NE(words[0].find("Mira Okonjo-Lindqvist was not asked"), std::string::npos);
    EXPECT_EQ(words[1],
              "QTA_0002.jpg: It is not recorded whose photo it is: say whether it is your own or a "
              "photographer's.");
}

// Clients, consents, credits and what is seen as they come.
struct AnyGatedLibrary : GatedLibrary {
    AnyGatedLibrary() {
        const std::array clients{mira, ada};
        for (const ClientId client : clients) {
            for (int left = *rc::gen::inRange(0, 4); left > 0; --left) any_word(client);
        }
        for (int number = *rc::gen::inRange(1, 6); number > 0; --number) {
            Look more = library.looks().find(look).value();
            more.client = clients[*rc::gen::inRange<std::size_t>(0, 2)];
            more.name = "look " + std::to_string(number);
            const LookId id = library.looks().add(more);
            for (const Stage stage : {Stage::before, Stage::after}) any_photo(id, stage, number);
        }
    }

    void any_word(ClientId client) {
        say(client, *rc::gen::element(Use::website, Use::consultation, Use::own_record),
            *rc::gen::element(ConsentSaid::granted, ConsentSaid::granted, ConsentSaid::withdrawn),
            *rc::gen::element(ShownAs::with_her_face, ShownAs::hair_only));
    }

    void any_photo(LookId whose, Stage stage, int number) {
        const Angle angle = *rc::gen::element(Angle::back, Angle::front, Angle::left);
        const PhotoId id =
            add_side(std::string(word(stage)) + std::to_string(number) + ".jpg", stage, whose,
                     number % 2 == 0 ? Angle::back : angle,
                     *rc::gen::element(std::vector<ClientId>{}, std::vector<ClientId>{mira},
                                       std::vector<ClientId>{ada}),
                     *rc::gen::element<std::optional<HeadSigns>>(std::nullopt, HeadSigns{},
                                                                 HeadSigns{true, false, false}));
        Credit credit;
        switch (*rc::gen::inRange(0, 4)) {
            case 0:
                return;  // nobody said
            case 1:
                credit.whose = Whose::photographer;
                credit.name = "Wren Aldous";
                credit.licensed = {Use::website};
                credit.line = "Photo: Wren Aldous";
                break;
            case 2:
                credit.whose = Whose::somebody_else;
                break;
            default:
                break;
        }
        library.credits().set(std::array{id}, credit);
        Seen seen;
        seen.face = *rc::gen::element<std::optional<bool>>(std::nullopt, true, false);
        seen.strangers = *rc::gen::inRange(0, 5) == 0;
        seen.nobody = *rc::gen::inRange(0, 5) == 0;
        if (*rc::gen::inRange(0, 3) > 0) library.credits().set_seen(id, seen);
    }

    ClientId ada = library.clients().add(client_called("Ada Fennimore"));
};

RC_GTEST_PROP(PairsAtTheGateAtOnce, AreJudgedAsEachPhotoIs, ()) {
    AnyGatedLibrary any;
    Library& library = any.library;
    bring_pairs_up_to_date(library);
    const auto pairs = library.pairs().all();
    const auto allowed = allowed_uses(library, pairs, any.on);
    RC_ASSERT(allowed.size() == pairs.size());
    PhotoGate one_by_one(library);
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        std::vector<Use> expected;
        for (const Use use : all_uses) {
            const auto passes = [&](PhotoId id) {
                return one_by_one.may_go(library.photos().find(id).value(), use, any.on).may();
            };
            const MadePair& made = pairs[i].made;
            if (passes(made.first) && passes(made.second)) expected.push_back(use);
        }
        RC_ASSERT(allowed[i] == expected);
    }
}

}  // namespace
}  // namespace quarterturn
