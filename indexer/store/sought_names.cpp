#include "indexer/store/sought_names.h"

#include <unicode/uchar.h>
#include <unicode/utf8.h>

#include <algorithm>
#include <optional>

#include "indexer/store/code_points.h"

namespace quarterturn {
namespace {

constexpr std::size_t most_signs_between = 3;

bool begins_with_capital(std::string_view word) {
    std::optional<UChar32> first;
    each_code_point(word, [&](UChar32 point) {
        if (!first) first = point;
    });
    return first && *first >= 0 && (u_isupper(*first) || u_istitle(*first));
}

std::size_t parts_between_white_space(std::string_view name) {
    std::size_t parts = 0;
    bool inside = false;
    each_code_point(name, [&](UChar32 point) {
        const bool white = point >= 0 && u_isUWhiteSpace(point);
        if (!white && !inside) ++parts;
        inside = !white;
    });
    return parts;
}

std::string without_white_space(std::string_view text) {
    std::string rest;
    const auto length = static_cast<std::int32_t>(text.size());
    for (std::int32_t at = 0; at < length;) {
        const std::int32_t begin = at;
        UChar32 point = 0;
        U8_NEXT(text.data(), at, length, point);
        if (point >= 0 && u_isUWhiteSpace(point)) continue;
        rest.append(
            text.substr(static_cast<std::size_t>(begin), static_cast<std::size_t>(at - begin)));
    }
    return rest;
}

enum class Gap { within_a_name, may_be, apart };

// "Ada, Lindqvist" may be a list; "Lindqvist, Ada" is how names stand in one.
Gap gap_in(std::string_view between, bool turned) {
    Gap gap = Gap::within_a_name;
    std::size_t signs = 0;
    each_code_point(between, [&](UChar32 point) {
        ++signs;
        const bool plain = point >= 0 && (u_isUWhiteSpace(point) || point == '-' || point == '_' ||
                                          point == 0x2010 || point == 0x2011);
        if (plain || (point == ',' && turned)) return;
        const bool may = point == ',' || point == '.' || point == '\'' || point == 0x2019;
        gap = may && gap != Gap::apart ? Gap::may_be : Gap::apart;
    });
    return signs > most_signs_between ? Gap::apart : gap;
}

std::vector<std::string> plain_words(const std::vector<TextWord>& words) {
    std::vector<std::string> plain;
    for (const TextWord& word : words) plain.push_back(word.plain);
    return plain;
}

}  // namespace

SoughtNames::SoughtNames(const std::vector<std::string>& names, bool hers_alone)
    : hers_alone_(hers_alone) {
    for (const std::string& name : names) add(name);
}

void SoughtNames::add(std::string_view name) {
    if (runs_on(name)) running_.push_back(plain_letters(without_white_space(name)));
    const std::vector<TextWord> words = words_in(name);
    if (words.empty()) return;
    Form form{plain_words(words), false, parts_between_white_space(name) < 2,
              begins_with_capital(name.substr(words.front().begin))};
    add_form(form);
    form.turned = true;
    std::ranges::rotate(form.words, form.words.end() - 1);  // "Vale, Ada Maria"
    add_form(form);
    form.words = plain_words(words);
    std::ranges::reverse(form.words);
    add_form(form);
}

void SoughtNames::add_form(Form form) {
    std::vector<Form>& alike = forms_[form.words.front()];
    const bool there = std::ranges::find(alike, form.words, &Form::words) != alike.end();
    if (!there) alike.push_back(std::move(form));
}

std::vector<NameSaid> SoughtNames::said_in(std::string_view text) const {
    std::vector<NameSaid> said;
    const std::vector<TextWord> words = words_in(text);
    const auto match = [&](const Form& form, std::size_t first) -> std::optional<NameSaid> {
        const std::size_t count = form.words.size();
        if (first + count > words.size()) return std::nullopt;
        const TextWord& begin = words[first];
        const TextWord& end = words[first + count - 1];
        bool surely = hers_alone_ && !form.one_word && !begin.joined_before && !end.joined_behind;
        for (std::size_t i = 0; i < count; ++i) {
            if (words[first + i].plain != form.words[i]) return std::nullopt;
            if (i == 0) continue;
            const std::size_t from = words[first + i - 1].end;
            const Gap gap = gap_in(text.substr(from, words[first + i].begin - from), form.turned);
            if (gap == Gap::apart) return std::nullopt;
            surely = surely && gap == Gap::within_a_name;
        }
        if (form.one_word && form.capital && !begins_with_capital(text.substr(begin.begin))) {
            return std::nullopt;
        }
        return NameSaid{begin.begin, end.end, surely};
    };
    for (std::size_t at = 0; at < words.size();) {
        std::optional<NameSaid> longest;
        std::size_t taken = 1;
        if (const auto forms = forms_.find(words[at].plain); forms != forms_.end()) {
            for (const Form& form : forms->second) {
                const auto found = match(form, at);
                if (!found || (longest && found->end <= longest->end)) continue;
                longest = found;
                taken = form.words.size();
            }
        }
        if (longest) said.push_back(*longest);
        at += taken;
    }
    if (said.empty()) add_running(text, said);
    return said;
}

// Where words run on, it is told that a name stands in a text, and not where it ends.
void SoughtNames::add_running(std::string_view text, std::vector<NameSaid>& said) const {
    if (running_.empty()) return;
    const std::string all = plain_letters(without_white_space(text));
    const bool any = std::ranges::any_of(
        running_, [&](const std::string& name) { return all.find(name) != std::string::npos; });
    if (any) said.push_back({0, text.size(), false});
}

std::string SoughtNames::first_said_in(std::string_view text) const {
    const std::vector<NameSaid> said = said_in(text);
    if (said.empty()) return {};
    return std::string(text.substr(said.front().begin, said.front().end - said.front().begin));
}

std::string SoughtNames::without(std::string_view text, std::string_view instead) const {
    std::string result;
    std::size_t at = 0;
    for (const NameSaid& name : said_in(text)) {
        if (!name.surely) continue;
        result.append(text.substr(at, name.begin - at)).append(instead);
        at = name.end;
    }
    return result.append(text.substr(at));
}

}  // namespace quarterturn
