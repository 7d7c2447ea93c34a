#include "indexer/help_report/help_report.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <set>

#include "indexer/store/library_settings.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

// Every word of four letters or more in any column of any table.
std::set<std::string> words_kept(const Path& records) {
    SQLite::Database file(records.string());
    std::set<std::string> words;
    SQLite::Statement tables(file,
                             "SELECT name FROM pragma_table_list WHERE schema = 'main' AND "
                             "type = 'table' AND name NOT LIKE 'sqlite%'");
    while (tables.executeStep()) {
        SQLite::Statement rows(file, "SELECT * FROM " + tables.getColumn(0).getString());
        while (rows.executeStep()) {
            for (int i = 0; i < rows.getColumnCount(); ++i) {
                if (!rows.getColumn(i).isText()) continue;
                std::string word;
                for (const char letter : rows.getColumn(i).getString() + ' ') {
                    if (std::isalnum(static_cast<unsigned char>(letter)) != 0) {
                        word += letter;
                    } else if (word.size() >= 4) {
                        words.insert(std::exchange(word, {}));
                    } else {
                        word.clear();
                    }
                }
            }
        }
    }
    return words;
}

struct HelpReport : testing::Test {
    HelpReport() {
        example.library.photos().add(example_photo("Mira-veil.heic"));
        example.library.photos().add(example_photo("unnamed.miraokonjo"));
        example.library.settings().set(std::string(business_name_setting), "Hair by Ines Quill");
    }
    std::vector<HelpFact> facts() { return help_facts(example.library, at("2026-11-26T17:00:00")); }
    std::string value(const std::string& what) {
        for (const HelpFact& fact : facts()) {
            if (fact.what == what) return fact.value;
        }
        return "not told";
    }
    ExampleLibrary example;
};

TEST_F(HelpReport, HoldsNoWordOfTheLibrary) {
    const std::string text = help_text(facts());
    // Words of the program's own that records hold as well.
    const std::set<std::string> own{"photos", "2026",   "heic",     "trial", "look",
                                    "after",  "before", "business", "name",  "false",
                                    "true",   "photo",  "done"};
    int looked_for = 0;
    for (const std::string& word : words_kept(example.folder / "library" / "records.sqlite")) {
        if (own.contains(word)) continue;
        ++looked_for;
        EXPECT_EQ(text.find(word), std::string::npos) << word << " in\n" << text;
    }
    EXPECT_GE(looked_for, 10);
    EXPECT_EQ(text.find(example.folder.path().string()), std::string::npos);
}

TEST_F(HelpReport, CountsWhatIsThere) {
    EXPECT_EQ(value("rows of client"), "1");
    EXPECT_EQ(value("photos, heic"), "1");
    EXPECT_EQ(value("photos, other"), "1");
    EXPECT_EQ(value("setting business name"), "set");
    EXPECT_EQ(value("records"), "sound");
    EXPECT_EQ(value("size of the records"), "under 1 MB");
    EXPECT_EQ(value("backups"), "0");
    EXPECT_EQ(value("days since the newest"), "not told");
}

TEST_F(HelpReport, TellsHowOldTheNewestBackupIs) {
    Backup stick;
    stick.mark = "a1";
    stick.at = at("2026-11-20T09:00:00");
    const BackupId id = example.library.backups().add(stick);
    EXPECT_TRUE(id.value > 0);
    EXPECT_EQ(value("days since the newest"), "6");
}

}  // namespace
}  // namespace quarterturn
