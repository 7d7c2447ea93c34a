#include "indexer/store/own_texts.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "indexer/store/statement.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

// Words of the program, checksums, places in the library, and what goes with an erasure itself. A
// backup's folder and a camera's make are of no client.
const std::set<std::string> no_words_of_hers{"action.said",
                                             "backup.folder",
                                             "backup.mark",
                                             "backup.newest_records",
                                             "backup.volume",
                                             "bin_change.after",
                                             "bin_change.before",
                                             "choice_change.after",
                                             "choice_change.angle",
                                             "choice_change.before",
                                             "choice_change.kind",
                                             "client.name",
                                             "consent.age",
                                             "consent.giver",
                                             "consent.how",
                                             "consent.said",
                                             "consent.said_on",
                                             "consent.shown",
                                             "consent.use",
                                             "consent.valid_from",
                                             "consent.valid_until",
                                             "consent_paper.path",
                                             "consent_paper.sha256",
                                             "device.make",
                                             "device.model",
                                             "device.serial",
                                             "erasure.erased_on",
                                             "erasure.sought",
                                             "erasure_file.path",
                                             "erasure_left.file",
                                             "erasure_left.words",
                                             "export.photo_sha256",
                                             "export.sha256",
                                             "export.use",
                                             "export_taken_down.taken_on",
                                             "hair_look.colour",
                                             "hair_look.shape",
                                             "hair_look.texture",
                                             "hair_only.sha256",
                                             "hair_only.way",
                                             "inspiration.path",
                                             "inspiration.sha256",
                                             "look.worn",
                                             "look_fact.fact",
                                             "pair.angle",
                                             "pair.first_note",
                                             "pair.kind",
                                             "pair.second_note",
                                             "pair.worn_on",
                                             "pair_filter_value.fact",
                                             "photo.angle",
                                             "photo.binned",
                                             "photo.flaws",
                                             "photo.folded_path",
                                             "photo.path",
                                             "photo.sha256",
                                             "photo.stage",
                                             "photo.suggested_angle",
                                             "photo.suggested_angle_source",
                                             "photo.suggested_stage",
                                             "photo.suggested_stage_source",
                                             "photo_credit.valid_until",
                                             "photo_credit.whose",
                                             "photo_licence.use",
                                             "sealed_photo.sha256",
                                             "sealed_waiver.angle",
                                             "sealed_waiver.stage",
                                             "seen_file.sha256",
                                             "setting.name",
                                             "shot_line.angle",
                                             "shot_line.need",
                                             "shot_line.stage",
                                             "sign_off.recipe_sha256",
                                             "sitting.kind",
                                             "tag_change.after",
                                             "tag_change.before",
                                             "waiver.angle",
                                             "waiver.stage",
                                             "wedding.date",
                                             "wedding.ready_by"};

std::vector<std::string> columns_of_text(Database& database) {
    return Statement(database,
                     "SELECT m.name || '.' || c.name FROM pragma_table_list AS m, "
                     "pragma_table_info(m.name) AS c WHERE m.schema = 'main' AND m.type = 'table' "
                     "AND c.type = 'TEXT' AND m.name NOT LIKE 'sqlite%' AND c.name NOT LIKE "
                     "'folded_name' ORDER BY 1")
        .rows([](const Statement& row) {
            std::string column;
            row.read(column);
            return column;
        });
}

TEST(OwnTexts, ReckonWithEveryColumnOfText) {
    ExampleLibrary made;
    std::set<std::string> reckoned = no_words_of_hers;
    for (const OwnText& text : own_texts()) reckoned.insert(text.table + "." + text.column);
    for (const std::string& column : columns_of_text(made.library.database())) {
        EXPECT_TRUE(reckoned.contains(column))
            << column << " may hold a client's name: add it to own_texts()";
    }
}

// Also the SQL of each is run so.
TEST(OwnTexts, SayWhereANameStands) {
    ExampleLibrary made;
    Client bea = client_called("Bea Holm");
    bea.note = "sister of ADA VALE";
    bea.id = made.library.clients().add(bea);
    Look plait;
    plait.client = bea.id;
    plait.name = "Ada's plait";
    plait.id = made.library.looks().add(plait);
    made.library.settings().set("business line", "with Ada Vale");
    made.library.settings().set("Ada Vale", "Ada Vale");  // none that she sets
    const auto places = places_naming(made.library.database(), SoughtNames({"Ada Vale", "Ada"}));
    ASSERT_EQ(places.size(), 3U);
    EXPECT_EQ(places[0], (NamedPlace{"the note of the client Bea Holm", "ADA VALE", true}));
    EXPECT_EQ(places[1],
              (NamedPlace{"the name of the look Ada's plait of Bea Holm", "Ada", false}));
    EXPECT_EQ(places[2], (NamedPlace{"your business line, in Settings,", "Ada Vale", false}));
    take_names_out(made.library.database(), SoughtNames({"Ada Vale", "Ada"}));
    EXPECT_EQ(made.library.clients().find(bea.id)->note, "sister of (erased)");
    EXPECT_EQ(made.library.looks().find(plait.id)->name, "Ada's plait");
}

TEST(OwnTexts, ARecipeThatIsSignedOffIsSaidToChange) {
    ExampleLibrary made;
    Recipe recipe;
    recipe.feedback = "as Ada Vale has it";
    const LocalTime now{};
    made.library.recipes().save(made.look, recipe, now);
    SignOff sign_off;
    sign_off.look = made.look;
    sign_off.seal.photos = {{PhotoId{1}, "1.jpg", "sum", "after, left, accepted: Ada Vale moved"}};
    made.library.sign_offs().add(sign_off);
    const auto places = places_naming(made.library.database(), SoughtNames({"Ada Vale"}));
    ASSERT_EQ(places.size(), 2U);
    for (const NamedPlace& place : places) EXPECT_TRUE(place.goes && place.signed_off);
    take_names_out(made.library.database(), SoughtNames({"Ada Vale"}));
    EXPECT_EQ(made.library.recipes().current(made.look)->recipe.feedback, "as (erased) has it");
    EXPECT_EQ(made.library.sign_offs().standing(made.look)->seal.photos[0].tags,
              "after, left, accepted: (erased since) moved")
        << "it differs from what stands with the photo now";
}

}  // namespace
}  // namespace quarterturn
