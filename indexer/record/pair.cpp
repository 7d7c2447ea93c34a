#include "indexer/record/pair.h"

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

constexpr WordList<PairKind, all_pair_kinds.size()> kind_words{
    {{PairKind::before_and_after, "before and after"},
     {PairKind::trial_and_day, "trial and wedding day"},
     {PairKind::trial_and_trial, "trial and trial"}}};

}  // namespace

std::string_view word(PairKind kind) {
    return find_word(kind_words, kind);
}

std::optional<PairKind> parse_pair_kind(std::string_view text) {
    return find_value(kind_words, text);
}

}  // namespace quarterturn
