// The list of files, and the names and number of the copies of the records.

#include "indexer/backup/manifest.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>

#include "indexer/backup/backup_folder.h"
#include "indexer/disk/checksum.h"

namespace quarterturn {
namespace {

TEST(RecordsKept, AreTheLastTenAndTheLastOfEachMonthBefore) {
    rc::check([](std::vector<std::uint32_t> hours) {
        std::set<std::string> all;
        for (const std::uint32_t hour : hours) {
            all.insert(records_path(
                std::chrono::sys_seconds(std::chrono::hours(400'000 + hour % 20'000))));
        }
        const std::vector<std::string> records(all.begin(), all.end());
        const auto kept = records_to_keep(records);
        for (std::size_t i = 0; i < records.size(); ++i) {
            const bool among_ten = records.size() - i <= 10;
            const bool last_of_month =
                i + 1 == records.size() || records[i + 1].substr(0, 22) != records[i].substr(0, 22);
            RC_ASSERT((std::ranges::find(kept, records[i]) != kept.end()) ==
                      (among_ten || last_of_month));
        }
    });
}

TEST(RecordsPath, IsReadBackAsTheTimeItWasMadeOf) {
    rc::check([](std::uint32_t number) {
        const std::chrono::sys_seconds utc{std::chrono::seconds(number)};
        RC_ASSERT(time_of_records(records_path(utc)) == utc);
    });
    EXPECT_EQ(records_path(std::chrono::sys_days(parse_date("2026-11-07").value()) +
                           std::chrono::seconds(36'723)),
              "records/records-20261107T101203Z.sqlite");
    for (const char* none : {"records/records-20261307T101203Z.sqlite", "records/other.sqlite",
                             "records/records-20261107T101203Z.sqlite.new"}) {
        EXPECT_FALSE(is_records_path(none)) << none;
    }
}

TEST(Manifest, ReadsBackAsItWasWritten) {
    rc::check([](const std::map<std::string, std::string>& names) {
        Manifest manifest;
        manifest.mark = "a1";
        manifest.last_erasure = {7};
        for (const auto& [name, text] : names) {
            std::string path = name;
            std::erase(path, '\0');
            if (path.empty() || path.starts_with('/') || path.find("..") != std::string::npos) {
                continue;
            }
            manifest.files[path] = sha256(text);
        }
        RC_ASSERT(parse_manifest(manifest_text(manifest)) == manifest);
    });
}

TEST(Manifest, ThatIsCutOffOrLeadsElsewhereIsRefused) {
    Manifest manifest;
    manifest.mark = "a1";
    manifest.files["photos/a.jpg"] = sha256("a");
    const std::string text = manifest_text(manifest);
    for (std::size_t length = 0; length < text.size(); ++length) {
        const auto read = parse_manifest(std::string_view(text).substr(0, length));
        EXPECT_TRUE(!read || read->files.empty()) << length;
    }
    EXPECT_FALSE(parse_manifest("# backup a1\n" + sha256("a") + "  ../a.jpg\n"));
    EXPECT_FALSE(parse_manifest("# backup a1\n" + sha256("a") + "  /etc/a.jpg\n"));
}

}  // namespace
}  // namespace quarterturn
