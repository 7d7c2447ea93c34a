#include "indexer/record/hair_only.h"

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

constexpr WordList<HairOnlyWay, 2> hair_only_words{
    {{HairOnlyWay::crop, "crop"}, {HairOnlyWay::cover, "cover"}}};

}  // namespace

std::string_view word(HairOnlyWay way) {
    return find_word(hair_only_words, way);
}

std::optional<HairOnlyWay> parse_hair_only_way(std::string_view text) {
    return find_value(hair_only_words, text);
}

}  // namespace quarterturn
