#pragma once
// A library with photos, a paper and a client's picture, and a folder on "another drive". The files
// hold a few words: a backup does not ask whether they are pictures.

#include <sys/wait.h>

#include "indexer/backup/backup.h"
#include "indexer/backup/backup_folder.h"
#include "indexer/disk/lies_in.h"
#include "indexer/looks/consents.h"
#include "tests/support/example_library.h"
#include "tests/support/failing_disk.h"
#include "tests/support/files.h"

namespace quarterturn {

inline std::span<const std::byte> bytes_in(std::string_view text) {
    return std::as_bytes(std::span(text));
}

inline void write_text(const Path& file, std::string_view text) {
    std::filesystem::create_directories(file.parent_path());
    write_bytes(file, bytes_in(text));
}

// Every file below the folder, by its path there.
inline std::map<std::string, std::string> files_below(const Path& folder) {
    std::map<std::string, std::string> files;
    if (!std::filesystem::exists(folder)) return files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        if (!entry.is_regular_file()) continue;
        files[entry.path().lexically_relative(folder).generic_string()] = text_of(entry.path());
    }
    return files;
}

// The list of files as another program checks it (GNU coreutils).
inline bool sha256sum_agrees(const Path& backup) {
    const std::string command = "cd '" + backup.string() +
                                "' && sha256sum --check --strict --quiet checksums.sha256 "
                                ">/dev/null 2>&1";
    return std::system(command.c_str()) == 0;
}

// From its beginning a backup has a list, which names nothing until the first is whole.
inline bool names_files(const Path& list) {
    return std::filesystem::exists(list) && text_of(list).find("  ") != std::string::npos;
}

// Answers for the folders of a drive as for another disk than that on which it lies.
class DiskWithDrive : public FailingDisk {
  public:
    FileState state(const Path& file) override {
        FileState state = FailingDisk::state(file);
        if (!state.regular && lies_in(file, drive)) ++state.device;
        return state;
    }

    Path drive;
};

struct BackupTest : ExampleLibrary {
    BackupTest() {
        add_photo("one.jpg", trial);
        add_photo("two.jpg", trial);
        add_photo("three.jpg", {});
    }

    PhotoId add_photo(const std::string& name, std::optional<SittingId> sitting) {
        Photo photo = example_photo(name);
        const std::string words = "photo of " + name;
        photo.file.sha256 = sha256(words);
        photo.file.bytes = std::ssize(words);
        photo.tags.sitting = sitting;
        write_text(library.photo_file(photo), words);
        return library.photos().add(photo);
    }

    Photo photo_named(const std::string& name) { return library.photos().named(name).at(0); }

    void add_paper_and_picture() {
        ConsentEntry entry;
        entry.client = mira;
        entry.said = ConsentSaid::granted;
        entry.said_on = parse_date("2026-11-07").value();
        entry.recorded_at = at("2026-11-07T12:00");
        const auto entries = record_consent(library, entry, std::array{Use::website});
        write_text(folder / "scan.pdf", "a scan of the form");
        attach_paper(library, folder / "scan.pdf", std::array{entries.at(0).id},
                     at("2026-11-07T12:01"));
        write_text(library.folder() / "inspiration/torn out.jpg", "torn out of a magazine");
        library.inspirations().add({{},
                                    mira,
                                    "torn out.jpg",
                                    "inspiration/torn out.jpg",
                                    sha256("torn out of a magazine"),
                                    at("2026-11-07T12:02")});
        write_text(library.folder() / "consent-form.txt", "May I show your hair?");
    }

    // Each a day after the one before.
    BackupReport back_up_to(const Path& to) {
        BackupWishes wishes;
        wishes.to = to;
        wishes.now = at("2026-11-08T18:00") + std::chrono::days(backups_);
        wishes.utc =
            std::chrono::sys_days(parse_date("2026-11-08").value()) + std::chrono::days(backups_++);
        return back_up(library, wishes);
    }

    Path drive = folder / "drive" / "backup";
    int backups_ = 0;
};

struct DriveOnAnotherDisk : BackupTest {
    DriveOnAnotherDisk() {
        disk.drive = drive;
        library = Library::open(library.folder(), disk);
    }
    ~DriveOnAnotherDisk() { reopen(); }  // before the disk goes

    DiskWithDrive disk;
};

}  // namespace quarterturn
