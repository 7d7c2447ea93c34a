#include "indexer/record/consent.h"

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

constexpr WordList<Use, all_uses.size()> use_words{{{Use::own_record, "own record"},
                                                    {Use::consultation, "shown in consultation"},
                                                    {Use::website, "website"},
                                                    {Use::social_media, "social media"},
                                                    {Use::print, "print"},
                                                    {Use::competition, "competition"},
                                                    {Use::teaching, "teaching"}}};
constexpr WordList<Use, all_uses.size()> use_phrases{
    {{Use::own_record, "in the stylist's own record"},
     {Use::consultation, "in a consultation"},
     {Use::website, "on a website"},
     {Use::social_media, "in social media"},
     {Use::print, "in print"},
     {Use::competition, "in a competition"},
     {Use::teaching, "in teaching"}}};
constexpr WordList<ConsentSaid, 3> said_words{{{ConsentSaid::granted, "granted"},
                                               {ConsentSaid::declined, "declined"},
                                               {ConsentSaid::withdrawn, "withdrawn"}}};
constexpr WordList<ShownAs, 2> shown_words{
    {{ShownAs::with_her_face, "with her face"}, {ShownAs::hair_only, "hair only"}}};
constexpr WordList<HowGiven, 3> how_words{{{HowGiven::signed_form, "signed form"},
                                           {HowGiven::message, "message"},
                                           {HowGiven::spoken, "spoken"}}};
constexpr WordList<ConsentGiver, 2> giver_words{
    {{ConsentGiver::herself, "herself"}, {ConsentGiver::guardian, "guardian"}}};
constexpr WordList<AgeBand, all_age_bands.size()> age_words{{{AgeBand::up_to_14, "14 or under"},
                                                             {AgeBand::at_15, "15"},
                                                             {AgeBand::at_16, "16"},
                                                             {AgeBand::at_17, "17"},
                                                             {AgeBand::from_18, "18 or over"},
                                                             {AgeBand::from_25, "25 or over"}}};

}  // namespace

std::string_view word(Use use) {
    return find_word(use_words, use);
}
std::string_view word(ConsentSaid said) {
    return find_word(said_words, said);
}
std::string_view word(ShownAs shown) {
    return find_word(shown_words, shown);
}
std::string_view word(HowGiven how) {
    return find_word(how_words, how);
}
std::string_view word(ConsentGiver giver) {
    return find_word(giver_words, giver);
}
std::string_view word(AgeBand age) {
    return find_word(age_words, age);
}

std::string_view in_words(Use use) {
    return find_word(use_phrases, use);
}

std::optional<Use> parse_use(std::string_view text) {
    return find_value(use_words, text);
}
std::optional<ConsentSaid> parse_consent_said(std::string_view text) {
    return find_value(said_words, text);
}
std::optional<ShownAs> parse_shown_as(std::string_view text) {
    return find_value(shown_words, text);
}
std::optional<HowGiven> parse_how_given(std::string_view text) {
    return find_value(how_words, text);
}
std::optional<ConsentGiver> parse_consent_giver(std::string_view text) {
    return find_value(giver_words, text);
}
std::optional<AgeBand> parse_age_band(std::string_view text) {
    return find_value(age_words, text);
}

}  // namespace quarterturn
