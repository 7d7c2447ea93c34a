// A damaged library file ends in a sentence or in records, never in a crash.

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <fstream>
#include <random>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

std::string whole_file() {
    ExampleLibrary example;
    for (int i = 0; i < 60; ++i) {
        Photo photo =
            example_photo("IMG_" + std::to_string(i) + ".jpg", taken_at("2026-11-07T10:12:03.61"));
        photo.file.device = example.phone;
        photo.flaws = {Flaw::moved, Flaw::too_dark};
        photo.tags.shown = {example.mira};
        const PhotoId id = example.library.photos().add(photo);
        photo.tags.angle = Angle::left;
        example.library.history().apply({"tagged", {{id, photo.tags}}, {}});
    }
    example.library.recipes().save(example.look, Recipe{}, at("2026-11-07T12:00"));
    example.library.looks().set_shot_list(example.look, default_shot_list());
    example.library.database().handle().exec("PRAGMA wal_checkpoint(TRUNCATE)");
    const Bytes bytes =
        real_file_system().read(example.library.folder() / "records.sqlite", any_size);
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

void read_everything(const Path& file) {
    Database database(file);
    PhotoTable(database).all();
    PhotoTable(database).named("IMG_1.jpg");
    WeddingTable(database).all();
    SittingTable(database).all();
    DeviceTable(database).all();
    for (const Look& look : LookTable(database).all()) {
        LookTable(database).shot_list(look.id);
        RecipeTable(database).revisions(look.id);
        PhotoTable(database).around_look(look);
    }
    History(database).undo();
    History(database).redo();
}

TEST(DamagedRecords, EndInASentence) {
    const std::string whole = whole_file();
    std::mt19937 random(20261107);
    int refused = 0;
    for (int round = 0; round < 150; ++round) {
        std::string damaged = whole;
        for (int count = 1 << (round % 8); count > 0; --count) {
            damaged[random() % damaged.size()] = static_cast<char>(random());
        }
        if (round % 10 == 9) damaged.resize(random() % damaged.size());
        const TemporaryFolder folder;
        std::ofstream(folder / "records.sqlite", std::ios::binary) << damaged;
        try {
            read_everything(folder / "records.sqlite");
        } catch (const StoreError& error) {
            ++refused;
            EXPECT_EQ(std::string(error.what()).back(), '.') << error.what();
        }
    }
    EXPECT_GT(refused, 20) << "such damage must not go unnoticed every time";
}

}  // namespace
}  // namespace quarterturn
