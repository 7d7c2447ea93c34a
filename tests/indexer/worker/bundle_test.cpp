#include "indexer/worker/bundle.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>

namespace quarterturn {
namespace {

std::span<const std::byte> span_of(const std::string& text) {
    return std::as_bytes(std::span(text));
}

std::vector<std::byte> bundle_of(const std::vector<std::string>& texts) {
    std::vector<std::span<const std::byte>> parts;
    for (const std::string& text : texts) parts.push_back(span_of(text));
    return bundled(parts);
}

RC_GTEST_PROP(Bundle, GivesWhatWasPutIn, (const std::vector<std::string>& texts)) {
    const auto bundle = bundle_of(texts);
    const auto parts = unbundled(bundle);
    RC_ASSERT(parts.has_value());
    std::vector<std::string> again;
    for (const auto part : *parts) {
        again.emplace_back(reinterpret_cast<const char*>(part.data()), part.size());
    }
    RC_ASSERT(again == texts);
}

// A length is eight bytes, so that fewer after the last part are none.
RC_GTEST_PROP(Bundle, CutInItsLastPartOrLengthenedIsNone, (const std::vector<std::string>& texts)) {
    auto bundle = bundle_of(texts);
    bundle.push_back(std::byte{1});
    RC_ASSERT(!unbundled(bundle).has_value());
    if (texts.empty()) return;
    const std::size_t last = 8 + texts.back().size();
    bundle.resize(bundle.size() - 1 - *rc::gen::inRange<std::size_t>(1, last));
    RC_ASSERT(!unbundled(bundle).has_value());
}

}  // namespace
}  // namespace quarterturn
