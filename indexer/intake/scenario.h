#pragma once
// Clients, weddings, sittings, looks and recipes from a scenario file (JSON, described in
// demo_photos/README.md), and the tags that go with its photos.

#include <string_view>

#include "indexer/store/library.h"

namespace quarterturn {

struct ScenarioReport {
    int clients = 0;
    int weddings = 0;
    int sittings = 0;
    int looks = 0;
};

// All or nothing. Remembers the keys of its looks for load_tags(). Throws StoreError naming the
// entry that is wrong.
ScenarioReport load_scenario(Library& library, std::string_view json, LocalTime now);

// Tags photos that are already in the library, by original file name, as one action. Answers how
// many. Throws StoreError naming a photo or look that is not there.
int load_tags(Library& library, std::string_view json);

}  // namespace quarterturn
