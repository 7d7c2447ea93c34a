#include "indexer/store/records_file.h"

#include <algorithm>

#include "indexer/lock/locked_vfs.h"
#include "indexer/store/statement.h"
#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

constexpr int most_problems = 20;

void check_integrity(SQLite::Database& handle, std::vector<std::string>& problems) {
    SQLite::Statement rows(handle, "PRAGMA integrity_check(" + std::to_string(most_problems) + ")");
    while (rows.executeStep()) {
        const std::string found = rows.getColumn(0).getString();
        if (found != "ok") problems.push_back("The records are damaged (" + found + ").");
    }
}

void check_references(SQLite::Database& handle, std::vector<std::string>& problems) {
    SQLite::Statement rows(handle, "PRAGMA foreign_key_check");
    while (rows.executeStep() && std::ssize(problems) < most_problems) {
        problems.push_back("A record of " + rows.getColumn(0).getString() + " belongs to a " +
                           rows.getColumn(2).getString() + " that is not there.");
    }
}

// What follows "records.sqlite" in a file's name; nothing where it has no such name.
std::optional<std::string> ending_of(const Path& file) {
    const std::string name = file.filename().string();
    if (!name.starts_with(records_file_name)) return std::nullopt;
    return name.substr(std::string_view(records_file_name).size());
}

bool is_unfinished(std::string_view ending) {
    return ending.starts_with(".new") || ending.starts_with(".trial") ||
           ending.starts_with(".rewritten") || ending.find(".copy.new") != ending.npos;
}

// With what this program writes there before a migration.
bool is_ours(const Path& file) {
    const auto ending = ending_of(file);
    if (!ending) return false;
    if (std::ranges::find(endings_of_records, *ending) != endings_of_records.end()) return true;
    return is_unfinished(*ending) || ending->starts_with(".version-");
}

bool looks_like_records(std::string_view name) {
    return name.starts_with("records") && name.find(".sqlite") != name.npos;
}

// Those files are not copied with the records, and what is said of them may name who was erased.
void leave_out_what_erasures_left(const Path& copy) {
    in_words([&] {
        SQLite::Database records(std::filesystem::absolute(copy).native(), SQLite::OPEN_READWRITE,
                                 0, vfs_of_records(copy));
        records.exec("PRAGMA journal_mode = OFF");  // of a copy that is not whole yet
        records.exec("PRAGMA secure_delete = ON");
        records.exec("DELETE FROM erasure_left");
    });
}

}  // namespace

void copy_records(Library& library, const Path& file) {
    FileSystem& disk = library.disk();
    for (const char* ending : {"", "-journal"}) {
        if (const Path left(file.native() + ending); disk.exists(left)) disk.remove(left);
    }
    disk.write_new(file, {});  // with the mode of all files of hers
    run(library.database(), "VACUUM INTO ?", file.native());
    leave_out_what_erasures_left(file);
    disk.sync_file(file);
}

std::vector<std::string> record_problems(Library& library) {
    std::vector<std::string> problems;
    in_words([&] {
        check_integrity(library.database().handle(), problems);
        check_references(library.database().handle(), problems);
    });
    return problems;
}

Path free_place_for_records(const Path& folder) {
    for (int number = 1;; ++number) {
        Path place = folder / (records_file_name + std::string(".kept-") + std::to_string(number));
        if (!std::filesystem::exists(place)) return place;
    }
}

bool is_records_of_others(const Path& file) {
    return looks_like_records(file.filename().string()) && !is_ours(file);
}

void remove_unfinished_records(FileSystem& disk, const Path& library) {
    for (const Path& file : disk.list(library)) {
        const auto ending = ending_of(file);
        if (ending && is_unfinished(*ending)) disk.remove(file);
    }
}

std::vector<std::string> records_of_others(Library& library) {
    std::vector<std::string> sentences;
    for (const Path& file : library.disk().list(library.folder())) {
        if (!is_records_of_others(file)) continue;
        const std::string name = file.filename().string();
        sentences.push_back(
            name +
            " lies beside the records, as services leave it that copy a folder to several "
            "computers; what was changed there may be in it, and nothing of it is used. Keep "
            "the library in a folder that no such service copies, and move this file out of "
            "it once you have looked whether anything is missing.");
    }
    return sentences;
}

bool sound_copy(const Path& file) {
    return in_words([&] {
        SQLite::Database copy(std::filesystem::absolute(file).native(), SQLite::OPEN_READONLY, 0,
                              vfs_of_records(file));
        std::vector<std::string> problems;
        check_integrity(copy, problems);
        return problems.empty();
    });
}

std::optional<FileState> settled_state(Library& library) {
    std::int64_t busy = 0;
    Statement checkpoint(library.database(), "PRAGMA wal_checkpoint(TRUNCATE)");
    if (checkpoint.step()) checkpoint.read(busy);
    if (busy != 0) return std::nullopt;
    return library.disk().state(library.folder() / records_file_name);
}

}  // namespace quarterturn
