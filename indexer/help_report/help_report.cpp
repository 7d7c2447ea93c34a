#include "indexer/help_report/help_report.h"

#include <sodium.h>
#include <sqlite3.h>
#include <sys/utsname.h>
#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <opencv2/core.hpp>

#include "indexer/metadata/write.h"
#include "indexer/store/library_settings.h"
#include "indexer/store/records_file.h"
#include "indexer/store/row_counts.h"

namespace quarterturn {
namespace {

using Facts = std::vector<HelpFact>;

// "Debian GNU/Linux 12 (bookworm)", as os-release(5) has it.
std::string system_name() {
    std::ifstream file("/etc/os-release");
    constexpr std::string_view key = "PRETTY_NAME=";
    for (std::string line; std::getline(file, line);) {
        if (!line.starts_with(key)) continue;
        std::erase(line, '"');
        return line.substr(key.size());
    }
    return "unknown";
}

std::string megabytes(std::uintmax_t bytes) {
    constexpr std::uintmax_t megabyte = 1'000'000;
    return bytes < megabyte ? "under 1 MB" : std::to_string(bytes / megabyte) + " MB";
}

// Not uname's node name, which is often somebody's.
void add_computer(Facts& facts) {
    facts.push_back({"system", system_name()});
    if (utsname name{}; ::uname(&name) == 0) {
        facts.push_back({"kernel", std::string(name.release) + ", " + name.machine});
    }
    facts.push_back({"processors", std::to_string(::sysconf(_SC_NPROCESSORS_ONLN))});
    const auto pages = static_cast<std::uintmax_t>(::sysconf(_SC_PHYS_PAGES));
    facts.push_back({"memory", megabytes(pages * static_cast<std::uintmax_t>(::getpagesize()))});
}

void add_libraries(Facts& facts) {
    facts.push_back({"SQLite", sqlite3_libversion()});
    facts.push_back({"libsodium", sodium_version_string()});
    facts.push_back({"OpenCV", cv::getVersionString()});
    const MetadataVersions versions = metadata_versions();
    facts.push_back({"exiv2", versions.exiv2});
    facts.push_back({"libheif", versions.libheif});
}

void add_records(Facts& facts, Library& library) {
    facts.push_back({"schema version", std::to_string(library.database().schema_version())});
    facts.push_back({"size of the records",
                     megabytes(static_cast<std::uintmax_t>(
                         library.disk().state(library.folder() / records_file_name).bytes))});
    facts.push_back({"locked", library.keys() ? "yes" : "no"});
    const std::size_t problems = record_problems(library).size();
    facts.push_back({"records", problems == 0 ? "sound" : std::to_string(problems) + " problems"});
    for (const RowCount& count : row_counts(library.database())) {
        facts.push_back({"rows of " + count.table, std::to_string(count.rows)});
    }
}

void add_photos(Facts& facts, Library& library) {
    for (const RowCount& count : photo_counts_by_ending(library.database())) {
        facts.push_back({"photos, " + count.table, std::to_string(count.rows)});
    }
    facts.push_back({"space on the disk", megabytes(static_cast<std::uintmax_t>(
                                              library.disk().free_bytes(library.folder())))});
}

// What a setting says can be her name; that it is set is none.
void add_settings(Facts& facts, Library& library) {
    for (const LibrarySetting& setting : library_settings) {
        if (!library.settings().get(setting.name)) continue;
        facts.push_back({"setting " + std::string(setting.name), "set"});
    }
}

void add_backups(Facts& facts, Library& library, LocalTime now) {
    const std::vector<Backup> backups = library.backups().all();
    facts.push_back({"backups", std::to_string(backups.size())});
    std::optional<LocalTime> newest;
    for (const Backup& backup : backups) newest = std::max(newest, backup.at);
    if (!newest) return;
    const auto days = std::chrono::floor<std::chrono::days>(now - *newest).count();
    facts.push_back({"days since the newest", std::to_string(days)});
}

}  // namespace

std::vector<HelpFact> help_facts(Library& library, LocalTime now) {
    Facts facts{{"made", iso_text(now)}};
    add_computer(facts);
    add_libraries(facts);
    add_records(facts, library);
    add_photos(facts, library);
    add_settings(facts, library);
    add_backups(facts, library, now);
    return facts;
}

std::string help_text(std::span<const HelpFact> facts) {
    std::size_t widest = 0;
    for (const HelpFact& fact : facts) widest = std::max(widest, fact.what.size());
    std::string text =
        "For whoever helps with Quarterturn: versions, sizes and counts, and nothing that names "
        "anybody.\n\n";
    for (const HelpFact& fact : facts) {
        text += fact.what + std::string(widest + 2 - fact.what.size(), ' ') + fact.value + '\n';
    }
    return text;
}

}  // namespace quarterturn
