#pragma once

#include "tests/support/command.h"
#include "tests/support/made_once.h"

namespace quarterturn {

// A sharp photo, made by tools outside of the program, and when it says it was taken.
inline void make_noise_photo(const std::filesystem::path& file, int seed,
                             const std::string& taken) {
    const std::string number = std::to_string(seed);
    make_once(file, "noise " + number + ' ' + taken, [&] {
        output_of("convert -size 1200x1600 -seed " + number + " xc:gray50 +noise Gaussian " +
                  shell_word(file));
        output_of("exiftool -q -overwrite_original -DateTimeOriginal=" + shell_word(taken) + ' ' +
                  shell_word(file));
    });
}

}  // namespace quarterturn
