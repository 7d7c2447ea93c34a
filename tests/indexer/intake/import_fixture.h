#pragma once
// An example library and a card to bring photos in from.

#include "indexer/intake/import.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/intake/photo_files.h"
#include "tests/support/example_library.h"

namespace quarterturn {

struct ImportTest : testing::Test, ExampleLibrary {
    ImportReport bring_in(std::vector<Path> sources) {
        return import_photos(library, *decoder, {.sources = std::move(sources)});
    }
    ImportReport bring_in() { return bring_in({card}); }

    Photo photo(PhotoId id) { return library.photos().find(id).value(); }
    Photo photo_named(const std::string& name) {
        const auto photos = library.photos().named(name);
        EXPECT_EQ(photos.size(), 1U) << name;
        return photos.at(0);
    }

    SittingId add_sitting(ClientId client, const char* starts, const char* ends,
                          SittingKind kind = SittingKind::trial) {
        Sitting sitting;
        sitting.client = client;
        sitting.kind = kind;
        sitting.starts = at(starts);
        sitting.ends = at(ends);
        return library.sittings().add(sitting);
    }

    Path card = folder / "card";
    std::unique_ptr<Decoder> decoder = make_confined_decoder();
};

// What must hold after whatever happened: each record's file is there whole, and nothing else.
inline void expect_files_match_records(Library& library) {
    std::set<Path> recorded;
    for (const Photo& photo : library.photos().all()) {
        const Path file = library.photo_file(photo);
        EXPECT_EQ(sha256(read_bytes(file)), photo.file.sha256) << file;
        recorded.insert(file);
    }
    for (const auto& [file, bytes] : all_files(library.folder() / "photos")) {
        EXPECT_TRUE(recorded.contains(file)) << file << " has no record";
    }
    EXPECT_TRUE(all_files(library.incoming_folder()).empty());
}

}  // namespace quarterturn
