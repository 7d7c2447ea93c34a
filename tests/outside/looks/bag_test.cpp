// Exported records as other programs see them: RFC 8493 (BagIt 1.0) and GNU coreutils' sha256sum.

#include "indexer/looks/bag.h"

#include <gtest/gtest.h>

#include <fstream>
#include <regex>

#include "tests/indexer/looks/whole_look.h"
#include "tests/support/command.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

std::string in_folder(const Path& folder, const std::string& command) {
    return output_of("cd " + shell_word(folder.string()) + " && " + command);
}

// A signed-off look with photos whose names are hard on tools.
struct ExportedLook : WholeLook {
    ExportedLook() {
        std::int64_t number = 0;
        for (const auto* name : {"100%.jpg", "two\nlines.jpg", "back\\slash.jpg", " leading.jpg",
                                 "\u65b0\u5a18 \u0161.jpg", "-n.jpg", "IMG_411.JPG"}) {
            add_photo(name, {Stage::during, all_angles[static_cast<std::size_t>(number++)]});
        }
        library.settings().set(business_name_setting, "Hair at the Mill\nby appointment");
        EXPECT_TRUE(sign().empty());
        export_to(bag);
    }

    Path bag = folder / "the record";
};

TEST(ExportedBag, Sha256sumAcceptsBothManifests) {
    ExportedLook exported;
    const auto payload = in_folder(exported.bag, "sha256sum --strict -c manifest-sha256.txt");
    EXPECT_EQ(std::count(payload.begin(), payload.end(), '\n'), 8 + 7 + 3);
    const auto tags = in_folder(exported.bag, "sha256sum --strict -c tagmanifest-sha256.txt");
    EXPECT_EQ(std::count(tags.begin(), tags.end(), '\n'), 3);
}

TEST(ExportedBag, Sha256sumNoticesAChangedByte) {
    ExportedLook exported;
    std::ofstream(exported.bag / "data/recipe.json", std::ios::app) << ' ';
    EXPECT_THROW(in_folder(exported.bag, "sha256sum --status -c manifest-sha256.txt"),
                 std::runtime_error);
}

// RFC 8493, 2.1.3 and 3: every payload file is listed in the manifest, once.
TEST(ExportedBag, TheManifestListsEveryPayloadFileOnce) {
    ExportedLook exported;
    const auto listed = in_folder(exported.bag, "cut -c 67- manifest-sha256.txt | LC_ALL=C sort");
    EXPECT_EQ(listed, in_folder(exported.bag, "find data -type f | LC_ALL=C sort"));
}

// RFC 8493, 2.2.2: Payload-Oxum is octets, a point, and the number of files below data/.
TEST(ExportedBag, PayloadOxumIsWhatFindCounts) {
    ExportedLook exported;
    const auto octets = in_folder(
        exported.bag,
        "find data -type f -print0 | xargs -0 stat -c %s | awk '{s += $1} END {print s}'");
    const auto files = in_folder(exported.bag, "find data -type f | wc -l");
    const auto oxum = in_folder(exported.bag, "sed -n 's/^Payload-Oxum: //p' bag-info.txt");
    EXPECT_EQ(oxum,
              std::to_string(std::stoll(octets)) + "." + std::to_string(std::stoi(files)) + "\n");
}

// RFC 8493, 2.1.1: two lines, in this order, without a byte order mark.
TEST(ExportedBag, TheDeclarationIsToTheLetter) {
    ExportedLook exported;
    EXPECT_EQ(text_of(exported.bag / "bagit.txt"),
              "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
}

// RFC 8493, 2.2.2: each line a label, a colon and a value.
TEST(ExportedBag, TheInfoIsOneLabelledValueALine) {
    ExportedLook exported;
    const auto info = text_of(exported.bag / "bag-info.txt");
    EXPECT_TRUE(std::regex_match(info, std::regex("([A-Z][A-Za-z-]*: [^\n]+\n)+"))) << info;
    for (const auto* line :
         {"Bagging-Date: 2026-11-07\n", "Source-Organization: Hair at the Mill by appointment\n",
          "External-Description: Signed-off look \"low twisted bun\" of Mira Okonjo-Lindqvist\n",
          "Bag-Software-Agent: Quarterturn\n"}) {
        EXPECT_NE(info.find(line), std::string::npos) << line;
    }
}

TEST(ExportedBag, IsReadableToNobodyElse) {
    ExportedLook exported;
    EXPECT_EQ(in_folder(exported.bag, "find . -perm /077"), "");
}

// RFC 8493, 2.1.3: CR, LF and the percent sign are encoded in a manifest, and nothing else is.
TEST(BagWriter, EncodesLineEndsAndPercentInManifests) {
    TemporaryFolder folder;
    BagWriter bag(real_file_system(), folder / "bag");
    bag.add("50%\r\n \u0161+.txt", "abc");
    bag.finish({});
    // The checksum of "abc" is FIPS 180-4's example.
    EXPECT_EQ(text_of(folder / "bag/manifest-sha256.txt"),
              "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  "
              "data/50%25%0D%0A \u0161+.txt\n");
    EXPECT_TRUE(std::filesystem::exists(folder / "bag/data" / "50%\r\n \u0161+.txt"));
}

}  // namespace
}  // namespace quarterturn
