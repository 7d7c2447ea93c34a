#include "indexer/looks/client_record.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "tests/indexer/looks/whole_look.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

using Json = nlohmann::json;

TEST(ClientRecord, HoldsAllThatIsHersAndNothingElse) {
    WholeLook whole;
    Library& library = whole.library;
    const ClientId other = library.clients().add(client_called("Another"));
    Look hers;
    hers.client = other;
    hers.name = "not Mira's";
    library.looks().add(hers);
    const PhotoId shared =
        library.photos().add(example_photo("party.jpg", taken_at("2026-11-21T14:00:00")));
    whole.tag(shared, [&](Tags& tags) { tags.shown = {whole.mira}; });
    library.photos().add(example_photo("stranger.jpg"));
    whole.sign();
    const ClientRecord record = client_record(library, whole.mira);
    EXPECT_EQ(record.weddings.size(), 1U);
    EXPECT_EQ(record.sittings.size(), 1U);
    ASSERT_EQ(record.looks.size(), 1U);
    EXPECT_EQ(record.looks[0].recipes.size(), 1U);
    EXPECT_EQ(record.looks[0].sign_offs.size(), 1U);
    EXPECT_EQ(record.photos.size(), whole.photos.size() + 1);
    EXPECT_TRUE(client_record(library, other).photos.empty());
    EXPECT_THROW(client_record(library, ClientId{99}), StoreError);
}

TEST(ClientRecord, AsJsonGivesTheRecipeBack) {
    WholeLook whole;
    const Json json = Json::parse(client_record_json(client_record(whole.library, whole.mira)));
    EXPECT_EQ(json["client"]["name"], "Mira Okonjo-Lindqvist");
    EXPECT_EQ(json["weddings"][0]["role"], "bride");
    EXPECT_EQ(json["sittings"][0]["starts"], "2026-11-07T10:00:00");
    EXPECT_EQ(parse_recipe_json(json["looks"][0]["recipes"][0]["recipe"].dump()), whole_recipe());
    EXPECT_EQ(json["photos"].size(), whole.photos.size());
}

// RFC 4180, 2: fields with commas, quotes or line ends stand in quotes, and quotes are doubled.
TEST(ClientRecord, AsCsvKeepsCommasQuotesAndLineEnds) {
    ExampleLibrary example;
    Client mira = *example.library.clients().find(example.mira);
    mira.note = "says \"higher\",\nthen lower";
    example.library.clients().change(mira);
    const auto files = client_record_csv(client_record(example.library, mira.id));
    EXPECT_EQ(files.at(0).name, "client.csv");
    EXPECT_EQ(files.at(0).text,
              "id,name,note\r\n1,Mira Okonjo-Lindqvist,"
              "\"says \"\"higher\"\",\nthen lower\"\r\n");
}

// OWASP, CSV Injection: a cell that begins with one of = + - @ is run as a formula.
TEST(ClientRecord, AsCsvHoldsNoFormulas) {
    for (const char* note : {"=1+1", "+1", "-1", "@now"}) {
        ExampleLibrary example;
        Client mira = *example.library.clients().find(example.mira);
        mira.note = note;
        example.library.clients().change(mira);
        const auto files = client_record_csv(client_record(example.library, mira.id));
        EXPECT_TRUE(files.at(0).text.ends_with(",'" + mira.note + "\r\n")) << files.at(0).text;
    }
}

TEST(ClientRecord, HoldsWhatIsWrittenButNotSavedYet) {
    WholeLook whole;
    Recipe draft = whole_recipe();
    draft.parting = "right";
    whole.library.recipes().keep_draft(whole.look, draft, whole.noon);
    const ClientRecord record = client_record(whole.library, whole.mira);
    ASSERT_TRUE(record.looks.at(0).draft);
    const Json json = Json::parse(client_record_json(record));
    EXPECT_EQ(parse_recipe_json(json["looks"][0]["draft"]["recipe"].dump()), draft);
    EXPECT_EQ(json["consents"], Json::array());
}

TEST(ClientRecord, HoldsAllThatSheSaidAndWhatWentOutUnderIt) {
    WholeLook whole;
    ConsentEntry entry;
    entry.client = whole.mira;
    entry.use = Use::website;
    entry.said = ConsentSaid::granted;
    entry.said_on = date_of(whole.noon);
    entry.recorded_at = whole.noon;
    const ConsentId id = whole.library.consents().add(entry);
    Exported out;
    out.photo_name = "a.jpg";
    out.use = Use::website;
    out.at = whole.noon;
    out.under = {id};
    whole.library.ledger().add(out);
    out.under = {};
    whole.library.ledger().add(out);  // of nobody
    const ClientRecord record = client_record(whole.library, whole.mira);
    const Json json = Json::parse(client_record_json(record));
    ASSERT_EQ(json["consents"].size(), 1U);
    EXPECT_EQ(json["consents"][0]["shown"], "hair only");
    ASSERT_EQ(json["exports"].size(), 1U);
    EXPECT_EQ(json["exports"][0]["under"], Json{id.value});
    const std::string day = iso_text(date_of(whole.noon));
    const std::vector<std::string> lines{day + ", website: granted, hair only; signed form",
                                         "Went out on " + day + ", website: a.jpg"};
    EXPECT_EQ(consent_lines(record), lines);
    const auto files = client_record_csv(record);
    EXPECT_EQ(files.back().name, "exports.csv");
    EXPECT_NE(files.at(files.size() - 2).text.find("1,website,granted," + day + ",hair only,,,"),
              std::string::npos);
}

TEST(ClientRecord, IsWrittenWholeAndOnlyOnce) {
    WholeLook whole;
    const Path folder = whole.folder / "mira";
    const std::string pdf = "%PDF, drawn elsewhere";
    const auto write = [&] {
        export_client(whole.library, client_record(whole.library, whole.mira),
                      std::as_bytes(std::span(pdf)), folder, whole.noon);
    };
    write();
    const Json json = Json::parse(text_of(folder / "data/client.json"));
    EXPECT_EQ(json["looks"].size(), 1U);
    EXPECT_EQ(text_of(folder / "data/record.pdf"), pdf);
    EXPECT_NE(text_of(folder / "data/recipes.csv").find("Build,\"1. twist into a low bun"),
              std::string::npos);
    EXPECT_NE(text_of(folder / "manifest-sha256.txt").find("  data/photos.csv"), std::string::npos);
    EXPECT_THROW(write(), StoreError);
}

// Strangers in a photo, and whose it is, are nobody's to give away.
TEST(ClientRecord, GivesNoPhotoThatShowsOthersOrIsSomebodyElses) {
    WholeLook whole;
    Library& library = whole.library;
    library.credits().set_seen(whole.photos[1], {{}, true, false});
    library.credits().set(std::vector{whole.photos[2]}, {Whose::somebody_else, {}, {}, {}, {}});
    const ClientId other = library.clients().add(client_called("Another"));
    whole.tag(whole.photos[3], [&](Tags& tags) { tags.shown = {other}; });
    const auto left_out = export_client(library, client_record(library, whole.mira), {},
                                        whole.folder / "mira", whole.noon);
    const std::vector<std::string> expected{
        "IMG_412.JPG shows somebody who is no client, and is not in the folder.",
        "IMG_413.JPG is somebody else's, and is not in the folder.",
        "IMG_414.JPG shows other clients too, and is not in the folder."};
    EXPECT_TRUE(std::ranges::is_permutation(left_out, expected)) << left_out.size();
    std::set<std::string> texts;
    for (const auto& file :
         std::filesystem::directory_iterator(whole.folder / "mira/data/photos")) {
        texts.insert(text_of(file.path()));
    }
    EXPECT_EQ(texts.size(), whole.photos.size() - expected.size());
    for (const char* number : {"1", "2", "3"}) {
        EXPECT_FALSE(texts.contains(std::string("the bytes of photo number ") + number));
    }
}

}  // namespace
}  // namespace quarterturn
