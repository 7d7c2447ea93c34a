#pragma once
// Invented photos for the tests of the rules.

#include "indexer/record/photo.h"

namespace quarterturn {

inline LocalTime at(std::string_view iso) {
    return parse_local_time(iso).value();
}

inline Photo tagged_photo(std::int64_t id, Stage stage, Angle angle, LookId look = LookId{1}) {
    Photo photo;
    photo.id = PhotoId{id};
    photo.measures.focus = 100;
    photo.tags.stage = stage;
    photo.tags.angle = angle;
    photo.tags.look = look;
    return photo;
}

}  // namespace quarterturn
