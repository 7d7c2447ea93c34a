#include "indexer/lock/passphrase_text.h"

#include <unicode/normalizer2.h>
#include <unicode/unistr.h>

#include <algorithm>

namespace quarterturn {
namespace {

using FormOf = const icu::Normalizer2* (*)(UErrorCode&);

// As it is where it is no UTF-8, or ICU has no data.
std::string in_form(std::string_view text, FormOf form_of) {
    const icu::UnicodeString typed = icu::UnicodeString::fromUTF8(
        icu::StringPiece(text.data(), static_cast<std::int32_t>(text.size())));
    std::string same;
    typed.toUTF8String(same);
    UErrorCode error = U_ZERO_ERROR;
    const icu::Normalizer2* form = form_of(error);
    if (same != text || U_FAILURE(error)) return std::string(text);
    std::string result;
    form->normalize(typed, error).toUTF8String(result);
    return U_FAILURE(error) ? std::string(text) : result;
}

}  // namespace

std::string composed(std::string_view passphrase) {
    return in_form(passphrase, icu::Normalizer2::getNFCInstance);
}

std::vector<std::string> spellings_of(std::string_view passphrase) {
    std::vector<std::string> spellings{composed(passphrase)};
    for (const std::string& other :
         {std::string(passphrase), in_form(passphrase, icu::Normalizer2::getNFDInstance)}) {
        if (std::ranges::find(spellings, other) == spellings.end()) spellings.push_back(other);
    }
    return spellings;
}

}  // namespace quarterturn
