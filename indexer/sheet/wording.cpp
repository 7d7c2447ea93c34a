#include "indexer/sheet/wording.h"

#include "indexer/sheet/join.h"

namespace quarterturn {
namespace {

std::string flaw_words(const Photo& photo) {
    std::string words;
    for (const Flaw flaw : photo.flaws) add_part(words, ", ", word(flaw));
    return words;
}

std::string worn_words(Worn worn) {
    switch (worn) {
        case Worn::ceremony:
            return "worn for the ceremony";
        case Worn::evening:
            return "worn in the evening";
        case Worn::other:
            return {};
    }
    return {};
}

}  // namespace

std::string capitalised(std::string_view words) {
    std::string result(words);
    if (!result.empty() && result[0] >= 'a' && result[0] <= 'z') {
        result[0] = static_cast<char>(result[0] - 'a' + 'A');
    }
    return result;
}

std::string photo_note(const Photo& photo) {
    std::string note = photo.moment ? "" : "time unknown";
    add_part(note, " · ", flaw_words(photo));
    if (!photo.tags.accepted_because.empty()) {
        add_part(note, " · ", "accepted: " + photo.tags.accepted_because);
    }
    if (photo.tags.mirrored) add_part(note, " · ", "mirrored, turned");
    return note;
}

std::string described(const Photo& photo) {
    std::string words =
        photo.tags.angle ? capitalised(word(*photo.tags.angle)) : "Angle not tagged";
    if (photo.tags.stage) add_part(words, ", ", word(*photo.tags.stage));
    add_part(words, ", ", photo.moment ? "taken " + clock_text(*photo.moment) : "time unknown");
    return words;
}

std::string sign_off_words(const LookState& state) {
    if (!state.sign_off) return "Not signed off";
    std::string words = "Signed off " + long_date(date_of(state.sign_off->signed_at));
    if (!state.changes_since.empty()) words += ", changed since";
    return words;
}

std::string look_words(const Look& look) {
    std::string words = look.name.empty() ? capitalised(word(look.worn)) + " look" : look.name;
    add_part(words, ", ", worn_words(look.worn));
    return words;
}

std::vector<std::string> wedding_words(const std::optional<Wedding>& wedding) {
    if (!wedding) return {"No wedding"};
    std::string when_and_where = long_date(wedding->date);
    add_part(when_and_where, ", ", wedding->venue);
    return {wedding->name, when_and_where};
}

std::string sitting_words(const Sitting& sitting) {
    return capitalised(word(sitting.kind)) + ", " + long_date(date_of(sitting.starts)) + ", " +
           clock_text(sitting.starts) + until_text(sitting.starts, sitting.ends);
}

std::string missing_words(const Shot& shot, Need need) {
    return (need == Need::required ? "missing\n" : "missing (nice to have)\n") + shot_text(shot);
}

std::string waived_words(const Shot& shot, std::string_view reason) {
    return "waived\n" + shot_text(shot) + "\n" + std::string(reason);
}

}  // namespace quarterturn
