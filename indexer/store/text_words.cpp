#include "indexer/store/text_words.h"

#include <unicode/translit.h>
#include <unicode/uchar.h>
#include <unicode/unistr.h>
#include <unicode/utf8.h>

#include <algorithm>
#include <memory>
#include <set>

#include "indexer/store/code_points.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

constexpr std::size_t least_shared_letters = 3;

bool is_ascii(std::string_view text) {
    return std::ranges::all_of(text, [](unsigned char c) { return c < 0x80; });
}

bool makes_a_word(UChar32 point) {
    return (U_GET_GC_MASK(point) & (U_GC_L_MASK | U_GC_M_MASK | U_GC_N_MASK)) != 0;
}

std::string ascii_small(std::string_view text) {
    std::string small(text);
    for (char& c : small) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return small;
}

enum class Joint { none, hyphen, apostrophe };

Joint joint_by(UChar32 point) {
    switch (point) {
        case '-':
        case 0x2010:  // hyphen
        case 0x2011:  // that does not break
            return Joint::hyphen;
        case '\'':
        case 0x2019:  // as it is typeset
            return Joint::apostrophe;
        default:
            return Joint::none;
    }
}

// Null when this computer's ICU lacks it: accents count then.
const icu::Transliterator* accents_away() {
    static const std::unique_ptr<icu::Transliterator> away = [] {
        UErrorCode error = U_ZERO_ERROR;
        std::unique_ptr<icu::Transliterator> made(icu::Transliterator::createInstance(
            "NFD; [[:Nonspacing Mark:]&[:Script=Inherited:]] Remove; NFC; Latin-ASCII",
            UTRANS_FORWARD, error));
        if (U_FAILURE(error)) made.reset();
        return made;
    }();
    return away.get();
}

// Reads the words one code point after the other.
class WordReader {
  public:
    explicit WordReader(std::string_view text) : text_(text) {}

    std::vector<TextWord> words() {
        const auto length = static_cast<std::int32_t>(text_.size());
        for (std::int32_t at = 0; at < length;) {
            const auto begin = static_cast<std::size_t>(at);
            UChar32 point = 0;
            U8_NEXT(text_.data(), at, length, point);
            take(point, begin, static_cast<std::size_t>(at));
        }
        close();
        return std::move(words_);
    }

  private:
    void take(UChar32 point, std::size_t begin, std::size_t end) {
        if (point >= 0 && makes_a_word(point)) {
            if (!open_) open(begin);
            words_.back().end = end;
            return;
        }
        close();
        joint_ = !words_.empty() && words_.back().end == begin ? joint_by(point) : Joint::none;
        joint_end_ = end;
    }

    void open(std::size_t begin) {
        open_ = true;
        const bool joined = joint_ != Joint::none && joint_end_ == begin;
        if (joined && joint_ == Joint::hyphen) words_.back().joined_behind = true;
        words_.push_back({begin, begin, {}, joined, false});
    }

    void close() {
        if (!open_) return;
        open_ = false;
        TextWord& word = words_.back();
        word.plain = plain_letters(text_.substr(word.begin, word.end - word.begin));
    }

    std::string_view text_;
    std::vector<TextWord> words_;
    bool open_ = false;
    Joint joint_ = Joint::none;  // the last sign, right behind a word
    std::size_t joint_end_ = 0;
};

std::set<std::string> long_words(std::string_view text) {
    std::set<std::string> words;
    for (TextWord& word : words_in(text)) {
        if (word.plain.size() >= least_shared_letters) words.insert(std::move(word.plain));
    }
    return words;
}

}  // namespace

std::vector<TextWord> words_in(std::string_view text) {
    return WordReader(text).words();
}

std::string plain_letters(std::string_view text) {
    if (is_ascii(text)) return ascii_small(text);  // most are, and there are many
    std::string small = folded(text);
    if (is_ascii(small) || !accents_away()) return small;
    icu::UnicodeString letters = icu::UnicodeString::fromUTF8(small);
    accents_away()->transliterate(letters);
    std::string plain;
    letters.toUTF8String(plain);
    return folded(plain);
}

bool runs_on(std::string_view text) {
    bool any = false;
    each_code_point(text, [&](UChar32 point) {
        switch (u_getIntPropertyValue(point, UCHAR_LINE_BREAK)) {
            case U_LB_IDEOGRAPHIC:
            case U_LB_CONDITIONAL_JAPANESE_STARTER:
            case U_LB_COMPLEX_CONTEXT:
            case U_LB_H2:
            case U_LB_H3:
                any = any || (point >= 0 && u_isalpha(point));
                break;
            default:
                break;
        }
    });
    return any;
}

bool share_a_word(std::string_view one, std::string_view other) {
    const std::set<std::string> others = long_words(other);
    return std::ranges::any_of(long_words(one),
                               [&](const auto& word) { return others.contains(word); });
}

}  // namespace quarterturn
