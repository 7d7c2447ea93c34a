#include "indexer/record/words.h"

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

constexpr WordList<Angle, 8> angle_words{{{Angle::front, "front"},
                                          {Angle::left, "left"},
                                          {Angle::right, "right"},
                                          {Angle::back, "back"},
                                          {Angle::crown, "crown"},
                                          {Angle::left_three_quarter, "left three-quarter"},
                                          {Angle::right_three_quarter, "right three-quarter"},
                                          {Angle::detail, "detail"}}};
constexpr WordList<Stage, 3> stage_words{
    {{Stage::before, "before"}, {Stage::during, "during"}, {Stage::after, "after"}}};
constexpr WordList<SittingKind, 4> sitting_kind_words{{{SittingKind::consultation, "consultation"},
                                                       {SittingKind::trial, "trial"},
                                                       {SittingKind::wedding_day, "wedding day"},
                                                       {SittingKind::model_shoot, "model shoot"}}};
constexpr WordList<Worn, 3> worn_words{
    {{Worn::ceremony, "ceremony"}, {Worn::evening, "evening"}, {Worn::other, "other"}}};
constexpr WordList<Need, 2> need_words{
    {{Need::required, "required"}, {Need::nice_to_have, "nice to have"}}};
constexpr WordList<Coverage, 4> coverage_words{{{Coverage::covered, "covered"},
                                                {Coverage::weak, "weak"},
                                                {Coverage::missing, "missing"},
                                                {Coverage::waived, "waived"}}};
constexpr WordList<Quarter, 5> quarter_words{{{Quarter::covered, "covered"},
                                              {Quarter::weak, "weak"},
                                              {Quarter::partly, "partly covered"},
                                              {Quarter::missing, "missing"},
                                              {Quarter::waived, "waived"}}};
constexpr WordList<Flaw, 5> flaw_words{{{Flaw::out_of_focus, "out of focus"},
                                        {Flaw::moved, "moved"},
                                        {Flaw::too_dark, "too dark"},
                                        {Flaw::blown_out, "blown out"},
                                        {Flaw::too_small, "too small"}}};

}  // namespace

std::string_view word(Angle angle) {
    return find_word(angle_words, angle);
}
std::string_view word(Stage stage) {
    return find_word(stage_words, stage);
}
std::string_view word(SittingKind kind) {
    return find_word(sitting_kind_words, kind);
}
std::string_view word(Worn worn) {
    return find_word(worn_words, worn);
}
std::string_view word(Need need) {
    return find_word(need_words, need);
}
std::string_view word(Coverage coverage) {
    return find_word(coverage_words, coverage);
}
std::string_view word(Quarter quarter) {
    return find_word(quarter_words, quarter);
}
std::string_view word(Flaw flaw) {
    return find_word(flaw_words, flaw);
}

std::optional<Angle> parse_angle(std::string_view text) {
    return find_value(angle_words, text);
}
std::optional<Stage> parse_stage(std::string_view text) {
    return find_value(stage_words, text);
}
std::optional<SittingKind> parse_sitting_kind(std::string_view text) {
    return find_value(sitting_kind_words, text);
}
std::optional<Worn> parse_worn(std::string_view text) {
    return find_value(worn_words, text);
}
std::optional<Need> parse_need(std::string_view text) {
    return find_value(need_words, text);
}
std::optional<Flaw> parse_flaw(std::string_view text) {
    return find_value(flaw_words, text);
}

Angle mirrored(Angle angle) {
    switch (angle) {
        case Angle::left:
            return Angle::right;
        case Angle::right:
            return Angle::left;
        case Angle::left_three_quarter:
            return Angle::right_three_quarter;
        case Angle::right_three_quarter:
            return Angle::left_three_quarter;
        case Angle::front:
        case Angle::back:
        case Angle::crown:
        case Angle::detail:
            return angle;
    }
    return angle;
}

}  // namespace quarterturn
