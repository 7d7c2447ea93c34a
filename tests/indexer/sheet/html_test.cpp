#include "indexer/sheet/html.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

std::string base64_of(std::string_view text) {
    return base64(std::as_bytes(std::span(text)));
}

// RFC 4648, section 10.
TEST(Base64, IsWrittenAsTheStandardsExamples) {
    EXPECT_EQ(base64_of(""), "");
    EXPECT_EQ(base64_of("f"), "Zg==");
    EXPECT_EQ(base64_of("fo"), "Zm8=");
    EXPECT_EQ(base64_of("foo"), "Zm9v");
    EXPECT_EQ(base64_of("foob"), "Zm9vYg==");
    EXPECT_EQ(base64_of("fooba"), "Zm9vYmE=");
    EXPECT_EQ(base64_of("foobar"), "Zm9vYmFy");
    EXPECT_EQ(base64_of("\xfb\xff\xbf"), "+/+/");
}

TEST(HtmlText, CannotLeaveItsPlace) {
    EXPECT_EQ(html_text("</p><script>&\"'"), "&lt;/p&gt;&lt;script&gt;&amp;&quot;&#39;");
    EXPECT_EQ(html_text("ნინო ليان 美咲"), "ნინო ليان 美咲");
    EXPECT_EQ(html_text("one\ntwo\tthree"), "one two three");
    EXPECT_EQ(html_text(std::string_view("\x01\x00\x7f", 3)), "\ufffd\ufffd\ufffd");
    EXPECT_EQ(html_text("\xc3("), "\ufffd(");
    EXPECT_EQ(html_text("\ufffe"), "\ufffd");
}

}  // namespace
}  // namespace quarterturn
