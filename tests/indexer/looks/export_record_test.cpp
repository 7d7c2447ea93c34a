#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <set>

#include "indexer/looks/exported_record.h"
#include "indexer/looks/sign_off.h"
#include "tests/indexer/looks/whole_look.h"
#include "tests/support/consent_said.h"
#include "tests/support/failing_disk.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

// The sentence that exporting ends with.
std::string refusal(WholeLook& whole, const Path& target) {
    try {
        whole.export_to(target);
    } catch (const StoreError& error) {
        return error.what();
    }
    return {};
}

std::set<std::string> names_in(const Path& folder) {
    std::set<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        names.insert(entry.path().filename().string());
    }
    return names;
}

TEST(ExportRecord, WritesPhotosRecipeAndRecord) {
    WholeLook whole;
    whole.sign();
    const Path target = whole.folder / "bun record";
    whole.export_to(target);
    EXPECT_EQ(names_in(target / "data"),
              (std::set<std::string>{"photos", "recipe.json", "record.json", "record.txt"}));
    EXPECT_EQ(names_in(target / "data" / "photos").size(), 8U);
    EXPECT_EQ(text_of(target / "data" / "photos" / "IMG_411.JPG"), "the bytes of photo number 0");
    EXPECT_EQ(parse_recipe_json(text_of(target / "data" / "recipe.json")), whole_recipe());
    EXPECT_EQ(sha256(text_of(target / "data" / "recipe.json")),
              whole.state().sign_off->seal.recipe_sha256);
}

TEST(ExportRecord, LeavesNothingBesideTheFolder) {
    WholeLook whole;
    whole.sign();
    std::filesystem::create_directory(whole.folder / "out");
    whole.export_to(whole.folder / "out" / "record/");
    EXPECT_EQ(names_in(whole.folder / "out"), std::set<std::string>{"record"});
}

TEST(ExportRecord, TheRecordTellsItInWords) {
    WholeLook whole;
    whole.tag(whole.photos[7], [](Tags& tags) { tags.angle.reset(); });
    whole.library.looks().waive(whole.look, {{Stage::after, Angle::back}, "she was called away"});
    whole.library.settings().set(business_name_setting, "Hair at the Mill");
    whole.library.settings().set(business_line_setting, "Bridal hair by appointment");
    whole.sign();
    whole.export_to(whole.folder / "record");
    const auto text = text_of(whole.folder / "record" / "data" / "record.txt");
    for (const auto* words :
         {"Look: low twisted bun", "Client: Mira Okonjo-Lindqvist", "Role: bride",
          "Wedding: Okonjo-Lindqvist and Vale, 2026-11-21, The Old Granary, ready by 12:30",
          "Sitting: trial, 2026-11-07 10:00 to 12:00", "Signed off: 2026-11-07 12:10",
          "By: Hair at the Mill", "Business: Bridal hair by appointment",
          "before, left: photos/IMG_411.JPG", "after, back: waived: she was called away",
          "after, crown: no after photo of the crown", "Parting: left",
          "Accessory: pearl comb above the left ear", "Left and right are the client's own",
          "These photos show a person"}) {
        EXPECT_TRUE(holds(text, words)) << words << "\n" << text;
    }
}

TEST(ExportRecord, TheRecordTellsItAsJson) {
    WholeLook whole;
    whole.sign();
    whole.export_to(whole.folder / "record");
    const auto json = nlohmann::json::parse(text_of(whole.folder / "record/data/record.json"));
    EXPECT_EQ(json["client"]["name"], "Mira Okonjo-Lindqvist");
    EXPECT_EQ(json["signed_at"], "2026-11-07T12:10:00");
    EXPECT_EQ(json["photos"].size(), 8U);
    EXPECT_EQ(json["shots"].size(), 12U);
    for (const auto& shot : json["shots"]) {
        if (shot["verdict"] != "covered") continue;
        const std::string file = shot["photo"];
        EXPECT_TRUE(std::filesystem::exists(whole.folder / "record" / "data" / file)) << file;
    }
    for (const auto& photo : json["photos"]) {
        const std::string file = photo["file"];
        EXPECT_EQ(photo["sha256"], sha256(text_of(whole.folder / "record" / "data" / file)));
    }
}

TEST(ExportRecord, TheBagNamesWhoseItIs) {
    WholeLook whole;
    whole.library.settings().set(business_name_setting, "Hair at the Mill");
    whole.library.settings().set(business_line_setting, "Bridal hair by appointment");
    whole.sign();
    whole.export_to(whole.folder / "record");
    EXPECT_TRUE(holds(text_of(whole.folder / "record" / "bag-info.txt"),
                      "Source-Organization: Hair at the Mill\n"));
}

TEST(ExportRecord, TwoPhotosOfOneNameAreBothThere) {
    WholeLook whole;
    whole.add_photo("IMG_411.JPG", {Stage::after, Angle::crown});
    whole.add_photo("img_411.jpg", {Stage::after, Angle::detail});
    whole.sign();
    whole.export_to(whole.folder / "record");
    const auto names = names_in(whole.folder / "record" / "data" / "photos");
    EXPECT_EQ(names.size(), 10U);
    EXPECT_TRUE(names.contains("IMG_411.JPG"));
    EXPECT_TRUE(names.contains("IMG_411 (2).JPG"));
    EXPECT_TRUE(names.contains("img_411 (3).jpg"));
}

TEST(ExportRecord, TheOriginalNameIsKeptWhereTheFileNameCannotBe) {
    WholeLook whole;
    whole.add_photo("100% \xff\nleft.jpg", {Stage::after, Angle::crown});
    whole.sign();
    whole.export_to(whole.folder / "record");
    EXPECT_TRUE(names_in(whole.folder / "record/data/photos").contains("100_ _left.jpg"));
    const auto text = text_of(whole.folder / "record/data/record.txt");
    EXPECT_TRUE(holds(text, "Original name: 100% \nleft.jpg"));
}

TEST(ExportRecord, IsRefusedUnlessSignedOffAndUnchanged) {
    WholeLook whole;
    const Path target = whole.folder / "record";
    EXPECT_TRUE(holds(refusal(whole, target), "is not signed off"));
    whole.sign();
    whole.add_photo("IMG_0600.JPG", {Stage::after, Angle::crown});
    EXPECT_TRUE(holds(refusal(whole, target), "IMG_0600.JPG was added since."));
    EXPECT_FALSE(std::filesystem::exists(target));
}

TEST(ExportRecord, IsRefusedWhenTheClientDeclinedEvenThat) {
    WholeLook whole;
    whole.sign();
    record_said(whole.library, whole.mira, ConsentSaid::declined, Use::own_record);
    const std::string why = refusal(whole, whole.folder / "record");
    EXPECT_TRUE(holds(why, "IMG_411.JPG: ")) << why;
    EXPECT_FALSE(std::filesystem::exists(whole.folder / "record"));
}

TEST(ExportRecord, IsRefusedWhenAPhotoIsSomebodyElses) {
    WholeLook whole;
    whole.sign();
    whole.library.credits().set(std::vector{whole.photos[0]},
                                {Whose::somebody_else, {}, {}, {}, {}});
    const std::string why = refusal(whole, whole.folder / "record");
    EXPECT_TRUE(holds(why, "IMG_411.JPG: The photo is somebody else's")) << why;
    EXPECT_FALSE(std::filesystem::exists(whole.folder / "record"));
}

TEST(ExportRecord, IsRefusedWhenAPictureIsNoLongerTheSame) {
    WholeLook whole;
    whole.sign();
    const Photo photo = *whole.library.photos().find(whole.photos[5]);
    whole.write_file(photo, "something else");
    const auto before = names_in(whole.folder.path());
    EXPECT_TRUE(holds(refusal(whole, whole.folder / "record"), photo.file.path));
    EXPECT_EQ(names_in(whole.folder.path()), before);
}

TEST(ExportRecord, NeverWritesOverWhatIsThere) {
    WholeLook whole;
    whole.sign();
    std::filesystem::create_directory(whole.folder / "record");
    EXPECT_TRUE(holds(refusal(whole, whole.folder / "record"), "is there already"));
    std::ofstream(whole.folder / "notes") << "mine";
    EXPECT_TRUE(holds(refusal(whole, whole.folder / "notes"), "is there already"));
    EXPECT_EQ(text_of(whole.folder / "notes"), "mine");
}

// Each single call to the disk fails once: the folder is whole or not there, nothing is left beside
// it, and the next attempt works.
TEST(ExportRecord, AFailingCallLeavesNothingHalfDone) {
    WholeLook whole;
    whole.sign();
    FailingDisk disk;
    Library library = Library::open(whole.folder / "library", disk);
    const Path out = whole.folder / "out";
    const Path target = out / "record";
    std::filesystem::create_directory(out);

    disk.heal();
    export_record(library, whole.look, target, whole.noon);
    const int calls = disk.calls();
    ASSERT_GT(calls, 40);
    for (int call = 1; call <= calls; ++call) {
        std::filesystem::remove_all(target);
        disk.fail_call(call);
        EXPECT_THROW(export_record(library, whole.look, target, whole.noon), DiskError) << call;
        const bool last = call == calls;  // the folder is there; only its name may not be synced
        EXPECT_EQ(names_in(out).size(), last ? 1U : 0U) << call;
    }
    std::filesystem::remove_all(target);
    disk.heal();
    EXPECT_NO_THROW(export_record(library, whole.look, target, whole.noon));
}

// A card that is pulled: what is left has an unfinished name, and goes when she exports again.
TEST(ExportRecord, APulledCardNeverLeavesAFolderThatLooksWhole) {
    WholeLook whole;
    whole.sign();
    FailingDisk disk;
    Library library = Library::open(whole.folder / "library", disk);
    const Path target = whole.folder / "record";
    disk.fail_from_call(30);
    EXPECT_THROW(export_record(library, whole.look, target, whole.noon), DiskError);
    disk.heal();
    EXPECT_FALSE(std::filesystem::exists(target));
    EXPECT_TRUE(std::filesystem::exists(whole.folder / ".record.unfinished"));
    export_record(library, whole.look, target, whole.noon);
    EXPECT_TRUE(std::filesystem::exists(target / "bagit.txt"));
    EXPECT_FALSE(std::filesystem::exists(whole.folder / ".record.unfinished"));
}

TEST(PortableName, HoldsOnlyWhatEveryDiskCan) {
    EXPECT_EQ(portable_name("IMG_0412.JPG"), "IMG_0412.JPG");
    EXPECT_EQ(portable_name("braut \u0161ara \u65b0\u5a18.jpg"),
              "braut \u0161ara \u65b0\u5a18.jpg");
    EXPECT_EQ(portable_name("a/b\\c:d*e?f\"g<h>i|j%k\rl\nm"), "a_b_c_d_e_f_g_h_i_j_k_l_m");
    EXPECT_EQ(portable_name("dots. . "), "dots");
    EXPECT_EQ(portable_name(".."), "photo");
    EXPECT_EQ(portable_name(""), "photo");
    EXPECT_EQ(portable_name("\xff\xfe"), "photo");
}

}  // namespace
}  // namespace quarterturn
