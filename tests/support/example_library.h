#pragma once
// A library with an invented client, for the tests of all rooms that need one.

#include <gtest/gtest.h>

#include "indexer/disk/checksum.h"
#include "indexer/store/library.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {

inline LocalTime at(const char* iso) {
    return parse_local_time(iso).value();
}

inline CaptureTime taken_at(const char* iso) {
    CaptureTime taken;
    taken.local = at(iso);
    return taken;
}

// A photo whose checksum and path follow from its name.
inline Photo example_photo(const std::string& name, std::optional<CaptureTime> taken = {}) {
    Photo photo;
    photo.file.name = name;
    photo.file.path = "photos/2026/" + name;
    photo.file.sha256 = sha256(name);
    photo.file.bytes = 1'234'567;
    photo.file.width = 1500;
    photo.file.height = 2000;
    photo.file.taken = taken;
    return photo;
}

inline Client client_called(const std::string& name) {
    Client client;
    client.name = name;
    return client;
}

// Mira Okonjo-Lindqvist's wedding, her trial and the look worked on there.
struct ExampleLibrary {
    ExampleLibrary() {
        Wedding day;
        day.name = "Okonjo-Lindqvist and Vale";
        day.date = parse_date("2026-11-21").value();
        day.venue = "The Old Granary";
        day.ready_by = "12:30";
        day.party = {{mira, "bride"}};
        wedding = library.weddings().add(day);

        Sitting sitting;
        sitting.client = mira;
        sitting.wedding = wedding;
        sitting.starts = at("2026-11-07T10:00");
        sitting.ends = at("2026-11-07T12:00");
        trial = library.sittings().add(sitting);

        Look bun;
        bun.client = mira;
        bun.wedding = wedding;
        bun.name = "low twisted bun";
        bun.sittings = {trial};
        look = library.looks().add(bun);

        Device larkmoor;
        larkmoor.make = "Larkmoor";
        larkmoor.model = "P3";
        phone = library.devices().find_or_add(larkmoor);
    }

    // Closes the records and opens them again, as after a restart.
    void reopen() { library = Library::open(folder / "library"); }

    TemporaryFolder folder;
    Library library = Library::create(folder / "library");
    ClientId mira = library.clients().add(client_called("Mira Okonjo-Lindqvist"));
    WeddingId wedding;
    SittingId trial;
    LookId look;
    DeviceId phone;
};

}  // namespace quarterturn
