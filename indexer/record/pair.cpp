#include "indexer/record/pair.h"

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

constexpr WordList<PairKind, all_pair_kinds.size()> kind_words{
    {{PairKind::before_and_after, "before and after"},
     {PairKind::trial_and_day, "trial and wedding day"},
     {PairKind::trial_and_trial, "trial and trial"}}};

constexpr WordList<SideNote, all_side_notes.size()> note_words{
    {{SideNote::none, "none"},
     {SideNote::tagged_otherwise, "tagged otherwise"},
     {SideNote::not_usable, "not usable"},
     {SideNote::set_aside, "set aside"},
     {SideNote::removed, "removed"}}};

}  // namespace

std::string_view word(PairKind kind) {
    return find_word(kind_words, kind);
}

std::optional<PairKind> parse_pair_kind(std::string_view text) {
    return find_value(kind_words, text);
}

std::string_view word(SideNote note) {
    return find_word(note_words, note);
}

std::optional<SideNote> parse_side_note(std::string_view text) {
    return find_value(note_words, text);
}

}  // namespace quarterturn
