#include "indexer/intake/scenario.h"

#include "indexer/intake/sort.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

const std::string scenario = R"json({
  "business": {"name": "Pins and Paper", "line": "Bridal hair by appointment"},
  "clients": [{"key": "noor", "name": "Noor Achterberg", "note": "tender behind the left ear"},
              {"key": "saba", "name": "ሳባ ተስፋዬ"}],
  "weddings": [{"key": "quay", "name": "Achterberg and Pell", "date": "2026-11-21",
                "venue": "Lantern Quay", "ready_by": "12:30",
                "party": [{"client": "noor", "role": "bride"},
                          {"client": "saba", "role": "bridesmaid"}]}],
  "sittings": [{"key": "trial", "client": "noor", "wedding": "quay", "kind": "trial",
                "starts": "2026-11-07T10:00", "ends": "2026-11-07T12:00", "note": "washed the day before"}],
  "looks": [{"key": "bun", "client": "noor", "wedding": "quay", "name": "low twisted bun",
             "worn": "ceremony", "sittings": ["trial"],
             "recipe": {"hair": "long, fine", "parting": "left side",
                        "build": [{"words": "Twist the back section", "minutes": 10,
                                   "pins": [{"kind": "grip", "colour": "brown", "count": 8, "crossed": true}]}],
                        "hands_on_minutes": 55}}]
})json";

struct ScenarioTest : testing::Test {
    ScenarioReport load(const std::string& json) {
        return load_scenario(library, json, at("2026-11-01T09:00"));
    }

    std::string refusal(const std::string& json) {
        try {
            load(json);
        } catch (const StoreError& error) {
            return error.what();
        }
        return "nothing was refused";
    }

    std::string changed(const std::string& from, const std::string& to) {
        std::string json = scenario;
        json.replace(json.find(from), from.size(), to);
        return json;
    }

    TemporaryFolder folder;
    Library library = Library::create(folder / "library");
};

TEST_F(ScenarioTest, BringsInEverythingThatBelongsTogether) {
    const ScenarioReport report = load(scenario);
    EXPECT_EQ(report.clients, 2);
    EXPECT_EQ(report.weddings, 1);
    EXPECT_EQ(report.sittings, 1);
    EXPECT_EQ(report.looks, 1);
    const Wedding wedding = library.weddings().all().at(0);
    EXPECT_EQ(wedding.party.size(), 2U);
    EXPECT_EQ(library.clients().find(wedding.party[1].client)->name, "ሳባ ተስፋዬ");
    const Sitting sitting = library.sittings().all().at(0);
    EXPECT_EQ(sitting.wedding, wedding.id);
    EXPECT_EQ(sitting.starts, at("2026-11-07T10:00"));
    const Look look = library.looks().all().at(0);
    EXPECT_EQ(look.sittings, std::vector{sitting.id});
    const Recipe recipe = library.recipes().current(look.id)->recipe;
    EXPECT_EQ(recipe.build.at(0).pins.at(0).count, 8);
    EXPECT_EQ(library.settings().get("business name"), "Pins and Paper");
    EXPECT_EQ(library.settings().get("business line"), "Bridal hair by appointment");
}

TEST_F(ScenarioTest, RefusesAWrongEntryByNameAndAddsNothing) {
    const std::vector<std::pair<std::string, std::string>> sentences{
        {changed("\"client\": \"saba\"", "\"client\": \"sara\""), "sara"},
        {changed("\"kind\": \"trial\"", "\"kind\": \"rehearsal\""), "rehearsal"},
        {changed("2026-11-07T12:00", "half past"), "half past"},
        {changed("\"date\": \"2026-11-21\"", "\"date\": \"2026-02-30\""), "2026-02-30"},
        {changed("\"name\": \"low twisted bun\",", ""), "look 1"},
        {changed("\"parting\"", "\"partign\""), "partign"},
        {changed("\"sittings\": [\"trial\"]", "\"sittings\": \"trial\""), "sittings"},
        {changed("\"key\": \"saba\"", "\"key\": \"noor\""), "noor"},
        {"{\"clients\": [", "JSON"},
        {"[]", "the file"},
    };
    for (const auto& [json, named] : sentences) {
        const std::string sentence = refusal(json);
        EXPECT_NE(sentence.find(named), std::string::npos) << sentence;
        EXPECT_TRUE(library.clients().all().empty()) << sentence;
        EXPECT_EQ(library.settings().get("business name"), std::nullopt) << sentence;
    }
}

TEST_F(ScenarioTest, TagsThePhotosOfTheScenarioAsOneAction) {
    load(scenario);
    library.photos().add(example_photo("left.jpg"));
    library.photos().add(example_photo("back.jpg"));
    const int tagged = load_tags(library, R"json({"photos": [
        {"file": "phone/left.jpg", "angle": "left", "stage": "after", "look": "bun", "mirrored": true},
        {"file": "camera/back.jpg", "angle": "back", "stage": "before"}]})json");
    EXPECT_EQ(tagged, 2);
    const Tags left = library.photos().named("left.jpg").at(0).tags;
    EXPECT_EQ(left.angle, Angle::left);
    EXPECT_EQ(left.stage, Stage::after);
    EXPECT_EQ(left.look, library.looks().all().at(0).id);
    EXPECT_TRUE(left.mirrored);
    EXPECT_EQ(library.photos().named("back.jpg").at(0).tags.stage, Stage::before);
    undo(library);
    EXPECT_EQ(library.photos().named("back.jpg").at(0).tags.stage, std::nullopt);
}

TEST_F(ScenarioTest, RefusesTagsOfAPhotoOrLookThatIsNotThere) {
    load(scenario);
    library.photos().add(example_photo("left.jpg"));
    EXPECT_THROW(load_tags(library, R"({"photos": [{"file": "right.jpg", "angle": "left"}]})"),
                 StoreError);
    EXPECT_THROW(load_tags(library, R"({"photos": [{"file": "left.jpg", "look": "plait"}]})"),
                 StoreError);
    EXPECT_EQ(library.photos().named("left.jpg").at(0).tags, Tags{});
}

}  // namespace
}  // namespace quarterturn
