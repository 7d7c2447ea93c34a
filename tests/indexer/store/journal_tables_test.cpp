#include "indexer/store/journal_tables.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <set>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

// Which tables there are, and how they hang together, as SQLite says it.
TEST(JournalTables, AreAllThatHoldWhatSheDoesAndSayWhichOthersHangOn) {
    ExampleLibrary example;
    const std::set<std::string> others{"action",
                                       "backup",
                                       "backup_lack",
                                       "bin_change",
                                       "choice_change",
                                       "consent",
                                       "consent_paper",
                                       "consent_paper_of",
                                       "device",
                                       "erasing",
                                       "erasure",
                                       "erasure_file",
                                       "erasure_left",
                                       "export",
                                       "export_place",
                                       "export_taken_down",
                                       "export_under",
                                       "hair_look",
                                       "hair_only",
                                       "found_head",
                                       "look_to_pair",
                                       "pair",
                                       "pair_alignment",
                                       "pair_change",
                                       "pair_window",
                                       "photo",
                                       "photo_shown",
                                       "records_change",
                                       "sealed_photo",
                                       "sealed_waiver",
                                       "seen_file",
                                       "shift_change",
                                       "sign_off",
                                       "sqlite_sequence",
                                       "tag_change",
                                       "verification",
                                       "verification_problem"};
    SQLite::Statement tables(example.library.database().handle(),
                             "SELECT name, EXISTS (SELECT 1 FROM sqlite_schema AS child, "
                             "pragma_foreign_key_list(child.name) AS f WHERE child.type = 'table' "
                             "AND f.\"table\" = one.name) FROM sqlite_schema AS one WHERE type = "
                             "'table' AND name NOT LIKE 'words%'");
    std::size_t known = 0;
    while (tables.executeStep()) {
        const std::string name = tables.getColumn(0).getString();
        const auto place = journal_place(name);
        EXPECT_NE(place.has_value(), others.contains(name)) << name;
        if (!place) continue;
        ++known;
        EXPECT_EQ(journal_tables[*place].has_others, tables.getColumn(1).getInt() == 1) << name;
    }
    EXPECT_EQ(known, journal_tables.size());
}

}  // namespace
}  // namespace quarterturn
