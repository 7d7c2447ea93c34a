// Every photo that leaves says nothing of where, when or with what it was taken, as exiftool reads
// it.

#include "tests/app/program.h"
#include "tests/support/csv.h"

namespace quarterturn {
namespace {

using nlohmann::json;

class EveryPhotoOut : public QturnTest {
  protected:
    // All of a folder, of a client of 15, for whom her mother allows it.
    json send_all(const std::filesystem::path& from) {
        said({"init"});
        said({"settings", "business name", "Pins and Paper"});
        said({"client", "add", "Ada Lindqvist"});
        said({"look", "add", "Ada Lindqvist", "Low bun"});
        const json imported = answer({"import", from});
        Arguments all{"tag"};
        for (const json& id : imported["imported_photos"]) all.push_back(id.dump());
        const auto with = [&](const Arguments& before, const Arguments& after) {
            Arguments arguments = before;
            arguments.insert(arguments.end(), all.begin() + 1, all.end());
            arguments.insert(arguments.end(), after.begin(), after.end());
            return arguments;
        };
        said(with({"tag"}, {"--look", "Low bun"}));
        said(with({"photo", "whose"}, {"--own"}));
        said({"consent", "grant", "Ada Lindqvist", "--for", "website", "--face", "--how",
              "signed form", "--guardian", "Ines Lindqvist", "--age", "15"});
        const json sent = answer(
            with({"portfolio", "export"}, {"--for", "website", "--to", out, "--no-data-mining"}));
        EXPECT_EQ(sent["written"], imported["imported"]);
        return sent;
    }

    // exiftool must find nothing but what was written, and what every JPEG has.
    void expect_clean(std::size_t count) {
        const json all = json::parse(output_of("exiftool -n -a -json -G1 -r " + shell_word(out)));
        EXPECT_EQ(all.size(), count);
        const std::vector<std::string> groups{"ExifTool",      "System",   "File",
                                              "JFIF",          "XMP-x",    "XMP-dc",
                                              "XMP-photoshop", "XMP-plus", "Composite"};
        for (const json& says : all) {
            const std::string file = says["SourceFile"];
            for (const auto& [key, value] : says.items()) {
                const std::string group = key.substr(0, key.find(':'));
                EXPECT_TRUE(key == "SourceFile" || group.starts_with("ICC") ||
                            std::ranges::find(groups, group) != groups.end())
                    << file << " says " << key << " " << value;
            }
            EXPECT_EQ(says["XMP-dc:Creator"], "Pins and Paper") << file;
            EXPECT_EQ(says["XMP-plus:ModelReleaseStatus"], "MR-LMR") << file;
            EXPECT_EQ(says["XMP-plus:MinorModelAgeDisclosure"], "AG-A15") << file;
            EXPECT_EQ(says["ICC_Profile:ProfileDescription"], "sRGB built-in") << file;
            EXPECT_LE(
                std::max(says["File:ImageWidth"].get<int>(), says["File:ImageHeight"].get<int>()),
                2160)
                << file;
            EXPECT_EQ(text_of(file).find("Lindqvist"), std::string::npos) << file;
        }
    }

    std::filesystem::path out = folder / "gone";
};

TEST_F(EveryPhotoOut, DemoPhotosSayNothingOfWhereWhenOrWithWhat) {
    const json sent = send_all(std::filesystem::path(QUARTERTURN_DEMO_PHOTOS) / "photos");
    expect_clean(sent["photos"].size());
}

// The folder's expected.csv is what exiftool said of the originals.
TEST_F(EveryPhotoOut, RealPhotosSayNothingOfWhereWhenOrWithWhat) {
    SKIP_WITHOUT_REAL_PHOTOS();
    const json sent = send_all(*real_photos() / "good");
    expect_clean(sent["photos"].size());
    std::map<std::string, CsvRow> rows;
    for (const CsvRow& row : read_csv(*real_photos() / "expected.csv")) {
        rows[std::filesystem::path(row.at("SourceFile")).filename()] = row;
    }
    for (const json& photo : sent["photos"]) {
        const CsvRow& row = rows.at(photo["name"]);
        const std::string whole = text_of(photo["export"]["file"].get<std::string>());
        for (const char* fact : {"SerialNumber", "Make", "Model", "DateTimeOriginal"}) {
            const std::string& said_before = row.at(fact);
            if (said_before.size() < 5 || said_before.starts_with(' ')) continue;
            EXPECT_EQ(whole.find(said_before), std::string::npos) << photo["name"] << fact;
        }
    }
}

}  // namespace
}  // namespace quarterturn
