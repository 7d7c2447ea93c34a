// A backup as other programs see it: sha256sum (GNU coreutils), sqlite3's own command, cmp.

#include "indexer/backup/backup.h"

#include "indexer/backup/backup_folder.h"
#include "tests/support/command.h"
#include "tests/support/example_library.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

struct OutsideBackup : testing::Test, ExampleLibrary {
    void add_photo(const std::string& name) {
        Photo photo = example_photo(name);
        photo.file.path = "photos/2026/" + name;
        photo.file.bytes = std::ssize(name);
        std::filesystem::create_directories(library.photo_file(photo).parent_path());
        write_bytes(library.photo_file(photo), std::as_bytes(std::span(name)));
        library.photos().add(photo);
    }

    void back_up_now() { back_up(library, {.to = drive}); }

    // Its exit code.
    int sha256sum() {
        const std::string command = "cd " + shell_word(drive) +
                                    " && sha256sum --check --strict --quiet checksums.sha256 "
                                    ">/dev/null 2>&1";
        return std::system(command.c_str());
    }

    Path drive = folder / "drive";
};

TEST_F(OutsideBackup, Sha256sumReadsTheListWhateverTheNames) {
    for (const char* name : {"plain.jpg", "with space.jpg", "back\\slash.jpg", "line\nend.jpg",
                             "\\leading.jpg", "# hash.jpg", "*star.jpg", "carriage\rreturn.jpg",
                             "Ada’s 花.jpg", " leading space.jpg"}) {
        add_photo(name);
    }
    back_up_now();
    EXPECT_EQ(sha256sum(), 0);
    const std::string listed =
        output_of("grep -c -v '^#' " + shell_word(drive / "checksums.sha256"));
    EXPECT_EQ(listed, "11\n");  // ten photos and the records
}

TEST_F(OutsideBackup, Sha256sumNoticesAChangedByte) {
    add_photo("plain.jpg");
    back_up_now();
    write_bytes(drive / "photos/2026/plain.jpg", std::as_bytes(std::span("plain.jpG", 9)));
    EXPECT_NE(sha256sum(), 0);
}

TEST_F(OutsideBackup, Sqlite3FindsTheRecordsWholeAndNeedsNoOtherFile) {
    add_photo("plain.jpg");
    back_up_now();
    const auto records =
        records_in(BackupFolder(real_file_system(), drive).manifest().value()).back();
    std::filesystem::copy_file(drive / records, folder / "alone.sqlite");
    std::filesystem::permissions(folder / "alone.sqlite", std::filesystem::perms::owner_read);
    const auto ask = [&](const std::string& sql) {
        return output_of("sqlite3 -readonly " + shell_word(folder / "alone.sqlite") + ' ' +
                         shell_word(sql));
    };
    EXPECT_EQ(ask("PRAGMA integrity_check"), "ok\n");
    EXPECT_EQ(ask("PRAGMA foreign_key_check"), "");
    EXPECT_EQ(ask("PRAGMA journal_mode"), "delete\n");
    EXPECT_EQ(ask("SELECT name FROM client"), "Mira Okonjo-Lindqvist\n");
    EXPECT_EQ(ask("SELECT count(*) FROM photo"), "1\n");
}

TEST_F(OutsideBackup, CmpFindsThePhotosTheSame) {
    add_photo("plain.jpg");
    back_up_now();
    EXPECT_EQ(output_of("diff -r " + shell_word(library.folder() / "photos") + ' ' +
                        shell_word(drive / "photos")),
              "");
}

}  // namespace
}  // namespace quarterturn
