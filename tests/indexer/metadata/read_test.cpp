#include "indexer/metadata/read.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

std::span<const std::byte> bytes_of(std::string_view text) {
    return std::as_bytes(std::span(text));
}

TEST(ReadMetadata, says_in_words_that_the_bytes_cannot_be_read) {
    for (const std::string_view bytes : {"", "no picture at all", "\xff\xd8\xff\xe1"}) {
        const FileMetadata metadata = read_metadata(bytes_of(bytes));
        EXPECT_FALSE(metadata.unreadable.empty()) << bytes;
        EXPECT_FALSE(metadata.taken);
        EXPECT_EQ(metadata.orientation, 1);
    }
}

TEST(RawPreview, is_empty_for_bytes_without_one) {
    EXPECT_TRUE(raw_preview({}).empty());
    EXPECT_TRUE(raw_preview(bytes_of("no picture at all")).empty());
}

}  // namespace
}  // namespace quarterturn
