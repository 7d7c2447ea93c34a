#include "indexer/rules/sign_off.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "tests/indexer/rules/photos.h"

namespace quarterturn {
namespace {

using Sentences = std::vector<std::string>;

SealedPhoto sealed(std::int64_t id, std::string tags = "after, left") {
    return {PhotoId{id}, "IMG_041" + std::to_string(id) + ".JPG", std::string(64, 'a'),
            std::move(tags)};
}

Seal seal_of_two() {
    return {{sealed(1), sealed(2, "after, back")}, "recipe", {}};
}

CoverageReport report_of(Coverage verdict, Need need = Need::required) {
    CoverageLine line;
    line.wanted = {{Stage::after, Angle::crown}, need};
    line.verdict = verdict;
    if (verdict == Coverage::weak) {
        line.photo = PhotoId{1};
        line.flaws = {Flaw::out_of_focus, Flaw::too_dark};
    }
    return {{line}, false, ""};
}

TEST(ReasonsAgainstSignOff, NameEachRequiredGap) {
    EXPECT_EQ(reasons_against_sign_off(report_of(Coverage::missing), {}),
              Sentences{"No after photo of the crown."});
    EXPECT_EQ(reasons_against_sign_off(report_of(Coverage::weak), {}),
              Sentences{"The best after photo of the crown is out of focus and too dark."});
}

TEST(ReasonsAgainstSignOff, NothingStandsAgainstCoveredWaivedOrNiceToHaveLines) {
    EXPECT_TRUE(reasons_against_sign_off(report_of(Coverage::covered), {}).empty());
    EXPECT_TRUE(reasons_against_sign_off(report_of(Coverage::waived), {}).empty());
    EXPECT_TRUE(
        reasons_against_sign_off(report_of(Coverage::missing, Need::nice_to_have), {}).empty());
}

TEST(ReasonsAgainstSignOff, RecipeBarsCountAndWarningsDoNot) {
    const std::vector<RecipeFinding> findings{{Weight::warning, "Unwise."},
                                              {Weight::bars_sign_off, "Missing."}};
    EXPECT_EQ(reasons_against_sign_off(report_of(Coverage::covered), findings),
              Sentences{"Missing."});
}

TEST(ChangesSince, SaysWhatWasAddedTakenAwayAndTaggedAnew) {
    Seal now = seal_of_two();
    now.photos[0].tags = "after, right";
    now.photos[1] = sealed(3);
    EXPECT_EQ(changes_since(seal_of_two(), now),
              (Sentences{"IMG_0411.JPG is now tagged \"after, right\"; it was \"after, left\".",
                         "IMG_0413.JPG was added since.",
                         "IMG_0412.JPG no longer belongs to the look."}));
}

TEST(ChangesSince, SaysThatTheRecipeOrAWaiverWasChanged) {
    Seal now = seal_of_two();
    now.recipe_sha256 = "another";
    now.waivers = {{{Stage::after, Angle::front}, "she was called away"}};
    EXPECT_EQ(changes_since(seal_of_two(), now),
              (Sentences{"Its recipe was changed.",
                         "The shot \"after, front\" was waived since: she was called away."}));
    EXPECT_EQ(changes_since(now, seal_of_two())[1],
              "The shot \"after, front\" is no longer waived.");
}

TEST(SealedTags, HoldWhatThePhotoStoodForAndWhyItWasAccepted) {
    Tags tags;
    EXPECT_EQ(sealed_tags(tags), "no stage, no angle");
    tags.stage = Stage::after;
    tags.angle = Angle::left_three_quarter;
    tags.mirrored = true;
    tags.accepted_because = "the pins show";
    EXPECT_EQ(sealed_tags(tags), "after, left three-quarter, mirrored, accepted: the pins show");
}

Seal random_seal() {
    Seal seal;
    for (std::int64_t id = 1; id <= 4; ++id) {
        if (*rc::gen::arbitrary<bool>()) continue;
        seal.photos.push_back({PhotoId{id}, *rc::gen::element<std::string>("A", "B"),
                               *rc::gen::element<std::string>("1", "2"),
                               *rc::gen::element<std::string>("x", "y")});
    }
    seal.recipe_sha256 = *rc::gen::element<std::string>("r", "s");
    for (const Angle angle : quarter_angles) {
        if (*rc::gen::arbitrary<bool>()) continue;
        seal.waivers.push_back({{Stage::after, angle}, *rc::gen::element<std::string>("p", "q")});
    }
    return seal;
}

RC_GTEST_PROP(ChangesSince, IsEmptyWhenAndOnlyWhenTheSealsAreEqual, ()) {
    const Seal one = random_seal();
    const Seal other = *rc::gen::arbitrary<bool>() ? one : random_seal();
    RC_ASSERT(changes_since(one, other).empty() == (one == other));
}

RC_GTEST_PROP(ChangesSince, TheOrderOfPhotosAndWaiversMeansNothing, ()) {
    const Seal seal = random_seal();
    Seal turned = seal;
    std::reverse(turned.photos.begin(), turned.photos.end());
    std::reverse(turned.waivers.begin(), turned.waivers.end());
    RC_ASSERT(changes_since(seal, turned).empty());
}

}  // namespace
}  // namespace quarterturn
