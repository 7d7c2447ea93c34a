#include "indexer/rules/gate.h"

#include <gtest/gtest.h>

#include <map>
#include <random>

#include "tests/indexer/rules/gate_oracle.h"

namespace quarterturn {
namespace {

Date on_day(const char* iso) {
    return parse_date(iso).value();
}

// Cases close to each other, so that borders are met often.
class AnyCase {
  public:
    explicit AnyCase(unsigned seed) : random_(seed) {}

    int below(int count) { return std::uniform_int_distribution(0, count - 1)(random_); }
    bool one_in(int count) { return below(count) == 0; }

    Date date() {
        return Date{std::chrono::sys_days(on_day("2027-12-29")) + std::chrono::days(below(7))};
    }
    std::optional<Date> maybe_date() { return one_in(2) ? std::nullopt : std::optional(date()); }
    Use use() { return all_uses[static_cast<std::size_t>(below(3))]; }

    ConsentEntry entry(int id) {
        ConsentEntry entry;
        entry.id = ConsentId{id};
        entry.use = use();
        entry.said = one_in(4) ? static_cast<ConsentSaid>(below(3)) : ConsentSaid::granted;
        entry.said_on = date();
        entry.shown = static_cast<ShownAs>(below(2));
        entry.from = maybe_date();
        entry.until = maybe_date();
        entry.giver = static_cast<ConsentGiver>(below(2));
        if (one_in(3)) {
            entry.age = all_age_bands[static_cast<std::size_t>(below(6))];
        }
        return entry;
    }

    ShownPerson person(int number) {
        ShownPerson person{ClientId{number}, "Client " + std::to_string(number), {}, {}};
        if (one_in(3)) person.childs_role = "flower girl";
        for (int left = below(6); left > 0; --left) {
            person.consents.push_back(entry(number * 10 + left));  // the newest first
        }
        return person;
    }

    Credit credit() {
        Credit credit;
        credit.whose = static_cast<Whose>(below(3));
        credit.name = "Wren Aldous";
        for (const Use use : all_uses) {
            if (one_in(2)) credit.licensed.push_back(use);
        }
        credit.until = maybe_date();
        if (!one_in(4)) credit.line = "Photo: Wren Aldous";
        return credit;
    }

    PhotoToShow photo() {
        PhotoToShow photo;
        for (int number = below(4); number > 0; --number) photo.people.push_back(person(number));
        photo.face_shows = one_in(2);
        photo.strangers = one_in(8);
        photo.nobody = one_in(8);
        if (!one_in(8)) photo.credit = credit();
        return photo;
    }

  private:
    std::mt19937 random_;
};

Stands stands_against(const Verdict& verdict) {
    Stands stands;
    for (const Against& against : verdict.against) {
        stands.emplace(word(against.obstacle), against.client ? against.client->value : 0);
    }
    return stands;
}

TEST(Gate, AgreesWithATableInFortyThousandCases) {
    std::map<std::string, int> seen;
    int may = 0;
    AnyCase any(20261107);
    for (int i = 0; i < 40'000; ++i) {
        const PhotoToShow photo = any.photo();
        const Use use = any.use();
        const Date on = any.date();
        const Verdict verdict = may_go(photo, use, on);
        const Stands expected = oracle_stands(photo, use, on);
        ASSERT_EQ(stands_against(verdict), expected) << "case " << i << " on " << iso_text(on);
        ASSERT_EQ(verdict.may(), expected.empty());
        if (verdict.may() && !photo.nobody) {
            ASSERT_EQ(verdict.under.size(), photo.people.size()) << "case " << i;
        }
        may += verdict.may() ? 1 : 0;
        for (const auto& [obstacle, client] : expected) ++seen[obstacle];
    }
    EXPECT_GT(may, 1000) << "the cases must not all be refused";
    EXPECT_EQ(seen.size(), 15U) << "every obstacle must have been met";
    for (const auto& [obstacle, count] : seen) EXPECT_GT(count, 200) << obstacle;
}

struct GateBorders : testing::Test {
    ConsentEntry& add(ConsentSaid said, const char* said_on) {
        ConsentEntry entry;
        entry.id = ConsentId{static_cast<std::int64_t>(person().consents.size()) + 1};
        entry.use = Use::website;
        entry.said = said;
        entry.said_on = on_day(said_on);
        entry.shown = ShownAs::with_her_face;
        person().consents.push_back(entry);
        return person().consents.back();
    }
    ShownPerson& person() { return photo.people.front(); }
    std::string against(const char* on, Use use = Use::website) {
        const Verdict verdict = may_go(photo, use, on_day(on));
        return verdict.may() ? "" : std::string(word(verdict.against.front().obstacle));
    }

    PhotoToShow photo{{{ClientId{1}, "Mira", {}, {}}}, true, false, false, Credit{}};
};

TEST_F(GateBorders, NothingRecordedMeansNo) {
    EXPECT_EQ(against("2026-11-07"), "not asked");
    photo.people.clear();
    EXPECT_EQ(against("2026-11-07"), "nobody named");
}

TEST_F(GateBorders, TheFirstAndTheLastDayBelongToIt) {
    ConsentEntry& entry = add(ConsentSaid::granted, "2028-02-01");
    entry.from = on_day("2028-02-29");
    entry.until = on_day("2028-12-31");
    EXPECT_EQ(against("2028-01-31"), "not asked") << "she said nothing yet";
    EXPECT_EQ(against("2028-02-01"), "not yet");
    EXPECT_EQ(against("2028-02-28"), "not yet");
    EXPECT_EQ(against("2028-02-29"), "");
    EXPECT_EQ(against("2028-12-31"), "");
    EXPECT_EQ(against("2029-01-01"), "ended");
    EXPECT_EQ(against("2028-06-01", Use::print), "not asked") << "one use is not another";
}

TEST_F(GateBorders, WithdrawnHoldsOnceItIsRecordedAlsoOverWhatWasToComeLater) {
    add(ConsentSaid::granted, "2026-11-07").from = on_day("2027-01-01");
    add(ConsentSaid::withdrawn, "2026-12-01");
    EXPECT_EQ(against("2026-11-30"), "withdrawn") << "by a clock that is a day behind";
    EXPECT_EQ(against("2026-12-01"), "withdrawn");
    EXPECT_EQ(against("2027-06-01"), "withdrawn");
    add(ConsentSaid::granted, "2026-12-01");  // and on the same day she changed her mind
    EXPECT_EQ(against("2026-12-01"), "");
}

TEST_F(GateBorders, AnOldPaperFoundLaterDoesNotUndoAWithdrawal) {
    add(ConsentSaid::withdrawn, "2026-12-01");
    add(ConsentSaid::granted, "2026-11-07");
    EXPECT_EQ(against("2026-11-30"), "withdrawn");
    EXPECT_EQ(against("2026-12-01"), "withdrawn");
}

TEST_F(GateBorders, ANoRecordedLaterHoldsThoughItsDayIsEarlier) {
    add(ConsentSaid::granted, "2099-01-01");  // a clock that was far ahead
    add(ConsentSaid::declined, "2026-11-07");
    EXPECT_EQ(against("2026-11-07"), "declined");
    EXPECT_EQ(against("2099-01-02"), "declined");
}

TEST_F(GateBorders, ALicencesLastDayBelongsToIt) {
    add(ConsentSaid::granted, "2026-11-07");
    photo.credit = Credit{Whose::photographer,
                          "Wren Aldous",
                          {Use::website},
                          on_day("2027-03-31"),
                          "Photo: Wren Aldous"};
    EXPECT_EQ(against("2027-03-31"), "");
    EXPECT_EQ(against("2027-04-01"), "licence ended");
    photo.credit->line = "";
    EXPECT_EQ(against("2027-03-31"), "") << "none is wanted";
    photo.credit->line.reset();
    EXPECT_EQ(against("2027-03-31"), "credit line");
    photo.credit = Credit{Whose::somebody_else, "", {Use::website}, {}, ""};
    EXPECT_EQ(against("2027-03-31"), "somebody else's");
}

TEST_F(GateBorders, AChildIsOneFromBeforeTheDayItWasTold) {
    add(ConsentSaid::granted, "2026-11-07");
    add(ConsentSaid::granted, "2026-11-20").age = AgeBand::at_17;
    EXPECT_EQ(against("2026-11-10"), "child");
    EXPECT_EQ(against("2026-11-20"), "child");
    person().consents.back().giver = ConsentGiver::guardian;
    EXPECT_EQ(against("2026-11-20"), "");
    ConsentEntry& grown = add(ConsentSaid::granted, "2027-11-20");
    grown.age = AgeBand::from_18;
    EXPECT_EQ(against("2027-11-20"), "");
}

TEST_F(GateBorders, EverythingThatStandsAgainstItIsSaidInWords) {
    add(ConsentSaid::granted, "2026-11-07").shown = ShownAs::hair_only;
    photo.people.push_back({ClientId{2}, "Pippa", "flower girl", {}});
    photo.strangers = true;
    photo.credit.reset();
    const Verdict verdict = may_go(photo, Use::website, on_day("2026-11-08"));
    std::string all;
    for (const Against& each : verdict.against) all += each.words + "\n";
    EXPECT_EQ(all,
              "Somebody is in the picture who is no client: choose another photo, or add that "
              "person as a client and ask.\n"
              "Mira allows only her hair to be shown on a website, and a face shows, or may show.\n"
              "Pippa was not asked whether she may be shown on a website: ask her.\n"
              "It is not recorded whose photo it is: say whether it is your own or a "
              "photographer's.\n");
}

TEST(FaceShows, UntilSheWhoLookedSaysThatNoneDoes) {
    const Photo photo;
    EXPECT_TRUE(face_shows(photo, {}));
    EXPECT_TRUE(face_shows(photo, {.face = true}));
    EXPECT_FALSE(face_shows(photo, {.face = false}));
    EXPECT_EQ(doubts(photo, {.face = false}), std::vector<std::string>{});
}

TEST(FaceShows, WhateverSheSaysWhereOneWasFound) {
    Photo photo;
    for (const HeadSigns& signs : {HeadSigns{true, false, false}, HeadSigns{false, true, false},
                                   HeadSigns{false, false, true}}) {
        photo.head_signs = signs;
        EXPECT_TRUE(face_shows(photo, {.face = false}));
        EXPECT_EQ(doubts(photo, {}).size(), 0U);
        ASSERT_EQ(doubts(photo, {.face = false}).size(), 1U);
        EXPECT_NE(doubts(photo, {.face = false})[0].find("does not count"), std::string::npos);
    }
    photo.head_signs = HeadSigns{};
    EXPECT_FALSE(face_shows(photo, {.face = false}));
}

TEST(FaceShows, WhateverSheSaysFromASideThatShowsOne) {
    Photo photo;
    for (const Angle angle : all_angles) {
        photo.tags.angle = angle;
        const bool hair_alone =
            angle == Angle::back || angle == Angle::crown || angle == Angle::detail;
        EXPECT_EQ(face_shows(photo, {.face = false}), !hair_alone) << word(angle);
        const auto words = doubts(photo, {.face = false});
        ASSERT_EQ(words.empty(), hair_alone) << word(angle);
        if (hair_alone) continue;
        EXPECT_NE(words[0].find("it is tagged " + std::string(word(angle))), std::string::npos);
        EXPECT_TRUE(doubts(photo, {}).empty()) << "nothing was said";
    }
}

TEST(FaceShows, AWordThatNobodyIsInItIsDoubted) {
    Photo photo;
    photo.head_signs = HeadSigns{true, false, false};
    EXPECT_EQ(doubts(photo, {.face = {}, .strangers = false, .nobody = true}).size(), 1U);
    photo.head_signs = HeadSigns{};
    for (const Angle angle : all_angles) {
        photo.tags.angle = angle;
        const Seen nobody{.face = {}, .strangers = false, .nobody = true};
        EXPECT_EQ(shows_nobody(photo, nobody), angle == Angle::detail) << word(angle);
        EXPECT_EQ(doubts(photo, nobody).empty(), angle == Angle::detail) << word(angle);
    }
}

TEST(FaceShows, NobodyIsInItOnlyWhereNoFaceWasFound) {
    Photo photo;
    EXPECT_FALSE(shows_nobody(photo, {}));
    EXPECT_TRUE(shows_nobody(photo, {.face = {}, .strangers = false, .nobody = true}));
    photo.head_signs = HeadSigns{true, false, false};
    EXPECT_FALSE(shows_nobody(photo, {.face = {}, .strangers = false, .nobody = true}));
}

TEST(ChildsRole, IsKnownByItsWords) {
    for (const char* role :
         {"flower girl", "Flower-Girl", "page boy", "ring bearer", "junior bridesmaid"}) {
        EXPECT_TRUE(is_childs_role(role)) << role;
    }
    for (const char* role : {"bride", "bridesmaid", "mother", ""}) {
        EXPECT_FALSE(is_childs_role(role)) << role;
    }
}

}  // namespace
}  // namespace quarterturn
