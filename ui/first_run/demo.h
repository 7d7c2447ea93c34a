#pragma once
// The demo: invented clients, weddings and photos in a library of its own, made the first time she
// asks for it.

#include <functional>
#include <optional>
#include <stop_token>

#include "indexer/intake/import.h"
#include "indexer/store/library.h"

namespace quarterturn {

// The folder with scenario.json, tags.json and the photos: where the program was installed, else
// beside the source it was built from. Nothing when neither is there.
std::optional<Path> find_demo_photos();

// Where the demo library lies on this computer.
Path demo_library_folder();

// Fills a new library from the demo folder. Throws what loading and importing throw.
void fill_with_demo(Library& library, Decoder& decoder, const Path& demo_photos, LocalTime now,
                    const std::function<void(const ImportProgress&)>& progress,
                    std::stop_token stop);

}  // namespace quarterturn
