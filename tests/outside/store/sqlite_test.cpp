// The library file as Debian's sqlite3 sees it.

#include <gtest/gtest.h>

#include "tests/support/command.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

std::string ask(Library& library, const std::string& sql) {
    return output_of("sqlite3 " + shell_word(library.folder() / "records.sqlite") + " " +
                     shell_word(sql));
}

// A bit of everything that a library can hold.
void fill(ExampleLibrary& example) {
    Library& library = example.library;
    Photo photo = example_photo("IMG_0042.HEIC", taken_at("2026-11-07T10:12:03.61"));
    photo.file.device = example.phone;
    photo.flaws = {Flaw::out_of_focus, Flaw::too_dark};
    const PhotoId id = library.photos().add(photo);
    library.photos().add(example_photo("\xff\xfe.jpg"));
    photo.tags.angle = Angle::left_three_quarter;
    photo.tags.look = example.look;
    photo.tags.shown = {example.mira};
    library.history().apply({"tagged", {{id, photo.tags}}, {}});
    library.history().apply({"shifted", {}, {{example.phone, std::chrono::minutes{47}}}});
    library.history().undo();
    library.recipes().save(example.look, Recipe{}, at("2026-11-07T12:00"));
    library.looks().set_shot_list(example.look, default_shot_list());
    library.looks().waive(example.look, {{Stage::after, Angle::back}, "the veil was on"});
    SignOff sign_off;
    sign_off.look = example.look;
    sign_off.seal.photos = {{id, "IMG_0042.HEIC", photo.file.sha256, "after, left"}};
    library.sign_offs().add(sign_off);
    library.settings().set("business line", "Hair by Ines");
}

TEST(SqliteSees, AWholeFileInWhichAllBelongsToSomething) {
    ExampleLibrary example;
    fill(example);
    EXPECT_EQ(ask(example.library, "PRAGMA integrity_check"), "ok\n");
    EXPECT_EQ(ask(example.library, "PRAGMA foreign_key_check"), "");
}

TEST(SqliteSees, WordsThatCanBeReadWithoutTheProgram) {
    ExampleLibrary example;
    fill(example);
    EXPECT_EQ(ask(example.library, "SELECT name, angle, flaws FROM photo WHERE angle IS NOT NULL"),
              "IMG_0042.HEIC|left three-quarter|out of focus, too dark\n");
    EXPECT_EQ(ask(example.library, "SELECT name, date FROM wedding"),
              "Okonjo-Lindqvist and Vale|2026-11-21\n");
    EXPECT_EQ(ask(example.library,
                  "SELECT strftime('%Y-%m-%d %H:%M', starts / 1000000000, 'unixepoch'), kind "
                  "FROM sitting"),
              "2026-11-07 10:00|trial\n");
}

}  // namespace
}  // namespace quarterturn
