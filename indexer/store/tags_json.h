#pragma once
// Tags as History keeps them, before and after a change.

#include <string>
#include <string_view>

#include "indexer/record/photo.h"

namespace quarterturn {

std::string tags_json(const Tags& tags);
// Throws StoreError when the text was not written by tags_json().
Tags parse_tags_json(std::string_view json);

}  // namespace quarterturn
