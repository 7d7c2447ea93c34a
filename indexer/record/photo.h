#pragma once
// A photo: what its file says, what was measured, and what the stylist said of it.

#include <array>
#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/record/time.h"
#include "indexer/record/words.h"

namespace quarterturn {

// A camera or phone, told apart by what its files say. Its clock may be off: `clock_shift` is what
// is added to its photos' times to get the true local time.
struct Device {
    DeviceId id;
    std::string make;
    std::string model;
    std::string serial;
    std::chrono::seconds clock_shift{0};

    bool operator==(const Device&) const = default;
};

// Measured on the picture as shown (upright, sRGB), scaled to a long edge of about 1000 px.
struct Measures {
    double focus = 0;   // how steep edges are, see image/steepness.h; 0 when that cannot be told
    double motion = 0;  // 0 alike in all directions … 1 steep in one direction only
    double mean_light = 0;          // mean luma, 0 … 1
    double clipped_shadows = 0;     // share of pixels at the black end, 0 … 1
    double clipped_highlights = 0;  // share of pixels at the white end, 0 … 1

    bool operator==(const Measures&) const = default;
};

// 64-bit perceptual hash (DCT), compared by how many bits differ.
using Fingerprint = std::uint64_t;

// What a face detector saw in the picture as shown. A profile looks to the viewer's left or right.
struct HeadSigns {
    bool frontal_face = false;
    bool profile_to_left = false;
    bool profile_to_right = false;

    bool operator==(const HeadSigns&) const = default;
};

// A suggestion never counts until she confirms it.
struct Suggestion {
    std::optional<Angle> angle;
    std::optional<Stage> stage;
    std::string angle_source;  // "keyword 'left'", "file name"
    std::string stage_source;  // "taken after the last gap"

    bool operator==(const Suggestion&) const = default;
};

// What she said of a photo; all of it can be undone.
struct Tags {
    std::optional<SittingId> sitting;
    bool placed_by_hand = false;  // she chose the sitting; sorting by time leaves it alone
    std::optional<LookId> look;
    std::optional<Stage> stage;
    std::optional<Angle> angle;
    bool mirrored = false;
    std::vector<ClientId> shown;  // clients seen in the picture, besides the sitting's own
    std::string note;
    std::string accepted_because;  // "use it anyway": her reason; empty when not accepted

    bool operator==(const Tags&) const = default;
};

// What the file itself says. Sizes are in pixels, as seen upright.
struct FileFacts {
    std::string name;    // the original file name
    std::string path;    // in the library, relative to its folder, '/' between parts
    std::string sha256;  // lower-case hex
    std::int64_t bytes = 0;
    int width = 0;
    int height = 0;
    int orientation = 1;  // EXIF 0x0112, still to be applied to the decoded picture: 1 when none is
    std::optional<CaptureTime> taken;  // the file's own time; nothing when unknown
    std::optional<DeviceId> device;

    bool operator==(const FileFacts&) const = default;
};

struct Photo {
    PhotoId id;
    FileFacts file;
    // The file's own time with the device's clock shift; nothing when unknown.
    std::optional<LocalTime> moment;
    Measures measures;
    Fingerprint fingerprint = 0;
    std::optional<HeadSigns> head_signs;  // nothing until somebody looked for a face
    std::vector<Flaw> flaws;
    Suggestion suggestion;
    Tags tags;

    bool operator==(const Photo&) const = default;
};

}  // namespace quarterturn
