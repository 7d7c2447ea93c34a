#include "indexer/store/text.h"

#include <unicode/bytestream.h>
#include <unicode/coll.h>
#include <unicode/normalizer2.h>
#include <unicode/uchar.h>
#include <unicode/unistr.h>
#include <unicode/utf8.h>

#include <memory>

#include "indexer/store/code_points.h"
#include "indexer/store/database.h"

namespace quarterturn {
namespace {

bool is_utf8(std::string_view text) {
    bool valid = true;
    each_code_point(text, [&](UChar32 point) { valid = valid && point >= 0; });
    return valid;
}

bool is_blank(std::string_view text) {
    bool blank = true;
    each_code_point(text, [&](UChar32 point) { blank = blank && u_isUWhiteSpace(point); });
    return blank;
}

std::string ascii_folded(std::string_view text) {
    std::string result(text);
    for (char& c : result) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return result;
}

void refuse_failure(UErrorCode error) {
    if (U_FAILURE(error)) {
        throw StoreError(std::string("The Unicode data of this computer (ICU) cannot be used (") +
                         u_errorName(error) + "): install libicu again.");
    }
}

std::unique_ptr<icu::Collator> root_order() {
    UErrorCode error = U_ZERO_ERROR;
    std::unique_ptr<icu::Collator> order(
        icu::Collator::createInstance(icu::Locale::getRoot(), error));
    refuse_failure(error);
    return order;
}

}  // namespace

std::string folded(std::string_view text) {
    if (!is_utf8(text)) return ascii_folded(text);
    UErrorCode error = U_ZERO_ERROR;
    const icu::Normalizer2* folding = icu::Normalizer2::getNFKCCasefoldInstance(error);
    refuse_failure(error);
    std::string result;
    icu::StringByteSink<std::string> sink(&result);
    folding->normalizeUTF8(0, text, sink, nullptr, error);
    refuse_failure(error);
    return result;
}

void refuse_unless_text(std::string_view what, std::string_view text) {
    if (is_utf8(text) && text.find('\0') == std::string_view::npos) return;
    throw StoreError("For " + std::string(what) +
                     ", bytes were given that are no text (UTF-8): type it anew.");
}

void refuse_unless_name(std::string_view what, std::string_view text) {
    refuse_unless_text(what, text);
    if (is_blank(text))
        throw StoreError("For " + std::string(what) +
                         ", nothing was given: write it, and try again.");
}

bool name_before(std::string_view left, std::string_view right) {
    static const std::unique_ptr<icu::Collator> order = root_order();
    UErrorCode error = U_ZERO_ERROR;
    const UCollationResult result = order->compareUTF8(left, right, error);
    refuse_failure(error);
    return result == UCOL_LESS;
}

}  // namespace quarterturn
