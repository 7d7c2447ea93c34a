#pragma once
// The example library with demo photos of one bun: from the back and the left at the trial, and
// from the back on the wedding day.

#include <filesystem>

#include "tests/support/example_library.h"
#include "tests/support/files.h"

namespace quarterturn {

struct AsMadeLibrary : ExampleLibrary {
    AsMadeLibrary() {
        Sitting sitting;
        sitting.client = mira;
        sitting.wedding = wedding;
        sitting.kind = SittingKind::wedding_day;
        sitting.starts = at("2026-11-21T08:00");
        sitting.ends = at("2026-11-21T11:00");
        day = library.sittings().add(sitting);
        agreed = add("20260822_153044_back.jpg", "2026-11-07T11:30:44", trial, Angle::back);
        add("20260822_153021.jpg", "2026-11-07T11:30:21", trial, Angle::left);
        made = add("20261107_120241_3.jpg", "2026-11-21T10:47:15", day, Angle::back);
    }

    // Without a sitting it waits for its place.
    PhotoId add(const std::string& name, const char* taken, std::optional<SittingId> sitting,
                std::optional<Angle> angle) {
        const auto from = std::filesystem::path(QUARTERTURN_DEMO_PHOTOS "/photos/phone") / name;
        return add_bytes(name, read_bytes(from), 6, taken, sitting, angle);
    }

    PhotoId add_bytes(const std::string& name, std::span<const std::byte> bytes, int orientation,
                      const char* taken, std::optional<SittingId> sitting,
                      std::optional<Angle> angle) {
        Photo photo = example_photo(name, taken_at(taken));
        photo.file.orientation = orientation;
        photo.file.sha256 = sha256(bytes);
        photo.file.bytes = static_cast<std::int64_t>(bytes.size());
        const Path to = library.photo_file(photo);
        std::filesystem::create_directories(to.parent_path());
        write_bytes(to, bytes);
        photo.tags.sitting = sitting;
        if (sitting) photo.tags.look = look;
        if (angle) photo.tags.stage = Stage::after;
        photo.tags.angle = angle;
        return library.photos().add(photo);
    }

    SittingId day;
    PhotoId agreed;
    PhotoId made;
};

}  // namespace quarterturn
